/** @module A segmented transfer under way: what has arrived, and how long it took. */

import type { Where } from '../finding/index.ts'
import { type CanFrame, type Direction, keepTime, type RecordedTime, secondsBetween } from '../frame/index.ts'
import type { Lane } from './lane.ts'

/** Longest wait for the next consecutive frame, in seconds (N_Cr, ISO 15765-2 table of timing parameters). */
export const N_CR_SECONDS: number = 1

/** Room made at once for a message, however long it says it will be. */
const FIRST_ROOM_BYTES = 256

/** A segmented transfer that has begun and not ended. */
export interface Transfer {
  /** What has arrived, in a store that grows up to the stated length. */
  bytes: Uint8Array
  received: number
  /** The length its first frame stated. */
  readonly expected: number
  /** Data bytes per frame: every consecutive frame but the last must be as long as the first. */
  readonly frameBytes: number
  nextSequence: number
  readonly direction: Direction | undefined
  readonly startTime: RecordedTime
  readonly startWhere: Where
  lastTime: RecordedTime
  lastWhere: Where
  /** Last sign of life, including the receiver's flow control. */
  aliveTime: RecordedTime
  consecutive: number
  /** Seconds between consecutive frames: the shortest and the longest gap, and how many gaps there were. */
  shortestGap: number
  longestGap: number
  gaps: number
  /** The first gap longer than N_Cr: what had arrived, and when, before it. */
  late:
    | { readonly received: number; readonly time: RecordedTime; readonly where: Where; readonly gap: number }
    | undefined
  /** Flow control frames since the last consecutive frame. */
  flowSinceFrame: number
  /** Identifier lane that answered with flow control, once it did. */
  flowLane: Lane | undefined
  overflow: boolean
}

/** A transfer that begins with this first frame, whose data starts at `start`. */
export function newTransfer(frame: CanFrame, start: number, length: number): Transfer {
  const time = keepTime(frame.time)
  const where = { ...frame.where }
  const arrived = frame.data.subarray(start)
  const bytes = new Uint8Array(Math.max(arrived.length, Math.min(length, FIRST_ROOM_BYTES)))
  bytes.set(arrived)
  return {
    bytes,
    received: arrived.length,
    expected: length,
    frameBytes: frame.data.length,
    nextSequence: 1,
    direction: frame.direction,
    startTime: time,
    startWhere: where,
    lastTime: time,
    lastWhere: where,
    aliveTime: time,
    consecutive: 0,
    shortestGap: Number.POSITIVE_INFINITY,
    longestGap: 0,
    gaps: 0,
    late: undefined,
    flowSinceFrame: 0,
    flowLane: undefined,
    overflow: false,
  }
}

/** Notes the pause before a consecutive frame that comes at `time`. */
export function measureGap(transfer: Transfer, time: RecordedTime): void {
  if (transfer.consecutive > 0) {
    const between = Math.max(0, secondsBetween(transfer.lastTime, time))
    transfer.gaps++
    transfer.shortestGap = Math.min(transfer.shortestGap, between)
    transfer.longestGap = Math.max(transfer.longestGap, between)
  }
  // A clock with n decimals may be off by one of its last digits at either end of the pause.
  const tolerance = 2 * 10 ** -time.decimals
  const silence = secondsBetween(transfer.aliveTime, time)
  if (silence > N_CR_SECONDS + tolerance && transfer.late === undefined) {
    transfer.late = {
      received: transfer.received,
      time: transfer.lastTime,
      where: transfer.lastWhere,
      gap: silence,
    }
  }
}

/** Adds `count` bytes of a frame's data. */
export function append(transfer: Transfer, data: Uint8Array, start: number, count: number): void {
  const needed = transfer.received + count
  if (needed > transfer.bytes.length) {
    const larger = new Uint8Array(Math.min(transfer.expected, Math.max(needed, transfer.bytes.length * 2)))
    larger.set(transfer.bytes.subarray(0, transfer.received))
    transfer.bytes = larger
  }
  for (let index = 0; index < count; index++) {
    transfer.bytes[transfer.received + index] = data[start + index] as number
  }
  transfer.received = needed
}
