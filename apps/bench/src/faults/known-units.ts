/** @module Names of control units that this job has met, so that one unit keeps one name. */
import type { Scan } from '@shearline/keywork'

/** Units of all scans in the order they were first met. */
export function knownUnits(scans: readonly Scan[]): readonly string[] {
  return [...new Set(scans.flatMap((scan) => scan.units.map((unit) => unit.unit)))]
}
