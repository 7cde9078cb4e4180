/** @module Two-tone frequency-shift keying: time on each tone, the tones, their middle and their symbol rate. */

import { meanTone, toneOf } from './amplitude-keying.ts'
import type { Channel } from './channel.ts'
import { crossings, type Run, tidyRuns } from './envelope.ts'
import { type SymbolUnit, symbolUnit } from './symbol-unit.ts'
import type { Tones } from './tones.ts'

/** Durations on each tone in microseconds, the tones from the channel's middle, and the symbol. */
export interface TwoToneRuns {
  readonly highUs: readonly number[]
  readonly lowUs: readonly number[]
  readonly lowHz: number
  readonly highHz: number
  readonly unit: SymbolUnit | null
  readonly jitterUs: number
}

interface Span extends Run {
  readonly high: boolean
}

/** Follows the frequency through each run that is up and measures the spans above and below the tones' middle. */
export function twoToneRuns(channel: Channel, runs: readonly Run[], tones: Tones, edge: number): TwoToneRuns {
  const us = 1e6 / channel.rateHz
  const window = Math.max(1, tones.window)
  const spans = runs.flatMap((run) => spansIn(channel, run, tones, window))
  const durations = (high: boolean): number[] =>
    spans.filter((span) => span.high === high).map((span) => (span.to - span.from) * us)
  const highUs = durations(true)
  const lowUs = durations(false)
  const jitterUs = us * Math.max(0.5, window / 8)
  const unit = symbolUnit(highUs, lowUs, jitterUs)
  const margin = window / 2 + edge
  return {
    highUs,
    lowUs,
    lowHz: restingTone(channel, spans, false, unit, margin) ?? tones.lowHz,
    highHz: restingTone(channel, spans, true, unit, margin) ?? tones.highHz,
    unit,
    jitterUs,
  }
}

/** Spans on one side, without the first and the last of the run: those are cut by its ends. */
function spansIn(channel: Channel, run: Run, tones: Tones, window: number): readonly Span[] {
  const from = Math.max(1, Math.ceil(run.from))
  const count = Math.min(channel.samples - 1, Math.floor(run.to)) - from - window
  if (count < 4) return []
  const track = sideTrack(channel, from, count, (tones.lowHz + tones.highHz) / 2, window)
  const deviation = (tones.highHz - tones.lowHz) / 2
  const half = 0.3 * Math.sin(Math.min(Math.PI / 2, (2 * Math.PI * deviation) / channel.rateHz))
  const ups = tidyRuns(crossings(track, 0, half), Math.max(1.5, window / 2))
  const spans: Span[] = []
  for (const [index, up] of ups.entries()) {
    const middle = from + window / 2
    const before = ups[index - 1]
    if (before !== undefined) spans.push({ high: false, from: before.to + middle, to: up.from + middle })
    if (index > 0 && index < ups.length - 1)
      spans.push({ high: true, from: up.from + middle, to: up.to + middle })
  }
  return spans
}

/** Sine of the phase advance against the tones' middle, averaged over `window` values. */
function sideTrack(
  channel: Channel,
  from: number,
  count: number,
  middleHz: number,
  window: number,
): Float32Array {
  const turn = (-2 * Math.PI * middleHz) / channel.rateHz
  const cos = Math.cos(turn)
  const sin = Math.sin(turn)
  const track = new Float32Array(count)
  const pastRe = new Float64Array(window)
  const pastIm = new Float64Array(window)
  let re = 0
  let im = 0
  for (let k = 0; k < count + window; k += 1) {
    const at = from + k
    const i = channel.z[2 * at] as number
    const q = channel.z[2 * at + 1] as number
    const i0 = channel.z[2 * at - 2] as number
    const q0 = channel.z[2 * at - 1] as number
    const pRe = i * i0 + q * q0
    const pIm = q * i0 - i * q0
    const slot = k % window
    re += pRe - (pastRe[slot] as number)
    im += pIm - (pastIm[slot] as number)
    pastRe[slot] = pRe
    pastIm[slot] = pIm
    if (k < window) continue
    const size = Math.sqrt(re * re + im * im)
    track[k - window] = size > 0 ? (re * sin + im * cos) / size : 0
  }
  return track
}

/** Mean frequency over the middles of one tone's spans; of the longer spans where there are some, as a smoothed shift rests only there. */
function restingTone(
  channel: Channel,
  spans: readonly Span[],
  high: boolean,
  unit: SymbolUnit | null,
  margin: number,
): number | null {
  const own = spans.filter((span) => span.high === high)
  const long =
    unit === null ? [] : own.filter((span) => span.to - span.from > (1.5 * unit.us * channel.rateHz) / 1e6)
  const used = long.length >= 4 ? long : own
  const tone = meanTone(used.map((span) => toneOf(channel, span.from, span.to, margin)))
  return tone.weight > 0 ? tone.hertz : null
}
