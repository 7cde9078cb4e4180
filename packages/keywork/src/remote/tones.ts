/** @module Frequencies a channel rests on while its level is up: one, or two as frequency-shift keying has. */

import type { Channel } from './channel.ts'
import type { Run } from './envelope.ts'

const STEPS = 256
/** Values looked at: enough for hundreds of symbols, however long the recording is. */
const MOST_VALUES = 32_768
/** Share of the track left out at either end of the histogram: clicks of noise. */
const OUTLIERS = 0.01
const COARSE_STEPS = 4096
const BUSY_CHANGES = 3

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
  /** Share of the track in runs with three changes or more. */
  readonly busyShare: number
  /** Values averaged for one frequency. */
  readonly window: number
}

/** Phase advances (as products of neighbouring values) inside runs, added up in windows of doubling length. */
export interface PhaseTrack {
  readonly rateHz: number
  /** Re, Im, Re, Im ... */
  readonly advance: Float32Array
  readonly runOf: Uint32Array
  readonly count: number
  readonly window: number
}

/**
 * Phase advances inside the runs, without their edges (`edge` values). Of a long channel the beginning and the middle
 * are taken.
 */
export function trackPhase(channel: Channel, runs: readonly Run[], edge: number): PhaseTrack {
  const spans = chosenSpans(runs, edge, channel.samples)
  const all = spans.reduce((sum, span) => sum + span.to - span.from, 0)
  const advance = new Float32Array(2 * all)
  const runOf = new Uint32Array(all)
  const z = channel.z
  let count = 0
  for (const span of spans) {
    for (let at = span.from; at < span.to; at += 1, count += 1) {
      const i = z[2 * at] as number
      const q = z[2 * at + 1] as number
      const i0 = z[2 * at - 2] as number
      const q0 = z[2 * at - 1] as number
      advance[2 * count] = i * i0 + q * q0
      advance[2 * count + 1] = q * i0 - i * q0
      runOf[count] = span.run
    }
  }
  return { rateHz: channel.rateHz, advance, runOf, count, window: 1 }
}

interface Span {
  readonly from: number
  readonly to: number
  readonly run: number
}

function chosenSpans(runs: readonly Run[], edge: number, samples: number): readonly Span[] {
  const spans = runs
    .map((run, index) => ({
      from: Math.max(1, Math.ceil(run.from + edge)),
      to: Math.min(samples, Math.floor(run.to - edge)),
      run: index,
    }))
    .filter((span) => span.to > span.from)
  const all = spans.reduce((sum, span) => sum + span.to - span.from, 0)
  if (all <= MOST_VALUES) return spans
  return [...takeValues(spans, 0, MOST_VALUES / 2), ...takeValues(spans, all / 2, MOST_VALUES / 2)]
}

/** Spans that hold `count` values after the first `skip`. */
function takeValues(spans: readonly Span[], skip: number, count: number): readonly Span[] {
  const taken: Span[] = []
  let before = 0
  for (const span of spans) {
    const length = span.to - span.from
    const from = Math.max(span.from, Math.ceil(span.from + skip - before))
    const to = Math.min(span.to, Math.floor(span.from + skip + count - before))
    if (to > from) taken.push({ ...span, from, to })
    before += length
  }
  return taken
}

/** The same track with twice the window: neighbours added, those of two runs left out. */
export function doubleWindow(track: PhaseTrack): PhaseTrack {
  const advance = new Float32Array(track.advance.length >> 1)
  const runOf = new Uint32Array(track.runOf.length >> 1)
  let count = 0
  for (let at = 0; at + 1 < track.count; at += 1) {
    if (track.runOf[at] !== track.runOf[at + 1]) continue
    advance[2 * count] = (track.advance[2 * at] as number) + (track.advance[2 * at + 2] as number)
    advance[2 * count + 1] = (track.advance[2 * at + 1] as number) + (track.advance[2 * at + 3] as number)
    runOf[count] = track.runOf[at] as number
    count += 1
    at += 1
  }
  return { ...track, advance, runOf, count, window: 2 * track.window }
}

/** Splits a track into two groups where the variance between them is largest (Otsu 1979, IEEE Trans. SMC-9:62). */
export function splitTones(track: PhaseTrack): Tones | null {
  const { count, advance, runOf, rateHz } = track
  if (count < 8) return null
  const hertz = new Float32Array(count)
  const weight = new Float32Array(count)
  const toHertz = rateHz / (2 * Math.PI)
  for (let at = 0; at < count; at += 1) {
    const re = advance[2 * at] as number
    const im = advance[2 * at + 1] as number
    hertz[at] = Math.atan2(im, re) * toHertz
    weight[at] = Math.sqrt(re * re + im * im)
  }
  const [low, high] = middleRange(hertz, rateHz)
  const scale = STEPS / Math.max(1, high - low)
  const histogram = new Float64Array(STEPS)
  for (let at = 0; at < count; at += 1) {
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
  const { changes, runs, busyShare } = countChanges(
    hertz,
    runOf,
    (lowHz + highHz) / 2,
    0.15 * (highHz - lowHz),
  )
  return {
    lowHz,
    highHz,
    highShare: above.sum / Math.max(1e-30, below.sum + above.sum),
    separation: (highHz - lowHz) / Math.max(width, 1 / scale),
    changes,
    runs,
    busyShare,
    window: track.window,
  }
}

/** Range that leaves the outliers out, to the fineness of a coarse histogram. */
function middleRange(hertz: Float32Array, rateHz: number): readonly [number, number] {
  const counts = new Uint32Array(COARSE_STEPS)
  const scale = (COARSE_STEPS - 1) / rateHz
  for (let at = 0; at < hertz.length; at += 1) {
    const step = Math.floor(((hertz[at] as number) + rateHz / 2) * scale)
    counts[step] = (counts[step] as number) + 1
  }
  const out = Math.floor(OUTLIERS * hertz.length)
  let low = 0
  for (let seen = 0; low < COARSE_STEPS; low += 1) {
    seen += counts[low] as number
    if (seen > out) break
  }
  let high = COARSE_STEPS - 1
  for (let seen = 0; high > low; high -= 1) {
    seen += counts[high] as number
    if (seen > out) break
  }
  return [low / scale - rateHz / 2, (high + 1) / scale - rateHz / 2]
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

interface Group {
  readonly middle: number
  readonly width: number
  readonly sum: number
}

function groupOf(histogram: Float64Array, from: number, to: number): Group {
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

function countChanges(
  hertz: Float32Array,
  runOf: Uint32Array,
  middle: number,
  margin: number,
): { changes: number; runs: number; busyShare: number } {
  let changes = 0
  let runs = 0
  let busy = 0
  let side = 0
  let inRun = 0
  let from = 0
  const closeRun = (at: number): void => {
    if (inRun >= BUSY_CHANGES) busy += at - from
    changes += inRun
    inRun = 0
    from = at
    side = 0
  }
  for (let at = 0; at < hertz.length; at += 1) {
    if (at === 0 || runOf[at] !== runOf[at - 1]) {
      closeRun(at)
      runs += 1
    }
    const off = (hertz[at] as number) - middle
    const now = off > margin ? 1 : off < -margin ? -1 : 0
    if (now === 0 || now === side) continue
    if (side !== 0) inRun += 1
    side = now
  }
  closeRun(hertz.length)
  return { changes, runs, busyShare: busy / Math.max(1, hertz.length) }
}
