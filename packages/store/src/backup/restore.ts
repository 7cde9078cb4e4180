import { mkdir, mkdtemp, rename, rm, rmdir } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { sql } from 'kysely'
import { syncFolder } from '../blobs/durable.ts'
import { BlobFiles, insertParts } from '../blobs/index.ts'
import type { Engine } from '../contract/engine.ts'
import { StoreError } from '../contract/index.ts'
import { type DoctorFinding, type Examination, examine } from '../doctor/index.ts'
import { connect, placeOf } from '../postgres/connection.ts'
import { openPostgres } from '../postgres/index.ts'
import { explainPostgres } from '../postgres/trouble.ts'
import { openSqlite } from '../sqlite/index.ts'
import { explainTrouble } from '../sqlite/trouble.ts'
import { copyDurably, makeEmptyFolder } from './backup.ts'
import { copyTables } from './export.ts'
import { checkManifest, filesBelow } from './manifest.ts'

/** Where a backup goes: a new data directory, or an empty PostgreSQL database. */
export type RestoreTarget = { readonly data: string } | { readonly database: string }

export interface RestoreOptions {
  /**
   * Puts this computer's key back too. Only when the directory it came from is gone and wrote nothing after the
   * backup: two that write with one key, or one that goes back in time, give two facts one number.
   */
  readonly sameDevice?: boolean
  /** Restores although something in the backup is not as it was. Files that were changed stay refused. */
  readonly asItIs?: boolean
}

/** What came of it. When `restored` is false nothing was written, and the findings say why. */
export interface Restored {
  readonly restored: boolean
  readonly findings: readonly DoctorFinding[]
  /** Of what was restored; null when nothing was. */
  readonly examination: Examination | null
}

/** Checks a backup and restores it into an empty place, then examines that. Throws StoreError. */
export async function restore(
  folder: string,
  target: RestoreTarget,
  options: RestoreOptions = {},
): Promise<Restored> {
  try {
    const changed = await checkManifest(folder)
    if (changed.length > 0) return { restored: false, findings: changed, examination: null }
    const before = await examine({ data: folder })
    if (!before.sound && options.asItIs !== true)
      return { restored: false, findings: before.findings, examination: null }
    if ('data' in target) {
      await restoreFolder(folder, target.data, options.sameDevice === true)
      return await restored({ data: target.data })
    }
    await restorePostgres(folder, target.database)
    return await restored({ data: folder, database: target.database })
  } catch (error) {
    throw explainTrouble(error, 'data' in target ? target.data : folder) ?? error
  }
}

async function restored(place: { data: string; database?: string }): Promise<Restored> {
  const examination = await examine(place)
  return { restored: true, findings: examination.findings, examination }
}

async function restoreFolder(folder: string, data: string, sameDevice: boolean): Promise<void> {
  await makeEmptyFolder(data)
  // The data directory appears when it is whole, or not at all.
  const making = await mkdtemp(`${data}.restoring-`)
  try {
    for (const name of await filesBelow(folder)) {
      if (!sameDevice && /^device\.(key|pub)$/.test(name)) continue
      const to = join(making, ...name.split('/'))
      await mkdir(dirname(to), { recursive: true, mode: 0o700 })
      await copyDurably(join(folder, ...name.split('/')), to)
    }
    await rmdir(data)
    await rename(making, data)
    await syncFolder(dirname(data))
  } finally {
    await rm(making, { recursive: true, force: true })
  }
}

async function restorePostgres(folder: string, url: string): Promise<void> {
  const scratch = await mkdtemp(join(tmpdir(), 'shearline-restore-'))
  try {
    await refuseUsed(url)
    // A copy of the copy is brought up to date, so that a backup of an older version fits too.
    await copyDurably(join(folder, 'shearline.sqlite'), join(scratch, 'shearline.sqlite'))
    const clock = Date.now
    const from = await openSqlite({
      file: join(scratch, 'shearline.sqlite'),
      backups: join(scratch, 'backups'),
      lockWaitMilliseconds: 1000,
      clock,
    })
    try {
      const to = await openPostgres({ url, backups: scratch, lockWaitMilliseconds: 10_000, clock })
      try {
        await pour(from, to, new BlobFiles(join(folder, 'blobs')))
      } finally {
        await to.close()
      }
    } finally {
      await from.close()
    }
  } finally {
    await rm(scratch, { recursive: true, force: true })
  }
}

/** Rows and bytes of blobs, all in one transaction: a restore that breaks off leaves empty tables. */
async function pour(from: Engine, to: Engine, blobs: BlobFiles): Promise<void> {
  await to.transact(async (transaction) => {
    await copyTables(from.db, transaction)
    for (const { sha256, bytes } of await from.db.selectFrom('blobs').select(['sha256', 'bytes']).execute())
      if (await blobs.has(sha256, bytes)) await insertParts(transaction, sha256, blobs.pathOf(sha256))
    await sql`select setval(pg_get_serial_sequence('facts', 'arrival'),
      greatest((select max(arrival) from facts), 1))`.execute(transaction)
  })
}

async function refuseUsed(url: string): Promise<void> {
  const db = connect(url, 10_000)
  try {
    const tables = await db.introspection.getTables()
    const first = tables[0]?.name
    if (first === undefined) return
    throw new StoreError(
      'not-empty',
      `The database ${placeOf(url)} is not empty (it holds a table "${first}").`,
      'Make a new database with "createdb" and restore into that.',
    )
  } catch (error) {
    throw explainPostgres(error, placeOf(url)) ?? error
  } finally {
    await db.destroy()
  }
}
