/** The verify page as somebody gets it: opened from a file, no network, and of one mind with `shearline verify`. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { prove } from '../../apps/cli/src/verify/answer.ts'
import { packed, vanBundle } from '../../packages/jobfile/src/bundle/testing/packed.ts'
import { makeHandover } from '../../packages/jobfile/src/handover/make.ts'
import { baseOf, sealAt } from '../../packages/jobfile/src/handover/testing/files.ts'
import { fonts, type SealedJob, sealedJob, vanJob } from '../../packages/jobfile/src/handover/testing/jobs.ts'
import { recordText } from '../../packages/jobfile/src/record/index.ts'
import { chromiumPath, launch } from '../support/served.ts'
import { root, shearline } from '../support/shearline.ts'

let folder = ''
let pageFile = ''
let browser: Browser
let page: Page
let job: SealedJob
let pdf: Uint8Array
let bundle: Uint8Array
const asked: string[] = []
const complaints: string[] = []

beforeAll(async () => {
  if (chromiumPath === null) return
  folder = mkdtempSync(join(tmpdir(), 'shearline-page-'))
  pageFile = join(folder, 'verify.html')
  const { spawnSync } = await import('node:child_process')
  const built = spawnSync(process.execPath, ['scripts/build-verify-page.mjs', '--out', pageFile], {
    cwd: root,
    encoding: 'utf8',
  })
  if (built.status !== 0) throw new Error(built.stderr)
  job = await sealedJob(vanJob())
  pdf = await makeHandover({ ...job, language: 'en', fonts, madeAt: '2026-01-12T09:41:00.000Z' })
  bundle = await packed((await vanBundle()).input)
  browser = await launch()
  const context = await browser.newContext({ offline: true })
  page = await context.newPage()
  page.on('request', (request) => asked.push(request.url()))
  page.on('console', (message) => complaints.push(message.text()))
  page.on('pageerror', (error) => complaints.push(error.message))
})
afterAll(async () => {
  await browser?.close()
  if (folder !== '') rmSync(folder, { recursive: true, force: true })
})

interface Answer {
  readonly proven: boolean
  readonly findings: readonly string[]
  readonly marks: Readonly<Record<string, string>>
  readonly text: string
}

/** What the page says of a file, read from what it shows. */
async function pageAnswer(file: string): Promise<Answer> {
  await page.goto(pathToFileURL(pageFile).href)
  await page.setInputFiles('#file', file)
  await page.waitForSelector('#result')
  const proven = (await page.getAttribute('#result', 'data-proven')) === 'true'
  const findings = await page
    .locator('.wrong li')
    .evaluateAll((items) => items.map((item) => item.querySelector('.what')?.textContent ?? ''))
  const marks = await page
    .locator('[data-check]')
    .evaluateAll((items) =>
      Object.fromEntries(
        items.map((item) => [item.getAttribute('data-check'), item.getAttribute('data-mark')]),
      ),
    )
  return { proven, findings, marks, text: (await page.textContent('main')) ?? '' }
}

const flipped = (bytes: Uint8Array, at: number) => {
  const copy = bytes.slice()
  copy[at] = (copy[at] ?? 0) ^ 1
  return copy
}
const placed = (name: string, bytes: Uint8Array | string) => {
  const file = join(folder, name)
  writeFileSync(file, bytes)
  return file
}
const textAt = (bytes: Uint8Array, text: string) => Buffer.from(bytes).indexOf(text)

describe.skipIf(chromiumPath === null)('the verify page, opened from a file without a network', () => {
  it('is one file that asks for nothing and whose policy allows nothing else', async () => {
    const html = readFileSync(pageFile, 'utf8')
    expect(html).toContain("default-src 'none'; script-src 'sha256-")
    expect(html).not.toMatch(/<(?:link|script|img|iframe)[^>]+(?:src|href)=/)
    await page.goto(pathToFileURL(pageFile).href)
    expect(await page.textContent('h1')).toBe('Verify a handover document')
    // The policy holds: a request from inside the page is refused by the browser itself.
    const tried = await page.evaluate(() =>
      fetch('data:text/plain,x').then(
        () => 'went out',
        () => 'refused',
      ),
    )
    expect(tried).toBe('refused')
    complaints.length = 0
  })

  const good: readonly [string, () => Uint8Array | string][] = [
    ['good.pdf', () => pdf],
    ['good.zip', () => bundle],
    ['good.json', () => recordText(job.record)],
  ]
  it.each(good)('proves %s as the command does', async (name, bytes) => {
    const file = placed(name, bytes())
    const said = await pageAnswer(file)
    const proof = await prove(file)
    expect(said).toMatchObject({ proven: true, findings: proof.findings.map(({ what }) => what) })
    expect(proof.findings.filter(({ severity }) => severity === 'error')).toEqual([])
    expect(proof.proven).toBe(true)
    expect(said.text).toContain('It holds')
    expect(said.text).toContain(`${proof.signatures} signatures are right`)
    expect(said.text).toContain(`${proof.hashes} hashes were made again`)
    expect(new Set(Object.values(said.marks))).toEqual(new Set(['holds']))
  })

  const bad: readonly [string, () => Uint8Array, check: string][] = [
    ['page.pdf', () => flipped(pdf, textAt(pdf, ' Tf\n') + 30), 'check.bytes'],
    ['fact.pdf', () => flipped(pdf, textAt(pdf, 'T6SHVN')), 'check.facts'],
    ['signature.pdf', () => flipped(pdf, textAt(pdf, ',"signature":"') + 40), 'check.seal'],
    ['unsealed.pdf', () => baseOf(pdf), 'check.seal'],
    ['seal.pdf', () => flipped(pdf, sealAt(pdf) + 60), 'check.seal'],
    ['longer.pdf', () => Uint8Array.from([...pdf, 10, 37]), 'check.bytes'],
    ['cut.pdf', () => pdf.slice(0, -30), 'check.bytes'],
    ['file.zip', () => flipped(bundle, textAt(bundle, '"title"') + 3), 'check.bytes'],
  ]
  it.each(bad)('finds what is wrong in %s, in the same words as the command', async (name, bytes, check) => {
    const file = placed(name, bytes())
    const said = await pageAnswer(file)
    const proof = await prove(file)
    expect(proof.proven).toBe(false)
    expect(said.proven).toBe(false)
    expect(said.findings).toEqual(proof.findings.map(({ what }) => what))
    expect(said.marks[check]).not.toBe('holds')
    // Every place the command names is on the page, with its byte.
    for (const { where } of proof.findings) expect(said.text).toContain(where)
    expect(said.text).toContain('It does not hold')
  })

  it('answers any other file with what to do', async () => {
    const said = await pageAnswer(placed('letter.txt', 'Dear customer,'))
    expect(said.proven).toBe(false)
    expect(said.text).toContain('This is neither a handover document (PDF) nor a record (JSON).')
  })

  it('takes a file that is dropped on it', async () => {
    await page.goto(pathToFileURL(pageFile).href)
    const dropped = await page.evaluateHandle((text) => {
      const data = new DataTransfer()
      data.items.add(new File([text], 'record.json', { type: 'application/json' }))
      return data
    }, recordText(job.record))
    await page.dispatchEvent('body', 'drop', { dataTransfer: dropped })
    await page.waitForSelector('#result[data-proven="true"]')
  })

  it('tells whether the fingerprint from the firm is that of the seal', async () => {
    await pageAnswer(placed('good.pdf', pdf))
    const print = ((await page.textContent('dd code')) ?? '').replaceAll(' ', '')
    await page.fill('#fingerprint', print.toUpperCase())
    await expect.poll(() => page.textContent('#compared')).toContain('It is the same')
    await page.fill('#fingerprint', `${print.slice(0, -1)}${print.endsWith('0') ? '1' : '0'}`)
    await expect.poll(() => page.textContent('#compared')).toContain('It is another one')
    await page.fill('#fingerprint', 'ab12')
    await expect.poll(() => page.textContent('#compared')).toContain('4 digits are there')
  })

  it.each(['light', 'dark'] as const)(
    'is readable and can be worked by keyboard and screen reader (%s)',
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme })
      for (const file of [placed('good.pdf', pdf), placed('bad.pdf', flipped(pdf, 20_000))]) {
        await pageAnswer(file)
        await page.locator('details').evaluateAll((all) => {
          for (const one of all) one.setAttribute('open', '')
        })
        await page.evaluate(readFileSync(join(root, 'node_modules', 'axe-core', 'axe.min.js'), 'utf8'))
        const found = await page.evaluate(async () => {
          const { axe } = globalThis as unknown as {
            axe: { run(): Promise<{ violations: { id: string }[] }> }
          }
          return (await axe.run()).violations.map(({ id }) => id)
        })
        expect(found).toEqual([])
      }
      // What is tapped is at least 48 px high.
      await page.goto(pathToFileURL(pageFile).href)
      const box = await page.locator('label.button').boundingBox()
      expect(box?.height ?? 0).toBeGreaterThanOrEqual(48)
      await page.keyboard.press('Tab')
      await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('file')
    },
  )

  it('never asked for anything but itself, and the browser had nothing to complain of', () => {
    const foreign = asked.filter((url) => !url.startsWith('file:') && !url.startsWith('data:'))
    expect(foreign).toEqual([])
    expect(complaints).toEqual([])
  })
})

describe('shearline verify --page', () => {
  it('writes the built page, or says how to build it', () => {
    const place = mkdtempSync(join(tmpdir(), 'shearline-page-out-'))
    try {
      const out = join(place, 'verify.html')
      const ran = shearline(['verify', '--page', out])
      expect(ran.code, ran.err).toBe(0)
      expect(readFileSync(out, 'utf8')).toContain("default-src 'none'")
      expect(shearline(['verify', '--page', join(place, 'no', 'where.html')]).code).toBe(2)
      expect(shearline(['verify']).code).toBe(2)
    } finally {
      rmSync(place, { recursive: true, force: true })
    }
  })
})
