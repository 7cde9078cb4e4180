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

/** Kinds of pulse and of gap from which a sender stores symbols back to back: which lengths occur is its content. */
const MANY_KINDS = 3
const SAME_RATE = 0.035

/** Compares the lengths at the threshold shift that suits best. */
export function timingDifference(a: Timing, b: Timing): TimingDifference {
  const found = lengthDifference(a, b)
  if (a.symbolRate === null || b.symbolRate === null) return found
  const rates = Math.abs(a.symbolRate - b.symbolRate) / Math.max(a.symbolRate, b.symbolRate)
  if (isBackToBack(a) && isBackToBack(b)) return { difference: rates, unmatched: null }
  if (found.unmatched === 'original' || found.unmatched === 'new') {
    // One recording's content lacks a length of the other's: the symbol both keep to decides.
    if (rates > MATCH) return { difference: rates, unmatched: 'both' }
    if (rates <= SAME_RATE && (isBackToBack(a) || isBackToBack(b)))
      return { difference: found.difference, unmatched: null }
  }
  return found
}

function isBackToBack({ pulses, gaps }: Timing): boolean {
  return pulses.length >= MANY_KINDS && gaps.length >= MANY_KINDS
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
