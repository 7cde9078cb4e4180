import { createHash, randomBytes } from 'node:crypto'
import { appendFileSync, cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { compareFacts, factHash, foldJob, type JobState } from '@shearline/jobfile'
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { openChapter, part } from '../support/by-hand.ts'
import { shearline } from '../support/shearline.ts'
import {
  benchFolder,
  cannotRun,
  keptIn,
  Office,
  openTablet,
  untilKept,
  untilSent,
} from '../support/tablets.ts'
import { proveVan, scanVan, sealVan, settleVan, teachVan } from '../support/van-job.ts'

const folder = mkdtempSync(join(tmpdir(), 'shearline-offline-'))
const profile = join(folder, 'profile')
const bench = join(folder, 'bench')
const office = new Office(bench)
let context: BrowserContext
let page: Page
/** What went wrong inside the page, as the browser says it. */
const faults: string[] = []

async function switchOn(): Promise<void> {
  context = await openTablet(profile)
  page = context.pages()[0] ?? (await context.newPage())
  page.on('pageerror', (error) => faults.push(error.message))
  await page.goto(office.url)
}

/** The job folded from what the browser keeps, whatever the server knows. */
async function standing(): Promise<JobState> {
  const { facts } = await keptIn(page)
  return foldJob(
    'demo-van',
    facts.filter((fact) => fact.job === 'demo-van'),
  )
}

/** Opens a job by hand, as a technician would when the call comes in. */
async function openNewJob(): Promise<void> {
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

async function toBoard(): Promise<void> {
  await page.evaluate(() => {
    location.hash = '#/'
  })
  await page.getByText('Small van, five keys stored').waitFor()
}

describe.skipIf(cannotRun !== null)(
  `the bench without a server${cannotRun === null ? '' : ` (skipped: ${cannotRun})`}`,
  () => {
    beforeAll(async () => {
      // A copy, so that a newer version can be put in its place.
      cpSync(benchFolder, bench, { recursive: true })
      await office.start({ demo: true })
      await switchOn()
    })
    // A test that failed without a server must not take the next ones with it.
    beforeEach(async () => {
      if (!office.running) await office.start()
    })
    afterAll(async () => {
      await context?.close()
      await office.close()
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
    })

    it('does the whole job with the server gone after the first load, and sends all of it later', async () => {
      await page.getByText('Small van, five keys stored').waitFor()
      await untilKept(page)
      // Every job came along, though none was opened here.
      const jobs = async () => [...new Set((await keptIn(page)).facts.map((fact) => fact.job))].sort()
      await expect.poll(jobs).toEqual(['demo-estate', 'demo-saloon', 'demo-van'])

      await office.kill()
      await page.reload()
      await page.getByText('Small van, five keys stored').waitFor()
      await openNewJob()
      await toBoard()
      // The opening, and the rules it works by.
      await page.getByText('2 entries saved here, not sent yet').waitFor()
      await page.getByText('Small van, five keys stored').click()
      const van = { page, standing }
      await teachVan(van, false)
      await proveVan(van)
      await scanVan(van, join(folder, 'session.log'))
      await settleVan(van)
      await sealVan(van)
      await page.getByText('The document is saved on this device and not sent yet.').waitFor()
      await page.getByRole('button', { name: 'Check it on this device' }).click()
      await page.getByText(/^Checked here: it holds\./).waitFor()

      // The tablet is switched off and on; the server is still gone.
      await context.close()
      await switchOn()
      await page.getByText('Green van, one key added').waitFor()
      await page.getByText('Small van, five keys stored').click()
      await openChapter(page, 'handover')
      const download = page.waitForEvent('download')
      await page.getByRole('link', { name: 'Save the document as a file' }).click()
      const file = join(folder, 'handover.pdf')
      await (await download).saveAs(file)
      const proven = shearline(['verify', file, '--json'])
      expect([proven.code, JSON.parse(proven.out).findings]).toEqual([0, []])
      await expect.poll(async () => (await keptIn(page)).outbox.length).toBeGreaterThan(20)
      await expect.poll(async () => (await keptIn(page)).blobs.filter((blob) => !blob.sent)).toHaveLength(2)

      await office.start()
      await page.getByText('Saved, all sent').waitFor({ timeout: 90_000 })
      await page.getByText('The document is saved on this device and sent.').waitFor()
      await untilSent(page)
      const after = await keptIn(page)
      for (const job of await jobs()) {
        const { facts } = await office.ask<{ facts: Parameters<typeof factHash>[0][] }>(
          `api/jobs/${job}/facts`,
        )
        const own = after.facts.filter((fact) => fact.job === job).sort(compareFacts)
        expect(facts.map(factHash), job).toEqual(own.map(factHash))
      }
      for (const { sha256 } of after.blobs)
        expect((await fetch(`${office.url}api/blobs/${sha256}`, { method: 'HEAD' })).status).toBe(200)

      // The same document, byte for byte; and the record the server gives out has the hash the pages print.
      const sent = new Uint8Array(
        await (await fetch(`${office.url}api/jobs/demo-van/document`)).arrayBuffer(),
      )
      expect(createHash('sha256').update(sent).digest('hex')).toBe(after.documents[0]?.sha256)
      writeFileSync(file, sent)
      expect(shearline(['verify', file, '--json']).code).toBe(0)
      expect(faults).toEqual([])
    })

    it('keeps the bench itself in its cache and nothing the server answered', async () => {
      const cached = await page.evaluate(async () => {
        const addresses: string[] = []
        for (const name of await caches.keys())
          for (const request of await (await caches.open(name)).keys()) addresses.push(request.url)
        return addresses
      })
      expect(cached.length).toBeGreaterThan(15)
      expect(cached.filter((address) => address.includes('/api'))).toEqual([])
      for (const kind of [/index\.html/, /\.worker-/, /\.woff2/, /DejaVuSans-/, /JobPage-.*\.js/])
        expect(cached.filter((address) => kind.test(address)).length, String(kind)).toBeGreaterThan(0)
    })

    it('sends a large recording on from where it stopped when the server was killed in the middle', async () => {
      const bytes = randomBytes(1 << 20)
      const repeated = 24
      const hash = createHash('sha256')
      for (let times = 0; times < repeated; times++) hash.update(bytes)
      const sha256 = hash.digest('hex')
      /** Where each part that arrived began, and the instant it was sent off, milliseconds. */
      const parts: { at: number; sentAt: number }[] = []
      page.on('requestfinished', (request) => {
        if (request.method() !== 'PATCH') return
        parts.push({ at: Number(request.headers()['upload-offset']), sentAt: request.timing().startTime })
      })
      const slow = await context.newCDPSession(page)
      await slow.send('Network.enable')
      const limit = (uploadThroughput: number) =>
        slow.send('Network.emulateNetworkConditions', {
          offline: false,
          latency: 0,
          downloadThroughput: -1,
          uploadThroughput,
        })
      // Slow enough that it is under way for many seconds: whoever looks late still finds it so.
      await limit(2 << 20)
      // Kept as the recording import keeps it: in the store, not sent.
      await page.evaluate(
        async ([hash, base64, times]) => {
          const part = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
          const blob = new Blob(Array.from({ length: times }, () => part))
          const db = await new Promise<IDBDatabase>((resolve) => {
            const request = indexedDB.open('shearline-bench')
            request.onsuccess = () => resolve(request.result)
          })
          const tx = db.transaction('blobs', 'readwrite')
          tx.objectStore('blobs').put({ sha256: hash, blob, name: 'long.log', sent: false })
          await new Promise((resolve) => {
            tx.oncomplete = resolve
          })
          db.close()
          dispatchEvent(new Event('online'))
        },
        [sha256, bytes.toString('base64'), repeated] as const,
      )
      const received = async () =>
        (await office.ask<{ received: number }>(`api/blobs/${sha256}/parts`)).received
      await expect.poll(received, { interval: 100 }).toBeGreaterThan(5 << 20)
      await office.kill()
      const restarted = Date.now()
      await office.start()
      const had = await received()
      expect(had).toBeGreaterThan(5 << 20)
      await limit(-1)
      await page.evaluate(() => dispatchEvent(new Event('online')))
      await untilSent(page)
      await page.getByText('Saved, all sent').waitFor()
      const head = await fetch(`${office.url}api/blobs/${sha256}`, { method: 'HEAD' })
      expect([head.status, head.headers.get('content-length')]).toEqual([200, String(repeated << 20)])
      // Nothing that had arrived was sent again.
      const later = () => parts.filter(({ sentAt }) => sentAt >= restarted)
      await expect.poll(() => later().length).toBeGreaterThan(0)
      expect(Math.min(...later().map(({ at }) => at))).toBeGreaterThanOrEqual(had)
    })

    it('says that this device is full, keeps what was recorded and what was typed, and goes on once there is room', async () => {
      await untilSent(page)
      const before = (await keptIn(page)).facts.length
      const origin = new URL(office.url).origin
      const cdp = await context.newCDPSession(page)
      // Chromium remembers for 30 s how much room an origin had (kBucketSpaceCacheTimeLimit, from memory).
      const away = async (milliseconds: number) => {
        await page.goto('about:blank')
        await page.waitForTimeout(milliseconds)
        await page.goto(office.url)
        await page.getByText('Green van, one key added').click()
        await openChapter(page, 'handover')
      }
      const price = part(page, 'price-not-agreed')
      const amount = price.getByRole('textbox', { name: /^Line 1: amount/ })
      const record = price.getByRole('button', { name: 'Record', exact: true })
      await cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1000 })
      await away(31_000)
      await amount.fill('95')
      await record.click()
      await price.getByText(/^This device is full, so nothing was recorded/).waitFor()
      await expect.poll(() => amount.inputValue()).toMatch(/^95/)
      expect((await keptIn(page)).facts.length).toBe(before)
      await cdp.send('Storage.overrideQuotaForOrigin', { origin })
      await away(0)
      await amount.fill('95')
      await record.click()
      await price.getByText('€95.00').first().waitFor()
      await expect.poll(async () => (await keptIn(page)).facts.length).toBe(before + 1)
    })

    it('says gently how far its clock is from the server, and the order of the facts stays the same everywhere', async () => {
      await page.addInitScript(() => {
        const ahead = 7 * 60_000
        const RealDate = Date
        globalThis.Date = class extends RealDate {
          constructor(...given: []) {
            super(...((given.length === 0 ? [RealDate.now() + ahead] : given) as []))
          }
          static override now(): number {
            return RealDate.now() + ahead
          }
        } as DateConstructor
      })
      await page.reload()
      await page.getByText(/^This device's clock is 7 minutes ahead of the server's/).waitFor()
    })

    it('offers a newer version on the board only, and loads it when asked to', async () => {
      appendFileSync(join(bench, 'sw.js'), '\n// newer')
      await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update())
      const waiting = async () =>
        (await navigator.serviceWorker.getRegistration())?.waiting?.state === 'installed'
      await expect.poll(() => page.evaluate(waiting)).toBe(true)
      // A job is open here: nothing is said.
      expect(await page.getByText('A new version is ready.').count()).toBe(0)
      await toBoard()
      await page.getByText(/^A new version is ready\./).waitFor()
      const loaded = page.waitForEvent('load')
      await page.getByRole('button', { name: 'Reload' }).click()
      await loaded
      await page.getByText('Small van, five keys stored').waitFor()
      await expect.poll(() => page.getByText('A new version is ready.').count()).toBe(0)
    })
  },
)
