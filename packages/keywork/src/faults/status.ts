/** @module What the ISO 14229-1 status byte lets one claim. */

import { type DtcStatusBit, dtcStatusBits } from '@shearline/bus'
import type { FaultClaim, FaultState, ReportedFault, ScanPhase } from './types.ts'

/** What each status bit lets one claim; the last two speak of the test, the others of a failure it remembers. */
const CLAIM_OF_BIT: Readonly<Record<DtcStatusBit, FaultClaim>> = {
  testFailed: 'failing-now',
  testFailedThisOperationCycle: 'failed-this-cycle',
  pendingDTC: 'pending',
  confirmedDTC: 'confirmed',
  testFailedSinceLastClear: 'failed-since-clear',
  warningIndicatorRequested: 'warning-lamp',
  testNotCompletedSinceLastClear: 'not-tested-since-clear',
  testNotCompletedThisOperationCycle: 'not-tested-this-cycle',
}

/**
 * What one unit's reports of one code say. Bits the unit does not support (19 02 availability mask) say nothing.
 * A record without a status (OBD list, typed) is present by being listed.
 */
export function stateOfReports(
  phase: ScanPhase,
  reports: readonly ReportedFault[],
  availability: number | null,
): FaultState {
  const supported = availability ?? 0xff
  const claims = new Set<FaultClaim>()
  let present = false
  let status: number | null = null
  for (const report of reports) {
    if (report.list !== undefined) claims.add(report.list)
    if (report.status === null) {
      present = true
      continue
    }
    status = (status ?? 0) | report.status
    const bits = report.status & supported
    for (const claim of dtcStatusBits(bits).map((bit) => CLAIM_OF_BIT[bit])) {
      claims.add(claim)
      if (!isUntested([claim])) present = true
    }
  }
  if (!present) claims.add(isUntested(claims) ? 'absent-but-untested' : 'absent')
  return { phase, present, status, claims: [...claims] }
}

/** What a unit that was read without listing the code says. */
export function stateOfSilence(phase: ScanPhase, justCleared: boolean): FaultState {
  return { phase, present: false, status: null, claims: [justCleared ? 'absent-but-untested' : 'absent'] }
}

/** What a unit that was not read says: nothing. */
export function stateOfUnread(phase: ScanPhase): FaultState {
  return { phase, present: false, status: null, claims: ['unit-not-read'] }
}

/** True when the claims hold that the test has not run. */
export function isUntested(claims: Iterable<FaultClaim>): boolean {
  const set = new Set(claims)
  return set.has('not-tested-since-clear') || set.has('not-tested-this-cycle')
}

/** The unit was read and has the code not, and its test has run. */
export function isProvenAbsent(state: FaultState): boolean {
  return state.claims.includes('absent')
}

/** The unit was read in this phase. */
export function wasRead(state: FaultState): boolean {
  return !state.claims.includes('unit-not-read')
}
