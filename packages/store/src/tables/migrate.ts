import { type Kysely, sql, type Transaction } from 'kysely'
import { type Migration, Migrator } from 'kysely/migration'
import { StoreError } from '../contract/index.ts'
import type { Tables } from './tables.ts'

/** How a database brings its tables up to date. */
export interface MigrateOptions {
  readonly known: Readonly<Record<string, Migration>>
  /** Keeps other programs from migrating the same database until this transaction ends. */
  readonly lock: (transaction: Transaction<Tables>) => Promise<void>
  /** Makes the way back before a database that has content is migrated; `next` is the first pending migration. */
  readonly copyFirst: (next: string) => Promise<void>
}

/** Where the tables of a database stand against the migrations this program knows. */
export interface SchemaStanding {
  /** Names of migrations done, in order. */
  readonly done: readonly string[]
  readonly pending: readonly string[]
  /** A migration this program does not know: a newer version was here. */
  readonly strange: string | null
}

/** Reads where the tables stand; changes nothing. `made` says whether the table of migrations exists. */
export async function schemaStanding(
  db: Kysely<Tables>,
  known: Readonly<Record<string, Migration>>,
): Promise<SchemaStanding> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true })
  const made = tables.some(({ name }) => name === 'kysely_migration')
  const { rows } = made
    ? await sql<{ name: string }>`select name from kysely_migration order by name`.execute(db)
    : { rows: [] }
  const done = rows.map(({ name }) => name)
  return {
    done,
    pending: Object.keys(known).filter((name) => !done.includes(name)),
    strange: done.find((name) => !Object.hasOwn(known, name)) ?? null,
  }
}

/**
 * Runs pending migrations, all in one transaction and forward only; a database that has content is copied first,
 * under the same lock. Throws StoreError `newer-database` for one that a newer version has migrated.
 */
export async function migrate(db: Kysely<Tables>, options: MigrateOptions): Promise<void> {
  const { known } = options
  const standing = await schemaStanding(db, known)
  if (standing.strange !== null) throw newer(standing.strange)
  if (standing.pending.length === 0) return
  await db.transaction().execute(async (transaction) => {
    await options.lock(transaction)
    // Another process may have migrated while this one waited for the lock.
    const now = await schemaStanding(transaction, known)
    if (now.strange !== null) throw newer(now.strange)
    const [next] = now.pending
    if (next === undefined) return
    if (now.done.length > 0) await options.copyFirst(next)
    const migrator = new Migrator({ db: transaction, provider: { getMigrations: async () => known } })
    const { error } = await migrator.migrateToLatest()
    if (error !== undefined) throw error
  })
}

function newer(strange: string): StoreError {
  return new StoreError(
    'newer-database',
    `The database was last used by a newer version of Shearline (it knows "${strange}").`,
    'Update Shearline on this computer. The database was not touched.',
  )
}
