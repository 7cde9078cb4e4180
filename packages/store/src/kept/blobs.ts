import type { Readable } from 'node:stream'
import type { BlobPlace } from '../blobs/index.ts'
import type { Engine } from '../contract/engine.ts'
import { type BlobEntry, type BlobOptions, type Outcome, StoreError } from '../contract/index.ts'
import { digestOf } from '../tables/digest.ts'

/** Blobs as the store keeps them: the bytes in their place, what is known of them in the database. */
export class KeptBlobs {
  readonly #engine: Engine
  readonly #place: BlobPlace

  constructor(engine: Engine, place: BlobPlace) {
    this.#engine = engine
    this.#place = place
  }

  /** Keeps bytes; see Store.putBlob. The row comes last: without it the bytes are not here. */
  async put(
    sha256: string,
    mediaType: string,
    bytes: AsyncIterable<Uint8Array>,
    now: string,
    options?: BlobOptions,
  ): Promise<Outcome<BlobEntry>> {
    const put = await this.#place.put(sha256, bytes, options)
    if (!put.ok) return put
    const row = { sha256, bytes: put.value, media_type: mediaType, kept_at: now }
    await this.#engine.transact((transaction) =>
      transaction
        .insertInto('blobs')
        .values({ ...row, digest: digestOf.blob(row) })
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
    return entry !== null && (await this.#place.has(sha256, entry.bytes)) ? entry : null
  }

  async open(sha256: string): Promise<{ readonly entry: BlobEntry; readonly stream: Readable } | null> {
    const entry = await this.#row(sha256)
    if (entry === null) return null
    const stream = await this.#place.open(sha256)
    if (stream === null) throw missing(sha256)
    return { entry, stream }
  }

  async #row(sha256: string): Promise<BlobEntry | null> {
    const row = await this.#engine.db
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
    `The bytes of blob ${sha256} are gone from where they were kept.`,
    'Restore them from a backup, or send the file again from the device that has it.',
  )
}
