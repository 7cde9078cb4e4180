import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import Database from 'better-sqlite3'
import { type Kysely, sql } from 'kysely'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { openStore, StoreError } from '../index.ts'
import { migrations } from '../tables/migrations.ts'
import { note } from '../testing/devices.ts'
import { sqliteTables } from './dialect.ts'
import { openSqlite } from './engine.ts'
import { explainTrouble } from './trouble.ts'

let data: string

beforeEach(async () => {
  data = await mkdtemp(join(tmpdir(), 'shearline-trouble-'))
})
afterEach(async () => {
  await rm(data, { recursive: true, force: true })
})

describe('when the place fails', () => {
  test('STO-23 a full disk is said clearly, keeps what was acknowledged, and writing goes on when there is room', async (context) => {
    if (process.platform !== 'linux' || spawnSync('unshare', ['-rm', 'true']).status !== 0) {
      context.skip('needs Linux and unshare, to mount a small disk of its own')
    }
    const script = fileURLToPath(new URL('../testing/fill-disk.ts', import.meta.url))
    const command =
      'mount -t tmpfs -o size=4m tmpfs "$1" && exec "$2" --conditions=@shearline/source "$3" "$1"'
    const output = execFileSync(
      'unshare',
      ['-rm', 'sh', '-c', command, 'sh', data, process.execPath, script],
      {
        encoding: 'utf8',
      },
    )
    const told = JSON.parse(output)
    expect(told.codes).toEqual(['disk-full', 'disk-full'])
    expect(told.acknowledged).toBeGreaterThan(100)
    expect(told).toMatchObject({
      blobKept: false,
      keptWhileFull: told.acknowledged,
      after: told.acknowledged + 1,
      findings: [],
    })
  })

  test('STO-24 a database that another program holds is said to be locked, and nothing is written', async () => {
    const store = await openStore(data, { lockWaitMilliseconds: 200 })
    const holder = new Database(join(data, 'shearline.sqlite'))
    holder.exec('begin immediate')
    const error = await store.writeOwn([note('job-a', 'x')]).catch((thrown: unknown) => thrown)
    expect(error).toBeInstanceOf(StoreError)
    expect(error).toMatchObject({ code: 'locked' })
    // Reading goes on meanwhile.
    expect(await store.factsOfJob('job-a')).toEqual([])
    holder.exec('rollback')
    holder.close()
    expect(await store.writeOwn([note('job-a', 'x')])).toHaveLength(1)
    await store.close()
  })

  test('STO-24 a damaged database file is said to be damaged and is not touched', async () => {
    const file = join(data, 'shearline.sqlite')
    await writeFile(file, 'this is not a database, it only stands where one should be'.repeat(40))
    const before = await readFile(file)
    await expect(openStore(data)).rejects.toMatchObject({ code: 'damaged' })
    expect(Buffer.compare(await readFile(file), before)).toBe(0)
  })

  test('STO-24 a folder that cannot be one is said to be not writable', async () => {
    await writeFile(join(data, 'file'), 'x')
    await expect(openStore(join(data, 'file', 'data'))).rejects.toMatchObject({ code: 'not-writable' })
  })

  test('STO-24 a closed store says that it is closed', async () => {
    const store = await openStore(data)
    await store.close()
    await expect(store.jobs()).rejects.toMatchObject({ code: 'closed' })
    await expect(store.writeOwn([note('job-a', 'x')])).rejects.toMatchObject({ code: 'closed' })
  })

  test('STO-24 a blob whose file is gone is not said to be here', async () => {
    const store = await openStore(data)
    // SHA-256 of "abc": FIPS 180-4 example, as given in NIST's SHA256.pdf.
    const sha256 = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'
    await store.putBlob(
      sha256,
      'text/plain',
      (async function* () {
        yield Buffer.from('abc')
      })(),
    )
    const file = join(data, 'blobs', 'ba', sha256)
    expect(await readFile(file, 'utf8')).toBe('abc')
    await rm(file)
    expect(await store.blobEntry(sha256)).toBeNull()
    await expect(store.openBlob(sha256)).rejects.toMatchObject({ code: 'blob-missing' })
    await store.close()
  })

  test('an error that is none of the known ones is left as it is', () => {
    expect(explainTrouble(new RangeError('something else'), data)).toBeNull()
    expect(explainTrouble('a text', data)).toBeNull()
  })
})

describe('migrations', () => {
  const file = () => join(data, 'test.sqlite')
  const backups = () => join(data, 'backups')
  const first = migrations(sqliteTables)
  const second = { ...first, '0009-test': { up: (db: Kysely<unknown>) => addColumn(db) } }
  let opened = 0
  const open = (known: typeof first) =>
    openSqlite({
      file: file(),
      backups: backups(),
      lockWaitMilliseconds: 5000,
      clock: () => Date.UTC(2026, 10, 25) + opened++,
      migrations: known,
    })
  const addColumn = async (db: Kysely<unknown>) => {
    await db.schema.alterTable('settings').addColumn('note', 'text').execute()
  }

  test('STO-25 a database with content is copied before it is migrated, an empty one is not', async () => {
    const engine = await open(first)
    await sql`insert into settings (name, value, digest) values ('kept', 'yes', '')`.execute(engine.db)
    await engine.close()
    await expect(readdir(backups())).rejects.toThrow('ENOENT')

    await (await open(second)).close()
    const names = await readdir(backups())
    expect(names).toEqual([expect.stringMatching(/^before-0009-test-20261125T00000000\dZ\.sqlite$/)])
    const copy = new Database(join(backups(), names[0] ?? ''), { readonly: true })
    expect(copy.prepare('select * from settings').all()).toEqual([{ name: 'kept', value: 'yes', digest: '' }])
    copy.close()
    await (await open(second)).close()
    expect(await readdir(backups())).toHaveLength(1)
  })

  test('STO-25 two that come at once migrate once', async () => {
    await (await open(first)).close()
    const engines = await Promise.all([open(second), open(second)])
    for (const engine of engines) await engine.close()
    expect(await readdir(backups())).toHaveLength(1)
  })

  test('STO-25 a migration that fails leaves the database as it was', async () => {
    await (await open(first)).close()
    const failing = {
      ...second,
      '0010-fails': { up: async (db: Kysely<unknown>) => void (await sql`drop table nowhere`.execute(db)) },
    }
    await expect(open(failing)).rejects.toThrow('nowhere')
    const engine = await open(second)
    const { rows } = await sql`select name from kysely_migration order by name`.execute(engine.db)
    expect(rows).toEqual([
      { name: '0001-facts-and-blobs' },
      { name: '0002-digests-and-parts' },
      { name: '0003-receipts-and-erasures' },
      { name: '0009-test' },
    ])
    await engine.close()
  })

  test('STO-26 a database of a newer version is refused', async () => {
    await (await open(second)).close()
    await expect(open(first)).rejects.toMatchObject({ code: 'newer-database' })
  })
})
