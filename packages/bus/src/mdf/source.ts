/**
 * @module How the MDF reader gets its bytes.
 *
 * MDF is made of blocks that point at each other by file offset. The reader is written once, as a generator that
 * asks for pieces (`BytesWanted`); two drivers answer it: one from a source with random access, one from chunks
 * that arrive in order and are kept only as long as the reader may still ask for them.
 */

/** A recording that can be read anywhere: a file opened by the caller, or bytes in memory. */
export interface RandomAccess {
  /** Length of the recording in bytes. */
  readonly size: number
  /** Up to `length` bytes from `offset` on; fewer only at the end of the recording. */
  read(offset: number, length: number): Uint8Array
}

/** What the reader asks for. The answer is valid until the next question. */
export interface BytesWanted {
  readonly offset: number
  readonly length: number
  /** Nothing before this offset will be asked for again. */
  readonly forgetBefore: number
}

/** A reader that asks for bytes and gets them; fewer than asked means that the recording ends there. */
export type Asking<Result> = Generator<BytesWanted, Result, Uint8Array>

/** Bytes in memory as a source. */
export function bytesSource(bytes: Uint8Array): RandomAccess {
  return { size: bytes.length, read: (offset, length) => bytes.subarray(offset, offset + length) }
}

/** Answers an asking reader from chunks that arrive in order. */
export class ChunkFeeder {
  readonly #asking: Asking<void>
  readonly #limit: number
  readonly #overflow: (kept: number, wanted: number) => void
  #wanted: BytesWanted | undefined
  #kept = new Uint8Array(64 * 1024)
  /** Offset in the recording of the first byte kept. */
  #base = 0
  #fill = 0

  /**
   * @param limit most bytes kept while waiting for what the reader asked for
   * @param overflow told once when that is not enough; the reader is then stopped
   */
  constructor(asking: Asking<void>, limit: number, overflow: (kept: number, wanted: number) => void) {
    this.#asking = asking
    this.#limit = limit
    this.#overflow = overflow
    this.#step(asking.next())
  }

  push(chunk: Uint8Array): void {
    if (this.#wanted === undefined) return
    let at = 0
    while (at < chunk.length && this.#wanted !== undefined) {
      this.#forget(this.#wanted.forgetBefore)
      // Bytes nobody will ask for again are passed over without being kept.
      const passed = Math.min(
        Math.max(this.#wanted.forgetBefore - this.#base - this.#fill, 0),
        chunk.length - at,
      )
      if (passed > 0) {
        at += passed
        this.#base += passed
        continue
      }
      const room = Math.min(chunk.length - at, Math.max(this.#limit - this.#fill, 0))
      if (room === 0) {
        const wanted = this.#wanted.offset + this.#wanted.length
        this.#stop()
        this.#overflow(this.#limit, wanted)
        return
      }
      this.#keep(chunk, at, at + room)
      at += room
      this.#answer(false)
    }
  }

  end(): void {
    while (this.#wanted !== undefined) {
      this.#forget(this.#wanted.forgetBefore)
      this.#answer(true)
    }
    this.#stop()
  }

  #answer(ended: boolean): void {
    while (this.#wanted !== undefined) {
      const { offset, length } = this.#wanted
      const arrived = this.#base + this.#fill
      if (offset + length > arrived && !ended) return
      const from = Math.max(offset - this.#base, 0)
      const to = Math.max(Math.min(offset + length, arrived) - this.#base, from)
      this.#step(this.#asking.next(this.#kept.subarray(from, Math.min(to, this.#fill))))
    }
  }

  #step(result: IteratorResult<BytesWanted, void>): void {
    this.#wanted = result.done === true ? undefined : result.value
    if (this.#wanted === undefined) this.#kept = new Uint8Array(0)
  }

  #forget(before: number): void {
    const drop = Math.min(Math.max(before - this.#base, 0), this.#fill)
    // Moving the rest costs time: only when at least half can go.
    if (drop * 2 < this.#fill || drop === 0) return
    this.#kept.copyWithin(0, drop, this.#fill)
    this.#base += drop
    this.#fill -= drop
  }

  #keep(chunk: Uint8Array, from: number, to: number): void {
    const needed = this.#fill + to - from
    if (needed > this.#kept.length) {
      const grown = new Uint8Array(Math.max(needed, Math.min(this.#kept.length * 2, this.#limit)))
      grown.set(this.#kept.subarray(0, this.#fill))
      this.#kept = grown
    }
    this.#kept.set(chunk.subarray(from, to), this.#fill)
    this.#fill = needed
  }

  #stop(): void {
    this.#wanted = undefined
    this.#asking.return()
    this.#kept = new Uint8Array(0)
    this.#fill = 0
  }
}

/**
 * Answers an asking reader from a source with random access. Yields the number of bytes read so far after each
 * piece, so that the caller can show progress or stop (by leaving the loop).
 */
export function* answerFrom(asking: Asking<void>, source: RandomAccess): Generator<number, void, void> {
  let read = 0
  try {
    for (let step = asking.next(); step.done !== true; ) {
      const { offset, length } = step.value
      const bytes =
        offset >= source.size
          ? new Uint8Array(0)
          : source.read(offset, Math.min(length, source.size - offset))
      read += bytes.length
      step = asking.next(bytes)
      yield read
    }
  } finally {
    asking.return()
  }
}
