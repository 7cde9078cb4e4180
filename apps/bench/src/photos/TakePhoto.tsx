import type { Body } from '@shearline/jobfile'
import { type ChangeEvent, useEffect, useId, useState } from 'react'
import { CameraPicture } from '../capture/CameraPicture.tsx'
import { useCamera } from '../capture/camera.ts'
import captureCss from '../capture/capture.module.css'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { PhotoForm } from './PhotoForm.tsx'
import css from './photos.module.css'
import { type Shrunk, shrink } from './shrink.ts'

export type Shows = Body<'photo-attached'>['shows']

/** What a photo is taken of when that is known beforehand. */
export interface PhotoOf {
  readonly shows?: Shows
  readonly key?: string
}

/** Takes a photo inside the bench, or chooses one; shows it as it will be kept, and asks what it shows. */
export default function TakePhoto({
  of,
  offered,
  onClose,
}: {
  readonly of: PhotoOf
  readonly offered: readonly Shows[]
  readonly onClose: () => void
}) {
  const [photo, setPhoto] = useState<Shrunk | null>(null)
  const [problem, setProblem] = useState('')
  const take = async (picture: Blob, name: string) => {
    try {
      const shrunk = await shrink(picture)
      setProblem(shrunk === null ? t('photo.unreadable', { name }) : '')
      setPhoto(shrunk)
    } catch (error) {
      setProblem(problemWords(error))
    }
  }
  const title =
    of.key === undefined
      ? t('photo.take')
      : t('photo.take.of', { what: t('photo.shows.key-named', { key: of.key }) })
  return (
    <Dialog title={title} onClose={onClose}>
      {photo === null ? (
        <Shutter onPicture={(picture, name) => void take(picture, name)} />
      ) : (
        <>
          <Preview photo={photo} />
          <PhotoForm photo={photo} of={of} offered={offered} onKept={onClose} />
        </>
      )}
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={formCss.foot}>
        {photo !== null && (
          <button type="button" className={formCss.plain} onClick={() => setPhoto(null)}>
            {t('photo.again')}
          </button>
        )}
        <button type="button" className={formCss.plain} onClick={onClose}>
          {t('cancel')}
        </button>
      </div>
    </Dialog>
  )
}

function Shutter({ onPicture }: { readonly onPicture: (picture: Blob, name: string) => void }) {
  const camera = useCamera()
  const id = useId()
  const take = async () => {
    const video = camera.video.current
    if (video === null) return
    const canvas = new OffscreenCanvas(video.videoWidth, video.videoHeight)
    canvas.getContext('2d')?.drawImage(video, 0, 0)
    onPicture(await canvas.convertToBlob({ type: 'image/png' }), t('camera.picture'))
  }
  const choose = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0]
    event.target.value = ''
    if (file !== undefined) onPicture(file, file.name)
  }
  return (
    <div className={captureCss.finder}>
      <CameraPicture camera={camera} />
      <div className={formCss.foot}>
        <button
          type="button"
          className={formCss.submit}
          disabled={camera.state !== 'running'}
          onClick={() => void take()}
        >
          {t('photo.shutter')}
        </button>
        <input id={id} className="sr" type="file" accept="image/*" onChange={choose} />
        <label htmlFor={id} className={captureCss.pick}>
          {t('scan.photo')}
        </label>
      </div>
      <p className={formCss.hint}>{t('photo.kept-how')}</p>
    </div>
  )
}

function Preview({ photo }: { readonly photo: Shrunk }) {
  const [address, setAddress] = useState('')
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([photo.bytes], { type: photo.type }))
    setAddress(made)
    return () => URL.revokeObjectURL(made)
  }, [photo])
  return address === '' ? null : <img className={css.whole} src={address} alt={t('photo.preview')} />
}
