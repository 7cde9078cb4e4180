/** @module Bands over the runs. */

import type { Band } from './types.ts'

/** The value below which `share` (0 to 1) of the values lie: nearest rank. Empty input gives NaN. */
export function quantile(sorted: Float64Array, share: number): number {
  const rank = Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))
  return sorted[rank] ?? Number.NaN
}

/** 5th, 50th and 95th hundredth. Leaves the values in order. */
export function bandOf(values: Float64Array): Band {
  const sorted = Float64Array.from(values).sort()
  return { low: quantile(sorted, 0.05), mid: quantile(sorted, 0.5), high: quantile(sorted, 0.95) }
}

/** As `bandOf` where each value counts with its weight (weights not negative, not all zero). */
export function weightedBand(values: Float64Array, weights: Float64Array): Band {
  const order = Array.from(values.keys()).sort((left, right) => (values[left] ?? 0) - (values[right] ?? 0))
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  const at = (share: number): number => {
    let sum = 0
    for (const index of order) {
      sum += weights[index] ?? 0
      if (sum >= share * total * (1 - 1e-9)) return values[index] ?? Number.NaN
    }
    return values[order.at(-1) ?? 0] ?? Number.NaN
  }
  return { low: at(0.05), mid: at(0.5), high: at(0.95) }
}
