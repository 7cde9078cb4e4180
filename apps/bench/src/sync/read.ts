/** @module Facts of a job: the union of what this device keeps and what the server knows, by (device, seq). */
import type { Device, Fact, JobSummary } from '@shearline/jobfile'
import { database } from './database.ts'
import { remote } from './remote.ts'

/** What this device knows of a job. */
export interface JobFacts {
  readonly facts: readonly Fact[]
  /** Identifiers of facts not yet acknowledged by the server. */
  readonly unsent: ReadonlySet<string>
  readonly devices: readonly Device[]
}

/** Reads a job from this device alone. */
export async function keptFacts(job: string): Promise<JobFacts> {
  const db = await database()
  const tx = db.transaction(['facts', 'outbox', 'devices', 'self'])
  const [facts, outbox, devices, self] = await Promise.all([
    tx.objectStore('facts').index('job').getAll(job),
    tx.objectStore('outbox').getAllKeys(),
    tx.objectStore('devices').getAll(),
    tx.objectStore('self').get('self'),
  ])
  const waiting = new Set(outbox.map((key) => key.join(':')))
  const unsent = facts.filter((fact) => waiting.has(`${fact.device}:${fact.seq}`)).map((fact) => fact.id)
  const own: Device[] =
    self === undefined ? [] : [{ device: self.device, name: self.name, publicKey: self.publicKey }]
  return {
    facts,
    unsent: new Set(unsent),
    devices: [...own, ...devices.filter((device) => device.device !== self?.device)],
  }
}

/**
 * Fetches the server's facts of a job and keeps those this device lacks; true when there were any.
 * What is already here is never overwritten: a server that says otherwise cannot change this device's copy.
 */
export async function fetchFacts(job: string): Promise<boolean> {
  const answer = await remote.facts(job)
  const db = await database()
  const tx = db.transaction(['facts', 'devices'], 'readwrite')
  let fresh = false
  for (const fact of answer.facts) {
    if ((await tx.objectStore('facts').getKey([fact.device, fact.seq])) !== undefined) continue
    await tx.objectStore('facts').put(fact)
    fresh = true
  }
  for (const device of answer.devices) {
    if ((await tx.objectStore('devices').getKey(device.device)) === undefined) {
      await tx.objectStore('devices').put(device)
    }
  }
  await tx.done
  return fresh
}

/** The board from this device alone: what it folded itself or saw last time. */
export async function keptSummaries(): Promise<readonly JobSummary[]> {
  return (await database()).getAll('summaries')
}

/**
 * Fetches the board. A job with facts this server does not have yet keeps the summary folded here, which
 * knows more.
 */
export async function fetchSummaries(): Promise<void> {
  const { jobs } = await remote.jobs()
  const db = await database()
  const tx = db.transaction(['summaries', 'outbox', 'facts'], 'readwrite')
  const ahead = new Set<string>()
  for (const key of await tx.objectStore('outbox').getAllKeys()) {
    const fact = await tx.objectStore('facts').get(key)
    if (fact !== undefined) ahead.add(fact.job)
  }
  for (const summary of jobs) if (!ahead.has(summary.job)) await tx.objectStore('summaries').put(summary)
  await tx.done
}

/** Keeps the summary of a job folded on this device, for the board. */
export async function keepSummary(summary: JobSummary): Promise<void> {
  await (await database()).put('summaries', summary)
}
