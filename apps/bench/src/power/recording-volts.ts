/** @module The supply as a recording tells it: PID 42 and standard identifiers that control units answered. */
import type { VoltsReading } from '@shearline/keywork'
import { marksOf } from '../recording/marks.ts'
import type { Strip } from '../recording/strip.ts'

/** What one recording says about the supply. */
export interface RecordedVolts {
  /** Minutes from the recording's first message. */
  readonly readings: readonly VoltsReading[]
  readonly lowestVolts: number
}

/** The unit that told it most often counts: two units behind different wires must not be mixed. Null: none told it. */
export function recordedVolts(strip: Strip): RecordedVolts | null {
  const byUnit = Map.groupBy(marksOf(strip).supply, (stretch) => stretch.unit)
  const [stretches] = [...byUnit.values()].sort((left, right) => right.length - left.length)
  if (stretches === undefined) return null
  const readings = stretches
    .flatMap(({ from, to, low, high }) =>
      from === to
        ? [{ minutes: from / 60, volts: low }]
        : [
            { minutes: from / 60, volts: high },
            { minutes: to / 60, volts: low },
          ],
    )
    .toSorted((left, right) => left.minutes - right.minutes)
  return { readings, lowestVolts: Math.min(...readings.map((reading) => reading.volts)) }
}
