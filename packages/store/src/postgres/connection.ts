import { Kysely, PostgresDialect, sql } from 'kysely'
import pg from 'pg'
import type { TableDialect } from '../tables/migrations.ts'
import type { Tables } from '../tables/tables.ts'

/** Connections one server process holds for its queries; one more listens. */
const poolSize = 10

/** How long to wait for the database server to answer a new connection, milliseconds. */
const connectMilliseconds = 10_000

/** Numbers the store keeps (counts, bytes, arrivals) stay far below 2^53, so bigint is read as a number. */
const types: pg.CustomTypesConfig = {
  getTypeParser: (oid: number, format?: 'text' | 'binary') =>
    oid === pg.types.builtins.INT8 || oid === pg.types.builtins.NUMERIC
      ? Number
      : pg.types.getTypeParser(oid, format as 'text'),
}

/** What every connection is set to, whatever the role or the database says: an answer means the disk has it. */
const settings = '-c synchronous_commit=on -c default_transaction_isolation=read\\ committed'

/** How to reach the database: one connection's settings. */
export function connectionConfig(url: string, lockWaitMilliseconds: number): pg.ClientConfig {
  return {
    connectionString: url,
    connectionTimeoutMillis: connectMilliseconds,
    lock_timeout: lockWaitMilliseconds,
    options: settings,
    application_name: 'shearline',
    keepAlive: true,
    types,
  }
}

/** Opens a pool of connections under Kysely. Nothing is sent before the first query. */
export function connect(url: string, lockWaitMilliseconds: number): Kysely<Tables> {
  const pool = new pg.Pool({ ...connectionConfig(url, lockWaitMilliseconds), max: poolSize })
  // A connection that breaks is replaced by the next query, and the query it was used for fails by itself.
  pool.on('error', () => {})
  pool.on('connect', (client) => client.on('error', () => {}))
  return new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) })
}

/** The address of a database without its password, for people to read. */
export function placeOf(url: string): string {
  try {
    const { protocol, username, host, pathname } = new URL(url)
    const user = username === '' ? '' : `${username}@`
    return `${protocol}//${user}${host}${pathname}`
  } catch {
    return 'the PostgreSQL database'
  }
}

/** Text ordered by its bytes, so that every database gives one order; arrivals counted by an identity column. */
export const postgresTables: TableDialect = {
  text: sql`text collate "C"`,
  bytes: 'bytea',
  addCounter: (table, column) =>
    table.addColumn(column, 'bigint', (definition) => definition.primaryKey().generatedByDefaultAsIdentity()),
}
