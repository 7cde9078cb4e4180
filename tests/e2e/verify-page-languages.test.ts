/** The verify page in other languages than English: on a telephone, for a document written in that language. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { makeHandover } from '../../packages/jobfile/src/handover/make.ts'
import { fonts, type SealedJob, sealedJob, vanJob } from '../../packages/jobfile/src/handover/testing/jobs.ts'
import { chromiumPath, launch } from '../support/served.ts'
import { root } from '../support/shearline.ts'

let folder = ''
let pageFile = ''
let browser: Browser
let job: SealedJob
const complaints: string[] = []

beforeAll(async () => {
  if (chromiumPath === null) return
  folder = mkdtempSync(join(tmpdir(), 'shearline-page-'))
  pageFile = join(folder, 'verify.html')
  const built = spawnSync(process.execPath, ['scripts/build-verify-page.mjs', '--out', pageFile], {
    cwd: root,
    encoding: 'utf8',
  })
  if (built.status !== 0) throw new Error(built.stderr)
  job = await sealedJob(vanJob())
  browser = await launch()
})
afterAll(async () => {
  await browser?.close()
  if (folder !== '') rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
})

/** A document in a language, whole or with one bit of a page turned. */
async function documentIn(language: string, whole: boolean): Promise<string> {
  const pdf = await makeHandover({ ...job, language, fonts, madeAt: '2026-01-12T09:41:00.000Z' })
  if (!whole) pdf[20_000] = (pdf[20_000] ?? 0) ^ 1
  const file = join(folder, `${language}-${whole ? 'good' : 'bad'}.pdf`)
  writeFileSync(file, pdf)
  return file
}

/** The page as a telephone opens it whose owner reads these languages, the first one best. */
async function opened(locale: string): Promise<Page> {
  const context = await browser.newContext({
    offline: true,
    locale,
    viewport: { width: 390, height: 844 },
    hasTouch: true,
  })
  const page = await context.newPage()
  page.on('pageerror', (error) => complaints.push(error.message))
  page.on('console', (message) => complaints.push(message.text()))
  await page.goto(pathToFileURL(pageFile).href)
  await page.waitForSelector('#start')
  return page
}

/** What a screen reader or an eye would stumble over, with everything unfolded. */
async function faultsOf(page: Page): Promise<readonly string[]> {
  await page.locator('details').evaluateAll((all) => {
    for (const one of all) one.setAttribute('open', '')
  })
  await page.evaluate(readFileSync(join(root, 'node_modules', 'axe-core', 'axe.min.js'), 'utf8'))
  const found = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: { run(): Promise<{ violations: { id: string }[] }> } }
    return (await axe.run()).violations.map(({ id }) => id)
  })
  const width = await page.evaluate(() => document.documentElement.scrollWidth)
  return width > 390 ? [...found, `the page is ${width} px wide`] : found
}

const spoken = [
  {
    language: 'de',
    locale: 'de-AT',
    dir: 'ltr',
    title: 'Ein Übergabedokument prüfen',
    holds: 'Es hält',
    fails: 'Es hält nicht',
    hashes: /\d+ Hashes wurden neu gebildet und stimmen/,
  },
  {
    language: 'ar',
    locale: 'ar-EG',
    dir: 'rtl',
    title: 'التحقق من وثيقة تسليم',
    holds: 'تصح',
    fails: 'لا تصح',
    hashes: /حُسبت [0-9]+ بصمة من جديد وهي صحيحة/,
  },
] as const

describe.skipIf(chromiumPath === null)('the verify page in the language of whoever opens it', () => {
  it('is small enough to go with a bundle, with the words of every language inside', () => {
    expect(statSync(pageFile).size).toBeLessThan(650_000)
  })

  it.each(spoken)(
    'proves and faults a document in $language, and can be read and worked on a telephone',
    async ({ language, locale, dir, title, holds, fails, hashes }) => {
      const page = await opened(locale)
      await expect.poll(() => page.locator('html').getAttribute('lang')).toBe(language)
      await expect.poll(() => page.locator('html').getAttribute('dir')).toBe(dir)
      await expect.poll(() => page.title()).toBe(title)
      await expect.poll(() => page.textContent('h1')).toBe(title)
      expect(await faultsOf(page)).toEqual([])

      await page.setInputFiles('#file', await documentIn(language, true))
      await page.waitForSelector('#result')
      await expect.poll(() => page.textContent('#verdict')).toBe(holds)
      // The pages were worded again in this language from the words that lie packed in the page.
      const marks = () =>
        page.locator('[data-check]').evaluateAll((all) => all.map((one) => one.getAttribute('data-mark')))
      await expect.poll(marks).toEqual(['holds', 'holds', 'holds', 'holds', 'holds'])
      await expect.poll(() => page.textContent('[data-check="check.hashes"]')).toMatch(hashes)
      expect(await faultsOf(page)).toEqual([])

      await page.goto(pathToFileURL(pageFile).href)
      await page.setInputFiles('#file', await documentIn(language, false))
      await page.waitForSelector('#result')
      await expect.poll(() => page.textContent('#verdict')).toBe(fails)
      // Findings are English so far, and say so to whoever has them read out.
      for (const part of ['strong', '.what', '.next'])
        expect(
          await page
            .locator(`.wrong li ${part}`)
            .evaluateAll((all) => all.every((one) => one.matches('[lang="en"][dir="ltr"]'))),
        ).toBe(true)
      expect(await page.locator('.wrong li').count()).toBeGreaterThan(0)
      expect(await faultsOf(page)).toEqual([])
      await page.context().close()
    },
  )

  it('begins in English when it speaks none of the languages, and changes without losing what is there', async () => {
    const page = await opened('nl-NL')
    const select = page.locator('#language')
    expect(await select.inputValue()).toBe('en')
    expect(await select.locator('option').allTextContents()).toEqual([
      'English',
      'Deutsch',
      'Français',
      'Español',
      'Polski',
      'العربية',
    ])
    expect((await select.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(48)
    await page.setInputFiles('#file', await documentIn('en', true))
    await page.waitForSelector('#result')
    await page.fill('#fingerprint', 'ab12')
    await page
      .locator('details')
      .first()
      .evaluate((one) => one.setAttribute('open', ''))
    await select.selectOption('pl')
    await expect.poll(() => page.textContent('#verdict')).toBe('Zgadza się')
    await expect.poll(() => page.inputValue('#fingerprint')).toBe('ab12')
    await expect.poll(() => page.textContent('#compared')).toContain('wpisano 4 znaki')
    await expect.poll(() => page.locator('details[open]').count()).toBe(1)
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('language')
    for (const language of ['fr', 'es', 'ar', 'de']) {
      await select.selectOption(language)
      await expect.poll(() => page.locator('html').getAttribute('lang')).toBe(language)
      expect(await faultsOf(page)).toEqual([])
    }
    await page.context().close()
  })

  it('gave the browser nothing to complain of', () => {
    expect(complaints).toEqual([])
  })
})
