import { createHash, randomUUID } from 'node:crypto'
import { createReadStream, createWriteStream } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { finished } from 'node:stream/promises'
import { type Fact, type FactDraft, type IntakeResult, keptLine, RecordingIntake } from '@shearline/jobfile'
import type { ScanPhase } from '@shearline/keywork'
import type { Store } from '@shearline/store'
import { CouldNot } from '../output/answer.ts'
import { readRecording } from '../output/recording.ts'
import { taken } from './data.ts'

/** What importing a recording wrote. */
export interface Imported {
  readonly intake: IntakeResult
  readonly facts: readonly Fact[]
}

/**
 * Reads a recording, keeps its redacted messages as a blob and records what it brought in the job. `phase` says
 * which scan it is; null keeps it without one. `now` is the instant to record, milliseconds since 1970 UTC. Throws CouldNot when the job is unknown or nothing can be read.
 */
export async function importRecording(
  store: Store,
  job: string,
  file: string,
  phase: ScanPhase | null,
  by: string,
  now: number = Date.now(),
): Promise<Imported> {
  const known = await store.factsOfJob(job)
  if (known.length === 0)
    throw new CouldNot(`There is no job "${job}".`, 'List them with: shearline job list.')
  const folder = await mkdtemp(join(tmpdir(), 'shearline-'))
  try {
    const kept = join(folder, 'messages.jsonl')
    const { intake, keptSha256 } = await spool(file, kept)
    taken(await store.putBlob(keptSha256, 'application/x-ndjson', createReadStream(kept)))
    const last = Date.parse(known.at(-1)?.at ?? '')
    const at = new Date(Math.max(now, Number.isNaN(last) ? 0 : last)).toISOString()
    const drafts = intake
      .facts(phase)
      .map(({ kind, body }): FactDraft => ({ id: randomUUID(), job, at, by, kind, body: { ...body } }))
    return { intake, facts: await store.writeOwn(drafts) }
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

async function spool(file: string, kept: string): Promise<{ intake: IntakeResult; keptSha256: string }> {
  const intake = new RecordingIntake()
  const out = createWriteStream(kept, { mode: 0o600 })
  const hash = createHash('sha256')
  const read = await readRecording(
    file,
    {
      message: (message) => {
        intake.message(message)
        const line = keptLine(message)
        hash.update(line)
        out.write(line)
      },
      announcement: intake.announcement,
      finding: intake.finding,
    },
    {},
    async () => {
      if (out.writableNeedDrain) await new Promise<void>((resolve) => out.once('drain', () => resolve()))
    },
  )
  out.end()
  await finished(out)
  const keptSha256 = hash.digest('hex')
  const { name, bytes, sha256 } = read
  return { keptSha256, intake: intake.finish(read.result, { name, bytes, sha256, keptSha256 }) }
}
