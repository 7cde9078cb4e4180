import { createHash } from 'node:crypto'
import { buffer } from 'node:stream/consumers'
import { type Verifier, verifyFile } from '@shearline/jobfile'
import type { Kysely } from 'kysely'
import type { BlobPlace } from '../blobs/index.ts'
import { digestOf } from '../tables/digest.ts'
import type { Tables } from '../tables/tables.ts'
import { type Notes, restore } from './finding.ts'

/** Hashes every blob that is kept and compares its row with what was written. */
export async function checkBlobs(
  db: Kysely<Tables>,
  place: Pick<BlobPlace, 'open'>,
  notes: Notes,
): Promise<void> {
  for (const row of await db.selectFrom('blobs').selectAll().execute()) {
    const where = `blob ${row.sha256}`
    if (digestOf.blob(row) !== row.digest)
      notes.say('blob-row-changed', where, 'Its hash, size, media type or time was changed.', restore)
    const stream = await place.open(row.sha256)
    if (stream === null) {
      notes.say(
        'blob-missing',
        where,
        'Its bytes are not here.',
        'Restore them from a backup, or send the file again from the device that has it.',
      )
      continue
    }
    const hash = createHash('sha256')
    let bytes = 0
    for await (const chunk of stream) {
      hash.update(chunk)
      bytes += chunk.length
    }
    notes.looked.blobs++
    notes.looked.blobBytes += bytes
    const found = hash.digest('hex')
    if (found !== row.sha256)
      notes.say(
        'blob-changed',
        where,
        `Its ${bytes} bytes (${row.bytes} were kept) hash to ${found}: they were changed.`,
        'Keep the file aside, restore it from a backup, or send it again from the device that has it.',
      )
  }
}

/** Checks that what is remembered of deleted documents is as it was written. */
export async function checkErasedDocuments(db: Kysely<Tables>, notes: Notes): Promise<void> {
  for (const row of await db.selectFrom('erased_documents').selectAll().execute())
    if (digestOf.erasedDocument(row) !== row.digest)
      notes.say(
        'document-row-changed',
        `deleted document of job ${row.job}, seal ${row.seal}`,
        'Its job, seal, hash or time was changed.',
        restore,
      )
}

/** Proves every sealed document by itself and that its row belongs to its seal. */
export async function checkDocuments(
  db: Kysely<Tables>,
  place: Pick<BlobPlace, 'open'>,
  verifier: Verifier,
  notes: Notes,
): Promise<void> {
  for (const row of await db.selectFrom('documents').selectAll().execute()) {
    notes.looked.documents++
    const where = `document of job ${row.job}, seal ${row.seal}`
    const fact = await db
      .selectFrom('facts')
      .where('job', '=', row.job)
      .where('id', '=', row.seal)
      .select(['kind', 'at'])
      .executeTakeFirst()
    if (digestOf.document(row) !== row.digest)
      notes.say('document-row-changed', where, 'Its job, seal, blob or time was changed.', restore)
    else if (fact?.kind !== 'document-sealed')
      notes.say('document-row-changed', where, 'The fact of its seal is not here.', restore)
    const stream = await place.open(row.blob)
    // That the bytes are not here is said of the blob.
    if (stream === null) continue
    const check = await verifyFile(await buffer(stream), verifier)
    for (const { severity, where: at, what } of check.findings) {
      if (severity !== 'error') continue
      const byte = at.byteOffset === undefined ? '' : `, byte ${at.byteOffset}`
      notes.say('document-broken', `${where}: ${at.part ?? 'file'}${byte}`, what, restore)
    }
  }
}
