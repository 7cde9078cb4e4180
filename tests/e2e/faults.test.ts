import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { recordingAfter } from '@shearline/jobfile/demo'
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openChapter, openFromBoard, sayWho } from '../support/by-hand.ts'
import { faultsOfAccess, lookAt } from '../support/looked-at.ts'
import { launch } from '../support/served.ts'
import { cannotRun, keptIn, Office } from '../support/tablets.ts'
import { importAs } from '../support/van-job.ts'

/** A report with every doubt there is: a mistyped code, a guessed heading, a word like a code, a code of nobody. */
const report = `Vehicle check 25 Nov, 41 020 km
U0155-87 seen first
1. Engine control
   PO562-00  supply voltage low   stored
2. Airbag control
   B0012-11  driver squib   stored
Comfort box
   B1234-00  window motor
   part b2203
3. Brakes: no faults stored
4. Gateway
   no faults stored
`

const office = new Office()
let browser: Browser
let context: BrowserContext
let page: Page
const mishaps: string[] = []

const picture = (name: string, at: Locator) => lookAt(page, `faults-${name}`, { at })
const accessible = async (what: string, selector: string) =>
  expect(await faultsOfAccess(page, selector), what).toEqual([])

/** The units and codes of the scans this browser keeps, in the order they were kept. */
async function keptScans(): Promise<unknown[]> {
  const { facts } = await keptIn(page)
  return facts
    .filter((fact) => fact.kind === 'scan-attached' && fact.job === 'demo-estate')
    .sort((one, other) => one.seq - other.seq)
    .map(({ body }) => {
      const { phase, units } = body as unknown as {
        phase: string
        units: { unit: string; faults: { code: string; list?: string }[] }[]
      }
      return [phase, units.map(({ unit, faults }) => [unit, ...faults.map(({ code }) => code)])]
    })
}

const say = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' })

async function type(unit: string, ...codes: readonly string[]): Promise<void> {
  await say(new RegExp(`^${unit}`))
    .filter({ visible: true })
    .first()
    .click()
  const keys = page.getByRole('group', { name: 'Keys for a fault code' })
  if (codes.length === 0) await say('No faults in this unit').click()
  for (const code of codes) {
    for (const sign of code.replace('-', ''))
      await keys.getByRole('button', { name: sign, exact: true }).click()
    await say('Next code').click()
  }
}

/** Pastes a report that leaves no question into the chapter of faults, and keeps it. */
async function paste(words: string, phase: string): Promise<void> {
  const chapter = page.locator('#chapter-faults')
  const door = chapter.getByRole('button', { name: /^Paste or open a report/ })
  if (!(await door.isVisible())) await chapter.getByText('Add another scan').click()
  await door.click()
  await chapter.getByLabel('The report as text').fill(words)
  await chapter.getByRole('button', { name: 'Read it', exact: true }).click()
  await chapter.getByRole('radio', { name: phase }).check()
  const before = (await keptScans()).length
  await chapter.getByRole('button', { name: 'Keep this scan' }).click()
  await expect.poll(async () => (await keptScans()).length).toBe(before + 1)
  // The form for it goes once it is kept; the next one begins with a form of its own.
  await chapter.getByRole('button', { name: 'Keep this scan' }).waitFor({ state: 'hidden' })
}

describe.skipIf(cannotRun !== null)(
  `faults on the bench${cannotRun === null ? '' : ` (skipped: ${cannotRun})`}`,
  () => {
    beforeAll(async () => {
      await office.start({ demo: true })
      browser = await launch()
      // axe is put in past the page's own policy, as a test tool may.
      context = await browser.newContext({
        viewport: { width: 390, height: 844 },
        hasTouch: true,
        bypassCSP: true,
        serviceWorkers: 'block',
      })
      page = await context.newPage()
      page.on('pageerror', (error) => mishaps.push(error.message))
      await openFromBoard(page, office.url, 'Estate car, spare wanted')
    })
    afterAll(async () => {
      await browser?.close()
      await office.close()
    })

    it('a PDF gives its lines, and is left without a trace', async () => {
      await openChapter(page, 'arrival')
      await say(/^Paste or open a report/).click()
      const printed = await context.newPage()
      await printed.setContent(
        '<h2>Engine</h2><table><tr><td>P0420-00</td><td>stored</td></tr></table><h2>Brakes</h2><p>No faults stored</p>',
      )
      // The PDF is printed by the Chromium of this machine: nothing of ours makes it.
      const buffer = await printed.pdf()
      await printed.close()
      await page
        .locator('#chapter-arrival input[type=file][accept*=pdf]')
        .setInputFiles({ name: 'report.pdf', mimeType: 'application/pdf', buffer })
      const understood = page.getByRole('region', { name: 'What will be kept' })
      await understood.waitFor()
      await expect.poll(() => understood.textContent()).toMatch(/Engine.*P0420-00.*Brakes.*no fault/)
      await expect
        .poll(() => page.locator('[data-line="2"] mark').first().textContent())
        .toContain('P0420-00')
      await say('Take another report').click()
      await page.locator('#chapter-arrival input[type=file][accept*=pdf]').setInputFiles({
        name: 'broken.pdf',
        mimeType: 'application/pdf',
        buffer: Buffer.from('%PDF-1.7 no'),
      })
      await page
        .getByText(/^The PDF cannot be read/)
        .filter({ visible: true })
        .waitFor()
      expect(await keptScans()).toEqual([])
    })

    it('a pasted report asks what it does not know, one thing at a time, before it can be kept', async () => {
      const paste = page.getByLabel('The report as text')
      await paste.fill(report)
      await say('Read it').click()
      await page.getByText(/^Line 1, “Vehicle check 25 Nov, 41 020 km”, stands above codes/).waitFor()
      expect(await say('Keep this scan').count()).toBe(0)
      await picture('doubts', page.locator('figure', { hasText: 'The report, and what was understood' }))
      await accessible('doubts', '#chapter-arrival')
      await say('No, it is something else').click()
      await page.getByText(/^Line 7, “Comfort box”/).waitFor()
      await page.getByLabel('Its name is rather').fill('Body control')
      await say('Take it').click()
      await page.getByText(/^Line 4 reads “PO562-00”, which looks like P0562-00 with a letter O/).waitFor()
      await page.getByLabel('No, it is').fill('P0562-0')
      await say('Take it').click()
      await page.getByText('That is no trouble code').waitFor()
      await say('Yes, P0562-00').click()
      await page.getByText(/^Line 9 reads “b2203”/).waitFor()
      await say('Leave it out').click()
      await page.getByText(/^Which control unit does U0155-87 \(line 2\) belong to/).waitFor()
      await say('Engine control').click()
      await picture('understood', page.locator('figure', { hasText: 'The report, and what was understood' }))
      await say('Keep this scan').click()
      await sayWho(page)
      await page.getByText('The scan before the work is on record.').waitFor()
      await expect
        .poll(keptScans)
        .toEqual([
          [
            'before',
            [
              ['Engine control', 'U0155-87', 'P0562-00'],
              ['Airbag control', 'B0012-11'],
              ['Body control', 'B1234-00'],
              ['Brakes'],
              ['Gateway'],
            ],
          ],
        ])
    })

    it('the scan after the work is typed with large keys, and one tap says that a unit has none', async () => {
      await openChapter(page, 'faults')
      await say(/^Type the codes/)
        .filter({ visible: true })
        .last()
        .click()
      await type('Engine control', 'P0562-00', 'U0155-87', 'U0140')
      await type('Airbag control', 'B0012-11')
      await type('Brakes', 'U0140-87')
      await type('Gateway')
      await say(/^Body control/)
        .filter({ visible: true })
        .first()
        .click()
      const keys = page.getByRole('group', { name: 'Keys for a fault code' })
      await keys.getByRole('button', { name: 'B' }).click()
      // A keyboard is as good as the keys: 1234 and one too many digits of the failure type taken back.
      await page.keyboard.type('1234055')
      await page.keyboard.press('Backspace')
      await picture('keypad', keys)
      await accessible('keypad', '#chapter-faults')
      await page.keyboard.type('0')
      // The code on the display counts, although nobody tapped "next code".
      await page
        .locator('#chapter-faults')
        .getByRole('radio', { name: 'after the work', exact: true })
        .check()
      await say('Keep this scan').click()
      await page.getByText('The scan after the work is on record.').waitFor()
      await expect
        .poll(async () => (await keptScans())[1])
        .toEqual([
          'after',
          [
            ['Engine control', 'P0562-00', 'U0155-87', 'U0140'],
            ['Airbag control', 'B0012-11'],
            ['Brakes', 'U0140-87'],
            ['Gateway'],
            ['Body control', 'B1234-00'],
          ],
        ])
    })

    it('life lines show what needs attention first, and a tapped strand says no more than it may', async () => {
      const chapter = page.locator('#chapter-faults')
      const strand = (code: string) => chapter.getByRole('button', { name: new RegExp(`^${code}`) })
      await strand('U0140-87').waitFor()
      // There before and still there, and no airbag fault: it needs nobody.
      await expect.poll(() => strand('P0562-00').count()).toBe(0)
      await picture('attention', chapter.getByRole('group', { name: 'Show' }))
      await chapter.getByRole('radio', { name: /^All/ }).check()
      await expect
        .poll(() => strand('P0562-00').locator('.sr').textContent())
        .toBe(': There before the work and still there; before the work: confirmed; after the work: reported')
      await strand('U0140-87').click()
      const detail = chapter.getByText(/^After the scan before the work \(.*\), which did not show it/)
      await detail.waitFor()
      await accessible('life lines', '#chapter-faults')
      await picture('strand', chapter.getByRole('group', { name: 'Show' }))
      await chapter.getByText('The same as a table').click()
      await expect
        .poll(() => chapter.getByRole('row', { name: /^B0012-11 Airbag control/ }).textContent())
        .toContain('There before the work and still there')
      await chapter.getByRole('radio', { name: 'By control unit' }).check()
      await chapter.getByRole('radio', { name: 'Brakes' }).check()
      await expect.poll(() => strand('P0562-00').count()).toBe(0)
      await expect.poll(() => strand('U0140-87').count()).toBe(1)
    })

    it('the circle shows who misses whom', async () => {
      const chapter = page.locator('#chapter-faults')
      await chapter.getByRole('img', { name: 'Arrows between control units: 3 complaints' }).waitFor()
      await chapter.getByText('Brakes misses Body control: U0140-87 (new and not explained)').waitFor()
      await chapter.getByText(/^Engine control misses instruments: U0155-87/).waitFor()
      await picture('circle', chapter.getByRole('heading', { name: 'Who misses whom' }))
    })

    it('clearing is asked for only where it may be, with the airbag barred and why, and leads to a new scan', async () => {
      const chapter = page.locator('#chapter-faults')
      await say('Ask for clearing').click()
      const barred = chapter.getByRole('region', { name: 'Not offered' })
      await expect
        .poll(() => barred.textContent())
        .toContain('B0012-11 Airbag control: It is an airbag fault that was there before the work')
      expect(await chapter.getByRole('checkbox', { name: 'Airbag control' }).count()).toBe(0)
      await chapter.getByRole('checkbox', { name: 'Brakes' }).check()
      await picture('clearing', barred)
      await accessible('clearing', '#chapter-faults')
      await say('Record the clearing').click()
      const kinds = async () => (await keptIn(page)).facts.map((fact) => fact.kind)
      // No caution is ticked: the browser refuses to send the form.
      expect(await kinds()).not.toContain('clear-requested')
      for (const words of [
        /^Every code and its stored details/,
        /emissions readiness/,
        /^Airbag codes from before the work stay/,
      ])
        await chapter.getByRole('checkbox', { name: words }).check()
      await say('Record the clearing').click()
      await chapter.getByText(/^Cleared at \d\d:\d\d: Brakes\.$/).waitFor()
      const asked = async () =>
        (await keptIn(page)).facts.find((fact) => fact.kind === 'clear-requested')?.body
      await expect.poll(asked).toEqual({
        units: ['Brakes'],
        acknowledged: ['scan-saved', 'emissions', 'airbag'],
      })
      await chapter.getByText(/^Switch the ignition off/).waitFor()
      // Right after clearing the unit reports nothing: that is said to prove nothing.
      await chapter.getByText('Add another scan').click()
      await say(/^Type the codes/)
        .filter({ visible: true })
        .last()
        .click()
      await type('Brakes')
      await chapter.getByRole('radio', { name: 'after clearing' }).check()
      await say('Keep this scan').click()
      await chapter.getByText('Cleared, not yet tested again: U0140-87.').waitFor()
      await picture('cleared', chapter.getByText(/^Cleared at/))
      await chapter.getByRole('radio', { name: /^All/ }).check()
      await picture('three-scans', chapter.getByRole('group', { name: 'Show' }))
      expect(mishaps).toEqual([])
    })

    it('asks whether two names are one control unit, and joins them only then', async () => {
      await openChapter(page, 'faults')
      await paste('ENGINE-CONTROL\n  P0562-00 stored', 'after an ignition cycle')
      const asked = page.getByRole('region', { name: 'One control unit or two?' })
      await asked.getByText(/“Engine control” and “ENGINE-CONTROL”/).waitFor()
      await picture('units-asked', asked)
      await asked.getByRole('button', { name: 'One unit', exact: true }).click()
      await asked.waitFor({ state: 'detached' })
      const chapter = page.locator('#chapter-faults')
      await chapter.getByRole('radio', { name: /^All/ }).check()
      await chapter.getByText('Engine control (also: ENGINE-CONTROL)').first().waitFor()
    })

    it('many scans are folded into their moments, or stand side by side with the newest in sight', async () => {
      for (const code of ['P0300-00', 'P0301-00', 'P0302-00'])
        await paste(`Engine control\n  ${code} stored\nBrakes: no faults stored`, 'after an ignition cycle')
      const chapter = page.locator('#chapter-faults')
      await chapter.getByRole('radio', { name: /^All/ }).check()
      await picture('moments', chapter.getByRole('group', { name: 'Columns' }))
      await chapter.getByRole('radio', { name: /^each of \d+ scans/ }).check()
      // The picture scrolls in its frame, not the page; the newest scan is what is seen first.
      const frame = chapter
        .locator('[tabindex="0"]')
        .filter({ has: page.getByRole('button', { expanded: false }) })
        .first()
      await expect.poll(() => frame.evaluate((box) => box.scrollWidth - box.clientWidth)).toBeGreaterThan(0)
      await expect
        .poll(() => frame.evaluate((box) => Math.abs(box.scrollLeft - (box.scrollWidth - box.clientWidth))))
        .toBeLessThan(2)
      await picture('each-scan', chapter.getByRole('group', { name: 'Columns' }))
      await accessible('many scans', '#chapter-faults')
      const strand = chapter.getByRole('button', { name: /^P0302-00/ }).first()
      await expect
        .poll(async () => (await strand.textContent())?.match(/not reported|confirmed|not read/g)?.length)
        .toBeGreaterThan(5)
      await chapter.getByRole('radio', { name: /^Changed/ }).check()
      await expect.poll(() => chapter.getByRole('button', { name: /^P0302-00/ }).count()).toBe(1)
    })

    it('what a recording shows of the work is named as the cause of what it raised', async () => {
      await openFromBoard(page, office.url, 'Small van, five keys stored')
      await openChapter(page, 'faults')
      const recording = join(office.folder, 'after.log')
      writeFileSync(recording, recordingAfter(Math.floor(Date.now() / 1000)))
      await importAs({ page }, recording, 'After the work')
      const chapter = page.locator('#chapter-faults')
      await chapter.getByText(/^Restarting unit .* at \d\d:\d\d explains 1 of them: U0140-87/).waitFor()
      await picture('raised', chapter.getByRole('group', { name: 'Show' }))
      await picture('causes', chapter.getByRole('heading', { name: 'Who misses whom' }))
      await accessible('causes', '#chapter-faults')
    })
  },
)
