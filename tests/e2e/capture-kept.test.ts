import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { neutralRetention } from '@shearline/jobfile'
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openChapter } from '../support/by-hand.ts'
import { withCameraNotes, writeFilm } from '../support/film.ts'
import { faultsOfAccess, lookAt } from '../support/looked-at.ts'
import { shearline } from '../support/shearline.ts'
import { cannotRun, keptIn, Office, openTablet, untilKept } from '../support/tablets.ts'

const job = 'demo-van'
const folder = mkdtempSync(join(tmpdir(), 'shearline-kept-'))
const film = join(folder, 'film.y4m')
const office = new Office()
const contexts: BrowserContext[] = []
const mishaps: string[] = []
let page: Page

async function tablet(name: string): Promise<Page> {
  const context = await openTablet(join(folder, name), film)
  contexts.push(context)
  const opened = context.pages()[0] ?? (await context.newPage())
  opened.on('console', (message) => {
    if (/Content.Security.Policy|Permissions.policy/i.test(message.text())) mishaps.push(message.text())
  })
  opened.on('pageerror', (error) => mishaps.push(String(error)))
  await opened.goto(`${office.url}#/device`)
  await opened.getByLabel('Your name').fill(`technician of ${name}`)
  await opened.getByRole('button', { name: 'Keep', exact: true }).click()
  await opened.getByText('saved here').first().waitFor()
  await untilKept(opened)
  await opened.goto(`${office.url}#/job/${job}`)
  await opened.locator('#chapter-arrival').waitFor()
  return opened
}

const bodies = async (kind: string) =>
  (await keptIn(page)).facts.filter((fact) => fact.kind === kind).map(({ body }) => body)

/** The bytes a browser holds under a hash, as they lie in its store. */
function storedBytes(of: Page, sha256: string): Promise<Buffer | null> {
  return of
    .evaluate(async (hash) => {
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open('shearline-bench')
        request.onsuccess = () => resolve(request.result)
        request.onerror = () => reject(request.error)
      })
      const kept = await new Promise<{ blob: Blob } | undefined>((resolve) => {
        const request = db.transaction('blobs').objectStore('blobs').get(hash)
        request.onsuccess = () => resolve(request.result as { blob: Blob } | undefined)
      })
      db.close()
      return kept === undefined ? null : [...new Uint8Array(await kept.blob.arrayBuffer())]
    }, sha256)
    .then((bytes) => (bytes === null ? null : Buffer.from(bytes)))
}

const sha256 = (bytes: Buffer) => createHash('sha256').update(bytes).digest('hex')

describe.skipIf(cannotRun !== null)(
  `photos, signatures and what is taken back${cannotRun === null ? '' : ` (skipped: ${cannotRun})`}`,
  () => {
    beforeAll(async () => {
      writeFilm(film, 'qrcode', 'PART 7731-B')
      await office.start({ demo: true })
      page = await tablet('van-2')
    })
    afterAll(async () => {
      for (const context of contexts) await context.close()
      await office.close()
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
    })

    it('keeps a photo of a key without the server, encrypted, without place, upright, and sends it later', async () => {
      await office.kill()
      await openChapter(page, 'arrival')
      await page.getByRole('button', { name: 'Photo of key A' }).click()
      const dialog = page.getByRole('dialog', { name: 'Photo of key A' })
      await expect.poll(() => dialog.getByRole('button', { name: 'Take the photo' }).isEnabled()).toBe(true)
      await lookAt(page, 'photo-camera')
      expect(await faultsOfAccess(page, 'dialog')).toEqual([])
      await dialog.getByRole('button', { name: 'Take the photo' }).click()
      await dialog.getByRole('textbox', { name: 'In a few words' }).fill('worn blade')
      await lookAt(page, 'photo-keep')
      expect(await faultsOfAccess(page, 'dialog')).toEqual([])
      await dialog.getByRole('button', { name: 'Keep this photo' }).click()
      await page.getByRole('button', { name: 'Show the photo: key A: worn blade' }).first().waitFor()

      // A file of a camera, lying on its side and with a place in it.
      await page.getByRole('button', { name: 'Take a photo', exact: true }).click()
      const other = page.getByRole('dialog', { name: 'Take a photo' })
      const jpeg = await page.screenshot({ type: 'jpeg', clip: { x: 0, y: 0, width: 800, height: 400 } })
      expect(withCameraNotes(jpeg).includes('Exif')).toBe(true)
      await other
        .getByLabel('Choose a photo')
        .setInputFiles({ name: 'dent.jpg', mimeType: 'image/jpeg', buffer: withCameraNotes(jpeg) })
      await other.getByRole('radio', { name: 'damage' }).check()
      await other.getByRole('button', { name: 'Keep this photo' }).click()
      await page.getByRole('button', { name: 'Show the photo: damage' }).first().waitFor()
      await lookAt(page, 'photo-cards')

      await expect
        .poll(() => bodies('photo-attached'))
        .toMatchObject([
          { shows: 'key', key: 'A', words: 'worn blade', mediaType: 'image/jpeg' },
          { shows: 'damage', mediaType: 'image/jpeg' },
        ])
      const photos = await bodies('photo-attached')
      for (const { blob, bytes } of photos) {
        const stored = await storedBytes(page, String(blob))
        // AES-GCM adds a tag of 16 bytes; nothing of a JPEG's marks is left.
        expect(stored?.length).toBe(Number(bytes) + 16)
        expect(stored?.subarray(0, 2).toString('hex')).not.toBe('ffd8')
        expect(stored?.includes('JFIF')).toBe(false)
      }

      await office.start()
      for (const [index, { blob, bytes }] of photos.entries()) {
        const read = async () => {
          const response = await fetch(new URL(`/api/blobs/${blob}`, office.url)).catch(() => null)
          return response?.ok === true ? Buffer.from(await response.arrayBuffer()) : null
        }
        await page.reload()
        await expect.poll(read, { interval: 500 }).not.toBeNull()
        const sent = (await read()) ?? Buffer.alloc(0)
        expect([sent.length, sha256(sent)]).toEqual([bytes, blob])
        expect(sent.subarray(0, 2).toString('hex')).toBe('ffd8')
        expect(sent.includes('Exif')).toBe(false)
        if (index === 1) expect(sizeOfJpeg(sent)).toEqual({ width: 400, height: 800 })
      }
    })

    it('shows it whole on another tablet, which keeps it encrypted too, until its time is over', async () => {
      const second = await tablet('van-3')
      await openChapter(second, 'arrival')
      await second.getByRole('button', { name: 'Show the photo: key A: worn blade' }).first().click()
      const view = second.getByRole('dialog', { name: 'key A: worn blade' })
      const image = view.getByRole('img', { name: 'key A: worn blade' })
      await image.waitFor()
      await expect.poll(() => image.evaluate((one) => (one as HTMLImageElement).naturalWidth)).toBe(1280)
      await lookAt(second, 'photo-whole')
      expect(await faultsOfAccess(second, 'dialog')).toEqual([])
      await view.getByRole('button', { name: 'Close' }).click()
      const [photo] = await bodies('photo-attached')
      const hash = String(photo?.blob)
      await expect.poll(async () => (await storedBytes(second, hash))?.length).toBe(Number(photo?.bytes) + 16)

      const pack = join(folder, 'pack.json')
      const rules = neutralRetention.rules.map((rule) =>
        rule.class === 'photo' ? { ...rule, trigger: 'recorded', days: 0 } : rule,
      )
      writeFileSync(pack, JSON.stringify({ ...neutralRetention, name: 'photos at once', rules }))
      const env = { SHEARLINE_DATA: office.data }
      expect(shearline(['retention', 'pack', pack], { env })).toMatchObject({ code: 0, err: '' })
      const gone = shearline(['retention', 'delete', job, '--why', 'Their time is over.', '--json'], { env })
      expect([gone.code, gone.err]).toEqual([0, ''])
      for (const one of [page, second]) {
        await one.reload()
        await expect.poll(() => storedBytes(one, hash), { interval: 500 }).toBeNull()
      }
      await openChapter(page, 'arrival')
      await page.getByRole('button', { name: 'Show the photo: key A: worn blade' }).first().click()
      await page.getByRole('dialog').getByText('because its time was over').waitFor()
      await lookAt(page, 'photo-deleted')
      await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click()
    })

    it('takes back what was just recorded with one tap, as a correction', async () => {
      await openChapter(page, 'call')
      const chapter = page.locator('#chapter-call')
      await chapter.getByText('Write a note').click()
      await chapter.getByLabel('Note', { exact: true }).fill('Gate code 17')
      await chapter.getByRole('button', { name: 'Record', exact: true }).click()
      const notice = page.getByRole('status').filter({ hasText: 'Gate code 17' })
      await notice.waitFor()
      await lookAt(page, 'take-back')
      await notice.getByRole('button', { name: 'Take it back' }).click()
      await notice.waitFor({ state: 'detached' })
      const correction = async () => {
        const { facts } = await keptIn(page)
        const note = facts.find((fact) => fact.kind === 'note-written' && fact.body.text === 'Gate code 17')
        return facts.find((fact) => fact.kind === 'corrected' && fact.body.fact === note?.id)?.body
      }
      await expect.poll(correction).toMatchObject({
        action: 'withdrawn',
        reason: 'Taken back right after it was recorded.',
      })
    })

    it('did all of it within the content policy', () => {
      expect(mishaps).toEqual([])
    })
  },
)

/** Width and height from a JPEG's frame header (ITU-T T.81, B.2.2). */
function sizeOfJpeg(jpeg: Buffer): { width: number; height: number } | null {
  for (let at = 2; at + 9 < jpeg.length; at += 2 + jpeg.readUInt16BE(at + 2)) {
    const marker = jpeg[at + 1] ?? 0
    if (marker >= 0xc0 && marker <= 0xc2)
      return { height: jpeg.readUInt16BE(at + 5), width: jpeg.readUInt16BE(at + 7) }
  }
  return null
}
