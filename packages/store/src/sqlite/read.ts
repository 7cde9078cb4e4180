import Database from 'better-sqlite3'
import { Kysely, SqliteDialect } from 'kysely'
import type { Tables } from '../tables/tables.ts'

/**
 * Opens an SQLite file to read it as it is at one instant: one read transaction stays open until it is closed.
 * Nothing is changed, migrated or made; throws what SQLite throws when the file is none.
 */
export function readSqlite(file: string): Kysely<Tables> {
  const database = new Database(file, { readonly: true, fileMustExist: true })
  try {
    database.exec('begin')
  } catch (error) {
    database.close()
    throw error
  }
  return new Kysely<Tables>({ dialect: new SqliteDialect({ database }) })
}
