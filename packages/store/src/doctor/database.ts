import { type Kysely, sql } from 'kysely'
import type { Migration } from 'kysely/migration'
import { schemaStanding } from '../tables/migrate.ts'
import type { Tables } from '../tables/tables.ts'
import { type Notes, restore } from './finding.ts'

/** Says how the tables stand against this program; true when they can be read by it. */
export async function checkSchema(
  db: Kysely<Tables>,
  known: Readonly<Record<string, Migration>>,
  notes: Notes,
): Promise<boolean> {
  const { strange, pending, done } = await schemaStanding(db, known)
  if (strange !== null)
    notes.say(
      'schema-newer',
      'database',
      `A newer version of Shearline brought it to "${strange}".`,
      'Update Shearline on this computer, then examine it again.',
    )
  else if (pending.length > 0)
    notes.say(
      'schema-behind',
      'database',
      done.length === 0 ? 'It holds no tables yet.' : `It waits for ${pending.join(', ')}.`,
      'It is brought up to date when it is next opened, after a copy was made. Then examine it again.',
      'warning',
    )
  return strange === null && pending.length === 0
}

/** SQLite's own check of every page and index (https://www.sqlite.org/pragma.html#pragma_integrity_check). */
export async function checkSqliteFile(db: Kysely<Tables>, notes: Notes): Promise<void> {
  const { rows } = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(db)
  for (const { integrity_check: said } of rows)
    if (said !== 'ok') notes.say('database-damaged', 'shearline.sqlite', `SQLite says: ${said}.`, restore)
}

/**
 * What a PostgreSQL server must be set to for an answer to mean that the disk has it (PostgreSQL manual, 20.5), and
 * its indexes where the extension amcheck is there to check them.
 */
export async function checkPostgres(db: Kysely<Tables>, notes: Notes): Promise<void> {
  for (const [name, why] of [
    ['fsync', 'facts that were acknowledged can be lost when the computer fails'],
    ['full_page_writes', 'pages half written when the computer fails cannot be mended'],
  ] as const) {
    const { rows } = await sql<Record<string, string>>`show ${sql.raw(name)}`.execute(db)
    if (rows[0]?.[name] !== 'on')
      notes.say(
        'server-setting',
        `setting ${name}`,
        `It is off: ${why}.`,
        `Set ${name} = on and reload the server.`,
      )
  }
  const { rows: sums } = await sql<{ data_checksums: string }>`show data_checksums`.execute(db)
  if (sums[0]?.data_checksums !== 'on')
    notes.say(
      'server-setting',
      'setting data_checksums',
      'It is off: the server does not notice a bit that flips in what no signature covers.',
      'Stop the server and run "pg_checksums --enable".',
      'warning',
    )
  const { rows: extensions } = await sql`select 1 from pg_extension where extname = 'amcheck'`.execute(db)
  if (extensions.length === 0) {
    notes.say(
      'index-not-checked',
      'indexes',
      'The extension amcheck is not in this database, so the indexes were not compared with the tables.',
      'Run "create extension amcheck" as its owner and examine again.',
      'note',
    )
    return
  }
  const { rows: indexes } = await sql<{ name: string; oid: number }>`
    select c.relname as name, c.oid from pg_index i join pg_class c on c.oid = i.indexrelid
    join pg_class t on t.oid = i.indrelid
    where t.relname in ('devices', 'facts', 'blobs', 'blob_parts', 'documents', 'erased_documents', 'settings')
      and pg_table_is_visible(t.oid)`.execute(db)
  for (const { name, oid } of indexes) {
    // A failed check ends a transaction, so each is undone by itself.
    await sql`savepoint index_check`.execute(db)
    try {
      await sql`select bt_index_check(${oid}::oid::regclass, true)`.execute(db)
    } catch (error) {
      await sql`rollback to savepoint index_check`.execute(db)
      notes.say(
        'database-damaged',
        `index ${name}`,
        `PostgreSQL says: ${error instanceof Error ? error.message : String(error)}.`,
        `Run "reindex index ${name}"; if that fails, restore the latest backup.`,
      )
    }
  }
}
