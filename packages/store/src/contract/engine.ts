import type { Kysely, Transaction } from 'kysely'
import type { Head } from '../kept/rows.ts'
import type { Tables } from '../tables/tables.ts'
import type { StoreError } from './store-error.ts'

/** How a transaction holds a job: beside others that add facts to it, or alone so that nobody else can. */
export interface HeldJob {
  readonly job: string
  readonly how: 'beside-others' | 'alone'
}

/**
 * What a database brings besides Kysely's dialect. Everything else of the store is the same queries for all.
 */
export interface Engine {
  readonly db: Kysely<Tables>

  /** Runs work in a transaction, waiting for others and starting anew when the database asks for it. */
  transact<T>(work: (transaction: Transaction<Tables>) => Promise<T>): Promise<T>

  /** Holds jobs until the transaction ends. Called before rows are locked, so that two never wait in a ring. */
  holdJobs(transaction: Transaction<Tables>, jobs: readonly HeldJob[]): Promise<void>

  /** Reads where chains end; from then until it ends, this transaction alone may move them. */
  lockHeads(transaction: Transaction<Tables>, devices: readonly string[]): Promise<readonly Head[]>

  /** Called inside a transaction that adds facts to these jobs: whoever listens hears of them if it is kept. */
  announce(transaction: Transaction<Tables>, jobs: readonly string[]): Promise<void>

  /** Called after facts were committed here. */
  wrote(): Promise<void>

  /**
   * Called after content was erased and committed: takes what is left of it out of the database's own files, as far
   * as the database can. Throws what `explain` knows when others hold the database; the erasure itself stands.
   */
  forget(): Promise<void>

  /** Translates a driver's error into ours; null when it is none of the known ones. */
  explain(error: unknown): StoreError | null

  /** Calls back with jobs whose facts were committed, here or by another process. Returns its end. */
  watch(listener: (jobs: readonly string[]) => void): () => void

  /** Writes a copy of one instant as an SQLite file, whatever this database is. */
  backupTo(file: string): Promise<void>
  close(): Promise<void>
}
