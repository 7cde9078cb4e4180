import { type Kysely, sql } from 'kysely'
import type { Tables } from '../tables/tables.ts'

const lookEveryMilliseconds = 200

/**
 * Tells listeners which jobs got facts. `PRAGMA data_version` changes when another connection has committed
 * (https://www.sqlite.org/pragma.html#pragma_data_version); then the rows that arrived since are looked up.
 */
export class Arrivals {
  readonly #db: Kysely<Tables>
  readonly #listeners = new Set<(jobs: readonly string[]) => void>()
  #timer: NodeJS.Timeout | undefined
  #turn: Promise<void> = Promise.resolve()
  #version: number | undefined
  #seen = 0

  constructor(db: Kysely<Tables>) {
    this.#db = db
  }

  watch(listener: (jobs: readonly string[]) => void): () => void {
    this.#listeners.add(listener)
    if (this.#timer === undefined) {
      this.#inTurn(() => this.#start())
      this.#timer = setInterval(() => this.#inTurn(() => this.#lookForOthers()), lookEveryMilliseconds)
      this.#timer.unref()
    }
    return () => {
      this.#listeners.delete(listener)
      if (this.#listeners.size === 0) this.stop()
    }
  }

  /** Tells what arrived since the last look; called after facts were committed on this connection. */
  async wrote(): Promise<void> {
    if (this.#listeners.size > 0) await this.#inTurn(() => this.#tell())
  }

  stop(): void {
    clearInterval(this.#timer)
    this.#timer = undefined
    this.#listeners.clear()
  }

  /** One look at a time. A look that fails is made up for by the next one. */
  #inTurn(look: () => Promise<void>): Promise<void> {
    this.#turn = this.#turn.then(look).catch(() => {})
    return this.#turn
  }

  async #start(): Promise<void> {
    this.#version = await this.#dataVersion()
    const last = await this.#db
      .selectFrom('facts')
      .select(({ fn }) => fn.max('arrival').as('last'))
      .executeTakeFirst()
    this.#seen = Number(last?.last ?? 0)
  }

  async #lookForOthers(): Promise<void> {
    const version = await this.#dataVersion()
    if (version === this.#version) return
    await this.#tell()
    this.#version = version
  }

  async #tell(): Promise<void> {
    const rows = await this.#db
      .selectFrom('facts')
      .where('arrival', '>', this.#seen)
      .groupBy('job')
      .select(['job', ({ fn }) => fn.max('arrival').as('last')])
      .execute()
    if (rows.length === 0) return
    this.#seen = Math.max(...rows.map((row) => Number(row.last)))
    const jobs = rows.map((row) => row.job)
    for (const listener of [...this.#listeners]) listener(jobs)
  }

  async #dataVersion(): Promise<number | undefined> {
    const { rows } = await sql<{ data_version: number }>`pragma data_version`.execute(this.#db)
    return rows[0]?.data_version
  }
}
