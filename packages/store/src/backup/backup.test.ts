import { execFileSync } from 'node:child_process'
import { cp, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { backUp, openStore, restore, type Store } from '../index.ts'
import { note } from '../testing/devices.ts'
import { fill } from '../testing/filled.ts'
import { quickFolder } from '../testing/folders.ts'
import { PostgresServer, postgresAbsent, postgresPrograms } from '../testing/postgres.ts'

let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(quickFolder, 'shearline-backup-'))
})
afterAll(async () => {
  await rm(folder, { recursive: true, force: true })
})

const jobs = ['job-a', 'job-b', 'job-sealed'] as const

/** What a store says of everything it keeps, for comparing two. */
async function said(store: Store): Promise<unknown> {
  const facts = await Promise.all(jobs.map((job) => store.factsOfJob(job)))
  return {
    facts,
    jobs: await store.jobs(),
    documents: await store.documentsOf('job-sealed'),
    demo: await store.setting('demo'),
  }
}

describe('a backup of a data directory', () => {
  test('BAK-01 is made while others write, is of one instant, and sha256sum finds it whole', async () => {
    const data = join(folder, 'data')
    const store = await openStore(data)
    await fill(store)
    let writing = true
    const writer = (async () => {
      for (let i = 0; writing; i++) await store.writeOwn([note('job-busy', `${i}`), note('job-busy', `${i}`)])
    })()
    const made = await backUp({ data }, join(folder, 'backup'))
    writing = false
    await writer
    expect(made.examination.findings).toEqual([])
    // Pairs are written in one transaction.
    const copy = await openStore(await copied('backup'))
    expect((await copy.factsOfJob('job-busy')).length % 2).toBe(0)
    await copy.close()
    // GNU coreutils reads the manifest.
    const out = execFileSync('env', ['sha256sum', '--check', 'MANIFEST.sha256'], {
      cwd: join(folder, 'backup'),
      encoding: 'utf8',
    })
    expect(out.trim().split('\n')).toHaveLength(made.files)
    expect((await stat(join(folder, 'backup', 'device.key'))).mode & 0o777).toBe(0o600)
    await store.close()
  })

  test('BAK-02 is restored with everything in it, as a new device unless told otherwise', async () => {
    const store = await openStore(join(folder, 'data'))
    const done = await restore(join(folder, 'backup'), { data: join(folder, 'new') })
    expect(done).toMatchObject({ restored: true, examination: { sound: true } })
    const again = await openStore(join(folder, 'new'))
    expect(again.device.device).not.toBe(store.device.device)
    expect(await again.factsOfJob('job-sealed')).toEqual(await store.factsOfJob('job-sealed'))
    expect(await again.documentsOf('job-sealed')).toEqual(await store.documentsOf('job-sealed'))
    await again.close()
    await restore(join(folder, 'backup'), { data: join(folder, 'same') }, { sameDevice: true })
    const same = await openStore(join(folder, 'same'))
    expect(same.device).toEqual(store.device)
    await same.close()
    await store.close()
  })

  test('BAK-03 goes into nothing that holds anything, and neither does a restore', async () => {
    const data = join(folder, 'data')
    await expect(backUp({ data }, join(folder, 'backup'))).rejects.toMatchObject({ code: 'not-empty' })
    const into = { data }
    await expect(restore(join(folder, 'backup'), into)).rejects.toMatchObject({ code: 'not-empty' })
    await expect(backUp({ data: join(folder, 'none') }, join(folder, 'b2'))).rejects.toMatchObject({
      code: 'no-record',
    })
  })

  test('BAK-04 a bit that flipped in any of its files is found, and nothing is restored', async () => {
    const names = (await readdir(join(folder, 'backup'), { recursive: true, withFileTypes: true }))
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
    expect(names.length).toBeGreaterThan(6)
    for (const name of names) {
      const bytes = await readFile(name)
      if (bytes.length === 0) continue
      const at = bytes.length >> 1
      bytes[at] = (bytes[at] ?? 0) ^ 4
      await writeFile(name, bytes)
      const done = await restore(join(folder, 'backup'), { data: join(folder, 'never') })
      expect(done, name).toMatchObject({ restored: false })
      expect(done.findings.length, name).toBeGreaterThan(0)
      bytes[at] = (bytes[at] ?? 0) ^ 4
      await writeFile(name, bytes)
    }
    await expect(stat(join(folder, 'never'))).rejects.toThrow('ENOENT')
    await rm(join(folder, 'backup', 'MANIFEST.sha256'))
    await expect(restore(join(folder, 'backup'), { data: join(folder, 'never') })).rejects.toMatchObject({
      code: 'backup-broken',
    })
  })
})

const absent = postgresPrograms === null
describe.skipIf(absent)(absent ? postgresAbsent : 'a backup of PostgreSQL', () => {
  let server: PostgresServer
  beforeAll(() => {
    server = new PostgresServer()
  })
  afterAll(() => server.remove())

  test('BAK-05 goes from PostgreSQL into a folder, from there into another database, and stays the same', async () => {
    const database = await server.makeDatabase()
    const store = await openStore(join(folder, 'firm'), { database })
    await fill(store)
    const made = await backUp({ data: join(folder, 'firm'), database }, join(folder, 'firm-backup'))
    expect(made.examination.findings).toEqual([])

    const other = await server.makeDatabase()
    const done = await restore(join(folder, 'firm-backup'), { database: other })
    expect(done.findings.filter(({ severity }) => severity === 'error')).toEqual([])
    expect(done).toMatchObject({ restored: true, examination: { looked: { blobs: 4, documents: 1 } } })
    await expect(restore(join(folder, 'firm-backup'), { database: other })).rejects.toMatchObject({
      code: 'not-empty',
    })
    const again = await openStore(join(folder, 'firm-2'), { database: other })
    expect(await said(again)).toEqual(await said(store))
    // Arrivals go on after those that were restored.
    await again.writeOwn([note('job-a', 'after')])
    expect(await again.factsOfJob('job-a')).toHaveLength(31)
    await again.close()

    await restore(join(folder, 'firm-backup'), { data: join(folder, 'alone') })
    const alone = await openStore(join(folder, 'alone'))
    expect(await said(alone)).toEqual(await said(store))
    await alone.close()
    await store.close()
  })
})

async function copied(name: string): Promise<string> {
  await cp(join(folder, name), join(folder, `${name}-copy`), { recursive: true })
  return join(folder, `${name}-copy`)
}
