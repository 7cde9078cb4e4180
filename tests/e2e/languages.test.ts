import { directionOf, languages } from '@shearline/jobfile'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { en } from '../../apps/bench/src/words/en.ts'
import { ownNames } from '../../apps/bench/src/words/languages.ts'
import { openAllChapters } from '../support/by-hand.ts'
import { axeFaults, lookAt, tooWide } from '../support/looked-at.ts'
import { chromiumPath, launch, Served } from '../support/served.ts'

const served = new Served()
let browser: Browser

/** English sentences without places: none of them may stand on a page of another language. What people wrote stays theirs. */
const sentences = Object.values(en).filter(
  (text) =>
    !text.includes('{') &&
    text.split(' ').filter((word) => /\p{L}/u.test(word)).length > 2 &&
    text !== en['power.who-says.maker'],
)

/** What a page of another language must not hold: English sentences of ours, and anything wider than the screen. */
async function judge(page: Page, where: string): Promise<void> {
  const text = (await page.getByRole('main').textContent()) ?? ''
  expect(
    sentences.filter((sentence) => text.includes(sentence)),
    where,
  ).toEqual([])
  expect([...(await axeFaults(page)), ...(await tooWide(page))], where).toEqual([])
}

describe.skipIf(chromiumPath === null)('the bench in every language, in Chromium', () => {
  beforeAll(async () => {
    await served.start()
    browser = await launch()
  })
  afterAll(async () => {
    await browser?.close()
    await served.stop()
  })

  it("speaks the first of the browser's languages that it has, and any other when chosen", async () => {
    const context = await browser.newContext({ locale: 'pl-PL', viewport: { width: 390, height: 844 } })
    const page = await context.newPage()
    await page.goto(`${served.url}#/device`)
    await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('pl')
    // The words are brought first: the radio shows the choice when it can be spoken.
    await page.getByRole('radio', { name: ownNames.fr }).click()
    await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('fr')
    await page.reload()
    await page.getByRole('radio', { name: ownNames.fr, checked: true }).waitFor()
    await context.close()
  })

  it.each(languages.filter((language) => language !== 'en'))(
    'in "%s": board, job with every chapter open, device page',
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
      await expect
        .poll(() => page.evaluate(() => [document.documentElement.lang, document.documentElement.dir]))
        .toEqual([language, directionOf(language)])
      await judge(page, 'board')
      await lookAt(page, `${language}-board`, { themes: [] })
      await page.getByText('Small van, five keys stored').click()
      await page.locator('[id^=chapter-] h2 button').first().waitFor()
      await openAllChapters(page)
      await judge(page, 'job')
      await lookAt(page, `${language}-job`, { themes: [] })
      await page.goto(`${served.url}#/device`)
      await page.getByRole('radio', { name: ownNames[language], checked: true }).waitFor()
      await judge(page, 'device page')
      await lookAt(page, `${language}-device`, { themes: [] })
      expect(problems).toEqual([])
      await context.close()
    },
  )
})
