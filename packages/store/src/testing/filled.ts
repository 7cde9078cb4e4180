import { createHash, randomUUID } from 'node:crypto'
import { Readable } from 'node:stream'
import { type Store, sealJob } from '../index.ts'
import { note, OtherDevice } from './devices.ts'

/** Puts two devices, two jobs, three blobs and a setting into a store. */
export async function fillLightly(store: Store): Promise<void> {
  const tablet = await OtherDevice.make('Van tablet')
  await store.enrol(tablet.device)
  const sent = [...(await tablet.writeNotes('job-a', 30)), ...(await tablet.writeNotes('job-b', 20))]
  const taken = await store.appendFacts(sent, { from: 'device' })
  if (!taken.ok) throw new Error(taken.refusal.what)
  for (const [size, type] of [
    [0, 'text/plain'],
    [1 << 20, 'image/jpeg'],
    [2_500_000, 'application/octet-stream'],
  ] as const) {
    const bytes = Buffer.alloc(size, 'key')
    const sha256 = createHash('sha256').update(bytes).digest('hex')
    await store.putBlob(sha256, type, Readable.from([bytes]))
  }
  await store.putSetting('demo', 'seeded')
}

/** Puts something of everything into a store: as `fillLightly`, and a sealed job with its document. */
export async function fill(store: Store): Promise<void> {
  await fillLightly(store)
  await store.writeOwn([
    {
      id: randomUUID(),
      job: 'job-sealed',
      at: '2026-11-25T09:00:00.000Z',
      by: 'Robin',
      kind: 'job-opened',
      body: {
        title: 'Spare key for a hire van',
        place: 'Harbour yard',
        zone: 'Europe/Lisbon',
        work: 'add-a-key',
        customer: 'fleet',
        vehicle: 'Small van',
        language: 'en',
        demo: true,
      },
    },
    note('job-sealed', 'The gate is open until five.', 5),
  ])
  const sealed = await sealJob(store, 'job-sealed', {
    by: 'Robin',
    evenIfNotReady: true,
    now: Date.UTC(2026, 10, 25, 12),
  })
  if (!sealed.ok) throw new Error(sealed.refusal.what)
}
