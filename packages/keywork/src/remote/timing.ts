/** @module How far apart the pulse and gap lengths of two on-off keyed senders are. */

import type { DurationCluster } from './durations.ts'
import type { SenderMeasurement } from './types.ts'

/** Largest difference among the lengths both have, and which side has a common length that the other lacks. */
export interface TimingDifference {
  /** Share of the longer one. */
  readonly difference: number
  readonly unmatched: 'original' | 'new' | 'both' | null
}

/** A length is common when this share of its kind has it. */
const COMMON_SHARE = 0.15
/** A length that fewer have than this is a rare one and matches no common one. */
const SEEN_SHARE = 0.1
/** Lengths further apart than this are not the same length. */
const MATCH = 0.16
/**
 * Receivers and levels place the threshold differently on a slow edge, which makes every pulse longer and every gap
 * shorter by the same time. A common shift up to this, and no more than this share of the shortest length, is taken out.
 */
const MOST_SHIFT_US = 14
const MOST_SHIFT_SHARE = 0.08
const SHIFT_STEPS = 7

type Timing = Pick<SenderMeasurement, 'pulses' | 'gaps' | 'symbolRate'>

/** Multiples of the symbol from which on a sender is taken to store symbols back to back. */
const MANY_MULTIPLES = 3
const SAME_RATE = 0.035

/** Compares the lengths at the threshold shift that suits best. */
export function timingDifference(a: Timing, b: Timing): TimingDifference {
  const found = lengthDifference(a, b)
  if (a.symbolRate === null || b.symbolRate === null) return found
  const rates = Math.abs(a.symbolRate - b.symbolRate) / Math.max(a.symbolRate, b.symbolRate)
  const backToBack = Number(isBackToBack(a)) + Number(isBackToBack(b))
  if (backToBack === 2) return { difference: rates, unmatched: null }
  if (backToBack === 0 || found.unmatched === null) return found
  // Which lengths occur is content here: the symbol that both keep to decides, as far as it can.
  if (rates > MATCH) return { difference: rates, unmatched: 'both' }
  if (rates > SAME_RATE) return found
  return { difference: found.difference, unmatched: found.unmatched === 'both' ? 'original' : null }
}

/** Symbols without any frame of pulse and gap: one and two in either kind, and further multiples. */
function isBackToBack({ pulses, gaps, symbolRate }: Timing): boolean {
  if (symbolRate === null) return false
  const multiples = (clusters: readonly DurationCluster[]): ReadonlySet<number> =>
    new Set(clusters.map((cluster) => Math.round((cluster.us * symbolRate) / 1e6)))
  const up = multiples(pulses)
  const down = multiples(gaps)
  const inBoth = [1, 2].every((count) => up.has(count) && down.has(count))
  return inBoth && new Set([...up, ...down]).size >= MANY_MULTIPLES
}

function lengthDifference(a: Timing, b: Timing): TimingDifference {
  const shortest = Math.min(
    ...[a.pulses, a.gaps, b.pulses, b.gaps]
      .flat()
      .filter(isCommon)
      .map((c) => c.us),
  )
  if (!Number.isFinite(shortest)) return { difference: 1, unmatched: 'both' }
  const most = Math.min(MOST_SHIFT_US, MOST_SHIFT_SHARE * shortest)
  let best: TimingDifference | null = null
  for (let step = -SHIFT_STEPS; step <= SHIFT_STEPS; step += 1) {
    const tried = atShift(a, b, (most * step) / SHIFT_STEPS)
    if (best === null || worse(best, tried)) best = tried
  }
  return best ?? { difference: 1, unmatched: 'both' }
}

function worse(a: TimingDifference, b: TimingDifference): boolean {
  const rank = (timing: TimingDifference): number =>
    timing.difference + (timing.unmatched === null ? 0 : timing.unmatched === 'both' ? 20 : 10)
  return rank(a) > rank(b)
}

function atShift(a: Timing, b: Timing, shiftUs: number): TimingDifference {
  const pulses = matchKind(a.pulses, shifted(b.pulses, shiftUs))
  const gaps = matchKind(a.gaps, shifted(b.gaps, -shiftUs))
  const original = pulses.original || gaps.original
  const fresh = pulses.new || gaps.new
  return {
    difference: Math.max(pulses.difference, gaps.difference),
    unmatched: original && fresh ? 'both' : original ? 'original' : fresh ? 'new' : null,
  }
}

function shifted(clusters: readonly DurationCluster[], us: number): readonly DurationCluster[] {
  return clusters.map((cluster) => ({ ...cluster, us: Math.max(1, cluster.us + us) }))
}

function isCommon(cluster: DurationCluster): boolean {
  return cluster.share >= COMMON_SHARE
}

function matchKind(
  a: readonly DurationCluster[],
  b: readonly DurationCluster[],
): { difference: number; original: boolean; new: boolean } {
  const forward = oneWay(a, b)
  const back = oneWay(b, a)
  return {
    difference: Math.max(forward.difference, back.difference),
    original: forward.unmatched,
    new: back.unmatched,
  }
}

/** Each common length of one against the nearest length of the other. */
function oneWay(
  from: readonly DurationCluster[],
  to: readonly DurationCluster[],
): { difference: number; unmatched: boolean } {
  let difference = 0
  let unmatched = false
  for (const cluster of from.filter(isCommon)) {
    const apart = Math.min(
      1,
      ...to
        .filter((other) => other.share >= SEEN_SHARE)
        .map((other) => Math.abs(other.us - cluster.us) / Math.max(other.us, cluster.us)),
    )
    if (apart > MATCH) unmatched = true
    else difference = Math.max(difference, apart)
  }
  return { difference, unmatched }
}
