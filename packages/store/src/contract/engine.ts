import type { Kysely } from 'kysely'
import type { Tables } from '../tables/tables.ts'
import type { StoreError } from './store-error.ts'

/**
 * What a database brings besides Kysely's dialect. Everything else of the store is the same queries for all.
 * Transactions of `db` must see a row they locked by an update as the only writer of it.
 */
export interface Engine {
  readonly db: Kysely<Tables>

  /** Translates a driver's error into ours; null when it is none of the known ones. */
  explain(error: unknown): StoreError | null

  /** Called after facts were committed here, so that listeners in this and other processes hear of it. */
  wrote(): Promise<void>

  /** Calls back with jobs whose facts were committed, here or by another process. Returns its end. */
  watch(listener: (jobs: readonly string[]) => void): () => void

  backupTo(file: string): Promise<void>
  close(): Promise<void>
}
