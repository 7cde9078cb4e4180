/** @module A segmented transfer under way: what has arrived, and how long it took. */

import type { Where } from '../finding/index.ts'
import {
  type CanFrame,
  copyTime,
  copyWhere,
  type Direction,
  keepTime,
  keepWhere,
  type RecordedTime,
  type ReusedTime,
  type ReusedWhere,
  secondsBetween,
} from '../frame/index.ts'
import type { Lane } from './lane.ts'

/** Longest wait for the next consecutive frame, in seconds (N_Cr, ISO 15765-2 table of timing parameters). */
export const N_CR_SECONDS: number = 1

/** Room made at once for a message, however long it says it will be. */
const FIRST_ROOM_BYTES = 256

/** A segmented transfer that has begun and not ended. One object serves all transfers of a lane, one after the other. */
export interface Transfer {
  /** What has arrived, in a store that grows up to the stated length. */
  bytes: Uint8Array
  received: number
  /** The length its first frame stated. */
  expected: number
  /** Data bytes per frame: every consecutive frame but the last must be as long as the first. */
  frameBytes: number
  nextSequence: number
  direction: Direction | undefined
  readonly startTime: ReusedTime
  readonly lastTime: ReusedTime
  readonly lastWhere: ReusedWhere
  /** Last sign of life, including the receiver's flow control. */
  readonly aliveTime: ReusedTime
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

const NOTHING = new Uint8Array(0)

/** A transfer that has not begun. */
export function newTransfer(): Transfer {
  return {
    bytes: NOTHING,
    received: 0,
    expected: 0,
    frameBytes: 0,
    nextSequence: 1,
    direction: undefined,
    startTime: { seconds: 0, nanoseconds: 0, decimals: 0 },
    lastTime: { seconds: 0, nanoseconds: 0, decimals: 0 },
    lastWhere: { line: undefined, byteOffset: undefined, part: undefined },
    aliveTime: { seconds: 0, nanoseconds: 0, decimals: 0 },
    consecutive: 0,
    shortestGap: Number.MAX_VALUE,
    longestGap: 0,
    gaps: 0,
    late: undefined,
    flowSinceFrame: 0,
    flowLane: undefined,
    overflow: false,
  }
}

/** Begins a transfer of `length` bytes with this first frame, whose data starts at `start`. */
export function begin(transfer: Transfer, frame: CanFrame, start: number, length: number): void {
  // The store of a long message belongs to whoever was told it.
  if (transfer.bytes.length !== FIRST_ROOM_BYTES) transfer.bytes = new Uint8Array(FIRST_ROOM_BYTES)
  transfer.received = 0
  transfer.expected = length
  transfer.frameBytes = frame.data.length
  transfer.nextSequence = 1
  transfer.direction = frame.direction
  transfer.consecutive = 0
  transfer.shortestGap = Number.MAX_VALUE
  transfer.longestGap = 0
  transfer.gaps = 0
  transfer.late = undefined
  transfer.flowSinceFrame = 0
  transfer.flowLane = undefined
  transfer.overflow = false
  copyTime(transfer.startTime, frame.time)
  copyTime(transfer.lastTime, frame.time)
  copyTime(transfer.aliveTime, frame.time)
  copyWhere(transfer.lastWhere, frame.where)
  append(transfer, frame.data, start, frame.data.length - start)
}

/** Notes the pause before a consecutive frame that comes at `time`. */
export function measureGap(transfer: Transfer, time: RecordedTime): void {
  if (transfer.consecutive > 0) {
    const between = Math.max(0, secondsBetween(transfer.lastTime, time))
    transfer.gaps++
    transfer.shortestGap = Math.min(transfer.shortestGap, between)
    transfer.longestGap = Math.max(transfer.longestGap, between)
  }
  const silence = secondsBetween(transfer.aliveTime, time)
  if (silence <= N_CR_SECONDS || transfer.late !== undefined) return
  // A clock with n decimals may be off by one of its last digits at either end of the pause.
  const tolerance = 2 * 10 ** -time.decimals
  if (silence <= N_CR_SECONDS + tolerance) return
  transfer.late = {
    received: transfer.received,
    time: keepTime(transfer.lastTime),
    where: keepWhere(transfer.lastWhere),
    gap: silence,
  }
}

/** Adds `count` bytes of a frame's data. */
export function append(transfer: Transfer, data: Uint8Array, start: number, count: number): void {
  const { received } = transfer
  const needed = received + count
  if (needed > transfer.bytes.length) {
    const larger = new Uint8Array(Math.min(transfer.expected, Math.max(needed, transfer.bytes.length * 2)))
    larger.set(transfer.bytes.subarray(0, received))
    transfer.bytes = larger
  }
  const { bytes } = transfer
  for (let index = 0; index < count; index++) bytes[received + index] = data[start + index] as number
  transfer.received = needed
}
