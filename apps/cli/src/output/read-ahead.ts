/**
 * @module Reads a file ahead of what is done with it.
 *
 * A file that lies in memory is copied at the speed of the memory, and one processor alone does not use half of that
 * (docs/decisions/0021). So this thread reads too whenever it would have to wait for the one that reads for it.
 */

import { read, readSync } from 'node:fs'

/** A stretch of a file that is being read into a place, or has been. */
interface Stretch {
  readonly room: Uint8Array
  readonly from: number
  /** Bytes that were read; `undefined` until they are. */
  length: number | undefined
  error: Error | undefined
}

/** A file being read into places of the same length, two or more, by turns. */
export class ReadAhead {
  readonly #file: number
  readonly #free: Uint8Array[]
  /** In the order of the file. */
  readonly #stretches: Stretch[] = []
  #upTo = 0
  #at = 0
  #underWay = 0
  #arrived: () => void = () => {}

  /** Begins to read an open file; one place is left free to be read into here. */
  constructor(file: number, rooms: readonly Uint8Array[]) {
    this.#file = file
    this.#free = [...rooms]
    while (this.#free.length > 1) this.#ask()
  }

  /**
   * The next piece, in the place it was read into: until `giveBack` is called with that place nothing else is read into
   * it. Empty at the end of the file. Throws what the system says when it cannot be read.
   */
  async next(): Promise<{ readonly room: Uint8Array; readonly length: number }> {
    const first = this.#stretches.shift() as Stretch
    await turn()
    while (isMissing(first) && this.#free.length > 0) {
      this.#readHere()
      await turn()
    }
    while (isMissing(first)) await this.#oneArrives()
    if (first.error !== undefined) throw first.error
    const { room } = first
    let length = first.length as number
    // A read may give less than was asked for, not only at the end: those behind it then stand at a wrong place.
    if (first.from !== this.#at) length = readSync(this.#file, room, 0, room.length, this.#at)
    this.#at += length
    while (this.#free.length > 0) this.#ask()
    return { room, length }
  }

  /** The place of the last piece may be read into. */
  giveBack(room: Uint8Array): void {
    this.#free.push(room)
  }

  /** Waits until nothing is read any more; only then may the file be closed and the places be used for something else. */
  async end(): Promise<void> {
    while (this.#underWay > 0) await this.#oneArrives()
  }

  #stretch(): Stretch {
    const room = this.#free.pop() as Uint8Array
    const stretch: Stretch = { room, from: this.#upTo, length: undefined, error: undefined }
    this.#upTo += room.length
    this.#stretches.push(stretch)
    return stretch
  }

  #ask(): void {
    const stretch = this.#stretch()
    const { room, from } = stretch
    this.#underWay++
    read(this.#file, room, 0, room.length, from, (error, length) => {
      if (error === null) stretch.length = length
      else stretch.error = error
      this.#underWay--
      this.#arrived()
    })
  }

  #readHere(): void {
    const stretch = this.#stretch()
    stretch.length = readSync(this.#file, stretch.room, 0, stretch.room.length, stretch.from)
  }

  #oneArrives(): Promise<void> {
    return new Promise((resolve) => {
      this.#arrived = resolve
    })
  }
}

function isMissing({ length, error }: Stretch): boolean {
  return length === undefined && error === undefined
}

/** Lets the system tell what has been read meanwhile. */
function turn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve))
}
