/** @module Bytes on their way through a reader: chunks go in cut anywhere, whole pieces come out. */

const NOTHING: Uint8Array = new Uint8Array(0)

/**
 * Holds at most one piece that spans chunks (its size is the caller's to bound); whole pieces inside one
 * chunk come out without a copy. A piece is valid until the next call.
 */
export class ByteQueue {
  #chunk: Uint8Array = NOTHING
  #at = 0
  #carry: Uint8Array = new Uint8Array(256)
  #carried = 0
  /** Offset in the recording of the next byte that comes out. */
  offset = 0

  /** Sets the next chunk. The one before must be used up: call `take`, `skip` or `byte` until they have no more. */
  push(chunk: Uint8Array): void {
    this.#chunk = chunk
    this.#at = 0
  }

  /** The chunk that comes out next, `at` the place in it; `undefined` while a piece spans chunks. */
  get chunk(): Uint8Array | undefined {
    return this.#carried === 0 ? this.#chunk : undefined
  }

  /** The place in `chunk` of the next byte that comes out. */
  get at(): number {
    return this.#at
  }

  /** Bytes that can come out now. */
  get available(): number {
    return this.#carried + this.#chunk.length - this.#at
  }

  /** The next `length` bytes, or `undefined` when they have not all come yet (they are then kept). */
  take(length: number): Uint8Array | undefined {
    const rest = this.#chunk.length - this.#at
    if (this.#carried === 0 && rest >= length) {
      const piece = this.#chunk.subarray(this.#at, this.#at + length)
      this.#at += length
      this.offset += length
      return piece
    }
    const wanted = Math.min(Math.max(length - this.#carried, 0), rest)
    if (this.#carry.length < this.#carried + wanted) {
      const larger = new Uint8Array(Math.max(this.#carry.length * 2, this.#carried + wanted))
      larger.set(this.#carry.subarray(0, this.#carried))
      this.#carry = larger
    }
    this.#carry.set(this.#chunk.subarray(this.#at, this.#at + wanted), this.#carried)
    this.#at += wanted
    this.#carried += wanted
    if (this.#carried < length) return undefined
    this.#carried = 0
    this.offset += length
    return this.#carry.subarray(0, length)
  }

  /** The next byte, or -1 when none has come yet. */
  byte(): number {
    if (this.#carried > 0) return this.take(1)?.[0] ?? -1
    if (this.#at >= this.#chunk.length) return -1
    this.offset++
    return this.#chunk[this.#at++] as number
  }

  /** Passes over up to `length` bytes and says how many those were. */
  skip(length: number): number {
    const fromCarry = Math.min(this.#carried, length)
    if (fromCarry > 0) {
      this.#carry.copyWithin(0, fromCarry, this.#carried)
      this.#carried -= fromCarry
    }
    const fromChunk = Math.min(this.#chunk.length - this.#at, length - fromCarry)
    this.#at += fromChunk
    this.offset += fromCarry + fromChunk
    return fromCarry + fromChunk
  }
}
