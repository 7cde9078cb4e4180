/** @module What is kept while the bench is sending is sent too, without anything else happening. */
import { createHash } from 'node:crypto'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { launch } from '../support/served.ts'
import { cannotRun, keptIn, Office, untilSent } from '../support/tablets.ts'

const office = new Office()
let browser: Browser
let page: Page

/** Keeps small things one after the other, as the bench does: each in its store, then announced; some pauses between. */
async function keep(texts: readonly string[], pauses: readonly number[]): Promise<void> {
  const named = texts.map((text) => ({ text, sha256: createHash('sha256').update(text).digest('hex') }))
  await page.evaluate(
    async ([all, waits]) => {
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open('shearline-bench')
        request.onsuccess = () => resolve(request.result)
        request.onerror = () => reject(request.error)
      })
      const bell = new BroadcastChannel('shearline-changes')
      for (const [index, { text, sha256 }] of all.entries()) {
        const tx = db.transaction('blobs', 'readwrite')
        tx.objectStore('blobs').put({ sha256, blob: new Blob([text]), name: 'note', sent: false })
        await new Promise((resolve) => {
          tx.oncomplete = resolve
        })
        bell.postMessage({ what: 'outbox' })
        await new Promise((resolve) => setTimeout(resolve, waits[index]))
      }
      bell.close()
      db.close()
    },
    [named, pauses] as const,
  )
}

describe.skipIf(cannotRun !== null)('what is kept while the bench sends', () => {
  beforeAll(async () => {
    await office.start({ demo: true })
    browser = await launch()
    page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage()
    await page.goto(office.url)
    await page.getByText('Saved, all sent').waitFor()
  })
  afterAll(async () => {
    await browser?.close()
    await office.close()
  })

  it('is sent after it, whenever in between it was kept', async () => {
    // The pauses reach from the beginning of a pass to its end, wherever that lies on this machine.
    for (let round = 0; round < 12; round++) {
      const texts = [0, 1, 2].map((one) => `round ${round}, ${one}`)
      await keep(texts, [round * 2, round * 4, 0])
      await untilSent(page)
    }
    await page.getByText('Saved, all sent').waitFor()
    const { blobs } = await keptIn(page)
    expect(blobs).toHaveLength(36)
    for (const { sha256 } of blobs)
      expect((await fetch(`${office.url}api/blobs/${sha256}`, { method: 'HEAD' })).status).toBe(200)
  })
})
