import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { BrowserContext, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openChapter } from '../support/by-hand.ts'
import { faultsOfAccess, lookAt } from '../support/looked-at.ts'
import { cannotRun, keptIn, Office, openTablet } from '../support/tablets.ts'

const job = 'demo-van'
const folder = mkdtempSync(join(tmpdir(), 'shearline-signed-'))
const office = new Office()
let context: BrowserContext
let page: Page

/**
 * Stands for what Debian's Chromium does not have: a maker's speech service, or one on the device. It behaves as the Web
 * Speech API draft says; what was said and whether it may leave the device is set by the test.
 */
function speechParts(): void {
  const spoken = {
    onDevice: 'unavailable',
    words: 'left rear door scratched',
    started: [] as (boolean | undefined)[],
  }
  class Recognition extends EventTarget {
    static available = async (options: { processLocally: boolean }) =>
      options.processLocally ? spoken.onDevice : 'available'
    lang = ''
    continuous = false
    interimResults = false
    processLocally?: boolean
    start() {
      spoken.started.push(this.processLocally)
      setTimeout(() => {
        const results = [Object.assign([{ transcript: spoken.words }], { isFinal: true })]
        this.dispatchEvent(Object.assign(new Event('result'), { results }))
      }, 50)
    }
    stop() {
      this.dispatchEvent(new Event('end'))
    }
    abort() {}
  }
  Object.assign(window, { spoken, SpeechRecognition: Recognition, webkitSpeechRecognition: Recognition })
}

const bodies = async (kind: string) =>
  (await keptIn(page)).facts.filter((fact) => fact.kind === kind).map(({ id, body }) => ({ id, body }))

/** Draws with the pointer, as a finger would, over two strokes. */
async function drawOn(pad: Locator): Promise<void> {
  await pad.scrollIntoViewIfNeeded()
  const box = await pad.boundingBox()
  if (box === null) throw new Error('no place to sign')
  for (const shift of [0.2, 0.55]) {
    await page.mouse.move(box.x + box.width * shift, box.y + box.height * 0.6)
    await page.mouse.down()
    for (let step = 1; step <= 12; step++) {
      const up = step % 2 === 0 ? 0.25 : 0.75
      await page.mouse.move(box.x + box.width * (shift + step * 0.02), box.y + box.height * up)
    }
    await page.mouse.up()
  }
}

describe.skipIf(cannotRun !== null)(
  `signatures and spoken words${cannotRun === null ? '' : ` (skipped: ${cannotRun})`}`,
  () => {
    beforeAll(async () => {
      await office.start({ demo: true })
      context = await openTablet(join(folder, 'tablet'))
      await context.addInitScript(speechParts)
      page = context.pages()[0] ?? (await context.newPage())
      await page.goto(`${office.url}#/device`)
      await page.getByLabel('Your name').fill('technician')
      await page.getByRole('button', { name: 'Keep', exact: true }).click()
      await page.getByText('saved here').first().waitFor()
      await page.goto(`${office.url}#/job/${job}`)
      await page.locator('#chapter-plan').waitFor()
    })
    afterAll(async () => {
      await context?.close()
      await office.close()
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
    })

    it('a consent is signed by hand under its words, bound to them and to its fact, and signed again', async () => {
      await openChapter(page, 'plan')
      const chapter = page.locator('#chapter-plan')
      await chapter.getByRole('button', { name: 'Let the customer sign this' }).click()
      const dialog = page.getByRole('dialog', { name: 'Consent' })
      await dialog.waitFor()
      await dialog.getByRole('region', { name: 'What is signed' }).getByText('T6SHVN3A0R0042788').waitFor()
      const shown = (
        await dialog.getByRole('region', { name: 'What is signed' }).locator('p').allTextContents()
      ).join('\n')
      expect(shown).toContain('T6SHVN3A0R0042788')
      const sign = dialog.getByRole('button', { name: 'I have read this and sign it' })
      await sign.click()
      await dialog.getByText('Nothing is signed yet').waitFor()
      await lookAt(page, 'sign-empty')
      await drawOn(dialog.getByRole('img', { name: /^Place to sign/ }))
      await lookAt(page, 'sign-drawn')
      expect(await faultsOfAccess(page, 'dialog')).toEqual([])
      await sign.click()
      const picture = chapter.getByRole('img', { name: /^Signature of/ })
      await picture.waitFor()
      await chapter.getByText('The words that were signed are those of the record now.').waitFor()
      await picture.scrollIntoViewIfNeeded()
      await lookAt(page, 'signed')

      await expect.poll(async () => (await bodies('signature-drawn')).length).toBe(1)
      const [consent] = await bodies('consent-given')
      const [first] = await bodies('signature-drawn')
      expect(first?.body).toMatchObject({
        for: 'consent',
        how: 'drawn',
        fact: consent?.id,
        shown: createHash('sha256').update(shown).digest('hex'),
      })
      const path = await picture.locator('path').getAttribute('d')
      expect(path?.match(/M/g)).toHaveLength(2)
      const file = async () => {
        const response = await fetch(new URL(`/api/blobs/${first?.body.blob}`, office.url))
        return response.ok ? await response.text() : null
      }
      await expect.poll(file).toContain(`d="${path}"`)

      await chapter.getByRole('button', { name: 'Take the signature again' }).click()
      await dialog.getByRole('radio', { name: 'By typing the name' }).check()
      await dialog.getByLabel('Who signs').fill('Ines Okoro')
      await lookAt(page, 'sign-typed')
      await dialog.getByRole('button', { name: 'sign it with my name' }).click()
      await chapter.getByText(/^Ines Okoro signed by typing the name/).waitFor()
      // The picture is read from the device again, so it may come a moment after the words.
      await expect.poll(() => chapter.getByRole('img', { name: /^Signature of/ }).count()).toBe(1)
      await expect
        .poll(async () => (await bodies('corrected')).map(({ body }) => body))
        .toContainEqual({ fact: first?.id, action: 'withdrawn', reason: 'Signed again.' })
    })

    it('the hand-over is signed by keyboard alone, and car and keys are then on record as handed over', async () => {
      await openChapter(page, 'handover')
      await page.getByRole('button', { name: 'Let the customer sign for the hand-over' }).focus()
      await page.keyboard.press('Enter')
      const dialog = page.getByRole('dialog', { name: 'Hand-over' })
      await dialog.waitFor()
      await dialog.getByLabel('Who signs').focus()
      await page.keyboard.press('Control+A')
      await page.keyboard.type('Ines Okoro')
      await page.keyboard.press('Tab')
      await page.keyboard.press('ArrowRight')
      await lookAt(page, 'sign-handover')
      await page.keyboard.press('Tab')
      await page.keyboard.press('Enter')
      await page
        .locator('#chapter-handover')
        .getByText(/^Ines Okoro signed by typing/)
        .waitFor()
      await expect
        .poll(async () => (await bodies('vehicle-handed-over'))[0]?.body)
        .toMatchObject({ to: 'Ines Okoro', keys: expect.arrayContaining(['A', 'B']) })
      const [handed] = await bodies('vehicle-handed-over')
      await expect
        .poll(async () => (await bodies('signature-drawn')).map(({ body }) => body))
        .toContainEqual(expect.objectContaining({ for: 'handover', fact: handed?.id, how: 'typed' }))
    })

    it('speech is sent to nobody unless it stays on the device or the person agrees', async () => {
      await openChapter(page, 'call')
      const chapter = page.locator('#chapter-call')
      await chapter.getByText('Write a note').click()
      const note = chapter.getByLabel('Note', { exact: true })
      const speak = chapter.getByRole('button', { name: 'Speak it: Note' })
      const started = () =>
        page.evaluate(() => (window as unknown as { spoken: { started: unknown[] } }).spoken.started)
      await speak.click()
      const asking = page.getByRole('dialog', { name: 'Your words would leave this device' })
      await asking.waitFor()
      await lookAt(page, 'speech-asks')
      expect(await faultsOfAccess(page, 'dialog')).toEqual([])
      await asking.getByRole('button', { name: 'I will type it' }).click()
      expect(await started()).toEqual([])
      await note.fill('Front bumper;')
      await speak.click()
      await asking.getByRole('button', { name: 'Send my speech this time' }).click()
      await expect.poll(() => note.inputValue()).toBe('Front bumper; left rear door scratched')
      await chapter.getByRole('button', { name: 'Stop listening: Note' }).click()
      await speak.waitFor()

      await page.evaluate(() => {
        ;(window as unknown as { spoken: { onDevice: string } }).spoken.onDevice = 'available'
      })
      await note.fill('')
      await speak.click()
      await expect.poll(() => note.inputValue()).toBe('left rear door scratched')
      expect((await started()).at(-1)).toBe(true)
      await chapter.getByRole('button', { name: 'Stop listening: Note' }).click()
    })
  },
)
