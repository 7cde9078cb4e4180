/** @module Frequencies a channel rests on while its level is up: one, or two as frequency-shift keying has. */

import type { Channel } from './channel.ts'
import type { Run } from './envelope.ts'

const STEPS = 256

/** Two groups of frequency, from the channel's middle, and how clearly they are two. */
export interface Tones {
  readonly lowHz: number
  readonly highHz: number
  /** Share of the time on the higher one. */
  readonly highShare: number
  /** Distance over the groups' widths (half of the middle 68 %, both added): about 1.3 for one group cut in two. */
  readonly separation: number
  /** Changes from one to the other and back, and the runs they lie in. */
  readonly changes: number
  readonly runs: number
  /** Values averaged for one frequency. */
  readonly window: number
}

/** Phase advance per value summed over `window` values, as frequency, and how strong it was. */
export interface FrequencyTrack {
  readonly hertz: Float32Array
  readonly weight: Float32Array
  readonly runOf: Uint32Array
}

/** Frequencies inside the runs, one per half window; the edges of a run (`edge` values) are left out. */
export function trackFrequency(
  channel: Channel,
  runs: readonly Run[],
  window: number,
  edge: number,
): FrequencyTrack {
  const step = Math.max(1, window >> 1)
  const hertz: number[] = []
  const weight: number[] = []
  const runOf: number[] = []
  const toHertz = channel.rateHz / (2 * Math.PI)
  for (const [index, run] of runs.entries()) {
    const from = Math.max(1, Math.ceil(run.from + edge))
    const to = Math.min(channel.samples - 1, Math.floor(run.to - edge))
    for (let at = from; at + window <= to; at += step) {
      let re = 0
      let im = 0
      for (let k = at; k < at + window; k += 1) {
        const i = channel.z[2 * k] as number
        const q = channel.z[2 * k + 1] as number
        const i0 = channel.z[2 * k - 2] as number
        const q0 = channel.z[2 * k - 1] as number
        re += i * i0 + q * q0
        im += q * i0 - i * q0
      }
      hertz.push(Math.atan2(im, re) * toHertz)
      weight.push(Math.hypot(re, im))
      runOf.push(index)
    }
  }
  return {
    hertz: Float32Array.from(hertz),
    weight: Float32Array.from(weight),
    runOf: Uint32Array.from(runOf),
  }
}

/** Splits a track into two groups where the variance between them is largest (Otsu 1979, IEEE Trans. SMC-9:62). */
export function splitTones(track: FrequencyTrack, window: number): Tones | null {
  const { hertz, weight, runOf } = track
  if (hertz.length < 8) return null
  const sorted = hertz.toSorted()
  const low = sorted[Math.floor(0.01 * sorted.length)] as number
  const high = sorted[Math.ceil(0.99 * sorted.length) - 1] as number
  const scale = STEPS / Math.max(1, high - low)
  const histogram = new Float64Array(STEPS)
  for (let at = 0; at < hertz.length; at += 1) {
    const step = Math.floor(((hertz[at] as number) - low) * scale)
    if (step < 0 || step >= STEPS) continue
    histogram[step] = (histogram[step] as number) + (weight[at] as number)
  }
  const cut = bestCut(histogram)
  const below = groupOf(histogram, 0, cut)
  const above = groupOf(histogram, cut, STEPS)
  const lowHz = low + below.middle / scale
  const highHz = low + above.middle / scale
  const width = (below.width + above.width) / scale
  const middle = (lowHz + highHz) / 2
  const margin = 0.15 * (highHz - lowHz)
  return {
    lowHz,
    highHz,
    highShare: above.sum / Math.max(1e-30, below.sum + above.sum),
    separation: (highHz - lowHz) / Math.max(width, 1 / scale),
    changes: countChanges(hertz, runOf, middle, margin),
    runs: new Set(runOf).size,
    window,
  }
}

function bestCut(histogram: Float64Array): number {
  let total = 0
  let moment = 0
  for (let step = 0; step < STEPS; step += 1) {
    total += histogram[step] as number
    moment += (histogram[step] as number) * step
  }
  let sum = 0
  let part = 0
  let best = -1
  let cut = STEPS >> 1
  for (let step = 1; step < STEPS; step += 1) {
    sum += histogram[step - 1] as number
    part += (histogram[step - 1] as number) * (step - 1)
    if (sum <= 0 || total - sum <= 0) continue
    const between = sum * (total - sum) * (part / sum - (moment - part) / (total - sum)) ** 2
    if (between > best) {
      best = between
      cut = step
    }
  }
  return cut
}

function groupOf(
  histogram: Float64Array,
  from: number,
  to: number,
): { middle: number; width: number; sum: number } {
  let sum = 0
  for (let step = from; step < to; step += 1) sum += histogram[step] as number
  const at = (share: number): number => {
    let seen = 0
    for (let step = from; step < to; step += 1) {
      const value = histogram[step] as number
      if (seen + value >= share * sum && value > 0) return step + (share * sum - seen) / value
      seen += value
    }
    return to
  }
  return { middle: at(0.5), width: (at(0.84) - at(0.16)) / 2, sum }
}

function countChanges(hertz: Float32Array, runOf: Uint32Array, middle: number, margin: number): number {
  let changes = 0
  let side = 0
  for (let at = 0; at < hertz.length; at += 1) {
    if (at > 0 && runOf[at] !== runOf[at - 1]) side = 0
    const off = (hertz[at] as number) - middle
    const now = off > margin ? 1 : off < -margin ? -1 : 0
    if (now === 0 || now === side) continue
    if (side !== 0) changes += 1
    side = now
  }
  return changes
}
