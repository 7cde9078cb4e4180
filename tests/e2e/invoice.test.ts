/** The invoice on the bench: asked for beside the price, refused by the standard's rules, carried by the document. */
import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Running, serve } from '@shearline/server'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openChapter, sayWho } from '../support/by-hand.ts'
import { lookAt } from '../support/looked-at.ts'
import { chromiumPath, launch } from '../support/served.ts'

const bench = process.env.SHEARLINE_BENCH

let folder = ''
let running: Running
let browser: Browser
let page: Page

const picture = (name: string) =>
  lookAt(page, name, { at: page.getByRole('heading', { name: 'Invoice in the document' }) })

beforeAll(async () => {
  if (chromiumPath === null) return
  folder = mkdtempSync(join(tmpdir(), 'shearline-invoice-'))
  running = await serve({ data: folder, port: 0, ...(bench === undefined ? {} : { benchFolder: bench }) })
  const written = (kind: string, body: Record<string, unknown>, second: number) => ({
    id: randomUUID(),
    job: 'van-1',
    at: `2026-01-12T09:00:0${second}.000Z`,
    by: 'technician',
    kind,
    body,
  })
  await running.store.writeOwn([
    written(
      'job-opened',
      {
        title: 'Van at the quay',
        place: 'Quay street',
        zone: 'Europe/Lisbon',
        work: 'add-a-key',
        customer: 'trade',
        vehicle: 'Small van',
        demo: true,
      },
      1,
    ),
    written('price-agreed', { currency: 'EUR', lines: [{ text: 'Two flip keys', amountMinor: 26_000 }] }, 2),
  ])
  browser = await launch()
  page = await browser.newPage({ viewport: { width: 820, height: 1180 } })
})
afterAll(async () => {
  await browser?.close()
  await running?.close()
  if (folder !== '') rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
})

describe.skipIf(chromiumPath === null)('an invoice on the bench', () => {
  it('is issued from the agreed price, names broken rules first, and goes into the sealed document', async () => {
    const faults: string[] = []
    page.on('pageerror', (error) => faults.push(error.message))
    await page.goto(`${running.url}#/job/van-1`)
    await page.locator('#chapter-handover').waitFor()
    await openChapter(page, 'handover')
    const part = page
      .locator('section', { has: page.getByRole('heading', { name: 'Invoice in the document' }) })
      .last()
    await part.getByText('Put an invoice in').click()
    await picture('invoice-form')
    const buyer = part.getByRole('group', { name: 'The customer' })
    const seller = part.getByRole('group', { name: 'Your firm (kept on this device)' })
    await part.getByRole('textbox', { name: 'Number of the invoice' }).fill('2026-017')
    await part.getByRole('textbox', { name: /^Rate in percent/ }).fill('23')
    await buyer.getByRole('textbox', { name: 'Name' }).fill('Tidewater Hire')
    await buyer.getByRole('textbox', { name: 'Country, two letters' }).fill('pt')
    await seller.getByRole('textbox', { name: 'Name' }).fill('Harbour Keys')
    await seller.getByRole('textbox', { name: 'Country, two letters' }).fill('pt')
    await seller.getByRole('textbox', { name: /^VAT number/ }).fill('pt 999999990')
    await part.getByRole('button', { name: 'Record', exact: true }).click()
    // Nothing says when it is to be paid: the rule is named and nothing is recorded.
    await part.getByRole('alert').getByText('BR-CO-25').waitFor()
    await picture('invoice-broken')
    expect((await running.store.factsOfJob('van-1')).map(({ kind }) => kind)).not.toContain('invoice-issued')
    await part
      .getByRole('combobox', { name: 'Terms of payment' })
      .or(part.getByRole('textbox', { name: 'Terms of payment' }))
      .first()
      .fill('Paid on the spot')
    await part.getByRole('button', { name: 'Record', exact: true }).click()
    await sayWho(page)
    await part.getByText('Number 2026-017').waitFor()
    await picture('invoice-issued')
    // EUR 260.00 with 23 % in it.
    await expect.poll(() => part.textContent()).toContain('211.38')
    await expect.poll(() => part.textContent()).toContain('48.62')

    const seal = page.locator('[data-need~="not-sealed"]').first()
    await seal.getByRole('checkbox').check()
    await seal.getByRole('button', { name: 'Seal the document' }).click()
    await page.getByText('The document is saved on this device and sent.').waitFor()
    const document = await page.request.get(`${running.url}api/jobs/van-1/document`)
    const bytes = await document.body()
    expect(bytes.includes('<ram:DuePayableAmount>260.00</ram:DuePayableAmount>')).toBe(true)
    expect(bytes.includes('/AFRelationship /Alternative')).toBe(true)
    const { Verifier, verifyHandover } = await import('@shearline/jobfile')
    const check = await verifyHandover(new Uint8Array(bytes), new Verifier(crypto.subtle))
    expect(check.findings).toEqual([])
    // The page that proves it is offered beside it.
    expect(
      await page.getByRole('link', { name: 'Save the page that proves documents' }).getAttribute('href'),
    ).toBe('/verify.html')
    expect(faults).toEqual([])
  })
})
