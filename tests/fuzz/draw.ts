/** @module Numbers that look random and are the same in every run of the same seed. */

/** Draws whole numbers from 0 up to but not including `below`. */
export type Draw = (below: number) => number

/** A generator for one seed (mulberry32, public domain, from memory). */
export function drawing(seed: number): Draw {
  let state = seed >>> 0
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * below)
  }
}

/** One of a list. Throws `RangeError` for an empty list. */
export function oneOf<T>(draw: Draw, list: readonly T[]): T {
  if (list.length === 0) throw new RangeError('nothing to choose from')
  return list[draw(list.length)] as T
}
