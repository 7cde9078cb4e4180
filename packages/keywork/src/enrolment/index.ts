/** @module Teaching rules and the rehearsal: what if the session stops here? */

export { RULE_ARCHETYPES, type RuleArchetype } from './archetypes.ts'
export { type PossibleEnd, possibleEnds } from './explore.ts'
export { isExtended } from './extended.ts'
export { type ParsedPlan, type ParsedRule, type PlanRefusal, parsePlan, parseRule } from './parse-plan.ts'
export { rehearse } from './rehearse.ts'
export { rehearseSession } from './session.ts'
export type {
  GuardCheck,
  Interruption,
  InterruptionCause,
  OrderCost,
  OrderReason,
  Recovery,
  RecoveryStep,
  RecoveryWay,
  SessionRehearsal,
  SessionStep,
} from './session-types.ts'
export type {
  BreakCause,
  BreakPoint,
  CodeGate,
  Commits,
  Erases,
  OnBreak,
  OpensWith,
  PenaltyPause,
  PlanGuards,
  PlanKey,
  Rehearsal,
  SameKeyTwice,
  SessionAmperes,
  SessionOutcome,
  SessionSeconds,
  SlotTaken,
  Spends,
  TeachingKeyState,
  TeachingKind,
  TeachingMeans,
  TeachingPlan,
  TeachingRule,
  Unknown,
  WayBack,
  WrongKey,
} from './types.ts'
