/** @module The check digit in position 9 (49 CFR 565.15(c), Tables III and IV). */

import { isWellFormedVin } from './alphabet.ts'

/** Letter values of 49 CFR 565.15(c), Table III; digits stand for themselves. */
const LETTER_VALUES: Readonly<Record<string, number>> = {
  A: 1,
  B: 2,
  C: 3,
  D: 4,
  E: 5,
  F: 6,
  G: 7,
  H: 8,
  J: 1,
  K: 2,
  L: 3,
  M: 4,
  N: 5,
  P: 7,
  R: 9,
  S: 2,
  T: 3,
  U: 4,
  V: 5,
  W: 6,
  X: 7,
  Y: 8,
  Z: 9,
}

/** Weights of positions 1 to 17, 49 CFR 565.15(c), Table IV; position 9 counts nothing. */
export const POSITION_WEIGHTS: readonly number[] = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2]

/** The value a character counts with, null for one outside the alphabet. */
export function characterValue(character: string): number | null {
  if (/^[0-9]$/.test(character)) return Number(character)
  return LETTER_VALUES[character] ?? null
}

/** Sum of value times weight over all 17 positions, null unless the VIN is well formed. */
export function weightedSum(vin: string): number | null {
  if (!isWellFormedVin(vin)) return null
  let sum = 0
  for (const [index, weight] of POSITION_WEIGHTS.entries())
    sum += (characterValue(vin.charAt(index)) ?? 0) * weight
  return sum
}

/** What position 9 should hold: the sum modulo 11, with X for ten; null unless the VIN is well formed. */
export function expectedCheckDigit(vin: string): string | null {
  const sum = weightedSum(vin)
  if (sum === null) return null
  const remainder = sum % 11
  return remainder === 10 ? 'X' : String(remainder)
}
