/**
 * @module The data bytes of a group as one run, whatever blocks they stand in.
 *
 * Memory: a window of two pieces of 64 KiB, or of one unpacked block where the file packs its data.
 */

import type { Where } from '../finding/index.ts'
import { BLOCK_HEADER_BYTES, type Tell } from './blocks.ts'
import { DZ_FIELD_BYTES, type PackedPart, type Part, type PlainPart } from './parts.ts'
import type { Asking } from './source.ts'
import { unpack } from './unpack.ts'

const PIECE_BYTES = 64 * 1024

/** Knows what the runs of a recording still need, so that a driver can let go of the rest. */
export class Horizon {
  readonly #runs: DataRun[] = []

  add(run: DataRun): void {
    this.#runs.push(run)
  }

  /** Nothing before this offset will be asked for again. */
  lowest(): number {
    let lowest = Number.POSITIVE_INFINITY
    for (const run of this.#runs) lowest = Math.min(lowest, run.lowestAhead)
    return lowest
  }
}

/**
 * Where reading can go on after lost bytes: at the next multiple of a record's length; anywhere, because records are
 * found by their offset; or nobody knows where, which ends the run.
 */
export type Boundary = number | 'anywhere' | 'unknown'

/** Where a piece of the window came from. */
interface Origin {
  readonly windowAt: number
  readonly offset: number
  readonly packed: boolean
}

/** Bytes of a group, in order. `bytes[at..end)` is what is at hand. */
export class DataRun {
  bytes: Uint8Array = new Uint8Array(0)
  at = 0
  end = 0
  /** No more bytes will come. */
  ended = false
  readonly #parts: readonly Part[]
  readonly #lowestFrom: number[]
  readonly #tell: Tell
  readonly #horizon: Horizon
  #part = 0
  /** Bytes of the current plain part already read. */
  #read = 0
  #toSkip = 0
  /** Bytes of the run before the window. */
  #before = 0
  #origins: Origin[] = []
  /** Bytes lost after the window: a number, or `unknown`; `undefined` when none are. */
  #lost: number | 'unknown' | undefined

  constructor(parts: readonly Part[], tell: Tell, horizon: Horizon) {
    this.#parts = parts
    this.#tell = tell
    this.#horizon = horizon
    this.#lowestFrom = new Array<number>(parts.length + 1).fill(Number.POSITIVE_INFINITY)
    for (let index = parts.length - 1; index >= 0; index -= 1) {
      this.#lowestFrom[index] = Math.min(parts[index]?.offset ?? 0, this.#lowestFrom[index + 1] ?? 0)
    }
    horizon.add(this)
  }

  /** The lowest offset of the file this run still needs. */
  get lowestAhead(): number {
    const part = this.#parts[this.#part]
    const later = this.#lowestFrom[this.#part + 1] ?? Number.POSITIVE_INFINITY
    if (part === undefined || this.ended) return Number.POSITIVE_INFINITY
    return Math.min(part.offset + (part.kind === 'plain' ? this.#read : 0), later)
  }

  /** Offset in the run of the next byte. */
  get position(): number {
    return this.#before + this.at + this.#toSkip
  }

  /** Goes to a position of the run, ahead or still at hand; false when it has passed. */
  seek(position: number): boolean {
    if (position < this.#before) return false
    const ahead = position - this.position
    if (ahead >= 0) this.skip(ahead)
    else if (this.#toSkip > 0) return false
    else this.at += ahead
    return true
  }

  get available(): number {
    return this.end - this.at
  }

  /** Passes over `count` bytes, at hand or still to come. */
  skip(count: number): void {
    const here = Math.min(count, this.end - this.at)
    this.at += here
    this.#toSkip += count - here
  }

  /** Nothing more of this run is wanted. */
  stop(): void {
    this.ended = true
    this.at = this.end
  }

  /** Where in the file the byte at `windowAt` stands. */
  whereOf(windowAt: number): Where {
    const origin = this.#originOf(windowAt)
    if (origin === undefined) return {}
    const inside = windowAt - origin.windowAt
    return origin.packed
      ? { byteOffset: origin.offset, part: `unpacked byte ${inside}` }
      : { byteOffset: origin.offset + inside }
  }

  /** File offset for a frame's `where`: of the byte itself, or of the packed block it came from. */
  offsetOf(windowAt: number): number {
    const origin = this.#originOf(windowAt)
    if (origin === undefined) return 0
    return origin.packed ? origin.offset : origin.offset + windowAt - origin.windowAt
  }

  #originOf(windowAt: number): Origin | undefined {
    let found: Origin | undefined
    for (const origin of this.#origins) if (origin.windowAt <= windowAt) found = origin
    return found
  }

  /**
   * Sees that at least `least` bytes are at hand, unless the run ends before. `boundary` says where it can go on
   * after lost bytes: see `Boundary`.
   */
  *more(least: number, boundary: Boundary): Asking<void> {
    while (this.available < least && !this.ended) {
      const part = this.#parts[this.#part]
      if (part === undefined) this.ended = true
      else if (part.kind === 'lost') this.#lose()
      else if (this.#lost !== undefined) this.#realign(part, boundary)
      else if (part.kind === 'plain') yield* this.#readPlain(part)
      else yield* this.#readPacked(part)
    }
  }

  #nextPart(): void {
    this.#part += 1
    this.#read = 0
  }

  *#readPlain(part: PlainPart): Asking<void> {
    const left = part.open ? PIECE_BYTES : part.length - this.#read
    const skipped = Math.min(this.#toSkip, part.open ? this.#toSkip : left)
    this.#read += skipped
    this.#toSkip -= skipped
    this.#before += skipped
    const length = Math.min(part.open ? PIECE_BYTES : part.length - this.#read, PIECE_BYTES)
    if (length === 0) return this.#nextPart()
    const offset = part.offset + this.#read
    const bytes = yield { offset, length, forgetBefore: this.#horizon.lowest() }
    this.#read += bytes.length
    this.#append(bytes, offset, false)
    if (bytes.length === length) return
    if (!part.open) {
      this.#tell(
        'mdf-cut',
        'error',
        { byteOffset: offset + bytes.length },
        `the recording ends ${part.length - this.#read} bytes before its data does`,
        'Get the whole file; what was read up to here is shown.',
      )
    }
    this.#part = this.#parts.length
  }

  *#readPacked(part: PackedPart): Asking<void> {
    const offset = part.offset + BLOCK_HEADER_BYTES + DZ_FIELD_BYTES
    const packed = yield { offset, length: part.packedLength, forgetBefore: this.#horizon.lowest() }
    this.#nextPart()
    if (packed.length < part.packedLength) {
      this.#tell(
        'mdf-cut',
        'error',
        { byteOffset: offset + packed.length },
        'the recording ends inside a packed data block',
        'Get the whole file; what was read up to here is shown.',
      )
      this.#part = this.#parts.length
    }
    const { bytes, fault } = unpack(packed, part.originalLength, part.columns)
    if (fault !== undefined && packed.length === part.packedLength) {
      const lost = part.originalLength - bytes.length
      this.#tell(
        'mdf-unpack-failed',
        'error',
        { byteOffset: part.offset },
        `a packed data block cannot be trusted: ${fault}; ${lost} of ${part.originalLength} bytes are lost`,
        'Frames of this block are missing or damaged.',
      )
    }
    this.#append(bytes, part.offset, true)
    if (bytes.length < part.originalLength) this.#lost = part.originalLength - bytes.length
  }

  #lose(): void {
    this.#lost = 'unknown'
    this.#nextPart()
  }

  /** After lost bytes, before `part`: drops the record begun and moves to the next record boundary of the run. */
  #realign(part: Part, boundary: Boundary): void {
    const windowEnd = this.#before + this.end
    const start = part.start !== undefined && part.start >= windowEnd ? part.start : undefined
    const lost = start !== undefined ? start - windowEnd : this.#lost
    this.#lost = undefined
    if (typeof lost !== 'number') {
      this.stop()
      return
    }
    if (this.available === 0 && this.#toSkip >= lost) {
      // Nobody wanted the lost bytes.
      this.#toSkip -= lost
    } else if (boundary === 'unknown') {
      this.stop()
      return
    } else {
      this.#toSkip = boundary === 'anywhere' ? 0 : (boundary - ((windowEnd + lost) % boundary)) % boundary
    }
    this.at = this.end
    this.#before += lost
  }

  /** Adds a piece to the window after what is left of it. */
  #append(piece: Uint8Array, offset: number, packed: boolean): void {
    const left = this.end - this.at
    const skipped = left === 0 ? Math.min(this.#toSkip, piece.length) : 0
    this.#toSkip -= skipped
    const size = left + piece.length
    const target = size > this.bytes.length ? new Uint8Array(Math.max(size, PIECE_BYTES * 2)) : this.bytes
    target.set(this.bytes.subarray(this.at, this.end))
    target.set(piece, left)
    const kept = this.#origins.filter(
      (_, index) => left > 0 && (this.#origins[index + 1]?.windowAt ?? this.end) > this.at,
    )
    this.#origins = kept.map((origin) => ({ ...origin, windowAt: origin.windowAt - this.at }))
    this.#origins.push({ windowAt: left, offset, packed })
    this.#before += this.at
    this.bytes = target
    this.at = skipped
    this.end = size
  }
}
