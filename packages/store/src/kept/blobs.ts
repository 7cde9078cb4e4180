import type { Readable } from 'node:stream'
import type { Kysely } from 'kysely'
import type { BlobFiles } from '../blobs/index.ts'
import { type BlobEntry, type BlobOptions, type Outcome, StoreError } from '../contract/index.ts'
import type { Tables } from '../tables/tables.ts'

/** Blobs as the store keeps them: the bytes in files, what is known of them in the database. */
export class KeptBlobs {
  readonly #db: Kysely<Tables>
  readonly #files: BlobFiles

  constructor(db: Kysely<Tables>, files: BlobFiles) {
    this.#db = db
    this.#files = files
  }

  /** Keeps bytes; see Store.putBlob. The row comes last: without it the bytes are not here. */
  async put(
    sha256: string,
    mediaType: string,
    bytes: AsyncIterable<Uint8Array>,
    now: string,
    options?: BlobOptions,
  ): Promise<Outcome<BlobEntry>> {
    const put = await this.#files.put(sha256, bytes, options)
    if (!put.ok) return put
    const row = { sha256, bytes: put.value, media_type: mediaType, kept_at: now }
    await this.#db.transaction().execute((transaction) =>
      transaction
        .insertInto('blobs')
        .values(row)
        .onConflict((conflict) => conflict.column('sha256').doNothing())
        .execute(),
    )
    const kept = await this.#row(sha256)
    if (kept === null) throw missing(sha256)
    return { ok: true, value: kept }
  }

  /** What is known of a blob whose file is here too, or null. */
  async entry(sha256: string): Promise<BlobEntry | null> {
    const entry = await this.#row(sha256)
    return entry !== null && (await this.#files.has(sha256, entry.bytes)) ? entry : null
  }

  async open(sha256: string): Promise<{ readonly entry: BlobEntry; readonly stream: Readable } | null> {
    const entry = await this.#row(sha256)
    if (entry === null) return null
    const stream = await this.#files.open(sha256)
    if (stream === null) throw missing(sha256)
    return { entry, stream }
  }

  async #row(sha256: string): Promise<BlobEntry | null> {
    const row = await this.#db
      .selectFrom('blobs')
      .where('sha256', '=', sha256)
      .select(['sha256', 'bytes', 'media_type as mediaType', 'kept_at as keptAt'])
      .executeTakeFirst()
    return row ?? null
  }
}

function missing(sha256: string): StoreError {
  return new StoreError(
    'blob-missing',
    `The file of blob ${sha256} is gone from the data folder.`,
    'Put the folder "blobs" back from a copy, or send the file again from the device that has it.',
  )
}
