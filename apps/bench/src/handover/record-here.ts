import { type JobRecord, makeRecord } from '@shearline/jobfile'
import { keptFacts } from '../sync/read.ts'

/** The record of a job as this device holds it now. */
export async function recordHere(job: string): Promise<JobRecord> {
  const { facts, devices } = await keptFacts(job)
  return makeRecord(job, facts, devices)
}
