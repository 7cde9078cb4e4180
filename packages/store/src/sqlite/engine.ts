import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { Kysely } from 'kysely'
import type { Migration } from 'kysely/migration'
import type { Engine } from '../contract/engine.ts'
import { StoreError } from '../contract/index.ts'
import { selectHeads } from '../kept/rows.ts'
import { migrate } from '../tables/migrate.ts'
import { migrations } from '../tables/migrations.ts'
import type { Tables } from '../tables/tables.ts'
import { Arrivals } from './arrivals.ts'
import { copyDatabase } from './copy.ts'
import { SharedSqliteDialect, sqliteTables } from './dialect.ts'
import { explainTrouble } from './trouble.ts'

export interface SqliteOptions {
  /** The database file; its folder must exist. */
  readonly file: string
  /** Folder for the copy made before a migration. */
  readonly backups: string
  /** How long a write waits for another process before it fails with `locked`, milliseconds. */
  readonly lockWaitMilliseconds: number
  /** The present instant, milliseconds since 1970 UTC; names the copy made before a migration. */
  readonly clock: () => number
  /** The migrations to bring it to; ours unless a test needs others. */
  readonly migrations?: Readonly<Record<string, Migration>>
}

/**
 * Opens an SQLite file and brings its tables up to date. Write-ahead log and `synchronous=FULL`: what was
 * committed is on the disk (https://www.sqlite.org/pragma.html#pragma_synchronous).
 */
export async function openSqlite(options: SqliteOptions): Promise<Engine> {
  const { file, lockWaitMilliseconds } = options
  const database = new Database(file, { timeout: lockWaitMilliseconds })
  const db = new Kysely<Tables>({ dialect: new SharedSqliteDialect(database, lockWaitMilliseconds) })
  try {
    for (const setting of [
      'journal_mode = WAL',
      'synchronous = FULL',
      'fullfsync = ON',
      'foreign_keys = ON',
      'trusted_schema = OFF',
      // What is deleted is overwritten with zeros in its page (https://www.sqlite.org/pragma.html#pragma_secure_delete).
      'secure_delete = ON',
    ])
      database.pragma(setting)
    await migrate(db, {
      known: options.migrations ?? migrations(sqliteTables),
      // A transaction here is the only writer from its first statement on.
      lock: async () => {},
      copyFirst: (next) => copyBefore(options, next),
    })
  } catch (error) {
    database.close()
    throw error
  }
  const arrivals = new Arrivals(db)
  return {
    db,
    explain: (error) => explainTrouble(error, file),
    transact: (work) => db.transaction().execute(work),
    holdJobs: async () => {},
    // The transaction is the only writer from its first statement on, so reading is enough.
    lockHeads: (transaction, devices) => selectHeads(transaction, devices).execute(),
    announce: async () => {},
    wrote: () => arrivals.wrote(),
    forget: async () => forget(database),
    watch: (listener) => arrivals.watch(listener),
    backupTo: (to) => copyDatabase(file, to),
    close: async () => {
      arrivals.stop()
      await db.destroy()
    },
  }
}

/**
 * Writes the whole database anew and empties the write-ahead log: moved rows leave copies of themselves in the slack
 * of their pages, and the log holds earlier versions of pages. A disk may keep what it was told to overwrite.
 */
function forget(database: Database.Database): void {
  database.exec('vacuum')
  const [{ busy } = { busy: 0 }] = database.pragma('wal_checkpoint(TRUNCATE)') as { busy: number }[]
  if (busy === 0) return
  throw new StoreError(
    'locked',
    'The content is deleted, but another program reads the database, so earlier versions still stand in its log.',
    'Delete once more when no other program reads it; that also records the proof.',
  )
}

async function copyBefore(options: SqliteOptions, next: string): Promise<void> {
  await mkdir(options.backups, { recursive: true, mode: 0o700 })
  const stamp = new Date(options.clock()).toISOString().replace(/[-:.]/g, '')
  await copyDatabase(options.file, join(options.backups, `before-${next}-${stamp}.sqlite`))
}
