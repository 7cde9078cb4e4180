/** @module Writes facts: first here, signed and chained, in one strict transaction; sending comes after. */
import {
  type BodyInput,
  type Fact,
  type FactDraft,
  foldJob,
  type Kind,
  summarise,
  writeFact,
} from '@shearline/jobfile'
import { ownDevice, signer } from '../device/self.ts'
import { announce } from './changes.ts'
import { database, type KeptBlob, strict } from './database.ts'
import { keepSummary } from './read.ts'

/** A fact as a form hands it over: its kind and a body that fits. */
export type Draft = { [K in Kind]: { readonly kind: K; readonly body: BodyInput<K> } }[Kind]

/**
 * Signs drafts, gives them their place in this device's chain and keeps them, with any blobs they name, in
 * one strict transaction: when this returns they are on the disk. Throws FactRefused when a body does not
 * fit; nothing is kept then. Pages of the same browser take turns, so the chain never forks.
 */
export function keepFacts(
  job: string,
  drafts: readonly Draft[],
  blobs: readonly KeptBlob[] = [],
): Promise<readonly Fact[]> {
  return navigator.locks.request('shearline-chain', async () => {
    const self = await ownDevice()
    const sign = signer(self)
    let head = self.head
    let lastAt = self.lastAt
    const facts: Fact[] = []
    for (const { kind, body } of drafts) {
      const now = new Date().toISOString()
      lastAt = notBefore(lastAt, now)
      const draft: FactDraft = {
        id: crypto.randomUUID(),
        job,
        at: lastAt,
        by: self.by,
        kind,
        body: body as FactDraft['body'],
      }
      const written = await writeFact(draft, self.device, head, sign)
      facts.push(written.fact)
      head = written.head
    }
    const db = await database()
    const tx = db.transaction(['self', 'facts', 'outbox', 'blobs'], 'readwrite', strict)
    const kept: Promise<unknown>[] = facts.flatMap((fact) => [
      tx.objectStore('facts').add(fact),
      tx.objectStore('outbox').put({ device: fact.device, seq: fact.seq }),
    ])
    for (const blob of blobs) kept.push(tx.objectStore('blobs').put(blob))
    kept.push(tx.objectStore('self').put({ ...self, head, lastAt }))
    await Promise.all([...kept, tx.done])
    announce({ what: 'job', job })
    announce({ what: 'outbox' })
    // The board's line follows from the facts: the page that recorded them does not wait for it.
    void keepOwnSummary(job).then(() => announce({ what: 'jobs' }))
    return facts
  })
}

/** A clock set back by less than this is taken as jitter; by more, as a clock put right. Milliseconds. */
const jitter = 5 * 60_000

/** The instant of the next fact: never before the device's last one, unless its clock was put right since. */
function notBefore(lastAt: string | null, now: string): string {
  if (lastAt === null || lastAt <= now) return now
  return Date.parse(lastAt) - Date.parse(now) < jitter ? lastAt : now
}

/** Keeps the board's line of a job as this device folds it, so that the board needs no engine. */
async function keepOwnSummary(job: string): Promise<void> {
  const db = await database()
  const summary = summarise(foldJob(job, await db.getAllFromIndex('facts', 'job', job)))
  if (summary !== null) await keepSummary(summary)
}
