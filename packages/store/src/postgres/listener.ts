import { type Kysely, sql, type Transaction } from 'kysely'
import pg from 'pg'
import type { Tables } from '../tables/tables.ts'

const channel = 'shearline_jobs'

/** Jobs in one notification: names have at most 64 characters, a notification at most 8000 bytes. */
const jobsInNotice = 100

/** Milliseconds until a lost line is tried again, doubled up to the longest. */
const [firstWait, longestWait] = [200, 10_000]

/** Arrival numbers are given before the commit, so a later number can be seen first; looking back covers that. */
const lookBack = 1000

/**
 * Hears of jobs by LISTEN (PostgreSQL manual, "LISTEN"), on a connection of its own. After a lost line it tells the
 * jobs of everything that arrived meanwhile: rather one too many than one too few.
 */
export class JobNotices {
  readonly #config: pg.ClientConfig
  readonly #db: Kysely<Tables>
  readonly #listeners = new Set<(jobs: readonly string[]) => void>()
  #client: pg.Client | undefined
  #timer: NodeJS.Timeout | undefined
  #wait = firstWait
  #seen = 0
  #ended = false

  constructor(config: pg.ClientConfig, db: Kysely<Tables>) {
    this.#config = config
    this.#db = db
  }

  /** Starts listening; throws when the database cannot be reached now. */
  async start(): Promise<void> {
    const client = new pg.Client(this.#config)
    client.on('error', () => this.#lost(client))
    client.on('end', () => this.#lost(client))
    client.on('notification', ({ payload }) => this.#tell(JSON.parse(payload ?? '[]') as string[]))
    await client.connect()
    await client.query(`listen ${channel}`)
    this.#client = client
    this.#wait = firstWait
    this.#seen = await this.#lastArrival()
  }

  watch(listener: (jobs: readonly string[]) => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  async end(): Promise<void> {
    this.#ended = true
    clearTimeout(this.#timer)
    this.#listeners.clear()
    await this.#client?.end().catch(() => {})
  }

  #tell(jobs: readonly string[]): void {
    for (const listener of [...this.#listeners]) listener(jobs)
  }

  #lost(client: pg.Client): void {
    if (this.#client !== client || this.#ended) return
    this.#client = undefined
    this.#again()
  }

  #again(): void {
    this.#timer = setTimeout(() => void this.#comeBack(), this.#wait)
    this.#timer.unref()
    this.#wait = Math.min(this.#wait * 2, longestWait)
  }

  async #comeBack(): Promise<void> {
    const seen = this.#seen
    try {
      await this.start()
      const rows = await this.#db
        .selectFrom('facts')
        .where('arrival', '>', seen - lookBack)
        .select('job')
        .distinct()
        .execute()
      if (rows.length > 0) this.#tell(rows.map(({ job }) => job))
    } catch {
      if (!this.#ended && this.#client === undefined) this.#again()
    }
  }

  async #lastArrival(): Promise<number> {
    const row = await this.#db
      .selectFrom('facts')
      .select(({ fn }) => fn.max('arrival').as('last'))
      .executeTakeFirst()
    return Number(row?.last ?? 0)
  }
}

/** Sends jobs to every listener when this transaction commits, and not otherwise (PostgreSQL manual, "NOTIFY"). */
export async function notifyJobs(transaction: Transaction<Tables>, jobs: readonly string[]): Promise<void> {
  for (let at = 0; at < jobs.length; at += jobsInNotice) {
    const payload = JSON.stringify(jobs.slice(at, at + jobsInNotice))
    await sql`select pg_notify(${channel}, ${payload})`.execute(transaction)
  }
}
