/** What a person does on the bench in many tests: open a job and its chapters, say who works, choose a file. */
import type { Browser, Locator, Page } from 'playwright-core'
import { expect } from 'vitest'

/** A fresh device as large as a phone, in which axe may look; what goes wrong on its page is added to `mishaps`. */
export async function openPhone(browser: Browser, mishaps: string[]): Promise<Page> {
  // The service worker would keep answering for a server that is gone; axe is put in past the page's own policy.
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    bypassCSP: true,
    serviceWorkers: 'block',
    acceptDownloads: true,
  })
  const page = await context.newPage()
  page.on('pageerror', (error) => mishaps.push(error.message))
  return page
}

/** The part of the job page that answers a need; the next step leads to the same place. */
export function part(page: Page, need: string): Locator {
  return page.locator(`[data-need~="${need}"]`).first()
}

/** Unfolds a chapter and waits until it is drawn, which comes a moment after its head says that it is open. */
export async function openChapter(page: Page, name: string): Promise<void> {
  const button = page.locator(`#chapter-${name} h2 button`)
  await button.waitFor()
  if ((await button.getAttribute('aria-expanded')) === 'false') await button.click()
  await page.locator(`#chapter-${name} [data-built]`).waitFor()
}

/** Unfolds every chapter and waits until all are drawn. */
export async function openAllChapters(page: Page): Promise<void> {
  const heads = page.locator('section[id^=chapter-] h2 button')
  await heads.first().waitFor()
  const folded = page.locator('section[id^=chapter-] h2 button[aria-expanded=false]')
  for (let left = await folded.count(); left > 0; left = await folded.count()) {
    await folded.first().click()
    await expect.poll(() => folded.count()).toBeLessThan(left)
  }
  await expect
    .poll(() => page.locator('section[id^=chapter-] [data-built]').count())
    .toBe(await heads.count())
}

/** Goes to a job by its address and waits until it is this job that is shown: the page that is left stays for a moment. */
export async function goToJob(page: Page, url: string, job: string, title: string): Promise<void> {
  await page.goto(`${url}#/job/${job}`)
  await page.getByRole('heading', { level: 1, name: title }).waitFor()
  await page.locator('#chapter-arrival').waitFor()
}

/** Opens a job from the board by its name and waits until its chapters are there. */
export async function openFromBoard(page: Page, url: string, title: string): Promise<void> {
  await page.goto(url)
  await page.getByText(title).click()
  await page.getByRole('heading', { level: 1, name: title }).waitFor()
  await page.locator('#chapter-arrival').waitFor()
}

/** The first fact on a device asks for the name that stands beside it; later ones do not. */
export async function sayWho(page: Page, name = 'technician'): Promise<void> {
  const dialog = page.getByRole('dialog', { name: 'Who is working?' })
  await dialog.waitFor()
  await dialog.getByRole('textbox').fill(name)
  await dialog.getByRole('button').first().click()
  await dialog.waitFor({ state: 'detached' })
}

/** Chooses a recording in the open chapter of faults and returns the dialog about it. */
export async function chooseRecording(page: Page, file: string): Promise<Locator> {
  await page.locator('#chapter-faults input[type=file]').setInputFiles(file)
  const dialog = page.getByRole('dialog', { name: /^Recording/ })
  await dialog.waitFor()
  return dialog
}

/** A new job as somebody opens it on the phone. */
interface NewJob {
  readonly title: string
  readonly vehicle: string
  readonly place: string
}

/** Fills the form of a new job, with one key and a private customer, and opens it. */
export async function openNewJob(page: Page, url: string, job: NewJob): Promise<void> {
  await page.goto(`${url}#/new`)
  await page.getByLabel('Name of the job').fill(job.title)
  await page.getByLabel('Car, as the customer says it').fill(job.vehicle)
  await page.getByLabel('Where it stands').fill(job.place)
  await page.getByLabel('Add a key').check()
  await page.getByLabel('private customer').check()
  await page.getByLabel('Your name').fill('technician')
  await page.getByRole('button', { name: 'Open the job' }).click()
  await page.locator('#chapter-teach').waitFor()
}
