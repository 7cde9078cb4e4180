/** @module Tests one channel for two-tone keying by its frequency. */

import { type Channel, channelGain, noiseShare } from './channel.ts'
import { clusterDurations, strayCount } from './durations.ts'
import { type Envelope, meanSquare, type Run, unsteadiness } from './envelope.ts'
import { type TwoToneRuns, twoToneRuns } from './frequency-keying.ts'
import { type ChannelFacts, type KeyedStretch, spanSeconds } from './keyed.ts'
import { doubleWindow, splitTones, type Tones, trackPhase } from './tones.ts'

/** Two groups of frequency this clear are two tones; one group cut in two gives about 1.3. */
const CLEAR_TONES = 2
/** With a grid that nearly all spans keep to, less clear tones will do. */
const GRID_TONES = 1.6
const GRID_FIT = 0.85
/** This clear, pulse widths on no grid will do. */
const VERY_CLEAR_TONES = 3
const LEAST_CHANGES = 10
const CHANGES_PER_RUN = 3
const LEAST_TONE_SHARE = 0.08
/** Share of the time up that lies in runs with three changes or more. */
const LEAST_BUSY_SHARE = 0.6
const ABOUT_AS_WIDE = 0.75
const MOST_KINDS = 4
const LEAST_REGULAR = 40
const MOST_STRAY = 0.1
/** One sender's level holds while it shifts; a second one beats with it. */
const MOST_UNSTEADY = 0.42
const LEAST_INDEX = 0.35
const LEAST_LONGER = 0.02
const LONGEST_WINDOW_SECONDS = 0.0006

type Measured = Omit<KeyedStretch, keyof ChannelFacts>

/** Measures a channel as two-tone keyed; null when it is not. `runs`: where it is up. `edge`: values its filter blurs. */
export function measureTwoTones(
  channel: Channel,
  envelope: Envelope,
  runs: readonly Run[],
  edge: number,
): Measured | null {
  const candidates = candidateTones(channel, runs, edge)
  const measured: Measured[] = []
  for (const tones of candidates) {
    const runsOfTones = twoToneRuns(channel, runs, tones, edge)
    const one = twoTones(channel, envelope, runs, tones, runsOfTones, edge)
    if (one === null) continue
    // A common grid is the best witness; pulse widths on none count only when nothing keeps to one.
    if (one.modulation === '2-FSK' && isOnGrid(runsOfTones)) return one
    measured.push(one)
  }
  return measured.find((one) => one.modulation === '2-FSK') ?? measured[0] ?? null
}

/**
 * Two tones at averages from two values to half a millisecond, in the order to try them: the widest apart first, as an
 * average longer than a symbol draws the tones together, and of those about as wide the clearest.
 */
function candidateTones(channel: Channel, runs: readonly Run[], edge: number): readonly Tones[] {
  const found: Tones[] = []
  let track = doubleWindow(trackPhase(channel, runs, edge))
  for (; track.window / channel.rateHz < LONGEST_WINDOW_SECONDS; track = doubleWindow(track)) {
    const tones = splitTones(track)
    if (tones === null) break
    if (tones.separation < GRID_TONES) continue
    if (tones.changes < Math.max(LEAST_CHANGES, CHANGES_PER_RUN * tones.runs)) continue
    if (tones.busyShare < LEAST_BUSY_SHARE) continue
    if (tones.highShare < LEAST_TONE_SHARE || tones.highShare > 1 - LEAST_TONE_SHARE) continue
    found.push(tones)
  }
  const ordered: Tones[] = []
  while (found.length > 0) {
    const widest = Math.max(...found.map(distanceOf))
    const wide = found.filter((tones) => distanceOf(tones) >= ABOUT_AS_WIDE * widest)
    const next = wide.reduce((best, tones) => (tones.separation > best.separation ? tones : best))
    ordered.push(next)
    found.splice(found.indexOf(next), 1)
  }
  return ordered
}

function distanceOf(tones: Tones): number {
  return tones.highHz - tones.lowHz
}

function twoTones(
  channel: Channel,
  envelope: Envelope,
  runs: readonly Run[],
  tones: Tones,
  measured: TwoToneRuns,
  edge: number,
): Measured | null {
  if (measured.highHz <= measured.lowHz || measured.highUs.length + measured.lowUs.length < LEAST_CHANGES / 2)
    return null
  const onGrid = isOnGrid(measured)
  if (tones.separation < CLEAR_TONES && !onGrid) return null
  const steady = unsteadiness(envelope.amplitude, runs) < MOST_UNSTEADY
  const keyed = steady && (onGrid || (tones.separation > VERY_CLEAR_TONES && isRegular(measured)))
  if (isRipple(measured)) return null
  const carrier = (measured.lowHz + measured.highHz) / 2
  const deviation = (measured.highHz - measured.lowHz) / 2
  const gain = Math.max(
    0.1,
    (channelGain(channel, carrier - deviation) + channelGain(channel, carrier + deviation)) / 2,
  )
  return {
    modulation: keyed ? '2-FSK' : 'unsure',
    carrierHz: channel.offsetHz + carrier,
    tonesHz: [channel.offsetHz + measured.lowHz, channel.offsetHz + measured.highHz],
    pulsesUs: measured.highUs,
    gapsUs: measured.lowUs,
    jitterUs: measured.jitterUs,
    power: meanSquare(envelope.amplitude, runs, edge) / gain,
    noiseShare: noiseShare(channel) / gain,
    spans: runs.map((run) => ({
      ...spanSeconds(channel, run),
      carrierHz: channel.offsetHz + carrier,
      weight: run.to - run.from,
    })),
  }
}

/** True when nearly all spans are whole multiples of one symbol, or of a few kinds. */
export function keepsTime(runs: TwoToneRuns): boolean {
  return isOnGrid(runs) || isRegular(runs)
}

function isOnGrid({ unit }: TwoToneRuns): boolean {
  return unit !== null && unit.fit >= GRID_FIT
}

/** Few kinds of duration and next to none beside them: a coder's pulse widths, though on no common grid. */
function isRegular({ highUs, lowUs, jitterUs }: TwoToneRuns): boolean {
  const highs = clusterDurations(highUs, jitterUs)
  const lows = clusterDurations(lowUs, jitterUs)
  const stray = strayCount(highs, highUs, jitterUs) + strayCount(lows, lowUs, jitterUs)
  const all = highUs.length + lowUs.length
  return all >= LEAST_REGULAR && Math.max(highs.length, lows.length) <= MOST_KINDS && stray < MOST_STRAY * all
}

/**
 * A clipped tone's phase runs in steps: a small fast ripple that alternates for ever. A shift in use turns the phase by
 * a quarter of a cycle or more a symbol (minimum-shift keying; index 0.5) and carries symbols of more than one length.
 */
export function isRipple({ unit, lowHz, highHz, highUs, lowUs }: TwoToneRuns): boolean {
  if (unit === null) return false
  const index = ((highHz - lowHz) * unit.us) / 1e6
  // Each side by itself: a beat is high for one length and low for another, again and again.
  const longer = longerThanShortest(highUs) + longerThanShortest(lowUs)
  const durations = highUs.length + lowUs.length
  return index < LEAST_INDEX || longer < Math.max(3, LEAST_LONGER * durations)
}

function longerThanShortest(durations: readonly number[]): number {
  const sorted = durations.toSorted((a, b) => a - b)
  const short = sorted[Math.floor(sorted.length / 10)] ?? 0
  return durations.filter((us) => us > 1.45 * short).length
}
