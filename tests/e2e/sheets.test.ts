import { readFileSync } from 'node:fs'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openChapter } from '../support/by-hand.ts'
import { faultsOfAccess, lookAt } from '../support/looked-at.ts'
import { launch } from '../support/served.ts'
import { cannotRun, Office, untilHeld, untilKept } from '../support/tablets.ts'

const office = new Office()
let browser: Browser
let context: BrowserContext
let page: Page
const mishaps: string[] = []

const sheets = (chapter: string) =>
  page.locator(`#chapter-${chapter} section`, {
    has: page.getByRole('heading', { name: 'Sheets', exact: true }),
  })

describe.skipIf(cannotRun !== null)(
  `sheets on the bench${cannotRun === null ? '' : ` (skipped: ${cannotRun})`}`,
  () => {
    beforeAll(async () => {
      await office.start({ demo: true })
      browser = await launch()
      context = await browser.newContext({
        viewport: { width: 820, height: 1180 },
        bypassCSP: true,
        acceptDownloads: true,
      })
      page = await context.newPage()
      page.on('pageerror', (error) => mishaps.push(error.message))
      await page.goto(office.url)
      await untilKept(page)
      await page.getByText('Small van, five keys stored').click()
      await page.locator('#chapter-handover').waitFor()
      await untilHeld(page, office, 'demo-van')
    })
    afterAll(async () => {
      await browser?.close()
      await office.close()
    })

    it('are listed with a line each, and made without a connection', async () => {
      await office.kill()
      await openChapter(page, 'handover')
      const part = sheets('handover')
      await part.locator('summary').first().click()
      await part.getByText('One key is named as not here: spare at the depot.').waitFor()
      await part.getByText('Sheets the record holds nothing for').click()
      await part.getByText('The work was neither refused nor held.').waitFor()
      await part.getByRole('button', { name: 'Make: Consent: keys that are not here' }).click()
      const save = part.getByRole('link', { name: 'Save: Consent: keys that are not here' })
      await save.waitFor()
      await part.scrollIntoViewIfNeeded()
      await lookAt(page, 'sheets')
      const [download] = await Promise.all([page.waitForEvent('download'), save.click()])
      expect(download.suggestedFilename()).toBe('demo-van-absent-keys-en.pdf')
      const bytes = readFileSync(await download.path(), 'latin1')
      expect(bytes).toMatch(/^%PDF-1\.7/)
      expect(bytes).toContain('<pdfaid:part>3</pdfaid:part>')
      expect(await faultsOfAccess(page, '#chapter-handover')).toEqual([])
    })

    it('give the row of a register as a table', async () => {
      const button = sheets('handover').getByRole('button', { name: 'As a table (CSV)' })
      const [download] = await Promise.all([page.waitForEvent('download'), button.click()])
      const text = readFileSync(await download.path(), 'utf8')
      expect(text).toMatch(/^job,opened,/)
      expect(text).toContain('\r\ndemo-van,')
    })

    it('stand in the chapter they belong to, the message ready to be copied', async () => {
      await openChapter(page, 'call')
      const part = sheets('call')
      await part.locator('summary').first().click()
      await part.getByText('Sheets the record holds nothing for').click()
      await expect.poll(() => part.getByRole('listitem').count()).toBe(1)
      await part.getByRole('button', { name: 'Make: What to bring' }).click()
      const message = part.getByRole('textbox', { name: 'As a message' })
      await expect
        .poll(() => message.inputValue())
        .toContain('Please bring: every key of this car, working or not')
      const words = await message.inputValue()
      await lookAt(page, 'sheets-call')
      await context.grantPermissions(['clipboard-read', 'clipboard-write'])
      await part.getByRole('button', { name: 'Copy the message' }).click()
      await part.getByText('Copied. Put it into a message to the customer.').waitFor()
      expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(words)
      expect(mishaps).toEqual([])
    })
  },
)
