/** @module What was done to which unit, and when: single steps, and a whole recording as spans for a picture. */

export type { SpanEnd, TimelineEntry, TimelineWhat } from './entry.ts'
export { resetsAndClears, type StateStep, type StateStepKind } from './steps.ts'
export { Timeline, type TimelineOptions, type TimelineResult } from './timeline.ts'
