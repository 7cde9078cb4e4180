/** @module Everything measured of one sender. */

import { findBursts, summariseBursts } from './bursts.ts'
import { countClipped } from './clipping.ts'
import { withShares } from './durations.ts'
import type { IqSamples } from './iq-reader.ts'
import { type LevelMap, POWER_OF_LEVEL } from './level-map.ts'
import { frameAt, noiseNear, type Quiet } from './noise.ts'
import type { SampleSource } from './sample-source.ts'
import type { SenderTiming } from './sender-timing.ts'
import { type Sender, spansOf } from './senders.ts'
import type { SenderMeasurement } from './types.ts'

/** Where the recording was made. */
export interface RecordingSetting {
  readonly sampleRateHz: number
  readonly centreHz: number | null
}

/** What a measurement is made from. */
export interface MeasuringContext {
  readonly iq: IqSamples
  readonly source: SampleSource
  readonly map: LevelMap
  readonly active: Uint8Array
  readonly quiet: Quiet
  readonly setting: RecordingSetting
  readonly rails: readonly [number, number] | null
}

/** Puts a sender's parameters together. */
export function measureSender(
  context: MeasuringContext,
  sender: Sender,
  timing: SenderTiming,
): SenderMeasurement {
  const { setting, source } = context
  const tones = sender.modulation === '2-FSK' ? meanTones(sender) : null
  const carrier = tones === null ? sender.carrierHz : (tones[0] + tones[1]) / 2
  const noise = noiseOf(context, sender)
  const signal = Math.max(1e-3 * noise, sender.power - noise * sender.noiseShare)
  return {
    modulation: sender.modulation,
    carrierOffsetHz: Math.round(carrier),
    carrierHz: setting.centreHz === null ? null : Math.round(setting.centreHz + carrier),
    // Adding zero makes a negative zero plain.
    driftHz: Math.round(driftOf(sender)) + 0,
    deviationHz: tones === null ? null : Math.round((tones[1] - tones[0]) / 2),
    tonesHz: tones === null ? null : [Math.round(tones[0]), Math.round(tones[1])],
    symbolRate: timing.onGrid && timing.unit !== null ? tenth(1e6 / timing.unit.us) : null,
    pulses: withShares(timing.pulses),
    gaps: withShares(timing.gaps),
    bursts: summariseBursts(sender, findBursts(sender, timing.pauseSeconds)),
    occupiedBandwidthHz: Math.round(occupiedBandwidth(context, sender)),
    snrDb: tenth(10 * Math.log10(signal / noise)),
    levelDbfs: tenth(10 * Math.log10(signal) + source.fullScaleDb),
    clippedShare: clippedShare(context, sender),
  }
}

function tenth(value: number): number {
  return Math.round(10 * value) / 10
}

function meanTones(sender: Sender): readonly [number, number] {
  let low = 0
  let high = 0
  let weight = 0
  for (const stretch of sender.stretches) {
    if (stretch.tonesHz === null || stretch.modulation !== '2-FSK') continue
    const own = Math.max(1, stretch.pulsesUs.length)
    low += own * stretch.tonesHz[0]
    high += own * stretch.tonesHz[1]
    weight += own
  }
  return [low / Math.max(1, weight), high / Math.max(1, weight)]
}

/** Noise of the recorded band near the sender's stretches. */
function noiseOf(context: MeasuringContext, sender: Sender): number {
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

function clippedShare({ iq, setting, rails }: MeasuringContext, sender: Sender): number {
  if (rails === null) return 0
  let clipped = 0
  let values = 0
  for (const span of spansOf(sender)) {
    const from = span.fromSeconds * setting.sampleRateHz
    const counted = countClipped(iq.blocks, rails, from, span.toSeconds * setting.sampleRateHz)
    clipped += counted.clipped
    values += counted.values
  }
  return values === 0 ? 0 : Math.round((1000 * clipped) / values) / 1000
}

const OCCUPIED_SHARE = 0.99
const LOOK_HZ = 40_000

/** From the sender's active cells near its channel, floor taken off, half a per cent cut at either end. */
function occupiedBandwidth({ map, active, setting }: MeasuringContext, sender: Sender): number {
  const power = new Float64Array(map.bins)
  const half = map.bins / 2
  // The number of bins is a power of two.
  const wrap = map.bins - 1
  for (const stretch of sender.stretches) {
    const first = frameAt(map, (stretch.spans[0]?.fromSeconds ?? 0) * setting.sampleRateHz)
    const last = frameAt(map, (stretch.spans.at(-1)?.toSeconds ?? 0) * setting.sampleRateHz)
    const reach = stretch.channelHalfWidthHz + LOOK_HZ
    const low = Math.max(0, Math.ceil(half + (stretch.carrierHz - reach) / map.binHz))
    const high = Math.min(map.bins - 1, Math.floor(half + (stretch.carrierHz + reach) / map.binHz))
    for (let frame = first; frame <= last; frame += 1) {
      if (active[frame] !== 1) continue
      for (let at = low; at <= high; at += 1) {
        const level = map.levels[frame * map.bins + ((at + half) & wrap)] as number
        power[at] = (power[at] as number) + (POWER_OF_LEVEL[level] as number)
      }
    }
    const frames = active.subarray(first, last + 1).reduce((sum, value) => sum + value, 0)
    for (let at = low; at <= high; at += 1) {
      const floor = POWER_OF_LEVEL[map.binFloor[(at + half) & wrap] as number] as number
      power[at] = Math.max(0, (power[at] as number) - frames * floor)
    }
  }
  const all = power.reduce((sum, value) => sum + value, 0)
  if (all <= 0) return 0
  const cut = (share: number): number => cutAt(power, share * all)
  return (cut((1 + OCCUPIED_SHARE) / 2) - cut((1 - OCCUPIED_SHARE) / 2)) * map.binHz
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
