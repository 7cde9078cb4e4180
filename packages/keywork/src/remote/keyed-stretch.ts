/** @module One sender in one stretch of time: how it is keyed, where, how strong. Order of symbols is never kept. */

import { onOffRuns } from './amplitude-keying.ts'
import { type Channel, channelGain, noiseShare, openChannel } from './channel.ts'
import { clusterDurations, strayCount } from './durations.ts'
import { type Envelope, envelopeOf, type Run, runsUp, tidyRuns } from './envelope.ts'
import { type TwoToneRuns, twoToneRuns } from './frequency-keying.ts'
import type { LevelMap } from './level-map.ts'
import type { SampleSource } from './sample-source.ts'
import type { Lobe } from './segments.ts'
import { testTonePair } from './tone-pair.ts'
import { doubleWindow, splitTones, type Tones, trackPhase } from './tones.ts'

/** How a sender is keyed. */
export type Modulation = 'OOK' | '2-FSK' | 'unsure'

/** What one stretch says of its sender. Frequencies from the recording's centre, times from its start. */
export interface KeyedStretch {
  readonly modulation: Modulation
  readonly carrierHz: number
  /** 2-FSK only. */
  readonly tonesHz: readonly [number, number] | null
  /** Pulses and gaps, or times on the upper and on the lower tone, in no useful order. */
  readonly pulsesUs: readonly number[]
  readonly gapsUs: readonly number[]
  readonly jitterUs: number
  /** Power while up, in the source's scale, and the channel's own idea of the noise in the recorded band. */
  readonly power: number
  readonly bandNoise: number | null
  readonly spans: readonly UpSpan[]
  readonly channelHalfWidthHz: number
}

/** A time the sender was up, its frequency and strength. */
export interface UpSpan {
  readonly fromSeconds: number
  readonly toSeconds: number
  readonly carrierHz: number
  readonly weight: number
}

/** Frames looked at before and behind a stretch, for its edges and for quiet. */
const MARGIN_FRAMES = 8
const LEAST_HALF_WIDTH_HZ = 14_000
const HALF_WIDTH_EXTRA_HZ = 8_000
/** Two groups of frequency this clear are two tones; one group cut in two gives about 1.3. */
const CLEAR_TONES = 2
const LEAST_CHANGES = 10
const CHANGES_PER_RUN = 3
const KEPT_CHANGES = 0.5
const LEAST_TONE_SHARE = 0.08
/** With a grid that nearly all spans keep to, less clear tones will do. */
const GRID_TONES = 1.6
const GRID_FIT = 0.85
const VERY_CLEAR_TONES = 3
const MOST_KINDS = 4
const MOST_STRAY = 0.1
const LEAST_INDEX = 0.35
const LEAST_LONGER = 0.02
const LEAST_PULSES = 6
/** Level up over level down. */
const LEAST_CONTRAST = 2
/** Shorter dips of the level are noise when a sender that shifts its frequency is looked for. */
const SHORTEST_GAP_SECONDS = 60e-6
const LONGEST_WINDOW_SECONDS = 0.0006

/** Measures the sender of a group of lobes (strongest first) that are up together. Null where nothing is keyed. */
export function measureStretch(
  source: SampleSource,
  map: LevelMap,
  sampleRateHz: number,
  lobes: readonly Lobe[],
): KeyedStretch | null {
  const strongest = lobes[0]
  if (strongest === undefined) return null
  const wide = tryChannel(source, map, sampleRateHz, lobes)
  const partner = lobes[1]
  if (wide === null || partner === undefined || wide.modulation === '2-FSK') return wide
  // Lobes up together: the tones of one sender, or an image or a side band beside the sender itself.
  return (
    tryTonePair(source, map, sampleRateHz, strongest, partner) ??
    tryChannel(source, map, sampleRateHz, [strongest])
  )
}

/** First and last sample to look at, with a margin of frames. */
function reachOf(map: LevelMap, lobes: readonly Lobe[], margin: number): readonly [number, number] {
  const first = Math.min(...lobes.map((lobe) => lobe.first))
  const end = Math.max(...lobes.map((lobe) => lobe.end))
  return [
    (map.frameStart[first] ?? 0) - margin * map.bins,
    (map.frameStart[end - 1] ?? 0) + (1 + margin) * map.bins,
  ]
}

function tryTonePair(
  source: SampleSource,
  map: LevelMap,
  sampleRateHz: number,
  a: Lobe,
  b: Lobe,
): KeyedStretch | null {
  const hertz = (lobe: Lobe): number => (lobe.peak - map.bins / 2) * map.binHz
  const tonesHz: readonly [number, number] = a.peak < b.peak ? [hertz(a), hertz(b)] : [hertz(b), hertz(a)]
  const [from, to] = reachOf(map, [a, b], 0)
  const pair = testTonePair(source, sampleRateHz, from, to, tonesHz)
  if (pair === null) return null
  const { runs } = pair
  const onGrid = runs.unit !== null && runs.unit.fit >= GRID_FIT
  const carrierHz = (runs.lowHz + runs.highHz) / 2
  return {
    modulation: (onGrid || isRegular(runs)) && !isRipple(runs) ? '2-FSK' : 'unsure',
    carrierHz,
    tonesHz: [runs.lowHz, runs.highHz],
    pulsesUs: runs.highUs,
    gapsUs: runs.lowUs,
    jitterUs: runs.jitterUs,
    power: pair.amplitude ** 2,
    bandNoise: null,
    spans: pair.up.map((run) => ({ ...spanSeconds(pair.low, run), carrierHz, weight: run.to - run.from })),
    channelHalfWidthHz: (tonesHz[1] - tonesHz[0]) / 2 + LEAST_HALF_WIDTH_HZ,
  }
}

function tryChannel(
  source: SampleSource,
  map: LevelMap,
  sampleRateHz: number,
  lobes: readonly Lobe[],
): KeyedStretch | null {
  const low = Math.min(...lobes.map((lobe) => lobe.low))
  const high = Math.max(...lobes.map((lobe) => lobe.high))
  const offsetHz = ((low + high) / 2 - map.bins / 2) * map.binHz
  const half = Math.max(LEAST_HALF_WIDTH_HZ, ((high - low + 1) * map.binHz) / 2 + HALF_WIDTH_EXTRA_HZ)
  const [from, to] = reachOf(map, lobes, MARGIN_FRAMES)
  const channel = openChannel(source, sampleRateHz, from, to - from, offsetHz, half)
  const envelope = envelopeOf(channel, map.bins / channel.step)
  if (!(envelope.up > 0)) return null
  const edge = (1.5 * channel.boxSamples) / channel.step
  const margin = ((MARGIN_FRAMES - 1) * map.bins) / channel.step
  const runs = runsUp(envelope, Math.max(2, (1.2 * channel.boxSamples) / channel.step)).filter(
    (run) => run.to > margin && run.from < channel.samples - margin,
  )
  if (runs.length === 0) return null
  const steady = tidyRuns(runs, SHORTEST_GAP_SECONDS * channel.rateHz)
  let twoTone: ReturnType<typeof twoTones> = null
  for (const tones of candidateTones(channel, steady, edge)) {
    const measured = twoTones(channel, envelope, steady, tones, edge)
    if (measured?.modulation === '2-FSK' || twoTone === null) twoTone = measured
    if (twoTone?.modulation === '2-FSK') break
  }
  const base = { channelHalfWidthHz: half, bandNoise: quietPower(channel, envelope, runs, edge) }
  return twoTone === null ? onOff(channel, envelope, runs, edge, base) : { ...twoTone, ...base }
}

/** Two tones at averages from two values to half a millisecond, the clearest first. */
function candidateTones(channel: Channel, runs: readonly Run[], edge: number): readonly Tones[] {
  const found: Tones[] = []
  let track = doubleWindow(trackPhase(channel, runs, edge))
  for (; track.window / channel.rateHz < LONGEST_WINDOW_SECONDS; track = doubleWindow(track)) {
    const tones = splitTones(track)
    if (tones === null) break
    if (tones.separation < GRID_TONES) continue
    if (tones.changes < Math.max(LEAST_CHANGES, CHANGES_PER_RUN * tones.runs)) continue
    if (tones.highShare < LEAST_TONE_SHARE || tones.highShare > 1 - LEAST_TONE_SHARE) continue
    found.push(tones)
  }
  // An average longer than the symbols loses changes; what it sees then is the content, not the tones.
  const most = found.reduce((all, tones) => Math.max(all, tones.changes), 0)
  const kept = found.filter((tones) => tones.changes >= KEPT_CHANGES * most)
  return kept.toSorted((a, b) => b.separation - a.separation)
}

type Common = Pick<KeyedStretch, 'channelHalfWidthHz' | 'bandNoise'>

function twoTones(
  channel: Channel,
  envelope: Envelope,
  runs: readonly Run[],
  tones: Tones,
  edge: number,
): Omit<KeyedStretch, keyof Common> | null {
  const measured = twoToneRuns(channel, runs, tones, edge)
  if (measured.highHz <= measured.lowHz || measured.highUs.length + measured.lowUs.length < LEAST_CHANGES / 2)
    return null
  const onGrid = measured.unit !== null && measured.unit.fit >= GRID_FIT
  if (tones.separation < CLEAR_TONES && !onGrid) return null
  const keyed = onGrid || (tones.separation > VERY_CLEAR_TONES && isRegular(measured))
  if (isRipple(measured)) return null
  const carrier = (measured.lowHz + measured.highHz) / 2
  const deviation = (measured.highHz - measured.lowHz) / 2
  const gain = (channelGain(channel, carrier - deviation) + channelGain(channel, carrier + deviation)) / 2
  return {
    modulation: keyed ? '2-FSK' : 'unsure',
    carrierHz: channel.offsetHz + carrier,
    tonesHz: [channel.offsetHz + measured.lowHz, channel.offsetHz + measured.highHz],
    pulsesUs: measured.highUs,
    gapsUs: measured.lowUs,
    jitterUs: measured.jitterUs,
    power: envelope.up ** 2 / Math.max(0.1, gain),
    spans: runs.map((run) => ({
      ...spanSeconds(channel, run),
      carrierHz: channel.offsetHz + carrier,
      weight: run.to - run.from,
    })),
  }
}

/** Few kinds of duration and next to none beside them: a coder's pulse widths, though on no common grid. */
function isRegular({ highUs, lowUs, jitterUs }: TwoToneRuns): boolean {
  const highs = clusterDurations(highUs, jitterUs)
  const lows = clusterDurations(lowUs, jitterUs)
  const stray = strayCount(highs, highUs, jitterUs) + strayCount(lows, lowUs, jitterUs)
  return (
    Math.max(highs.length, lows.length) <= MOST_KINDS && stray < MOST_STRAY * (highUs.length + lowUs.length)
  )
}

/**
 * A clipped tone's phase runs in steps: a small fast ripple that alternates for ever. A shift in use turns the phase by
 * a quarter of a cycle or more a symbol (minimum-shift keying; index 0.5) and carries symbols of more than one length.
 */
function isRipple({ unit, lowHz, highHz, highUs, lowUs }: TwoToneRuns): boolean {
  if (unit === null) return false
  const index = ((highHz - lowHz) * unit.us) / 1e6
  const durations = [...highUs, ...lowUs]
  const longer = durations.filter((us) => us > 1.5 * unit.us).length
  return index < LEAST_INDEX || longer < Math.max(3, LEAST_LONGER * durations.length)
}

function onOff(
  channel: Channel,
  envelope: Envelope,
  runs: readonly Run[],
  edge: number,
  base: Common,
): KeyedStretch {
  const measured = onOffRuns(channel, runs, edge)
  const gain = Math.max(0.1, channelGain(channel, measured.carrierHz))
  const contrast = envelope.up / Math.max(1e-9, envelope.down)
  const keyed =
    runs.length >= LEAST_PULSES &&
    contrast >= LEAST_CONTRAST &&
    !secondTone(channel, envelope, measured, base)
  return {
    ...base,
    modulation: keyed ? 'OOK' : 'unsure',
    carrierHz: channel.offsetHz + measured.carrierHz,
    tonesHz: null,
    pulsesUs: measured.pulsesUs,
    gapsUs: measured.gapsUs,
    jitterUs: (0.5 * 1e6) / channel.rateHz,
    power: envelope.up ** 2 / gain,
    spans: runs.map((run, index) => ({
      ...spanSeconds(channel, run),
      carrierHz: channel.offsetHz + (measured.pulseTones[index]?.hertz ?? measured.carrierHz),
      weight: measured.pulseTones[index]?.weight ?? 0,
    })),
  }
}

/** A steady tone elsewhere in the gaps, clearly above the quiet around: one tone of two may be half out of the band. */
function secondTone(
  channel: Channel,
  envelope: Envelope,
  measured: ReturnType<typeof onOffRuns>,
  base: Common,
): boolean {
  const quiet = Math.sqrt((base.bandNoise ?? 0) * noiseShare(channel))
  const { gapTone } = measured
  return (
    base.bandNoise !== null &&
    envelope.down > 3 * quiet &&
    envelope.down > 0.12 * envelope.up &&
    gapTone.coherence > 0.8 &&
    Math.abs(gapTone.hertz - measured.carrierHz) > 2500
  )
}

function spanSeconds(channel: Channel, run: Run): { fromSeconds: number; toSeconds: number } {
  const rate = channel.rateHz * channel.step
  return {
    fromSeconds: (channel.startSample + run.from * channel.step) / rate,
    toSeconds: (channel.startSample + run.to * channel.step) / rate,
  }
}

/** Noise power of the recorded band judged from this channel before the first and behind the last run. */
function quietPower(channel: Channel, envelope: Envelope, runs: readonly Run[], edge: number): number | null {
  const first = (runs[0]?.from ?? 0) - 2 * edge
  const last = (runs.at(-1)?.to ?? channel.samples) + 2 * edge
  let sum = 0
  let count = 0
  const add = (from: number, to: number): void => {
    for (let at = Math.max(0, Math.ceil(from)); at < Math.min(to, channel.samples); at += 1) {
      const value = envelope.amplitude[at] as number
      if (channel.startSample + at * channel.step < 0) continue
      sum += value * value
      count += 1
    }
  }
  add(0, first)
  add(last, channel.samples)
  return count < 8 ? null : sum / count / noiseShare(channel)
}
