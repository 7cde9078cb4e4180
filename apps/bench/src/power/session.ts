/** @module Readings of the session as minutes from its beginning. */
import type { JobState } from '@shearline/jobfile'
import type { VoltsReading } from '@shearline/keywork'

const MINUTE_MS = 60_000

/** The instant the plan's first step began: the session's opening, else its first reading; null before both. */
export function beganAt(
  opened: readonly { readonly at: string }[],
  readings: JobState['supply']['readings'],
): number | null {
  const first = readings.find((reading) => reading.during === 'session')
  const at = opened.at(-1)?.at ?? first?.at
  return at === undefined ? null : Date.parse(at)
}

/** Readings of the session from its beginning on. Those before it, of an earlier session, are left out. */
export function sinceBeginning(
  readings: JobState['supply']['readings'],
  began: number | null,
): readonly VoltsReading[] {
  if (began === null) return []
  return readings
    .filter((reading) => reading.during === 'session')
    .map((reading) => ({ minutes: minutesSince(began, Date.parse(reading.at)), volts: reading.volts }))
    .filter((reading) => reading.minutes >= 0)
}

export function minutesSince(began: number, now: number): number {
  return (now - began) / MINUTE_MS
}
