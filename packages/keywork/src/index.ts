export type * from './faults/types.ts'
export type * from './grid/types.ts'
export type * from './tally/types.ts'
export type * from './vin/types.ts'
