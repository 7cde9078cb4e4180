/** @module The units of a scan on their way into the record. */

import type { ScanPhase, UnitScan } from '@shearline/keywork'
import type { Draft } from '../sync/write.ts'

export type ScannedUnits = readonly UnitScan[]

/** The fact that a scan was taken. A unit without faults is one that was read and holds none. */
export function scanDraft(phase: ScanPhase, units: ScannedUnits): Draft {
  return {
    kind: 'scan-attached',
    body: { phase, units: units.map((unit) => ({ ...unit, faults: [...unit.faults] })) },
  }
}
