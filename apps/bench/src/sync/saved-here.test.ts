// biome-ignore-all lint/correctness/noNodejsModules: tests drive a real browser from Node
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Device, type Fact, foldJob, Verifier, verifyFacts } from '@shearline/jobfile'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { noBrowser, serveAlone, switchOn } from '../testing/chromium.ts'

let bench: Awaited<ReturnType<typeof serveAlone>>
let profile = ''

/** Opens a job by hand, as a technician would. */
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

/** Everything this browser keeps, read past the bench. */
async function keptIn(
  page: Page,
): Promise<{ facts: Fact[]; unsent: number; devices: Device[]; exported: string }> {
  return page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('shearline-bench')
      request.onsuccess = () => resolve(request.result)
      request.onerror = () => reject(request.error)
    })
    const all = (store: string) =>
      new Promise<never[]>((resolve) => {
        const request = db.transaction(store).objectStore(store).getAll()
        request.onsuccess = () => resolve(request.result as never[])
      })
    const [self] = (await all('self')) as {
      device: string
      name: string
      publicKey: string
      privateKey: CryptoKey
    }[]
    if (self === undefined) throw new Error('the browser has no device')
    const exported = await crypto.subtle.exportKey('pkcs8', self.privateKey).then(
      () => 'the private key could be exported',
      (error: Error) => error.name,
    )
    const devices = [{ device: self.device, name: self.name, publicKey: self.publicKey }]
    return { facts: await all('facts'), unsent: (await all('outbox')).length, devices, exported }
  })
}

describe.skipIf(noBrowser !== null)(
  `what is saved here${noBrowser === null ? '' : ` (skipped: ${noBrowser})`}`,
  () => {
    beforeAll(async () => {
      bench = await serveAlone()
      profile = await mkdtemp(join(tmpdir(), 'shearline-tablet-'))
    })

    afterAll(async () => {
      await bench?.close()
      if (profile !== '') await rm(profile, { recursive: true, force: true, maxRetries: 5 })
    })

    it('survives a killed browser with the server out of service: every fact once, chain and signatures whole', async () => {
      let tablet = await switchOn(profile, bench.url)
      try {
        await openJob(tablet.page)
        for (const count of [2, 3, 4, 5]) {
          await tablet.page.evaluate(() => {
            for (const details of document.querySelectorAll('details')) details.open = true
          })
          await tablet.page.getByRole('textbox', { name: 'Keys the customer says exist' }).fill(String(count))
          await tablet.page
            .locator('[data-need~="keys-not-asked"]')
            .getByRole('button', { name: 'Record', exact: true })
            .click()
          await tablet.page
            .locator('[data-need~="keys-not-asked"]')
            .getByText(`${count} keys said to exist`)
            .waitFor()
        }
        // The last count is shown as on record: from here on it must be there.
        await tablet.kill()
        tablet = await switchOn(profile, bench.url)
        await tablet.page.getByText('Green van, one key added').click()
        // Two facts open a job: the job itself and the rules it works by.
        await tablet.page.getByText('Saved, 6 to send').waitFor()
        const { facts, unsent, devices, exported } = await keptIn(tablet.page)
        expect(unsent).toBe(6)
        expect(facts.map((fact) => fact.seq)).toEqual([1, 2, 3, 4, 5, 6])
        const check = await verifyFacts(facts, devices, new Verifier(crypto.subtle))
        expect(check).toMatchObject({ signaturesRight: 6, linksRight: 6, findings: [] })
        expect(foldJob(facts[0]?.job ?? '', facts).tally.saidToExist).toBe(5)
        expect(exported).toBe('InvalidAccessError')
      } finally {
        await tablet.kill()
      }
    })
  },
)
