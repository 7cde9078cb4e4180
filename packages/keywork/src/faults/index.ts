/** @module Faults: were they there before, raised by the work, or new (ISO 14229-1, SAE J2012). */

export { isAirbagFault } from './airbag.ts'
export { type Cause, type Complaint, complaints, type LeastCauses, leastCauses } from './causes.ts'
export { type ClearingBarrier, clearableUnits, clearingBarrier, mayOfferClearing } from './clearing.ts'
export { compareScans } from './compare-scans.ts'
export { EXPLANATION_RULES, type ExplanationRule, type ExplanationRuleId } from './explanations.ts'
export type {
  CompareOptions,
  Evidence,
  FaultClaim,
  FaultClass,
  FaultComparison,
  FaultFinding,
  FaultFindingCode,
  FaultLine,
  FaultState,
  ReportedFault,
  Scan,
  ScanPhase,
  UnitMatch,
  UnitRole,
  UnitScan,
  WorkEvent,
  WorkEventKind,
} from './types.ts'
