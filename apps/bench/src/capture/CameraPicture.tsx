import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import type { Camera } from './camera.ts'
import css from './capture.module.css'

/** The camera's picture, or in words why there is none and what to do; the lamp when there is one. */
export function CameraPicture({
  camera,
  frame = false,
}: {
  readonly camera: Camera
  /** Shows where to hold a code. */
  readonly frame?: boolean
}) {
  const { state, lamp } = camera
  const shown = state === 'running' || state === 'starting'
  return (
    <>
      <div className={css.picture} hidden={!shown}>
        <video ref={camera.video} muted playsInline aria-label={t('camera.picture')} />
        {frame && <span className={css.frame} aria-hidden="true" />}
        {lamp !== null && (
          <button type="button" className={css.lamp} aria-pressed={lamp.on} onClick={lamp.turn}>
            {t('camera.lamp')}
          </button>
        )}
      </div>
      {state !== 'running' && (
        <p role="status" className={state === 'starting' ? formCss.hint : formCss.problem}>
          {t(`camera.${state}`)}
        </p>
      )}
    </>
  )
}
