import type { ColumnDataType, CreateTableBuilder, Kysely, RawBuilder } from 'kysely'
import type { Migration } from 'kysely/migration'
import { digestOf } from './digest.ts'
import type { Tables } from './tables.ts'

/** The little in which databases differ when tables are made. */
export interface TableDialect {
  /** Text that is ordered by its bytes, whatever the language of the database. */
  readonly text: ColumnDataType | RawBuilder<unknown>
  readonly bytes: ColumnDataType
  /** Adds the primary key column that counts arrivals. */
  addCounter(table: CreateTableBuilder<'facts'>, column: 'arrival'): CreateTableBuilder<'facts', 'arrival'>
}

/**
 * Every migration by name, in order. They only go forward: the way back is the copy made before.
 * A migration that has been released is never edited.
 */
export function migrations(dialect: TableDialect): Record<string, Migration> {
  return {
    '0001-facts-and-blobs': { up: (db) => factsAndBlobs(db, dialect) },
    '0002-digests-and-parts': { up: (db) => digestsAndParts(db, dialect) },
    '0003-receipts-and-erasures': { up: (db) => receiptsAndErasures(db, dialect) },
  }
}

async function factsAndBlobs(db: Kysely<unknown>, dialect: TableDialect): Promise<void> {
  const { text } = dialect
  await db.schema
    .createTable('devices')
    .addColumn('device', text, (column) => column.primaryKey())
    .addColumn('name', text, (column) => column.notNull())
    .addColumn('public_key', text, (column) => column.notNull().unique())
    .addColumn('enrolled_at', text, (column) => column.notNull())
    .addColumn('head_seq', 'integer', (column) => column.notNull())
    .addColumn('head_hash', text)
    .execute()

  await dialect
    .addCounter(db.schema.createTable('facts'), 'arrival')
    .addColumn('device', text, (column) => column.notNull().references('devices.device'))
    .addColumn('seq', 'integer', (column) => column.notNull())
    .addColumn('id', text, (column) => column.notNull())
    .addColumn('job', text, (column) => column.notNull())
    .addColumn('at', text, (column) => column.notNull())
    .addColumn('kind', text, (column) => column.notNull())
    .addColumn('prev', text)
    .addColumn('hash', text, (column) => column.notNull())
    .addColumn('fact', text, (column) => column.notNull())
    .addUniqueConstraint('facts_device_seq', ['device', 'seq'])
    .execute()
  await db.schema.createIndex('facts_job').on('facts').columns(['job', 'at']).execute()

  await db.schema
    .createTable('blobs')
    .addColumn('sha256', text, (column) => column.primaryKey())
    .addColumn('bytes', 'bigint', (column) => column.notNull())
    .addColumn('media_type', text, (column) => column.notNull())
    .addColumn('kept_at', text, (column) => column.notNull())
    .execute()

  await db.schema
    .createTable('documents')
    .addColumn('seal', text, (column) => column.primaryKey())
    .addColumn('job', text, (column) => column.notNull())
    .addColumn('blob', text, (column) => column.notNull().references('blobs.sha256'))
    .addColumn('sealed_at', text, (column) => column.notNull())
    .execute()
  await db.schema.createIndex('documents_job').on('documents').columns(['job', 'sealed_at']).execute()

  await db.schema
    .createTable('settings')
    .addColumn('name', text, (column) => column.primaryKey())
    .addColumn('value', text, (column) => column.notNull())
    .execute()
}

async function digestsAndParts(db: Kysely<unknown>, { text, bytes }: TableDialect): Promise<void> {
  for (const table of ['devices', 'blobs', 'documents', 'settings'])
    await db.schema
      .alterTable(table)
      .addColumn('digest', text, (column) => column.notNull().defaultTo(''))
      .execute()
  const tables = db as Kysely<Tables>
  for (const row of await tables.selectFrom('devices').selectAll().execute())
    await tables
      .updateTable('devices')
      .set({ digest: digestOf.device(row) })
      .where('device', '=', row.device)
      .execute()
  for (const row of await tables.selectFrom('blobs').selectAll().execute())
    await tables
      .updateTable('blobs')
      .set({ digest: digestOf.blob(row) })
      .where('sha256', '=', row.sha256)
      .execute()
  for (const row of await tables.selectFrom('documents').selectAll().execute())
    await tables
      .updateTable('documents')
      .set({ digest: digestOf.document(row) })
      .where('seal', '=', row.seal)
      .execute()
  for (const row of await tables.selectFrom('settings').selectAll().execute())
    await tables
      .updateTable('settings')
      .set({ digest: digestOf.setting(row) })
      .where('name', '=', row.name)
      .execute()

  await db.schema
    .createTable('blob_parts')
    .addColumn('sha256', text, (column) => column.notNull())
    .addColumn('part', 'integer', (column) => column.notNull())
    .addColumn('bytes', bytes, (column) => column.notNull())
    .addPrimaryKeyConstraint('blob_parts_place', ['sha256', 'part'])
    .execute()
}

async function receiptsAndErasures(db: Kysely<unknown>, { text }: TableDialect): Promise<void> {
  await db.schema.alterTable('facts').addColumn('received', text).execute()
  await db.schema.alterTable('facts').addColumn('received_digest', text).execute()
  await db.schema
    .createTable('erased_documents')
    .addColumn('seal', text, (column) => column.primaryKey())
    .addColumn('job', text, (column) => column.notNull())
    .addColumn('sha256', text, (column) => column.notNull())
    .addColumn('erased_at', text, (column) => column.notNull())
    .addColumn('digest', text, (column) => column.notNull())
    .execute()
}
