/** @module Deleting what is due: first the content, then the fact that proves it. */
import { randomUUID } from 'node:crypto'
import {
  type Due,
  deletionProof,
  type Fact,
  type RetentionPack,
  readBody,
  retentionClocks,
} from '@shearline/jobfile'
import type { Store } from '@shearline/store'

export interface DeletedNow {
  readonly class: Due['class']
  readonly items: number
  /** Blobs left in place because something that is not due names them too. */
  readonly shared: readonly string[]
  /** Identifier of the `deletion-proven` fact; null when nothing of the class could go. */
  readonly proof: string | null
}

/**
 * Deletes what is due in one class of a job and records the proof. The proof comes last: stopped in between, the next
 * run finds the same class due, erases what is left and proves it; a proof is never ahead of the deed.
 */
export async function deleteDue(
  store: Store,
  due: Due,
  by: string,
  why: string,
  pack: RetentionPack,
  now: number,
): Promise<DeletedNow> {
  const facts = await store.factsOfJob(due.job)
  const proven = documentsProven(facts)
  const wanted = due.items.flatMap((item) => (item.blob === null ? [] : [item.blob]))
  const shared = await keptElsewhere(store, due, wanted, pack, now)
  const gone = await store.erase(due.job, {
    facts: due.items.filter((item) => item.as === 'body').map((item) => item.fact),
    blobs: wanted.filter((blob) => !shared.includes(blob)),
    // Another class deleted in the same run may have taken, and proven, them already.
    documents: due.documents.filter((seal) => !proven.has(seal)),
  })
  const blobs = gone.blobs.flatMap(({ sha256, keyDestroyed }) =>
    due.items
      .filter((item) => item.blob === sha256)
      .map((item) => ({ fact: item.fact, sha256, keyDestroyed })),
  )
  const bodies = facts.filter((fact) => gone.facts.includes(fact.id))
  const items = bodies.length + blobs.length + gone.documents.length
  if (items === 0) return { class: due.class, items, shared, proof: null }
  const set = retentionClocks(due.job, facts, now, pack).pack
  const body = deletionProof(due, { bodies, blobs, documents: gone.documents }, why, set)
  const [proof] = await store.writeOwn([
    {
      id: randomUUID(),
      job: due.job,
      at: instantAfter(facts, now),
      by,
      kind: 'deletion-proven',
      body: { ...body },
    },
  ])
  return { class: due.class, items, shared, proof: proof?.id ?? null }
}

/** Seals whose documents a proof on record says to be deleted. */
function documentsProven(facts: readonly Fact[]): ReadonlySet<string> {
  return new Set(
    facts
      .map((fact) =>
        fact.kind === 'deletion-proven' ? readBody('deletion-proven', fact.body, fact.v) : null,
      )
      .flatMap((read) => (read?.ok === true ? read.body.items : []))
      .filter((item) => item.what === 'document')
      .map((item) => item.fact),
  )
}

/** Blobs that a fact of another job, or of a class of this job that is not over, names as well. */
async function keptElsewhere(
  store: Store,
  due: Due,
  blobs: readonly string[],
  pack: RetentionPack,
  now: number,
): Promise<readonly string[]> {
  if (blobs.length === 0) return []
  const found = new Set<string>()
  for (const { job } of await store.jobs())
    for (const clock of retentionClocks(job, await store.factsOfJob(job), now, pack).clocks) {
      if (job === due.job && clock.class === due.class) continue
      for (const { blob } of clock.kept) if (blob !== null && blobs.includes(blob)) found.add(blob)
    }
  return [...found]
}

/** Now, but not before the last fact of the job: a tablet's clock may run ahead of this one. */
export function instantAfter(facts: readonly Fact[], now: number): string {
  const last = facts.at(-1)?.at ?? ''
  const present = new Date(now).toISOString()
  return [last, present].sort().at(-1) ?? present
}
