/** @module A backup is sealed on the bench, and opened there with the key's own file: age of Debian makes the key. */

import { spawnSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Fact } from '@shearline/jobfile'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { goToJob, openChapter, sayWho } from '../support/by-hand.ts'
import { chromiumPath, launch, Served } from '../support/served.ts'
import { shearline } from '../support/shearline.ts'
import { untilSent } from '../support/tablets.ts'

const served = new Served()
let browser: Browser
let page: Page
/** Stands for what somebody's equipment saved of a control unit. */
const memory = Buffer.from(Array.from({ length: 4096 }, (_, at) => (at * 89) & 0xff))
const file = (name: string) => join(served.folder, name)

/** A key pair of age; gives the public key, the private one stays in its file. */
function newKey(name: string): string {
  expect(spawnSync('age-keygen', ['-o', file(name)]).status).toBe(0)
  return spawnSync('age-keygen', ['-y', file(name)], { encoding: 'utf8' }).stdout.trim()
}

async function factsOf(job: string): Promise<readonly Fact[]> {
  const answer = await fetch(`${served.url}api/jobs/${job}/facts`)
  return ((await answer.json()) as { facts: Fact[] }).facts
}

describe.skipIf(chromiumPath === null)('a sealed backup (needs Chromium and age)', () => {
  beforeAll(async () => {
    await served.start()
    browser = await launch()
    page = await browser.newPage({ viewport: { width: 390, height: 844 } })
  })
  afterAll(async () => {
    await browser?.close()
    await served.stop()
  })

  it('is opened by the file of its key and a reason, which are dots on the screen until somebody asks', async () => {
    const recipient = newKey('office.key')
    newKey('other.key')
    const added = shearline([
      'vault',
      'recipients',
      'add',
      recipient,
      '--name',
      'office',
      '--data',
      served.data,
    ])
    expect([added.code, added.err]).toEqual([0, ''])
    await page.goto(`${served.url}#/device`)
    await page.getByRole('button', { name: 'Take over the key of office' }).click()
    await page.getByRole('button', { name: 'Remove office' }).waitFor()

    for (const name of ['first.bin', 'second.bin']) writeFileSync(file(name), memory)
    await goToJob(page, served.url, 'demo-estate', 'Estate car, spare wanted')
    await openChapter(page, 'backup')
    const chapter = page.locator('#chapter-backup')
    await chapter.getByLabel('Read twice, seal it').check()
    await chapter.getByLabel('What was read').fill('body control unit, EEPROM')
    await chapter.getByLabel('Choose the first read').setInputFiles(file('first.bin'))
    await chapter.getByLabel('Choose the second read').setInputFiles(file('second.bin'))
    await chapter.getByRole('button', { name: 'Compare and seal' }).click()
    await sayWho(page)
    await chapter.getByText('The two reads are equal.').waitFor()
    await untilSent(page)

    await chapter.getByText('Open it', { exact: true }).click()
    const key = chapter.getByLabel('Private key', { exact: true })
    const veil = () =>
      key.evaluate((field) => getComputedStyle(field).getPropertyValue('-webkit-text-security'))
    const open = chapter.getByRole('button', { name: 'Record the reason and open' })
    await chapter.getByLabel('Why it is opened').fill('the unit was exchanged')

    // A key that is not meant: nothing is opened, and no reason is on record.
    await chapter.getByLabel('Take it from its file').setInputFiles(file('other.key'))
    await expect.poll(() => key.inputValue()).toContain('AGE-SECRET-KEY-')
    expect(await veil()).toBe('disc')
    await chapter.getByRole('button', { name: 'Show the key' }).click()
    expect(await veil()).toBe('none')
    await chapter.getByRole('button', { name: 'Hide the key' }).click()
    await open.click()
    await chapter.getByRole('alert').waitFor()
    expect((await factsOf('demo-estate')).filter(({ kind }) => kind === 'secret-opened')).toEqual([])

    // What is no key at all is not even put into the field.
    writeFileSync(file('large.bin'), Buffer.alloc(70_000, 0x41))
    await chapter.getByLabel('Take it from its file').setInputFiles(file('large.bin'))
    await chapter.getByText('“large.bin” is too large to be a private key.').waitFor()
    expect(await key.inputValue()).toContain('AGE-SECRET-KEY-')

    await chapter.getByLabel('Take it from its file').setInputFiles(file('office.key'))
    await expect.poll(() => key.inputValue()).toBe(readFileSync(file('office.key'), 'utf8'))
    await open.click()
    const saved = page.waitForEvent('download')
    await chapter.getByText('Save the opened file').click()
    const download = await saved
    await download.saveAs(file('opened.bin'))
    expect(readFileSync(file('opened.bin')).equals(memory)).toBe(true)
    await untilSent(page)
    const opened = (await factsOf('demo-estate')).filter(({ kind }) => kind === 'secret-opened')
    expect(opened.map(({ body }) => body.reason)).toEqual(['the unit was exchanged'])
  })
})
