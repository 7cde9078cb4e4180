/** @module Rules of the firm read from a file, what they make due, and holds, in real Chromium and a real server. */
import { neutralPack, type PolicyPack, packLabel, readPolicyPack } from '@shearline/jobfile'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { goToJob, openChapter, openFromBoard, openPhone, sayWho } from '../support/by-hand.ts'
import { faultsOfAccess, lookAt } from '../support/looked-at.ts'
import { launch } from '../support/served.ts'
import { cannotRun, keptIn, Office } from '../support/tablets.ts'

const title = 'Estate car, spare wanted'
const office = new Office()
const mishaps: string[] = []
let browser: Browser
let page: Page

/** Rules of an invented firm by which everything is due on the day it is recorded. */
const hasty: PolicyPack = {
  ...neutralPack,
  name: 'Harbour rules',
  region: 'Harbour district',
  dated: '2026-11-20',
  retention: {
    ...neutralPack.retention,
    rules: neutralPack.retention.rules.map((rule) => ({
      ...rule,
      days: 0,
      trigger: 'recorded',
      source: 'our own rule 7',
    })),
  },
  radio: { ...neutralPack.radio, region: 'japan' },
}

const json = (name: string, value: unknown) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(typeof value === 'string' ? value : JSON.stringify(value)),
})
const custody = (on: Page) =>
  on.locator('#chapter-close section', {
    has: on.getByRole('heading', { name: 'What is kept, and until when' }),
  })
const due = () => page.locator('main li', { has: page.getByRole('link', { name: title }) })

describe.skipIf(cannotRun !== null)(
  `custody on the bench${cannotRun === null ? '' : ` (skipped: ${cannotRun})`}`,
  () => {
    beforeAll(async () => {
      await office.start({ demo: true })
      browser = await launch()
      page = await openPhone(browser, mishaps)
      await openFromBoard(page, office.url, title)
    })
    afterAll(async () => {
      await browser?.close()
      await office.close()
    })

    it('a pack with wrong places is not read, and every place is named; no JSON says so; a right one is kept', async () => {
      await page.goto(`${office.url}#/rules`)
      const file = page.getByLabel('Read a pack from a file')
      const rules = hasty.retention.rules.map((rule, index) => (index === 1 ? { ...rule, days: -3 } : rule))
      const wrong = {
        ...hasty,
        dated: 'last Friday',
        retention: { ...hasty.retention, rules },
        radio: { ...hasty.radio, region: 'atlantis' },
        extra: true,
      }
      const read = readPolicyPack(wrong)
      const places = read.ok ? [] : read.troubles.map(({ path }) => path)
      expect([...places].sort()).toEqual(['(pack)', 'dated', 'radio.region', 'retention.rules.1.days'])
      await file.setInputFiles(json('wrong.json', wrong))
      const alert = page.getByRole('alert')
      await alert.getByText('4 places are wrong, so nothing was read:').waitFor()
      await expect
        .poll(async () => (await alert.locator('li code').allTextContents()).sort())
        .toEqual([...places].sort())
      await lookAt(page, 'custody-pack-wrong', { at: alert })
      expect(await faultsOfAccess(page, 'main')).toEqual([])

      await file.setInputFiles(json('torn.json', '{"format": "shearline-policy-pack",'))
      await alert.getByText(/^The file is no JSON, so nothing was read: ./).waitFor()
      expect(await page.getByRole('heading', { name: hasty.name }).count()).toBe(0)

      await file.setInputFiles(json('right.json', hasty))
      await page.getByText('Read: Harbour rules. It is kept on this device.').waitFor()
      await alert.waitFor({ state: 'detached' })
      await page.getByRole('button', { name: `Begin new jobs with it: ${hasty.name}` }).click()
      await page.locator('[data-usual=true]', { hasText: hasty.name }).waitFor()
      await lookAt(page, 'custody-pack-read')
    })

    it('a job chooses the pack, which goes on record by its name, and then decides the periods', async () => {
      await goToJob(page, office.url, 'demo-estate', title)
      await openChapter(page, 'authority')
      const rules = page.locator('#chapter-authority section', {
        has: page.getByRole('heading', { name: 'Rules of place and firm' }),
      })
      for (const folded of ['Rules to work by', 'Work by other rules']) {
        const summary = rules.locator('summary', { hasText: folded })
        if ((await summary.count()) > 0) await summary.first().click()
      }
      await rules.getByRole('radio', { name: packLabel(hasty) }).check()
      await rules.getByRole('button', { name: 'Work by these rules' }).click()
      await sayWho(page)
      await rules.getByText(`This job works by: ${packLabel(hasty)}.`).waitFor()
      await lookAt(page, 'custody-pack-chosen', { at: rules })
      const answered = async () =>
        (await keptIn(page)).facts.filter(({ kind }) => kind === 'policy-answered').at(-1)?.body
      await expect.poll(answered).toMatchObject({ pack: packLabel(hasty) })
      await openChapter(page, 'close')
      await custody(page).getByText('Periods: Harbour rules').first().waitFor()
      await expect.poll(() => custody(page).textContent()).toMatch(/due since/)
    })

    it('what is due is listed with its rule; a hold stops it until it is lifted', async () => {
      await page.goto(`${office.url}#/keeping`)
      await expect
        .poll(() => due().first().textContent())
        .toMatch(/since .*0 days from recording.*our own rule 7/)
      expect(await page.getByText(/^Held, so it stays/).count()).toBe(0)
      await due().first().getByRole('link').click()
      await page.getByRole('heading', { level: 1, name: title }).waitFor()

      await openChapter(page, 'close')
      await custody(page).locator('summary', { hasText: 'Let nothing be deleted' }).click()
      await custody(page).getByLabel('Why, and on whose demand').fill('Insurer asks, letter of Monday')
      await custody(page).getByRole('button', { name: 'Hold everything of this job' }).click()
      await custody(page)
        .getByText(/^Nothing of this job may be deleted: Insurer asks, letter of Monday \(technician, /)
        .waitFor()
      await lookAt(page, 'custody-hold', { at: custody(page) })
      expect(await faultsOfAccess(page, '#chapter-close')).toEqual([])

      await page.goto(`${office.url}#/keeping`)
      await due().first().getByText('Held, so it stays: Insurer asks, letter of Monday').waitFor()
      const notHeld = due().filter({ hasNot: page.getByText(/^Held, so it stays/) })
      await expect.poll(() => notHeld.count()).toBe(0)
      await lookAt(page, 'custody-due')
      expect(await faultsOfAccess(page, 'main')).toEqual([])

      await due().first().getByRole('link').click()
      await page.getByRole('heading', { level: 1, name: title }).waitFor()
      await openChapter(page, 'close')
      await custody(page).locator('summary', { hasText: 'End this hold' }).click()
      await custody(page).getByLabel('Reason').first().fill('The insurer has its copy')
      await custody(page).getByRole('button', { name: 'End this hold' }).click()
      await expect
        .poll(() =>
          custody(page)
            .getByText(/^Nothing of this job may be deleted/)
            .count(),
        )
        .toBe(0)
      await page.goto(`${office.url}#/keeping`)
      await due().first().waitFor()
      await expect.poll(() => page.getByText(/^Held, so it stays/).count()).toBe(0)
      expect(mishaps).toEqual([])
    })
  },
)
