/** @module Seals a job on this device: the seal's fact and its document come to be together, or not at all. */
import { composeSeal, makeRecord, Verifier, verifyFacts } from '@shearline/jobfile'
import { keptFacts } from '../sync/read.ts'
import { keepComposed } from '../sync/write.ts'
import type { MakeAsk, Proof, ProveAsk, SealingAnswer } from './sealing.worker.ts'

/** The job is not in line and sealing it so was not asked for. Nothing was written. */
export class NotInLine extends Error {}

/** The document just made did not prove: nothing was written. */
export class NotProven extends Error {}

/** What sealing a job needs to be told. */
export interface SealWish {
  readonly job: string
  readonly evenIfNotReady: boolean
}

/**
 * Seals everything this device knows of a job. The document is made in a worker, proven there, and goes to the
 * disk in the same transaction as the fact that names it. Needs no connection.
 */
export async function sealHere({ job, evenIfNotReady }: SealWish): Promise<Proof> {
  let proof: Proof | null = null
  await keepComposed(job, async (pen) => {
    const { facts, devices } = await keptFacts(job)
    const chain = await verifyFacts(facts, devices, new Verifier(crypto.subtle))
    const chainBroken = chain.findings.some((finding) => finding.severity === 'error')
    const composed = composeSeal({ job, facts, chainBroken })
    if (composed === null || (composed.needs.length > 0 && !evenIfNotReady)) throw new NotInLine()
    const seal = await pen.write({ kind: 'document-sealed', body: composed.body }, composed.after)
    const { device, name, publicKey, privateKey } = pen.self
    const made = await work({
      what: 'make',
      record: makeRecord(job, [...facts, seal], devices),
      language: composed.body.language,
      device: { device, name, publicKey },
      privateKey,
      madeAt: seal.at,
    })
    if (made.what !== 'made' || (!made.proof.proven && !chainBroken)) throw new NotProven()
    proof = made.proof
    const sha256 = hex(await crypto.subtle.digest('SHA-256', made.pdf))
    const blob = new Blob([made.pdf], { type: 'application/pdf' })
    return {
      blobs: [{ sha256, blob, name: `${job}.pdf`, sent: false }],
      documents: [{ seal: seal.id, job, sha256, sealedAt: seal.at, sent: false }],
    }
  })
  if (proof === null) throw new NotProven()
  return proof
}

/** Proves a document in this browser, offline. Never throws on what the file holds. */
export async function proveHere(file: Blob): Promise<Proof> {
  const answer = await work({ what: 'prove', file })
  if (answer.what !== 'proven') throw new NotProven()
  return answer.proof
}

function work(ask: MakeAsk | ProveAsk): Promise<SealingAnswer> {
  const worker = new Worker(new URL('./sealing.worker.ts', import.meta.url), { type: 'module' })
  return new Promise<SealingAnswer>((resolve, reject) => {
    worker.addEventListener('message', (event: MessageEvent<SealingAnswer>) => {
      if (event.data.what === 'failed') reject(new Error(event.data.why))
      else resolve(event.data)
    })
    worker.addEventListener('error', (event) => reject(new Error(event.message)))
    worker.postMessage(ask)
  }).finally(() => worker.terminate())
}

function hex(bytes: ArrayBuffer): string {
  return [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
