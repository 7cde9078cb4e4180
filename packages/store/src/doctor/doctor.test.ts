import { cp, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { type Examination, enrolDevice, examine, openStore, revoke } from '../index.ts'
import { note, OtherDevice } from '../testing/devices.ts'
import { fill, fillLightly } from '../testing/filled.ts'
import { quickFolder } from '../testing/folders.ts'

let folder: string
let sound: string
/** Without a document: proving one takes longer than everything else together. */
let light: string
let data: string
let round = 0

beforeAll(async () => {
  folder = await mkdtemp(join(quickFolder, 'shearline-doctor-'))
  sound = join(folder, 'sound')
  const store = await openStore(sound)
  await fill(store)
  await store.close()
  light = join(folder, 'light')
  const other = await openStore(light)
  await fillLightly(other)
  await other.close()
})
afterAll(async () => {
  await rm(folder, { recursive: true, force: true })
})
beforeEach(async () => {
  data = await copyOf(light)
})

async function copyOf(from: string): Promise<string> {
  const copy = join(folder, `copy-${round++}`)
  await cp(from, copy, { recursive: true })
  return copy
}

/** Flips one bit of a file. */
async function flip(file: string, byte: number, bit: number): Promise<void> {
  const bytes = await readFile(file)
  bytes[byte] = (bytes[byte] ?? 0) ^ (1 << bit)
  await writeFile(file, bytes, { mode: 0o600 })
}

function errors({ findings }: Examination) {
  return findings.filter(({ severity }) => severity === 'error')
}

describe('a record that is as it was kept', () => {
  test('DOC-01 is sound, and everything in it was looked at', async () => {
    data = await copyOf(sound)
    const examination = await examine({ data })
    expect(examination.findings).toEqual([])
    expect(examination.sound).toBe(true)
    expect(examination.looked).toMatchObject({
      facts: 53,
      signatures: 53,
      links: 53,
      devices: 2,
      seals: 1,
      documents: 1,
      blobs: 4,
    })
  })

  test('DOC-02 is examined while it is written to', async () => {
    const store = await openStore(data)
    let writing = true
    const writer = (async () => {
      for (let i = 0; writing; i++) {
        await store.writeOwn([note('job-busy', `${i}`)])
        await store.putSetting('count', `${i}`)
      }
    })()
    expect(errors(await examine({ data }))).toEqual([])
    writing = false
    await writer
    await store.close()
  })

  test('DOC-03 a folder without a record is said to be none, and none is made', async () => {
    await expect(examine({ data: join(folder, 'nowhere') })).rejects.toMatchObject({ code: 'no-record' })
    await expect(stat(join(folder, 'nowhere'))).rejects.toThrow('ENOENT')
  })
})

describe('a flipped bit', () => {
  test('DOC-04 in the text of a fact is found and the fact is named', async () => {
    const file = join(data, 'shearline.sqlite')
    const bytes = await readFile(file)
    const at = bytes.indexOf('"text":"note 7"')
    expect(at).toBeGreaterThan(0)
    await flip(file, at + '"text":"no'.length, 0)
    const found = errors(await examine({ data }))
    expect(found.map(({ code }) => code)).toContain('signature-wrong')
    for (const { where, doNext } of found) {
      expect(where).toMatch(/^fact 7 of dev-[0-9a-f]{16} \(note-written, arrival 7\)$/)
      expect(doNext).toContain('restore')
    }
  })

  test('DOC-04 anywhere in the database file is found, or changes nothing that is kept', {
    timeout: 300_000,
  }, async () => {
    const file = join(data, 'shearline.sqlite')
    const { size } = await stat(file)
    const rows = contents(file)
    let found = 0
    let random = 4077
    const rounds = 80
    for (let i = 0; i < rounds; i++) {
      random = (Math.imul(random, 1664525) + 1013904223) >>> 0
      const [byte, bit] = [Math.floor((random / 2 ** 32) * size), i % 8]
      await flip(file, byte, bit)
      const examination = await examine({ data })
      if (examination.sound) expect(contents(file), `byte ${byte}, bit ${bit}`).toEqual(rows)
      else {
        found++
        for (const { where } of errors(examination)) expect(where.length).toBeGreaterThan(3)
      }
      await flip(file, byte, bit)
    }
    // What is left are bytes of pages that hold nothing.
    expect(found).toBeGreaterThan(rounds / 4)
    expect((await examine({ data })).findings).toEqual([])
  })

  test('DOC-05 in a blob is found and the blob is named', async () => {
    const blobs = join(data, 'blobs')
    let looked = 0
    for (const place of await readdir(blobs)) {
      if (place === 'arriving') continue
      for (const sha256 of await readdir(join(blobs, place))) {
        const file = join(blobs, place, sha256)
        const { size } = await stat(file)
        if (size === 0) continue
        for (const byte of [0, size - 1]) {
          await flip(file, byte, byte % 8)
          const found = errors(await examine({ data }))
          expect(found[0]).toMatchObject({ code: 'blob-changed', where: `blob ${sha256}` })
          await flip(file, byte, byte % 8)
          looked++
        }
      }
    }
    expect(looked).toBe(4)
  })

  test('DOC-06 in a sealed document is found, and the part of the document is named', async () => {
    data = await copyOf(sound)
    const database = new Database(join(data, 'shearline.sqlite'), { readonly: true })
    const { blob } = database.prepare('select blob from documents').get() as { blob: string }
    database.close()
    const file = join(data, 'blobs', blob.slice(0, 2), blob)
    const at = (await readFile(file)).indexOf('The gate is open until five.')
    expect(at).toBeGreaterThan(0)
    await flip(file, at, 1)
    const found = errors(await examine({ data })).filter(({ code }) => code === 'document-broken')
    expect(found.length).toBeGreaterThan(0)
    expect(found[0]?.where).toMatch(/^document of job job-sealed, seal [0-9a-f-]{36}: .+/)
    expect(found.some(({ where }) => where.includes('byte '))).toBe(true)
  })

  test('DOC-07 anywhere in the key file is found, and the store does not open as another device', async () => {
    const empty = join(folder, 'empty')
    await (await openStore(empty)).close()
    const file = join(empty, 'device.key')
    const { size } = await stat(file)
    for (let byte = 0; byte < size; byte++) {
      await flip(file, byte, byte % 7)
      const found = errors(await examine({ data: empty }))
      expect(
        found.map(({ code }) => code),
        `byte ${byte}`,
      ).toEqual(['key-damaged'])
      await flip(file, byte, byte % 7)
    }
    // A bit of the key itself, so that what is there is a key, but another one.
    await flip(file, size - 35, 1)
    await expect(openStore(empty)).rejects.toMatchObject({ code: 'key-damaged' })
  })
})

describe('what else can be wrong', () => {
  function change(...statements: readonly string[]): void {
    const database = new Database(join(data, 'shearline.sqlite'))
    for (const statement of statements) database.exec(statement)
    database.close()
  }

  const changes = [
    [
      'a fact that was taken out',
      "delete from facts where seq = 9 and kind = 'note-written'",
      'chain-end-wrong',
    ],
    ['a fact moved to another job', "update facts set job = 'job-x' where arrival = 4", 'fact-changed'],
    ['an end of a chain set back', 'update devices set head_seq = head_seq - 1', 'chain-end-wrong'],
    ['a device that was renamed', "update devices set name = 'Somebody'", 'device-changed'],
    ['a media type that was changed', "update blobs set media_type = 'text/html'", 'blob-row-changed'],
    [
      'a time of receipt that was changed',
      "update facts set received = '2001-01-01T00:00:00.000Z' where arrival = 5",
      'receipt-changed',
    ],
    ['a setting that was changed', "update settings set value = 'no'", 'setting-changed'],
    [
      'a fact written otherwise',
      'update facts set fact = replace(fact, \'"at":\', \' "at":\') where arrival = 3',
      'fact-changed',
    ],
  ] as const
  for (const [title, statement, code] of changes) {
    test(`DOC-08 ${title} is found`, async () => {
      change(statement)
      const found = errors(await examine({ data }))
      expect(found.map((one) => one.code)).toContain(code)
    })
  }

  test('DOC-08 a document said to be of another job is found', async () => {
    data = await copyOf(sound)
    change("update documents set job = 'job-a'")
    expect(errors(await examine({ data })).map(({ code }) => code)).toContain('document-row-changed')
  })

  test('DOC-08 a fact before a seal that was taken out with its links made good is found by the seal', async () => {
    data = await copyOf(sound)
    const database = new Database(join(data, 'shearline.sqlite'))
    database.exec("delete from facts where job = 'job-sealed' and kind = 'note-written'")
    database.close()
    const found = errors(await examine({ data }))
    expect(found).toContainEqual(expect.objectContaining({ code: 'seal-broken' }))
    expect(found.find(({ code }) => code === 'seal-broken')?.where).toContain('job-sealed')
  })

  test('DOC-09 a blob whose file is gone, and a file that no row lists', async () => {
    const [place = ''] = (await readdir(join(data, 'blobs'))).filter((name) => name !== 'arriving')
    const [sha256 = ''] = await readdir(join(data, 'blobs', place))
    await rm(join(data, 'blobs', place, sha256))
    await writeFile(join(data, 'blobs', place, '0'.repeat(64)), 'x')
    const { findings } = await examine({ data })
    expect(findings).toContainEqual(
      expect.objectContaining({ code: 'blob-missing', where: `blob ${sha256}` }),
    )
    expect(findings).toContainEqual(expect.objectContaining({ code: 'blob-not-listed', severity: 'note' }))
  })

  test('DOC-08 what is remembered of a deleted document and was changed is found', async () => {
    data = await copyOf(sound)
    const store = await openStore(data)
    const seal = (await store.documentsOf('job-sealed'))[0]?.seal ?? ''
    await store.erase('job-sealed', { facts: [], blobs: [], documents: [seal] })
    await store.close()
    expect((await examine({ data })).findings).toEqual([])
    change("update erased_documents set job = 'job-a'")
    expect(errors(await examine({ data })).map(({ code }) => code)).toEqual(['document-row-changed'])
  })

  test('DOC-11 facts that a revocation made untrustworthy are named, and what is kept is still sound', async () => {
    const store = await openStore(data)
    const tablet = await OtherDevice.make()
    const writer = { by: 'Robin', now: Date.UTC(2026, 10, 25, 12) }
    await enrolDevice(store, tablet.device, writer)
    await store.appendFacts(await tablet.writeNotes('job-c', 3), { from: 'device' })
    const { device } = tablet.device
    await revoke(store, { device, because: 'retired', reason: 'Sold.', after: 2 }, writer)
    await store.close()
    const { sound: whole, findings } = await examine({ data })
    expect(whole).toBe(true)
    expect(findings).toMatchObject([
      { code: 'not-trusted', severity: 'warning', where: 'job job-c, fact 3 (note-written)' },
    ])
  })

  test('DOC-10 a database of a newer version is named and not read further', async () => {
    change("insert into kysely_migration (name, timestamp) values ('9999-later', '2030')")
    const { findings } = await examine({ data })
    expect(findings.map(({ code }) => code)).toEqual(['schema-newer'])
  })
})

/** Every row of every table, read without an index. */
function contents(file: string): unknown {
  const database = new Database(file, { readonly: true })
  try {
    return ['devices', 'facts', 'blobs', 'documents', 'erased_documents', 'settings'].map((table) =>
      database.prepare(`select * from ${table} not indexed order by +1, 2, 3`).all(),
    )
  } finally {
    database.close()
  }
}
