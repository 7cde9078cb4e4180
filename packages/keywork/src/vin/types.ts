import type { Finding } from '@shearline/bus'

/** Markets whose rules differ: `na` requires the check digit (49 CFR 565.15), `other` does not (ISO 3779). */
export type VinMarket = 'na' | 'other'

/** What a VIN says by itself. A matching check digit is no proof: a random change passes about 1 time in 11. */
export interface VinReading {
  /** Upper case, spaces and hyphens removed; otherwise as given. */
  readonly vin: string
  readonly wellFormed: boolean
  readonly checkDigit: { readonly expected: string; readonly found: string; readonly ok: boolean } | null
  /** Model years the tenth character can mean, ascending; empty when it means none. */
  readonly modelYears: readonly number[]
  /** Region and country of the maker prefix (ISO 3780), null when the range is not assigned. */
  readonly region: string | null
  readonly country: string | null
  readonly findings: readonly Finding[]
}
