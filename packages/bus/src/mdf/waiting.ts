/**
 * @module Frames whose data bytes come as records of their own, before or after the frame's record.
 * A frame that waits makes those behind it wait, so that the order of records is kept.
 */

import type { FrameParts } from './frames.ts'

const MOST_WAITING = 1024

/** Data bytes that came as records of one group, by the reference that names them. */
export class VariableBytes {
  readonly #kept = new Map<number, Uint8Array>()
  /** References are not written in the file: the first frame gets the first bytes, and so on. */
  readonly #inOrder: boolean
  #next = 0
  #paired = 0

  constructor(inOrder: boolean) {
    this.#inOrder = inOrder
  }

  /** Counts a record of `length` bytes and keeps its bytes, if given, until they are asked for. */
  arrived(length: number, bytes: Uint8Array | undefined): void {
    const reference = this.#next
    this.#next += this.#inOrder ? 1 : 4 + length
    if (bytes === undefined) return
    this.#kept.set(reference, bytes)
    if (this.#kept.size <= MOST_WAITING) return
    // Nobody asked for the oldest.
    for (const oldest of this.#kept.keys()) {
      this.#kept.delete(oldest)
      break
    }
  }

  /** The reference of a frame's bytes, given what its record says. */
  referenceFor(written: number): number {
    if (!this.#inOrder) return written
    this.#paired += 1
    return this.#paired - 1
  }

  /** Hands out the bytes, once. */
  take(reference: number): Uint8Array | undefined {
    const bytes = this.#kept.get(reference)
    this.#kept.delete(reference)
    return bytes
  }
}

interface Waiting {
  readonly lane: number
  readonly frame: FrameParts
  /** Absent for a frame that is whole and only waits for its turn. */
  readonly source: VariableBytes | undefined
  readonly reference: number
  readonly length: number
}

/** Frames that wait, in the order of their records. */
export class WaitingFrames {
  readonly #queue: Waiting[] = []
  readonly #givenUp: (frame: FrameParts) => void
  /** The group of the frame `take` gave last. */
  lane = 0

  /** `givenUp` is told of every frame whose bytes never came. */
  constructor(givenUp: (frame: FrameParts) => void) {
    this.#givenUp = givenUp
  }

  get empty(): boolean {
    return this.#queue.length === 0
  }

  /** A frame that waits for at most `length` bytes. The frame belongs to the queue from then on. */
  waitFor(frame: FrameParts, lane: number, source: VariableBytes, reference: number, length: number): void {
    this.#queue.push({ frame, lane, source, reference, length })
  }

  /** A whole frame that waits for those before it. The frame belongs to the queue from then on. */
  follow(frame: FrameParts, lane: number): void {
    this.#queue.push({ frame, lane, source: undefined, reference: 0, length: 0 })
  }

  /** The first frame, when it is whole. `over`: no more bytes will come. */
  take(over: boolean): FrameParts | undefined {
    for (let first = this.#queue[0]; first !== undefined; first = this.#queue[0]) {
      const { frame, lane, source, reference, length } = first
      if (source !== undefined) {
        const bytes = source.take(reference)
        if (bytes === undefined) {
          if (!over && this.#queue.length < MOST_WAITING) return undefined
          this.#queue.shift()
          this.#givenUp(frame)
          continue
        }
        frame.data = bytes.subarray(0, length)
      }
      this.#queue.shift()
      this.lane = lane
      return frame
    }
    return undefined
  }
}
