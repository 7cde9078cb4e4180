import type { JobState } from '@shearline/jobfile'
import { number } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import css from './recording.module.css'

type Recording = JobState['recordings'][number]

const marks: Readonly<Record<Recording['events'][number]['what'], string>> = {
  'session-opened': 'M-4 -9H4V9H-4Z',
  reset: 'M0 -9 6 0 0 9 -6 0Z',
  muted: 'M-5 -2H5V2H-5Z',
  'faults-cleared': 'M-6 -6 6 6M6 -6-6 6',
  refused: 'M-6 0H6M0 -6V6',
  'supply-low': 'M-7 -6H7L0 7Z',
}

/** A recording as a strip of time, with what it shows being done to the car. */
export function RecordingStrip({ recording }: { readonly recording: Recording }) {
  const from = Number(recording.from ?? 0)
  const to = Number(recording.to ?? 0)
  const length = Math.max(to - from, 1e-6)
  const kinds = [...new Set(recording.events.map((event) => event.what))]
  return (
    <figure className={css.strip}>
      <figcaption>
        <strong>{recording.name}</strong>{' '}
        <span className={css.hint}>
          {t('strip.what', {
            seconds: number(to - from, 1),
            messages: recording.messages,
            units: recording.units.length,
          })}
        </span>
      </figcaption>
      <svg viewBox="0 0 320 34" role="img" aria-label={t('strip.events', { count: recording.events.length })}>
        <rect className={css.stripBody} x="1" y="8" width="318" height="18" rx="4" />
        {recording.events.map((event, index) => (
          <path
            // biome-ignore lint/suspicious/noArrayIndexKey: events of a recording never change
            key={index}
            className={css.stripMark}
            d={marks[event.what]}
            transform={`translate(${8 + (304 * (Number(event.time) - from)) / length} 17)`}
          />
        ))}
      </svg>
      {kinds.length > 0 && (
        <ul className={css.legend}>
          {kinds.map((kind) => (
            <li key={kind}>
              <svg viewBox="-10 -10 20 20" aria-hidden="true">
                <path className={css.stripMark} d={marks[kind]} />
              </svg>
              {t(`event.${kind}`, { count: recording.events.filter((event) => event.what === kind).length })}
            </li>
          ))}
        </ul>
      )}
    </figure>
  )
}
