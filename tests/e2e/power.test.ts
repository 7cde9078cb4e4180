import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { parsePowerFile, powerBudget } from '@shearline/keywork'
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openChapter, part, sayWho } from '../support/by-hand.ts'
import { faultsOfAccess, lookAt } from '../support/looked-at.ts'
import { launch } from '../support/served.ts'
import { cannotRun, keptIn, Office } from '../support/tablets.ts'

const office = new Office()
let browser: Browser
let context: BrowserContext
let page: Page
const mishaps: string[] = []

/**
 * Stands for what this machine does not have: a motor to vibrate, a loudspeaker to listen to, and a meter on a serial
 * port. The port behaves as the Web Serial draft says and answers SCPI; its volts are set by the test.
 */
function deviceParts(): void {
  const heard = { vibrations: 0, tones: 0, asked: 0, baud: 0, volts: 12.6 }
  Object.assign(window, { heard })
  navigator.vibrate = () => {
    heard.vibrations += 1
    return true
  }
  const start = OscillatorNode.prototype.start
  OscillatorNode.prototype.start = function play(at) {
    heard.tones += 1
    start.call(this, at)
  }
  let send: ReadableStreamDefaultController<Uint8Array> | undefined
  const port = {
    open: async (options: { baudRate: number }) => {
      heard.baud = options.baudRate
    },
    close: async () => undefined,
    readable: new ReadableStream<Uint8Array>({
      start: (controller) => {
        send = controller
      },
    }),
    writable: new WritableStream<Uint8Array>({
      write: (chunk) => {
        if (new TextDecoder().decode(chunk) !== 'MEAS:VOLT:DC?\n') return
        heard.asked += 1
        send?.enqueue(new TextEncoder().encode(`${heard.volts.toExponential(7)}\r\n`))
      },
    }),
  }
  Object.defineProperty(navigator, 'serial', { value: { requestPort: async () => port }, configurable: true })
}

interface Heard {
  vibrations: number
  tones: number
  asked: number
  baud: number
  volts: number
}
const heard = () => page.evaluate(() => ({ ...(window as unknown as { heard: Heard }).heard }))
const meterShows = (volts: number) =>
  page.evaluate((value) => {
    ;(window as unknown as { heard: Heard }).heard.volts = value
  }, volts)

const picture = (name: string, at: Locator) => lookAt(page, `power-${name}`, { at })
const accessible = async (what: string, selector: string) =>
  expect(await faultsOfAccess(page, selector, { themes: ['dark', 'light'] }), what).toEqual([])

async function bodies(kind: string): Promise<Record<string, unknown>[]> {
  const { facts } = await keptIn(page)
  return facts
    .filter((fact) => fact.kind === kind && fact.job === 'demo-estate')
    .sort((one, other) => (one.at < other.at ? -1 : 1))
    .map((fact) => fact.body)
}

/** What the engine says to the form's own suggestion, computed here, for the verdict the page must show. */
function verdictFor(extra: Record<string, unknown>): string {
  const read = parsePowerFile({
    battery: { restVolts: 12.5, ...(extra.battery as object) },
    steps: [
      { name: 'Ignition on, first minutes', minutes: 5, loads: ['first-minutes'] },
      { name: 'Scan, read and save', minutes: 15, loads: ['ignition-on'] },
      { name: 'Teach', minutes: 10, loads: ['ignition-on'] },
      { name: 'Prove', minutes: 10, loads: ['ignition-on'] },
    ],
    floorVolts: 12,
    targetVolts: 13.6,
    supply: extra.supply ?? null,
  })
  if ('path' in read) throw new Error(read.what)
  const { verdict, supplyAmperes } = powerBudget(read.input)
  if (verdict === 'go') return 'Go: the battery holds the plan.'
  return verdict === 'stop' ? 'Stop: do not begin.' : `Connect a supply of at least ${supplyAmperes} A first.`
}

const budget = () => part(page, 'supply-floor-missing')
const watch = () => part(page, 'supply-during-missing')
const settled = (within: Locator) => within.locator('[data-verdict][aria-busy="false"]').waitFor()
const unfold = (within: Locator, title: string) =>
  within.locator('summary', { hasText: title }).first().click()

describe.skipIf(cannotRun !== null)(
  `power on the bench${cannotRun === null ? '' : ` (skipped: ${cannotRun})`}`,
  () => {
    beforeAll(async () => {
      await office.start({ demo: true })
      browser = await launch()
      // axe is put in past the page's own policy, as a test tool may.
      context = await browser.newContext({
        viewport: { width: 390, height: 844 },
        hasTouch: true,
        bypassCSP: true,
        serviceWorkers: 'block',
      })
      page = await context.newPage()
      await page.addInitScript(deviceParts)
      page.on('pageerror', (error) => mishaps.push(error.message))
      await page.goto(office.url)
      await page.getByText('Estate car, spare wanted').click()
      await page.locator('#chapter-plan').waitFor()
    })
    afterAll(async () => {
      await browser?.close()
      await office.close()
    })

    it('the budget is judged before anything is typed, from what the job knows', async () => {
      await openChapter(page, 'plan')
      await settled(budget())
      await expect.poll(() => budget().getByRole('status').first().textContent()).toBe(verdictFor({}))
      await expect
        .poll(() => budget().getByRole('img').first().getAttribute('aria-label'))
        .toMatch(/^Supply over 40 minutes: begins at about 1\d\.\d+\sV, lowest .*Floor 12\.0\sV/)
      await budget().getByText('The kind of battery is not known').waitFor()
      await unfold(budget(), 'The steps as a table')
      await expect.poll(() => budget().getByRole('row').count()).toBe(5)
      await picture('budget', budget())
      await accessible('budget', '#chapter-plan')
    })

    it('a figure outside its limits is named by its label, and the button leads to it under its closed fold', async () => {
      await page.evaluate(() => {
        const held: Event[] = []
        Object.assign(window, { held })
        addEventListener('invalid', (event) => held.push(event), { capture: true })
      })
      const prevented = () =>
        page.evaluate(() =>
          (window as unknown as { held: Event[] }).held.map(({ defaultPrevented }) => defaultPrevented),
        )
      await unfold(budget(), 'Floor, target and stop')
      const floor = budget().getByRole('textbox', { name: 'Floor (V)' })
      await floor.fill('99')
      await page.keyboard.press('Tab')
      await budget().locator('summary', { hasText: 'Floor, target and stop' }).click()
      await floor.waitFor({ state: 'hidden' })
      await budget()
        .getByText('"Floor" is missing or outside its limits. Put it right under "Floor, target and stop".')
        .waitFor()
      expect(await prevented()).toEqual([])
      await budget().getByRole('button', { name: 'Keep this budget' }).click()
      await expect.poll(() => floor.evaluate((field) => field === document.activeElement)).toBe(true)
      // The browser says what is wrong: nothing has kept it from doing so. The field shows it too.
      expect(await prevented()).toEqual([false])
      await expect.poll(() => floor.getAttribute('aria-invalid')).toBe('true')
      await floor.fill('12')
      await page.keyboard.press('Tab')
      await settled(budget())
      await budget().locator('summary', { hasText: 'Floor, target and stop' }).click()
    })

    it('what is known is entered with large steps and keys, and the supply that mends it makes it go', async () => {
      await budget().getByRole('radio', { name: 'flooded', exact: false }).first().check()
      const capacity = budget().getByRole('textbox', { name: /^Capacity/ })
      await capacity.locator('xpath=following-sibling::button').focus()
      for (const key of ['Enter', 'Enter', 'Space']) await page.keyboard.press(key)
      await expect.poll(() => capacity.inputValue()).toBe('70')
      await budget()
        .getByRole('textbox', { name: /^Temperature/ })
        .fill('2')
      await page.keyboard.press('Tab')
      await settled(budget())
      const battery = { kind: 'flooded', capacityAmpereHours: 70, temperatureCelsius: 2 }
      await expect
        .poll(() => budget().getByRole('status').first().textContent())
        .toBe(verdictFor({ battery }))
      await unfold(budget(), 'Support supply')
      await budget().getByRole('radio', { name: 'a stable supply' }).check()
      await budget()
        .getByRole('textbox', { name: /^Most current/ })
        .fill('60')
      await page.keyboard.press('Tab')
      await expect
        .poll(() => budget().getByRole('status').first().textContent())
        .toBe('Go: the battery holds the plan.')
      expect(verdictFor({ battery, supply: { amperes: 60 } })).toBe('Go: the battery holds the plan.')
      await settled(budget())
      await picture('mended', budget())
      await accessible('mended', '#chapter-plan')
      await budget().getByRole('button', { name: 'Keep this budget' }).click()
      await sayWho(page)
      await budget().getByRole('button', { name: 'Keep the changed budget' }).waitFor()
      await expect
        .poll(() => bodies('supply-set'))
        .toMatchObject([
          {
            floorVolts: 12,
            battery: 'flooded',
            supplyAmperes: 60,
            budget: { verdict: 'go', restVolts: 12.5 },
          },
        ])
    })

    it("the vehicle maker's instruction is set with its source and wins", async () => {
      await unfold(budget(), 'Floor, target and stop')
      await budget().getByRole('radio', { name: 'the vehicle maker' }).check()
      await budget()
        .getByRole('textbox', { name: /^Floor/ })
        .fill('12.3')
      await budget()
        .getByRole('textbox', { name: /^Title or clause/ })
        .fill('workshop manual, before programming')
      await settled(budget())
      await expect
        .poll(() => budget().getByRole('img').first().getAttribute('aria-label'))
        .toMatch(/Floor 12\.3\sV/)
      await settled(budget())
      await budget().getByRole('button', { name: 'Keep the changed budget' }).click()
      await expect.poll(async () => (await bodies('supply-set')).length).toBe(2)
      expect((await bodies('supply-set'))[1]).toMatchObject({ floorVolts: 12.3, makerSays: true })
    })

    it('a reading takes two taps, stands against the prediction, and calls below the floor', async () => {
      await openChapter(page, 'teach')
      const taps = watch().getByRole('group', { name: 'Tap what the meter shows' }).getByRole('button')
      await taps.first().waitFor()
      // The figures that are offered follow what is expected, once that is computed and drawn.
      await watch().getByRole('img').first().waitFor()
      const value = (await taps.nth(2).textContent()) ?? ''
      await taps.nth(2).click()
      await watch()
        .getByRole('button', { name: `Record ${value}` })
        .click()
      await watch().getByText('Steady').waitFor()
      await expect.poll(async () => (await bodies('supply-read')).length).toBe(2)
      expect((await bodies('supply-read'))[1]).toMatchObject({
        volts: Number.parseFloat(value),
        during: 'session',
        source: 'typed',
      })
      await watch()
        .getByText(/minutes left|Holds past/)
        .waitFor()
      await picture('steady', watch())
      expect(await heard()).toMatchObject({ vibrations: 0, tones: 0 })
      await unfold(watch(), 'Another figure')
      await watch()
        .getByRole('textbox', { name: /^Supply voltage/ })
        .fill('12.1')
      await page.keyboard.press('Tab')
      await watch().getByRole('button', { name: 'Record 12.1' }).click()
      await watch().getByRole('alert').filter({ hasText: 'Below the floor' }).waitFor()
      await expect.poll(heard).toMatchObject({ vibrations: 1, tones: 2 })
      await watch().getByText('Lowest on record 12.1').waitFor()
      await picture('amber', watch())
      await accessible('watch', '#chapter-teach')
    })

    it('a serial meter is read after a tap, its lowest is kept, and stop calls louder', async () => {
      await unfold(watch(), 'Read a meter with a serial port')
      await watch().getByRole('radio', { name: '19200' }).check()
      await accessible('meter', '#chapter-teach')
      expect((await heard()).asked).toBe(0)
      await watch().getByRole('button', { name: 'Choose the port and read' }).click()
      await watch().getByText('12.6').first().waitFor()
      await expect.poll(heard).toMatchObject({ baud: 19200 })
      await watch().getByRole('checkbox', { name: 'vibration' }).uncheck()
      const before = await heard()
      await meterShows(11.437)
      await watch().getByRole('alert').filter({ hasText: 'Stop now' }).waitFor()
      await expect.poll(async () => (await heard()).tones - before.tones).toBe(5)
      // Switched off: the motor stays still.
      expect((await heard()).vibrations).toBe(before.vibrations)
      await picture('stop', watch())
      await meterShows(11.41)
      const since = (await heard()).asked
      await expect.poll(async () => (await heard()).asked).toBeGreaterThan(since + 1)
      await watch().getByRole('button', { name: 'Stop reading the meter' }).click()
      await watch().getByText('The meter is closed.').waitFor()
      await expect.poll(async () => (await bodies('supply-read')).map((body) => body.volts)).toContain(11.41)
      const read = (await bodies('supply-read')).filter((body) => body.source === 'meter')
      expect(read.map((body) => body.volts)).toEqual([12.6, 11.437, 11.41])
      expect(read.at(-1)?.lowestOf).toBeGreaterThan(2)
      await watch().getByText('Lowest on record 11.41').waitFor()
    })

    it('a browser without serial ports is told so, in words', async () => {
      const other = await context.newPage()
      // Chromium has the ports; another browser has not.
      await other.addInitScript(() => {
        Object.defineProperty(Navigator.prototype, 'serial', { value: undefined, configurable: true })
      })
      await other.goto(page.url())
      await openChapter(other, 'teach')
      const meter = part(other, 'supply-during-missing')
      await unfold(meter, 'Read a meter with a serial port')
      await meter.getByText(/^This browser cannot read serial ports/).waitFor()
      await other.close()
    })

    it('the volts a recording carries are laid against the prediction, and their lowest is kept', async () => {
      // SAE J1979 service 01 PID 42 (control module voltage, millivolts), and the same by ISO 14229-1 as 22 F442.
      const lines = Array.from({ length: 60 }, (_, index) => {
        const milli = 12_600 - index * 5
        const hex = milli.toString(16).toUpperCase().padStart(4, '0')
        const at = (1000 + index * 10).toFixed(6)
        const [ask, told] =
          index % 2 === 0
            ? ['0201420000000000', `044142${hex}000000`]
            : ['0322F44200000000', `0562F442${hex}0000`]
        return `(${at}) can0 7E0#${ask}\n(${(Number(at) + 0.01).toFixed(6)}) can0 7E8#${told}\n`
      })
      const file = join(office.folder, 'supply.log')
      writeFileSync(file, lines.join(''))
      await openChapter(page, 'arrival')
      await page.locator('#chapter-arrival input[type=file]:not([accept*=pdf])').first().setInputFiles(file)
      const dialog = page.getByRole('dialog', { name: /^Recording/ })
      await dialog.getByRole('button', { name: 'Record it' }).click()
      await dialog.waitFor({ state: 'detached' })
      await openChapter(page, 'teach')
      await watch()
        .getByText(/^supply\.log: .* lowest 12\.305\sV|^supply\.log: .* lowest 12\.3/)
        .waitFor()
      await watch().getByRole('button', { name: 'Lay it against the prediction' }).click()
      await expect
        .poll(async () => (await bodies('supply-read')).filter((body) => body.source === 'recording'))
        .toMatchObject([{ volts: 12.305, during: 'session', readAt: 'socket' }])
      await picture('recording', watch())
    })

    it('after the work: able to start, asleep, supply taken off, and what the monitor needs', async () => {
      await openChapter(page, 'prove')
      const after = part(page, 'supply-after-missing')
      await after.getByRole('textbox', { name: /^Supply voltage/ }).fill('12.6')
      await after
        .getByRole('group', { name: 'Was the support supply taken off before this reading?' })
        .getByRole('radio', { name: 'yes' })
        .check()
      await after.getByRole('button', { name: 'Record', exact: true }).click()
      await after.getByText(/while cranking/).waitFor()
      await after.getByText(/^With battery monitoring: the clamp/).waitFor()
      await unfold(after, 'Measure whether it sleeps')
      await after.getByRole('textbox', { name: /^Current at the battery/ }).fill('240')
      await after.getByRole('textbox', { name: /^Minutes since locking/ }).fill('65')
      await after.getByRole('textbox', { name: /^Volts then/ }).fill('12.5')
      await after.getByRole('button', { name: 'Record the current' }).click()
      // 70 Ah / 2 / 0.24 A / 24 h = 6.08 days.
      await after.getByText(/^Kept awake\..*240 mA, 6 days to half empty/).waitFor()
      await picture('after', after)
      await accessible('after', '#chapter-prove')
      await expect
        .poll(async () => (await bodies('supply-read')).at(-1))
        .toMatchObject({
          during: 'after',
          supplyRemoved: true,
          drain: { amperes: 0.24, minutes: 65 },
        })
    })

    it('a fob cell is judged at rest and loaded, and kept with its key', async () => {
      await openChapter(page, 'arrival')
      const cells = page.getByRole('region', { name: 'Cells of the fobs' })
      await cells.getByText('not measured').waitFor()
      await unfold(cells, 'Measure a cell')
      await cells.getByRole('textbox', { name: /^At rest/ }).fill('3.05')
      await page.keyboard.press('Tab')
      await cells.getByText('Not proven: read it while the fob transmits').waitFor()
      await cells.getByRole('textbox', { name: /^Loaded/ }).fill('2.4')
      await page.keyboard.press('Tab')
      await cells.getByText('Replace', { exact: true }).waitFor()
      await cells.getByRole('radio', { name: 'yes' }).check()
      await picture('cell', cells)
      await accessible('cell', '#chapter-arrival')
      await cells.getByRole('button', { name: 'Record the cell of A' }).click()
      await cells.getByText('Replace: 3.05 V at rest, 2.40 V while it transmits; replaced').waitFor()
      await expect
        .poll(async () => (await bodies('key-labelled')).at(-1))
        .toMatchObject({
          key: 'A',
          form: 'proximity',
          cell: { cells: 1, restVolts: 3.05, loadedVolts: 2.4, replaced: true },
        })
      expect(mishaps).toEqual([])
    })
  },
)
