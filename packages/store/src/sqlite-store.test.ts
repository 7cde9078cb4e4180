import { execFileSync } from 'node:child_process'
import { webcrypto } from 'node:crypto'
import { chmod, cp, mkdtemp, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Verifier, verifyFacts } from '@shearline/jobfile'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { chainBroken, examine, openStore, rotateKey, standingsOf } from './index.ts'
import { note } from './testing/devices.ts'
import { startWriter } from './testing/processes.ts'
import { storeCase } from './testing/store.case.ts'

let data: string

async function freshFolder(): Promise<string> {
  return await mkdtemp(join(tmpdir(), 'shearline-store-'))
}

storeCase('SQLite', async () => {
  const folder = await freshFolder()
  return {
    open: () => openStore(folder),
    backup: {
      file: join(folder, 'copy.sqlite'),
      factsIn: async (file, job) => {
        const copy = new Database(file, { readonly: true })
        const rows = copy.prepare('select fact from facts where job = ?').all(job)
        copy.close()
        return rows
      },
    },
    clear: () => rm(folder, { recursive: true }),
  }
})

beforeEach(async () => {
  data = await freshFolder()
})
afterEach(async () => {
  await rm(data, { recursive: true, force: true })
})

/** Names of the files under a folder in which some bytes stand. */
async function filesWith(folder: string, bytes: string): Promise<string[]> {
  const names = (await readdir(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
  const found = []
  for (const name of names) if ((await readFile(name)).includes(bytes)) found.push(name)
  return found
}

describe('deleting', () => {
  test('STO-29 leaves nothing of the content in any file of the directory, while a server has it open', async () => {
    const [store, server] = [await openStore(data), await openStore(data)]
    const secret = 'the spare hangs behind the meter'
    const written = []
    for (let i = 0; i < 60; i++)
      written.push(
        ...(await store.writeOwn([note('job-a', i === 7 ? secret : `note ${i} `.repeat(1 + (i % 40)))])),
      )
    expect(await server.factsOfJob('job-a')).toHaveLength(60)
    expect(await filesWith(data, secret)).not.toEqual([])
    const fact = written[7]?.id ?? ''
    await store.erase('job-a', { facts: [fact], blobs: [], documents: [] })
    expect(await filesWith(data, secret)).toEqual([])
    const [examination, facts] = [await examine({ data }), await server.factsOfJob('job-a')]
    expect(examination.findings).toEqual([])
    expect(facts.filter(({ body }) => 'erased' in body)).toHaveLength(1)
    await store.close()
    await server.close()
  })
})

describe('a rotated key', () => {
  const writer = { by: 'Robin', now: Date.UTC(2026, 10, 25, 12) }

  test('STO-33 is signed by both, the old one is gone, and an open server writes no more with it', async () => {
    const server = await openStore(data, { deviceName: 'Van 2' })
    await server.writeOwn([note('job-a', 'before')])
    const old = server.device.device
    const rotated = await rotateKey(data, {}, 'Yearly.', writer)
    expect(rotated).toMatchObject({ ok: true, old })
    await expect(server.writeOwn([note('job-a', 'late')])).rejects.toMatchObject({
      code: 'own-device-revoked',
    })
    await server.close()
    const again = await openStore(data)
    expect(rotated).toMatchObject({ device: again.device.device })
    expect(again.device.name).toBe('Van 2')
    await again.writeOwn([note('job-a', 'after')])
    const { devices, troubles } = await standingsOf(again)
    expect(troubles).toEqual([])
    expect(devices.get(old)).toMatchObject({ replaced: { by: again.device.device } })
    expect(await chainBroken(again, await again.factsOfJob('job-a'))).toBe(false)
    await again.close()
    expect((await readdir(data)).filter((name) => name.startsWith('device.')).sort()).toEqual([
      'device.key',
      'device.pub',
    ])
    expect((await examine({ data })).findings).toEqual([])
  })

  test('STO-33 that was recorded but not put in its place is put there by the next opening', async () => {
    await (await openStore(data)).close()
    const before = await readFile(join(data, 'device.key'))
    const rotated = await rotateKey(data, {}, 'Yearly.', writer)
    // As it is when the process ends between the fact and the renaming.
    await rename(join(data, 'device.key'), join(data, 'device.key.next'))
    await writeFile(join(data, 'device.key'), before, { mode: 0o600 })
    await rm(join(data, 'device.pub'))
    const store = await openStore(data)
    expect(rotated).toMatchObject({ ok: true, device: store.device.device })
    expect(await store.writeOwn([note('job-a', 'after')])).toHaveLength(1)
    await store.close()
  })
})

describe('the data directory', () => {
  test('STO-21 the own key is PKCS8, readable by its owner only, and the same after reopening', async () => {
    const store = await openStore(data, { deviceName: 'Van 2' })
    await store.close()
    const file = join(data, 'device.key')
    expect((await stat(file)).mode & 0o777).toBe(0o600)
    // openssl reads the key and derives the same public half (RFC 8410, PKCS8 of Ed25519).
    const text = execFileSync('openssl', ['pkey', '-in', file, '-pubout', '-outform', 'DER'])
    expect(Buffer.from(text.subarray(-32)).toString('base64url')).toBe(store.device.publicKey)
    await chmod(file, 0o644)
    const again = await openStore(data, { deviceName: 'Another name' })
    expect(again.device).toEqual(store.device)
    expect((await stat(file)).mode & 0o777).toBe(0o600)
    await again.close()
  })

  test('STO-21 stores opened at the same moment in an empty folder share one key and one database', async () => {
    const stores = await Promise.all([openStore(data), openStore(data), openStore(data)])
    expect(new Set(stores.map(({ device }) => device.device)).size).toBe(1)
    expect(await stores[0].devices()).toHaveLength(1)
    expect((await readdir(data)).filter((name) => name.endsWith('.key'))).toEqual(['device.key'])
    for (const store of stores) await store.close()
  })

  test('STO-21 a key file that holds no key says so and is not replaced', async () => {
    await writeFile(join(data, 'device.key'), 'not a key')
    await expect(openStore(data)).rejects.toMatchObject({ code: 'key-damaged' })
    expect(await readFile(join(data, 'device.key'), 'utf8')).toBe('not a key')
  })

  test('STO-13 after an earlier copy was put back, no number is written twice', async () => {
    const store = await openStore(data)
    await store.writeOwn([note('job-a', 'one')])
    await store.backupTo(join(data, 'earlier.sqlite'))
    const [two, three] = await store.writeOwn([note('job-a', 'two', 1), note('job-b', 'three', 2)])
    await store.close()
    for (const end of ['', '-wal', '-shm']) await rm(join(data, `shearline.sqlite${end}`), { force: true })
    await cp(join(data, 'earlier.sqlite'), join(data, 'shearline.sqlite'))

    const restored = await openStore(data)
    await restored.appendFacts([three], { from: 'bundle' })
    await expect(restored.writeOwn([note('job-a', 'again two')])).rejects.toMatchObject({
      code: 'own-chain-behind',
    })
    await restored.appendFacts([two], { from: 'bundle' })
    expect((await restored.writeOwn([note('job-a', 'four', 3)])).map(({ seq }) => seq)).toEqual([4])
    await restored.close()
  })
})

describe('two processes on one data directory', () => {
  test('STO-11 write one unforked chain between them', { timeout: 180_000 }, async () => {
    const store = await openStore(data)
    const writers = ['job-left', 'job-right'].map((job) => startWriter(data, job, 60))
    const heard = new Set<string>()
    store.onJobs((jobs) => {
      for (const job of jobs) heard.add(job)
    })
    for (let i = 0; i < 20; i++) await store.writeOwn([note('job-here', `${i}`, i)])
    for (const { ended } of writers) expect(await ended).toEqual({ code: 0, signal: null, errors: '' })
    const facts = (
      await Promise.all(['job-left', 'job-right', 'job-here'].map((job) => store.factsOfJob(job)))
    ).flat()
    expect(facts.map(({ seq }) => seq).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 140 }, (_, i) => i + 1),
    )
    const check = await verifyFacts(
      facts.map((fact) => ({ ...fact })),
      [store.device],
      new Verifier(webcrypto.subtle),
    )
    // Facts of three jobs are checked as one chain here, so only that finding may appear.
    expect(check.findings.filter(({ code }) => code !== 'other-job')).toEqual([])
    expect(check.linksRight).toBe(140)
    await expect.poll(() => [...heard].sort()).toEqual(['job-here', 'job-left', 'job-right'])
    await store.close()
  })

  test('STO-22 a writer killed in the middle of writing has lost nothing it had acknowledged', {
    timeout: 600_000,
  }, async () => {
    const acknowledged = new Map<string, number>()
    for (let round = 0; round < 6; round++) {
      const writer = startWriter(data, 'job-a', 100_000)
      await expect
        .poll(() => writer.acknowledged.size, { timeout: 90_000, interval: 5 })
        .toBeGreaterThan(round * 3)
      await new Promise((resolve) => setTimeout(resolve, 37 * round))
      writer.child.kill('SIGKILL')
      expect((await writer.ended).signal).toBe('SIGKILL')
      for (const [id, seq] of writer.acknowledged) acknowledged.set(id, seq)

      const store = await openStore(data)
      const facts = await store.factsOfJob('job-a')
      const times = Map.groupBy(facts, ({ id }) => id)
      for (const [id, seq] of acknowledged) expect(times.get(id)?.map((fact) => fact.seq)).toEqual([seq])
      const check = await verifyFacts(facts, [store.device], new Verifier(webcrypto.subtle))
      expect(check.findings).toEqual([])
      expect(check.linksRight).toBe(facts.length)
      // At most the one fact whose acknowledgement was cut off is there beyond the acknowledged ones.
      expect(facts.length - acknowledged.size).toBeLessThanOrEqual(round + 1)
      await store.close()
    }
    expect(acknowledged.size).toBeGreaterThan(50)
  })
})
