/**
 * @module One direction of a TCP connection put back in order.
 *
 * Sources: RFC 9293 (sequence numbers modulo 2^32, SYN and FIN each count one, RST, keep-alive). Where bytes are
 * sent twice the first arrival counts. Memory: at most `MOST_PENDING_BYTES` of segments that wait for earlier ones.
 *
 * When is a hole a loss? When the receiver has acknowledged beyond it, the recorder missed the segment: it may
 * still be recorded a little late (`LATE_SECONDS`). When it is not acknowledged, the sender will send it again:
 * the hole stays open until `PATIENCE_SECONDS` have passed, too much waits, or the connection ends.
 */

import type { Mark } from '../doip/index.ts'
import { type RecordedTime, secondsBetween } from '../frame/index.ts'

/** Most bytes kept of segments that wait for an earlier one. */
const MOST_PENDING_BYTES = 1024 * 1024
/** Most segments kept that wait for an earlier one. */
const MOST_PENDING_SEGMENTS = 4096
/** A sequence number further off than this belongs to another connection with the same ports. */
const FAR_BYTES = 16 * 1024 * 1024
const LATE_SECONDS = 0.02
const PATIENCE_SECONDS = 10

/** What a direction tells, in stream order. */
export interface DirectionListener {
  /** A stream begins: at its first byte (`fromStart`), or somewhere inside because the recording began later. */
  begin(fromStart: boolean): void
  bytes(data: Uint8Array, from: number, to: number, mark: Mark): void
  /** `lost` bytes after the first `streamOffset` never came; `mark` is the first packet after them. */
  gap(lost: number, streamOffset: number, mark: Mark): void
  /** Two segments claim different bytes for the same place. */
  conflict(streamOffset: number, mark: Mark): void
  /** The stream is over (FIN, RST, a new connection, the end of the recording). */
  end(): void
}

/** One TCP segment of the direction. `from..to` is what was captured of its payload. */
export interface Segment {
  readonly sequence: number
  readonly syn: boolean
  readonly fin: boolean
  readonly rst: boolean
  readonly data: Uint8Array
  readonly from: number
  readonly to: number
  /** Payload length on the wire, in bytes. */
  readonly length: number
  readonly mark: Mark
}

interface Pending {
  readonly sequence: number
  readonly bytes: Uint8Array
  readonly mark: Mark
}

/** Distance from `b` to `a` modulo 2^32, as a signed number of bytes. */
function ahead(a: number, b: number): number {
  return (a - b) | 0
}

/** One direction of a connection. */
export class TcpDirection {
  readonly #listener: DirectionListener
  #open = false
  /** Sequence number of the next byte to hand on. */
  #next = 0
  /** Sequence number of the stream's first byte. */
  #start = 0
  /** Bytes handed on or lost since `#start`. */
  #offset = 0
  /** Begun by a segment without bytes, perhaps a keep-alive whose number is one too low. */
  #tentative = false
  #known = false
  /** Sorted by sequence number, without overlap. */
  #pending: Pending[] = []
  #held = 0
  #finAt: number | undefined
  #acknowledgedSince: RecordedTime | undefined

  constructor(listener: DirectionListener) {
    this.#listener = listener
  }

  /** Bytes kept of waiting segments. */
  get held(): number {
    return this.#held
  }

  /** Takes a segment of this direction, in the order of the recording. */
  segment(segment: Segment): void {
    let sequence = segment.sequence
    if (segment.syn) {
      sequence = (sequence + 1) >>> 0
      if (!this.#known || sequence !== this.#start) this.#begin(sequence, true)
    } else if (!this.#known) {
      if (segment.rst) return
      this.#begin(sequence, false)
      this.#tentative = segment.length === 0
    }
    if (segment.to > segment.from) this.#accept(sequence, segment)
    if (segment.fin) this.#finAt = (sequence + segment.length) >>> 0
    if (segment.rst) this.finish()
    else this.#closeAtFin()
  }

  /** The other direction acknowledged everything before `acknowledgment`; `time` is that packet's. */
  acknowledged(acknowledgment: number, time: RecordedTime): void {
    const first = this.#pending[0]
    if (first === undefined || this.#acknowledgedSince !== undefined) return
    if (ahead(acknowledgment, first.sequence) >= 0) this.#acknowledgedSince = time
  }

  /** Gives up holes that have been open too long at `time`. */
  expire(time: RecordedTime): void {
    for (;;) {
      const first = this.#pending[0]
      if (first === undefined) break
      const acknowledged = this.#acknowledgedSince
      const late = acknowledged !== undefined && secondsBetween(acknowledged, time) >= LATE_SECONDS
      if (!late && secondsBetween(first.mark.time, time) < PATIENCE_SECONDS) break
      this.#giveUpHole(first)
    }
    this.#closeAtFin()
  }

  /** Nothing more will come: hands on what waits, telling the holes, and ends the stream. */
  finish(): void {
    for (let first = this.#pending[0]; first !== undefined; first = this.#pending[0]) this.#giveUpHole(first)
    this.#finAt = undefined
    if (this.#open) this.#listener.end()
    this.#open = false
  }

  #begin(sequence: number, fromStart: boolean): void {
    this.finish()
    this.#known = true
    this.#start = sequence
    this.#next = sequence
    this.#offset = 0
    this.#tentative = false
    this.#acknowledgedSince = undefined
    this.#open = true
    this.#listener.begin(fromStart)
  }

  #accept(sequence: number, segment: Segment): void {
    const count = segment.to - segment.from
    const distance = ahead(sequence, this.#next)
    if (Math.abs(distance) > FAR_BYTES) {
      this.#begin(sequence, false)
    } else if (this.#tentative && distance === 1) {
      this.#next = sequence
      this.#start = sequence
    }
    this.#tentative = false
    const early = ahead(this.#next, sequence)
    if (early >= count) return
    if (early >= 0) {
      this.#hand(segment.data, segment.from + early, segment.to, segment.mark)
      this.#drain()
    } else {
      this.#wait(sequence, segment)
    }
  }

  #hand(data: Uint8Array, from: number, to: number, mark: Mark): void {
    this.#reopen()
    this.#listener.bytes(data, from, to, mark)
    this.#next = (this.#next + to - from) >>> 0
    this.#offset += to - from
  }

  /** Bytes after the end: the recorder missed the SYN of the next connection. */
  #reopen(): void {
    if (this.#open) return
    this.#open = true
    this.#listener.begin(false)
  }

  #drain(): void {
    let used = 0
    for (const piece of this.#pending) {
      const early = ahead(this.#next, piece.sequence)
      if (early < 0) break
      used += 1
      this.#held -= piece.bytes.length
      if (early < piece.bytes.length) this.#hand(piece.bytes, early, piece.bytes.length, piece.mark)
    }
    if (used === 0) return
    this.#pending.splice(0, used)
    this.#acknowledgedSince = undefined
  }

  /** Keeps the parts of a segment that no waiting piece covers yet. */
  #wait(sequence: number, segment: Segment): void {
    const end = segment.to - segment.from
    let at = 0
    let conflict = false
    const merged: Pending[] = []
    const keep = (to: number): void => {
      if (to <= at) return
      const bytes = new Uint8Array(segment.data.subarray(segment.from + at, segment.from + to))
      merged.push({ sequence: (sequence + at) >>> 0, bytes, mark: segment.mark })
      this.#held += bytes.length
      at = to
    }
    for (const piece of this.#pending) {
      const begins = ahead(piece.sequence, sequence)
      keep(Math.min(begins, end))
      merged.push(piece)
      const ends = begins + piece.bytes.length
      for (let index = Math.max(at, begins); index < Math.min(ends, end); index += 1) {
        if (segment.data[segment.from + index] !== piece.bytes[index - begins]) conflict = true
      }
      at = Math.max(at, Math.min(ends, end))
    }
    keep(end)
    this.#pending = merged
    if (conflict) this.#listener.conflict(this.#offset + ahead(sequence, this.#next), segment.mark)
    while (this.#held > MOST_PENDING_BYTES || this.#pending.length > MOST_PENDING_SEGMENTS) {
      const first = this.#pending[0]
      if (first === undefined) break
      this.#giveUpHole(first)
    }
  }

  #giveUpHole(first: Pending): void {
    const lost = ahead(first.sequence, this.#next)
    if (lost > 0) {
      this.#reopen()
      this.#listener.gap(lost, this.#offset, first.mark)
      this.#offset += lost
      this.#next = first.sequence
    }
    this.#acknowledgedSince = undefined
    this.#drain()
  }

  #closeAtFin(): void {
    if (this.#finAt !== undefined && ahead(this.#next, this.#finAt) >= 0) this.finish()
  }
}
