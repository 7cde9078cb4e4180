import { useState } from 'react'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { Withdraw } from '../job/Withdraw.tsx'
import { size } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import { clock, day } from '../words/instants.ts'
import type { PhotoOnRecord } from './on-record.ts'
import { photoWords } from './photo-words.ts'
import css from './photos.module.css'
import { usePicture } from './usePicture.ts'

/** A photo whole, with what is on record of it and the way to withdraw it. */
export function PhotoView({
  photo,
  onClose,
}: {
  readonly photo: PhotoOnRecord
  readonly onClose: () => void
}) {
  const { zone } = useDesk()
  const [withdrawing, setWithdrawing] = useState(false)
  const { fact, body, deletedAt } = photo
  const words = photoWords(body)
  const when = (at: string) => `${day(at, zone)}, ${clock(at, zone)}`
  if (withdrawing) return <Withdraw fact={fact} words={words} onClose={onClose} />
  return (
    <Dialog title={words} onClose={onClose}>
      {deletedAt === null ? (
        <Whole sha256={body.blob} words={words} />
      ) : (
        <p>{t('photo.deleted', { when: when(deletedAt) })}</p>
      )}
      <p className={formCss.hint}>
        {t('photo.about', { when: when(fact.at), by: fact.by, size: size(body.bytes) })}
      </p>
      <div className={formCss.foot}>
        <button type="button" className={formCss.submit} onClick={onClose}>
          {t('photo.close')}
        </button>
        <button type="button" className={formCss.plain} onClick={() => setWithdrawing(true)}>
          {t('record.withdraw')}
        </button>
      </div>
    </Dialog>
  )
}

function Whole({ sha256, words }: { readonly sha256: string; readonly words: string }) {
  const picture = usePicture(sha256, 'whole')
  if (picture.what === 'shown') return <img className={css.whole} src={picture.address} alt={words} />
  return (
    <p role="status">{picture.what === 'reading' ? t('photo.reading') : t(`photo.missing.${picture.why}`)}</p>
  )
}
