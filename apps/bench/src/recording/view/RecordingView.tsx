import type { JobState } from '@shearline/jobfile'
import { useId } from 'react'
import formCss from '../../form/form.module.css'
import { useModal } from '../../form/useModal.ts'
import { number, size } from '../../words/amounts.ts'
import { t } from '../../words/index.ts'
import { problemWords } from '../../words/problem.ts'
import { LogFailed } from '../open-log.ts'
import { LogDesk } from './LogDesk.tsx'
import { type Opened, useLog } from './useLog.ts'
import css from './view.module.css'

/** A whole recording to look into: its strip, and below it the messages of the stretch that is shown. */
export default function RecordingView({
  recording,
  onClose,
}: {
  readonly recording: JobState['recordings'][number]
  readonly onClose: () => void
}) {
  const dialog = useModal()
  const title = useId()
  const opened = useLog(recording.blob)
  const head = (
    <header className={css.head}>
      <h2 id={title} className={css.title}>
        {t('view.title', { name: recording.name })}
      </h2>
      <button type="button" className={formCss.plain} onClick={onClose}>
        {t('close')}
      </button>
    </header>
  )
  return (
    <dialog
      ref={dialog}
      className={css.dialog}
      aria-labelledby={title}
      onCancel={(event) => {
        // The details of a message are a dialog of their own; leaving them is not leaving this.
        if (event.target === event.currentTarget) onClose()
      }}
    >
      {opened.at === 'open' && opened.log.strip.messages > 0 ? (
        <LogDesk log={opened.log} recording={recording} head={head} scroller={dialog} />
      ) : (
        <div className={css.waiting}>
          {head}
          <Waiting opened={opened} />
        </div>
      )}
    </dialog>
  )
}

function Waiting({ opened }: { readonly opened: Opened }) {
  if (opened.at === 'open') return <p role="status">{t('view.empty')}</p>
  if (opened.at === 'absent') {
    return (
      <p className={formCss.problem} role="alert">
        {t('view.absent')}
      </p>
    )
  }
  if (opened.at === 'failed') {
    const other = opened.error instanceof LogFailed && opened.error.why === 'other-bytes'
    return (
      <p className={formCss.problem} role="alert">
        {other ? t('view.other-bytes') : t('view.failed', { problem: problemWords(opened.error) })}
      </p>
    )
  }
  if (opened.at === 'fetching') return <p role="status">{t('view.fetching')}</p>
  return (
    <>
      <progress
        className={css.progress}
        value={opened.bytes}
        max={Math.max(1, opened.of)}
        aria-label={t('view.opening')}
      />
      <p role="status">{t('view.opening')}</p>
      <p aria-hidden="true">
        {t('view.opened-so-far', {
          read: size(opened.bytes),
          whole: size(opened.of),
          messages: number(opened.messages),
        })}
      </p>
    </>
  )
}
