import { mkdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { directionOf, languages } from '@shearline/jobfile'
import type { AxeResults } from 'axe-core'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { en } from '../../apps/bench/src/words/en.ts'
import { ownNames } from '../../apps/bench/src/words/languages.ts'
import { chromiumPath, launch, Served } from '../support/served.ts'

/** Screenshots at three sizes go here when asked for, to be looked at. */
const shots = process.env.SHEARLINE_SHOTS
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

const served = new Served()
let browser: Browser

/** English sentences without places: none of them may stand on a page of another language. What people wrote stays theirs. */
const sentences = Object.values(en).filter(
  (text) => !text.includes('{') && text.split(' ').length > 2 && text !== en['power.who-says.maker'],
)

async function picture(page: Page, name: string): Promise<void> {
  if (shots === undefined) return
  mkdirSync(shots, { recursive: true })
  for (const [width, height] of [
    [390, 844],
    [820, 1180],
    [1440, 900],
  ] as const) {
    await page.setViewportSize({ width, height })
    await page.waitForTimeout(300)
    await page.screenshot({ path: join(shots, `${name}-${width}.png`) })
  }
  await page.setViewportSize({ width: 390, height: 844 })
}

/** What a page of another language must not hold: English sentences of ours, and anything wider than the screen. */
async function judge(page: Page, where: string): Promise<void> {
  const text = (await page.getByRole('main').textContent()) ?? ''
  expect(
    sentences.filter((sentence) => text.includes(sentence)),
    where,
  ).toEqual([])
  expect(await page.evaluate(() => document.documentElement.scrollWidth), where).toBeLessThanOrEqual(390)
  await page.evaluate(axe)
  const results = await page.evaluate(
    async () =>
      (await (window as unknown as { axe: { run(options: unknown): Promise<AxeResults> } }).axe.run({
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
      })) as AxeResults,
  )
  expect(
    results.violations.map((violation) => `${where}: ${violation.id} ${violation.nodes[0]?.html}`),
  ).toEqual([])
}

describe.skipIf(chromiumPath === null)('the bench in every language, in Chromium', () => {
  beforeAll(async () => {
    await served.start()
    browser = await launch()
  }, 180_000)
  afterAll(async () => {
    await browser?.close()
    await served.stop()
  })

  it("speaks the first of the browser's languages that it has, and any other when chosen", async () => {
    const context = await browser.newContext({ locale: 'pl-PL', viewport: { width: 390, height: 844 } })
    const page = await context.newPage()
    await page.goto(`${served.url}#/device`)
    await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('pl')
    await page.getByRole('radio', { name: ownNames.fr }).check()
    await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('fr')
    await page.reload()
    await page.getByRole('radio', { name: ownNames.fr, checked: true }).waitFor()
    await context.close()
  })

  it.each(languages.filter((language) => language !== 'en'))(
    'in "%s": board, job with every chapter open, device page',
    { timeout: 180_000 },
    async (language) => {
      const context = await browser.newContext({
        locale: language,
        viewport: { width: 390, height: 844 },
        bypassCSP: true,
      })
      const page = await context.newPage()
      const problems: string[] = []
      page.on('pageerror', (error) => problems.push(error.message))
      await page.goto(served.url)
      await page.getByText('Small van, five keys stored').waitFor()
      expect(
        await page.evaluate(() => [document.documentElement.lang, document.documentElement.dir]),
      ).toEqual([language, directionOf(language)])
      await judge(page, 'board')
      await picture(page, `${language}-board`)
      await page.getByText('Small van, five keys stored').click()
      await page.locator('[id^=chapter-] h2 button').first().waitFor()
      const folded = page.locator('[id^=chapter-] h2 button[aria-expanded=false]')
      while ((await folded.count()) > 0) await folded.first().click()
      await judge(page, 'job')
      await picture(page, `${language}-job`)
      await page.goto(`${served.url}#/device`)
      await page.getByRole('radio', { name: ownNames[language], checked: true }).waitFor()
      await judge(page, 'device page')
      await picture(page, `${language}-device`)
      expect(problems).toEqual([])
      await context.close()
    },
  )
})
