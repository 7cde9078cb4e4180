/** What a person does on the bench in many tests: open a job and its chapters, say who works, choose a file. */
import type { Browser, Locator, Page } from 'playwright-core'

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
  page.setDefaultTimeout(20_000)
  page.on('pageerror', (error) => mishaps.push(error.message))
  return page
}

/** The part of the job page that answers a need; the next step leads to the same place. */
export function part(page: Page, need: string): Locator {
  return page.locator(`[data-need~="${need}"]`).first()
}

/** Unfolds a chapter. */
export async function openChapter(page: Page, name: string): Promise<void> {
  const button = page.locator(`#chapter-${name} h2 button`)
  await button.waitFor()
  if ((await button.getAttribute('aria-expanded')) === 'false') await button.click()
}

/** Unfolds every chapter; each click takes one out of the list. */
export async function openAllChapters(page: Page): Promise<void> {
  const folded = page.locator('section h2 button[aria-expanded=false]')
  for (let left = await folded.count(); left > 0; left = await folded.count()) await folded.first().click()
}

/** Opens a job from the board by its name and waits until its chapters are there. */
export async function openFromBoard(page: Page, url: string, title: string): Promise<void> {
  await page.goto(url)
  await page.getByText(title).click()
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
