import { useDesk } from '../../job/desk.ts'
import { Part } from '../../job/Part.tsx'
import { listMark } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'

/** The four numbers side by side, and what in them is entries rather than keys. */
export function TallyNumbers() {
  const { tally, keys } = useDesk().state
  const shown = keys.filter((key) => key.shownAs !== null)
  const places = [...new Set(shown.map((key) => key.shownAs ?? ''))]
  const numbers = [
    ['said', tally.saidToExist],
    ['bench', tally.onBench],
    ['before', tally.storedBefore],
    ['after', tally.storedAfter],
  ] as const
  return (
    <Part title={t('tally.title')}>
      <dl className={`${css.meters} ${css.four}`}>
        {numbers.map(([name, value]) => (
          <div key={name}>
            <dt>{t(`tally.${name}`)}</dt>
            <dd>{value ?? t('meter.none')}</dd>
          </div>
        ))}
      </dl>
      <p className={css.under}>
        {t('tally.identities', { keys: tally.onBench, identities: tally.identitiesOnBench })}{' '}
        {tally.unaccounted !== null && t('tally.unaccounted', { count: tally.unaccounted })}{' '}
        {t('tally.expected', { count: tally.expectedAfter })}
      </p>
      {places.length > 0 && (
        <ul className={css.plainList}>
          {places.map((words) => {
            const here = shown.filter((key) => key.shownAs === words).map((key) => key.id)
            return (
              <li key={words}>
                {t('tally.shown-as', { words, keys: here.join(listMark()), count: here.length })}
              </li>
            )
          })}
        </ul>
      )}
    </Part>
  )
}
