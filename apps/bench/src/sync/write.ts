/** @module Writes facts: first here, signed and chained, in one strict transaction; sending comes after. */
import {
  type BodyInput,
  type Fact,
  type FactDraft,
  type Kind,
  summarise,
  writeFact,
} from '@shearline/jobfile'
import { ownDevice, signer } from '../device/self.ts'
import { announce } from './changes.ts'
import { database, type KeptBlob, type KeptDocument, type Self, settled, strict } from './database.ts'
import { foldOnce } from './fold-once.ts'
import { keepSummary } from './read.ts'

/** A fact as a form hands it over: its kind, a body that fits, and its identifier when another draft names it. */
export type Draft = {
  [K in Kind]: { readonly kind: K; readonly body: BodyInput<K>; readonly id?: string }
}[Kind]

/** What goes to the disk together with the facts just written. */
export interface Beside {
  readonly blobs?: readonly KeptBlob[]
  readonly documents?: readonly KeptDocument[]
}

/** Writes the next facts of this device's chain. They are kept only when everything composed with them is. */
export interface Pen {
  readonly self: Self
  /** Gives a draft its place and signature; `after` is an instant it must come later than. */
  write(draft: Draft, after?: string): Promise<Fact>
}

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
  return keepComposed(job, async (pen) => {
    for (const draft of drafts) await pen.write(draft)
    return { blobs }
  })
}

/**
 * Keeps what `compose` writes and brings, all or nothing. Nobody else writes on this device meanwhile, so what is
 * composed can speak of the job exactly as it stands here.
 */
export function keepComposed(job: string, compose: (pen: Pen) => Promise<Beside>): Promise<readonly Fact[]> {
  return navigator.locks.request('shearline-chain', async () => {
    const self = await ownDevice()
    const sign = signer(self)
    let head = self.head
    let lastAt = self.lastAt
    const facts: Fact[] = []
    const { blobs = [], documents = [] } = await compose({
      self,
      write: async ({ kind, body, id = crypto.randomUUID() }, after) => {
        lastAt = nextInstant(lastAt, after)
        const draft: FactDraft = {
          id,
          job,
          at: lastAt,
          by: self.by,
          kind,
          body: body as FactDraft['body'],
        }
        const written = await writeFact(draft, self.device, head, sign)
        head = written.head
        facts.push(written.fact)
        return written.fact
      },
    })
    const db = await database()
    const tx = db.transaction(['self', 'facts', 'outbox', 'blobs', 'documents'], 'readwrite', strict)
    await settled(tx, [
      ...facts.flatMap((fact) => [
        tx.objectStore('facts').add(fact),
        tx.objectStore('outbox').put({ device: fact.device, seq: fact.seq }),
      ]),
      ...blobs.map((blob) => tx.objectStore('blobs').put(blob)),
      ...documents.map((document) => tx.objectStore('documents').put(document)),
      tx.objectStore('self').put({ ...self, head, lastAt }),
    ])
    announce({ what: 'job', job })
    announce({ what: 'outbox' })
    // The board's line follows from the facts: the page that recorded them does not wait for it. A full disk
    // must not undo what was just shown as saved.
    void keepOwnSummary(job).then(
      () => announce({ what: 'jobs' }),
      () => undefined,
    )
    return facts
  })
}

/** A clock set back by less than this is taken as jitter; by more, as a clock put right. Milliseconds. */
const jitter = 5 * 60_000

/**
 * The instant of the next fact: never before the device's last one, unless its clock was put right since, and
 * later than `after`.
 */
function nextInstant(lastAt: string | null, after: string | undefined): string {
  const now = new Date().toISOString()
  const back = lastAt !== null && lastAt > now && Date.parse(lastAt) - Date.parse(now) < jitter
  const next = back ? lastAt : now
  if (after === undefined || next > after) return next
  return new Date(Date.parse(after) + 1).toISOString()
}

/** Keeps the board's line of a job as this device folds it, so that the board needs no engine. */
async function keepOwnSummary(job: string): Promise<void> {
  const db = await database()
  const summary = summarise(foldOnce(job, await db.getAllFromIndex('facts', 'job', job)))
  if (summary !== null) await keepSummary(summary)
}
