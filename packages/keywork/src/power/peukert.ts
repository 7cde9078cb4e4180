/**
 * @module Peukert's law with the hour rating: t = H (C / (I H))^k.
 *
 * The short form t = C / I^k holds only for a rating at one ampere and is not used.
 */

import type { DischargeRate } from './types.ts'

const ROUNDING = 1e-9

/**
 * Exponent from two published rates: k = log(t2 / t1) / log(I1 / I2). Null when the rates are equal, not positive, or
 * give less than 1 (more charge at the higher current, which no battery has).
 */
export function peukertExponent(first: DischargeRate, second: DischargeRate): number | null {
  if (!(first.amperes > 0 && first.hours > 0 && second.amperes > 0 && second.hours > 0)) return null
  const ratio = Math.log(first.amperes / second.amperes)
  if (ratio === 0) return null
  const exponent = Math.log(second.hours / first.hours) / ratio
  return exponent >= 1 - ROUNDING && exponent <= 3 ? Math.max(1, exponent) : null
}

/** Hours a full battery holds a current: `capacityAmpereHours` rated over `hourRate` hours, exponent `k`. */
export function peukertHours(
  amperes: number,
  capacityAmpereHours: number,
  hourRate: number,
  k: number,
): number {
  return hourRate * (capacityAmpereHours / (amperes * hourRate)) ** k
}

/**
 * Current that empties the battery as fast as Peukert says, counted against the rated capacity. Below the rated
 * current nothing is gained: the law would promise more than the rating, which nobody has measured for this battery.
 */
export function effectiveAmperes(amperes: number, ratedAmperes: number, k: number): number {
  return amperes <= ratedAmperes ? amperes : amperes * (amperes / ratedAmperes) ** (k - 1)
}

/** Rated capacity that, with exponent `k`, gives the second rate: C = I H (t / H)^(1/k). */
export function capacityFromRate(rate: DischargeRate, hourRate: number, k: number): number {
  return rate.amperes * hourRate * (rate.hours / hourRate) ** (1 / k)
}
