/** @module Puts the stretches of one sender together, by carrier and by pulse width. */

import { type CountedCluster, clusterDurations } from './durations.ts'
import type { KeyedStretch, Modulation, UpSpan } from './keyed-stretch.ts'
import { symbolUnit } from './symbol-unit.ts'

/** All stretches of one sender. */
export interface Sender {
  readonly modulation: Modulation
  readonly stretches: readonly KeyedStretch[]
  /** Power times time up. */
  readonly energy: number
  /** What the strongest is chosen by: power times the root of the time up, as the remote is near, not long-winded. */
  readonly weight: number
  readonly carrierHz: number
  readonly power: number
}

/** Within one press a carrier moves less than this between stretches. */
const SAME_CARRIER_HZ = 12_000
const SAME_TIMING = 0.25
const SAME_SYMBOL = 0.15
const SAME_DEVIATION = 0.3
/** Fewer pulses say nothing of the timing; such a stretch joins by carrier and level. */
const FEW_PULSES = 6
const SAME_LEVEL = 4

/** Groups stretches; the weightiest sender first. */
export function groupSenders(stretches: readonly KeyedStretch[]): readonly Sender[] {
  const groups: KeyedStretch[][] = []
  for (const stretch of stretches.toSorted((a, b) => energyOf(b) - energyOf(a))) {
    const group = groups.find((members) => members.some((member) => belongs(stretch, member)))
    if (group === undefined) groups.push([stretch])
    else group.push(stretch)
  }
  return groups.map(senderOf).toSorted((a, b) => b.weight - a.weight)
}

function senderOf(members: readonly KeyedStretch[]): Sender {
  const energy = members.reduce((sum, member) => sum + energyOf(member), 0)
  const mean = (value: (member: KeyedStretch) => number): number =>
    members.reduce((sum, member) => sum + value(member) * energyOf(member), 0) / Math.max(1e-30, energy)
  const of = (modulation: Modulation): number =>
    members.reduce((sum, member) => sum + (member.modulation === modulation ? energyOf(member) : 0), 0)
  const modulation = of('unsure') > 0.5 * energy ? 'unsure' : of('2-FSK') > 0 ? '2-FSK' : 'OOK'
  const own = members.filter((member) => member.modulation === modulation || member.modulation === 'unsure')
  const power = mean((member) => member.power)
  return {
    modulation,
    weight: Math.sqrt(energy * power),
    stretches: own.toSorted((a, b) => startOf(a) - startOf(b)),
    energy,
    carrierHz: mean((member) => member.carrierHz),
    power,
  }
}

/** Power times seconds up. */
export function energyOf(stretch: KeyedStretch): number {
  return stretch.power * stretch.spans.reduce((sum, span) => sum + span.toSeconds - span.fromSeconds, 0)
}

function startOf(stretch: KeyedStretch): number {
  return stretch.spans[0]?.fromSeconds ?? 0
}

function belongs(a: KeyedStretch, b: KeyedStretch): boolean {
  const known = a.modulation !== 'unsure' && b.modulation !== 'unsure'
  if (known && a.modulation !== b.modulation) return false
  if (Math.abs(a.carrierHz - b.carrierHz) > SAME_CARRIER_HZ) return false
  const few = Math.min(a.pulsesUs.length, b.pulsesUs.length) < FEW_PULSES
  if (few || !known) return a.power < SAME_LEVEL * b.power && b.power < SAME_LEVEL * a.power
  return a.tonesHz !== null && b.tonesHz !== null ? sameShift(a, b) : sameTiming(a, b)
}

function sameShift(a: KeyedStretch, b: KeyedStretch): boolean {
  const deviation = (stretch: KeyedStretch): number => {
    const [low, high] = stretch.tonesHz ?? [0, 0]
    return (high - low) / 2
  }
  const unit = (stretch: KeyedStretch): number =>
    symbolUnit(stretch.pulsesUs, stretch.gapsUs, stretch.jitterUs)?.us ?? 0
  return near(deviation(a), deviation(b), SAME_DEVIATION) && near(unit(a), unit(b), SAME_SYMBOL)
}

/** A common kind of pulse of one is also a kind of pulse of the other. */
function sameTiming(a: KeyedStretch, b: KeyedStretch): boolean {
  const ofA = clusterDurations(a.pulsesUs, a.jitterUs)
  const ofB = clusterDurations(b.pulsesUs, b.jitterUs)
  const shortest = (clusters: readonly CountedCluster[]): number => {
    const all = clusters.reduce((sum, cluster) => sum + cluster.count, 0)
    return Math.min(...clusters.filter((cluster) => cluster.count >= 0.15 * all).map((cluster) => cluster.us))
  }
  return near(shortest(ofA), shortest(ofB), SAME_TIMING)
}

function near(a: number, b: number, share: number): boolean {
  return Math.abs(a - b) <= share * Math.max(a, b)
}

/** All times up of a sender in order. */
export function spansOf(sender: Sender): readonly UpSpan[] {
  return sender.stretches
    .flatMap((stretch) => stretch.spans)
    .toSorted((a, b) => a.fromSeconds - b.fromSeconds)
}
