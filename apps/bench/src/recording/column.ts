/** @module A growing column of numbers in little memory. */

type Numbers = Float64Array | Uint32Array | Uint8Array

/** Numbers of one kind, one per message; grows in fixed segments, so that nothing is copied. */
export class Column {
  readonly #kind: new (
    length: number,
  ) => Numbers
  readonly #segments: Numbers[] = []
  length = 0

  constructor(kind: new (length: number) => Numbers) {
    this.#kind = kind
  }

  push(value: number): void {
    const at = this.length & mask
    if (at === 0) this.#segments.push(new this.#kind(mask + 1))
    const segment = this.#segments[this.#segments.length - 1]
    if (segment !== undefined) segment[at] = value
    this.length++
  }

  /** The number of a message; 0 beyond the end. */
  at(index: number): number {
    return this.#segments[index >>> shift]?.[index & mask] ?? 0
  }
}

const shift = 16
const mask = (1 << shift) - 1
