/** @module The units of a scan on their way into the record. */

import type { ScanPhase, UnitScan } from '@shearline/keywork'
import type { Draft } from '../sync/write.ts'
import type { Source } from './report/source.ts'

export type ScannedUnits = readonly UnitScan[]

/** The fact that a scan was taken, and the report it came from. A unit without faults was read and holds none. */
export function scanDraft(phase: ScanPhase, units: ScannedUnits, source: Source | null): Draft {
  return {
    kind: 'scan-attached',
    body: {
      phase,
      units: units.map(({ ids, ...unit }) => ({
        ...unit,
        ...(ids === undefined ? {} : { ids: [...ids] }),
        faults: [...unit.faults],
      })),
      ...(source === null ? {} : { source: source.named }),
    },
  }
}
