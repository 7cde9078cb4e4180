/** @module Groups of like durations, and the symbol length they are multiples of. */

/** One group of durations. */
export interface DurationCluster {
  readonly us: number
  /** Share of all durations of its kind, in twentieths: enough to compare by, too coarse to count symbols. */
  readonly share: number
}

/** A group with its exact count: inside the measurement only. */
export interface CountedCluster {
  readonly us: number
  readonly count: number
}

const LOG_STEP = 0.01
const SHORTEST_US = 2
const LONGEST_US = 2e6
const STEPS = Math.ceil(Math.log(LONGEST_US / SHORTEST_US) / LOG_STEP)
/** Spread of like durations: this share, or the jitter of one edge if that is more. */
const RELATIVE_SPREAD = 0.03
/** Two peaks are one group when they lie closer than this or the valley between them is shallow. */
const LEAST_RATIO = 1.13
const SHALLOW = 0.7
/** Groups smaller than this share are accidents. */
const LEAST_SHARE = 0.025

/**
 * Groups durations (microseconds) around the peaks of their density on a logarithmic axis, most frequent group
 * first. `jitterUs` is the usual error of one duration.
 */
export function clusterDurations(
  durationsUs: readonly number[],
  jitterUs: number,
): readonly CountedCluster[] {
  if (durationsUs.length === 0) return []
  const peaks = densityPeaks(durationDensity(durationsUs, jitterUs))
  const members: number[][] = peaks.map(() => [])
  for (const us of durationsUs) {
    const at = stepOf(us)
    const index = peaks.findIndex((peak) => at <= peak.end)
    members[index < 0 ? peaks.length - 1 : index]?.push(us)
  }
  const least = Math.max(durationsUs.length < 12 ? 1 : 2, LEAST_SHARE * durationsUs.length)
  return members
    .filter((group) => group.length >= least)
    .map((group) => ({ us: middleMean(group), count: group.length }))
    .toSorted((a, b) => b.count - a.count)
}

/** The same without counts. */
export function withShares(clusters: readonly CountedCluster[]): readonly DurationCluster[] {
  const total = clusters.reduce((sum, cluster) => sum + cluster.count, 0)
  return clusters.map(({ us, count }) => ({
    us: Math.round(us * 10) / 10,
    share: Math.max(0.05, Math.round((20 * count) / total) / 20),
  }))
}

function stepOf(us: number): number {
  return Math.min(STEPS - 1, Math.max(0, Math.round(Math.log(us / SHORTEST_US) / LOG_STEP)))
}

function durationDensity(durationsUs: readonly number[], jitterUs: number): Float64Array {
  const counts = new Float64Array(STEPS)
  for (const us of durationsUs) {
    const at = stepOf(us)
    counts[at] = (counts[at] as number) + 1
  }
  const density = new Float64Array(STEPS)
  for (let at = 0; at < STEPS; at += 1) {
    const count = counts[at] as number
    if (count === 0) continue
    const us = SHORTEST_US * Math.exp(at * LOG_STEP)
    const sigma = Math.min(25, Math.max(RELATIVE_SPREAD, jitterUs / us) / LOG_STEP)
    const reach = Math.ceil(3 * sigma)
    for (let k = -reach; k <= reach; k += 1) {
      if (at + k < 0 || at + k >= STEPS) continue
      density[at + k] = (density[at + k] as number) + (count / sigma) * Math.exp(-0.5 * (k / sigma) ** 2)
    }
  }
  return density
}

interface Peak {
  at: number
  height: number
  /** Last step that belongs to it. */
  end: number
}

function densityPeaks(density: Float64Array): readonly Peak[] {
  const peaks: Peak[] = []
  for (let at = 0; at < STEPS; at += 1) {
    const height = density[at] as number
    if (height <= 0 || height < (density[at - 1] ?? 0) || height <= (density[at + 1] ?? 0)) continue
    const last = peaks.at(-1)
    if (last === undefined) {
      peaks.push({ at, height, end: STEPS - 1 })
      continue
    }
    const valley = lowestBetween(density, last.at, at)
    const shallow = (density[valley] as number) > SHALLOW * Math.min(height, last.height)
    if (shallow || (at - last.at) * LOG_STEP < Math.log(LEAST_RATIO)) {
      if (height > last.height) {
        last.at = at
        last.height = height
      }
    } else {
      last.end = valley
      peaks.push({ at, height, end: STEPS - 1 })
    }
  }
  return peaks
}

function lowestBetween(density: Float64Array, from: number, to: number): number {
  let lowest = from
  for (let at = from; at <= to; at += 1)
    if ((density[at] as number) < (density[lowest] as number)) lowest = at
  return lowest
}

/** Mean of the middle half: as steady as the median, finer than the sampling step. */
function middleMean(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort()
  const cut = Math.floor(sorted.length / 4)
  const middle = sorted.subarray(cut, sorted.length - cut)
  return middle.reduce((sum, value) => sum + value, 0) / middle.length
}

/** Durations that belong to none of the groups. */
export function strayCount(
  clusters: readonly CountedCluster[],
  durations: readonly number[],
  jitterUs: number,
): number {
  let stray = 0
  for (const us of durations)
    if (!clusters.some((cluster) => Math.abs(us - cluster.us) < 0.12 * cluster.us + 2 * jitterUs)) stray += 1
  return stray
}
