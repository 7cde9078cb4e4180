/** @module A report shared to the installed bench by another app: taken in without a connection, and into one job only. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { sayWho } from '../support/by-hand.ts'
import { shoot } from '../support/looked-at.ts'
import { launch } from '../support/served.ts'
import { benchFolder, cannotRun, keptIn, Office, untilHeld, untilKept } from '../support/tablets.ts'

const office = new Office()
let browser: Browser
let context: BrowserContext
let page: Page

const report = 'Engine control (7E0/7E8)\n  P0420-00 stored\nSecurity code: 4711\nBrakes: no faults stored\n'

/**
 * What the system does when something is shared: a form sent, from outside the bench, to the address the manifest
 * names. The bench's own pages may send no form at all.
 */
async function share(
  fields: Readonly<Record<string, string>>,
  file?: { name: string; text: string },
): Promise<string> {
  await page.goto('about:blank')
  await page.evaluate(
    ([entries, shared, action]) => {
      const form = document.createElement('form')
      Object.assign(form, { method: 'post', enctype: 'multipart/form-data', action })
      for (const [name, value] of Object.entries(entries)) {
        const field = document.createElement('input')
        Object.assign(field, { name, value })
        form.append(field)
      }
      if (shared !== undefined) {
        const picker = document.createElement('input')
        Object.assign(picker, { type: 'file', name: 'reports' })
        const held = new DataTransfer()
        held.items.add(new File([shared.text], shared.name, { type: 'text/plain' }))
        picker.files = held.files
        form.append(picker)
      }
      document.body.append(form)
      form.submit()
    },
    [fields, file, `${office.url}share`] as const,
  )
  await page.waitForURL(/#\/shared/)
  return page.url()
}

async function scans() {
  const { facts } = await keptIn(page)
  return facts.filter((fact) => fact.kind === 'scan-attached' && fact.job === 'demo-estate')
}

describe.skipIf(cannotRun !== null)('a report shared to the bench', () => {
  beforeAll(async () => {
    await office.start({ demo: true })
    browser = await launch()
    context = await browser.newContext({ viewport: { width: 390, height: 844 } })
    page = await context.newPage()
    await page.goto(office.url)
    await untilKept(page)
    // The job must be on this device before the connection goes.
    await page.goto(`${office.url}#/job/demo-estate`)
    await page.locator('#chapter-arrival').waitFor()
    await untilHeld(page, office, 'demo-estate')
    await office.kill()
  })

  afterAll(async () => {
    await browser?.close()
    await office.close()
  })

  it('the manifest names the address that the service worker answers', () => {
    const manifest = JSON.parse(readFileSync(join(benchFolder, 'manifest.webmanifest'), 'utf8'))
    expect(manifest.share_target).toMatchObject({
      action: './share',
      method: 'POST',
      enctype: 'multipart/form-data',
      params: { text: 'text', files: [{ name: 'reports' }] },
    })
  })

  it('waits for the person to say which job it is for, without a connection, and keeps nothing before', async () => {
    expect(await share({}, { name: 'report.txt', text: report })).toContain('#/shared')
    const item = page.getByRole('region', { name: 'report.txt' })
    await item.waitFor()
    await shoot(page, 'shared-390', { fullPage: true })
    await item
      .getByRole('button', { name: /estate/i })
      .first()
      .click()
    await page.getByText('A report was shared to this job: report.txt.').waitFor()
    expect(await scans()).toEqual([])
  })

  it('opens in that job, is read there, and is kept with its source blotted out', async () => {
    await page.getByRole('button', { name: 'Read it now' }).click()
    const understood = page.getByRole('region', { name: 'What will be kept' }).filter({ visible: true })
    await expect.poll(() => understood.textContent()).toMatch(/Engine control.*P0420-00.*Brakes/)
    await page.getByRole('button', { name: 'Keep this scan' }).filter({ visible: true }).first().click()
    await sayWho(page, 'Ada Brook')
    await page.getByRole('heading', { name: 'Reports on record' }).waitFor()
    await expect.poll(async () => (await scans()).length).toBe(1)
    const { blobs } = await keptIn(page)
    const [scan] = await scans()
    const body = scan?.body as {
      units: { unit: string; ids?: string[] }[]
      source: { blob: string; name: string; bytes: number; original: string }
    }
    expect(body.units[0]).toMatchObject({ unit: 'Engine control', ids: ['7E0', '7E8'] })
    expect(body.source).toMatchObject({ name: 'report.txt', bytes: report.length })
    expect(blobs.map(({ sha256 }) => sha256)).toContain(body.source.blob)
    await page
      .getByText(/report\.txt$/)
      .filter({ visible: true })
      .first()
      .click()
    await page.getByText('Security code: xxxx').waitFor()
    expect(await page.getByText('4711').count()).toBe(0)
    await shoot(page, 'kept-report-390')
    // What was taken in waits no longer.
    await page.getByText('A report was shared to this job').waitFor({ state: 'detached' })
  })

  it('takes shared text, and lets it be discarded', async () => {
    await share({ title: 'From the other app', text: 'Engine\nP0513-00' })
    await page.getByText('P0513-00').waitFor()
    await page.getByRole('button', { name: 'Discard From the other app' }).click()
    await page.getByText('Nothing is waiting here.').waitFor()
  })

  it('says so when there was nothing in it', async () => {
    expect(await share({ title: 'empty' })).toContain('#/shared/failed')
    await page.getByRole('alert').getByText('what was shared is empty', { exact: false }).waitFor()
    await page.getByRole('heading', { level: 1, name: 'No shared report' }).waitFor()
  })
})
