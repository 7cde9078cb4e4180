/** @module Which of the possible batteries explain the readings. */

import type { ReadAt } from './readings.ts'

/** Weights over the runs (they sum to 1), and how far each run's volts stand from the readings. */
export interface Posterior {
  readonly weights: Float64Array
  /** Added to a run's volts to give what the meter reads. */
  readonly offsets: Float64Array
  readonly fits: boolean
}

/** Scatter of one reading about a run, volts: meter steps, load coming and going, what the model leaves out. */
const SCATTER_VOLTS = 0.04
/** Readings beyond so many tell little new about the model's own errors. */
const INDEPENDENT = 8
/** What lies between posts and meter: mean and spread of a constant offset, volts. Socket figures from memory. */
const OFFSET = { battery: { mean: 0, spread: 0.03 }, socket: { mean: -0.15, spread: 0.12 } } as const
/** At least so many runs keep a say; otherwise the evidence is softened until they do. */
const LEAST_RUNS = 60
/** Mean squared misfit, in scatters, of the best run beyond which nothing fits. */
const MISFIT = 6

/** Weighs runs by the likelihood of the readings, with the constant offset integrated out. Equal without readings. */
export function posterior(
  predicted: readonly Float64Array[],
  readings: readonly number[],
  readAt: ReadAt,
): Posterior {
  const runs = predicted.length
  const count = readings.length
  const { mean, spread } = OFFSET[readAt]
  const offsets = new Float64Array(runs).fill(mean)
  if (count === 0) return { weights: new Float64Array(runs).fill(1 / runs), offsets, fits: true }
  const logs = new Float64Array(runs)
  const variance = SCATTER_VOLTS ** 2
  const diluted = variance * Math.max(1, count / INDEPENDENT)
  let least = Number.POSITIVE_INFINITY
  for (let run = 0; run < runs; run += 1) {
    let sum = 0
    let squares = 0
    for (let index = 0; index < count; index += 1) {
      const residual = (readings[index] as number) - (predicted[run]?.[index] as number) - mean
      sum += residual
      squares += residual * residual
    }
    const shared = spread ** 2 / (variance + count * spread ** 2)
    const misfit = squares - shared * sum * sum
    offsets[run] = mean + shared * sum
    logs[run] = -misfit / (2 * diluted)
    least = Math.min(least, misfit / variance / count)
  }
  return { weights: softened(logs), offsets, fits: least <= MISFIT }
}

/** Weights from log-likelihoods, raised to the largest power up to 1 that leaves enough runs a say. */
function softened(logs: Float64Array): Float64Array {
  const most = logs.reduce((best, each) => Math.max(best, each), Number.NEGATIVE_INFINITY)
  const at = (power: number): Float64Array => {
    const weights = logs.map((each) => Math.exp(power * (each - most)))
    const total = weights.reduce((sum, each) => sum + each, 0)
    return weights.map((each) => each / total)
  }
  const say = (weights: Float64Array): number => 1 / weights.reduce((sum, each) => sum + each * each, 0)
  const full = at(1)
  if (say(full) >= LEAST_RUNS) return full
  let low = 0
  let high = 1
  for (let turn = 0; turn < 20; turn += 1) {
    const middle = (low + high) / 2
    if (say(at(middle)) >= LEAST_RUNS) low = middle
    else high = middle
  }
  return at(low)
}
