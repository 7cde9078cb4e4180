/** @module A sender's durations over all its stretches: groups, symbol length, and the pause that parts its bursts. */

import { pauseSeconds } from './bursts.ts'
import { type CountedCluster, clusterDurations, strayCount } from './durations.ts'
import type { Sender } from './senders.ts'
import { type SymbolUnit, symbolUnit } from './symbol-unit.ts'

/** Durations of one sender in microseconds. */
export interface SenderTiming {
  readonly pulsesUs: readonly number[]
  /** Pauses between bursts are not among them. */
  readonly gapsUs: readonly number[]
  readonly jitterUs: number
  readonly pauseSeconds: number
  readonly pulses: readonly CountedCluster[]
  readonly gaps: readonly CountedCluster[]
  readonly unit: SymbolUnit | null
  /** The durations are whole multiples of `unit`. */
  readonly onGrid: boolean
}

const GRID_FIT = 0.88
const GRID_ERROR = 0.1

/** Puts a sender's durations together. */
export function timingOf(sender: Sender): SenderTiming {
  const pause = pauseSeconds(sender)
  const jitterUs = Math.max(...sender.stretches.map((stretch) => stretch.jitterUs))
  const pulsesUs = sender.stretches.flatMap((stretch) => stretch.pulsesUs)
  const gapsUs = sender.stretches.flatMap((stretch) => stretch.gapsUs).filter((us) => us < pause * 1e6)
  const pulses = clusterDurations(pulsesUs, jitterUs)
  const gaps = clusterDurations(gapsUs, jitterUs)
  const unit = symbolUnit(pulsesUs, gapsUs, jitterUs, pulses, gaps)
  return {
    pulsesUs,
    gapsUs,
    jitterUs,
    pauseSeconds: pause,
    pulses,
    gaps,
    unit,
    onGrid: unit !== null && unit.fit >= GRID_FIT && unit.error <= GRID_ERROR,
  }
}

/** Kinds of pulse (one more of gap) that no coder makes off a grid, and the share of durations that belong to no kind. */
const MANY_KINDS = 4
const KIND_SHARE = 0.03
const MOST_STRAY = 0.15

/** Many kinds of pulse off any grid, or many durations of no kind: two senders in one channel. */
export function looksMixed(timing: SenderTiming): boolean {
  const { pulses, gaps, pulsesUs, gapsUs, jitterUs, onGrid } = timing
  if (onGrid) return false
  const kinds = (clusters: readonly CountedCluster[], all: number): number =>
    clusters.filter((cluster) => cluster.count >= KIND_SHARE * all).length
  const many = kinds(pulses, pulsesUs.length) >= MANY_KINDS || kinds(gaps, gapsUs.length) > MANY_KINDS
  const stray =
    (strayCount(pulses, pulsesUs, jitterUs) + strayCount(gaps, gapsUs, jitterUs)) /
    Math.max(1, pulsesUs.length + gapsUs.length)
  return many || stray > MOST_STRAY
}
