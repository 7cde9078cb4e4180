/** @module Repeatable draws: the same seed gives the same answer on every machine. */

/** A generator of numbers from 0 up to 1 (mulberry32, public domain). */
export function seededUniform(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

/**
 * A Latin hypercube: for each of `dimensions`, `runs` numbers from 0 up to 1, one in each of `runs` equal slices, in
 * shuffled order. Few runs then already cover each range evenly. Column `d` is `draws[d]`.
 */
export function latinHypercube(runs: number, dimensions: number, seed: number): readonly Float64Array[] {
  const next = seededUniform(seed)
  return Array.from({ length: dimensions }, () => {
    const column = new Float64Array(runs)
    for (let run = 0; run < runs; run += 1) column[run] = (run + next()) / runs
    for (let run = runs - 1; run > 0; run -= 1) {
      const other = Math.floor(next() * (run + 1))
      const kept = column[run] ?? 0
      column[run] = column[other] ?? 0
      column[other] = kept
    }
    return column
  })
}
