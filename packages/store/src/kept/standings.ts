import { type DeviceStanding, type Fact, foldRegister, registerJob, type Verifier } from '@shearline/jobfile'
import { type Kysely, sql } from 'kysely'
import type { Tables } from '../tables/tables.ts'
import { factsOfJob } from './rows.ts'

/**
 * How the devices stand in the firm's register, folded again only when facts of it arrived. Facts are never removed,
 * so their number tells; another process may have written them.
 */
export class Standings {
  readonly #verifier: Verifier
  #facts = 0
  #devices: ReadonlyMap<string, DeviceStanding> = new Map()

  constructor(verifier: Verifier) {
    this.#verifier = verifier
  }

  async read(db: Kysely<Tables>): Promise<ReadonlyMap<string, DeviceStanding>> {
    const { rows } = await db.executeQuery(countOfRegister(db))
    const facts = Number(rows[0]?.facts ?? 0)
    if (facts !== this.#facts) {
      const register: readonly Fact[] = await factsOfJob(db, registerJob)
      this.#devices = (await foldRegister(register, this.#verifier)).devices
      this.#facts = register.length
    }
    return this.#devices
  }
}

function countOfRegister(db: Kysely<Tables>) {
  return sql<{
    facts: number | string
  }>`select count(*) as facts from facts where job = ${registerJob}`.compile(db)
}
