import { webcrypto } from 'node:crypto'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buffer } from 'node:stream/consumers'
import { Verifier, verifyHandover } from '@shearline/jobfile'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { openStore, type Store, sealJob } from '../index.ts'
import { note, OtherDevice } from '../testing/devices.ts'

let data: string
let store: Store
const now = Date.UTC(2026, 10, 25, 10)

beforeEach(async () => {
  data = await mkdtemp(join(tmpdir(), 'shearline-seal-'))
  store = await openStore(data)
})
afterEach(async () => {
  await store.close()
  await rm(data, { recursive: true, force: true })
})

async function proveDocument(job: string) {
  const [document] = await store.documentsOf(job)
  const opened = await store.openBlob(document?.blob ?? '')
  if (opened === null) throw new Error('the document was kept')
  return await verifyHandover(new Uint8Array(await buffer(opened.stream)), new Verifier(webcrypto.subtle))
}

describe('sealing', () => {
  test('STO-27 a seal covers all facts, a tablet whose clock runs ahead included, and is proven', async () => {
    const tablet = await OtherDevice.make()
    await store.enrol(tablet.device)
    await store.writeOwn([note('job-a', 'first')])
    await store.appendFacts([await tablet.write(note('job-a', 'three hours ahead', 240))], { from: 'device' })
    const sealed = await sealJob(store, 'job-a', { by: 'Robin', evenIfNotReady: true, now })
    expect(sealed).toMatchObject({ ok: true, value: { ready: false } })
    expect((await store.factsOfJob('job-a')).map(({ kind }) => kind)).toEqual([
      'note-written',
      'note-written',
      'document-sealed',
    ])
    expect(await proveDocument('job-a')).toMatchObject({ proven: true, facts: 3, findings: [] })
  })

  test('STO-27 what is open refuses a seal with its needs in words, and nothing is written', async () => {
    await store.writeOwn([note('job-a', 'first')])
    const refused = await sealJob(store, 'job-a', { by: 'Robin', now })
    expect(refused).toMatchObject({ ok: false, refusal: { code: 'not-in-line' } })
    if (refused.ok) return
    expect(refused.refusal.needs.map(({ code }) => code)).toContain('vin-missing')
    expect(refused.refusal.open).toHaveLength(refused.refusal.needs.length)
    expect(await store.factsOfJob('job-a')).toHaveLength(1)
    const unknown = await sealJob(store, 'job-b', { by: 'Robin', now })
    expect(unknown).toMatchObject({ ok: false, refusal: { code: 'unknown-job' } })
  })
})
