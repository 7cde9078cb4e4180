import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openAllChapters } from '../support/by-hand.ts'
import { axeFaults, lowControls, tooWide } from '../support/looked-at.ts'
import { chromiumPath, launch, Served } from '../support/served.ts'

const served = new Served()
let browser: Browser

describe.skipIf(chromiumPath === null)('everyone can use the bench', () => {
  beforeAll(async () => {
    await served.start()
    browser = await launch()
  })
  afterAll(async () => {
    await browser?.close()
    await served.stop()
  })

  for (const colorScheme of ['light', 'dark'] as const) {
    it(`board and job page pass WCAG 2.2 AA as axe checks it, ${colorScheme}`, async () => {
      // The page's own policy forbids inline scripts; axe is put in past it, as a test tool may.
      const context = await browser.newContext({
        viewport: { width: 390, height: 844 },
        colorScheme,
        bypassCSP: true,
      })
      const page = await context.newPage()
      const check = async (what: string) => expect(await axeFaults(page), what).toEqual([])
      await page.goto(served.url)
      await page.getByText('Small van, five keys stored').waitFor()
      await check('board')
      await page.getByText('Small van, five keys stored').click()
      await page.locator('#chapter-teach').waitFor()
      await openAllChapters(page)
      await check('job')
      await context.close()
    })
  }

  it('targets are at least 48 px high and the whole page works at phone width without sideways scrolling', async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } })
    await page.goto(served.url)
    await page.getByText('Small van, five keys stored').click()
    await page.locator('#chapter-teach').waitFor()
    await openAllChapters(page)
    expect([...(await lowControls(page)), ...(await tooWide(page))]).toEqual([])
    await page.close()
  })

  it('the next step is reached and the cylinder is read by keyboard and by name', async () => {
    const page = await browser.newPage({ viewport: { width: 820, height: 1180 } })
    await page.goto(served.url)
    await page.getByText('Small van, five keys stored').waitFor()
    for (let presses = 0; presses < 40; presses++) {
      await page.keyboard.press('Tab')
      if ((await page.evaluate(() => document.activeElement?.textContent ?? '')).includes('Small van')) break
    }
    await page.keyboard.press('Enter')
    await page.locator('#chapter-teach').waitFor()
    for (const name of ['Authority', 'Identity', 'Keys', 'Power', 'Teaching', 'Faults', 'Record']) {
      await page
        .getByRole('button', { name: new RegExp(`^${name}`) })
        .first()
        .waitFor()
    }
    await page.close()
  })
})
