/** @module Sealing: the fact that counts and hashes everything before it, and the document that carries the record. */
import { createHash, randomUUID } from 'node:crypto'
import {
  type Device,
  type Fact,
  type FactDraft,
  factHash,
  foldJob,
  type JobRecord,
  makeRecord,
  type Need,
  type Sign,
  treeHeadOfHashes,
} from '@shearline/jobfile'
import type { Store } from '@shearline/store'
import type { Board } from '../board/index.ts'
import { Problem, take } from '../problem/index.ts'

/** Makes the PDF of a sealed record; `device` wrote its seal and `sign` signs with that device's key. */
export type MakeHandover = (input: {
  readonly record: JobRecord
  /** BCP 47. */
  readonly language: string
  readonly device: Device
  readonly sign: Sign
  /** The instant of the seal, UTC. */
  readonly madeAt: string
}) => Promise<Uint8Array>

export interface SealParts {
  readonly store: Store
  readonly board: Board
  readonly makeHandover: MakeHandover
  /** The present instant, milliseconds since 1970 UTC. */
  readonly clock: () => number
}

export interface SealWish {
  /** Language of the document; that of the job when left out. */
  readonly language?: string | undefined
  readonly by: string
  readonly evenIfNotReady?: boolean | undefined
}

export interface Sealed {
  readonly document: { readonly sha256: string; readonly bytes: number }
  readonly ready: boolean
}

/** Sealing is what these ask for, so they cannot stand against it. */
const answeredBySealing: ReadonlySet<string> = new Set(['not-sealed', 'changed-since-seal'])

/**
 * Seals a job as it stands: writes the `document-sealed` fact, makes the document from exactly the facts up to
 * it, keeps it. Throws Problem `unknown-job`, `not-in-line` (with the needs) or `handover-failed`.
 */
export async function sealJob(parts: SealParts, job: string, wish: SealWish): Promise<Sealed> {
  const { store, board } = parts
  const chainBroken = await board.chainBroken(await store.factsOfJob(job))
  const { before, written } = await store.writeOwnAfter(job, (facts) => [
    composeSeal(job, facts, wish, { chainBroken, now: parts.clock() }),
  ])
  const facts = [...before, ...written]
  const seal = written[0]
  if (seal === undefined) throw new Error('a seal was composed, so it was written')
  const record = makeRecord(job, facts, await board.writersOf(facts))
  const pdf = await makeDocument(parts, record, seal)
  const sha256 = createHash('sha256').update(pdf).digest('hex')
  const blob = take(await store.putBlob(sha256, 'application/pdf', once(pdf)))
  await store.keepDocument({ job, seal: seal.id, blob: sha256, sealedAt: seal.at })
  return { document: { sha256, bytes: blob.bytes }, ready: seal.body.ready === true }
}

function composeSeal(
  job: string,
  facts: readonly Fact[],
  wish: SealWish,
  known: { readonly chainBroken: boolean; readonly now: number },
): FactDraft {
  if (facts.length === 0) throw unknownJob(job)
  const state = foldJob(job, facts, { chainBroken: known.chainBroken })
  const needs = state.tumblers.flatMap((tumbler) => tumbler.needs).filter(standsAgainstSealing)
  const ready = needs.length === 0
  if (!ready && wish.evenIfNotReady !== true) throw notInLine(needs)
  // The seal must come last in fold order, also when a tablet's clock runs ahead of this one.
  const last = Date.parse(facts.at(-1)?.at ?? '')
  return {
    id: randomUUID(),
    job,
    at: new Date(Number.isNaN(last) ? known.now : Math.max(known.now, last + 1)).toISOString(),
    by: wish.by,
    kind: 'document-sealed',
    body: {
      count: facts.length,
      root: treeHeadOfHashes(facts.map(factHash)),
      language: wish.language ?? state.opened?.language ?? 'en',
      ready,
      open: [...new Set(needs.map((need) => need.code))],
    },
  }
}

function standsAgainstSealing(need: Need): boolean {
  return !answeredBySealing.has(need.code)
}

async function makeDocument(
  { makeHandover, store }: SealParts,
  record: JobRecord,
  seal: Fact,
): Promise<Uint8Array> {
  const { device, sign } = store
  try {
    return await makeHandover({ record, language: String(seal.body.language), device, sign, madeAt: seal.at })
  } catch (error) {
    console.error(error)
    throw new Problem(500, 'handover-failed', {
      what: 'The job is sealed, but its document could not be made.',
      doNext: 'Seal it once more. The record itself is whole and can be exported.',
    })
  }
}

/** For a job no fact names. */
export function unknownJob(job: string): Problem {
  return new Problem(404, 'unknown-job', {
    what: 'No fact of this job is here.',
    where: job,
    doNext: 'Look whether the device that recorded it has sent its facts.',
  })
}

function notInLine(needs: readonly Need[]): Problem {
  const words = {
    what: `The job is not in line: ${needs.length} ${needs.length === 1 ? 'thing is' : 'things are'} open.`,
    doNext: 'Do what is open, or seal it as it is; the document then says what is open.',
  }
  return new Problem(409, 'not-in-line', words, { needs })
}

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes
}
