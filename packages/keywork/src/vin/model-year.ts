/** @module The model year in position 10 (49 CFR 565.15(d), Table VII: thirty codes, a cycle of thirty years). */

import type { VinMarket } from './types.ts'

/** The thirty codes in order; the first stands for 1980 and again for 2010. */
export const YEAR_CODES = 'ABCDEFGHJKLMNPRSTVWXY123456789' as string

const FIRST_CYCLE = 1980
const CYCLE_YEARS = 30

/** What position 10 (and 7) can mean. */
export interface ModelYears {
  /** Ascending; empty when position 10 is no year code or every year lies too far ahead. */
  readonly years: readonly number[]
  /** False when position 10 is not one of the thirty codes. */
  readonly isYearCode: boolean
  /** True when position 7 chose between two cycles. */
  readonly chosenByPosition7: boolean
  /** Years left out because they lie beyond `asOfYear` + 1. */
  readonly tooFarAhead: readonly number[]
}

/**
 * Model years a tidied VIN of at least ten characters can mean.
 *
 * In North America a digit in position 7 means 1980 to 2009 and a letter 2010 to 2039, for cars and light vehicles
 * up to 4536 kg only; elsewhere position 7 is free and both cycles stay open. A maker may sell next year's model
 * this year, so `asOfYear` + 1 is the last year kept.
 */
export function modelYears(vin: string, market: VinMarket, asOfYear?: number): ModelYears {
  const index = vin.length >= 10 ? YEAR_CODES.indexOf(vin.charAt(9)) : -1
  if (index < 0) return { years: [], isYearCode: false, chosenByPosition7: false, tooFarAhead: [] }
  const cycles = [FIRST_CYCLE + index, FIRST_CYCLE + CYCLE_YEARS + index]
  const position7 = vin.charAt(6)
  const chosenByPosition7 = market === 'na' && /^[0-9A-Z]$/.test(position7)
  const open = chosenByPosition7 ? cycles.slice(/[0-9]/.test(position7) ? 0 : 1).slice(0, 1) : cycles
  const last = asOfYear === undefined ? Number.POSITIVE_INFINITY : asOfYear + 1
  return {
    years: open.filter((year) => year <= last),
    isYearCode: true,
    chosenByPosition7,
    tooFarAhead: open.filter((year) => year > last),
  }
}
