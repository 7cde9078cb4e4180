// biome-ignore-all lint/correctness/noNodejsModules: tests drive a real browser from Node
import { spawnSync } from 'node:child_process'
import { randomBytes } from 'node:crypto'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { newIdentity } from '@shearline/jobfile'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { noBrowser, serveAlone, switchOn } from '../testing/chromium.ts'
import { lookFor, tracesOf } from '../testing/traces.ts'

let bench: Awaited<ReturnType<typeof serveAlone>>
let folder = ''

async function openJob(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'New job' }).click()
  await page.getByLabel('Name of the job').fill('Green van, one key added')
  await page.getByLabel('Car, as the customer says it').fill('Van, green')
  await page.getByLabel('Where it stands').fill('Ferry landing')
  await page.getByRole('radio', { name: 'Add a key' }).check()
  await page.getByRole('radio', { name: 'fleet customer' }).check()
  await page.getByLabel('Your name').fill('R. Tamm')
  await page.getByRole('button', { name: 'Open the job' }).click()
  await page.getByRole('heading', { name: 'Green van, one key added' }).waitFor()
}

/** The sealed files and the vault facts of this browser, read past the bench. */
async function kept(
  page: Page,
): Promise<{ facts: { kind: string; body: Record<string, unknown> }[]; sealed: number[][] }> {
  return page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('shearline-bench')
      request.onsuccess = () => resolve(request.result)
      request.onerror = () => reject(request.error)
    })
    const all = <T>(store: string) =>
      new Promise<T[]>((resolve) => {
        const request = db.transaction(store).objectStore(store).getAll()
        request.onsuccess = () => resolve(request.result as T[])
      })
    const facts = await all<{ kind: string; body: Record<string, unknown> }>('facts')
    const blobs = await all<{ blob: Blob }>('blobs')
    const sealed = await Promise.all(
      blobs.map(async ({ blob }) => [...new Uint8Array(await blob.arrayBuffer())]),
    )
    return { facts, sealed }
  })
}

describe.skipIf(noBrowser !== null)(
  `the vault of the bench${noBrowser === null ? '' : ` (skipped: ${noBrowser})`}`,
  () => {
    beforeAll(async () => {
      bench = await serveAlone()
      folder = await mkdtemp(join(tmpdir(), 'shearline-vault-'))
    })

    afterAll(async () => {
      await bench?.close()
      if (folder !== '') await rm(folder, { recursive: true, force: true, maxRetries: 5 })
    })

    it('seals two equal reads, opens them with a reason, and leaves no trace of the secret or the key on the disk', {
      timeout: 300_000,
    }, async () => {
      const secret = randomBytes(4096)
      const { identity, recipient } = await newIdentity()
      // Chosen from a folder of their own: only the browser's profile is looked through.
      const reads = join(folder, 'reads')
      const profile = join(folder, 'profile')
      await Promise.all(
        [reads, profile].map((one) => import('node:fs/promises').then(({ mkdir }) => mkdir(one))),
      )
      await writeFile(join(reads, 'first.bin'), secret)
      await writeFile(join(reads, 'second.bin'), secret)
      const tablet = await switchOn(profile, bench.url)
      const { page } = tablet
      let sealedFile: Buffer
      try {
        await page.goto(`${bench.url}#/device`)
        await page.getByLabel('Public key').fill(identity)
        await page.getByLabel('Whose key it is').fill('office')
        await page.getByRole('button', { name: 'Add this key' }).click()
        await page.getByText('That is a private key.').waitFor()
        await page.getByLabel('Public key').fill(recipient)
        await page.getByRole('button', { name: 'Add this key' }).click()
        await page.getByText(recipient).waitFor()

        await page.goto(bench.url)
        await openJob(page)
        await page.locator('#chapter-backup button[aria-expanded=false]').click()
        const chapter = page.locator('#chapter-backup')
        await chapter.getByRole('radio', { name: 'Read twice, seal it' }).check()
        await chapter.getByLabel('What was read').fill('body unit')
        await chapter.getByLabel('Choose the first read').setInputFiles(join(reads, 'first.bin'))
        await chapter.getByLabel('Choose the second read').setInputFiles(join(reads, 'second.bin'))
        await chapter.getByRole('button', { name: 'Compare and seal' }).click()
        await chapter.getByText('The two reads are equal.').waitFor()

        await chapter.getByText('Open it').click()
        await chapter.getByLabel('Why it is opened').fill('write it back after a failed session')
        await chapter.getByLabel('Private key', { exact: true }).fill(identity)
        await chapter.getByRole('button', { name: 'Record the reason and open' }).click()
        await chapter.getByText('It is the one that was recorded').waitFor()
        const [download] = await Promise.all([
          page.waitForEvent('download'),
          chapter.getByRole('link', { name: 'Save the opened file' }).click(),
        ])
        const stream = await download.createReadStream()
        const pieces: Buffer[] = []
        for await (const piece of stream) pieces.push(piece as Buffer)
        expect(Buffer.concat(pieces).equals(secret)).toBe(true)
        await download.delete()

        const { facts, sealed } = await kept(page)
        expect(facts.map(({ kind }) => kind).filter((kind) => /secret|backup/.test(kind))).toEqual([
          'secret-sealed',
          'backup-proven',
          'secret-opened',
        ])
        expect(facts.find(({ kind }) => kind === 'secret-sealed')?.body).toMatchObject({
          recipients: [recipient],
          secretBytes: secret.length,
        })
        expect(sealed).toHaveLength(1)
        sealedFile = Buffer.from(sealed[0] ?? [])
      } finally {
        await tablet.kill()
      }
      const traces = [...tracesOf(secret), Buffer.from(identity), Buffer.from(identity.slice(20), 'utf16le')]
      const { found, files } = lookFor(traces, profile)
      expect(files).toBeGreaterThan(20)
      expect(found).toEqual([])
      // The same search finds what is there: the public key stands in the profile, the secret in the files read.
      expect(lookFor([Buffer.from(recipient), Buffer.from(recipient, 'utf16le')], profile).found).not.toEqual(
        [],
      )
      expect(lookFor(traces, reads).found).toHaveLength(2)

      if (spawnSync('age', ['--version']).error === undefined) {
        await writeFile(join(folder, 'key'), identity)
        await writeFile(join(folder, 'sealed.age'), sealedFile)
        const opened = spawnSync('age', ['-d', '-i', join(folder, 'key'), join(folder, 'sealed.age')]).stdout
        expect(
          opened.subarray(opened.indexOf(0x0a) + 1).equals(await readFile(join(reads, 'first.bin'))),
        ).toBe(true)
      }
    })
  },
)
