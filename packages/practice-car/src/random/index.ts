/**
 * @module Chance with a seed, so that the same practice car does the same thing every time.
 *
 * Generator: sfc32 (small fast counter, C. Doty-Humphrey, PractRand; public domain). Not for secrets.
 */

/** A source of chance; two with the same seed give the same values in the same order. */
export class Chance {
  #a: number
  #b: number
  #c: number
  #counter = 1

  /** `seed`: any whole number; its lower 32 bits count. */
  constructor(seed: number) {
    this.#a = seed >>> 0
    this.#b = (seed ^ 0x9e3779b9) >>> 0
    this.#c = 0x243f6a88
    for (let round = 0; round < 12; round++) this.next()
  }

  /** At least 0 and below 1. */
  next(): number {
    const sum = (this.#a + this.#b + this.#counter) >>> 0
    this.#counter = (this.#counter + 1) >>> 0
    this.#a = (this.#b ^ (this.#b >>> 9)) >>> 0
    this.#b = (this.#c + (this.#c << 3)) >>> 0
    this.#c = (((this.#c << 21) | (this.#c >>> 11)) + sum) >>> 0
    return sum / 2 ** 32
  }

  /** A number from `least` to below `most`. */
  between(least: number, most: number): number {
    return least + (most - least) * this.next()
  }

  /** A whole number from `least` to `most`, both included. */
  whole(least: number, most: number): number {
    return least + Math.floor(this.next() * (most - least + 1))
  }

  /** True in so many of a hundred cases. */
  percent(cases: number): boolean {
    return this.next() * 100 < cases
  }

  /** One of a list. Throws `RangeError` when the list is empty. */
  oneOf<T>(list: readonly T[]): T {
    const chosen = list[Math.floor(this.next() * list.length)]
    if (chosen === undefined && list.length === 0) throw new RangeError('nothing to choose from')
    return chosen as T
  }

  /** The list in another order. */
  shuffled<T>(list: readonly T[]): T[] {
    const order = [...list]
    for (let last = order.length - 1; last > 0; last--) {
      const other = Math.floor(this.next() * (last + 1))
      const kept = order[last] as T
      order[last] = order[other] as T
      order[other] = kept
    }
    return order
  }
}
