import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { chromiumPath, launch, Served } from '../support/served.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const served = new Served()
let browser: Browser

/** Opens every folded chapter; each click takes one out of the list. */
async function openAll(page: Page): Promise<void> {
  const folded = page.locator('section h2 button[aria-expanded=false]')
  for (let left = await folded.count(); left > 0; left = await folded.count()) await folded.first().click()
}

describe.skipIf(chromiumPath === null)('everyone can use the bench', () => {
  beforeAll(async () => {
    await served.start()
    browser = await launch()
  }, 180_000)
  afterAll(async () => {
    await browser?.close()
    await served.stop()
  })

  for (const colorScheme of ['light', 'dark'] as const) {
    it(`board and job page pass WCAG 2.2 AA as axe checks it, ${colorScheme}`, {
      timeout: 180_000,
    }, async () => {
      // The page's own policy forbids inline scripts; axe is put in past it, as a test tool may.
      const context = await browser.newContext({
        viewport: { width: 390, height: 844 },
        colorScheme,
        bypassCSP: true,
      })
      const page = await context.newPage()
      const check = async (what: string) => {
        await page.evaluate(axe)
        const results = await page.evaluate(
          async () =>
            (await (window as unknown as { axe: { run(options: unknown): Promise<AxeResults> } }).axe.run({
              runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
            })) as AxeResults,
        )
        expect(
          results.violations.map((violation) => `${what}: ${violation.id} ${violation.nodes[0]?.html}`),
        ).toEqual([])
      }
      await page.goto(served.url)
      await page.getByText('Small van, five keys stored').waitFor()
      await check('board')
      await page.getByText('Small van, five keys stored').click()
      await page.locator('#chapter-teach').waitFor()
      await openAll(page)
      await check('job')
      await context.close()
    })
  }

  it('targets are at least 48 px high and the whole page works at phone width without sideways scrolling', {
    timeout: 120_000,
  }, async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } })
    await page.goto(served.url)
    await page.getByText('Small van, five keys stored').click()
    await page.locator('#chapter-teach').waitFor()
    await openAll(page)
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('button, input:not(.sr), select, textarea')]
        .map((element) => ({
          words: element.textContent || element.getAttribute('aria-label') || element.outerHTML.slice(0, 80),
          box: (element.closest('label') ?? element).getBoundingClientRect(),
        }))
        .filter(({ box }) => box.height > 0 && box.height < 47.5)
        .map(({ words, box }) => `${words} ${box.height}`),
    )
    expect(small).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
    await page.close()
  })

  it('the next step is reached and the cylinder is read by keyboard and by name', {
    timeout: 120_000,
  }, async () => {
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
      expect(await page.getByRole('button', { name: new RegExp(`^${name}`) }).count(), name).toBeGreaterThan(
        0,
      )
    }
    await page.close()
  })
})
