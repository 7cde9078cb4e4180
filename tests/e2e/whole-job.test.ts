import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { type JobState, registerJob } from '@shearline/jobfile'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openChapter } from '../support/by-hand.ts'
import { lookAt } from '../support/looked-at.ts'
import { chromiumPath, launch, Served } from '../support/served.ts'
import { captures, shearline } from '../support/shearline.ts'
import { keptIn, untilSent } from '../support/tablets.ts'
import { importAs, proveVan, scanVan, sealVan, settleVan, teachVan } from '../support/van-job.ts'

const served = new Served()
let browser: Browser
let page: Page

const picture = (name: string) => lookAt(page, name)

const standing = async () => {
  const response = await page.request.get(`${served.url}api/jobs/demo-van`)
  return ((await response.json()) as { state: JobState }).state
}

const registerHere = async () => (await keptIn(page)).facts.filter(({ job }) => job === registerJob)

describe.skipIf(chromiumPath === null)('the whole job on the bench, in Chromium', () => {
  beforeAll(async () => {
    await served.start()
    browser = await launch()
    page = await browser.newPage({ viewport: { width: 820, height: 1180 } })
  })
  afterAll(async () => {
    await browser?.close()
    await served.stop()
  })

  it('goes from an open session to a sealed document that verify proves', async () => {
    const faults: string[] = []
    page.on('pageerror', (error) => faults.push(error.message))
    await page.goto(served.url)
    await page.getByText('Small van, five keys stored').waitFor()
    await picture('board')
    await page.getByText('Small van, five keys stored').click()

    const van = { page, standing, picture }
    await teachVan(van, true)
    await proveVan(van)
    await scanVan(van, join(served.folder, 'session.log'))
    await settleVan(van)
    // The firm's register has come to this device, which stands in it since it first sent something.
    await expect.poll(registerHere, { timeout: 60_000 }).toHaveLength(2)
    await sealVan(van)
    await page.evaluate(() => window.scrollTo(0, 0))
    await picture('sealed')
    expect(faults).toEqual([])

    // The document was made on the device; the server has it once everything is sent.
    await untilSent(page)
    await page.getByText('Saved, all sent').waitFor()
    const document = await page.request.get(`${served.url}api/jobs/demo-van/document`)
    const file = join(served.folder, 'handover.pdf')
    writeFileSync(file, await document.body())
    const proven = shearline(['verify', file, '--json'])
    expect([proven.code, JSON.parse(proven.out).findings]).toEqual([0, []])
    // The document says itself which devices the firm trusts.
    expect(readFileSync(file, 'latin1')).toContain('"kind":"device-enrolled"')

    // The price as it stands in the signed record inside the file, changed by one digit.
    const bytes = readFileSync(file)
    const place = bytes.indexOf('"amountMinor":35000')
    expect(place).toBeGreaterThan(0)
    bytes[place + '"amountMinor":'.length] = '2'.charCodeAt(0)
    writeFileSync(file, bytes)
    const forged = shearline(['verify', file, '--json'])
    expect(forged.code).toBe(1)
    expect(JSON.parse(forged.out).findings[0].where).toMatch(/^fact \d+ \(price-agreed\)/)
  })

  it.skipIf(captures === null)(
    'reads a real recording in the browser: units, messages, faults (../shared/captures)',
    async () => {
      await page.goto(served.url)
      await page.getByText('Estate car, spare wanted').click()
      await openChapter(page, 'faults')
      const found = await importAs(
        { page, picture },
        join(captures ?? '', '01_can11_obd_uds_kwp_scan.log'),
        'After the work',
      )
      // Frames, messages and incomplete transfers as tshark 4.0.17 and scapy count them (../shared/captures/expected).
      expect(found).toMatch(/Frames\s*1,845/)
      expect(found).toMatch(/Messages\s*1,814, 2 more incomplete/)
      await page.locator('#chapter-faults').getByText('B1603-00').filter({ visible: true }).first().waitFor()
    },
  )
})
