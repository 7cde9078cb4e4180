import type { JobKey } from '@shearline/jobfile'
import { useDesk } from '../job/desk.ts'
import { Part, useFresh } from '../job/Part.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { KeyForm } from './KeyForm.tsx'
import { KeyShape } from './KeyShape.tsx'
import css from './keys.module.css'
import { Tag } from './Tag.tsx'

/** The keys on the bench as cards: letter, colour, how each is built, and where it is. */
export function KeyCards({ origin }: { readonly origin: JobKey['origin'] }) {
  const { state } = useDesk()
  const keys = state.keys.filter((key) => key.origin === origin)
  const [fresh, renew] = useFresh()
  return (
    <Part
      title={origin === 'existing' ? t('keys.existing') : t('keys.new.title')}
      need={origin === 'existing' ? 'no-key-labelled' : 'key-not-labelled'}
      settled={keys.length > 0}
      more={t(`keys.${origin}.another`)}
      about={
        keys.length > 0 && (
          <ul className={css.cards}>
            {keys.map((key) => (
              <li key={key.id}>
                <KeyCard jobKey={key} />
              </li>
            ))}
          </ul>
        )
      }
    >
      <KeyForm key={`${fresh}-${state.keys.length}`} origin={origin} onDone={renew} />
    </Part>
  )
}

function KeyCard({ jobKey }: { readonly jobKey: JobKey }) {
  const { id, colour, form, make, onBench, cloneOf, note, taught } = jobKey
  return (
    <div className={css.card} data-here={onBench}>
      <Tag letter={id} colour={colour} />
      <KeyShape form={form} />
      <div className={css.cardWords}>
        <strong>{t('keys.named', { key: id, colour: say(`colour.${colour}`) })}</strong>
        <span>
          {say(`form.${form}`)}, {say(`make.${make}`)}
        </span>
        {!onBench && <span>{t('keys.not-here')}</span>}
        {cloneOf !== null && <span>{t('keys.clone-of', { key: cloneOf })}</span>}
        {taught && <span>{t('keys.taught')}</span>}
        {note !== null && <span className={css.note}>{note}</span>}
      </div>
    </div>
  )
}
