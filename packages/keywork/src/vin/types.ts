import type { Finding } from '@shearline/bus'

/** Markets whose rules differ: `na` requires the check digit (49 CFR 565.15), `other` does not (ISO 3779). */
export type VinMarket = 'na' | 'other'

/** Everything that can be worth saying of one VIN. */
export type VinFindingCode =
  | 'vin-length'
  | 'vin-forbidden-letter'
  | 'vin-forbidden-character'
  | 'vin-check-digit'
  | 'vin-year-code'
  | 'vin-year-too-far-ahead'
  | 'vin-year-by-position-7'
  | 'vin-prefix-not-assigned'

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
  readonly findings: readonly Finding<VinFindingCode>[]
}

/** One character of a VIN read differently. Positions count from 1. */
export interface VinChange {
  readonly position: number
  readonly from: string
  readonly to: string
}

/** A VIN that differs little from the one given and is right in form and check digit. Never applied by itself. */
export interface VinRepair {
  readonly vin: string
  readonly changes: readonly VinChange[]
  readonly by: readonly ('forbidden-letter' | 'look-alike' | 'transposed-neighbours')[]
  /** Smaller is likelier; only the order means something. */
  readonly rank: number
  readonly what: string
}

/** A VIN and where it was read: glass, plate, document, the car's own bus. */
export interface SourcedVin {
  readonly source: string
  readonly text: string
}

/** Whether all sources give one VIN, and where they part. */
export interface VinAgreement {
  /** `too-few`: fewer than two sources, so nothing was compared. */
  readonly verdict: 'agree' | 'conflict' | 'too-few'
  /** The VIN all sources give; null in conflict or without a source. */
  readonly vin: string | null
  /** Positions, from 1, at which any two sources differ. */
  readonly positions: readonly number[]
  /** The different readings, the one with most sources first, then in the order given. */
  readonly readings: readonly { readonly vin: string; readonly sources: readonly string[] }[]
  /** English sentence. */
  readonly what: string
}
