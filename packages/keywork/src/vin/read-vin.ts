/** @module Reads one VIN: form, check digit, model years, region. */

import type { Finding } from '@shearline/bus'
import { FORBIDDEN_LOOK_ALIKES, isWellFormedVin, tidyVin, VIN_ALPHABET, VIN_LENGTH } from './alphabet.ts'
import { expectedCheckDigit } from './check-digit.ts'
import { type ModelYears, modelYears } from './model-year.ts'
import { regionOf } from './region.ts'
import type { VinFindingCode, VinMarket, VinReading } from './types.ts'

type VinFinding = Finding<VinFindingCode>

/**
 * Reads a VIN as typed, scanned or recorded (ISO 3779 form, 49 CFR 565.15 check digit and model year, ISO 3780 region).
 *
 * `market` (default `other`) says whether the check digit and the position-7 rule bind. `asOfYear` leaves out model
 * years beyond the next one. Never throws; what is wrong is in `findings`.
 */
export function readVin(
  text: string,
  options: { readonly market?: VinMarket; readonly asOfYear?: number } = {},
): VinReading {
  const market = options.market ?? 'other'
  const vin = tidyVin(text)
  const wellFormed = isWellFormedVin(vin)
  const findings: VinFinding[] = [...formFindings(vin)]

  const expected = expectedCheckDigit(vin)
  const found = vin.charAt(8)
  const checkDigit = expected === null ? null : { expected, found, ok: expected === found }
  if (checkDigit !== null && !checkDigit.ok)
    findings.push(checkDigitFinding(checkDigit.expected, found, market))

  const rightLength = [...vin].length === VIN_LENGTH
  const years = rightLength ? modelYears(vin, market, options.asOfYear) : null
  if (years !== null) findings.push(...yearFindings(vin, years, market))

  const place = regionOf(vin)
  if (wellFormed && place === null) findings.push(prefixFinding(vin.slice(0, 2)))
  return {
    vin,
    wellFormed,
    checkDigit,
    modelYears: years?.years ?? [],
    region: place?.region ?? null,
    country: place?.country ?? null,
    findings,
  }
}

function formFindings(vin: string): VinFinding[] {
  const characters = [...vin]
  const findings: VinFinding[] = []
  const difference = characters.length - VIN_LENGTH
  if (difference !== 0) {
    const amount = Math.abs(difference)
    findings.push({
      code: 'vin-length',
      severity: 'error',
      where: {},
      what: `${characters.length} characters, ${amount} too ${difference < 0 ? 'few' : 'many'}: a VIN has ${VIN_LENGTH}.`,
      doNext: 'Read it again from the glass, the plate and the document.',
      params: { found: characters.length, needed: VIN_LENGTH, difference },
    })
  }
  for (const [index, character] of characters.entries()) {
    if (VIN_ALPHABET.includes(character)) continue
    const position = index + 1
    const proposal = FORBIDDEN_LOOK_ALIKES[character]
    const where = { part: `position ${position}` }
    if (proposal === undefined) {
      findings.push({
        code: 'vin-forbidden-character',
        severity: 'error',
        where,
        what: `"${character}" at position ${position} cannot be in a VIN.`,
        doNext: 'Read this character again: only digits and letters other than I, O and Q occur.',
        params: { position, found: character },
      })
    } else {
      findings.push({
        code: 'vin-forbidden-letter',
        severity: 'error',
        where,
        what: `The letter ${character} at position ${position} cannot be in a VIN.`,
        doNext: `Look again: it is probably the digit ${proposal}.`,
        params: { position, found: character, proposal },
      })
    }
  }
  return findings
}

function checkDigitFinding(expected: string, found: string, market: VinMarket): VinFinding {
  const binds = market === 'na'
  return {
    code: 'vin-check-digit',
    severity: binds ? 'error' : 'note',
    where: { part: 'position 9' },
    what: `Position 9 is ${found}; the check digit rule gives ${expected}.`,
    doNext: binds
      ? 'One character or more is wrong: read it again.'
      : 'Outside North America position 9 need not be a check digit: compare with a second source.',
    params: { expected, found },
  }
}

function yearFindings(vin: string, years: ModelYears, market: VinMarket): VinFinding[] {
  const where = { part: 'position 10' }
  const code = vin.charAt(9)
  if (!years.isYearCode) {
    const binds = market === 'na'
    return [
      {
        code: 'vin-year-code',
        severity: binds ? 'error' : 'note',
        where,
        what: `${code} at position 10 is not a model year code.`,
        doNext: binds
          ? 'Read position 10 again.'
          : 'Outside North America position 10 need not be the year: take it from the document.',
        params: { found: code },
      },
    ]
  }
  const findings: VinFinding[] = []
  if (years.years.length === 0) {
    findings.push({
      code: 'vin-year-too-far-ahead',
      severity: 'warning',
      where,
      what: `${code} at position 10 would mean ${years.tooFarAhead.join(' or ')}, which has not come yet.`,
      doNext: 'Read positions 7 and 10 again, or take the year from the document.',
      params: { found: code },
    })
  }
  if (years.chosenByPosition7) {
    findings.push({
      code: 'vin-year-by-position-7',
      severity: 'note',
      where: { part: 'position 7' },
      what: `${vin.charAt(6)} at position 7 chose the thirty-year cycle. That holds for light vehicles only.`,
      doNext: 'For a vehicle above 4536 kg take the year from the document.',
      params: { found: vin.charAt(6) },
    })
  }
  return findings
}

function prefixFinding(prefix: string): VinFinding {
  return {
    code: 'vin-prefix-not-assigned',
    severity: 'note',
    where: { part: 'positions 1 and 2' },
    what: `The prefix ${prefix} is in no country's range.`,
    doNext: 'Read the first two characters again.',
    params: { prefix },
  }
}
