/** @module One shape for everything that is not what was asked for: code, what, where, what to do next. */
export * from './answer.ts'
export * from './problem.ts'
