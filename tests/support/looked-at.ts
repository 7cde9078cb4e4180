/** Looking at a screen of the bench: pictures for a person, and what a machine can check of access. */
import { mkdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import type { AxeResults } from 'axe-core'
import type { Page } from 'playwright-core'

const shots = process.env.SHEARLINE_SHOTS
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const sizes = [
  [390, 844],
  [820, 1180],
  [1440, 900],
] as const

/** Takes the screen at three sizes in both themes when SHEARLINE_SHOTS names a folder; the size is as before after. */
export async function lookAt(page: Page, name: string): Promise<void> {
  if (shots === undefined) return
  mkdirSync(shots, { recursive: true })
  const before = page.viewportSize()
  for (const [width, height] of sizes) {
    for (const colorScheme of ['dark', 'light'] as const) {
      await page.setViewportSize({ width, height })
      await page.emulateMedia({ colorScheme })
      await page.waitForTimeout(200)
      await page.screenshot({ path: join(shots, `${name}-${width}-${colorScheme}.png`) })
    }
  }
  if (before !== null) await page.setViewportSize(before)
}

/** What axe finds against WCAG 2.2 AA inside a selector, and controls lower than 48 px; empty when nothing. */
export async function faultsOfAccess(page: Page, selector: string): Promise<readonly string[]> {
  await page.evaluate(axe)
  return page.evaluate(async (within) => {
    const { axe: check } = window as unknown as {
      axe: { run(context: string, options: unknown): Promise<AxeResults> }
    }
    const { violations } = await check.run(within, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
    })
    const small = [...document.querySelectorAll(`${within} :is(button, input:not(.sr), summary, label[for])`)]
      .filter(
        (element) => !element.matches('label') || element.previousElementSibling?.matches('.sr') === true,
      )
      .filter((element) => {
        const { height } = (element.closest('label') ?? element).getBoundingClientRect()
        return height > 0 && height < 47.5
      })
    return [
      ...violations.map((one) => `${one.id}: ${one.nodes[0]?.html}`),
      ...small.map((element) => `lower than 48 px: ${element.outerHTML.slice(0, 120)}`),
    ]
  }, selector)
}
