/** @module The whole job on one recording: import, complete what the bus cannot tell, seal, verify, and try to forge. */
import { randomUUID, webcrypto } from 'node:crypto'
import { createWriteStream, existsSync } from 'node:fs'
import { mkdir, mkdtemp, readFile, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { foldJob, type JobState, sayNeed, Verifier, verifyFile } from '@shearline/jobfile'
import {
  demoUnits,
  demoVin,
  recordingAfter,
  recordingBefore,
  type SceneFact,
  settled,
  vanAfterSession,
  vanUntilSession,
} from '@shearline/jobfile/demo'
import { openStore, type Store, sealJob } from '@shearline/store'
import { importRecording } from '../job/import.ts'
import { CouldNot, countOf } from '../output/answer.ts'

export interface DemoResult {
  readonly recording: string
  readonly source: 'given' | 'captures' | 'generated'
  readonly job: string
  readonly vin: string | null
  readonly units: number
  readonly faultLines: number
  readonly tumblersInLine: number
  readonly document: string
  readonly documentBytes: number
  readonly proven: boolean
  /** A byte was changed in a copy of the document and verify found it. */
  readonly tamperFound: boolean
  readonly tamperFinding: string
}

interface DemoWish {
  readonly recording: string | undefined
  readonly out: string | undefined
  readonly tell: (line: string) => void
}

const by = 'technician'
const job = 'demo-van'

/** Runs the demo. Throws CouldNot when the recording cannot be read. */
export async function runDemo(wish: DemoWish): Promise<DemoResult> {
  const folder = wish.out === undefined ? await mkdtemp(join(tmpdir(), 'shearline-demo-')) : resolve(wish.out)
  await mkdir(folder, { recursive: true })
  const { before, after, source } = await recordings(wish.recording, folder)
  const store = await openStore(join(folder, 'data'), { deviceName: 'Demo' })
  try {
    if ((await store.jobEntry(job)) !== null)
      throw new CouldNot(`${folder} holds a demo already.`, 'Name another folder with --out.')
    wish.tell(`Recording: ${before}`)
    const units = await work(store, before, after, source, wish.tell)
    const state = foldJob(job, await store.factsOfJob(job))
    return await sealAndProve(store, state, { folder, before, source, units, tell: wish.tell })
  } finally {
    await store.close()
  }
}

async function work(
  store: Store,
  before: string,
  after: string,
  source: DemoResult['source'],
  tell: DemoWish['tell'],
): Promise<number> {
  const start = Date.now() - 100 * 60_000
  const write = (facts: readonly SceneFact[]) =>
    store.writeOwn(
      facts.map(({ minute, kind, body }) => ({
        id: randomUUID(),
        job,
        at: new Date(start + Math.round(minute * 60_000)).toISOString(),
        by,
        kind,
        body: { ...body },
      })),
    )
  // On a real recording the car's own VIN is read from the bus; glass and document then have to say the same.
  await write(vanUntilSession().slice(0, 3))
  const first = await importRecording(store, job, before, 'before', by, start + 3 * 60_000)
  const vin = first.intake.vins[0]?.vin ?? demoVin
  tell(
    `Read ${first.intake.recording.messages} messages of ${first.intake.recording.frames} frames: ${countOf(first.intake.recording.units.length, 'control unit')}, ${countOf(first.intake.faults, 'fault')}, VIN ${first.intake.vins.length === 0 ? 'not on the bus' : `from ${countOf(first.intake.vins.length, 'unit')}`}`,
  )
  const withVin = (facts: readonly SceneFact[]) =>
    facts.map(
      (fact) => (fact.kind === 'vin-read' ? { ...fact, body: { ...fact.body, vin } } : fact) as SceneFact,
    )
  await write(withVin(vanUntilSession().slice(3)))
  if (source === 'generated')
    await write(
      demoUnits.map(
        ({ response, role }): SceneFact => ({
          minute: 76,
          kind: 'unit-named',
          body: { unit: response.toString(16).toUpperCase(), role: role as 'body' },
        }),
      ),
    )
  await write(vanAfterSession())
  const second = await importRecording(store, job, after, 'after', by, start + 77 * 60_000)
  tell(
    `Scan after: ${countOf(second.intake.scannedUnits, 'unit')}, ${countOf(second.intake.faults, 'fault')}`,
  )
  await write(settled(96))
  return first.intake.recording.units.length
}

interface Sealing {
  readonly folder: string
  readonly before: string
  readonly source: DemoResult['source']
  readonly units: number
  readonly tell: DemoWish['tell']
}

async function sealAndProve(
  store: Store,
  state: JobState,
  { folder, before, source, units, tell }: Sealing,
): Promise<DemoResult> {
  // A fault that nothing explains, or a unit that did not answer twice, wants the customer's word before handover.
  const open = state.faults.faults.filter((line) => line.needsAttention)
  await store.writeOwn(
    open.map((line) => ({
      id: randomUUID(),
      job,
      at: new Date().toISOString(),
      by,
      kind: 'fault-acknowledged',
      body: {
        unit: line.unit,
        code: line.code,
        words: 'Shown to the customer and noted.',
        signer: 'fleet manager',
      },
    })),
  )
  if (open.length > 0) tell(`${countOf(open.length, 'fault')} acknowledged by the customer`)
  const ready = foldJob(job, await store.factsOfJob(job))
  for (const need of ready.tumblers.flatMap((tumbler) => tumbler.needs)) tell(`Open: ${sayNeed('en', need)}`)
  const sealed = await sealJob(store, job, { by, evenIfNotReady: true, now: Date.now() })
  if (!sealed.ok) throw new CouldNot(sealed.refusal.what, sealed.refusal.doNext)
  const document = join(folder, 'handover.pdf')
  const blob = await store.openBlob(sealed.value.document.sha256)
  if (blob === null)
    throw new CouldNot('The sealed document cannot be found.', 'Try again in another folder.')
  await pipeline(blob.stream, createWriteStream(document))
  const bytes = await readFile(document)
  const verifier = new Verifier(webcrypto.subtle)
  const check = await verifyFile(bytes, verifier)
  tell(
    `Sealed ${check.facts} facts into ${document} (${bytes.length} bytes): ${check.signatures} signatures, ${check.hashes} hashes`,
  )
  const forged = Uint8Array.from(bytes)
  const place = bytes.indexOf('"carCount":4')
  forged[place + '"carCount":'.length] = '5'.charCodeAt(0)
  const forgery = await verifyFile(forged, verifier)
  const finding = forgery.findings.find((found) => found.severity === 'error')
  tell(
    `A copy with one byte changed is refused: ${finding?.where.part ?? ''}: ${finding?.what ?? 'NOT FOUND'}`,
  )
  const final = foldJob(job, await store.factsOfJob(job))
  return {
    recording: before,
    source,
    job,
    vin: final.vin,
    units,
    faultLines: final.faults.faults.length,
    tumblersInLine: final.tumblers.filter((tumbler) => tumbler.state === 'in-line').length,
    document,
    documentBytes: bytes.length,
    proven: check.proven,
    tamperFound: place > 0 && !forgery.proven && finding !== undefined,
    tamperFinding: finding?.where.part ?? '',
  }
}

/** Recordings to try in the folder of outside captures, the richest in fault scans first. */
const captures = ['01_can11_obd_uds_kwp_scan.log']

async function recordings(
  given: string | undefined,
  folder: string,
): Promise<{ before: string; after: string; source: DemoResult['source'] }> {
  if (given !== undefined) return { before: given, after: given, source: 'given' }
  const shared = new URL('../../../../../shared/captures/files/', import.meta.url).pathname
  const found = captures.map((name) => join(shared, name)).find((file) => existsSync(file))
  if (found !== undefined) return { before: found, after: found, source: 'captures' }
  const now = Math.floor(Date.now() / 1000)
  const before = join(folder, 'before.log')
  const after = join(folder, 'after.log')
  await writeFile(before, recordingBefore(now - 3600))
  await writeFile(after, recordingAfter(now - 1200))
  return { before, after, source: 'generated' }
}
