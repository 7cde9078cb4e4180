/** @module Which faults may be offered for clearing. */

import { wasRead } from './status.ts'
import type { FaultComparison, FaultLine } from './types.ts'

/** Why a fault is not offered for clearing. */
export type ClearingBarrier =
  | 'airbag-there-before'
  | 'airbag-not-read-before'
  | 'permanent'
  | 'nothing-to-clear'

const BARRIER_TEXT: Readonly<Record<ClearingBarrier, string>> = {
  'airbag-there-before': 'An airbag code that was there before the work is evidence and a warning: it stays.',
  'airbag-not-read-before':
    'The airbag unit was not read before the work, so this code may have been there: it stays.',
  permanent:
    'No request clears a permanent code: the car does it after its own tests pass (SAE J1979 service 0A).',
  'nothing-to-clear': 'The last scan does not show this fault.',
}

/** Why this fault may not be offered for clearing, or null when it may. */
export function clearingBarrier(
  line: FaultLine,
): { readonly code: ClearingBarrier; readonly text: string } | null {
  const code = barrierOf(line)
  return code === null ? null : { code, text: BARRIER_TEXT[code] }
}

/** True when a clear request may be offered for this fault. Its unit may still hold another that forbids it. */
export function mayOfferClearing(line: FaultLine): boolean {
  return barrierOf(line) === null
}

/**
 * Units to which a clear request may be offered. The request empties a unit's whole memory (ISO 14229-1 service 14),
 * so one airbag code that must stay keeps its unit off the list.
 */
export function clearableUnits(comparison: FaultComparison): readonly string[] {
  const units = [...new Set(comparison.faults.map((line) => line.unit))]
  return units.filter((unit) => {
    const lines = comparison.faults.filter((line) => line.unit === unit)
    return lines.some(mayOfferClearing) && !lines.some((line) => mustStay(line) && isPresentNow(line))
  })
}

function barrierOf(line: FaultLine): ClearingBarrier | null {
  if (line.airbag) {
    const before = line.life.find((state) => state.phase === 'before')
    if (before?.present === true) return 'airbag-there-before'
    if (before === undefined || !wasRead(before) || before.claims.includes('not-tested-since-clear')) {
      return 'airbag-not-read-before'
    }
  }
  if (line.class === 'permanent') return 'permanent'
  return isPresentNow(line) ? null : 'nothing-to-clear'
}

function mustStay(line: FaultLine): boolean {
  const barrier = barrierOf(line)
  return barrier === 'airbag-there-before' || barrier === 'airbag-not-read-before'
}

function isPresentNow(line: FaultLine): boolean {
  return line.life.filter(wasRead).at(-1)?.present === true
}
