import type { Action } from '@shearline/practice-car'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { Tag } from '../keys/Tag.tsx'
import { volts } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import css from './practice.module.css'
import { outcomeWords } from './practice-words.ts'
import type { PracticeRun } from './run.ts'

const supplyAmperes = 30
const waits = [5, 20] as const

/** What a technician does with hands at the car: scan, supply, code, waiting, and each key. */
export function AtTheCar({
  run,
  onAct,
}: {
  readonly run: PracticeRun
  readonly onAct: (action: Action) => void
}) {
  const { keys } = useDesk().state
  const { gate, backup } = run.exercise
  const button = (words: string, action: Action, label?: string) => (
    <button
      key={words}
      type="button"
      className={formCss.plain}
      onClick={() => onAct(action)}
      aria-label={label}
    >
      {words}
    </button>
  )
  return (
    <section className={css.car} aria-label={t('practice.at-the-car')}>
      <h2 className={css.subtitle}>{t('practice.at-the-car')}</h2>
      <p className={css.quiet}>{t('practice.meter', { volts: volts(run.volts) })}</p>
      <div className={css.acts}>
        {button(t('practice.scan'), { do: 'scan' })}
        {button(t('practice.supply', { amperes: supplyAmperes }), { do: 'supply', amperes: supplyAmperes })}
        {gate !== undefined && button(t('practice.code'), { do: 'code' })}
        {backup && button(t('practice.restore'), { do: 'restore' })}
        {waits.map((minutes) => button(t('practice.wait', { minutes }), { do: 'wait', minutes }))}
      </div>
      <ul className={css.keys}>
        {keys.map((key) => (
          <li key={key.id} className={css.key}>
            <Tag letter={key.id} colour={key.colour} />
            {key.onBench ? (
              <>
                {button(
                  t('practice.start'),
                  { do: 'start', key: key.id },
                  t('practice.start.named', { key: key.id }),
                )}
                {button(
                  t('practice.buttons'),
                  { do: 'button', key: key.id },
                  t('practice.buttons.named', { key: key.id }),
                )}
                {button(
                  t('practice.cell'),
                  { do: 'cell', key: key.id },
                  t('practice.cell.named', { key: key.id }),
                )}
              </>
            ) : (
              button(
                t('practice.fetch'),
                { do: 'fetch', key: key.id },
                t('practice.fetch.named', { key: key.id }),
              )
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

/** How many lines are in sight: what was just done, what came of it, and what went wrong right after. */
const linesInSight = 3

/** What the car did, always in sight below whatever is being worked on. */
export function CarLog({ run }: { readonly run: PracticeRun }) {
  return (
    <div className={css.log} role="log" aria-label={t('practice.happened')}>
      {run.happened.length === 0 && <p className={css.quiet}>{t('practice.nothing-yet')}</p>}
      {run.happened.slice(-linesInSight).map(({ place, outcome }) => (
        <p key={place} data-mishap={outcome.code.startsWith('incident')}>
          {outcomeWords(outcome)}
        </p>
      ))}
    </div>
  )
}
