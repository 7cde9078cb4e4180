/**
 * @module Bands and limits for remotes by region: information only, no verdict depends on it.
 *
 * `basis: 'memory'` rows carry no checked source; local law decides.
 */

/** Where a row applies. */
export type RadioRegion =
  | 'europe'
  | 'north-america'
  | 'japan'
  | 'south-korea'
  | 'china'
  | 'australia-new-zealand'

/** One band or limit. */
export interface BandRow {
  readonly regions: readonly RadioRegion[]
  readonly lowHz: number
  readonly highHz: number
  /** `usual`: remotes are found here. `limit`: what a sender may do here. */
  readonly kind: 'usual' | 'limit'
  readonly what: string
  readonly source: string
  readonly basis: 'source' | 'memory'
}

const OVERVIEW = 'service texts on remote locking by region'
const EUROPE = 'ERC/REC 70-03 annex 1; test standard ETSI EN 300 220-2'

function usual(
  regions: readonly RadioRegion[],
  lowMHz: number,
  highMHz: number,
  what: string,
  basis: 'source' | 'memory',
): BandRow {
  return {
    regions,
    lowHz: lowMHz * 1e6,
    highHz: highMHz * 1e6,
    kind: 'usual',
    what,
    source: basis === 'source' ? OVERVIEW : 'memory',
    basis,
  }
}

function limit(
  regions: readonly RadioRegion[],
  lowMHz: number,
  highMHz: number,
  what: string,
  source: string,
): BandRow {
  return { regions, lowHz: lowMHz * 1e6, highHz: highMHz * 1e6, kind: 'limit', what, source, basis: 'source' }
}

/** All rows. Spot frequencies are given the half megahertz around them that remotes and receivers spread over. */
export const BAND_ROWS: readonly BandRow[] = [
  usual(['north-america', 'japan'], 314.5, 315.5, 'ASK/OOK or FSK', 'source'),
  usual(['europe'], 433.05, 434.79, 'ASK/OOK or FSK', 'source'),
  usual(['europe'], 868, 868.6, 'FSK', 'source'),
  usual(['north-america'], 902, 928, 'FSK, some two-way and long-range remotes', 'memory'),
  usual(['north-america'], 433.42, 434.42, 'ASK or FSK, older', 'memory'),
  usual(['japan'], 312, 315.25, 'ASK or FSK (ARIB STD-T93)', 'memory'),
  usual(['south-korea'], 433.42, 434.42, '', 'memory'),
  usual(['south-korea'], 446.5, 447.5, '', 'memory'),
  usual(['china'], 314.5, 315.5, 'ASK or FSK', 'memory'),
  usual(['china'], 433.42, 434.42, 'ASK or FSK', 'memory'),
  usual(['australia-new-zealand'], 433.05, 434.79, 'ASK or FSK', 'memory'),
  usual(['australia-new-zealand'], 303.5, 304.5, 'ASK or FSK', 'memory'),
  usual(['australia-new-zealand'], 314.5, 315.5, 'ASK or FSK', 'memory'),
  limit(
    ['europe'],
    433.05,
    434.79,
    '10 mW e.r.p. at up to 10 % duty, or 1 mW e.r.p. and -13 dBm/10 kHz',
    EUROPE,
  ),
  limit(['europe'], 434.04, 434.79, '10 mW e.r.p. in channels of 25 kHz at most', EUROPE),
  limit(['europe'], 868, 868.6, '25 mW e.r.p. at up to 1 % duty, or listen before talk', EUROPE),
  limit(['europe'], 868.7, 869.2, '25 mW e.r.p. at up to 0.1 % duty, or listen before talk', EUROPE),
  limit(['europe'], 869.4, 869.65, '500 mW e.r.p. at up to 10 % duty', EUROPE),
  limit(['europe'], 869.7, 870, '5 mW e.r.p., or 25 mW e.r.p. at up to 1 % duty', EUROPE),
  limit(
    ['north-america'],
    260,
    470,
    'control signals only; field strength at 3 m from 3750 uV/m at 260 MHz to 12500 uV/m at 470 MHz; off within 5 s',
    '47 CFR 15.231',
  ),
  limit(['north-america'], 902, 928, 'field strength at 3 m up to 50 mV/m', '47 CFR 15.249(a)'),
]

/** Rows that hold a carrier, of one region or of all. */
export function bandInformation(carrierHz: number, region: RadioRegion | null): readonly BandRow[] {
  return BAND_ROWS.filter(
    (row) =>
      carrierHz >= row.lowHz && carrierHz <= row.highHz && (region === null || row.regions.includes(region)),
  )
}

/**
 * Field strength that 47 CFR 15.231(b) allows a control transmitter at 3 m, in microvolts per metre: linear between
 * 260 and 470 MHz. null outside.
 */
export function fieldStrengthLimit(carrierHz: number): number | null {
  if (carrierHz < 260e6 || carrierHz > 470e6) return null
  return 3750 + (8750 * (carrierHz / 1e6 - 260)) / 210
}
