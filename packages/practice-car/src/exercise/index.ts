/** @module Training at the practice car. */

export { type Action, Attempt, type Mark, type Outcome, type Score } from './attempt.ts'
export { type Exercise, exercises, type Incident } from './exercises.ts'
