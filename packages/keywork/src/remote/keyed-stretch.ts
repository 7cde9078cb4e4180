/** @module One sender in one stretch of time: how it is keyed, where, how strong. Order of symbols is never kept. */

import { type Channel, noiseShare, openChannel } from './channel.ts'
import { type Envelope, envelopeOf, type Run, runsUp, tidyRuns } from './envelope.ts'
import { type KeyedStretch, spanSeconds } from './keyed.ts'
import type { LevelMap } from './level-map.ts'
import { measureOnOff } from './on-off.ts'
import type { SampleSource } from './sample-source.ts'
import type { Lobe } from './segments.ts'
import { testTonePair } from './tone-pair.ts'
import { isRipple, keepsTime, measureTwoTones } from './two-tones.ts'

/** Frames looked at before and behind a stretch, for its edges and for quiet. */
const MARGIN_FRAMES = 8
const TONE_BINS = 3
const LEAST_HALF_WIDTH_HZ = 14_000
const HALF_WIDTH_EXTRA_HZ = 8_000
/** Dips shorter than this, or than the filter's length, are noise when a shifting sender is looked for. */
const SHORTEST_GAP_SECONDS = 20e-6

/**
 * Measures the sender of a group of lobes (strongest first) that are up together. `partners` may be the strongest's
 * other tone, or an image or a side band of it. Null where nothing is keyed.
 */
export function measureStretch(
  source: SampleSource,
  map: LevelMap,
  sampleRateHz: number,
  lobes: readonly Lobe[],
  partners: readonly Lobe[],
): KeyedStretch | null {
  const strongest = lobes[0]
  if (strongest === undefined) return null
  const wide = tryChannel(source, map, sampleRateHz, lobes)
  if (wide === null || wide.modulation === '2-FSK') return wide
  for (const partner of partners) {
    const pair = tryTonePair(source, map, sampleRateHz, strongest, partner)
    if (pair !== null) return pair
  }
  return lobes.length === 1 ? wide : tryChannel(source, map, sampleRateHz, [strongest])
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
  const carrierHz = (runs.lowHz + runs.highHz) / 2
  return {
    modulation: keepsTime(runs) && !isRipple(runs) ? '2-FSK' : 'unsure',
    carrierHz,
    tonesHz: [runs.lowHz, runs.highHz],
    pulsesUs: runs.highUs,
    gapsUs: runs.lowUs,
    jitterUs: runs.jitterUs,
    power: pair.power,
    noiseShare: noiseShare(pair.low),
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
  const steady = tidyRuns(
    runs,
    Math.max(SHORTEST_GAP_SECONDS * channel.rateHz, (2 * channel.boxSamples) / channel.step),
  )
  const twoTone = measureTwoTones(channel, envelope, steady, edge)
  const base = { channelHalfWidthHz: half, bandNoise: quietPower(channel, envelope, runs, edge) }
  if (twoTone?.tonesHz?.every((hertz) => inLobe(hertz, lobes, map))) return { ...twoTone, ...base }
  return measureOnOff(channel, envelope, runs, edge, base)
}

/** A tone shows in the spectrum; a mean of several signals lies between their lobes. */
function inLobe(hertz: number, lobes: readonly Lobe[], map: LevelMap): boolean {
  const bin = hertz / map.binHz + map.bins / 2
  return lobes.some((lobe) => bin >= lobe.low - TONE_BINS && bin <= lobe.high + TONE_BINS)
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
