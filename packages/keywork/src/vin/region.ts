/** @module Region and country of the maker prefix (ISO 3780). */

import { SECOND_CHARACTER_ORDER, WMI_RANGES } from './iso3780.ts'

/** Region and country that the first two characters stand for; null when their range is not assigned. */
export function regionOf(vin: string): { readonly region: string; readonly country: string } | null {
  const first = vin.charAt(0)
  const second = SECOND_CHARACTER_ORDER.indexOf(vin.charAt(1))
  if (first === '' || vin.charAt(1) === '' || second < 0) return null
  for (const [from, to, country, region] of WMI_RANGES) {
    if (from.charAt(0) !== first) continue
    const low = SECOND_CHARACTER_ORDER.indexOf(from.charAt(1))
    const high = SECOND_CHARACTER_ORDER.indexOf(to.charAt(1))
    if (second >= low && second <= high) return { region, country }
  }
  return null
}
