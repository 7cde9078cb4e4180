/**
 * @module How many messages fall into each slice of time, for a recording of any length in bounded memory.
 *
 * Slices begin at 1/1024 s and double whenever the recording needs more than `mostSlices` of them. All widths are powers
 * of two, so that joining two neighbours gives exactly what counting with the wider slices would have given.
 */

/** Counts per slice. Slice `i` covers `(first + i) * width` to `(first + i + 1) * width` seconds. */
export interface DensityCounts {
  readonly first: number
  /** Seconds a slice lasts. */
  readonly width: number
  readonly total: readonly number[]
  /** How many of them were refusals. */
  readonly refused: readonly number[]
}

const mostSlices = 1024
const narrowest = 2 ** -10

/** Counts messages by time; memory never grows beyond 1024 slices. */
export class Density {
  #width = narrowest
  #first = 0
  #total: number[] = []
  #refused: number[] = []

  /** One message, `seconds` after the beginning; earlier ones (negative) may come later. */
  add(seconds: number, refused: boolean): void {
    let slice = Math.floor(seconds / this.#width)
    if (this.#total.length === 0) this.#first = slice
    while (this.#spanWith(slice) > mostSlices) {
      this.#double()
      slice = Math.floor(seconds / this.#width)
    }
    this.#reach(slice)
    const at = slice - this.#first
    this.#total[at] = (this.#total[at] ?? 0) + 1
    if (refused) this.#refused[at] = (this.#refused[at] ?? 0) + 1
  }

  /** The counts so far. */
  counts(): DensityCounts {
    return { first: this.#first, width: this.#width, total: [...this.#total], refused: [...this.#refused] }
  }

  #spanWith(slice: number): number {
    const last = Math.max(slice, this.#first + this.#total.length - 1)
    return last - Math.min(slice, this.#first) + 1
  }

  #reach(slice: number): void {
    const before = this.#first - slice
    if (before > 0) {
      const none = new Array<number>(before).fill(0)
      this.#total = [...none, ...this.#total]
      this.#refused = [...none, ...this.#refused]
      this.#first = slice
    }
    while (this.#first + this.#total.length <= slice) {
      this.#total.push(0)
      this.#refused.push(0)
    }
  }

  #double(): void {
    const first = Math.floor(this.#first / 2)
    const join = (counts: readonly number[]): number[] => {
      const joined: number[] = []
      counts.forEach((count, index) => {
        const at = Math.floor((this.#first + index) / 2) - first
        joined[at] = (joined[at] ?? 0) + count
      })
      return joined
    }
    this.#total = join(this.#total)
    this.#refused = join(this.#refused)
    this.#first = first
    this.#width *= 2
  }
}
