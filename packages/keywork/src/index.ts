/** @module keywork: what it means to the trade. */

export * from './enrolment/index.ts'
export * from './faults/index.ts'
export * from './grid/index.ts'
export * from './power/index.ts'
export * from './remote/index.ts'
export * from './scan-report/index.ts'
export * from './tally/index.ts'
export * from './vin/index.ts'
