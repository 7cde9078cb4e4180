import type { JobState } from '@shearline/jobfile'
import { t } from '../words/index.ts'
import css from './recording.module.css'

type Recording = JobState['recordings'][number]

const shapes: Readonly<Record<Recording['events'][number]['what'], string>> = {
  'session-opened': 'M-4 -9H4V9H-4Z',
  reset: 'M0 -9 7 0 0 9 -7 0Z',
  muted: 'M-7 -3H7V3H-7Z',
  'faults-cleared': 'M-6 -6 6 6M6 -6-6 6',
  refused: 'M-6 0H6M0 -6V6',
  'supply-low': 'M-7 -6H7L0 7Z',
}

/** The events on record along a recording, for a device that does not hold its messages. */
export function EventPicture({ recording }: { readonly recording: Recording }) {
  const from = Number(recording.from ?? 0)
  const length = Math.max(Number(recording.to ?? 0) - from, 1e-6)
  const kinds = [...new Set(recording.events.map((event) => event.what))]
  return (
    <div className={css.picture}>
      <svg viewBox="0 0 320 34" role="img" aria-label={t('strip.events', { count: recording.events.length })}>
        <rect className={css.stripBody} x="1" y="8" width="318" height="18" rx="4" />
        {recording.events.map((event, index) => (
          <path
            // biome-ignore lint/suspicious/noArrayIndexKey: events of a recording never change
            key={index}
            className={css.stripMark}
            d={shapes[event.what]}
            transform={`translate(${8 + (304 * (Number(event.time) - from)) / length} 17)`}
          />
        ))}
      </svg>
      {kinds.length > 0 && (
        <ul className={css.legend}>
          {kinds.map((kind) => (
            <li key={kind}>
              <svg className={css.shape} viewBox="-11 -11 22 22" aria-hidden="true">
                <path className={css.stripMark} d={shapes[kind]} />
              </svg>
              {t(`event.${kind}`, { count: recording.events.filter((event) => event.what === kind).length })}
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}
