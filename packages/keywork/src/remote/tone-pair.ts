/** @module Two-tone keying by its tones: one is up exactly when the other is down, and one of them always is. */

import { meanTone, toneOf } from './amplitude-keying.ts'
import { type Channel, openChannel } from './channel.ts'
import { crossings, meanSquare, type Run, tidyRuns, unsteadiness } from './envelope.ts'
import type { TwoToneRuns } from './frequency-keying.ts'
import type { SampleSource } from './sample-source.ts'
import { symbolUnit } from './symbol-unit.ts'

/** Tones nearer than this share one filter; the frequency itself tells them apart. */
const LEAST_DISTANCE_HZ = 12_000
/** A channel passes this share of the tones' distance to either side. */
const WIDTH_SHARE = 0.3
const MOST_HALF_WIDTH_HZ = 15_000
/** A point is decided when one tone has this much more of the sum than the other. */
const DECIDED = 0.35
const LEAST_DECIDED = 0.7
const LEAST_SIDE = 0.08
/** The sum of both must stay above this share of its usual value for this share of the time. */
const SUM_UP = 0.45
const LEAST_UP = 0.93
const HYSTERESIS = 0.25
const UP_QUANTILE = 0.92
const LOOKED_AT = 4096
/** A first look this long tells most pairs that are none. */
const FIRST_LOOK_SECONDS = 0.15
const MOST_UNSTEADY = 0.35
/** Spans on either tone without which a pair says nothing. */
const LEAST_SPANS = 4

/** What the pair says, in channel values of the lower tone's channel. */
export interface TonePair {
  readonly low: Channel
  readonly high: Channel
  /** Where the pair is up. */
  readonly up: readonly Run[]
  readonly runs: TwoToneRuns
  /** Power of the stronger tone while it is up. */
  readonly power: number
}

/**
 * Tests two lobes of the spectrum for being the tones of one sender between two samples of the recording. Null when
 * they are not: both down at times, or both up.
 */
export function testTonePair(
  source: SampleSource,
  sampleRateHz: number,
  from: number,
  to: number,
  tonesHz: readonly [number, number],
): TonePair | null {
  const look = Math.round(FIRST_LOOK_SECONDS * sampleRateHz)
  if (to - from <= 2 * look) return testSpan(source, sampleRateHz, from, to, tonesHz)
  const first = testSpan(source, sampleRateHz, from, from + look, tonesHz)
  return first === null ? null : testSpan(source, sampleRateHz, from, to, tonesHz)
}

function testSpan(
  source: SampleSource,
  sampleRateHz: number,
  from: number,
  to: number,
  tonesHz: readonly [number, number],
): TonePair | null {
  const distance = tonesHz[1] - tonesHz[0]
  if (distance < LEAST_DISTANCE_HZ) return null
  const half = Math.min(MOST_HALF_WIDTH_HZ, WIDTH_SHARE * distance)
  const low = openChannel(source, sampleRateHz, from, to - from, tonesHz[0], half)
  const high = openChannel(source, sampleRateHz, from, to - from, tonesHz[1], half)
  const lower = amplitudeOf(low)
  const upper = amplitudeOf(high)
  // A receiver's slope may favour one tone: each counts by its own level.
  const lowUp = usualUp(lower)
  const highUp = usualUp(upper)
  if (!(lowUp > 0 && highUp > 0)) return null
  const sum = new Float32Array(low.samples)
  const side = new Float32Array(low.samples)
  for (let at = 0; at < low.samples; at += 1) {
    const a = (lower[at] as number) / lowUp
    const b = (upper[at] as number) / highUp
    sum[at] = a + b
    side[at] = a + b > 0 ? (b - a) / (a + b) : 0
  }
  const up = upRuns(sum, low)
  if (up === null || !isComplementary(side, up)) return null
  const { highs, lows } = pairSpans(low, side, up)
  // Noise that rises in the gaps, because the receiver turns its gain up there, is no tone.
  if (unsteadiness(lower, lows) > MOST_UNSTEADY || unsteadiness(upper, highs) > MOST_UNSTEADY) return null
  const edge = (1.5 * low.boxSamples) / low.step
  const pair = {
    low,
    high,
    up,
    runs: pairRuns(low, high, lows, highs),
    power: Math.max(meanSquare(lower, lows, edge), meanSquare(upper, highs, edge)),
  }
  const { highUs, lowUs, lowHz, highHz } = pair.runs
  const placed = Math.abs(lowHz - tonesHz[0]) < distance / 4 && Math.abs(highHz - tonesHz[1]) < distance / 4
  return placed && Math.min(highUs.length, lowUs.length) >= LEAST_SPANS ? pair : null
}

function amplitudeOf(channel: Channel): Float32Array {
  const amplitude = new Float32Array(channel.samples)
  for (let at = 0; at < channel.samples; at += 1) {
    const i = channel.z[2 * at] as number
    const q = channel.z[2 * at + 1] as number
    amplitude[at] = Math.sqrt(i * i + q * q)
  }
  return amplitude
}

/** A high quantile: the level while up, as long as it is up for some of the time. */
function usualUp(amplitude: Float32Array): number {
  return quantileOf(amplitude, UP_QUANTILE)
}

/** A quantile from at most about 4096 of the values. */
function quantileOf(values: Float32Array, share: number): number {
  const every = Math.ceil(values.length / LOOKED_AT) | 1
  const some = new Float32Array(Math.ceil(values.length / every))
  for (let at = 0; at < some.length; at += 1) some[at] = values[at * every] as number
  some.sort()
  return some[Math.floor(share * some.length)] ?? 0
}

/** Where the sum of both tones is up; null when it is down for too much of the time between. */
function upRuns(sum: Float32Array, channel: Channel): readonly Run[] | null {
  const usual = quantileOf(sum, 0.6)
  const shortest = (2 * channel.boxSamples) / channel.step
  const up = tidyRuns(crossings(sum, SUM_UP * usual, 0.05 * usual), shortest)
  // Pauses between bursts are long; gaps in a pair that is keyed on and off are many and short.
  const bursts = tidyRuns(up, 0.004 * channel.rateHz)
  const held = up.reduce((all, run) => all + run.to - run.from, 0)
  const span = bursts.reduce((all, run) => all + run.to - run.from, 0)
  return span > 0 && held >= LEAST_UP * span ? bursts : null
}

function isComplementary(side: Float32Array, up: readonly Run[]): boolean {
  let lower = 0
  let upper = 0
  let all = 0
  for (const run of up) {
    for (let at = Math.ceil(run.from); at <= run.to; at += 1) {
      const value = side[at] as number
      all += 1
      if (value > DECIDED) upper += 1
      else if (value < -DECIDED) lower += 1
    }
  }
  return lower + upper >= LEAST_DECIDED * all && Math.min(lower, upper) >= LEAST_SIDE * all
}

interface PairSpans {
  readonly highs: readonly Run[]
  readonly lows: readonly Run[]
}

/** Times on either tone, without the first and the last of each burst: those are cut by its ends. */
function pairSpans(channel: Channel, side: Float32Array, up: readonly Run[]): PairSpans {
  const edge = (1.5 * channel.boxSamples) / channel.step
  const highs: Run[] = []
  const lows: Run[] = []
  for (const run of up) {
    const from = Math.ceil(run.from)
    const spans = tidyRuns(crossings(side.subarray(from, Math.floor(run.to)), 0, HYSTERESIS), edge)
    for (const [index, span] of spans.entries()) {
      const before = spans[index - 1]
      if (before !== undefined) lows.push({ from: before.to + from, to: span.from + from })
      if (index > 0 && index < spans.length - 1) highs.push({ from: span.from + from, to: span.to + from })
    }
  }
  return { highs, lows }
}

function pairRuns(low: Channel, high: Channel, lows: readonly Run[], highs: readonly Run[]): TwoToneRuns {
  const us = 1e6 / low.rateHz
  const edge = (1.5 * low.boxSamples) / low.step
  const highUs = highs.map((span) => (span.to - span.from) * us)
  const lowUs = lows.map((span) => (span.to - span.from) * us)
  const tone = (channel: Channel, spans: readonly Run[]): number =>
    meanTone(spans.map((span) => toneOf(channel, span.from, span.to, edge))).hertz
  return {
    highUs,
    lowUs,
    lowHz: low.offsetHz + tone(low, lows),
    highHz: high.offsetHz + tone(high, highs),
    unit: symbolUnit(highUs, lowUs, us * 0.5),
    jitterUs: us * 0.5,
  }
}
