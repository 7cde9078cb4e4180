/** @module Where a channel's level is up and where it is down. */

import type { Channel } from './channel.ts'

/** Bins of the amplitude histogram. */
const STEPS = 512
/** A run starts and ends this share of the level difference beyond the threshold, against noise on slow edges. */
const HYSTERESIS = 0.12

/** Amplitude of a channel over time and the two levels it moves between. */
export interface Envelope {
  readonly amplitude: Float32Array
  /** Mean amplitude up and down, and half way between. */
  readonly up: number
  readonly down: number
  readonly threshold: number
}

/** A time span in values of the channel, edges interpolated. */
export interface Run {
  readonly from: number
  readonly to: number
}

/** Amplitude and its two levels. `blockValues` is about the time of the shortest signal of interest. */
export function envelopeOf(channel: Channel, blockValues: number): Envelope {
  const { z, samples } = channel
  const amplitude = new Float32Array(samples)
  for (let at = 0; at < samples; at += 1) {
    const i = z[2 * at] as number
    const q = z[2 * at + 1] as number
    amplitude[at] = Math.sqrt(i * i + q * q)
  }
  const usual = usualPeak(amplitude, Math.max(1, Math.round(blockValues)))
  return { amplitude, ...twoLevels(amplitude, usual) }
}

/** Median of the block maxima that belong to the signal, so that one crash of noise does not set the level. */
function usualPeak(amplitude: Float32Array, block: number): number {
  const peaks = new Float32Array(Math.ceil(amplitude.length / block))
  for (let index = 0; index < peaks.length; index += 1) {
    let most = 0
    const end = Math.min(amplitude.length, (index + 1) * block)
    for (let at = index * block; at < end; at += 1) {
      const value = amplitude[at] as number
      if (value > most) most = value
    }
    peaks[index] = most
  }
  peaks.sort()
  const strong = peaks[Math.floor(0.95 * peaks.length)] ?? 0
  const first = peaks.findIndex((peak) => peak > strong / 2)
  return peaks[Math.floor((Math.max(0, first) + peaks.length) / 2)] ?? 0
}

/** Means above and below their own middle (Ridler and Calvard 1978, IEEE Trans. SMC-8:630), from a histogram. */
function twoLevels(amplitude: Float32Array, usual: number): Omit<Envelope, 'amplitude'> {
  if (!(usual > 0)) return { up: 0, down: 0, threshold: 0 }
  const histogram = new Uint32Array(STEPS)
  const scale = STEPS / (1.5 * usual)
  for (let at = 0; at < amplitude.length; at += 1) {
    const step = Math.min(STEPS - 1, ((amplitude[at] as number) * scale) | 0)
    histogram[step] = (histogram[step] as number) + 1
  }
  let threshold = usual / 2
  let up = usual
  let down = 0
  for (let pass = 0; pass < 8; pass += 1) {
    const cut = Math.floor(threshold * scale)
    up = meanOf(histogram, cut, STEPS, usual * scale) / scale
    down = meanOf(histogram, 0, cut, 0) / scale
    const next = (up + down) / 2
    if (Math.abs(next - threshold) < 0.002 * usual) break
    threshold = next
  }
  return { up, down, threshold }
}

function meanOf(histogram: Uint32Array, from: number, to: number, otherwise: number): number {
  let count = 0
  let sum = 0
  for (let step = from; step < to; step += 1) {
    count += histogram[step] as number
    sum += (histogram[step] as number) * (step + 0.5)
  }
  return count === 0 ? otherwise : sum / count
}

/** Spans in which the envelope is up. Gaps and pulses shorter than `shortest` values are noise and are closed over. */
export function runsUp(envelope: Envelope, shortest: number): readonly Run[] {
  const half = HYSTERESIS * (envelope.up - envelope.down)
  return tidyRuns(crossings(envelope.amplitude, envelope.threshold, half), shortest)
}

/** Mean square of an amplitude over spans, `edge` values left out at both ends, at most a quarter of each. */
export function meanSquare(amplitude: Float32Array, spans: readonly Run[], edge: number): number {
  let sum = 0
  let count = 0
  for (const span of spans) {
    const out = Math.min(edge, (span.to - span.from) / 4)
    for (let at = Math.ceil(span.from + out); at <= span.to - out; at += 1) {
      const value = amplitude[at] as number
      sum += value * value
      count += 1
    }
  }
  return count === 0 ? 0 : sum / count
}

/** Deviation over mean of the amplitude in the middle halves of the spans: 0.52 for noise, little for a tone. */
export function unsteadiness(amplitude: Float32Array, spans: readonly Run[]): number {
  let sum = 0
  let squares = 0
  let count = 0
  for (const span of spans) {
    const quarter = (span.to - span.from) / 4
    for (let at = Math.ceil(span.from + quarter); at <= span.to - quarter; at += 1) {
      const value = amplitude[at] as number
      sum += value
      squares += value * value
      count += 1
    }
  }
  if (count < 2 || sum <= 0) return 1
  const mean = sum / count
  return Math.sqrt(Math.max(0, squares / count - mean * mean)) / mean
}

/** Spans in which `values` is above `threshold`; a span starts `half` above it and ends `half` below. */
export function crossings(values: Float32Array, threshold: number, half: number): readonly Run[] {
  const runs: Run[] = []
  const rise = threshold + half
  const fall = threshold - half
  let from = -1
  let low = 0
  let high = 0
  for (let at = 0; at < values.length; at += 1) {
    const value = values[at] as number
    if (from < 0) {
      if (value <= threshold) low = at
      if (value >= rise) {
        from = crossingAfter(values, low, threshold)
        high = at
      }
    } else {
      if (value >= threshold) high = at
      if (value <= fall) {
        runs.push({ from, to: crossingAfter(values, high, threshold) })
        from = -1
        low = at
      }
    }
  }
  if (from >= 0) runs.push({ from, to: values.length - 1 })
  return runs
}

/** Where the line between `at` and the next value meets the threshold. */
function crossingAfter(values: Float32Array, at: number, threshold: number): number {
  const before = values[at] as number
  const after = values[at + 1] ?? before
  if (before === after) return at
  return at + Math.min(1, Math.max(0, (threshold - before) / (after - before)))
}

/** Joins runs over gaps shorter than `shortest`, then leaves out runs shorter than that. */
export function tidyRuns(runs: readonly Run[], shortest: number): readonly Run[] {
  const joined: Run[] = []
  for (const run of runs) {
    const last = joined.at(-1)
    if (last !== undefined && run.from - last.to < shortest)
      joined[joined.length - 1] = { from: last.from, to: run.to }
    else joined.push(run)
  }
  return joined.filter((run) => run.to - run.from >= shortest)
}
