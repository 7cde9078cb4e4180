/** @module A job handed on as a code and as a file, and what is said of clocks and of revoked devices. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'
import { goToJob, openChapter, openFromBoard, openPhone, sayWho } from '../support/by-hand.ts'
import { faultsOfAccess, lookAt } from '../support/looked-at.ts'
import { Outward } from '../support/outward.ts'
import { launch } from '../support/served.ts'
import { shearline } from '../support/shearline.ts'
import { cannotRun, keptIn, Office, untilHeld } from '../support/tablets.ts'

const title = 'Estate car, spare wanted'
const office = new Office()
const mishaps: string[] = []
let browser: Browser
let page: Page

const handOn = (on: Page) =>
  on.locator('#chapter-close section', {
    has: on.getByRole('heading', { name: 'Hand this job to a colleague' }),
  })
const doubts = (on: Page) => on.getByRole('status', { name: 'What does not agree on this record' })

async function writeNote(on: Page, text: string, asksWho = false): Promise<void> {
  await openChapter(on, 'call')
  const notes = on.locator('#chapter-call section', { has: on.getByRole('heading', { name: 'Notes' }) })
  const field = notes.getByLabel('Note', { exact: true })
  if (!(await field.isVisible())) await notes.getByText('Write a note').click()
  await field.fill(text)
  await notes.getByRole('button', { name: 'Record', exact: true }).click()
  if (asksWho) await sayWho(on)
  await notes.getByText(text).first().waitFor()
}

/** Saves the open job as a file, as a person does, and lets the command line prove it. */
async function bundleProof(job: string) {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    handOn(page).getByRole('button', { name: 'Save the whole job as a file' }).click(),
  ])
  expect(download.suggestedFilename()).toBe(`${job}.zip`)
  const file = join(office.folder, download.suggestedFilename())
  await download.saveAs(file)
  const { code, out } = shearline(['verify', file, '--json'])
  const proof = JSON.parse(out) as {
    readonly proven: boolean
    readonly facts: number
    readonly signatures: number
    readonly findings: readonly { readonly what: string }[]
  }
  return { code, ...proof }
}

describe.skipIf(cannotRun !== null)(
  `handing on, and doubts${cannotRun === null ? '' : ` (skipped: ${cannotRun})`}`,
  () => {
    beforeAll(async () => {
      await office.start({ demo: true })
      browser = await launch()
      page = await openPhone(browser, mishaps)
      await openFromBoard(page, office.url, title)
    })
    afterAll(async () => {
      await browser?.close()
      await office.close()
    })

    it('under an address of this device only, says so plainly, and saves a file that anyone can prove', async () => {
      await goToJob(page, office.url, 'demo-estate', title)
      await openChapter(page, 'close')
      const part = handOn(page)
      await part
        .getByText(`an address that only this device understands (${new URL(office.url).host})`)
        .waitFor()
      expect(await part.getByRole('img').count()).toBe(0)
      await part.getByText('Everything of this job is sent.').waitFor()
      await lookAt(page, 'custody-hand-on-here', { at: part })
      // Not sealed: signatures prove every fact, and nothing that none is missing. Both are said.
      await part.getByText(/^The job is not sealed yet/).waitFor()
      const open = await bundleProof('demo-estate')
      expect(open).toMatchObject({ code: 1, findings: [{ what: expect.stringContaining('holds no seal') }] })
      // One more is over the list of files.
      expect(open.signatures).toBe(open.facts + 1)

      await openFromBoard(page, office.url, 'Saloon, one key added')
      await untilHeld(page, office, 'demo-saloon')
      await openChapter(page, 'close')
      await part.waitFor()
      await expect.poll(() => part.getByText(/^The job is not sealed yet/).count()).toBe(0)
      const sealed = await bundleProof('demo-saloon')
      expect(sealed).toMatchObject({ code: 0, proven: true })
      const here = (await keptIn(page)).facts.filter(({ job }) => job === 'demo-saloon')
      expect(sealed.facts).toBe(here.length)
    })

    it('under an address of the network, draws it as a code that another reader reads', async () => {
      const outward = new Outward()
      await outward.start(office.url)
      const other = await launch(...outward.flags)
      try {
        const colleague = await openPhone(other, mishaps)
        await openFromBoard(colleague, outward.url, title)
        await openChapter(colleague, 'close')
        const code = handOn(colleague).getByRole('img', { name: 'Address of this job as a QR code' })
        await code.waitFor()
        await lookAt(colleague, 'custody-hand-on-code', { at: handOn(colleague) })
        expect(await faultsOfAccess(colleague, '#chapter-close')).toEqual([])
        const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')
        // The reader's own WebAssembly is given to it, so that it asks no network for it.
        prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(readFileSync(wasm)).buffer } })
        for (const colorScheme of ['light', 'dark'] as const) {
          await colleague.emulateMedia({ colorScheme })
          const read = async () => {
            const shot = new Uint8Array(await code.screenshot())
            return (await readBarcodes(shot, { formats: ['QRCode'] })).map(({ text }) => text)
          }
          await expect.poll(read).toEqual([`${outward.url}#/job/demo-estate`])
        }
        // What the code says opens the job on yet another bench.
        const third = await openPhone(other, mishaps)
        await third.goto(`${outward.url}#/job/demo-estate`)
        await third.getByText(title).first().waitFor()
      } finally {
        await other.close()
        await outward.close()
      }
    })

    it('a clock set back while recording is told on the record, by the device it is of', async () => {
      const late = await openPhone(browser, mishaps)
      await openFromBoard(late, office.url, title)
      expect(await doubts(late).count()).toBe(0)
      const now = Date.now()
      await late.clock.setFixedTime(now + 3 * 3_600_000)
      await writeNote(late, 'Written by a fast clock', true)
      await late.clock.setFixedTime(now)
      await writeNote(late, 'Written after the clock was put right')
      const device = (await keptIn(late)).devices[0]?.name ?? 'no device'
      await doubts(late)
        .getByText(`A fact of device ${device} is stamped earlier than the one before it.`)
        .waitFor()
      await lookAt(late, 'custody-doubt-clock', { at: doubts(late) })
      expect(await faultsOfAccess(late, 'main')).toEqual([])
      await late.context().close()
    })

    it('a device the office revoked is told so at once, and its later facts are marked, here and elsewhere', async () => {
      const lost = await openPhone(browser, mishaps)
      await openFromBoard(lost, office.url, title)
      await writeNote(lost, 'Before it was lost', true)
      await expect.poll(async () => (await keptIn(lost)).outbox).toEqual([])
      const { device, name } = (await keptIn(lost)).devices[0] ?? { device: 'no device', name: 'no name' }
      // A colleague looks at the same job while the office revokes.
      await goToJob(page, office.url, 'demo-estate', title)
      const revoked = shearline([
        ...['device', 'revoke', device, '--because', 'stolen', '--why', 'Van broken into.'],
        ...['--by', 'office', '--data', office.data],
      ])
      expect([revoked.code, revoked.err]).toEqual([0, ''])
      await doubts(lost)
        .getByText(/^This device is no longer trusted by the firm \(reported stolen\)/)
        .waitFor()
      await writeNote(lost, 'After it was lost')
      await expect
        .poll(() => doubts(lost).textContent())
        .toContain(`One fact is of a device that is no longer trusted (${name})`)
      await lookAt(lost, 'custody-doubt-revoked', { at: doubts(lost) })
      expect(await faultsOfAccess(lost, 'main')).toEqual([])
      // What was written before stands, for the colleague too: nothing of it is called into doubt.
      expect(await doubts(page).getByText(name).filter({ hasText: 'trusted' }).count()).toBe(0)
      expect(mishaps).toEqual([])
      await lost.context().close()
    })
  },
)
