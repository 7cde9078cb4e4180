/** @module Identifiers that were read before, found by the bytes they are written with. */

const SLOTS = 8192
const MASK = SLOTS - 1
/** More than half full the table is slow; no vehicle has as many identifiers on a bus. */
const MOST_IDS = SLOTS / 2
/** Marks a 29-bit identifier. */
const EXTENDED = 0x8000_0000 | 0

/**
 * A table of identifiers by two 32-bit words, whatever a format's words are. Open addressing: a free slot ends the
 * search. The words 0, 0 are a free slot and never an identifier.
 */
export class KnownIds {
  readonly #words: Int32Array = new Int32Array(SLOTS * 2)
  readonly #ids: Int32Array = new Int32Array(SLOTS)
  /** 1 where frames of the identifier need only be counted. */
  readonly plain: Uint8Array = new Uint8Array(SLOTS)
  /** Hex digits of data on the identifier's last line. */
  readonly digits: Uint8Array = new Uint8Array(SLOTS)
  #size = 0

  /** The slot of an identifier, or -1. */
  find(first: number, second: number): number {
    const words = this.#words
    let slot = home(first, second)
    for (;;) {
      const word = words[slot * 2] as number
      if (word === first && words[slot * 2 + 1] === second) return slot
      if (word === 0 && words[slot * 2 + 1] === 0) return -1
      slot = (slot + 1) & MASK
    }
  }

  /** Adds an identifier unless it is known or the table is full. */
  add(first: number, second: number, id: number, extended: boolean, plain: boolean): void {
    const known = this.find(first, second)
    if (known >= 0) {
      if (plain) this.plain[known] = 1
      return
    }
    if (this.#size >= MOST_IDS) return
    this.#size++
    const words = this.#words
    let slot = home(first, second)
    while (words[slot * 2] !== 0 || words[slot * 2 + 1] !== 0) slot = (slot + 1) & MASK
    words[slot * 2] = first
    words[slot * 2 + 1] = second
    this.#ids[slot] = extended ? id | EXTENDED : id
    this.plain[slot] = plain ? 1 : 0
  }

  /** Sets a frame's identifier to the one in a slot, and its kind to a classic data frame. */
  set(
    slot: number,
    frame: { id: number; extended: boolean; fd: boolean; remote: boolean; error: boolean },
  ): void {
    const id = this.#ids[slot] as number
    frame.extended = id < 0
    frame.id = id & 0x1fff_ffff
    frame.fd = false
    frame.remote = false
    frame.error = false
  }
}

function home(first: number, second: number): number {
  return (Math.imul(first ^ Math.imul(second, 0x2c1b3c6d), 0x9e3779b1) >>> 19) & MASK
}
