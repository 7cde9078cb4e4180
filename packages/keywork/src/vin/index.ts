/** @module Vehicle identification numbers (ISO 3779, ISO 3780, 49 CFR 565). */

export { isWellFormedVin, tidyVin } from './alphabet.ts'
export { expectedCheckDigit, weightedSum } from './check-digit.ts'
export { readVin } from './read-vin.ts'
export { proposeRepairs } from './repair.ts'
export { sameVin } from './same-vin.ts'
export type {
  SourcedVin,
  VinAgreement,
  VinChange,
  VinFindingCode,
  VinMarket,
  VinReading,
  VinRepair,
} from './types.ts'
