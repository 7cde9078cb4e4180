/** @module Facts of a job: the union of what this device keeps and what the server knows, by (device, seq). */
import type { Device, Fact, JobSummary } from '@shearline/jobfile'
import { database, type KeptDocument } from './database.ts'
import { remote } from './remote.ts'
import { hearFacts } from './skew.ts'

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
  // One question for the whole job: asking for each fact keeps the page busy when hundreds of jobs arrive.
  const here = new Set(
    (await tx.objectStore('facts').index('job').getAllKeys(job)).map((key) => key.join(':')),
  )
  let fresh = false
  for (const fact of answer.facts) {
    if (here.has(`${fact.device}:${fact.seq}`)) continue
    // A number of a device that stands here under another job is kept as it is, too.
    if ((await tx.objectStore('facts').getKey([fact.device, fact.seq])) !== undefined) continue
    void tx.objectStore('facts').put(fact)
    fresh = true
  }
  for (const device of answer.devices) {
    if ((await tx.objectStore('devices').getKey(device.device)) === undefined) {
      await tx.objectStore('devices').put(device)
    }
  }
  await tx.done
  hearFacts(answer.facts, answer.devices, (await db.get('self', 'self'))?.device ?? null)
  if (fresh && answer.facts.some((fact) => fact.kind === 'deletion-proven')) {
    // Proving a signature needs more of the engine than the board carries.
    const { followDeletions } = await import('./erase.ts')
    await followDeletions(await db.getAllFromIndex('facts', 'job', job))
  }
  return fresh
}

/**
 * Brings everything here that the server has and this device lacks, job by job, the latest first, so that every
 * job opens without a connection. Calls back with each job that grew. Only one page of the browser fetches at a time.
 */
export async function fetchAll(onGrown: (job: string) => void): Promise<void> {
  await navigator.locks.request('shearline-fetch', { ifAvailable: true }, async (lock) => {
    if (lock === null) return
    const db = await database()
    const { marks } = await remote.marks()
    const known = new Map((await db.getAll('marks')).map(({ job, mark }) => [job, mark]))
    for (const { job, mark } of marks) {
      if (known.get(job) === mark) continue
      if (await fetchFacts(job)) onGrown(job)
      await db.put('marks', { job, mark })
    }
  })
}

/** A document that was sealed on this device, with its bytes; null when this device has none of that seal. */
export async function keptDocument(
  seal: string,
): Promise<{ readonly document: KeptDocument; readonly blob: Blob } | null> {
  const db = await database()
  const document = await db.get('documents', seal)
  const kept = document === undefined ? undefined : await db.get('blobs', document.sha256)
  return document === undefined || kept === undefined ? null : { document, blob: kept.blob }
}

/** How many facts of each job are saved here and not sent. */
export async function unsentByJob(): Promise<ReadonlyMap<string, number>> {
  const db = await database()
  const tx = db.transaction(['outbox', 'facts'])
  const counts = new Map<string, number>()
  for (const key of await tx.objectStore('outbox').getAllKeys()) {
    const fact = await tx.objectStore('facts').get(key)
    if (fact !== undefined) counts.set(fact.job, (counts.get(fact.job) ?? 0) + 1)
  }
  return counts
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
