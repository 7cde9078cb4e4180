import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { Kysely, sql } from 'kysely'
import { type Migration, Migrator } from 'kysely/migration'
import type { Engine } from '../contract/engine.ts'
import { StoreError } from '../contract/index.ts'
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
    ])
      database.pragma(setting)
    await migrate(db, options)
  } catch (error) {
    database.close()
    throw error
  }
  const arrivals = new Arrivals(db)
  return {
    db,
    explain: (error) => explainTrouble(error, file),
    wrote: () => arrivals.wrote(),
    watch: (listener) => arrivals.watch(listener),
    backupTo: (to) => copyDatabase(file, to),
    close: async () => {
      arrivals.stop()
      await db.destroy()
    },
  }
}

/** Runs pending migrations in one transaction; a database that has content is copied first, under the same lock. */
async function migrate(db: Kysely<Tables>, options: SqliteOptions): Promise<void> {
  const known = options.migrations ?? migrations(sqliteTables)
  const provider = { getMigrations: async () => known }
  const standing = await new Migrator({ db, provider }).getMigrations()
  if (standing.some(done)) await refuseNewer(db, Object.keys(known))
  if (standing.every(done)) return
  await db.transaction().execute(async (transaction) => {
    const migrator = new Migrator({ db: transaction, provider })
    const now = await migrator.getMigrations()
    const next = now.find((migration) => !done(migration))
    // Another process may have migrated while this one waited for the lock.
    if (next === undefined) return
    if (now.some(done)) {
      await mkdir(options.backups, { recursive: true, mode: 0o700 })
      const stamp = new Date(options.clock()).toISOString().replace(/[-:.]/g, '')
      await copyDatabase(options.file, join(options.backups, `before-${next.name}-${stamp}.sqlite`))
    }
    const { error } = await migrator.migrateToLatest()
    if (error !== undefined) throw error
  })
}

function done(migration: { readonly executedAt?: Date | undefined }): boolean {
  return migration.executedAt !== undefined
}

/** A database that a newer version has migrated must not be written by an older one. */
async function refuseNewer(db: Kysely<Tables>, known: readonly string[]): Promise<void> {
  const { rows } = await sql<{ name: string }>`select name from kysely_migration`.execute(db)
  const strange = rows.find((row) => !known.includes(row.name))
  if (strange === undefined) return
  throw new StoreError(
    'newer-database',
    `The database was last used by a newer version of Shearline (it knows "${strange.name}").`,
    'Update Shearline on this computer. The database was not touched.',
  )
}
