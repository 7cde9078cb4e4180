import type { RetentionPack } from '../policy/index.ts'
import { provenDeletions, standingHolds } from '../retention/clock.ts'
import { dueOf } from '../retention/due.ts'
import type { Collected } from './collect.ts'
import type { JobState } from './state.ts'

/** What was deleted, what stops a deletion, and, when the present instant is given, what is due. */
export function foldCustody(
  job: string,
  facts: Collected,
  now: number | null,
  pack: RetentionPack,
): JobState['custody'] {
  return {
    deletions: provenDeletions(facts),
    due: now === null ? [] : dueOf(job, facts, now, pack),
    holds: standingHolds(facts),
    erased: facts.erased.length,
  }
}
