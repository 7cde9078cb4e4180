/** @module The function grid: what each key does, before and after the work. */

export { applicableFunctions, KEY_FUNCTIONS, STARTING_FUNCTIONS } from './forms.ts'
export { functionGrid, startedIn } from './function-grid.ts'
export { leastTests } from './least-tests.ts'
export type {
  Disturbance,
  FunctionGrid,
  FunctionTest,
  GridCell,
  GridKey,
  KeyForm,
  KeyFunction,
  NeededTest,
  TestOutcome,
  TestPhase,
} from './types.ts'
