import { open } from 'node:fs/promises'
import { Readable } from 'node:stream'
import type { Kysely, Transaction } from 'kysely'
import type { Engine } from '../contract/engine.ts'
import type { BlobOptions, Outcome } from '../contract/index.ts'
import type { Tables } from '../tables/tables.ts'
import { ArrivingFolder } from './arriving.ts'
import type { BlobPlace } from './place.ts'

/** Bytes of one piece. */
const partBytes = 1 << 20

/**
 * Bytes kept in the database in pieces, for a firm whose servers share nothing but the database. An upload is
 * received in a folder of this server first, so that a slow line never holds a transaction open.
 */
export class BlobRows implements BlobPlace {
  readonly #engine: Engine
  readonly #arriving: ArrivingFolder

  constructor(engine: Engine, arriving: string) {
    this.#engine = engine
    this.#arriving = new ArrivingFolder(arriving)
  }

  async prepare(now: number): Promise<void> {
    await this.#arriving.prepare(now)
  }

  async has(sha256: string, bytes: number): Promise<boolean> {
    const row = await this.#engine.db
      .selectFrom('blob_parts')
      .where('sha256', '=', sha256)
      .select(({ fn }) => [
        fn.countAll().as('parts'),
        fn.sum(fn<number>('octet_length', ['bytes'])).as('bytes'),
      ])
      .executeTakeFirstOrThrow()
    return Number(row.parts) > 0 && Number(row.bytes ?? 0) === bytes
  }

  async put(
    sha256: string,
    source: AsyncIterable<Uint8Array>,
    options: BlobOptions = {},
  ): Promise<Outcome<number>> {
    return await this.#arriving.receive(sha256, source, options, (file) =>
      this.#engine.transact((transaction) => insertParts(transaction, sha256, file)),
    )
  }

  async remove(sha256: string): Promise<void> {
    await this.#engine.transact((transaction) =>
      transaction.deleteFrom('blob_parts').where('sha256', '=', sha256).execute(),
    )
  }

  open(sha256: string): Promise<Readable | null> {
    return openParts(this.#engine.db, sha256)
  }
}

/** Writes the bytes of a file as pieces; pieces that are here already stay. */
export async function insertParts(
  transaction: Transaction<Tables>,
  sha256: string,
  file: string,
): Promise<void> {
  const handle = await open(file, 'r')
  try {
    const buffer = Buffer.alloc(partBytes)
    for (let part = 0; ; part++) {
      const { bytesRead } = await handle.read(buffer, 0, partBytes, part * partBytes)
      // An empty blob has one empty piece, so that it can be told from one that is not here.
      if (bytesRead === 0 && part > 0) return
      await transaction
        .insertInto('blob_parts')
        .values({ sha256, part, bytes: buffer.subarray(0, bytesRead) })
        .onConflict((conflict) => conflict.columns(['sha256', 'part']).doNothing())
        .execute()
      if (bytesRead < partBytes) return
    }
  } finally {
    await handle.close()
  }
}

/** Opens the pieces of a blob as one stream, a piece at a time; null when there are none. */
export async function openParts(db: Kysely<Tables>, sha256: string): Promise<Readable | null> {
  const first = await readPart(db, sha256, 0)
  if (first === undefined) return null
  const pieces = async function* () {
    let piece: Uint8Array | undefined = first
    for (let part = 1; piece !== undefined; part++) {
      if (piece.byteLength > 0) yield piece
      piece = piece.byteLength < partBytes ? undefined : await readPart(db, sha256, part)
    }
  }
  return Readable.from(pieces(), { objectMode: false })
}

async function readPart(db: Kysely<Tables>, sha256: string, part: number): Promise<Uint8Array | undefined> {
  const row = await db
    .selectFrom('blob_parts')
    .where('sha256', '=', sha256)
    .where('part', '=', part)
    .select('bytes')
    .executeTakeFirst()
  return row?.bytes
}
