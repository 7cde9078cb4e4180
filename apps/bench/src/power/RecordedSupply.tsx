import type { JobState } from '@shearline/jobfile'
import { useEffect } from 'react'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { useStrip } from '../recording/useStrip.ts'
import { volts } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import { type RecordedVolts, recordedVolts } from './recording-volts.ts'

/** The supply a recording carries, offered to the watch; shows nothing when no control unit told it. */
export function RecordedSupply({
  recording,
  used,
  onUse,
}: {
  readonly recording: JobState['recordings'][number]
  /** Its lowest is on record already. */
  readonly used: boolean
  readonly onUse: (told: RecordedVolts) => void
}) {
  const { record } = useDesk()
  const strip = useStrip(recording.blob)
  const told = strip === null ? null : recordedVolts(strip)
  const count = told?.readings.length ?? 0
  // biome-ignore lint/correctness/useExhaustiveDependencies: told anew only when the recording or its place on record changes
  useEffect(() => {
    if (used && told !== null) onUse(told)
  }, [used, count])
  if (told === null) return null
  const use = async () => {
    const body = {
      volts: Math.round(told.lowestVolts * 1000) / 1000,
      during: 'session',
      source: 'recording',
      lowestOf: count,
      blob: recording.blob,
      readAt: 'socket',
    } as const
    await record([{ kind: 'supply-read', body }])
    onUse(told)
  }
  return (
    <p>
      {t('power.recording', { name: recording.name, count, low: volts(told.lowestVolts) })}{' '}
      {!used && (
        <button type="button" className={formCss.plain} onClick={() => void use().catch(() => undefined)}>
          {t('power.recording.use')}
        </button>
      )}
    </p>
  )
}
