/** @module Which faults may be offered for clearing. */

import { wasRead } from './status.ts'
import type { FaultComparison, FaultLine } from './types.ts'

/** Why a fault is not offered for clearing. */
export type ClearingBarrier =
  | 'airbag-there-before'
  | 'airbag-not-read-before'
  | 'permanent'
  | 'nothing-to-clear'

/** True when a clear request may be offered for this fault. Its unit may still hold another that forbids it. */
export function mayOfferClearing(line: FaultLine): boolean {
  return clearingBarrier(line) === null
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

/** Why this fault may not be offered for clearing, or null when it may. */
export function clearingBarrier(line: FaultLine): ClearingBarrier | null {
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
  const barrier = clearingBarrier(line)
  return barrier === 'airbag-there-before' || barrier === 'airbag-not-read-before'
}

function isPresentNow(line: FaultLine): boolean {
  return line.life.filter(wasRead).at(-1)?.present === true
}
