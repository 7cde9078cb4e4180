import type { CreateTableBuilder, Kysely } from 'kysely'
import type { Migration } from 'kysely/migration'

/** The little in which databases differ when tables are made. */
export interface TableDialect {
  /** Adds the primary key column that counts arrivals. */
  addCounter(table: CreateTableBuilder<'facts'>, column: 'arrival'): CreateTableBuilder<'facts', 'arrival'>
}

/**
 * Every migration by name, in order. They only go forward: the way back is the copy made before.
 * A migration that has been released is never edited.
 */
export function migrations(dialect: TableDialect): Record<string, Migration> {
  return { '0001-facts-and-blobs': { up: (db) => factsAndBlobs(db, dialect) } }
}

async function factsAndBlobs(db: Kysely<unknown>, dialect: TableDialect): Promise<void> {
  await db.schema
    .createTable('devices')
    .addColumn('device', 'text', (column) => column.primaryKey())
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('public_key', 'text', (column) => column.notNull().unique())
    .addColumn('enrolled_at', 'text', (column) => column.notNull())
    .addColumn('head_seq', 'integer', (column) => column.notNull())
    .addColumn('head_hash', 'text')
    .execute()

  await dialect
    .addCounter(db.schema.createTable('facts'), 'arrival')
    .addColumn('device', 'text', (column) => column.notNull().references('devices.device'))
    .addColumn('seq', 'integer', (column) => column.notNull())
    .addColumn('id', 'text', (column) => column.notNull())
    .addColumn('job', 'text', (column) => column.notNull())
    .addColumn('at', 'text', (column) => column.notNull())
    .addColumn('kind', 'text', (column) => column.notNull())
    .addColumn('prev', 'text')
    .addColumn('hash', 'text', (column) => column.notNull())
    .addColumn('fact', 'text', (column) => column.notNull())
    .addUniqueConstraint('facts_device_seq', ['device', 'seq'])
    .execute()
  await db.schema.createIndex('facts_job').on('facts').columns(['job', 'at']).execute()

  await db.schema
    .createTable('blobs')
    .addColumn('sha256', 'text', (column) => column.primaryKey())
    .addColumn('bytes', 'bigint', (column) => column.notNull())
    .addColumn('media_type', 'text', (column) => column.notNull())
    .addColumn('kept_at', 'text', (column) => column.notNull())
    .execute()

  await db.schema
    .createTable('documents')
    .addColumn('seal', 'text', (column) => column.primaryKey())
    .addColumn('job', 'text', (column) => column.notNull())
    .addColumn('blob', 'text', (column) => column.notNull().references('blobs.sha256'))
    .addColumn('sealed_at', 'text', (column) => column.notNull())
    .execute()
  await db.schema.createIndex('documents_job').on('documents').columns(['job', 'sealed_at']).execute()

  await db.schema
    .createTable('settings')
    .addColumn('name', 'text', (column) => column.primaryKey())
    .addColumn('value', 'text', (column) => column.notNull())
    .execute()
}
