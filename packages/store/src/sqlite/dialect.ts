import { setTimeout as pause } from 'node:timers/promises'
import type Database from 'better-sqlite3'
import {
  CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  type DialectAdapter,
  type Driver,
  type Kysely,
  SqliteAdapter,
  SqliteDriver,
  SqliteIntrospector,
  SqliteQueryCompiler,
} from 'kysely'
import type { TableDialect } from '../tables/migrations.ts'
import { isBusy } from './trouble.ts'

/** Milliseconds a statement outside a transaction may wait for another process before it fails. */
const statementWaitMilliseconds = 5000

/**
 * Kysely's SQLite dialect with two changes. A transaction begins IMMEDIATE, so that what it reads cannot change
 * before it writes. And it waits for its turn without blocking the thread: two stores in one process would
 * otherwise wait for each other until one gives up, and a server would stand still meanwhile.
 */
export class SharedSqliteDialect implements Dialect {
  readonly #database: Database.Database
  readonly #lockWaitMilliseconds: number

  constructor(database: Database.Database, lockWaitMilliseconds: number) {
    this.#database = database
    this.#lockWaitMilliseconds = lockWaitMilliseconds
  }

  createDriver(): Driver {
    return new SharedSqliteDriver(this.#database, this.#lockWaitMilliseconds)
  }

  createQueryCompiler(): SqliteQueryCompiler {
    return new SqliteQueryCompiler()
  }

  createAdapter(): DialectAdapter {
    return new TransactionalDdlAdapter()
  }

  createIntrospector(db: Kysely<unknown>): SqliteIntrospector {
    return new SqliteIntrospector(db)
  }
}

class SharedSqliteDriver extends SqliteDriver {
  readonly #database: Database.Database
  readonly #lockWaitMilliseconds: number

  constructor(database: Database.Database, lockWaitMilliseconds: number) {
    super({ database: new PreparedOnce(database) })
    this.#database = database
    this.#lockWaitMilliseconds = lockWaitMilliseconds
  }

  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    const until = performance.now() + this.#lockWaitMilliseconds
    for (;;) {
      try {
        this.#database.exec('pragma busy_timeout = 0')
        await connection.executeQuery(CompiledQuery.raw('begin immediate'))
        return
      } catch (error) {
        if (!isBusy(error) || performance.now() >= until) throw error
      } finally {
        this.#database.exec(`pragma busy_timeout = ${statementWaitMilliseconds}`)
      }
      // Uneven pauses, so that two writers do not keep meeting at the same moment.
      await pause(1 + Math.random() * 4)
    }
  }

  /** A full disk makes SQLite undo the transaction itself; undoing it twice would hide the true reason. */
  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.#database.inTransaction) await super.rollbackTransaction(connection)
  }
}

/** Statements kept ready; far more than the store has, so that only lists of uneven length push others out. */
const keptStatements = 200

/** Prepares each text once: preparing costs as much as running a small statement. */
class PreparedOnce {
  readonly #database: Database.Database
  readonly #ready = new Map<string, Database.Statement<unknown[]>>()

  constructor(database: Database.Database) {
    this.#database = database
  }

  prepare(text: string): Database.Statement<unknown[]> {
    const ready = this.#ready.get(text)
    if (ready !== undefined) return ready
    const statement = this.#database.prepare<unknown[]>(text)
    if (this.#ready.size >= keptStatements) this.#ready.clear()
    this.#ready.set(text, statement)
    return statement
  }

  close(): void {
    this.#ready.clear()
    this.#database.close()
  }
}

/** SQLite can undo table changes; saying so lets all pending migrations stand in one transaction. */
class TransactionalDdlAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true
  }
}

/** In SQLite an integer primary key is the row's own number and counts up while nothing is deleted. */
export const sqliteTables: TableDialect = {
  text: 'text',
  bytes: 'blob',
  addCounter: (table, column) => table.addColumn(column, 'integer', (definition) => definition.primaryKey()),
}
