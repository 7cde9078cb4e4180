import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { compareFacts, factHash, foldJob } from '@shearline/jobfile'
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openChapter } from '../support/by-hand.ts'
import { cannotRun, keptIn, Office, openTablet } from '../support/tablets.ts'

const job = 'demo-estate'
const folder = mkdtempSync(join(tmpdir(), 'shearline-two-'))
const office = new Office()
const contexts: BrowserContext[] = []

async function openJob(name: string, by: string): Promise<Page> {
  const context = await openTablet(join(folder, name))
  contexts.push(context)
  const page = context.pages()[0] ?? (await context.newPage())
  await page.goto(`${office.url}#/device`)
  await page.getByLabel('Your name').fill(by)
  await page.getByLabel('Name of this device').fill(name)
  await page.getByRole('button', { name: 'Keep', exact: true }).click()
  await page.getByText('saved here').first().waitFor()
  await page.goto(`${office.url}#/job/${job}`)
  await page.locator('#chapter-call').waitFor()
  return page
}

/** Records the price of the job as one of several people would. */
async function agreePrice(page: Page, amount: number): Promise<void> {
  await openChapter(page, 'handover')
  const part = page.locator('[data-need~="price-not-agreed"]').first()
  await part.waitFor()
  const again = part.getByText('Agree another price')
  if ((await again.count()) > 0) await again.click()
  await part.getByRole('textbox', { name: /^Line 1: amount/ }).fill(String(amount))
  await part.getByRole('button', { name: 'Record', exact: true }).click()
  await part.getByText(`${amount}.00`).first().waitFor()
}

/** The facts of the job a browser holds, by their hashes in fold order, and the state they fold to. */
async function view(page: Page) {
  const { facts, outbox } = await keptIn(page)
  const own = facts.filter((fact) => fact.job === job).sort(compareFacts)
  return { hashes: own.map(factHash), state: foldJob(job, own), outbox }
}

describe.skipIf(cannotRun !== null)(
  `two tablets and the office on one job${cannotRun === null ? '' : ` (skipped: ${cannotRun})`}`,
  () => {
    beforeAll(() => office.start({ demo: true }))
    afterAll(async () => {
      for (const context of contexts) await context.close()
      await office.close()
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
    })

    it('come to the same facts in the same order and the same state, whoever was without a connection meanwhile', async () => {
      const first = await openJob('tablet one', 'R. Tamm')
      const second = await openJob('tablet two', 'K. Oja')
      const desk = await openJob('office desk', 'M. Lepp')
      const all = [first, second, desk]

      // Both tablets lose the network and go on; the office goes on too.
      await first.context().setOffline(true)
      await second.context().setOffline(true)
      await agreePrice(first, 120)
      await agreePrice(second, 140)
      await agreePrice(desk, 160)
      await agreePrice(first, 180)
      await expect.poll(async () => (await view(first)).outbox.length).toBe(2)
      await expect.poll(async () => (await view(second)).outbox.length).toBe(1)

      await second.context().setOffline(false)
      await first.context().setOffline(false)
      const agreed = async () => {
        const views = await Promise.all(all.map(view))
        const sizes = new Set(views.map(({ hashes }) => hashes.join()))
        return { views: sizes.size, unsent: views.flatMap(({ outbox }) => outbox).length }
      }
      await expect.poll(agreed, { timeout: 120_000, interval: 500 }).toEqual({ views: 1, unsent: 0 })

      const [one, two, three] = await Promise.all(all.map(view))
      expect(two?.state).toEqual(one?.state)
      expect(three?.state).toEqual(one?.state)
      // The last one agreed stands, by the instant it was agreed at, not by when it was sent.
      expect(one?.state.price?.lines[0]?.amountMinor).toBe(18_000)
      for (const page of all) {
        await openChapter(page, 'handover')
        await page.locator('[data-need~="price-not-agreed"]').getByText('180.00').first().waitFor()
      }
      const { facts } = await office.ask<{ facts: Parameters<typeof factHash>[0][] }>(`api/jobs/${job}/facts`)
      expect(facts.map(factHash)).toEqual(one?.hashes)
    })
  },
)
