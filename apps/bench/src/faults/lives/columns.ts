/** @module The columns of the picture: the moments of the job, or every scan by itself. */
import type { FaultLine, FaultState, ScanPhase } from '@shearline/keywork'

/** One column: a moment with all of its scans, or one scan. */
export interface Column {
  readonly key: string
  readonly phase: ScanPhase
  /** The scan's place in the record; null for a moment with all of its scans. */
  readonly scan: number | null
}

const phases: readonly ScanPhase[] = ['before', 'after', 'cleared', 'cycled']

/** A column for each moment that was scanned. */
export function momentColumns(taken: readonly ScanPhase[]): readonly Column[] {
  return phases.filter((phase) => taken.includes(phase)).map((phase) => ({ key: phase, phase, scan: null }))
}

/** A column for each scan, moment by moment, each in the order of the record. */
export function scanColumns(taken: readonly ScanPhase[]): readonly Column[] {
  return phases.flatMap((phase) =>
    taken.flatMap((each, scan) => (each === phase ? [{ key: `${phase} ${scan}`, phase, scan }] : [])),
  )
}

/** What a column shows of a fault. */
export function stateIn(line: FaultLine, { phase, scan }: Column): FaultState | undefined {
  return scan === null ? line.life.find((state) => state.phase === phase) : line.byScan[scan]
}

/** True when the fault did not stay as it was over the scans that read its unit. */
export function hasChanged(line: FaultLine): boolean {
  const seen = line.byScan.filter((state) => !state.claims.includes('unit-not-read'))
  return seen.some((state) => state.present !== seen[0]?.present)
}
