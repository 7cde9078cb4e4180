import type { JobState } from '@shearline/jobfile'
import { lazy, Suspense, useState } from 'react'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { EventPicture } from './EventPicture.tsx'
import { elapsed } from './elapsed.ts'
import css from './recording.module.css'
import { StripPicture } from './StripPicture.tsx'
import { useStrip } from './useStrip.ts'

const RecordingView = lazy(() => import('./view/RecordingView.tsx'))

/** A recording on the job page: what it is, its strip, and the way to look into it. */
export function RecordingStrip({ recording }: { readonly recording: JobState['recordings'][number] }) {
  const [open, setOpen] = useState(false)
  const strip = useStrip(recording.blob)
  const length = Number(recording.to ?? 0) - Number(recording.from ?? 0)
  return (
    <figure className={css.strip}>
      <figcaption>
        <strong>
          <bdi>{recording.name}</bdi>
        </strong>{' '}
        <span className={css.hint}>
          {t('strip.what', {
            length: elapsed(length, 1),
            messages: recording.messages,
            units: recording.units.length,
          })}
        </span>
      </figcaption>
      {strip === null || strip.messages === 0 ? (
        <EventPicture recording={recording} />
      ) : (
        <StripPicture strip={strip} />
      )}
      <button type="button" className={formCss.plain} onClick={() => setOpen(true)}>
        {t('strip.open')} <span className="sr">{recording.name}</span>
      </button>
      {open && (
        <Suspense fallback={<p role="status">{t('app.loading')}</p>}>
          <RecordingView recording={recording} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </figure>
  )
}
