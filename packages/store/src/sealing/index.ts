/** @module Sealing: the fact that counts and hashes everything before it, and the document that carries the record. */
import { createHash, randomUUID, webcrypto } from 'node:crypto'
import {
  type ChainOptions,
  composeSeal,
  type Device,
  type Fact,
  type FactDraft,
  type JobRecord,
  makeHandover,
  makeRecord,
  type Need,
  sayNeed,
  Verifier,
  verifyFacts,
} from '@shearline/jobfile'
import type { Store } from '../contract/index.ts'
import { registerOf } from '../register/index.ts'
import { documentFonts } from './fonts.ts'
import { picturesAtHand } from './pictures.ts'

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
    sealed = await store.writeOwnAfter(job, (facts) => [draftSeal(job, facts, wish, broken)])
  } catch (error) {
    if (error instanceof Refused) return { ok: false, refusal: error.refusal }
    throw error
  }
  const facts = [...sealed.before, ...sealed.written]
  const seal = facts.at(-1)
  if (seal === undefined) throw new Error('a seal was composed, so it was written')
  const record = await recordOf(store, job, facts)
  const pdf = await makeHandover({
    record,
    pictures: await picturesAtHand(store, record),
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

/** True when a signature or a link of these facts of one job does not hold, or a fact comes after a revocation. */
export async function chainBroken(store: Store, facts: readonly Fact[]): Promise<boolean> {
  const job = facts[0]?.job
  if (job === undefined) return false
  const devices = await writersOf(store, facts)
  const known: ChainOptions = { received: await store.receivedOfJob(job) }
  const register = await registerOf(store)
  const options = register.length === 0 ? known : { ...known, register }
  const check = await verifyFacts(facts, devices, new Verifier(webcrypto.subtle), options)
  return check.findings.some((finding) => finding.severity === 'error')
}

/** The record of a job: these facts of it, the keys of who wrote them, and the firm's register of devices. */
export async function recordOf(store: Store, job: string, facts: readonly Fact[]): Promise<JobRecord> {
  return makeRecord(job, facts, await writersOf(store, facts), await registerOf(store))
}

/** The devices that wrote these facts, with their keys and without what only this store knows of them. */
export async function writersOf(store: Store, facts: readonly Fact[]): Promise<readonly Device[]> {
  const writers = new Set(facts.map((fact) => fact.device))
  const devices = await store.devices()
  return devices
    .filter(({ device }) => writers.has(device))
    .map(({ device, name, publicKey }) => ({ device, name, publicKey }))
}

function draftSeal(job: string, facts: readonly Fact[], wish: SealWish, broken: boolean): FactDraft {
  const composed = composeSeal({ job, facts, chainBroken: broken, language: wish.language })
  if (composed === null) {
    throw new Refused({
      code: 'unknown-job',
      what: `There is no job "${job}" here.`,
      doNext: 'Look whether the device that recorded it has sent its facts.',
      needs: [],
      open: [],
    })
  }
  const { body, needs, after } = composed
  if (needs.length > 0 && wish.evenIfNotReady !== true) {
    throw new Refused({
      code: 'not-in-line',
      what: `The job is not in line: ${needs.length} ${needs.length === 1 ? 'thing is' : 'things are'} open.`,
      doNext: 'Do what is open, or seal it as it is; the document then says what is open.',
      needs,
      open: needs.map((need) => sayNeed('en', need)),
    })
  }
  // The seal must come last in fold order, also when a tablet's clock runs ahead of this one.
  const last = Date.parse(after)
  return {
    id: randomUUID(),
    job,
    at: new Date(Number.isNaN(last) ? wish.now : Math.max(wish.now, last + 1)).toISOString(),
    by: wish.by,
    kind: 'document-sealed',
    body: { ...body },
  }
}

async function* once(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes
}
