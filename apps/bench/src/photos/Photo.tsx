import { useState } from 'react'
import { t } from '../words/index.ts'
import type { PhotoOnRecord } from './on-record.ts'
import { PhotoView } from './PhotoView.tsx'
import { photoWords } from './photo-words.ts'
import css from './photos.module.css'
import { usePicture } from './usePicture.ts'

/** A photo small; tapping it shows it whole. What was deleted or is not here is said in its place. */
export function Photo({ photo }: { readonly photo: PhotoOnRecord }) {
  const [open, setOpen] = useState(false)
  const words = photoWords(photo.body)
  return (
    <>
      <button
        type="button"
        className={css.small}
        aria-label={t('photo.open', { what: words })}
        onClick={() => setOpen(true)}
      >
        {photo.deletedAt === null ? (
          <Small sha256={photo.body.blob} />
        ) : (
          <span className={css.absent}>{t('photo.deleted.short')}</span>
        )}
      </button>
      {open && <PhotoView photo={photo} onClose={() => setOpen(false)} />}
    </>
  )
}

function Small({ sha256 }: { readonly sha256: string }) {
  const picture = usePicture(sha256, 'thumbnail')
  if (picture.what === 'shown') return <img src={picture.address} alt="" />
  return <span className={css.absent}>{t(`photo.${picture.what}`)}</span>
}
