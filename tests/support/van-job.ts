/** The rest of the invented van's job, done by hand on the bench: from an open session to a job ready to seal. */
import { writeFileSync } from 'node:fs'
import type { JobState } from '@shearline/jobfile'
import { recordingAfter } from '@shearline/jobfile/demo'
import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { chooseRecording, openChapter, part, sayWho } from './by-hand.ts'

/** The page, and how the job stands in the store the test looks at. */
export interface VanJob {
  readonly page: Page
  readonly standing: () => Promise<Pick<JobState, 'inLine' | 'tumblers' | 'faults'>>
  /** Called with the name of a screen worth a picture. */
  readonly picture?: (name: string) => Promise<void>
}

/** Imports a recording through the file picker of a chapter, says which scan it is, and returns what was found. */
export async function importAs(
  { page, picture }: Pick<VanJob, 'page' | 'picture'>,
  file: string,
  which: string,
): Promise<string> {
  const dialog = await chooseRecording(page, file)
  await dialog.getByText('Units that answered').waitFor()
  const found = (await dialog.textContent()) ?? ''
  await picture?.('import')
  await dialog.getByRole('radio', { name: which }).check()
  await dialog.getByRole('button', { name: 'Record it' }).click()
  await dialog.waitFor({ state: 'detached' })
  return found
}

/** Teaches the keys that are left and closes the session. */
export async function teachVan({ page, picture }: VanJob, asksWho: boolean): Promise<void> {
  await openChapter(page, 'teach')
  await picture?.('teach')
  for (const [index, key] of ['B', 'D', 'E'].entries()) {
    const step = part(page, `key-not-taught:${key}`)
    await step.getByRole('textbox', { name: 'Count the car shows' }).fill(String(index + 2))
    await step.getByRole('textbox', { name: /^Supply voltage/ }).fill('13.4')
    await step.getByRole('button', { name: `Key ${key} is taken` }).click()
    if (index === 0 && asksWho) await sayWho(page)
    await page.getByText(`Key ${key} is taught`).waitFor()
  }
  const close = part(page, 'session-not-closed')
  await close.getByRole('textbox', { name: 'Count the car shows' }).fill('4')
  await close.getByRole('button', { name: 'The session is closed' }).click()
  await page.locator('#chapter-teach').getByText('The session is closed.').waitFor()
}

/** Fills the grid and reads the supply after the session. */
export async function proveVan({ page, picture }: VanJob): Promise<void> {
  await openChapter(page, 'prove')
  const grid = part(page, 'tests-after-open')
  await grid.getByRole('checkbox').check()
  const open = grid.locator('button[data-outcome=open]')
  await open.first().waitFor()
  for (let left = await open.count(); left > 0; left = await open.count()) {
    await open.first().click()
    await expect.poll(() => open.count()).toBeLessThan(left)
  }
  await picture?.('grid')
  const supply = part(page, 'supply-after-missing')
  await supply.getByRole('textbox', { name: /^Supply voltage/ }).fill('12.7')
  await supply.getByRole('button', { name: 'Record', exact: true }).click()
  await supply.getByText('12.7 V').waitFor()
}

/** Imports the scan after the work from a file it writes, and lets the customer acknowledge what stays. */
export async function scanVan(van: VanJob, recording: string): Promise<void> {
  const { page, standing } = van
  await openChapter(page, 'faults')
  writeFileSync(recording, recordingAfter(Math.floor(Date.now() / 1000)))
  const found = await importAs(van, recording, 'After the work')
  expect(found).toContain('738')
  const faults = page.locator('#chapter-faults')
  await faults.getByText('U0140-87').filter({ visible: true }).first().waitFor()
  await van.picture?.('faults')
  await expect
    .poll(async () => (await standing()).faults.faults.map((line) => line.class).sort())
    .toEqual(['raised-by-work', 'there-before-still'])
  // What the work raised is still stored: the customer is told and acknowledges it.
  await faults.getByText('Let the customer acknowledge it').first().click()
  const acknowledge = page
    .locator('#chapter-faults form', { has: page.getByRole('button', { name: 'Acknowledged: record it' }) })
    .first()
  await acknowledge.getByRole('textbox').first().waitFor()
  for (const field of await acknowledge.getByRole('textbox').all())
    await field.fill('Fleet manager, told that it clears by itself')
  await acknowledge.getByRole('button', { name: 'Acknowledged: record it' }).click()
}

/** Reads the cautions, agrees the price and sets what is kept how long: only the seal is left. */
export async function settleVan({ page, standing }: VanJob): Promise<void> {
  await openChapter(page, 'handover')
  const cautions = part(page, 'caution-not-read').getByRole('button', { name: /^Read: / })
  // A chapter is drawn a moment after it was unfolded.
  await cautions.first().waitFor()
  for (let left = await cautions.count(); left > 0; left = await cautions.count()) {
    await cautions.first().click()
    await expect.poll(() => cautions.count()).toBeLessThan(left)
  }
  const price = part(page, 'price-not-agreed')
  await price.getByRole('textbox', { name: /^Line 1: amount/ }).fill('350')
  await price.getByRole('button', { name: 'Record', exact: true }).click()
  await price.getByText('Sum').waitFor()
  await part(page, 'retention-not-set').getByRole('button', { name: 'Record', exact: true }).click()
  await expect
    .poll(async () =>
      (await standing()).tumblers.flatMap((tumbler) => tumbler.needs.map((need) => need.code)),
    )
    .toEqual(['not-sealed'])
}

/** Seals the job in the browser and waits until its document is there. */
export async function sealVan({ page, standing }: VanJob): Promise<void> {
  await page.getByRole('button', { name: 'Seal the document' }).click()
  await page.getByRole('link', { name: 'Save the document as a file' }).waitFor()
  await expect.poll(async () => (await standing()).inLine).toBe(true)
}
