import { spawnSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Fact, newIdentity } from '@shearline/jobfile'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { chooseRecording, openChapter, openFromBoard, sayWho } from '../support/by-hand.ts'
import { chromiumPath, launch, Served } from '../support/served.ts'
import { captures, shearline } from '../support/shearline.ts'
import { untilSent } from '../support/tablets.ts'

const served = new Served()
let browser: Browser
let page: Page

describe.skipIf(chromiumPath === null || captures === null)(
  `a recording kept sealed (needs Chromium, ../shared/captures${captures === null ? ': absent' : ''})`,
  () => {
    beforeAll(async () => {
      await served.start()
      browser = await launch()
      page = await browser.newPage({ viewport: { width: 390, height: 844 } })
    })
    afterAll(async () => {
      await browser?.close()
      await served.stop()
    })

    it("is sealed to a key taken over from the office, and age opens it to the file's own bytes", async () => {
      const { identity, recipient } = await newIdentity()
      const added = shearline([
        ...['vault', 'recipients', 'add', recipient, '--name', 'office', '--data', served.data],
      ])
      expect([added.code, added.err]).toEqual([0, ''])

      // A key of the office is proposed, never taken by itself.
      await page.goto(`${served.url}#/device`)
      await page.getByText('Nobody yet').waitFor()
      await page.getByRole('button', { name: 'Take over the key of office' }).click()
      await page.getByRole('button', { name: 'Remove office' }).waitFor()
      await expect.poll(() => page.getByText('The office seals to these keys too').count()).toBe(0)

      await openFromBoard(page, served.url, 'Estate car, spare wanted')
      await openChapter(page, 'faults')
      const recording = join(captures ?? '', '01_can11_obd_uds_kwp_scan.log')
      const dialog = await chooseRecording(page, recording)
      await dialog.getByText('Units that answered').waitFor()
      await dialog.getByRole('radio', { name: 'Only keep it' }).check()
      await dialog.getByRole('checkbox', { name: 'Keep it too, sealed' }).check()
      await dialog.getByRole('button', { name: 'Record it' }).click()
      await sayWho(page)
      await dialog.waitFor({ state: 'detached' })
      await untilSent(page)
      await page.getByText('Saved, all sent').waitFor()

      const answer = await fetch(`${served.url}api/jobs/demo-estate/facts`)
      const { facts } = (await answer.json()) as { facts: Fact[] }
      const sealed = facts.find(({ kind }) => kind === 'secret-sealed')
      expect(sealed?.body).toMatchObject({
        class: 'recording',
        what: '01_can11_obd_uds_kwp_scan.log',
        recipients: [recipient],
        secretBytes: readFileSync(recording).length,
      })
      const blob = await fetch(`${served.url}api/blobs/${String(sealed?.body.blob)}`)
      const file = join(served.folder, 'recording.age')
      writeFileSync(file, new Uint8Array(await blob.arrayBuffer()))
      writeFileSync(join(served.folder, 'key'), identity)
      // age of Debian (C2SP age v1): one line that says what it is, then the bytes of the recording.
      const opened = spawnSync('age', ['-d', '-i', join(served.folder, 'key'), file]).stdout
      expect(opened.subarray(opened.indexOf(0x0a) + 1).equals(readFileSync(recording))).toBe(true)
    })
  },
)
