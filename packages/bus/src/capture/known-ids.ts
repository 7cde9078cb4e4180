/** @module Identifiers that were read before, found by the bytes they are written with. */

import { type Code, choose, i32, i64, jump, jumpIf, type Local, loop } from '../wasm/instructions.ts'

const SLOTS = 8192
const MASK = SLOTS - 1
/** More than half full the table is slow; no vehicle has as many identifiers on a bus. */
const MOST_IDS = SLOTS / 2
/** Marks a 29-bit identifier. */
const EXTENDED = 0x8000_0000 | 0
/** Numbers of one slot: the two words, the identifier, whether it is plain and how many digits its last data had. */
const WORDS = 4
const ID = 2
const NOTES = 3
const PLAIN = 1
const DIGITS_SHIFT = 8

const SECOND_FACTOR = 0x2c1b3c6d
const FACTOR = 0x9e3779b1
/** Leaves the upper bits of 32, as many as number the slots. */
const HASH_SHIFT = 19

/** Numbers a table consists of. */
export const ID_WORDS: number = SLOTS * WORDS

/**
 * A table of identifiers by two 32-bit words, whatever a format's words are. Open addressing: a free slot ends the
 * search. The words 0, 0 are a free slot and never an identifier.
 */
export class KnownIds {
  readonly #words: Int32Array
  #size = 0

  /** Over `words`, `ID_WORDS` zeros, when compiled loops read them too. */
  constructor(words: Int32Array = new Int32Array(ID_WORDS)) {
    this.#words = words
  }

  /** The slot of an identifier, or -1. */
  find(first: number, second: number): number {
    const words = this.#words
    let slot = home(first, second)
    for (;;) {
      const word = words[slot * WORDS] as number
      if (word === first && words[slot * WORDS + 1] === second) return slot
      if (word === 0 && words[slot * WORDS + 1] === 0) return -1
      slot = (slot + 1) & MASK
    }
  }

  /** Adds an identifier unless it is known or the table is full. */
  add(first: number, second: number, id: number, extended: boolean, plain: boolean): void {
    const known = this.find(first, second)
    if (known >= 0) {
      if (plain) this.makePlain(known)
      return
    }
    if (this.#size >= MOST_IDS || (first === 0 && second === 0)) return
    this.#size++
    const words = this.#words
    let slot = home(first, second)
    while (words[slot * WORDS] !== 0 || words[slot * WORDS + 1] !== 0) slot = (slot + 1) & MASK
    words[slot * WORDS] = first
    words[slot * WORDS + 1] = second
    words[slot * WORDS + ID] = extended ? id | EXTENDED : id
    words[slot * WORDS + NOTES] = plain ? PLAIN : 0
  }

  /** Whether frames of the identifier need only be counted. */
  isPlain(slot: number): boolean {
    return ((this.#words[slot * WORDS + NOTES] as number) & PLAIN) !== 0
  }

  /** From now on frames of the identifier need only be counted. */
  makePlain(slot: number): void {
    this.#words[slot * WORDS + NOTES] = (this.#words[slot * WORDS + NOTES] as number) | PLAIN
  }

  /** Hex digits of data on the identifier's last line. */
  digits(slot: number): number {
    return (this.#words[slot * WORDS + NOTES] as number) >> DIGITS_SHIFT
  }

  setDigits(slot: number, digits: number): void {
    const notes = this.#words[slot * WORDS + NOTES] as number
    this.#words[slot * WORDS + NOTES] = (notes & PLAIN) | (digits << DIGITS_SHIFT)
  }

  /** Sets a frame's identifier to the one in a slot, and its kind to a classic data frame. */
  set(
    slot: number,
    frame: { id: number; extended: boolean; fd: boolean; remote: boolean; error: boolean },
  ): void {
    const id = this.#words[slot * WORDS + ID] as number
    frame.extended = id < 0
    frame.id = id & 0x1fff_ffff
    frame.fd = false
    frame.remote = false
    frame.error = false
  }
}

function home(first: number, second: number): number {
  return Math.imul(first ^ Math.imul(second, SECOND_FACTOR), FACTOR) >>> HASH_SHIFT
}

/** Where in the table the slot of a hash stands, in bytes. */
function placeOf(hash: Code): Code {
  const shift = Math.log2(WORDS * 4)
  return i32.and(i32.shrU(hash, i32.const(HASH_SHIFT - shift)), i32.const(MASK << shift))
}

/** `find` as a compiled loop: sets `slot` to the address of the key's slot, or leaves the stretch `notFound` deep. */
export function findSlot(key: Local, table: Local, slot: Local, found: Local, notFound: number): Code {
  const size = i32.const(WORDS * 4)
  const hash = i32.mul(
    i32.xor(i64.toI32(key.get), i32.mul(i64.high(key.get), i32.const(SECOND_FACTOR))),
    i32.const(FACTOR),
  )
  const next = i32.and(i32.add(i32.sub(slot.get, table.get), size), i32.const(ID_WORDS * 4 - 1))
  return [
    ...slot.set(i32.add(table.get, placeOf(hash))),
    ...loop(
      found.set(i64.load(slot.get)),
      choose(i32.eqz(i64.eq(found.get, key.get)), [
        // Two stretches more stand around this place: the loop and the choice.
        jumpIf(notFound + 2, i64.eqz(found.get)),
        slot.set(i32.add(table.get, next)),
        jump(1),
      ]),
    ),
  ]
}

/**
 * The same where all keys have one second word: nearly all identifiers stand in the slot their words lead to, and are
 * known there by the first word. A zero may be a free slot.
 */
export function findSlotByFirst(
  first: Local,
  second: number,
  key: Local,
  table: Local,
  slot: Local,
  found: Local,
  notFound: number,
): Code {
  const mixed = i32.xor(first.get, i32.const(Math.imul(second, SECOND_FACTOR)))
  return [
    ...slot.set(i32.add(table.get, placeOf(i32.mul(mixed, i32.const(FACTOR))))),
    ...choose(i32.or(i32.ne(i32.load(slot.get), first.get), i32.eqz(first.get)), [
      key.set(i64.withUpper(i64.fromI32(first.get), second)),
      findSlot(key, table, slot, found, notFound + 1),
    ]),
  ]
}

/** Whether the identifier in the slot at this address is plain. */
export function slotIsPlain(slot: Local): Code {
  return i32.and(i32.load(slot.get, NOTES * 4), i32.const(PLAIN))
}

/** The number of a slot by its address. */
export function slotAt(address: number, table: number): number {
  return (address - table) / (WORDS * 4)
}
