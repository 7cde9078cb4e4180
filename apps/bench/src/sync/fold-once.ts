/** @module Folds a job once for all who want it on this page: the desk that shows it and the board's line it leaves. */
import { type Fact, foldJob, type JobState } from '@shearline/jobfile'
import { sameFacts } from './same-facts.ts'

interface Folded {
  readonly job: string
  readonly facts: readonly Fact[]
  readonly chainBroken: boolean
  readonly state: JobState
}

/** One is enough: whoever records has that job open, and nobody works on two jobs in one page. */
let last: Folded | null = null

/** The state of a job, the same object as before when these facts were the ones folded last. Treat it as read-only. */
export function foldOnce(job: string, facts: readonly Fact[], chainBroken = false): JobState {
  if (last?.job === job && last.chainBroken === chainBroken && sameFacts(last.facts, facts)) return last.state
  const state = foldJob(job, facts, { chainBroken })
  last = { job, facts, chainBroken, state }
  return state
}
