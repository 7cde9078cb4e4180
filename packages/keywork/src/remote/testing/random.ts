/** @module Seeded random numbers for synthetic recordings. */

/** A generator that gives the same numbers for the same seed (Marsaglia's xorshift128, 2003, J. Stat. Softw. 8:14). */
export class Random {
  readonly #state: Uint32Array = new Uint32Array(4)
  #spare: number | null = null

  constructor(seed: number) {
    let value = seed >>> 0
    for (let at = 0; at < 4; at += 1) {
      value = (Math.imul(value ^ (value >>> 15), 0x2c1b3c6d) + 0x9e3779b9) >>> 0
      value = Math.imul(value ^ (value >>> 12), 0x297a2d39) >>> 0
      this.#state[at] = (value ^ (value >>> 15)) >>> 0 || 1
    }
    for (let at = 0; at < 16; at += 1) this.next()
  }

  /** From 0 up to, not including, 1. */
  next(): number {
    const s = this.#state
    let t = s[3] as number
    t ^= t << 11
    t ^= t >>> 8
    s[3] = s[2] as number
    s[2] = s[1] as number
    s[1] = s[0] as number
    t ^= s[0] as number
    t ^= (s[0] as number) >>> 19
    s[0] = t
    return (t >>> 0) / 4294967296
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.next()
  }

  /** Whole number from `low` to `high`, both included. */
  whole(low: number, high: number): number {
    return Math.floor(this.between(low, high + 1))
  }

  pick<Value>(values: readonly Value[]): Value {
    return values[Math.floor(this.next() * values.length)] as Value
  }

  chance(share: number): boolean {
    return this.next() < share
  }

  /** Normal with mean zero and deviation one (Box and Muller 1958). */
  normal(): number {
    const spare = this.#spare
    if (spare !== null) {
      this.#spare = null
      return spare
    }
    const size = Math.sqrt(-2 * Math.log(1 - this.next()))
    const turn = 2 * Math.PI * this.next()
    this.#spare = size * Math.sin(turn)
    return size * Math.cos(turn)
  }
}
