/** @module How long until the floor. */

import { trendPerMinute, type VoltsReading } from './readings.ts'

/** Minutes until the floor; null is "not within the plan and four hours more". */
export interface TimeLeft {
  /** One possible battery in twenty crosses before this. */
  readonly low: number | null
  readonly mid: number | null
  readonly high: number | null
}

/** Infinity, "not in the time looked at", as null. */
export function finite(minutes: number): number | null {
  return Number.isFinite(minutes) ? minutes : null
}

/** Minutes to the floor if the readings go on as they do: half as long to twice as long. Null when they do not fall. */
export function trendLeft(recent: readonly VoltsReading[], floorVolts: number): TimeLeft | null {
  const slope = trendPerMinute(recent)
  const last = recent.at(-1)
  if (slope === null || slope >= 0 || last === undefined) return null
  const mid = Math.max(0, (floorVolts - last.volts) / slope)
  return { low: mid / 2, mid, high: mid * 2 }
}

/** The earlier low and mid and the later high of two. */
export function widest(one: TimeLeft, other: TimeLeft): TimeLeft {
  const earlier = (left: number | null, right: number | null): number | null =>
    left === null ? right : right === null ? left : Math.min(left, right)
  const later = one.high === null || other.high === null ? null : Math.max(one.high, other.high)
  return { low: earlier(one.low, other.low), mid: earlier(one.mid, other.mid), high: later }
}
