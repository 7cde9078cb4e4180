/** @module The doctor: looks at every hash, signature, chain, seal and blob that is kept, and changes nothing. */
import { webcrypto } from 'node:crypto'
import { stat } from 'node:fs/promises'
import { join } from 'node:path'
import { Verifier } from '@shearline/jobfile'
import { type Kysely, sql } from 'kysely'
import { BlobFiles, type BlobPlace, openParts } from '../blobs/index.ts'
import { StoreError } from '../contract/index.ts'
import { connect, placeOf, postgresTables } from '../postgres/connection.ts'
import { explainPostgres } from '../postgres/trouble.ts'
import { sqliteTables } from '../sqlite/dialect.ts'
import { readSqlite } from '../sqlite/read.ts'
import { migrations } from '../tables/migrations.ts'
import type { Tables } from '../tables/tables.ts'
import { checkBlobs, checkDocuments, checkErasedDocuments } from './blobs.ts'
import { checkPostgres, checkSchema, checkSqliteFile } from './database.ts'
import { checkDevices, checkSettings, type KnownDevices } from './devices.ts'
import { checkFacts } from './facts.ts'
import { type Examination, Notes } from './finding.ts'
import { checkKey, checkRoom, checkStrangeFiles } from './folder.ts'
import { checkTrust } from './trust.ts'

export type { DoctorCode, DoctorFinding, Examination, Looked } from './finding.ts'

/** What to examine: a data directory, and the PostgreSQL database its record lives in, if it does. */
export interface ExaminedPlace {
  readonly data: string
  readonly database?: string
}

/**
 * Examines what is kept, as of one instant, also while servers use it. Nothing is changed, migrated or made.
 * Throws StoreError when there is nothing to examine or it cannot be reached.
 */
export async function examine(place: ExaminedPlace): Promise<Examination> {
  return place.database === undefined
    ? await examineFolder(place.data)
    : await examinePostgres(place.data, place.database)
}

async function examineFolder(data: string): Promise<Examination> {
  const file = join(data, 'shearline.sqlite')
  if ((await stat(file).catch(() => null)) === null) {
    throw new StoreError(
      'no-record',
      `There is no record in ${data}.`,
      'Name the data folder with --data, or the database with --database.',
    )
  }
  const notes = new Notes()
  const db = readSqlite(file)
  try {
    await notes.check('shearline.sqlite', async () => {
      await checkSqliteFile(db, notes)
      if (!(await checkSchema(db, migrations(sqliteTables), notes))) return
      const devices = await checkRecord(db, new BlobFiles(join(data, 'blobs')), notes)
      await notes.check('device.key', () => checkKey(data, devices, notes))
      await notes.check('blobs', () => checkStrangeFiles(data, db, notes))
    })
  } finally {
    await db.destroy()
  }
  await checkRoom(data, notes)
  return notes.examination()
}

async function examinePostgres(data: string, url: string): Promise<Examination> {
  const notes = new Notes()
  const db = connect(url, 10_000)
  try {
    await db
      .transaction()
      .setIsolationLevel('repeatable read')
      .setAccessMode('read only')
      .execute(async (snapshot) => {
        // A statement that fails ends a transaction, so every check is undone by itself.
        notes.protectBy(async (work) => {
          await sql`savepoint one_check`.execute(snapshot)
          await work().catch(async (error: unknown) => {
            await sql`rollback to savepoint one_check`.execute(snapshot)
            throw error
          })
        })
        await checkPostgres(snapshot, notes)
        if (!(await checkSchema(snapshot, migrations(postgresTables), notes))) return
        const devices = await checkRecord(snapshot, { open: (sha256) => openParts(snapshot, sha256) }, notes)
        await checkKey(data, devices, notes)
      })
    await checkRoom(data, notes).catch(() => {})
  } catch (error) {
    throw explainPostgres(error, placeOf(url)) ?? error
  } finally {
    await db.destroy()
  }
  return notes.examination()
}

/** Everything that is the same in every database. */
async function checkRecord(
  db: Kysely<Tables>,
  blobs: Pick<BlobPlace, 'open'>,
  notes: Notes,
): Promise<KnownDevices> {
  const verifier = new Verifier(webcrypto.subtle)
  let devices: KnownDevices = new Map()
  await notes.check('table devices', async () => {
    devices = await checkDevices(db, notes)
  })
  await notes.check('table settings', () => checkSettings(db, notes))
  await notes.check('table facts', () => checkFacts(db, devices, verifier, notes))
  await notes.check('register of devices', () => checkTrust(db, devices, verifier, notes))
  await notes.check('table blobs', () => checkBlobs(db, blobs, notes))
  await notes.check('table documents', () => checkDocuments(db, blobs, verifier, notes))
  await notes.check('table erased_documents', () => checkErasedDocuments(db, notes))
  return devices
}
