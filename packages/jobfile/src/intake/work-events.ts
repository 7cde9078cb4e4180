import type { WorkEvent, WorkEventKind } from '@shearline/keywork'
import type { BodyInput } from '../facts/index.ts'

type Recording = Pick<BodyInput<'recording-attached'>, 'name' | 'events'>
type RecordedEvent = NonNullable<Recording['events']>[number]

/** Recordings whose clock counts from 1970 share one clock with each other; others count from power-up. */
const epochSeconds = 1_000_000_000

const eventKinds: Readonly<Record<RecordedEvent['what'], WorkEventKind | null>> = {
  'session-opened': null,
  reset: 'reset',
  muted: 'muted',
  'faults-cleared': 'cleared',
  refused: null,
  'supply-low': 'supply-low',
}

/** What a recording shows being done to control units, as the comparison of scans takes it. */
export function workEventsOf(recording: Recording): readonly WorkEvent[] {
  const events: WorkEvent[] = []
  for (const { unit, what, time, detail } of recording.events ?? []) {
    const kind = eventKinds[what]
    if (kind === null) continue
    const seen = { recording: recording.name, seconds: time }
    const evidence: WorkEvent['evidence'] =
      detail === undefined
        ? { code: 'recorded', params: seen }
        : { code: 'recorded-detail', params: { ...seen, detail } }
    events.push({ kind, unit, time: Number(time) >= epochSeconds ? time : null, evidence })
  }
  return events
}
