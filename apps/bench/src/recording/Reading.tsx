import formCss from '../form/form.module.css'
import { size as sizeWords } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import css from './recording.module.css'
import type { Progress } from './worker-messages.ts'

/** How far reading has come. The numbers change all the time; a screen reader hears each tenth once. */
export function Reading({
  progress,
  size,
  onCancel,
}: {
  readonly progress: Progress
  readonly size: number
  readonly onCancel: () => void
}) {
  const { bytes, frames, messages } = progress
  const tenths = Math.floor((10 * bytes) / Math.max(1, size))
  return (
    <>
      <progress
        className={css.progress}
        value={bytes}
        max={Math.max(1, size)}
        aria-label={t('recording.reading')}
      />
      <p aria-hidden="true" className={css.counts}>
        <span>{t('recording.read-so-far', { read: sizeWords(bytes), whole: sizeWords(size) })}</span>
        <span>{t('recording.frames-so-far', { count: frames })}</span>
        <span>{t('recording.messages-so-far', { count: messages })}</span>
      </p>
      <p role="status" className="sr">
        {t('recording.read-percent', { percent: tenths * 10 })}
      </p>
      <p className={css.hint}>{t('recording.cancel.hint')}</p>
      <div className={formCss.foot}>
        <button type="button" className={formCss.plain} onClick={onCancel}>
          {t('cancel')}
        </button>
      </div>
    </>
  )
}
