/** @module A CAN frame as every capture reader hands it on, whatever the recording's format. */

import type { Where } from '../finding/index.ts'

/** An instant as the recording states it: whole seconds, nanoseconds, and how many decimals it wrote. */
export interface RecordedTime {
  readonly seconds: number
  readonly nanoseconds: number
  readonly decimals: number
}

/** One frame on a CAN bus. `data` holds 0 to 8 bytes, 0 to 64 for CAN FD. */
export interface CanFrame {
  readonly time: RecordedTime
  readonly channel: string
  /** 11-bit identifier, or 29-bit when `extended`. */
  readonly id: number
  readonly extended: boolean
  readonly fd: boolean
  readonly remote: boolean
  readonly error: boolean
  readonly data: Uint8Array
  readonly where: Where
}

/** Writes a recorded time as a decimal string of seconds with the recording's own number of decimals. */
export function formatTime(time: RecordedTime): string {
  if (time.decimals === 0) return String(time.seconds)
  const fraction = String(time.nanoseconds).padStart(9, '0').slice(0, time.decimals)
  return `${time.seconds}.${fraction.padEnd(time.decimals, '0')}`
}

/** A recorded time as a number of seconds, for plots and comparisons (loses the last digits of epoch times). */
export function timeSeconds(time: RecordedTime): number {
  return time.seconds + time.nanoseconds / 1e9
}
