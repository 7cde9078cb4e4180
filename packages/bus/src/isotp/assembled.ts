/** @module A message as an assembler tells it: one object, filled anew for each. */

import type { Where } from '../finding/index.ts'
import type { CanFrame, Direction, RecordedTime, ReusedWhere } from '../frame/index.ts'
import type { Incomplete } from './incomplete.ts'
import type { Lane } from './lane.ts'
import type { Transfer } from './transfer.ts'

/** Bytes that arrived and belong together, and what they came as. */
export interface Arrived {
  /** Where the message stands: `length` bytes from `start` on. */
  readonly bytes: Uint8Array
  readonly start: number
  readonly length: number
  /** Bytes the message has or should have had. */
  readonly expected: number
  readonly incomplete: Incomplete | undefined
  readonly startTime: RecordedTime
  /** Time of the last frame that belongs to it. */
  readonly time: RecordedTime
  readonly where: Where | ReusedWhere
  /** Of its first frame. */
  readonly direction: Direction | undefined
  /** A whole message with a pause longer than N_Cr in it: what had arrived before that. */
  readonly late: Transfer['late']
}

/**
 * A message, or what arrived of one. The object, its times, its place and its bytes are used again: they are valid
 * during the call only. But the bytes of messages longer than 256 are never written again.
 */
export interface Assembled extends Arrived {
  readonly lane: Lane
  readonly segmented: boolean
  /** The flow control of this lane was heard while the transfer ran. */
  readonly flowLane: Lane | undefined
  readonly shortestGap: number
  readonly longestGap: number
  readonly gaps: number
}

/** The one object an assembler tells its messages by. */
export type Told = { -readonly [Part in keyof Assembled]: Assembled[Part] }

const NOTHING = new Uint8Array(0)

/** One to be filled. */
export function newTold(lane: Lane, { time, where }: Pick<Told, 'time' | 'where'>): Told {
  return {
    lane,
    bytes: NOTHING,
    start: 0,
    length: 0,
    expected: 0,
    incomplete: undefined,
    startTime: time,
    time,
    where,
    segmented: false,
    direction: undefined,
    flowLane: undefined,
    late: undefined,
    shortestGap: 0,
    longestGap: 0,
    gaps: 0,
  }
}

/** Fills it with the message of a single frame. */
export function fillSingle(told: Told, lane: Lane, frame: CanFrame, start: number, length: number): void {
  told.lane = lane
  told.bytes = frame.data
  told.start = start
  told.length = length
  told.expected = length
  told.incomplete = undefined
  told.startTime = frame.time
  told.time = frame.time
  told.where = frame.where
  told.segmented = false
  told.direction = frame.direction
  told.flowLane = undefined
  told.late = undefined
  told.shortestGap = 0
  told.longestGap = 0
  told.gaps = 0
}

/** Fills it with what arrived by a transfer that is over. */
export function fillSegmented(
  told: Told,
  lane: Lane,
  transfer: Transfer,
  incomplete: Incomplete | undefined,
): void {
  told.lane = lane
  told.bytes = transfer.bytes
  told.start = 0
  told.length = transfer.received
  told.expected = transfer.expected
  told.incomplete = incomplete
  told.startTime = transfer.startTime
  told.time = transfer.lastTime
  told.where = transfer.lastWhere
  told.segmented = true
  told.direction = transfer.direction
  told.flowLane = transfer.flowLane
  told.late = incomplete === undefined ? transfer.late : undefined
  told.shortestGap = transfer.gaps === 0 ? 0 : transfer.shortestGap
  told.longestGap = transfer.longestGap
  told.gaps = transfer.gaps
}
