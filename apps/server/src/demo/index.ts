/** @module Puts the invented jobs into an empty data folder, through the same doors as real ones. */
import { createHash, randomUUID } from 'node:crypto'
import { decodeCapture } from '@shearline/bus'
import { type FactDraft, keptLine, RecordingIntake } from '@shearline/jobfile'
import {
  demoUnits,
  estateOnArrival,
  recordingBefore,
  type SceneFact,
  saloonAfterScan,
  saloonUntilScan,
  vanUntilSession,
} from '@shearline/jobfile/demo'
import { type Store, sealJob } from '@shearline/store'

const minuteMilliseconds = 60_000
const by = 'technician'

/** Seeds the demo when no job is on record; returns whether it did. `now` is milliseconds since 1970 UTC. */
export async function seedDemo(store: Store, now: number): Promise<boolean> {
  if ((await store.jobs()).length > 0) return false
  const yesterday = now - 26 * 60 * minuteMilliseconds
  await play(store, 'demo-saloon', yesterday, saloonUntilScan())
  await importScan(store, 'demo-saloon', yesterday + 39 * minuteMilliseconds, 'before')
  await play(store, 'demo-saloon', yesterday, saloonAfterScan().slice(0, -8))
  await importScan(store, 'demo-saloon', yesterday + 53.5 * minuteMilliseconds, 'after')
  await play(store, 'demo-saloon', yesterday, saloonAfterScan().slice(-8))
  await sealJob(store, 'demo-saloon', { by, now: yesterday + 70 * minuteMilliseconds })

  await play(store, 'demo-estate', now - 21 * minuteMilliseconds, estateOnArrival())

  const opened = now - 59 * minuteMilliseconds
  const van = vanUntilSession()
  const arrival = van.findIndex((fact) => fact.minute > 44.9)
  await play(store, 'demo-van', opened, van.slice(0, arrival))
  await importScan(store, 'demo-van', opened + 45 * minuteMilliseconds, 'before')
  await play(store, 'demo-van', opened, van.slice(arrival))
  return true
}

function play(store: Store, job: string, start: number, facts: readonly SceneFact[]) {
  return store.writeOwn(
    facts.map(({ minute, kind, body }): FactDraft => {
      const at = new Date(start + Math.round(minute * minuteMilliseconds)).toISOString()
      return { id: randomUUID(), job, at, by, kind, body: { ...body } }
    }),
  )
}

/** Decodes a generated recording as any other and records what it brought. */
async function importScan(
  store: Store,
  job: string,
  instant: number,
  phase: 'before' | 'after',
): Promise<void> {
  const bytes = new TextEncoder().encode(recordingBefore(Math.floor(instant / 1000)))
  const intake = new RecordingIntake()
  const kept: string[] = []
  const decoding = decodeCapture({
    message: (message) => {
      intake.message(message)
      kept.push(keptLine(message))
    },
    finding: intake.finding,
  })
  decoding.push(bytes)
  // Messages wait for evidence until the recording is over: nothing is kept before that.
  const decoded = decoding.end()
  const text = new TextEncoder().encode(kept.join(''))
  const hash = (data: Uint8Array) => createHash('sha256').update(data).digest('hex')
  const file = {
    name: `arrival-${phase}.log`,
    bytes: bytes.length,
    sha256: hash(bytes),
    keptSha256: hash(text),
  }
  const result = intake.finish(decoded, file)
  await store.putBlob(file.keptSha256, 'application/x-ndjson', once(text))
  const at = new Date(instant).toISOString()
  const units: FactDraft[] = demoUnits.map(({ response, role }) => ({
    id: randomUUID(),
    job,
    at,
    by,
    kind: 'unit-named',
    body: { unit: response.toString(16).toUpperCase(), role },
  }))
  const facts = result.facts(phase).filter((fact) => job === 'demo-van' || fact.kind !== 'vin-read')
  await store.writeOwn([
    ...facts.map(({ kind, body }): FactDraft => ({ id: randomUUID(), job, at, by, kind, body: { ...body } })),
    ...units,
  ])
}

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes
}
