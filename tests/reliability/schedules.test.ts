import { mkdtemp, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { examine, openStore, type Store } from '@shearline/store'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { quickFolder } from '../../packages/store/src/testing/folders.ts'
import {
  PostgresServer,
  postgresAbsent,
  postgresPrograms,
} from '../../packages/store/src/testing/postgres.ts'
import { Schedule, type Servers } from './schedule.ts'

/** One seed only, to run a schedule that failed once more. */
const only = process.env.SHEARLINE_SEED

/** Runs schedules of successive seeds on two servers over one database. */
async function runSchedules(name: string, open: () => Promise<Store>, count: number): Promise<void> {
  const servers: Servers = { open, stores: [await open(), await open()] }
  const seeds = only === undefined ? Array.from({ length: count }, (_, i) => i + 1) : [Number(only)]
  let facts = 0
  for (const seed of seeds) {
    try {
      facts += await new Schedule(seed, `s${seed}`, servers).run()
    } catch (error) {
      const again = `SHEARLINE_SEED=${seed} npx vitest run tests/reliability/schedules.test.ts -t "${name}"`
      throw new Error(`Schedule ${seed} on ${name} failed. Run it again with: ${again}`, { cause: error })
    }
  }
  expect(facts).toBeGreaterThan(seeds.length * 10)
  for (const store of servers.stores) await store.close()
}

describe('random schedules of three tablets and two servers', () => {
  let folder: string
  beforeAll(async () => {
    folder = await mkdtemp(join(quickFolder, 'shearline-schedules-'))
  })
  afterAll(async () => {
    await rm(folder, { recursive: true, force: true })
  })

  test('converge on SQLite, and nothing acknowledged is lost', { timeout: 1_800_000 }, async () => {
    const data = join(folder, 'data')
    await runSchedules('SQLite', () => openStore(data), 1000)
    expect((await examine({ data })).findings.filter(({ severity }) => severity === 'error')).toEqual([])
  })

  const absent = postgresPrograms === null
  test.skipIf(absent)(
    absent ? `PostgreSQL: ${postgresAbsent}` : 'converge on PostgreSQL, and nothing acknowledged is lost',
    { timeout: 1_800_000 },
    async () => {
      const server = new PostgresServer()
      try {
        const database = await server.makeDatabase()
        const data = join(folder, 'firm')
        await runSchedules('PostgreSQL', () => openStore(data, { database }), 100)
        const { findings } = await examine({ data, database })
        expect(findings.filter(({ severity }) => severity === 'error')).toEqual([])
      } finally {
        server.remove()
      }
    },
  )
})
