import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { type Kysely, sql } from 'kysely'
import pg from 'pg'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { examine, openStore } from './index.ts'
import { postgresTables } from './postgres/connection.ts'
import { openPostgres } from './postgres/index.ts'
import { migrations } from './tables/migrations.ts'
import { note } from './testing/devices.ts'
import { fillLightly } from './testing/filled.ts'
import { PostgresServer, postgresAbsent, postgresPrograms } from './testing/postgres.ts'
import { storeCase } from './testing/store.case.ts'

const absent = postgresPrograms === null
let server: PostgresServer

describe.skipIf(absent)(absent ? postgresAbsent : 'a real PostgreSQL', () => {
  let folder: string
  let url: string

  beforeAll(() => {
    server = new PostgresServer()
  })
  afterAll(() => server.remove())
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'shearline-firm-'))
    url = await server.makeDatabase()
  })
  afterEach(async () => {
    await rm(folder, { recursive: true, force: true })
  })

  storeCase('PostgreSQL', async () => {
    const own = await mkdtemp(join(tmpdir(), 'shearline-firm-'))
    const database = await server.makeDatabase()
    const file = join(own, 'copy.sqlite')
    return {
      open: () => openStore(join(own, 'data'), { database }),
      backup: {
        file,
        factsIn: async (from, job) => {
          const copy = new Database(from, { readonly: true })
          const rows = copy.prepare('select fact from facts where job = ?').all(job)
          copy.close()
          return rows
        },
      },
      clear: () => rm(own, { recursive: true, force: true }),
    }
  })

  describe('servers that share only the database', () => {
    test("STO-11 have a key each, hear each other, and take one device's chain without a fork", async () => {
      const stores = await Promise.all(
        ['one', 'two'].map((name) => openStore(join(folder, name), { database: url, deviceName: name })),
      )
      const [one, two] = stores
      if (one === undefined || two === undefined) throw new Error('two were opened')
      expect(one.device.device).not.toBe(two.device.device)
      const heard: string[] = []
      one.onJobs((jobs) => heard.push(...jobs))
      await Promise.all(
        stores.flatMap((store) =>
          Array.from({ length: 20 }, (_, i) => store.writeOwn([note('job-a', `${i}`, i)])),
        ),
      )
      await two.writeOwn([note('job-there', 'x')])
      expect(await one.factsOfJob('job-a')).toHaveLength(40)
      await expect.poll(() => heard).toContain('job-there')
      await Promise.all(stores.map((store) => store.close()))
    })

    test('STO-19 a listener that lost its line hears afterwards of what arrived meanwhile', async () => {
      const one = await openStore(join(folder, 'one'), { database: url })
      const two = await openStore(join(folder, 'two'), { database: url })
      const heard: string[] = []
      one.onJobs((jobs) => heard.push(...jobs))
      const admin = new pg.Client({ connectionString: url })
      await admin.connect()
      await admin.query(`select pg_terminate_backend(pid) from pg_stat_activity
        where datname = current_database() and query like 'listen%'`)
      await two.writeOwn([note('job-meanwhile', 'x')])
      await expect.poll(() => heard).toContain('job-meanwhile')
      await admin.end()
      await one.close()
      await two.close()
    })
  })

  describe('when the place fails', () => {
    test('STO-24 rows that another program holds are said to be locked, and nothing is written', async () => {
      const store = await openStore(join(folder, 'one'), { database: url, lockWaitMilliseconds: 200 })
      const holder = new pg.Client({ connectionString: url })
      await holder.connect()
      await holder.query('begin')
      await holder.query('select * from devices for update')
      await expect(store.writeOwn([note('job-a', 'x')])).rejects.toMatchObject({ code: 'locked' })
      expect(await store.factsOfJob('job-a')).toEqual([])
      await holder.query('rollback')
      await holder.end()
      expect(await store.writeOwn([note('job-a', 'x')])).toHaveLength(1)
      await store.close()
    })

    test('STO-24 a server that stopped is said to be out of reach, and the store goes on when it is back', async () => {
      const store = await openStore(join(folder, 'one'), { database: url })
      await store.writeOwn([note('job-a', 'before')])
      server.stop('immediate')
      try {
        await expect(store.writeOwn([note('job-a', 'x')])).rejects.toMatchObject({ code: 'unreachable' })
        await expect(openStore(join(folder, 'two'), { database: url })).rejects.toMatchObject({
          code: 'unreachable',
        })
      } finally {
        server.start()
      }
      expect(await store.writeOwn([note('job-a', 'after')])).toHaveLength(1)
      expect(await store.factsOfJob('job-a')).toHaveLength(2)
      await store.close()
    })

    test('STO-24 a database that is not there says so', async () => {
      await expect(openStore(folder, { database: server.url('nowhere') })).rejects.toMatchObject({
        code: 'unreachable',
      })
    })
  })

  describe('the doctor', () => {
    test('DOC-08 finds a fact that was changed in its table, and names it', async () => {
      const data = join(folder, 'one')
      const store = await openStore(data, { database: url })
      await fillLightly(store)
      const before = await examine({ data, database: url })
      expect(before).toMatchObject({ sound: true, looked: { facts: 50, signatures: 50, blobs: 3 } })
      const admin = new pg.Client({ connectionString: url })
      await admin.connect()
      await admin.query(`update facts set fact = replace(fact, 'note 7"', 'note 8"') where arrival = 7`)
      await admin.query(`update blob_parts set bytes = set_byte(bytes, 9, 1) where part = 2`)
      await admin.end()
      const { findings } = await examine({ data, database: url })
      const codes = findings.filter(({ severity }) => severity === 'error').map(({ code }) => code)
      expect(codes).toEqual(['fact-changed', 'signature-wrong', 'blob-changed'])
      expect(findings.find(({ code }) => code === 'signature-wrong')?.where).toContain('arrival 7')
      await store.close()
    })

    test("DOC-04 finds a bit that flipped in the server's files, and names the page", async () => {
      const data = join(folder, 'one')
      const store = await openStore(data, { database: url })
      await fillLightly(store)
      await store.close()
      const admin = new pg.Client({ connectionString: url })
      await admin.connect()
      const { rows } = await admin.query<{ path: string }>(`select pg_relation_filepath('facts') as path`)
      await admin.query('checkpoint')
      await admin.end()
      server.stop()
      const file = join(server.data, rows[0]?.path ?? '')
      const bytes = await readFile(file)
      const at = bytes.indexOf('note 7')
      expect(at).toBeGreaterThan(0)
      bytes[at] = (bytes[at] ?? 0) ^ 1
      await writeFile(file, bytes)
      server.start()
      const { findings } = await examine({ data, database: url })
      const found = findings.find(({ code }) => code === 'database-unreadable')
      expect(found).toMatchObject({ severity: 'error', where: 'table facts' })
      expect(found?.what).toMatch(/invalid page in block \d+/)
    })
  })

  describe('migrations', () => {
    const first = migrations(postgresTables)
    const second = {
      ...first,
      '0009-test': {
        up: async (db: Kysely<unknown>) => {
          await db.schema.alterTable('settings').addColumn('note', 'text').execute()
        },
      },
    }
    const open = (known: typeof first) =>
      openPostgres({
        url,
        backups: join(folder, 'backups'),
        lockWaitMilliseconds: 5000,
        clock: () => Date.UTC(2026, 10, 25),
        migrations: known,
      })

    test('STO-25 a database with content is dumped before it is migrated, by two that come at once only once', async () => {
      await (await open(first)).close()
      await expect(readdir(join(folder, 'backups'))).rejects.toThrow('ENOENT')
      const engines = await Promise.all([open(second), open(second)])
      const { rows } = await sql`select note from settings`.execute(engines[0].db)
      expect(rows).toEqual([])
      for (const engine of engines) await engine.close()
      expect(await readdir(join(folder, 'backups'))).toEqual(['before-0009-test-20261125T000000000Z.dump'])
    })

    test('STO-26 a database of a newer version is refused', async () => {
      await (await open(second)).close()
      await expect(open(first)).rejects.toMatchObject({ code: 'newer-database' })
    })
  })
})
