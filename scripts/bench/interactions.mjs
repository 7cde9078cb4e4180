/**
 * @module Measures how long a tap takes until the next picture, in Chromium slowed down four times, with 500 jobs on
 * the board and a recording of 10 million frames open. Called by `npm run bench`; alone, on a built tree:
 *
 *     npx node --conditions=@shearline/source scripts/bench/interactions.mjs [--quick] [--bench FOLDER] [--board-only]
 *
 * An interaction's time is the browser's own (Event Timing, as in Interaction to Next Paint): from the finger or key
 * to the next picture, in steps of 8 ms. The page's own share of it is how long its handlers of the event ran.
 */

import { spawn } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { cpus, loadavg } from 'node:os'
import { basename, join } from 'node:path'
import { chromium } from 'playwright-core'
import { jobsFolder } from './board-jobs.mjs'
import { recordings } from './generate.mjs'
import { median } from './measure.mjs'

const root = join(import.meta.dirname, '..', '..')
const quick = process.argv.includes('--quick')
const slowdown = 4
const jobs = 500
const frames = quick ? 1_000_000 : 10_000_000
const rounds = quick ? 3 : 5
const asked = process.argv.indexOf('--bench')
const bench = asked > 0 ? process.argv[asked + 1] : join(root, 'apps', 'bench', 'dist')
const only = process.argv.includes('--board-only')
const folder = join(root, '.cache', 'bench')
mkdirSync(folder, { recursive: true })
const say = (text) => console.error(text)

const program = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync)
if (program === undefined) {
  say('Not measured: interactions (Chromium is not installed).')
  process.exit(0)
}

say(`A data folder of ${jobs} jobs (once) ...`)
const made = join(folder, `board-${jobs}`)
await jobsFolder(made, jobs)
// What is recorded here must not grow the folder of the next run.
const data = join(folder, `board-${jobs}.open`)
rmSync(data, { recursive: true, force: true })
cpSync(made, data, { recursive: true })
const load = [loadavg()[0], 0]
const { text: recording } = only ? { text: '' } : recordings(frames, folder)

const server = spawn(
  process.execPath,
  ['--conditions=@shearline/source', join(root, 'tests', 'support', 'serve-bench.ts'), data, bench, '0'],
  { stdio: ['ignore', 'pipe', 'inherit'] },
)
const url = await new Promise((resolve, reject) => {
  server.stdout.on('data', (chunk) => {
    const address = /open at (http:\S+)/.exec(String(chunk))?.[1]
    if (address !== undefined) resolve(address)
  })
  server.on('exit', (code) => reject(new Error(`the server ended with ${code}`)))
})

process.on('exit', () => server.kill('SIGTERM'))
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(1))

const browser = await chromium.launch({
  executablePath: program,
  args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage'],
})
const page = await browser.newPage({ viewport: { width: 820, height: 1180 }, hasTouch: true })
await page.addInitScript(() => {
  globalThis.events = []
  new PerformanceObserver((list) => {
    for (const event of list.getEntries())
      if (event.interactionId > 0)
        globalThis.events.push({
          duration: event.duration,
          worked: event.processingEnd - event.processingStart,
        })
  }).observe({ type: 'event', durationThreshold: 16, buffered: true })
})
const devtools = await page.context().newCDPSession(page)

const taken = new Map()
/** Does something `rounds` times and keeps the longest event of each, and the longest run of its handlers. */
async function measure(what, act, between = async () => undefined) {
  for (let round = 0; round < rounds; round++) {
    await page.waitForTimeout(700)
    await page.evaluate(() => {
      globalThis.events = []
    })
    await act(round)
    await page.waitForTimeout(900)
    const events = await page.evaluate(() => globalThis.events)
    const longest = Math.max(16, ...events.map((event) => event.duration))
    const worked = Math.max(0, ...events.map((event) => event.worked))
    taken.set(what, [...(taken.get(what) ?? []), { longest, worked }])
    await between(round)
  }
  say(
    `${what}: ${taken
      .get(what)
      .map(({ longest }) => longest)
      .join(', ')} ms`,
  )
}

/** Scrolls the list around an element by a screen with every picture; keeps the longest time between two pictures. */
async function measureScroll(what, element) {
  for (let round = 0; round < rounds; round++) {
    await page.waitForTimeout(700)
    const longest = await element.evaluate((inside) => {
      let list = inside
      while (list.scrollHeight <= list.clientHeight + 1 || getComputedStyle(list).overflowY === 'visible')
        list = list.parentElement
      return new Promise((resolve) => {
        const gaps = []
        let last = performance.now()
        const step = (now) => {
          gaps.push(now - last)
          last = now
          list.scrollTop += list.clientHeight
          if (gaps.length < 60) requestAnimationFrame(step)
          else {
            list.scrollTop = 0
            resolve(Math.max(...gaps.slice(1)))
          }
        }
        requestAnimationFrame(step)
      })
    })
    taken.set(what, [...(taken.get(what) ?? []), { longest: Math.round(longest), worked: undefined }])
  }
  say(
    `${what}: ${taken
      .get(what)
      .map(({ longest }) => longest)
      .join(', ')} ms`,
  )
}

await page.goto(url)
await page.locator('a[href^="#/job/"]').first().waitFor({ timeout: 60_000 })
// Everything is brought here first, as on a tablet that has been on for a while.
await page.waitForTimeout(quick ? 15_000 : 30_000)
await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown })

const card = (number) => page.locator(`a[href="#/job/job-${number}"]`)
const home = page.locator('header a').first()
const shownJob = page.locator('#chapter-teach')
await measure(
  'board: open a job',
  async (round) => {
    await card(round).click()
    await shownJob.waitFor()
  },
  async () => {
    await page.goBack()
    await card(0).waitFor()
  },
)
await measure(
  'job: back to the board',
  async () => {
    await home.click()
    await card(0).waitFor()
  },
  async () => {
    await page.goForward().catch(() => undefined)
    await page.goto(`${url}#/job/job-3`)
    await shownJob.waitFor()
  },
)

// The job whose grid is half filled.
await page.goto(`${url}#/job/job-9`)
await shownJob.waitFor()
const tumbler = (name) => page.getByRole('button', { name: new RegExp(`^${name}`) }).first()
await measure('job: tap a tumbler', (round) =>
  tumbler(['Authority', 'Keys', 'Faults', 'Power', 'Record'][round]).click(),
)
const chapter = (name) => page.locator(`#chapter-${name} h2 button`)
await measure('job: unfold a chapter', (round) =>
  chapter(['arrival', 'prove', 'plan', 'teach', 'handover'][round]).click(),
)
if ((await chapter('arrival').getAttribute('aria-expanded')) === 'false') await chapter('arrival').click()
const cell = page.locator('#chapter-arrival table button')
await cell.first().click()
const dialog = page.getByRole('dialog')
await dialog.waitFor({ timeout: 5000 }).catch(() => undefined)
if ((await dialog.count()) > 0) {
  await dialog.getByRole('textbox').fill('technician')
  await dialog.getByRole('button').first().click()
}
await measure('job: lay an answer into the grid', (round) => cell.nth(round + 1).click())
await measure('job: the next step', () => page.locator('nav button').first().click())
if ((await chapter('call').getAttribute('aria-expanded')) === 'false') await chapter('call').click()
const field = page.locator('#chapter-call input[type=text], #chapter-call input:not([type])').first()
await page.locator('#chapter-call details summary').first().click()
await measure('job: type a letter', async () => {
  await field.focus()
  await page.keyboard.press('a')
})

if (!only) {
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 })
  say('reading the recording ...')
  if ((await chapter('faults').getAttribute('aria-expanded')) === 'false') await chapter('faults').click()
  await page.locator('#chapter-faults input[type=file]').first().setInputFiles(recording)
  const found = page.getByRole('dialog', { name: /^Recording/ })
  await found.getByText('Units that answered').waitFor({ timeout: 600_000 })
  const keepOnly = found.getByRole('radio', { name: 'Only keep it' })
  if (!(await keepOnly.isChecked())) await keepOnly.check()
  await found.getByRole('button', { name: 'Record it' }).click()
  await found.waitFor({ state: 'detached', timeout: 60_000 })
  // Sending it is over before anything is measured.
  await page.locator('header a[data-state=sent]').waitFor({ timeout: 300_000 })
  const name = basename(recording)
  await page
    .getByRole('button', { name: `Look into it ${name}` })
    .first()
    .click()
  const view = page.getByRole('dialog', { name: `Into ${name}` })
  const messages = view.getByRole('list', { name: 'Messages' }).getByRole('button')
  await messages.first().waitFor({ timeout: 300_000 })
  await page.waitForTimeout(3000)
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
  const details = page.getByRole('dialog').filter({ hasNot: page.getByRole('list', { name: 'Messages' }) })
  await measure(
    'recording: open a message',
    (round) => messages.nth(round).click(),
    async () => {
      await details.waitFor()
      await page.keyboard.press('Escape')
      await details.waitFor({ state: 'detached' })
    },
  )
  await measureScroll('recording: scroll through the messages, a screen with each picture', messages.first())
  await measure('recording: look closer', () => view.getByRole('button', { name: 'Closer' }).click())
  const filters = ['Refused', 'Everything']
  await measure('recording: change the filter', (round) =>
    view.getByRole('radio', { name: filters[round % 2] }).check(),
  )
  await view.getByRole('searchbox').focus()
  await measure('recording: type a letter into the search', () => page.keyboard.press('7'))
  await view.getByRole('button', { name: 'Close' }).first().click()
  await view.waitFor({ state: 'detached' })
  await measure('job with the recording: unfold or fold a chapter', () => chapter('prove').click())
  await measure('job with the recording: the next step', () => page.locator('nav button').first().click())
}

load[1] = loadavg()[0]
await browser.close()
server.kill('SIGTERM')
rmSync(data, { recursive: true, force: true })

const rows = [...taken].map(([what, times]) => {
  const longest = times.map((time) => time.longest)
  const worked =
    times[0].worked === undefined ? '' : `${median(times.map((time) => time.worked)).toFixed(0)} ms`
  return `| ${what} | ${median(longest)} ms | ${Math.max(...longest)} ms | ${worked} | 100 ms |`
})
const pagePath = join(quick || only ? folder : join(root, 'docs'), 'performance-bench.md')
writeFileSync(
  pagePath,
  `# Performance of the bench

Written by \`npm run bench\`; do not edit.

- ${cpus()[0]?.model.trim()}, ${cpus().length} cores, Chromium ${browser.version()} slowed down ${slowdown} times (\`Emulation.setCPUThrottlingRate\`), load average ${load[0].toFixed(2)} before, ${load[1].toFixed(2)} after.
- ${jobs} jobs on the board${only ? '' : `, a recording of ${frames / 1e6} million frames open for the rows that say so`}; ${rounds} rounds each.
- From the finger or key to the next picture, by the browser's Event Timing, in steps of 8 ms; 16 ms means "at most". A machine that does something else at the same time makes them longer.
- Scrolling: the longest time between two pictures while the list of messages moves by its own height sixty times.
- The page's share: how long its own handlers of the longest event ran, median.

| interaction | median | longest | the page's share | aim |
| --- | --- | --- | --- | --- |
${rows.join('\n')}
`,
)
say(`Written: ${pagePath}`)
