import { createWriteStream } from 'node:fs'
import { chmod, copyFile, mkdir, readdir, stat } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import type { Kysely, Transaction } from 'kysely'
import { syncFolder } from '../blobs/durable.ts'
import { BlobFiles, openParts } from '../blobs/index.ts'
import { StoreError } from '../contract/index.ts'
import { type Examination, examine } from '../doctor/index.ts'
import { connect, placeOf, postgresTables } from '../postgres/connection.ts'
import { explainPostgres } from '../postgres/trouble.ts'
import { copyDatabase, syncFile } from '../sqlite/copy.ts'
import { readSqlite } from '../sqlite/read.ts'
import { explainTrouble } from '../sqlite/trouble.ts'
import { schemaStanding } from '../tables/migrate.ts'
import { migrations } from '../tables/migrations.ts'
import type { Tables } from '../tables/tables.ts'
import { exportTables } from './export.ts'
import { filesBelow, writeManifest } from './manifest.ts'

/** What is backed up: a data directory, and the PostgreSQL database its record lives in, if it does. */
export interface BackupSource {
  readonly data: string
  readonly database?: string
}

/** A backup that was made. `examination` is of the backup itself, not of what it was made from. */
export interface BackupMade {
  readonly folder: string
  readonly files: number
  readonly bytes: number
  readonly examination: Examination
}

/**
 * Writes everything kept to a new folder while servers go on: `shearline.sqlite` (of one instant, whatever database
 * it comes from), `blobs/`, the keys, and a manifest that `sha256sum --check` reads. The folder is a data directory
 * by its form. Then examines it. Throws StoreError.
 */
export async function backUp(source: BackupSource, folder: string): Promise<BackupMade> {
  try {
    await makeEmptyFolder(folder)
    const file = join(folder, 'shearline.sqlite')
    if (source.database === undefined) {
      const from = join(source.data, 'shearline.sqlite')
      if ((await stat(from).catch(() => null)) === null) throw noRecord(source.data)
      await copyDatabase(from, file)
      // Rows come after their files, so every file a row of the copy lists is there by now.
      await copyBlobFiles(file, new BlobFiles(join(source.data, 'blobs')), join(folder, 'blobs'))
    } else await exportPostgres(source.database, file, join(folder, 'blobs'))
    await copyKeys(source.data, folder)
    await writeManifest(folder)
    await syncFolder(folder)
  } catch (error) {
    throw explainTrouble(error, folder) ?? error
  }
  const names = await filesBelow(folder)
  const sizes = await Promise.all(names.map(async (name) => (await stat(join(folder, name))).size))
  return {
    folder,
    files: names.length,
    bytes: sizes.reduce((sum, size) => sum + size, 0),
    examination: await examine({ data: folder }),
  }
}

/** Makes a folder, or takes an empty one; refuses one that holds anything. */
export async function makeEmptyFolder(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true, mode: 0o700 })
  const [first] = await readdir(folder)
  if (first === undefined) return
  throw new StoreError(
    'not-empty',
    `The folder ${folder} is not empty (it holds ${first}).`,
    'Name a folder that does not exist yet.',
  )
}

function noRecord(data: string): StoreError {
  return new StoreError(
    'no-record',
    `There is no record in ${data}.`,
    'Name the data folder with --data, or the database with --database.',
  )
}

async function copyBlobFiles(database: string, from: BlobFiles, folder: string): Promise<void> {
  const db = readSqlite(database)
  try {
    for (const sha256 of await blobsListed(db)) {
      const to = await placeFor(folder, sha256)
      // What is not there is said by the examination that follows.
      if ((await stat(from.pathOf(sha256)).catch(() => null)) === null) continue
      await copyDurably(from.pathOf(sha256), to)
    }
  } finally {
    await db.destroy()
  }
}

async function exportPostgres(url: string, file: string, blobs: string): Promise<void> {
  const db = connect(url, 10_000)
  try {
    const standing = await schemaStanding(db, migrations(postgresTables))
    if (standing.strange !== null || standing.pending.length > 0) {
      throw new StoreError(
        standing.strange === null ? 'no-record' : 'newer-database',
        standing.strange === null
          ? `The tables in ${placeOf(url)} are not up to date.`
          : `A newer version of Shearline brought ${placeOf(url)} to "${standing.strange}".`,
        'Start the server of the same version once, then make the backup with that version.',
      )
    }
    await exportTables(db, file, (snapshot) => exportBlobs(snapshot, blobs))
  } catch (error) {
    throw explainPostgres(error, placeOf(url)) ?? error
  } finally {
    await db.destroy()
  }
}

async function exportBlobs(snapshot: Transaction<Tables>, folder: string): Promise<void> {
  for (const sha256 of await blobsListed(snapshot)) {
    const to = await placeFor(folder, sha256)
    const stream = await openParts(snapshot, sha256)
    if (stream !== null)
      await pipeline(stream, createWriteStream(to, { flags: 'wx', mode: 0o600, flush: true }))
  }
}

async function blobsListed(db: Kysely<Tables>): Promise<readonly string[]> {
  const rows = await db.selectFrom('blobs').select('sha256').orderBy('sha256').execute()
  return rows.map(({ sha256 }) => sha256)
}

async function placeFor(folder: string, sha256: string): Promise<string> {
  const to = new BlobFiles(folder).pathOf(sha256)
  await mkdir(dirname(to), { recursive: true, mode: 0o700 })
  return to
}

/** Every key of the data directory, with what belongs beside it. */
async function copyKeys(data: string, folder: string): Promise<void> {
  for (const entry of await readdir(data, { withFileTypes: true }).catch(() => []))
    if (entry.isFile() && /^[\w-][\w.-]*\.(key|pub)$/.test(entry.name))
      await copyDurably(join(data, entry.name), join(folder, entry.name))
}

/** Copies a file so that its bytes are on the disk, closed to others. */
export async function copyDurably(from: string, to: string): Promise<void> {
  await copyFile(from, to)
  await chmod(to, 0o600)
  await syncFile(to)
}
