/** @module The symbol length that a sender's durations are whole multiples of. */

import { type CountedCluster, clusterDurations } from './durations.ts'

/** A symbol length and how well the durations keep to it. */
export interface SymbolUnit {
  readonly us: number
  /** By how much every pulse is too long and every gap too short: where the threshold stands on slow edges. */
  readonly shiftUs: number
  /** Share of the durations within a quarter of a symbol of a multiple from 1 to 12. */
  readonly fit: number
  /** Usual distance from the multiple, in symbols. */
  readonly error: number
}

const MOST_SYMBOLS = 12
const WITHIN = 0.25
const MOST_SHIFT = 0.2
const MOST_SHIFT_US = 20
/** A group shorter than this share of all durations does not set the symbol. */
const COMMON_SHARE = 0.04
/** Symbols tried around each candidate, as shares of it. */
const LOWEST = 0.86
const HIGHEST = 1.16
const STEP = 0.004
/** A grid this good is not made finer. */
const GOOD = 0.05

/** One duration, or a group of them: `sign` is 1 for a pulse and -1 for a gap. */
interface Length {
  readonly us: number
  readonly count: number
  readonly sign: 1 | -1
}

/**
 * The longest symbol of which the durations (microseconds) are whole multiples; null with fewer than 6. Candidates
 * are the shortest common group and its halves, thirds and quarters; the best is fitted by least squares.
 */
export function symbolUnit(
  pulsesUs: readonly number[],
  gapsUs: readonly number[],
  jitterUs: number,
  pulses: readonly CountedCluster[] = clusterDurations(pulsesUs, jitterUs),
  gaps: readonly CountedCluster[] = clusterDurations(gapsUs, jitterUs),
): SymbolUnit | null {
  const all = pulsesUs.length + gapsUs.length
  if (all < 6) return null
  const lengths: readonly Length[] = [
    ...pulses.map((cluster) => ({ ...cluster, sign: 1 as const })),
    ...gaps.map((cluster) => ({ ...cluster, sign: -1 as const })),
  ].filter((length) => length.count >= COMMON_SHARE * all)
  const shortest = lengths.reduce((least, length) => Math.min(least, length.us), Infinity)
  if (!Number.isFinite(shortest)) return null
  let best = search(lengths, shortest)
  for (const part of [2, 3, 4]) {
    if (best.cost <= GOOD || shortest / part < 4 * jitterUs) break
    const finer = search(lengths, shortest / part)
    // A finer grid always fits better; it must do so clearly.
    if (finer.cost * part < 0.6 * best.cost) best = finer
  }
  return fit(pulsesUs, gapsUs, best.us)
}

function search(lengths: readonly Length[], around: number): { readonly us: number; readonly cost: number } {
  let best = { us: around, cost: Infinity }
  for (let share = LOWEST; share <= HIGHEST; share += STEP) {
    const us = around * share
    const cost = costOf(lengths, us)
    if (cost < best.cost) best = { us, cost }
  }
  return best
}

/** Mean distance of the groups from multiples of `us`, in symbols, the common shift taken out. */
function costOf(lengths: readonly Length[], us: number): number {
  let weight = 0
  let shift = 0
  for (const length of lengths) {
    const symbols = Math.max(1, Math.round(length.us / us))
    if (symbols > MOST_SYMBOLS) continue
    weight += length.count
    shift += length.count * length.sign * (length.us / us - symbols)
  }
  if (weight === 0) return Infinity
  const most = Math.min(MOST_SHIFT, MOST_SHIFT_US / us)
  shift = Math.max(-most, Math.min(most, shift / weight))
  let cost = 0
  for (const length of lengths) {
    const exact = length.us / us - length.sign * shift
    const symbols = Math.max(1, Math.round(exact))
    if (symbols <= MOST_SYMBOLS) cost += length.count * Math.abs(exact - symbols)
  }
  return cost / weight + 0.1 * Math.abs(shift)
}

/** Least squares of duration = symbols * us + sign * shift over the durations that keep to it, then how well they do. */
function fit(pulsesUs: readonly number[], gapsUs: readonly number[], start: number): SymbolUnit {
  let us = start
  let shift = 0
  for (let pass = 0; pass < 3; pass += 1) {
    let nn = 0
    let n = 0
    let count = 0
    let nd = 0
    let d = 0
    const add = (durations: readonly number[], sign: number): void => {
      for (const duration of durations) {
        const exact = (duration - sign * shift) / us
        const symbols = Math.round(exact)
        if (symbols < 1 || symbols > MOST_SYMBOLS || Math.abs(exact - symbols) > WITHIN) continue
        nn += symbols * symbols
        n += sign * symbols
        count += 1
        nd += symbols * duration
        d += sign * duration
      }
    }
    add(pulsesUs, 1)
    add(gapsUs, -1)
    const determinant = nn * count - n * n
    if (count < 3 || determinant <= 1e-9) break
    us = (nd * count - n * d) / determinant
    const most = Math.min(MOST_SHIFT * us, MOST_SHIFT_US)
    shift = Math.max(-most, Math.min(most, (nn * d - n * nd) / determinant))
  }
  return { us, shiftUs: shift, ...quality(pulsesUs, gapsUs, us, shift) }
}

function quality(
  pulsesUs: readonly number[],
  gapsUs: readonly number[],
  us: number,
  shift: number,
): { fit: number; error: number } {
  const errors = new Float64Array(pulsesUs.length + gapsUs.length)
  let counted = 0
  let fits = 0
  const add = (durations: readonly number[], sign: number): void => {
    for (const duration of durations) {
      const exact = (duration - sign * shift) / us
      const symbols = Math.round(exact)
      if (symbols < 1 || symbols > MOST_SYMBOLS) continue
      const error = Math.abs(exact - symbols)
      errors[counted] = error
      counted += 1
      if (error <= WITHIN) fits += 1
    }
  }
  add(pulsesUs, 1)
  add(gapsUs, -1)
  errors.subarray(0, counted).sort()
  return { fit: fits / errors.length, error: counted === 0 ? 0.5 : (errors[counted >> 1] as number) }
}
