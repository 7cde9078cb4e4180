import { type Fact, type JobRecord, makeRecord, registerJob } from '@shearline/jobfile'
import { keptFacts } from '../sync/read.ts'

/** The record of a job as this device holds it now. */
export async function recordHere(job: string): Promise<JobRecord> {
  const { facts, devices } = await keptFacts(job)
  return makeRecord(job, facts, devices, await registerFor(facts, null))
}

/**
 * The firm's register of devices as far as it is here: with it a record says itself which devices the firm trusts, and
 * which no more. Empty when a writer of these facts, or `self`, does not stand in it yet: this copy is then older than
 * what it should speak of, and would call a good device a stranger.
 */
export async function registerFor(facts: readonly Fact[], self: string | null): Promise<readonly Fact[]> {
  const register = (await keptFacts(registerJob)).facts
  // Enrolled, or come in the place of another whose key was changed.
  const named = new Set<unknown>(register.flatMap(({ body }) => [body.device, body.newDevice]))
  const writers = new Set(facts.map(({ device }) => device))
  if (self !== null) writers.add(self)
  return [...writers].every((device) => named.has(device)) ? register : []
}
