/** @module Forms filled with one thumb on a phone: what is typed is kept, a tap counts once, the place is kept. */
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openChapter, openNewJob, openPhone, part } from '../support/by-hand.ts'
import { launch } from '../support/served.ts'
import { cannotRun, Office } from '../support/tablets.ts'

const office = new Office()
let browser: Browser
let page: Page
const mishaps: string[] = []

/** The heading of the part that has the focus, or what else has it. */
const focused = () =>
  page.evaluate(() => {
    const element = document.activeElement
    return (
      element?.querySelector('h3')?.textContent ?? element?.getAttribute('aria-label') ?? element?.tagName
    )
  })

describe.skipIf(cannotRun !== null)('forms filled with one thumb, in Chromium', () => {
  beforeAll(async () => {
    await office.start()
    browser = await launch()
    page = await openPhone(browser, mishaps)
  })
  afterAll(async () => {
    await browser?.close()
    await office.close()
  })

  it('keeps what is typed for a new job over a reload, and starts the next one empty', async () => {
    await page.goto(`${office.url}#/new`)
    await page.getByLabel('Name of the job').fill('Blue van')
    await page.getByLabel('Replace keys').check()
    await page.reload()
    await expect.poll(() => page.getByLabel('Name of the job').inputValue()).toBe('Blue van')
    await expect.poll(() => page.getByLabel('Replace keys').isChecked()).toBe(true)
    await page.getByRole('link', { name: /Shearline/ }).click()
    await page.getByRole('link', { name: 'New job' }).click()
    await expect.poll(() => page.getByLabel('Name of the job').inputValue()).toBe('')
  })

  it('opens a job once, however often the button is tapped', async () => {
    // Two taps in one turn of the page, as a bouncing glove makes them.
    await page.addInitScript(() => {
      addEventListener('click', (event) => {
        const button = (event.target as Element).closest<HTMLButtonElement>('form button[type=submit]')
        if (event.isTrusted && location.hash === '#/new') button?.click()
      })
    })
    await page.reload()
    await openNewJob(page, office.url, { title: 'Blue van, once', vehicle: 'Blue van', place: 'Yard' })
    await expect
      .poll(async () => (await office.ask<{ jobs: { title: string }[] }>('api/jobs')).jobs.length)
      .toBe(1)
    await openChapter(page, 'authority')
    expect((await office.ask<{ jobs: { title: string }[] }>('api/jobs')).jobs).toHaveLength(1)
  })

  it('keeps the end of a number that was typed whole, and the focus where it was', async () => {
    const document = part(page, 'identity-document-missing')
    await document.getByLabel('Kind of document').fill('passport')
    await document.getByLabel('Who issued it').fill('Town')
    const last = document.getByLabel('Last characters of its number')
    await last.pressSequentially('ab123456789')
    await expect.poll(() => last.inputValue()).toBe('456789')
    for (const question of ['Seen as an original?', 'Does it match?'])
      await document.getByRole('group', { name: question }).getByLabel('Yes').check()
    await document.getByRole('button', { name: 'Record', exact: true }).click()
    await page.getByText('passport, Town, ending 456789').first().waitFor()
    await expect.poll(focused).toBe('Identity of the person')
  })

  it('takes the comma of a phone for the point of the language', async () => {
    await openChapter(page, 'arrival')
    const supply = part(page, 'supply-at-rest-missing')
    const volts = supply.getByRole('textbox', { name: /^Supply voltage/ })
    await volts.pressSequentially('12,6')
    await expect.poll(() => volts.inputValue()).toBe('12.6')
    await supply.getByRole('button', { name: 'Record', exact: true }).click()
    await supply.getByText('12.6 V').waitFor()
    await expect.poll(focused).toBe('Supply at rest')
  })

  it('says that a VIN is too short, lets it be withdrawn, and gives the focus back to what opened the question', async () => {
    const vin = part(page, 'vin-missing')
    await vin.getByLabel('glass').check()
    await vin.getByLabel('VIN', { exact: true }).fill('T6SHBK2D1M009021')
    await vin.getByRole('button', { name: 'Record', exact: true }).click()
    await vin.getByText('A reading above is not well formed').waitFor()
    await vin.getByRole('button', { name: /^Withdraw/ }).click()
    const dialog = page.getByRole('dialog')
    await dialog.getByRole('button', { name: 'Cancel' }).click()
    await dialog.waitFor({ state: 'detached' })
    await expect.poll(focused).toMatch(/^Withdraw: VIN T6SHBK2D1M009021/)
    expect(mishaps).toEqual([])
  })
})
