import type { JobKey } from '@shearline/jobfile'
import { useDesk } from '../job/desk.ts'
import { Part, useFresh } from '../job/Part.tsx'
import { photosOnRecord } from '../photos/on-record.ts'
import { Photo } from '../photos/Photo.tsx'
import { PhotoButton } from '../photos/Photos.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { useChosenKey } from './chosen-key.ts'
import { KeyForm } from './KeyForm.tsx'
import { KeyShape } from './KeyShape.tsx'
import { KeyTags } from './KeyTags.tsx'
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
          <>
            <ul className={css.cards}>
              {keys.map((key) => (
                <li key={key.id}>
                  <KeyCard jobKey={key} />
                </li>
              ))}
            </ul>
            <KeyTags />
          </>
        )
      }
    >
      <KeyForm key={`${fresh}-${state.keys.length}`} origin={origin} onDone={renew} />
    </Part>
  )
}

function KeyCard({ jobKey }: { readonly jobKey: JobKey }) {
  const { id, colour, form, make, onBench, cloneOf, note, shownAs, taught } = jobKey
  const { job, facts, state } = useDesk()
  const chosen = useChosenKey(job) === id
  const photo = photosOnRecord(facts, state.corrections).findLast(({ body }) => body.key === id)
  const label = t('photo.take.of', { what: t('photo.shows.key-named', { key: id }) })
  return (
    <div className={css.card} data-here={onBench} data-chosen={chosen} data-need={`key-card:${id}`}>
      <Tag letter={id} colour={colour} />
      <KeyShape form={form} />
      <div className={css.cardWords}>
        <strong>{t('keys.named', { key: id, colour: say(`colour.${colour}`) })}</strong>
        <span>
          {say(`form.${form}`)}, {say(`make.${make}`)}
        </span>
        {!onBench && <span>{t('keys.not-here')}</span>}
        {cloneOf !== null && <span>{t('keys.clone-of', { key: cloneOf })}</span>}
        {shownAs !== null && <span>{t('keys.shown-as.is', { words: shownAs })}</span>}
        {taught && <span>{t('keys.taught')}</span>}
        {note !== null && <span className={css.note}>{note}</span>}
        {chosen && <span>{t('tags.chosen')}</span>}
      </div>
      <div className={css.cardPhoto}>
        {photo !== undefined && <Photo photo={photo} />}
        {onBench && (
          <PhotoButton
            of={{ shows: 'key', key: id }}
            offered={['key']}
            words={t('photo.take.key')}
            label={label}
          />
        )}
      </div>
    </div>
  )
}
