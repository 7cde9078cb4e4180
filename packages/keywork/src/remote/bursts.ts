/** @module Bursts of one sender: how many, how long, and how often the same signal comes in a row. */

import { clusterDurations } from './durations.ts'
import { Fft } from './fft.ts'
import { type Sender, spansOf } from './senders.ts'
import type { BurstSummary } from './types.ts'

const LEAST_PAUSE_SECONDS = 0.006
/** A pause between bursts is longer than this many usual gaps and than every common gap by half. */
const USUAL_GAPS = 4
const COMMON_SHARE = 0.1
/** Longest signal looked at for repeats, in points. */
const POINTS = 16_384
/** The same signal again agrees with itself this well; before that it must have disagreed. */
const AGREES = 0.85
const DISAGREES = 0.7
const LEAST_PERIODS = 12

/** One burst inside the measurement: positions never leave it. */
export interface Burst {
  readonly fromSeconds: number
  readonly toSeconds: number
}

/** Shortest pause that parts two bursts: longer than any gap that could carry a symbol. */
export function pauseSeconds(sender: Sender): number {
  const gaps = sender.stretches.flatMap((stretch) => (stretch.tonesHz === null ? stretch.gapsUs : []))
  if (gaps.length === 0) return LEAST_PAUSE_SECONDS
  const sorted = gaps.toSorted((a, b) => a - b)
  const usual = sorted[sorted.length >> 1] ?? 0
  const jitter = sender.stretches[0]?.jitterUs ?? 1
  const common = clusterDurations(gaps, jitter)
    .filter((cluster) => cluster.count >= COMMON_SHARE * gaps.length)
    .reduce((most, cluster) => Math.max(most, cluster.us), 0)
  return Math.max(LEAST_PAUSE_SECONDS, (USUAL_GAPS * usual) / 1e6, (1.5 * common) / 1e6)
}

/** Joins a sender's times up to bursts. */
export function findBursts(sender: Sender, pause: number): readonly Burst[] {
  const bursts: { fromSeconds: number; toSeconds: number }[] = []
  for (const span of spansOf(sender)) {
    const last = bursts.at(-1)
    if (last !== undefined && span.fromSeconds - last.toSeconds <= pause)
      last.toSeconds = Math.max(last.toSeconds, span.toSeconds)
    else bursts.push({ fromSeconds: span.fromSeconds, toSeconds: span.toSeconds })
  }
  return bursts
}

/** Counts and lengths. */
export function summariseBursts(sender: Sender, bursts: readonly Burst[]): BurstSummary {
  const lengths = bursts.map((burst) => burst.toSeconds - burst.fromSeconds).toSorted((a, b) => a - b)
  const pauses = bursts
    .slice(1)
    .map((burst, at) => burst.fromSeconds - (bursts[at]?.toSeconds ?? 0))
    .toSorted((a, b) => a - b)
  const median = lengths[lengths.length >> 1] ?? 0
  const alike = lengths.filter((length) => Math.abs(length - median) <= 0.1 * median).length
  const longest = bursts.reduce<Burst | null>(
    (most, burst) =>
      most === null || burst.toSeconds - burst.fromSeconds > most.toSeconds - most.fromSeconds ? burst : most,
    null,
  )
  const inside = longest === null ? null : repeatInside(sender, longest)
  const within = inside === null ? 1 : Math.max(1, Math.round(median / inside))
  const between = bursts.length > 1 && alike > 1 ? median + (pauses[pauses.length >> 1] ?? 0) : null
  return {
    count: bursts.length,
    seconds: roundMilli(median),
    shortestSeconds: roundMilli(lengths[0] ?? 0),
    longestSeconds: roundMilli(lengths.at(-1) ?? 0),
    pauseSeconds: pauses.length === 0 ? null : roundMilli(pauses[pauses.length >> 1] ?? 0),
    repeats: within * Math.max(1, alike),
    repeatSeconds: inside !== null ? roundMilli(inside) : between === null ? null : roundMilli(between),
  }
}

function roundMilli(seconds: number): number {
  return Math.round(seconds * 10_000) / 10_000
}

/**
 * Time after which the up-and-down of one burst comes again, from its autocorrelation (Wiener-Khinchin); null when it
 * does not, or when it is one steady beat. On-off keyed senders only.
 */
function repeatInside(sender: Sender, burst: Burst): number | null {
  if (sender.modulation !== 'OOK') return null
  const spans = spansOf(sender).filter(
    (span) => span.fromSeconds >= burst.fromSeconds - 1e-9 && span.toSeconds <= burst.toSeconds + 1e-9,
  )
  if (spans.length < 3 * LEAST_PERIODS) return null
  const length = burst.toSeconds - burst.fromSeconds
  const period = length / spans.length
  const step = Math.max(length / (POINTS / 2), period / 12)
  const points = Math.floor(length / step)
  const signal = new Float64Array(2 * POINTS)
  for (let at = 0; at < points; at += 1) signal[2 * at] = -1
  for (const span of spans) {
    const from = Math.round((span.fromSeconds - burst.fromSeconds) / step)
    const to = Math.round((span.toSeconds - burst.fromSeconds) / step)
    for (let at = from; at < to; at += 1) signal[2 * at] = 1
  }
  const agreement = autocorrelation(signal, points)
  return firstReturn(agreement, step, period)
}

const fft: Fft = new Fft(POINTS)

/** Agreement of a signal with itself at each lag up to half its length, 1 when equal. */
function autocorrelation(signal: Float64Array, points: number): Float64Array {
  const spectrum = new Float64Array(2 * POINTS)
  fft.forward(signal, spectrum)
  for (let at = 0; at < POINTS; at += 1) {
    const power = (spectrum[2 * at] as number) ** 2 + (spectrum[2 * at + 1] as number) ** 2
    spectrum[2 * at] = power
    spectrum[2 * at + 1] = 0
  }
  const back = new Float64Array(2 * POINTS)
  fft.forward(spectrum, back)
  return Float64Array.from(
    { length: Math.floor(0.6 * points) },
    (_, lag) => (back[2 * lag] as number) / POINTS / (points - lag),
  )
}

function firstReturn(agreement: Float64Array, step: number, period: number): number | null {
  const least = Math.ceil((LEAST_PERIODS * period) / step)
  const near = Math.ceil((2 * period) / step)
  let best = -1
  for (let lag = least; lag < agreement.length; lag += 1) {
    const value = agreement[lag] as number
    if (value < AGREES || value < (agreement[lag - 1] ?? 0) || value < (agreement[lag + 1] ?? 0)) continue
    if (best < 0) best = lag
    else if (lag - best < near && value > (agreement[best] as number)) best = lag
    else break
  }
  if (best < 0) return null
  for (let lag = near; lag < best - near; lag += 1) if ((agreement[lag] as number) > DISAGREES) return null
  return best * step
}
