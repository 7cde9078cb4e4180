/**
 * @module DoIP messages out of a byte stream (one direction of one TCP connection).
 *
 * One piece may hold several messages and a message may span pieces. After lost bytes the stream goes on at the
 * end of the broken message when that is known, else at the next eight bytes that are surely a header.
 * Memory: one message of at most `LONGEST_PAYLOAD` bytes, grown as the bytes arrive, never as they are claimed.
 */

import type { Where } from '../finding/index.ts'
import type { RecordedTime } from '../frame/index.ts'
import { HEADER_LENGTH, headerFault, readHeader, surelyHeader } from './header.ts'

/** When and where bytes stand in the recording. */
export interface Mark {
  readonly time: RecordedTime
  readonly where: Where
}

/** One message of the stream, whole or cut. `payload` belongs to the receiver. */
export interface StreamedMessage {
  readonly version: number
  readonly type: number
  /** Payload length the header claims, in bytes. */
  readonly claimed: number
  /** What arrived of the payload: `claimed` bytes when `complete`. */
  readonly payload: Uint8Array
  readonly complete: boolean
  /** The packet of the header's first byte. */
  readonly first: Mark
  /** The packet of the last byte that arrived. */
  readonly last: Mark
}

/** What a stream tells. */
export interface StreamListener {
  message(message: StreamedMessage): void
  /** `count` bytes before `mark` are no DoIP message; `reason` says why the first of them is none. */
  unreadable(count: number, reason: string, mark: Mark): void
}

/** The messages of one direction of a connection. Feed it bytes in stream order. */
export class DoipStream {
  readonly #listener: StreamListener
  readonly #head = new Uint8Array(HEADER_LENGTH)
  readonly #headMarks: Mark[] = []
  #headFill = 0
  /** Not in step: only a sure header ends this. */
  #searching: boolean
  #unreadable = 0
  #unreadableFrom: Mark | undefined
  #reason = ''
  /** Bytes of a broken message still to pass over. */
  #toSkip = 0
  #type = -1
  #version = 0
  #claimed = 0
  #payload = new Uint8Array(0)
  #payloadFill = 0
  #last: Mark | undefined

  /** `fromStart` is true when the first byte fed begins the connection, false when the recording began later. */
  constructor(listener: StreamListener, fromStart: boolean) {
    this.#listener = listener
    this.#searching = !fromStart
    if (!fromStart) this.#reason = 'the recording begins inside the connection'
  }

  /** Bytes of memory held for the message in progress. */
  get held(): number {
    return this.#payload.length
  }

  /** Takes the next bytes `bytes[from..to)` of the stream. They are copied where they must outlive the call. */
  feed(bytes: Uint8Array, from: number, to: number, mark: Mark): void {
    let at = from
    while (at < to) {
      if (this.#toSkip > 0) {
        const passed = Math.min(this.#toSkip, to - at)
        this.#toSkip -= passed
        at += passed
      } else if (this.#type >= 0) {
        at = this.#fillPayload(bytes, at, to, mark)
      } else {
        this.#head[this.#headFill] = bytes[at] ?? 0
        this.#headMarks[this.#headFill] = mark
        this.#headFill += 1
        at += 1
        if (this.#headFill === HEADER_LENGTH) this.#judgeHeader(mark)
      }
    }
  }

  /** `lost` bytes of the stream are missing here. */
  gap(lost: number): void {
    if (this.#toSkip > 0 || this.#type >= 0) {
      const remaining = this.#type >= 0 ? this.#claimed - this.#payloadFill : this.#toSkip
      if (this.#type >= 0) this.#deliver(false)
      this.#toSkip = Math.max(remaining - lost, 0)
      if (lost > remaining) this.#lose('bytes before it are missing')
    } else {
      this.#dropHead()
      this.#lose('bytes before it are missing')
    }
  }

  /** The stream is over, or another connection begins: what is unfinished is told as cut. */
  end(): void {
    if (this.#type >= 0) this.#deliver(false)
    this.#dropHead()
    this.#tellUnreadable()
    this.#toSkip = 0
    this.#lose('the connection was over')
  }

  #lose(reason: string): void {
    if (!this.#searching) this.#reason = reason
    this.#searching = true
  }

  #judgeHeader(mark: Mark): void {
    const fault = this.#searching ? undefined : headerFault(this.#head, 0)
    if (fault !== undefined) this.#lose(fault)
    if (this.#searching && !surelyHeader(this.#head, 0)) {
      this.#countUnreadable(1)
      this.#head.copyWithin(0, 1)
      this.#headMarks.shift()
      this.#headFill -= 1
      return
    }
    this.#tellUnreadable()
    this.#searching = false
    const header = readHeader(this.#head, 0)
    this.#type = header.type
    this.#version = header.version
    this.#claimed = header.length
    this.#payload = new Uint8Array(Math.min(header.length, 2048))
    this.#payloadFill = 0
    this.#last = mark
    if (header.length === 0) this.#deliver(true)
  }

  #fillPayload(bytes: Uint8Array, at: number, to: number, mark: Mark): number {
    const count = Math.min(to - at, this.#claimed - this.#payloadFill)
    const needed = this.#payloadFill + count
    if (needed > this.#payload.length) {
      const grown = new Uint8Array(Math.min(this.#claimed, Math.max(needed, this.#payload.length * 2)))
      grown.set(this.#payload.subarray(0, this.#payloadFill))
      this.#payload = grown
    }
    this.#payload.set(bytes.subarray(at, at + count), this.#payloadFill)
    this.#payloadFill = needed
    this.#last = mark
    if (needed === this.#claimed) this.#deliver(true)
    return at + count
  }

  #deliver(complete: boolean): void {
    const first = this.#headMarks[0]
    const last = this.#last
    const type = this.#type
    this.#type = -1
    this.#headFill = 0
    if (first === undefined || last === undefined) return
    const payload =
      this.#payload.length === this.#payloadFill ? this.#payload : this.#payload.slice(0, this.#payloadFill)
    this.#payload = new Uint8Array(0)
    this.#listener.message({
      version: this.#version,
      type,
      claimed: this.#claimed,
      payload,
      complete,
      first,
      last,
    })
  }

  #dropHead(): void {
    if (this.#headFill === 0) return
    if (!this.#searching) this.#reason = 'the header is cut'
    this.#countUnreadable(this.#headFill)
    this.#headFill = 0
  }

  #countUnreadable(count: number): void {
    if (this.#unreadable === 0) this.#unreadableFrom = this.#headMarks[0]
    this.#unreadable += count
  }

  #tellUnreadable(): void {
    if (this.#unreadable > 0 && this.#unreadableFrom !== undefined) {
      this.#listener.unreadable(this.#unreadable, this.#reason, this.#unreadableFrom)
    }
    this.#unreadable = 0
    this.#unreadableFrom = undefined
  }
}
