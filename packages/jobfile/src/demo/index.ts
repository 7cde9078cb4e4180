/** @module Invented jobs and recordings: first run, training and the end-to-end test. Nothing in here exists. */
export { demoUnits, recordingAfter, recordingBefore, recordingCycled } from './recordings.ts'
export { demoVin, type SceneFact, settled, vanAfterSession, vanUntilSession } from './scenario.ts'
