/** @module Puts the stretches of one sender together, by carrier and by pulse width. */

import { type CountedCluster, clusterDurations } from './durations.ts'
import type { KeyedStretch, Modulation, UpSpan } from './keyed.ts'
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
  readonly noiseShare: number
}

/** Within one press a carrier moves less than this between stretches. */
const SAME_CARRIER_HZ = 12_000
const SAME_TIMING = 0.25
const SAME_SYMBOL = 0.15
const SAME_DEVIATION = 0.3
/** Fewer pulses say nothing of the timing; such a stretch joins by carrier and level. */
const FEW_PULSES = 6
const SAME_LEVEL = 4

/** What a stretch is told apart by, worked out once. */
interface Traits {
  readonly stretch: KeyedStretch
  readonly energy: number
  /** OOK: shortest common pulse. 2-FSK: symbol. Microseconds, 0 when not known. */
  readonly lengthUs: number
  readonly deviationHz: number
}

/** Stretches of a group that a further one is compared with: the strongest. */
const COMPARED_MEMBERS = 8

/** Groups stretches; the weightiest sender first. */
export function groupSenders(stretches: readonly KeyedStretch[]): readonly Sender[] {
  const groups: Traits[][] = []
  for (const traits of stretches.map(traitsOf).toSorted((a, b) => b.energy - a.energy)) {
    const group = groups.find((members) =>
      members.slice(0, COMPARED_MEMBERS).some((member) => belongs(traits, member)),
    )
    if (group === undefined) groups.push([traits])
    else group.push(traits)
  }
  return groups
    .map((group) => senderOf(group.map((traits) => traits.stretch)))
    .toSorted((a, b) => b.weight - a.weight)
}

function traitsOf(stretch: KeyedStretch): Traits {
  const [low, high] = stretch.tonesHz ?? [0, 0]
  return {
    stretch,
    energy: energyOf(stretch),
    lengthUs:
      stretch.tonesHz === null
        ? shortestCommon(clusterDurations(stretch.pulsesUs, stretch.jitterUs))
        : (symbolUnit(stretch.pulsesUs, stretch.gapsUs, stretch.jitterUs)?.us ?? 0),
    deviationHz: (high - low) / 2,
  }
}

/** Shortest length that 15 % of the pulses or more have. */
function shortestCommon(clusters: readonly CountedCluster[]): number {
  const all = clusters.reduce((sum, cluster) => sum + cluster.count, 0)
  const common = clusters.filter((cluster) => cluster.count >= 0.15 * all)
  return common.reduce((least, cluster) => (least === 0 ? cluster.us : Math.min(least, cluster.us)), 0)
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
    noiseShare: mean((member) => member.noiseShare),
  }
}

/** Power times seconds up. */
function energyOf(stretch: KeyedStretch): number {
  return stretch.power * stretch.spans.reduce((sum, span) => sum + span.toSeconds - span.fromSeconds, 0)
}

function startOf(stretch: KeyedStretch): number {
  return stretch.spans[0]?.fromSeconds ?? 0
}

function belongs(one: Traits, other: Traits): boolean {
  const a = one.stretch
  const b = other.stretch
  const known = a.modulation !== 'unsure' && b.modulation !== 'unsure'
  if (known && a.modulation !== b.modulation) return false
  if (Math.abs(a.carrierHz - b.carrierHz) > SAME_CARRIER_HZ) return false
  const few = Math.min(a.pulsesUs.length, b.pulsesUs.length) < FEW_PULSES
  if (few || !known) return a.power < SAME_LEVEL * b.power && b.power < SAME_LEVEL * a.power
  if (a.modulation === 'OOK') return near(one.lengthUs, other.lengthUs, SAME_TIMING)
  return (
    near(one.deviationHz, other.deviationHz, SAME_DEVIATION) &&
    near(one.lengthUs, other.lengthUs, SAME_SYMBOL)
  )
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
