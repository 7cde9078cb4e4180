import { createWriteStream, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { chooseRecording, openChapter, openFromBoard, sayWho } from '../support/by-hand.ts'
import { faultsOfAccess, lookAt } from '../support/looked-at.ts'
import { chromiumPath, launch, Served } from '../support/served.ts'
import { captures } from '../support/shearline.ts'
import { untilSent } from '../support/tablets.ts'

const served = new Served()
let browser: Browser
let context: BrowserContext
let page: Page

const picture = (name: string) => lookAt(page, `recording-${name}`)
const accessible = async (what: string) =>
  expect(await faultsOfAccess(page, 'html', { controlsWithin: 'dialog[open]' }), what).toEqual([])
const choose = (file: string) => chooseRecording(page, file)

/** Every complete message of a recording as tshark 4.0.17 and scapy read it (../shared/captures/expected). */
function expected(name: string): readonly { readonly id: string; readonly payload: string }[] {
  const file = join(captures ?? '', '..', 'expected', `${name}.json`)
  const { messages } = JSON.parse(readFileSync(file, 'utf8')) as {
    messages: { id: string; payload: string }[]
  }
  return messages.map(({ id, payload }) => ({ id, payload: payload.toLowerCase() }))
}

/** A browser profile that has never seen the bench. */
async function freshDevice(): Promise<void> {
  await context?.close()
  // axe is put in past the page's own policy, as a test tool may.
  context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    bypassCSP: true,
  })
  page = await context.newPage()
}

async function openJob(): Promise<void> {
  await openFromBoard(page, served.url, 'Estate car, spare wanted')
  await openChapter(page, 'faults')
}

/** Imports a file and only keeps it. */
async function keep(file: string): Promise<void> {
  const dialog = await choose(file)
  await dialog.getByText('Units that answered').waitFor()
  const only = dialog.getByRole('radio', { name: 'Only keep it' })
  if (!(await only.isChecked())) await only.check()
  await dialog.getByRole('button', { name: 'Record it' }).click()
  await sayWho(page)
  await dialog.waitFor({ state: 'detached' })
}

async function lookInto(name: string): Promise<Locator> {
  await page.getByRole('button', { name: `Look into it ${name}` }).click()
  const view = page.getByRole('dialog', { name: `Into ${name}` })
  await view.getByRole('list', { name: 'Messages' }).waitFor()
  return view
}

/** How many messages the list says it holds. */
async function listed(view: Locator): Promise<number> {
  const words = await view
    .getByRole('status')
    .filter({ hasText: /^([\d,]+ messages?|No message fits)$/ })
    .textContent()
  return words?.startsWith('No') === true ? 0 : Number((words ?? '').replace(/\D/g, ''))
}

/** Two fingers set down in the middle of an element and pulled apart, as a touch screen reports them. */
async function pullApart(element: Locator): Promise<void> {
  const box = await element.boundingBox()
  if (box === null) throw new Error('the strip is not in sight')
  const y = box.y + box.height / 2
  const x = box.x + box.width / 2
  const touches = await context.newCDPSession(page)
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', apart: number | null) =>
    touches.send('Input.dispatchTouchEvent', {
      type,
      touchPoints:
        apart === null
          ? []
          : [
              { x: x - apart, y, id: 0 },
              { x: x + apart, y, id: 1 },
            ],
    })
  await send('touchStart', 20)
  for (const apart of [30, 45, 60, 80]) await send('touchMove', apart)
  await send('touchEnd', null)
  await touches.detach()
}

/** What this browser holds of recordings: blobs, and facts of the job looked at; other jobs may still be arriving. */
function held(): Promise<{ readonly blobs: number; readonly facts: number }> {
  return page.evaluate(
    () =>
      new Promise<{ blobs: number; facts: number }>((resolve, reject) => {
        const opening = indexedDB.open('shearline-bench')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const db = opening.result
          const tx = db.transaction(['blobs', 'facts'])
          const blobs = tx.objectStore('blobs').count()
          const facts = tx.objectStore('facts').getAll()
          tx.oncomplete = () => {
            db.close()
            resolve({
              blobs: blobs.result,
              facts: facts.result.filter(
                (fact: { job: string; kind: string }) =>
                  fact.job === 'demo-estate' && fact.kind === 'recording-attached',
              ).length,
            })
          }
        }
      }),
  )
}

describe.skipIf(chromiumPath === null)('a recording on the bench, in Chromium', () => {
  beforeAll(async () => {
    await served.start()
    browser = await launch()
  })
  afterAll(async () => {
    await browser?.close()
    await served.stop()
  })
  beforeEach(freshDevice)

  it.skipIf(captures === null)(
    'of a real car is shown as a strip, zoomed, filtered, and read message by message (../shared/captures)',
    async () => {
      const faults: string[] = []
      page.on('pageerror', (error) => faults.push(error.message))
      const name = '01_can11_obd_uds_kwp_scan.log'
      await openJob()
      await keep(join(captures ?? '', name))
      // 1,814 complete messages as tshark 4.0.17 and scapy count them (../shared/captures/expected), and two cut ones.
      await page.getByRole('img', { name: /Messages over time: 1,816 messages/ }).waitFor()
      // After a reload it is there again without another import.
      await page.reload()
      await page.getByRole('img', { name: /Messages over time: 1,816 messages/ }).waitFor()

      const view = await lookInto(name)
      await expect.poll(() => listed(view)).toBe(1816)
      await accessible('view')
      await picture('view')

      await view.getByRole('radio', { name: 'Refused' }).check()
      // All 7F answers of the same expectation but those that only ask for patience (NRC 78).
      const refused = expected(name).filter(
        ({ payload }) => payload.startsWith('7f') && payload.slice(4, 6) !== '78',
      )
      await expect.poll(() => listed(view)).toBe(refused.length)
      await picture('refused')
      const id = refused[0]?.id ?? ''
      await view.getByRole('searchbox').fill(id)
      await expect.poll(() => listed(view)).toBe(refused.filter((message) => message.id === id).length)
      await view.getByRole('searchbox').fill('')
      await view.getByRole('radio', { name: 'Everything' }).check()
      await expect.poll(() => listed(view)).toBe(1816)

      await view.getByText(/things marked here/).click()
      await view
        .getByRole('button', { name: /Unit \w+ in a session for .*extended/ })
        .first()
        .waitFor()
      await view.getByText(/things marked here/).click()

      const strip = view.getByRole('group', { name: `Messages of ${name} over time` })
      await view.getByRole('button', { name: 'Closer' }).click()
      await expect.poll(() => listed(view)).toBeLessThan(1816)
      const byButton = await listed(view)
      await pullApart(strip)
      await expect.poll(() => listed(view)).toBeLessThan(byButton)
      const byTouch = await listed(view)
      await strip.focus()
      await page.keyboard.press('+')
      await expect.poll(() => listed(view)).toBeLessThan(byTouch)
      await page.keyboard.press('Home')
      await expect.poll(() => listed(view)).toBe(1816)

      // The first message of the recording: 01 00 to all units, as candump and tshark show it.
      const first = view.getByRole('list', { name: 'Messages' }).getByRole('button').first()
      await first.focus()
      await page.keyboard.press('ArrowDown')
      await page.keyboard.press('ArrowUp')
      await page.keyboard.press('Enter')
      const details = page.getByRole('dialog', { name: 'Read live data: asks' })
      await details.getByText('01 00', { exact: true }).waitFor()
      await expect.poll(() => details.textContent()).toContain('7254.438300')
      await accessible('details')
      await picture('details')
      await details.getByRole('button', { name: 'Next' }).click()
      const answer = page.getByRole('dialog', { name: 'Read live data: answers' })
      await answer.getByText('41 00 80 00 00 01', { exact: true }).waitFor()
      await page.keyboard.press('Escape')
      await answer.waitFor({ state: 'hidden' })
      await view.getByRole('button', { name: 'Closer' }).waitFor()
      await page.emulateMedia({ colorScheme: 'dark' })
      await accessible('view, dark')
      await page.keyboard.press('Escape')
      await view.waitFor({ state: 'detached' })
      expect(faults).toEqual([])

      // Another device holds none of it and fetches what is kept from the server.
      await untilSent(page)
      await page.getByText('Saved, all sent').first().waitFor()
      await freshDevice()
      await openJob()
      expect((await held()).blobs).toBe(0)
      const there = await lookInto(name)
      await expect.poll(() => listed(there)).toBe(1816)
    },
  )

  it.skipIf(captures === null)(
    'with bad lines says which, and goes on (../shared/captures/files/20_bad_lines.log)',
    async () => {
      await openJob()
      const dialog = await choose(join(captures ?? '', '20_bad_lines.log'))
      await dialog.getByText('Units that answered').waitFor()
      // The first bad line of the file is its sixth: an odd number of hex digits.
      await expect
        .poll(() => dialog.textContent())
        .toMatch(/places could not be read and are left out\. First at line 6/)
    },
  )

  it('marks restart, clearing, session and supply in words, and lists 100,000 messages without making them all', async () => {
    const file = join(served.folder, 'long.log')
    // ISO 14229-1: 10 03 session, 14 clear, 11 01 restart. SAE J1979: PID 42 in millivolts (30D4 = 12.500 V).
    const asked = ['0210030000000000', '0414FFFFFF000000', '0211010000000000', '0201420000000000']
    const told = ['065003003201F400', '0154000000000000', '0251010000000000', '04414230D4000000']
    const lines = Array.from({ length: 100_000 }, (_, index) => {
      const exchange = index >> 1
      const pair = exchange % 10_000 === 0 ? (exchange / 10_000) % 4 : exchange === 49_999 ? 3 : null
      const data =
        index % 2 === 0
          ? pair === null
            ? '0322F19000000000'
            : asked[pair]
          : pair === null
            ? '037F223100000000'
            : told[pair]
      return `(${(1000 + index * 0.004).toFixed(6)}) can0 ${index % 2 === 0 ? '7E0' : '7E8'}#${data}\n`
    })
    writeFileSync(file, lines.join(''))
    await openJob()
    await keep(file)
    const view = await lookInto('long.log')
    await expect.poll(() => listed(view)).toBe(100_000)
    await view.getByText(/things marked here/).click()
    for (const words of [
      /Unit 7E8 restarted: hardReset/,
      /Unit 7E8 cleared its faults/,
      /Unit 7E8 in a session for .*: extendedDiagnosticSession/,
      /Unit 7E8 told a supply of 12\.5\sV/,
      /Unit 7E8 refused .* times: 22/,
    ]) {
      await view.getByRole('button', { name: words }).first().waitFor()
    }
    await picture('marks')
    await view
      .getByRole('button', { name: /Unit 7E8 restarted/ })
      .first()
      .click()
    await expect.poll(() => listed(view)).toBeLessThan(10_000)
    await view.getByRole('button', { name: 'Whole' }).click()
    await view.getByText(/things marked here/).click()

    const list = view.getByRole('list', { name: 'Messages' })
    await list.getByRole('button').first().focus()
    await page.keyboard.press('End')
    await list.getByText('6:39.996').waitFor()
    await expect.poll(() => list.getByRole('button').count()).toBeLessThan(80)
    // Sixty screens in sixty frames: at none of them are more rows made than are seen. How long that takes is measured by
    // the bench of the screen, not here.
    const most = await list.evaluate(async (rows) => {
      const dialog = rows.closest('dialog')
      if (dialog === null) throw new Error('the list stands in no dialog')
      let made = 0
      for (let step = 0; step < 60; step++) {
        dialog.scrollTop -= dialog.clientHeight
        await new Promise(requestAnimationFrame)
        made = Math.max(made, rows.querySelectorAll('button').length)
      }
      return made
    })
    expect(most).toBeGreaterThan(0)
    expect(most).toBeLessThan(80)

    await view.getByRole('radio', { name: 'What changed the car' }).check()
    // Confirmed only: session, clearing and restart at exchanges 0, 10,000 and 20,000, and again the session at 40,000.
    await expect.poll(() => listed(view)).toBe(4)
  })

  it('being read can be cancelled: the worker is gone and nothing is kept', async () => {
    const file = join(served.folder, 'large.log')
    const block = Array.from(
      { length: 40_000 },
      (_, index) => `(${(1000 + index * 0.001).toFixed(6)}) can0 7E8#0641008000000${index % 10}01\n`,
    ).join('')
    const out = createWriteStream(file)
    for (let count = 0; count < 120; count++) {
      if (!out.write(block)) await new Promise<void>((resolve) => out.once('drain', () => resolve()))
    }
    await new Promise<void>((resolve) => out.end(() => resolve()))
    await openJob()
    const before = await held()
    const dialog = await choose(file)
    await dialog.getByText(/of .* read$/).waitFor()
    await dialog.getByText(/[\d,]+ messages$/).waitFor()
    expect(page.workers().length).toBeGreaterThan(0)
    await picture('reading')
    await dialog.getByRole('button', { name: 'Cancel' }).click()
    await dialog.waitFor({ state: 'detached' })
    await expect.poll(() => page.workers().map((worker) => worker.url())).toEqual([])
    expect(await held()).toEqual(before)
  })

  it('in a table with odd headers is read by the columns a person names, which are remembered', async () => {
    const file = join(served.folder, 'odd.csv')
    const header = 'moment;van line;who;how many;b one;b two;b three;b four;b five;b six;b seven;b eight'
    const rows = Array.from({ length: 200 }, (_, index) =>
      index % 2 === 0
        ? `${index * 10};x;7E0;8;02;3E;00;00;00;00;00;00`
        : `${index * 10};x;7E8;8;02;7E;00;00;00;00;00;00`,
    )
    writeFileSync(file, `${[header, ...rows].join('\n')}\n`)
    await openJob()
    const dialog = await choose(file)
    await dialog.getByText(/semicolon-separated text with a header in line 1/).waitFor()
    await dialog.getByText('Which column holds what cannot be told').waitFor()
    await accessible('columns')
    await picture('columns')
    await dialog.getByRole('combobox', { name: 'Identifier', exact: true }).selectOption('')
    await dialog.getByRole('button', { name: 'Read it this way' }).click()
    await dialog.getByRole('alert').filter({ hasText: 'Say which column holds the identifier.' }).waitFor()
    const say = (label: string, option: string) =>
      dialog.getByRole('combobox', { name: label, exact: true }).selectOption({ label: option })
    await say('Time', '1: moment')
    await say('Time is written in', 'milliseconds')
    await say('Identifier', '3: who')
    await say('Data, first column', '5: b one')
    await say('Data, last column', '12: b eight')
    await dialog.getByRole('button', { name: 'Read it this way' }).click()
    await dialog.getByText('Units that answered').waitFor()
    await expect.poll(() => dialog.textContent()).toMatch(/Frames\s*200/)
    await dialog.getByRole('img', { name: /200 messages in 2\.0\ss/ }).waitFor()
    await dialog.getByRole('button', { name: 'Leave it' }).click()

    const again = await choose(file)
    await again.getByText('Read by the columns chosen before for this header.').waitFor()
    await expect.poll(() => again.textContent()).toMatch(/Frames\s*200/)
    await again.getByRole('button', { name: 'Change the columns' }).click()
    await expect.poll(() => again.getByRole('combobox', { name: 'Time', exact: true }).inputValue()).toBe('0')
  })
})
