/** @module What is known of each kind of 12 V battery. Sources per value in README.md. */

import type { BatteryKind } from './types.ts'

/** A quantity that is known only as a range: drawn between low and high, most often near mid. */
export interface Range {
  readonly low: number
  readonly mid: number
  readonly high: number
}

/** The kinds that can really stand in a car; `unknown` is a mixture of them. */
export type KnownKind = Exclude<BatteryKind, 'unknown'>

/** One kind of battery. */
export interface KindFacts {
  /** Rested open-circuit volts at evenly spaced charge, from empty to full. */
  readonly restVolts: readonly number[]
  readonly peukertExponent: Range
  /** Internal resistance times capacity, ohm ampere-hours, new, full, 25 degrees Celsius. */
  readonly ohmAmpereHours: Range
  /** Share of capacity lost per year. */
  readonly fadePerYear: Range
  /** Share of resistance gained per year. */
  readonly growthPerYear: Range
  /** Share of capacity lost per kelvin below 25 degrees Celsius. */
  readonly coldLossPerKelvin: Range
  /** Share of resistance gained per kelvin below 25 degrees Celsius. */
  readonly coldGrowthPerKelvin: Range
  /** Charging current an empty battery takes, in capacities per hour. */
  readonly acceptancePerHour: Range
  /** Acceptance falls with charge (lead) or stays (lithium). */
  readonly acceptanceTapers: boolean
  /** How far a reading too soon after charging can stand above rest. */
  readonly surfaceVolts: number
  /** Terminal volts that end a rated discharge. */
  readonly ratedEndVolts: number
  /** At rest below this a cell is dead or the battery has cut itself off. */
  readonly deadVolts: number
}

const lead = {
  fadePerYear: { low: 0.02, mid: 0.04, high: 0.08 },
  growthPerYear: { low: 0.01, mid: 0.04, high: 0.14 },
  // 0.6 % (20 h rate) to 1 % (1 to 3 h rate) per kelvin; Peukert adds its own share at the smaller capacity.
  coldLossPerKelvin: { low: 0.006, mid: 0.008, high: 0.012 },
  coldGrowthPerKelvin: { low: 0.008, mid: 0.0125, high: 0.02 },
  // The ampere-hour law (Woodbridge 1935): amperes up to the ampere-hours missing, 0.8 C when empty.
  acceptancePerHour: { low: 0.2, mid: 0.5, high: 0.9 },
  acceptanceTapers: true,
  surfaceVolts: 1,
  ratedEndVolts: 10.5,
  // Five of six full cells: 12.65 * 5 / 6.
  deadVolts: 10.54,
} as const

/** Facts by kind. */
export const KINDS: Readonly<Record<KnownKind, KindFacts>> = {
  flooded: {
    ...lead,
    // Midway between the two published flooded tables.
    restVolts: [11.75, 12.03, 12.22, 12.43, 12.63],
    peukertExponent: { low: 1.12, mid: 1.2, high: 1.4 },
    ohmAmpereHours: { low: 0.22, mid: 0.3, high: 0.45 },
  },
  efb: {
    ...lead,
    // No table found: flooded plus 0.05 V, from memory.
    restVolts: [11.8, 12.08, 12.27, 12.48, 12.68],
    peukertExponent: { low: 1.1, mid: 1.17, high: 1.3 },
    ohmAmpereHours: { low: 0.19, mid: 0.26, high: 0.4 },
  },
  agm: {
    ...lead,
    // Between an owner's manual band and a weaker table up to 20 points away, in steps of 10 %.
    restVolts: [11.5, 11.62, 11.78, 11.98, 12.08, 12.19, 12.3, 12.43, 12.57, 12.69, 12.85],
    peukertExponent: { low: 1.05, mid: 1.1, high: 1.15 },
    ohmAmpereHours: { low: 0.16, mid: 0.22, high: 0.32 },
  },
  gel: {
    ...lead,
    // No table found: from memory.
    restVolts: [11.8, 12.05, 12.35, 12.62, 12.85],
    peukertExponent: { low: 1.1, mid: 1.15, high: 1.25 },
    ohmAmpereHours: { low: 0.3, mid: 0.45, high: 0.7 },
  },
  lithium: {
    // Two published charts (README), in steps of 10 %.
    restVolts: [12, 12.55, 12.85, 13.0, 13.13, 13.19, 13.24, 13.29, 13.33, 13.38, 13.58],
    peukertExponent: { low: 1, mid: 1.02, high: 1.05 },
    ohmAmpereHours: { low: 0.15, mid: 0.35, high: 0.8 },
    fadePerYear: { low: 0.01, mid: 0.02, high: 0.05 },
    growthPerYear: { low: 0.01, mid: 0.03, high: 0.08 },
    coldLossPerKelvin: { low: 0.004, mid: 0.008, high: 0.015 },
    coldGrowthPerKelvin: { low: 0.01, mid: 0.025, high: 0.05 },
    acceptancePerHour: { low: 0.3, mid: 0.5, high: 1 },
    acceptanceTapers: false,
    surfaceVolts: 0.5,
    ratedEndVolts: 10,
    deadVolts: 10,
  },
}

/** How likely each kind is when nobody has looked. From memory, for cars. */
export const KIND_SHARES: readonly { readonly kind: KnownKind; readonly share: number }[] = [
  { kind: 'flooded', share: 0.43 },
  { kind: 'efb', share: 0.2 },
  { kind: 'agm', share: 0.3 },
  { kind: 'gel', share: 0.05 },
  { kind: 'lithium', share: 0.02 },
]

/** Published voltage-to-charge tables differ by about 15 points each way; at nine in ten this range gives them. */
export const TABLE_ERROR = 0.18

/** A handheld meter and its leads, each way. From memory: 0.5 % and some digits. */
export const METER_ERROR_VOLTS = 0.05
