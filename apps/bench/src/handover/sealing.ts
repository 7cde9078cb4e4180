/** @module Seals a job on this device: the seal's fact and its document come to be together, or not at all. */
import { composeSeal, makeRecord, picturesWanted, Verifier, verifyFacts } from '@shearline/jobfile'
import { openAtRest } from '../photos/at-rest.ts'
import { database } from '../sync/database.ts'
import { keptFacts } from '../sync/read.ts'
import { keepComposed } from '../sync/write.ts'
import { inWorker } from './in-worker.ts'
import { registerFor } from './record-here.ts'
import type { Proof } from './sealing.worker.ts'

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
    const register = await registerFor(facts, pen.self.device)
    const chain = await verifyFacts(
      facts,
      devices,
      new Verifier(crypto.subtle),
      register.length === 0 ? {} : { register },
    )
    const chainBroken = chain.findings.some((finding) => finding.severity === 'error')
    const composed = composeSeal({ job, facts, chainBroken })
    if (composed === null || (composed.needs.length > 0 && !evenIfNotReady)) throw new NotInLine()
    const seal = await pen.write({ kind: 'document-sealed', body: composed.body }, composed.after)
    const { device, name, publicKey, privateKey } = pen.self
    const record = makeRecord(job, [...facts, seal], devices, register)
    const made = await inWorker({
      what: 'make',
      record,
      pictures: await picturesHere(picturesWanted(record)),
      language: composed.body.language,
      device: { device, name, publicKey },
      privateKey,
      madeAt: seal.at,
    })
    if (!made.proof.proven && !chainBroken) throw new NotProven()
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
  const { proof } = await inWorker({ what: 'prove', file })
  return proof
}

/** Photos this device holds, by SHA-256. A photo it lacks is left out: the document names it all the same. */
async function picturesHere(wanted: readonly string[]): Promise<ReadonlyMap<string, Uint8Array>> {
  const found = new Map<string, Uint8Array>()
  const db = await database()
  for (const sha256 of wanted) {
    const kept = await db.get('blobs', sha256)
    if (kept === undefined) continue
    // Bytes that do not open are as good as none.
    const blob = await openAtRest(kept).catch(() => null)
    if (blob !== null) found.set(sha256, new Uint8Array(await blob.arrayBuffer()))
  }
  return found
}

function hex(bytes: ArrayBuffer): string {
  return [...new Uint8Array(bytes)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
}
