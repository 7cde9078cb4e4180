import { foldRegister, registerJob, type Verifier, verifyFacts } from '@shearline/jobfile'
import type { Kysely } from 'kysely'
import { factsOfJob, receivedOfJob } from '../kept/rows.ts'
import type { Tables } from '../tables/tables.ts'
import type { KnownDevices } from './devices.ts'
import type { Notes } from './finding.ts'

/**
 * Holds facts of devices that were revoked or replaced against the firm's register. What is not trusted is here as
 * it was kept, so it is a warning: a backup that holds it is whole, and a record sealed over it says so itself.
 */
export async function checkTrust(
  db: Kysely<Tables>,
  devices: KnownDevices,
  verifier: Verifier,
  notes: Notes,
): Promise<void> {
  const register = await factsOfJob(db, registerJob)
  if (register.length === 0) return
  const { devices: standings, troubles } = await foldRegister(register, verifier)
  for (const { fact, what } of troubles)
    notes.say(
      'not-trusted',
      `register, fact ${fact.seq} of ${fact.device} (${fact.kind})`,
      what,
      'It does not count. Look with "shearline device list" which devices stand.',
      'warning',
    )
  const over = [...standings.values()].filter(
    ({ revoked, replaced }) => revoked !== null || replaced !== null,
  )
  if (over.length === 0) return
  const jobs = await db
    .selectFrom('facts')
    .where(
      'device',
      'in',
      over.map(({ device }) => device),
    )
    .where('job', '!=', registerJob)
    .select('job')
    .distinct()
    .orderBy('job')
    .execute()
  const known = [...devices.values()].map(({ device }) => device)
  for (const { job } of jobs) {
    const facts = await factsOfJob(db, job)
    const received = await receivedOfJob(db, job)
    const check = await verifyFacts(facts, known, verifier, { register, received })
    for (const { code, where, what, doNext } of check.findings)
      if (code === 'device-revoked' || code === 'not-witnessed')
        notes.say('not-trusted', `job ${job}, ${where.part ?? 'facts'}`, what, doNext, 'warning')
  }
}
