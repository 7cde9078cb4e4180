import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import { openStore } from '@shearline/store'
import { expect, test } from 'vitest'
import { seedDemo } from './index.ts'

test('every recording of the demo keeps as many messages as its record says', async () => {
  const data = await mkdtemp(join(tmpdir(), 'shearline-demo-'))
  const store = await openStore(data)
  try {
    expect(await seedDemo(store, Date.parse('2026-11-25T12:00:00Z'))).toBe(true)
    let recordings = 0
    for (const { job } of await store.jobs()) {
      for (const fact of await store.factsOfJob(job)) {
        if (fact.kind !== 'recording-attached') continue
        const { blob, messages } = fact.body as { blob: string; messages: number }
        const kept = await store.openBlob(blob)
        const lines = kept === null ? [] : (await text(kept.stream)).split('\n').filter((line) => line !== '')
        expect([fact.id, lines.length]).toEqual([fact.id, messages])
        recordings++
      }
    }
    expect(recordings).toBe(3)
  } finally {
    await store.close()
    await rm(data, { recursive: true })
  }
})
