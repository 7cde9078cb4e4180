/** @module Sealing: the fact that counts and hashes everything before it, and the document that carries the record. */
import { createHash, randomUUID, webcrypto } from 'node:crypto'
import {
  type Device,
  type Fact,
  type FactDraft,
  factHash,
  foldJob,
  makeHandover,
  makeRecord,
  type Need,
  sayNeed,
  treeHeadOfHashes,
  Verifier,
  verifyFacts,
} from '@shearline/jobfile'
import type { Store } from '../contract/index.ts'
import { documentFonts } from './fonts.ts'

export interface SealWish {
  readonly by: string
  /** Language of the document (BCP 47); that of the job when left out. */
  readonly language?: string | undefined
  /** Seal although something is open; the document then says what. */
  readonly evenIfNotReady?: boolean | undefined
  /** The present instant, milliseconds since 1970 UTC. */
  readonly now: number
}

export interface Sealed {
  readonly document: { readonly sha256: string; readonly bytes: number }
  readonly ready: boolean
}

/** Why a job was not sealed. Nothing was written. */
export interface SealRefusal {
  readonly code: 'unknown-job' | 'not-in-line'
  readonly what: string
  readonly doNext: string
  readonly needs: readonly Need[]
  /** The needs in words. */
  readonly open: readonly string[]
}

export type SealOutcome =
  | { readonly ok: true; readonly value: Sealed }
  | { readonly ok: false; readonly refusal: SealRefusal }

/** Sealing is what these ask for, so they cannot stand against it. */
const answeredBySealing: ReadonlySet<string> = new Set(['not-sealed', 'changed-since-seal'])

/** Carries a refusal out of the write transaction, so that nothing of it is kept. */
class Refused extends Error {
  readonly refusal: SealRefusal
  constructor(refusal: SealRefusal) {
    super(refusal.what)
    this.refusal = refusal
  }
}

/**
 * Seals a job as it stands: writes the `document-sealed` fact with this folder's device, makes the document from
 * exactly the facts up to it, and keeps it as a blob. Throws StoreError when the place itself fails.
 */
export async function sealJob(store: Store, job: string, wish: SealWish): Promise<SealOutcome> {
  const broken = await chainBroken(store, await store.factsOfJob(job))
  let sealed: Awaited<ReturnType<Store['writeOwnAfter']>>
  try {
    sealed = await store.writeOwnAfter(job, (facts) => [composeSeal(job, facts, wish, broken)])
  } catch (error) {
    if (error instanceof Refused) return { ok: false, refusal: error.refusal }
    throw error
  }
  const facts = [...sealed.before, ...sealed.written]
  const seal = facts.at(-1)
  if (seal === undefined) throw new Error('a seal was composed, so it was written')
  const pdf = await makeHandover({
    record: makeRecord(job, facts, await writersOf(store, facts)),
    language: String(seal.body.language),
    fonts: await documentFonts(),
    device: store.device,
    sign: store.sign,
    madeAt: seal.at,
  })
  const sha256 = createHash('sha256').update(pdf).digest('hex')
  const kept = await store.putBlob(sha256, 'application/pdf', once(pdf))
  if (!kept.ok) throw new Error(`the document was refused as a blob: ${kept.refusal.what}`)
  await store.keepDocument({ job, seal: seal.id, blob: sha256, sealedAt: seal.at })
  return { ok: true, value: { document: { sha256, bytes: pdf.length }, ready: seal.body.ready === true } }
}

/** True when a signature or a link of these facts does not hold. */
export async function chainBroken(store: Store, facts: readonly Fact[]): Promise<boolean> {
  const check = await verifyFacts(facts, await writersOf(store, facts), new Verifier(webcrypto.subtle))
  return check.findings.some((finding) => finding.severity === 'error')
}

/** The devices that wrote these facts, with their keys and without what only this store knows of them. */
export async function writersOf(store: Store, facts: readonly Fact[]): Promise<readonly Device[]> {
  const writers = new Set(facts.map((fact) => fact.device))
  const devices = await store.devices()
  return devices
    .filter(({ device }) => writers.has(device))
    .map(({ device, name, publicKey }) => ({ device, name, publicKey }))
}

function composeSeal(job: string, facts: readonly Fact[], wish: SealWish, broken: boolean): FactDraft {
  if (facts.length === 0) {
    throw new Refused({
      code: 'unknown-job',
      what: `There is no job "${job}" here.`,
      doNext: 'Look whether the device that recorded it has sent its facts.',
      needs: [],
      open: [],
    })
  }
  const state = foldJob(job, facts, { chainBroken: broken })
  const needs = state.tumblers
    .flatMap((tumbler) => tumbler.needs)
    .filter((need) => !answeredBySealing.has(need.code))
  const ready = needs.length === 0
  if (!ready && wish.evenIfNotReady !== true) {
    throw new Refused({
      code: 'not-in-line',
      what: `The job is not in line: ${needs.length} ${needs.length === 1 ? 'thing is' : 'things are'} open.`,
      doNext: 'Do what is open, or seal it as it is; the document then says what is open.',
      needs,
      open: needs.map((need) => sayNeed('en', need)),
    })
  }
  // The seal must come last in fold order, also when a tablet's clock runs ahead of this one.
  const last = Date.parse(facts.at(-1)?.at ?? '')
  return {
    id: randomUUID(),
    job,
    at: new Date(Number.isNaN(last) ? wish.now : Math.max(wish.now, last + 1)).toISOString(),
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

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes
}
