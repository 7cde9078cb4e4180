/** @module One control unit of the practice car. */

export { LOST_CODES, type UnitChoices, type UnitFor } from './choices.ts'
export { type Cause, ControlUnit, type Raised, type Surroundings } from './control-unit.ts'
export {
  answer,
  type CarSide,
  DID_KEYS_STORED,
  DID_KEYS_TAUGHT,
  TEACH_CLOSE,
  TEACH_OPEN,
  TEACH_SHOW,
} from './services.ts'
