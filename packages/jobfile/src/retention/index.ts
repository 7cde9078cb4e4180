/** @module What is kept, until when and why; what is due; the proof of a deletion. */
export type { DeletedItem, HeldAs, Kept, RetentionClass } from './classes.ts'
export { type ClassClock, type Deletion, type Hold, type JobClocks, retentionClocks } from './clock.ts'
export { type Due, deletionProof, dueInJob, type Erased, erasedFact } from './due.ts'
