/** @module Exercises at the practice car in the real bench: code gate, waiting, restoring, and nothing left behind. */
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { faultsOfAccess, lookAt } from '../support/looked-at.ts'
import { launch } from '../support/served.ts'
import { cannotRun, keptIn, Office, untilKept } from '../support/tablets.ts'

const office = new Office()
let browser: Browser
let context: BrowserContext
let page: Page

const press = (name: string | RegExp) => page.getByRole('button', { name, exact: true }).first().click()
const log = () => page.getByRole('log')
const happened = (words: string) => log().getByText(words).last().waitFor()

async function begin(exercise: string): Promise<void> {
  await page.goto(`${office.url}#/practice`)
  await page.getByRole('link', { name: exercise }).click()
  await page.getByRole('heading', { level: 1, name: exercise }).waitFor()
}

const picture = (name: string) => lookAt(page, `practice-${name}`, { fullPage: true })
const usable = async (what: string) =>
  expect(
    await faultsOfAccess(page, 'html', { themes: ['light', 'dark'], controlsWithin: 'main', also: 'a' }),
    what,
  ).toEqual([])

async function teach(...keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    await press(`Key ${key} is taken`)
    await happened(`Key ${key} was taken`)
  }
}

async function prove(...keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    await press(`Try to start with key ${key}`)
    await happened(`Key ${key} starts the car.`)
    await press(`Try the buttons of key ${key}`)
    await happened(`The buttons of key ${key} work.`)
  }
}

async function points(): Promise<string | null> {
  await press('Finish and see the points')
  const head = page.getByRole('heading', { name: /of 100 points/ })
  // The button that was pressed is gone: reading goes on here.
  await expect.poll(() => head.evaluate((one) => one === document.activeElement)).toBe(true)
  return head.textContent()
}

describe.skipIf(cannotRun !== null)('practice in the bench', () => {
  beforeAll(async () => {
    await office.start()
    browser = await launch()
    context = await browser.newContext({ viewport: { width: 390, height: 844 } })
    page = await context.newPage()
  })

  afterAll(async () => {
    await browser?.close()
    await office.close()
  })

  it('a code that is refused costs a wait, counted down, and the practice clock can be moved on', async () => {
    await begin('The code was misread')
    await picture('begin')
    await usable('practice')
    await press('Scan all units')
    await press('Connect 30 A')
    // The car decides, not the note: without the code no session opens.
    await press('The session is open')
    await page.getByText('The car says otherwise. The car wants the code first.').waitFor()
    await press('Enter the code')
    await happened('takes no other for 20 minutes')
    await press('The code was refused')
    const clock = page.getByRole('timer').first()
    await clock.waitFor()
    // Counted down from twenty minutes by the clock of the wall, of which a slow machine takes its share.
    expect(await clock.textContent()).toMatch(/^(20:00|1[5-9]:\d\d)$/)
    await picture('code-waits')
    await press('Enter the code')
    await happened('The car still waits')
    await press('Let 20 min pass')
    await page.getByText('The time is over.').waitFor()
    await press('Enter the code')
    await happened('The car takes the code.')
    await press('The session is open')
    await teach('A', 'B', 'N')
    await press('The session is closed')
    await happened('3 keys are stored')
    await prove('A', 'B', 'N')
    await press('Scan all units')
    expect(await points()).toBe('100 of 100 points')
    await picture('points')
  })

  it('the session dies after key 2: the guide gets them home', async () => {
    await begin('The session dies after the second key')
    await press('Scan all units')
    await press('Connect 30 A')
    await press('The session is open')
    await teach('A', 'B')
    await happened('The supply is gone!')
    // What was not taken is not noted.
    await press('Key N is taken')
    await page.getByText('The car says otherwise. Key N was shown, but no session is open.').waitFor()
    await press('it stopped')
    const dialog = page.getByRole('dialog')
    await dialog.getByRole('radio', { name: 'the supply was lost' }).check()
    await dialog.getByRole('button', { name: 'Record that it stopped' }).click()
    await page.getByRole('region', { name: /It stopped/ }).waitFor()
    await picture('stopped')
    await usable('stopped')
    await press('The session is open')
    await teach('A', 'B', 'N')
    await press('The session is closed')
    await prove('A', 'B', 'N')
    await press('Scan all units')
    expect(await points()).toBe('100 of 100 points')
  })

  it('an erased list is put back from the backup, step by step', async () => {
    await begin('The list is erased, then the link goes')
    await press('Scan all units')
    await press('Connect 30 A')
    await press('The session is open')
    await happened('The link to the car is lost!')
    await press('it stopped')
    const dialog = page.getByRole('dialog')
    await dialog.getByRole('radio', { name: 'the connection was lost' }).check()
    await dialog.getByRole('button', { name: 'Record that it stopped' }).click()
    const recovery = page.getByRole('region', { name: /It stopped/ })
    await recovery.getByText('no key', { exact: false }).first().waitFor()
    await recovery.getByRole('heading', { name: 'Put the backup back' }).waitFor()
    await picture('restore')
    await recovery.getByRole('button', { name: 'Done', exact: true }).click()
    await happened('The saved list is back; 2 keys are stored.')
    await prove('A')
    await press('Put a new cell into key B')
    await prove('B')
    expect(await points()).toBe('70 of 100 points')
    await page.getByText('Key N does not start the car.').waitFor()
  })

  it('works without the office, and leaves nothing in this browser nor on the server', async () => {
    await page.goto(`${office.url}#/`)
    await untilKept(page)
    await office.kill()
    await begin('One more key')
    await press('The session is open')
    await teach('N')
    const kept = await keptIn(page)
    expect([kept.facts, kept.outbox, kept.blobs, kept.documents]).toEqual([[], [], [], []])
    await page.goto(`${office.url}#/practice`)
    await picture('choose')
    await usable('choosing an exercise')
    await office.start()
    expect(await office.ask<{ jobs?: readonly unknown[] }>('api/jobs')).not.toHaveProperty('jobs.0')
  })
})
