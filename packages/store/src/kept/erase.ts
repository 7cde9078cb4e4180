import { bodyHash, canonicalJson, erasedFact, type Fact } from '@shearline/jobfile'
import type { Transaction } from 'kysely'
import type { BlobPlace } from '../blobs/index.ts'
import type { Engine } from '../contract/engine.ts'
import type { Erased, ToErase } from '../contract/index.ts'
import { digestOf } from '../tables/digest.ts'
import type { Tables } from '../tables/tables.ts'
import { chunks } from './rows.ts'

/**
 * Deletes content of a job; see Store.erase. Rows first, so that nobody reads what is going, then the bytes, then
 * what the database's files still hold. Broken off anywhere, the same call again finishes it.
 */
export async function erase(
  engine: Engine,
  place: Pick<BlobPlace, 'remove'>,
  job: string,
  what: ToErase,
  now: string,
): Promise<Erased> {
  const gone = await engine.transact(async (transaction) => {
    await engine.holdJobs(transaction, [{ job, how: 'alone' }])
    const facts = await eraseBodies(transaction, job, what.facts)
    const documents = await eraseDocuments(transaction, job, what.documents, now)
    const wanted = [...new Set([...what.blobs, ...documents.map(({ sha256 }) => sha256)])]
    return { facts, documents, blobs: await eraseBlobRows(transaction, wanted) }
  })
  for (const sha256 of gone.blobs) await place.remove(sha256)
  await engine.forget()
  return {
    facts: gone.facts,
    // Sealed files are encrypted to the firm's recipients; none has a key of its own that this store could destroy.
    blobs: what.blobs
      .filter((sha256) => gone.blobs.includes(sha256))
      .map((sha256) => ({ sha256, keyDestroyed: false })),
    documents: gone.documents,
  }
}

/** Replaces bodies by their hashes. The hash of each fact, and so its signature and its link, stay as they are. */
async function eraseBodies(
  transaction: Transaction<Tables>,
  job: string,
  ids: readonly string[],
): Promise<readonly string[]> {
  const erased: string[] = []
  for (const some of chunks([...new Set(ids)])) {
    const rows = await transaction
      .selectFrom('facts')
      .where('job', '=', job)
      .where('id', 'in', some)
      .select(['device', 'seq', 'fact'])
      .execute()
    for (const { device, seq, fact: text } of rows) {
      const fact = JSON.parse(text) as Fact
      erased.push(fact.id)
      if (fact.body.erased === bodyHash(fact.body)) continue
      await transaction
        .updateTable('facts')
        .set({ fact: canonicalJson(erasedFact(fact)) })
        .where('device', '=', device)
        .where('seq', '=', seq)
        .execute()
    }
  }
  return erased
}

/** Takes documents out by their seals and remembers which bytes they were. */
async function eraseDocuments(
  transaction: Transaction<Tables>,
  job: string,
  seals: readonly string[],
  now: string,
): Promise<readonly { readonly seal: string; readonly sha256: string }[]> {
  const erased: { seal: string; sha256: string }[] = []
  for (const some of chunks([...new Set(seals)])) {
    const here = await transaction
      .selectFrom('documents')
      .where('job', '=', job)
      .where('seal', 'in', some)
      .select(['seal', 'blob'])
      .execute()
    for (const { seal, blob } of here) {
      const row = { seal, job, sha256: blob, erased_at: now }
      const digest = digestOf.erasedDocument(row)
      await transaction
        .insertInto('erased_documents')
        .values({ ...row, digest })
        .onConflict((conflict) => conflict.column('seal').doUpdateSet({ ...row, digest }))
        .execute()
      await transaction.deleteFrom('documents').where('seal', '=', seal).execute()
    }
    erased.push(
      ...(await transaction
        .selectFrom('erased_documents')
        .where('job', '=', job)
        .where('seal', 'in', some)
        .select(['seal', 'sha256'])
        .execute()),
    )
  }
  return erased
}

/** Takes out the rows of blobs that no document names any more; answers with all of these that are not here now. */
async function eraseBlobRows(
  transaction: Transaction<Tables>,
  wanted: readonly string[],
): Promise<readonly string[]> {
  const gone: string[] = []
  for (const some of chunks(wanted)) {
    const named = await transaction.selectFrom('documents').where('blob', 'in', some).select('blob').execute()
    const free = some.filter((sha256) => !named.some(({ blob }) => blob === sha256))
    if (free.length === 0) continue
    await transaction.deleteFrom('blobs').where('sha256', 'in', free).execute()
    gone.push(...free)
  }
  return gone
}
