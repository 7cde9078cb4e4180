/** @module Measures the physical parameters of the remote in one recording. */

import { findBursts, pauseSeconds, summariseBursts } from './bursts.ts'
import { countClipped, railsOf } from './clipping.ts'
import { type CountedCluster, clusterDurations, symbolUnit, withShares } from './durations.ts'
import { findingOf } from './findings.ts'
import type { IqSamples } from './iq-reader.ts'
import { findKeyedStretches } from './keyed-stretches.ts'
import { type LevelMap, mapLevels, POWER_OF_LEVEL } from './level-map.ts'
import { findQuiet, frameAt, noiseNear, type Quiet } from './noise.ts'
import { drawPictures, type RemotePictures } from './pictures.ts'
import { SampleSource } from './sample-source.ts'
import { activeFrames } from './segments.ts'
import { groupSenders, type Sender, spansOf } from './senders.ts'
import type {
  LimitCode,
  MeasuredRemote,
  RemoteFinding,
  RemoteMeasurement,
  SenderMeasurement,
} from './types.ts'

/** Where the recording was made. */
export interface RecordingSetting {
  readonly sampleRateHz: number
  readonly centreHz: number | null
}

/** A carrier further from the centre than this share of the sample rate is at the filter's edge. */
export const OFF_CENTRE_SHARE = 0.38
/** Below this the measurement decides nothing. */
export const LEAST_SNR_DB = 6
/** Share of clipped values while up beyond which level and timing are guesses. */
export const MOST_CLIPPED = 0.9
/** Quiet that is clipped too leaves no room for a signal. */
const MOST_QUIET_CLIPPED = 0.02
const SOME_CLIPPED = 0.05
/** A further sender with this share of the strongest's energy could be the remote as well. */
const RIVAL_ENERGY = 0.5
const NAMED_ENERGY = 0.02
const LEAST_SAMPLES = 512
const LOWEST_RATE_HZ = 10_000
const HIGHEST_RATE_HZ = 100e6
const OOK_GRID_FIT = 0.9
const OOK_GRID_ERROR = 0.12
const WANDER_HZ = 15_000

interface Context {
  readonly iq: IqSamples
  readonly source: SampleSource
  readonly map: LevelMap
  readonly active: Uint8Array
  readonly quiet: Quiet
  readonly setting: RecordingSetting
  readonly rails: readonly [number, number] | null
}

/** Measures a recording. Never throws: what cannot be measured is said in `limits` and `findings`. */
export function measureRemote(iq: IqSamples, setting: RecordingSetting): MeasuredRemote {
  const findings: RemoteFinding[] = readingFindings(iq, setting)
  const rate = setting.sampleRateHz
  const usable = rate >= LOWEST_RATE_HZ && rate <= HIGHEST_RATE_HZ
  if (!usable || iq.samples < LEAST_SAMPLES) {
    findings.push(findingOf(usable ? 'empty-recording' : 'rate-unusable', { rate, samples: iq.samples }))
    return withoutSender(iq, setting, findings)
  }
  const source = new SampleSource(iq)
  const map = mapLevels(source, rate)
  const active = activeFrames(map)
  const quiet = findQuiet(map, active)
  source.offsetI = quiet.offsetI
  source.offsetQ = quiet.offsetQ
  const context = { iq, source, map, active, quiet, setting, rails: railsOf(iq.blocks, iq.format) }
  const { stretches, overlapping } = findKeyedStretches(source, map, active, rate)
  const senders = groupSenders(stretches)
  const [main, ...rest] = senders
  if (main === undefined) return withoutSender(iq, setting, findings)
  const measured = measureSender(context, main)
  const others = rest.filter((sender) => sender.energy > NAMED_ENERGY * main.energy && speaks(sender))
  const limits = limitsOf(context, main, measured, others, overlapping(main))
  findings.push(...limits.map((code) => findingOf(code, limitParams(measured, code))))
  findings.push(...senderFindings(measured, others, limits))
  const pause = pauseSeconds(main)
  const bursts = findBursts(main, pause)
  const measurement: RemoteMeasurement = {
    sampleRateHz: rate,
    centreHz: setting.centreHz,
    seconds: iq.samples / rate,
    sender: measured,
    others: others.map((sender) => measureSender(context, sender)),
    limits,
    findings,
  }
  const symbolSeconds =
    measured.modulation === '2-FSK' && measured.symbolRate !== null ? 1 / measured.symbolRate : null
  const draw = (): RemotePictures =>
    drawPictures({
      source,
      map,
      quiet,
      active,
      sampleRateHz: rate,
      sender: main,
      bursts,
      pauseSeconds: pause,
      symbolSeconds,
    })
  return { measurement, draw }
}

function readingFindings(iq: IqSamples, setting: RecordingSetting): RemoteFinding[] {
  const findings: RemoteFinding[] = []
  if (setting.centreHz === null) findings.push(findingOf('centre-unknown', {}))
  if (iq.leftoverBytes > 0) findings.push(findingOf('cut-sample', { bytes: iq.leftoverBytes }))
  if (iq.notNumbers > 0) findings.push(findingOf('not-numbers', { values: iq.notNumbers }))
  if (iq.droppedSamples > 0)
    findings.push(findingOf('parts-dropped', { share: Math.round((100 * iq.droppedSamples) / iq.samples) }))
  return findings
}

function withoutSender(iq: IqSamples, setting: RecordingSetting, findings: RemoteFinding[]): MeasuredRemote {
  findings.push(findingOf('no-sender', {}))
  return {
    measurement: {
      sampleRateHz: setting.sampleRateHz,
      centreHz: setting.centreHz,
      seconds: setting.sampleRateHz > 0 ? iq.samples / setting.sampleRateHz : 0,
      sender: null,
      others: [],
      limits: ['no-sender'],
      findings,
    },
    draw: () => null,
  }
}

/** Enough pulses to be a sender and no accident. */
function speaks(sender: Sender): boolean {
  return sender.modulation !== 'unsure' && spansOf(sender).length + sender.stretches.length >= 2
}

/** Everything measured of one sender. */
function measureSender(context: Context, sender: Sender): SenderMeasurement {
  const { setting, source, rails, iq } = context
  const twoTones = sender.modulation === '2-FSK'
  const jitterUs = Math.max(...sender.stretches.map((stretch) => stretch.jitterUs))
  const pause = pauseSeconds(sender) * 1e6
  const pulsesUs = sender.stretches.flatMap((stretch) => stretch.pulsesUs)
  const gapsUs = sender.stretches.flatMap((stretch) => stretch.gapsUs).filter((us) => us < pause)
  const pulses = clusterDurations(pulsesUs, jitterUs)
  const gaps = clusterDurations(gapsUs, jitterUs)
  const unit = symbolUnit([...pulsesUs, ...gapsUs], jitterUs)
  const onGrid = unit !== null && (twoTones || (unit.fit >= OOK_GRID_FIT && unit.error <= OOK_GRID_ERROR))
  const tones = twoTones ? meanTones(sender) : null
  const carrier = tones === null ? sender.carrierHz : (tones[0] + tones[1]) / 2
  const noise = noiseOf(context, sender)
  return {
    modulation: sender.modulation,
    carrierOffsetHz: Math.round(carrier),
    carrierHz: setting.centreHz === null ? null : Math.round(setting.centreHz + carrier),
    driftHz: Math.round(driftOf(sender)),
    deviationHz: tones === null ? null : Math.round((tones[1] - tones[0]) / 2),
    tonesHz: tones === null ? null : [Math.round(tones[0]), Math.round(tones[1])],
    symbolRate: onGrid ? Math.round(1e7 / unit.us) / 10 : null,
    pulses: withShares(pulses),
    gaps: withShares(gaps),
    bursts: summariseBursts(sender, findBursts(sender, pause / 1e6)),
    occupiedBandwidthHz: Math.round(occupiedBandwidth(context, sender)),
    snrDb: Math.round(100 * Math.log10(Math.max(1e-3, sender.power / noise))) / 10,
    levelDbfs: Math.round(10 * (10 * Math.log10(sender.power) + source.fullScaleDb)) / 10,
    clippedShare: rails === null ? 0 : clippedShare(iq, setting.sampleRateHz, rails, sender),
  }
}

function meanTones(sender: Sender): readonly [number, number] {
  let low = 0
  let high = 0
  let weight = 0
  for (const stretch of sender.stretches) {
    if (stretch.tonesHz === null || stretch.modulation !== '2-FSK') continue
    const own = stretch.pulsesUs.length
    low += own * stretch.tonesHz[0]
    high += own * stretch.tonesHz[1]
    weight += own
  }
  return [low / Math.max(1, weight), high / Math.max(1, weight)]
}

/** Noise of the recorded band near the sender's stretches. */
function noiseOf(context: Context, sender: Sender): number {
  const rate = context.setting.sampleRateHz
  let sum = 0
  let count = 0
  for (const stretch of sender.stretches) {
    const from = (stretch.spans[0]?.fromSeconds ?? 0) * rate
    const to = (stretch.spans.at(-1)?.toSeconds ?? 0) * rate
    const near = noiseNear(context.map, context.quiet, rate, from, to)
    if (near === null) continue
    sum += near * stretch.spans.length
    count += stretch.spans.length
  }
  return count > 0 ? sum / count : context.quiet.floorPower
}

/** Straight line through the carriers of all times up, by strength, from the first to the last. */
function driftOf(sender: Sender): number {
  const spans = spansOf(sender)
  let weight = 0
  let time = 0
  let carrier = 0
  for (const span of spans) {
    weight += span.weight
    time += span.weight * span.fromSeconds
    carrier += span.weight * span.carrierHz
  }
  if (spans.length < 2 || weight <= 0) return 0
  time /= weight
  carrier /= weight
  let top = 0
  let bottom = 0
  for (const span of spans) {
    top += span.weight * (span.fromSeconds - time) * (span.carrierHz - carrier)
    bottom += span.weight * (span.fromSeconds - time) ** 2
  }
  const first = spans[0]?.fromSeconds ?? 0
  const last = spans.at(-1)?.fromSeconds ?? 0
  return bottom > 0 ? (top / bottom) * (last - first) : 0
}

function clippedShare(iq: IqSamples, rate: number, rails: readonly [number, number], sender: Sender): number {
  let clipped = 0
  let values = 0
  for (const span of spansOf(sender)) {
    const counted = countClipped(iq.blocks, rails, span.fromSeconds * rate, span.toSeconds * rate)
    clipped += counted.clipped
    values += counted.values
  }
  return values === 0 ? 0 : Math.round((1000 * clipped) / values) / 1000
}

const OCCUPIED_SHARE = 0.99
const LOOK_HZ = 40_000

/** From the sender's active cells near its channel, floor taken off, half a per cent cut at either end. */
function occupiedBandwidth({ map, active, setting }: Context, sender: Sender): number {
  const power = new Float64Array(map.bins)
  const half = map.bins / 2
  for (const stretch of sender.stretches) {
    const first = frameAt(map, (stretch.spans[0]?.fromSeconds ?? 0) * setting.sampleRateHz)
    const last = frameAt(map, (stretch.spans.at(-1)?.toSeconds ?? 0) * setting.sampleRateHz)
    const reach = stretch.channelHalfWidthHz + LOOK_HZ
    for (let frame = first; frame <= last; frame += 1) {
      if (active[frame] !== 1) continue
      for (let at = 0; at < map.bins; at += 1) {
        if (Math.abs((at - half) * map.binHz - stretch.carrierHz) > reach) continue
        const bin = (at + half) % map.bins
        const level = POWER_OF_LEVEL[map.levels[frame * map.bins + bin] as number] as number
        const floor = POWER_OF_LEVEL[map.binFloor[bin] as number] as number
        power[at] = (power[at] as number) + Math.max(0, level - floor)
      }
    }
  }
  const all = power.reduce((sum, value) => sum + value, 0)
  if (all <= 0) return 0
  return (
    (cutAt(power, (all * (1 + OCCUPIED_SHARE)) / 2) - cutAt(power, (all * (1 - OCCUPIED_SHARE)) / 2)) *
    map.binHz
  )
}

/** Place, in bins, up to which the powers add to `wanted`. */
function cutAt(power: Float64Array, wanted: number): number {
  let sum = 0
  for (let at = 0; at < power.length; at += 1) {
    const value = power[at] as number
    if (sum + value >= wanted && value > 0) return at + (wanted - sum) / value
    sum += value
  }
  return power.length
}

/** More kinds of pulse than a coder makes, off any grid, or many durations of no kind: two senders in one channel. */
export function looksMixed(
  pulsesUs: readonly number[],
  gapsUs: readonly number[],
  jitterUs: number,
): boolean {
  const pulses = clusterDurations(pulsesUs, jitterUs)
  const gaps = clusterDurations(gapsUs, jitterUs)
  const unit = symbolUnit([...pulsesUs, ...gapsUs], jitterUs)
  const kinds = pulses.filter((cluster) => cluster.count >= 0.03 * pulsesUs.length).length
  const loose = (clusters: readonly CountedCluster[], all: readonly number[]): number =>
    all.filter(
      (us) => !clusters.some((cluster) => Math.abs(us - cluster.us) < 0.12 * cluster.us + 2 * jitterUs),
    ).length
  const stray = (loose(pulses, pulsesUs) + loose(gaps, gapsUs)) / Math.max(1, pulsesUs.length + gapsUs.length)
  const offGrid = unit === null || unit.fit < OOK_GRID_FIT || unit.error > OOK_GRID_ERROR
  return (kinds >= 4 && offGrid) || stray > 0.15
}

function limitsOf(
  context: Context,
  main: Sender,
  measured: SenderMeasurement,
  others: readonly Sender[],
  overlapped: boolean,
): readonly LimitCode[] {
  const { setting, rails, iq, quiet, map } = context
  const limits: LimitCode[] = []
  if (measured.snrDb < LEAST_SNR_DB) limits.push('weak')
  const furthest = Math.max(...(measured.tonesHz ?? [measured.carrierOffsetHz]).map(Math.abs))
  const edge = setting.sampleRateHz
  if (Math.abs(measured.carrierOffsetHz) > OFF_CENTRE_SHARE * edge || furthest > 0.46 * edge)
    limits.push('off-centre')
  if (measured.clippedShare > MOST_CLIPPED) limits.push('clipped')
  else if (rails !== null && quietClipped(iq, rails, quiet, map) > MOST_QUIET_CLIPPED) limits.push('clipped')
  const jitterUs = Math.max(...main.stretches.map((stretch) => stretch.jitterUs))
  const pause = pauseSeconds(main) * 1e6
  const mixed =
    main.modulation === 'OOK' &&
    looksMixed(
      main.stretches.flatMap((stretch) => stretch.pulsesUs),
      main.stretches.flatMap((stretch) => stretch.gapsUs).filter((us) => us < pause),
      jitterUs,
    )
  if (overlapped || mixed) limits.push('foreign-on-top')
  if (others.some((other) => other.energy > RIVAL_ENERGY * main.energy)) limits.push('several-senders')
  if (main.modulation === 'unsure' && spansOf(main).length < 6) limits.push('few-pulses')
  return limits
}

const QUIET_FRAMES_LOOKED_AT = 64

function quietClipped(iq: IqSamples, rails: readonly [number, number], quiet: Quiet, map: LevelMap): number {
  let clipped = 0
  let values = 0
  let looked = 0
  for (let frame = 0; frame < map.frames && looked < QUIET_FRAMES_LOOKED_AT; frame += 1) {
    if (quiet.frames[frame] !== 1) continue
    const start = map.frameStart[frame] as number
    const counted = countClipped(iq.blocks, rails, start, start + map.bins)
    clipped += counted.clipped
    values += counted.values
    looked += 1
  }
  return values === 0 ? 0 : clipped / values
}

function limitParams(measured: SenderMeasurement, code: LimitCode): Record<string, number> {
  if (code === 'weak') return { snrDb: measured.snrDb }
  if (code === 'off-centre') return { offsetHz: measured.carrierOffsetHz }
  if (code === 'clipped') return { percent: Math.round(100 * measured.clippedShare) }
  return {}
}

function senderFindings(
  measured: SenderMeasurement,
  others: readonly Sender[],
  limits: readonly LimitCode[],
): readonly RemoteFinding[] {
  const findings: RemoteFinding[] = []
  for (const other of others)
    findings.push(findingOf('other-sender', { offsetHz: Math.round(other.carrierHz) }))
  if (measured.clippedShare > SOME_CLIPPED && !limits.includes('clipped'))
    findings.push(findingOf('some-clipping', { percent: Math.round(100 * measured.clippedShare) }))
  if (Math.abs(measured.driftHz) > WANDER_HZ)
    findings.push(findingOf('carrier-wanders', { driftHz: measured.driftHz }))
  return findings
}
