import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openAllChapters, openChapter, openNewJob } from '../support/by-hand.ts'
import { axeFaults, shoot, tooWide } from '../support/looked-at.ts'
import { launch } from '../support/served.ts'
import { cannotRun, Office } from '../support/tablets.ts'

const office = new Office()
let browser: Browser

/** Every page, and what shows that it is there. */
const screens = [
  ['board', '#/', 'Small van, five keys stored'],
  ['new job', '#/new', 'Name of the job'],
  ['device', '#/device', 'Name of this device'],
  ['rules', '#/rules', 'neutral default'],
  ['due for deletion', '#/keeping', 'Nothing is due today.'],
] as const

/** axe is put in past the page's own policy, as a test tool may. */
async function fresh(
  options: Parameters<Browser['newContext']>[0] = {},
): Promise<readonly [BrowserContext, Page]> {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    bypassCSP: true,
    ...options,
  })
  return [context, await context.newPage()]
}

async function show(page: Page, address: string, sign: string): Promise<void> {
  await page.goto(`${office.url}${address}`)
  await page.getByText(sign).first().waitFor()
}

async function openAll(page: Page): Promise<void> {
  await openAllChapters(page)
  await expect.poll(() => page.locator('[data-built]').count()).toBe(11)
}

/** Opens a job of our own by hand, as somebody would. */
const openOwnJob = (page: Page) =>
  openNewJob(page, office.url, {
    title: 'Electric car, one key',
    vehicle: 'Small electric car',
    place: 'Lay-by at the cliff road',
  })

const faultless = async (page: Page, what: string) => expect(await axeFaults(page), what).toEqual([])
/** Nothing sticks out sideways, unless it scrolls within itself. */
const fits = async (page: Page, what: string) => expect(await tooWide(page), what).toEqual([])
const picture = (page: Page, name: string) => shoot(page, name, { fullPage: true })

describe.skipIf(cannotRun !== null)('the bench in every light, size and direction', () => {
  beforeAll(async () => {
    await office.start({ demo: true })
    browser = await launch()
  })
  afterAll(async () => {
    await browser?.close()
    await office.close()
  })

  for (const theme of ['light', 'dark', 'sun'] as const) {
    it(`every screen passes WCAG 2.2 AA as axe checks it, ${theme}`, async () => {
      const [context, page] = await fresh()
      await context.addInitScript((one) => localStorage.setItem('shearline-theme', one), theme)
      for (const [name, address, sign] of screens) {
        await show(page, address, sign)
        await faultless(page, `${name}, ${theme}`)
        await picture(page, `${name}-${theme}`)
      }
      await show(page, '#/rules', 'neutral default')
      await page.getByRole('button', { name: 'Change a copy: neutral default' }).click()
      await page.locator('summary').first().click()
      await faultless(page, `a pack being changed, ${theme}`)
      await openOwnJob(page)
      await openAll(page)
      await faultless(page, `a job just opened, ${theme}`)
      await picture(page, `job-${theme}`)
      await context.close()
    })
  }

  it('reflows at 320 px, as a phone at 400 % or a tablet at 200 % shows it, and nothing covers the focus', async () => {
    const [context, page] = await fresh({ viewport: { width: 320, height: 256 } })
    for (const [name, address, sign] of screens) {
      await show(page, address, sign)
      await fits(page, name)
    }
    await openOwnJob(page)
    await openAll(page)
    await fits(page, 'job')
    // The bar with the next step would cover a screen this low: it stands at the end of the page instead.
    expect(
      await page
        .locator('nav')
        .last()
        .evaluate((bar) => getComputedStyle(bar).position),
    ).toBe('static')
    await context.close()
  })

  it('stays whole when the person’s own letters are twice as large', async () => {
    const large = await launch('--blink-settings=defaultFontSize=32')
    const page = await large.newPage({ viewport: { width: 820, height: 1180 } })
    for (const [name, address, sign] of screens) {
      await show(page, address, sign)
      await fits(page, name)
    }
    await openOwnJob(page)
    expect(await page.evaluate(() => getComputedStyle(document.body).fontSize)).toBe('32px')
    await fits(page, 'job')
    await picture(page, 'job-text-200')
    await large.close()
  })

  it('stands the other way round when read from the right: each pin keeps its name below it', async () => {
    const [context, page] = await fresh()
    for (const [name, address, sign] of screens) {
      await show(page, address, sign)
      await page.evaluate(() => {
        document.documentElement.dir = 'rtl'
      })
      await fits(page, name)
    }
    await show(page, '#/', 'Small van, five keys stored')
    await page.getByText('Small van, five keys stored').click()
    await page.locator('#chapter-teach').waitFor()
    await page.evaluate(() => {
      document.documentElement.dir = 'rtl'
    })
    await openAll(page)
    await fits(page, 'job')
    await faultless(page, 'job, right to left')
    await picture(page, 'job-rtl')
    const places = await page.evaluate(() => {
      const middle = (element: Element) => {
        const { left, width } = element.getBoundingClientRect()
        return left + width / 2
      }
      const cylinder = document.querySelector('section[aria-label="Where the job stands"]')
      return {
        names: [...(cylinder?.querySelectorAll('button') ?? [])].map(middle),
        bores: [...(cylinder?.querySelectorAll('svg:first-of-type > rect') ?? [])].slice(1).map(middle),
      }
    })
    expect(places.names).toHaveLength(7)
    expect(places.names[0]).toBeGreaterThan(places.names[6] ?? 0)
    places.names.forEach((name, index) => {
      expect(Math.abs(name - (places.bores[index] ?? 0)), `pin ${index}`).toBeLessThan(12)
    })
    await context.close()
  })

  it('keeps what is chosen visible in the system’s own high-contrast colours', async () => {
    const [context, page] = await fresh({ forcedColors: 'active' })
    await show(page, '#/device', 'Name of this device')
    for (const of of ['input:checked', 'input:not(:checked)[type=radio]'])
      await page.locator(of).first().waitFor({ state: 'attached' })
    const colours = await page.evaluate(() => {
      const of = (input: Element | null) =>
        getComputedStyle(input?.closest('label') ?? document.body).backgroundColor
      return [
        of(document.querySelector('input:checked')),
        of(document.querySelector('input:not(:checked)[type=radio]')),
      ]
    })
    expect(colours[0]).not.toBe(colours[1])
    await context.close()
  })

  it('prints what is on record: no bar, no form, black on white', async () => {
    const [context, page] = await fresh({ colorScheme: 'dark' })
    await show(page, '#/', 'Small van, five keys stored')
    await page.getByText('Small van, five keys stored').click()
    await page.locator('#chapter-teach').waitFor()
    await openChapter(page, 'arrival')
    await page.locator('#chapter-arrival form').first().waitFor({ state: 'attached' })
    await page.emulateMedia({ media: 'print' })
    await expect.poll(() => page.locator('nav:visible, form:visible').count()).toBe(0)
    await page.getByRole('heading', { level: 1 }).waitFor()
    const paper = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)
    expect(paper).toBe('rgb(255, 255, 255)')
    await context.close()
  })

  it('a job is opened, its rules answered and a caution read by keyboard alone', async () => {
    const [context, page] = await fresh({ viewport: { width: 820, height: 1180 } })
    const named = () =>
      page.evaluate(() => {
        // The page itself holds the focus after a change of page: it is no control.
        const element = document.activeElement?.matches('button, a, input, summary')
          ? document.activeElement
          : null
        const label = element instanceof HTMLInputElement ? (element.labels?.[0]?.textContent ?? '') : ''
        return `${element?.getAttribute('aria-label') ?? ''} ${label} ${element?.textContent ?? ''}`.trim()
      })
    /** Tab until something with this name has the focus. */
    const to = async (name: string | RegExp) => {
      for (let presses = 0; presses < 160; presses++) {
        const now = await named()
        if (typeof name === 'string' ? now.includes(name) : name.test(now)) return
        await page.keyboard.press('Tab')
      }
      throw new Error(`no way to "${name}" by keyboard; at last: ${await named()}`)
    }
    await show(page, '#/', 'Small van, five keys stored')
    await to('New job')
    await page.keyboard.press('Enter')
    await page.getByLabel('Name of the job').waitFor()
    for (const [label, words] of [
      ['Name of the job', 'By keyboard'],
      ['Car, as the customer says it', 'Grey estate'],
      ['Where it stands', 'Yard'],
    ] as const) {
      await to(label)
      await page.keyboard.type(words)
    }
    await to('Add a key')
    await page.keyboard.press('Space')
    await to('private customer')
    await page.keyboard.press('Space')
    await to('Your name')
    await page.keyboard.type('technician')
    await to('Open the job')
    await page.keyboard.press('Enter')
    await page.locator('#chapter-teach').waitFor()
    await to(/Authority$|^2? ?Authority/)
    const authority = page.locator('#chapter-authority h2 button')
    await authority.focus()
    await page.keyboard.press('Enter')
    await page.locator('#chapter-authority [data-built]').waitFor()
    await to('The owner is here')
    await page.keyboard.press('Space')
    await page.getByText('Is the person here the holder of the identity document?').last().waitFor()
    const arrival = page.locator('#chapter-arrival h2 button')
    await arrival.focus()
    await page.keyboard.press('Enter')
    await page.locator('#chapter-arrival [data-built]').waitFor()
    await to('Read: Nothing living stays inside')
    await page.keyboard.press('Enter')
    await expect
      .poll(() => page.getByRole('button', { name: 'Read: Nothing living stays inside' }).count())
      .toBe(0)
    await context.close()
  })

  it('every control has a name that a screen reader can say', async () => {
    const [context, page] = await fresh()
    await openOwnJob(page)
    await openAll(page)
    const nameless = await page.evaluate(() =>
      [...document.querySelectorAll('button, a[href], input, select, textarea, summary')]
        .filter((element) => element.getClientRects().length > 0)
        .filter((element) => {
          const labels = (element as HTMLInputElement).labels
          const by = (element.getAttribute('aria-labelledby') ?? '')
            .split(' ')
            .map((id) => document.getElementById(id)?.textContent ?? '')
            .join('')
          const label =
            labels === null || labels === undefined ? '' : [...labels].map((one) => one.textContent).join('')
          return (
            `${element.getAttribute('aria-label') ?? ''}${by}${label}${element.textContent}`.trim() === ''
          )
        })
        .map((element) => element.outerHTML.slice(0, 120)),
    )
    expect(nameless).toEqual([])
    await context.close()
  })
})
