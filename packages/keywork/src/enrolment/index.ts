/** @module Teaching rules and the rehearsal: what if the session stops here? */

export { type PossibleEnd, possibleEnds } from './explore.ts'
export { type ParsedPlan, type PlanRefusal, parsePlan } from './parse-plan.ts'
export { rehearse } from './rehearse.ts'
export type {
  BreakPoint,
  Commits,
  Erases,
  OnBreak,
  OpensWith,
  PlanKey,
  Rehearsal,
  SameKeyTwice,
  SessionOutcome,
  TeachingKeyState,
  TeachingKind,
  TeachingMeans,
  TeachingPlan,
  TeachingRule,
  Unknown,
  WayBack,
} from './types.ts'
