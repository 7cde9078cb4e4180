/** @module Which control units a clear request may be offered for now, and why the others may not. */

import {
  type ClearingBarrier,
  clearableUnits,
  clearingBarrier,
  type FaultComparison,
  type FaultLine,
} from '@shearline/keywork'

/** Why a fault's unit is not offered. */
export type Bar = Exclude<ClearingBarrier, 'nothing-to-clear'> | 'other-code' | 'not-read'

export interface Offer {
  readonly units: readonly string[]
  readonly barred: readonly { readonly line: FaultLine; readonly why: Bar }[]
}

/** Units that the rules let be cleared and whose latest reading, taken after the work, is on record. */
export function clearingOffer(comparison: FaultComparison): Offer {
  const { after, cleared, cycled } = comparison.unitsRead
  const readAgain = new Set([...after, ...cleared, ...cycled])
  const units = clearableUnits(comparison).filter((unit) => readAgain.has(unit))
  const barred = comparison.faults.flatMap((line) => {
    const why = barOf(line, units, readAgain)
    return why === null ? [] : [{ line, why }]
  })
  return { units, barred }
}

function barOf(line: FaultLine, units: readonly string[], readAgain: ReadonlySet<string>): Bar | null {
  const barrier = clearingBarrier(line)
  if (barrier === 'nothing-to-clear') return null
  if (barrier !== null) return barrier
  if (units.includes(line.unit)) return null
  return readAgain.has(line.unit) ? 'other-code' : 'not-read'
}
