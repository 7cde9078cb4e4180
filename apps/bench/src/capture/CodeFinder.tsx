import { type ChangeEvent, useEffect, useEffectEvent, useId, useRef, useState } from 'react'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { CameraPicture } from './CameraPicture.tsx'
import { useCamera } from './camera.ts'
import css from './capture.module.css'
import { type FoundCode, Scanner } from './scanner.ts'

/** Time between two looks at the camera's picture, milliseconds: the worker rests, the battery lasts. */
const restBetweenLooks = 180

/**
 * Looks for codes in the camera's picture and in a chosen photo. `onFound` hears every look that found something;
 * `onPicture` hears of a photo in which no code was found, and of the camera's picture when it is asked for.
 */
export function CodeFinder({
  onFound,
  onPicture,
  pictureWords,
}: {
  readonly onFound: (found: readonly FoundCode[], from: 'camera' | 'photo') => void
  readonly onPicture?: (picture: Blob, from: 'camera' | 'photo') => void
  /** Label of the way to use the camera's picture itself. */
  readonly pictureWords?: string
}) {
  const camera = useCamera()
  const scanner = useRef<Scanner | null>(null)
  const [problem, setProblem] = useState('')
  const [looking, setLooking] = useState(false)
  const found = useEffectEvent(onFound)
  const id = useId()

  useEffect(() => {
    const own = new Scanner()
    scanner.current = own
    return () => {
      scanner.current = null
      own.close()
    }
  }, [])

  useEffect(() => {
    if (camera.state !== 'running') return
    let live = true
    let timer: ReturnType<typeof setTimeout> | undefined
    const look = async () => {
      const element = camera.video.current
      if (element !== null && element.readyState >= element.HAVE_CURRENT_DATA) {
        const codes = await scanner.current?.look(await createImageBitmap(element))
        if (live && codes !== undefined && codes.length > 0) found(codes, 'camera')
      }
      if (live) timer = setTimeout(again, restBetweenLooks)
    }
    const again = () =>
      look().catch(() => {
        if (live) setProblem(t('scan.no-reader'))
      })
    void again()
    return () => {
      live = false
      clearTimeout(timer)
    }
  }, [camera.state, camera.video])

  const choose = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0]
    // The same file may be chosen again.
    event.target.value = ''
    if (file === undefined) return
    setProblem('')
    setLooking(true)
    try {
      const picture = await createImageBitmap(file).catch(() => null)
      if (picture === null) return setProblem(t('photo.unreadable', { name: file.name }))
      const codes = (await scanner.current?.look(picture, true)) ?? []
      if (codes.length > 0) return onFound(codes, 'photo')
      setProblem(t('scan.photo.none'))
      onPicture?.(file, 'photo')
    } catch {
      setProblem(t('scan.no-reader'))
    } finally {
      setLooking(false)
    }
  }

  const still = async () => {
    const element = camera.video.current
    if (element === null) return
    const canvas = new OffscreenCanvas(element.videoWidth, element.videoHeight)
    canvas.getContext('2d')?.drawImage(element, 0, 0)
    onPicture?.(await canvas.convertToBlob({ type: 'image/png' }), 'camera')
  }

  return (
    <div className={css.finder}>
      <CameraPicture camera={camera} frame />
      <div className={formCss.foot}>
        <input id={id} className="sr" type="file" accept="image/*" onChange={(event) => void choose(event)} />
        <label htmlFor={id} className={css.pick}>
          {t('scan.photo')}
        </label>
        {pictureWords !== undefined && camera.state === 'running' && (
          <button type="button" className={formCss.plain} onClick={() => void still()}>
            {pictureWords}
          </button>
        )}
      </div>
      <p role="status" className={formCss.hint}>
        {looking ? t('scan.photo.looking') : problem}
      </p>
    </div>
  )
}
