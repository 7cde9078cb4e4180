/** @module Invented jobs and recordings: first run, training and the end-to-end test. Nothing in here exists. */
export { estateOnArrival, saloonAfterScan, saloonUntilScan } from './other-jobs.ts'
export { demoUnits, recordingAfter, recordingBefore, recordingCycled } from './recordings.ts'
export { demoVin, settled, vanAfterSession, vanUntilSession } from './scenario.ts'
export type { SceneFact } from './write.ts'
