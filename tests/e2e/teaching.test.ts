import { foldJob, type JobState } from '@shearline/jobfile'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { goToJob, openChapter, part } from '../support/by-hand.ts'
import { faultsOfAccess, lookAt } from '../support/looked-at.ts'
import { launch } from '../support/served.ts'
import { cannotRun, keptIn, Office } from '../support/tablets.ts'
import { teachVan } from '../support/van-job.ts'

const job = 'demo-estate'
const office = new Office()
let browser: Browser
let context: BrowserContext
let page: Page

/** The job as this device folds what it holds; it needs no server for that. */
const picture = (name: string, at: string) =>
  lookAt(page, `teaching-${name}`, { at: page.locator(at).first() })
const usable = async (what: string) =>
  expect(await faultsOfAccess(page, 'html', { themes: ['light', 'dark'] }), what).toEqual([])

const state = async (): Promise<JobState> => {
  const { facts } = await keptIn(page)
  return foldJob(job, facts)
}

const guide = () => page.locator('#chapter-teach')

async function take(key: string, count: number): Promise<void> {
  const step = part(page, `key-not-taught:${key}`)
  await step.getByRole('textbox', { name: 'Count the car shows' }).fill(String(count))
  await step.getByRole('button', { name: `Key ${key} is taken` }).click()
  await guide().getByText(`Key ${key} is taught`).waitFor()
}

describe.skipIf(cannotRun !== null)(
  `teaching on the bench, in Chromium${cannotRun === null ? '' : `: ${cannotRun}`}`,
  () => {
    beforeAll(async () => {
      await office.start({ demo: true })
      browser = await launch()
      context = await browser.newContext({ viewport: { width: 390, height: 844 }, bypassCSP: true })
      page = await context.newPage()
      await page.goto(`${office.url}#/device`)
      await page.getByLabel('Your name').fill('technician')
      await page.getByRole('button', { name: 'Keep', exact: true }).click()
      await page.getByText('saved here').first().waitFor()
    })
    afterAll(async () => {
      await browser?.close()
      await office.close()
    })

    it('chooses a rule with what is not known, and shows where the car may be stranded', async () => {
      await goToJob(page, office.url, job, 'Estate car, spare wanted')
      await openChapter(page, 'plan')
      const fresh = page.locator('#chapter-plan section', { hasText: 'The new key' }).last()
      await fresh.getByRole('radio', { name: 'Proximity key' }).check()
      await fresh.getByRole('radio', { name: 'plum' }).check()
      await fresh.getByRole('button', { name: 'Label it B' }).click()

      const rule = part(page, 'rule-not-chosen')
      await picture('behaviours', '[data-need="rule-not-chosen"]')
      await rule.getByRole('button', { name: /^Rewrites the list with the first key/ }).click()
      const onBreak = rule.locator('[data-path="onBreak"]')
      await onBreak.getByRole('radio', { name: 'not known' }).check()
      await onBreak.getByText('Not known: a break-off may leave no key at all.').waitFor()
      await picture('rule', '[data-need="rule-not-chosen"]')

      // A figure that is said to be known and is not given is named at its question, in a group that was folded.
      await rule.getByText('How long things take').click()
      const wait = rule.locator('[data-path="seconds.afterBreak"]')
      await wait.getByRole('radio', { name: 'known', exact: true }).check()
      await rule.getByRole('textbox', { name: 'Where you know it from' }).fill('own notes')
      await rule.getByRole('textbox', { name: /^Keep it under a name/ }).fill('Estates of this firm')
      await rule.getByText('How long things take').click()
      await rule.getByRole('button', { name: 'Use this rule' }).click()
      await wait.getByText('Give a figure, or say that it is not known.').waitFor()
      await usable('rule')
      await wait.getByRole('textbox', { name: 'Minutes' }).fill('5')
      await wait.getByRole('textbox', { name: 'Minutes' }).blur()
      await rule.getByRole('button', { name: 'Use this rule' }).click()
      await rule
        .getByText('Keys that are not here stop working as soon as the first key is taken.')
        .first()
        .waitFor()

      const rehearsal = part(page, 'rehearsal-not-read')
      const line = rehearsal.getByRole('region', { name: 'The session as a line of steps' })
      await line.getByText('stranded').first().waitFor()
      // Nobody knows what a break leaves: it may be nothing, at every step (ENR-12, ENR-18).
      await expect.poll(() => line.getByRole('button', { name: /stranded/ }).count()).toBe(3)
      await rehearsal.getByText('The supply was lost').first().click()
      await rehearsal.getByText('To drive away:').first().waitFor()
      await usable('rehearsal')
      await picture('rehearsal', '[data-need="rehearsal-not-read"]')
      await rehearsal.getByRole('button', { name: 'I have read it' }).click()
      await rehearsal.getByText('Read in the order A, B.').waitFor()
    })

    it('guides a session, is stopped, and keeps the penalty clock running over a reload', async () => {
      await openChapter(page, 'teach')
      await guide().getByRole('button', { name: 'The session is open' }).click()
      await guide().getByText('Show key A to the car').waitFor()
      await guide().getByText('Step 2 of 4').waitFor()
      await usable('guide')
      await picture('guide', '#chapter-teach')
      await take('A', 1)
      await guide().getByText('1 of 2 keys taken').waitFor()

      // By keyboard: the way to say that it stopped stands in the bar at all times.
      await page.getByRole('navigation').getByRole('button', { name: 'it stopped' }).focus()
      await page.keyboard.press('Enter')
      const dialog = page.getByRole('dialog', { name: 'It stopped after key A' })
      await dialog.getByRole('radio', { name: 'the supply was lost' }).waitFor()
      await page.keyboard.press('Escape')
      await dialog.waitFor({ state: 'detached' })
      await guide().getByRole('button', { name: 'it stopped' }).click()
      await dialog.getByRole('radio', { name: 'the supply was lost' }).check()
      await dialog.getByText('No key here is certain to start the car.').waitFor()
      await picture('it-stopped', 'dialog')
      await dialog.getByRole('button', { name: 'Record that it stopped' }).click()

      const recovery = guide().getByRole('region', { name: 'It stopped after key A' })
      const clock = recovery.getByRole('timer')
      await clock.waitFor()
      const seconds = async () => {
        const [minutes = 0, rest = 0] = ((await clock.textContent()) ?? '').split(':').map(Number)
        return minutes * 60 + rest
      }
      const before = await seconds()
      expect(before).toBeLessThanOrEqual(300)
      expect(before).toBeGreaterThan(200)
      await usable('recovery')
      await picture('recovery', '#chapter-teach')
      await page.reload()
      await clock.waitFor()
      await expect.poll(seconds).toBeLessThan(before)
    })

    it('follows the way back, finishes, and wants every key tried again', async () => {
      await guide().getByRole('button', { name: 'Done' }).click()
      await guide().getByRole('heading', { name: 'Open a new session' }).waitFor()
      await guide().getByRole('button', { name: 'The session is open' }).click()
      // The list that a break may have lost is written anew: key A again, then key B.
      await take('A', 1)
      await take('B', 2)
      const close = part(page, 'session-not-closed')
      await close.getByRole('textbox', { name: 'Count the car shows' }).fill('2')
      await close.getByRole('button', { name: 'The session is closed' }).click()
      await guide().getByText('The session is closed.').waitFor()

      await openChapter(page, 'prove')
      const prove = page.locator('#chapter-prove')
      await prove.getByText('Every key again: 0 of 2').waitFor()
      const wanted = async () =>
        (await state()).tumblers
          .find((tumbler) => tumbler.name === 'keys')
          ?.needs.filter((need) => need.code === 'retest-after-break').length
      await expect.poll(wanted).toBe(2)
      await usable('prove')
      await picture('prove', '#chapter-prove')
      await prove.getByRole('button', { name: 'Key A starts the car' }).click()
      await prove.getByText('Every key again: 1 of 2').waitFor()
      await prove.getByRole('button', { name: 'Key B starts the car' }).click()
      await prove.getByText('Every key again: 2 of 2').waitFor()
      await expect.poll(wanted).toBe(0)
      const started = async () =>
        (await state()).grid.rows.map(
          ({ after }) => after.find((cell) => cell.function === 'passive-start')?.outcome,
        )
      await expect.poll(started).toEqual(['works', 'works'])
      const { teaching } = await state()
      expect([teaching.breakOff, teaching.sessionClosed, teaching.taught]).toEqual([null, true, ['A', 'B']])
    })

    it('offers the rule under its own name in the next job, and takes back a key noted by mistake', async () => {
      await goToJob(page, office.url, 'demo-van', 'Small van, five keys stored')
      await openChapter(page, 'plan')
      const rule = part(page, 'rule-not-chosen')
      await rule.getByText('Choose another rule').click()
      await rule.getByRole('button', { name: /^Estates of this firm/ }).click()
      await expect
        .poll(() => rule.locator('[data-path="onBreak"] input[value=unknown]').isChecked())
        .toBe(true)

      await openChapter(page, 'teach')
      await guide().getByRole('button', { name: 'Take back' }).click()
      const dialog = page.getByRole('dialog', { name: 'Withdraw this?' })
      await dialog.getByRole('textbox').fill('Key A was not shown yet.')
      await dialog.getByRole('button', { name: 'Withdraw' }).click()
      // While it is open nothing behind it takes what is typed.
      await dialog.waitFor({ state: 'detached' })
      await guide().getByText('Show key A to the car').waitFor()
      await take('A', 1)
      await teachVan({ page, standing: state }, false)
    })
  },
)
