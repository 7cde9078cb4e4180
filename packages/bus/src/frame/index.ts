/** @module A CAN frame as every capture reader hands it on, whatever the recording's format. */

import type { Where } from '../finding/index.ts'

/** An instant as the recording states it: whole seconds, nanoseconds, and how many decimals it wrote. */
export interface RecordedTime {
  readonly seconds: number
  readonly nanoseconds: number
  readonly decimals: number
}

/** Whether the recorder received a frame or sent it itself. */
export type Direction = 'received' | 'transmitted'

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
  /** Seen from the recorder, where the recording says it. */
  readonly direction?: Direction | undefined
  readonly where: Where
}

/** A time that is written over. */
export type ReusedTime = { -readonly [Part in keyof RecordedTime]: number }

/** A place that is written over. */
export interface ReusedWhere {
  line: number | undefined
  byteOffset: number | undefined
  part: string | undefined
}

/** Writes a recorded time as a decimal string of seconds with the recording's own number of decimals. */
export function formatTime(time: RecordedTime): string {
  if (time.decimals === 0) return String(time.seconds)
  // With a one in front all nine digits are written.
  const fraction = String(1_000_000_000 + time.nanoseconds).slice(1, time.decimals + 1)
  return `${time.seconds}.${fraction.padEnd(time.decimals, '0')}`
}

/** A recorded time as a number of seconds, for plots and comparisons (loses the last digits of epoch times). */
export function timeSeconds(time: RecordedTime): number {
  return time.seconds + time.nanoseconds / 1e9
}

/** Seconds from `earlier` to `later`, exact to the nanosecond for spans of days; negative when time went backwards. */
export function secondsBetween(earlier: RecordedTime, later: RecordedTime): number {
  return later.seconds - earlier.seconds + (later.nanoseconds - earlier.nanoseconds) / 1e9
}

/** A copy of a time that may be kept (readers reuse theirs, see `CaptureSink.frame`). */
export function keepTime(time: RecordedTime): RecordedTime {
  return { seconds: time.seconds, nanoseconds: time.nanoseconds, decimals: time.decimals }
}

/** Makes `into` the same time, without a new object. */
export function copyTime(into: ReusedTime, time: RecordedTime): void {
  into.seconds = time.seconds
  into.nanoseconds = time.nanoseconds
  into.decimals = time.decimals
}

/** Makes `into` the same place, without a new object. */
export function copyWhere(into: ReusedWhere, where: Where): void {
  into.line = where.line
  into.byteOffset = where.byteOffset
  into.part = where.part
}

/** A copy of a place that may be kept: without the parts it does not have. */
export function keepWhere(where: ReusedWhere | Where): Where {
  const kept: { line?: number; byteOffset?: number; part?: string } = {}
  if (where.line !== undefined) kept.line = where.line
  if (where.byteOffset !== undefined) kept.byteOffset = where.byteOffset
  if (where.part !== undefined) kept.part = where.part
  return kept
}

/** A copy of a frame that may be kept (readers reuse theirs, see `CaptureSink.frame`). */
export function keepFrame(frame: CanFrame): CanFrame {
  return { ...frame, time: keepTime(frame.time), data: new Uint8Array(frame.data), where: { ...frame.where } }
}

/** Writes an identifier as people and JSON show it: three upper-case hex digits, eight when 29-bit. */
export function formatId(id: number, extended: boolean): string {
  return id
    .toString(16)
    .toUpperCase()
    .padStart(extended ? 8 : 3, '0')
}
