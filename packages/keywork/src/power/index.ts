/** @module Power: will the car's 12 V hold through the work? */

export { powerBudget } from './budget.ts'
export { type CrankingReserve, crankingReserve } from './cranking.ts'
export {
  type DrainAnswer,
  type DrainFindingCode,
  type DrainReading,
  type DrainState,
  drainAfter,
} from './drain.ts'
export { type FobCellAnswer, type FobCellVerdict, fobCell } from './fob-cell.ts'
export { powerLimits } from './limits.ts'
export {
  type MeterLine,
  MeterLines,
  type MeterRefusal,
  parseMeterLine,
  SCPI_ASK_VOLTS,
} from './meter-line.ts'
export { LOAD_NAMES, type LoadName, NAMED_LOADS } from './named-loads.ts'
export { type ParsedPower, type PowerRefusal, parsePowerFile } from './parse-power-file.ts'
export { capacityFromRate, peukertExponent, peukertHours } from './peukert.ts'
export type { ReadAt, VoltsReading } from './readings.ts'
export { refit, type Watch, type WatchFindingCode, type WatchLevel } from './refit.ts'
export type { TimeLeft } from './time-left.ts'
export type {
  Band,
  Battery,
  BatteryKind,
  Crossing,
  CurvePoint,
  DischargeRate,
  LimitSettings,
  MakerInstruction,
  PowerAnswer,
  PowerInput,
  PowerLimits,
  PowerReasonCode,
  PowerStep,
  PowerSupply,
  PowerVerdict,
  PowerWarningCode,
  Starter,
  StartOutlook,
  StepOutlook,
  WithSupply,
} from './types.ts'
