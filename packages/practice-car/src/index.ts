/** @module The door of the package: a simulated vehicle of an invented make, for demo, training and tests. */

export type { BatteryChoices } from './battery/index.ts'
export { buildCar, PRACTICE_RULES, PRACTICE_VIN } from './build/index.ts'
export {
  type Cause,
  DID_KEYS_STORED,
  DID_KEYS_TAUGHT,
  LOST_CODES,
  type Raised,
  TEACH_CLOSE,
  TEACH_OPEN,
  TEACH_SHOW,
  type UnitChoices,
  type UnitFor,
} from './control-unit/index.ts'
export {
  type Action,
  Attempt,
  type Exercise,
  exercises,
  type Incident,
  type Mark,
  type Outcome,
  type Score,
} from './exercise/index.ts'
export type { MonitorChoices } from './fault-memory/index.ts'
export type { PracticeKey, PracticeKeyState, PracticeRule, ShowResult } from './key-list/index.ts'
export { Chance } from './random/index.ts'
export { type Answer, type CarChoices, PracticeCar, type StartResult } from './vehicle/index.ts'
export {
  playVisit,
  type ScanMark,
  type Visit,
  type VisitNote,
  type VisitPhase,
  type VisitTruth,
} from './visit/index.ts'
