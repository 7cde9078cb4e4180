/** Looking at a screen of the bench: pictures for a person, and what a machine can check of access. */
import { mkdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import type { AxeResults } from 'axe-core'
import type { Locator, Page } from 'playwright-core'

const shots = process.env.SHEARLINE_SHOTS
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const sizes = [
  [390, 844],
  [820, 1180],
  [1440, 900],
] as const

type Theme = 'light' | 'dark'

/** How a screen is shown for its pictures; everything left out: the top of the window, in both themes. */
interface Looking {
  /** Brought to the top of the window before each picture. */
  readonly at?: Locator
  /** The whole page, however long. */
  readonly fullPage?: boolean
  /** The window is as high as all of what this selector finds, such as an open dialog. */
  readonly asTallAs?: string
  /** None: the theme stays as it is, and the pictures are not named after it. */
  readonly themes?: readonly Theme[]
}

/** Takes the screen at three sizes when SHEARLINE_SHOTS names a folder; size and light theme are as before after. */
export async function lookAt(page: Page, name: string, looking: Looking = {}): Promise<void> {
  if (shots === undefined) return
  const { at, fullPage = false, asTallAs, themes = ['dark', 'light'] } = looking
  const before = page.viewportSize()
  for (const [width, height] of sizes) {
    for (const colorScheme of themes.length === 0 ? [null] : themes) {
      await page.setViewportSize({ width, height })
      if (colorScheme !== null) await page.emulateMedia({ colorScheme })
      await at?.evaluate((element) => element.scrollIntoView({ block: 'start', behavior: 'instant' }))
      // Long enough for the slowest fading of the bench.
      await page.waitForTimeout(300)
      if (asTallAs !== undefined) {
        const tall = await page.evaluate(
          (selector) => document.querySelector(selector)?.scrollHeight ?? 0,
          asTallAs,
        )
        await page.setViewportSize({ width, height: Math.max(height, tall) })
      }
      const theme = colorScheme === null ? '' : `-${colorScheme}`
      await shoot(page, `${name}-${width}${theme}`, { fullPage })
    }
  }
  if (before !== null) await page.setViewportSize(before)
  if (themes.length > 0) await page.emulateMedia({ colorScheme: 'light' })
}

/** Takes the screen as it is when SHEARLINE_SHOTS names a folder. */
export async function shoot(
  page: Page,
  name: string,
  options: { readonly fullPage?: boolean } = {},
): Promise<void> {
  if (shots === undefined) return
  mkdirSync(shots, { recursive: true })
  await page.screenshot({ path: join(shots, `${name.replaceAll(' ', '-')}.png`), ...options })
}

/** Waits until nothing moves or fades any more; what never ends, such as the sign of something busy, is let be. */
async function untilStill(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const ending = document
      .getAnimations()
      .filter((one) => Number.isFinite(one.effect?.getComputedTiming().endTime))
    // One that stands still by its style never ends either: it is not waited for any longer than this.
    const longest = new Promise((resolve) => setTimeout(resolve, 10_000))
    await Promise.race([longest, Promise.allSettled(ending.map((one) => one.finished))])
  })
}

/** What axe finds against WCAG 2.2 AA inside a selector; the page's own policy must be bypassed (`bypassCSP`). */
export async function axeFaults(page: Page, within = 'html'): Promise<readonly string[]> {
  await untilStill(page)
  await page.evaluate(axe)
  return page.evaluate(async (selector) => {
    const { axe: check } = window as unknown as {
      axe: { run(context: string, options: unknown): Promise<AxeResults> }
    }
    const { violations } = await check.run(selector, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
    })
    return violations.map((one) => `${one.id}: ${one.nodes[0]?.html}`)
  }, within)
}

/** Controls inside a selector that are shown lower than 48 px; `also` adds a selector of what is to be tapped there. */
export async function lowControls(page: Page, within = 'html', also?: string): Promise<readonly string[]> {
  await untilStill(page)
  const controls = 'button, input:not(.sr), select, textarea, summary, .sr + label'
  return page.evaluate(
    (selector) =>
      [...document.querySelectorAll(selector)]
        .map((element) => ({
          element,
          height: (element.closest('label') ?? element).getBoundingClientRect().height,
        }))
        .filter(({ height }) => height > 0 && height < 47.5)
        .map(({ element, height }) => `${height} px high: ${element.outerHTML.slice(0, 120)}`),
    `${within} :is(${also === undefined ? controls : `${controls}, ${also}`})`,
  )
}

/** Says when what a selector finds first (the page, if left out) has to be scrolled sideways. */
export async function tooWide(page: Page, within = 'html'): Promise<readonly string[]> {
  await untilStill(page)
  return page.evaluate((selector) => {
    const element = document.querySelector(selector)
    if (element === null) return [`${selector}: not there`]
    const { scrollWidth, clientWidth } = element
    return scrollWidth > clientWidth ? [`${selector}: ${scrollWidth} px in ${clientWidth} px`] : []
  }, within)
}

/** What is to be held against a screen beyond the usual. */
interface Checks {
  /** Themes axe looks in, one after the other, and light again after; left out: the one that is on. */
  readonly themes?: readonly Theme[]
  /** Where low controls are looked for; left out: where axe looks. */
  readonly controlsWithin?: string
  /** A selector of what else must be 48 px high there, such as links that are tapped like buttons. */
  readonly also?: string
}

/** What is wrong with access inside a selector: WCAG 2.2 AA as axe checks it, low controls, a page that scrolls sideways. */
export async function faultsOfAccess(
  page: Page,
  within = 'html',
  { themes = [], controlsWithin = within, also }: Checks = {},
): Promise<readonly string[]> {
  const faults: string[] = []
  for (const colorScheme of themes) {
    await page.emulateMedia({ colorScheme })
    faults.push(...(await axeFaults(page, within)).map((fault) => `${colorScheme}: ${fault}`))
  }
  if (themes.length === 0) faults.push(...(await axeFaults(page, within)))
  else await page.emulateMedia({ colorScheme: 'light' })
  return [...faults, ...(await lowControls(page, controlsWithin, also)), ...(await tooWide(page))]
}
