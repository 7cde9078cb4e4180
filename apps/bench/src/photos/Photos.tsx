import { lazy, Suspense, useState } from 'react'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { Part } from '../job/Part.tsx'
import { t } from '../words/index.ts'
import { photosOnRecord } from './on-record.ts'
import { Photo } from './Photo.tsx'
import { photoWords } from './photo-words.ts'
import css from './photos.module.css'
import type { PhotoOf, Shows } from './TakePhoto.tsx'

/** The camera comes only when a photo is taken. */
const TakePhoto = lazy(() => import('./TakePhoto.tsx'))

const ofTheCar: readonly Shows[] = ['key', 'vin', 'odometer', 'lamps', 'damage', 'equipment', 'other']

/** The job's photos of some kinds, and the way to take another. */
export function Photos({ of = ofTheCar, title }: { readonly of?: readonly Shows[]; readonly title: string }) {
  const { facts, state } = useDesk()
  const photos = photosOnRecord(facts, state.corrections).filter(({ body }) => of.includes(body.shows))
  return (
    <Part
      title={title}
      about={
        photos.length > 0 && (
          <ul className={css.photos}>
            {photos.map((photo) => (
              <li key={photo.fact.id}>
                <Photo photo={photo} />
                <span className={css.caption}>{photoWords(photo.body)}</span>
              </li>
            ))}
          </ul>
        )
      }
    >
      <PhotoButton of={{}} offered={of} words={t('photo.take')} />
    </Part>
  )
}

/** Opens the camera for one photo. */
export function PhotoButton({
  of,
  offered,
  words,
  label,
}: {
  readonly of: PhotoOf
  readonly offered: readonly Shows[]
  readonly words: string
  /** Full name where the words alone do not say of what. */
  readonly label?: string
}) {
  const [open, setOpen] = useState(false)
  return (
    <>
      <div>
        <button
          type="button"
          className={formCss.plain}
          aria-label={label ?? words}
          onClick={() => setOpen(true)}
        >
          {words}
        </button>
      </div>
      {open && (
        <Suspense fallback={null}>
          <TakePhoto of={of} offered={offered} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  )
}
