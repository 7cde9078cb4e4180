/** @module A queue of bounded length: what enters is shown once enough has come after it. */

import type { Heard } from '../addressing/heard.ts'
import type { Finding } from '../finding/index.ts'
import type { Arrived } from '../isotp/assembled.ts'
import { Segment, type Waiting } from './segment.ts'

/** Who is shown the entries of a queue, in their order. */
export interface Shown {
  /** Whether the bytes of messages are kept after the call. */
  readonly keepsBytes: boolean
  message(waiting: Waiting): void
  finding(from: Heard, finding: Finding): void
}

/** Holds messages and findings in their order; the oldest is shown when there are too many, or too many bytes. */
export class LookAhead {
  readonly #mostEntries: number
  readonly #mostBytes: number
  readonly #shown: Shown
  /** The segment being filled is the last, the one being emptied the first. */
  readonly #segments: Segment[] = []
  /** An emptied segment, to be filled next. */
  #spare: Segment | undefined
  #entries = 0
  #bytes = 0

  constructor(mostEntries: number, mostBytes: number, shown: Shown) {
    this.#mostEntries = mostEntries
    this.#mostBytes = mostBytes
    this.#shown = shown
  }

  /** Takes a message, whose objects and bytes may be reused afterwards up to 1 kB; longer payloads are kept. */
  message(from: Heard, message: Arrived): void {
    this.#room().add(from, message)
    this.#bytes += message.length
    this.#passOn()
  }

  /** Takes a finding that is shown if its sender is. */
  finding(from: Heard, finding: Finding): void {
    this.#room().addFinding(from, finding)
    this.#passOn()
  }

  /** Shows all that wait. */
  drain(): void {
    while (this.#entries > 0) this.#next()
  }

  #room(): Segment {
    this.#entries++
    const last = this.#segments.at(-1)
    if (last !== undefined && !last.isFull) return last
    const segment = this.#spare ?? new Segment()
    this.#spare = undefined
    segment.clear()
    this.#segments.push(segment)
    return segment
  }

  #passOn(): void {
    while (this.#entries > this.#mostEntries || this.#bytes > this.#mostBytes) this.#next()
  }

  #next(): void {
    const segment = this.#segments[0] as Segment
    this.#bytes -= segment.nextBytes
    this.#entries--
    const entry = segment.take(!this.#shown.keepsBytes)
    if (segment.isEmpty && (segment.isFull || this.#segments.length > 1)) {
      this.#segments.shift()
      this.#spare = segment
    }
    if ('finding' in entry) this.#shown.finding(entry.from, entry.finding)
    else this.#shown.message(entry)
  }
}
