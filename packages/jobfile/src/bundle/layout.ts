/** @module Which file of a bundle holds what. */
import { canonicalJson, type Device, fromBase64Url, signedText } from '../chain/index.ts'
import type { Fact } from '../facts/index.ts'
import type { JobRecord } from '../record/index.ts'
import { pemOf } from './pem.ts'

export const names = {
  readme: 'README.md',
  list: 'SHA256SUMS',
  listSignature: 'SHA256SUMS.sig',
  facts: 'facts.jsonl',
  devices: 'keys/devices.json',
  page: 'verify.html',
} as const

/** A small file of a bundle. */
export interface BundleFile {
  readonly name: string
  readonly bytes: Uint8Array
}

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text)

/** Where the public key of a device stands. */
export function keyName(device: string): string {
  return `keys/${device}.pem`
}

/** Where the parts of a fact stand, without their ends. A device's folder lists its facts in the chain's order. */
export function chainName({ device, seq }: Pick<Fact, 'device' | 'seq'>): string {
  return `chain/${device}/${String(seq).padStart(8, '0')}`
}

/** What the device signed, the body it hashed, and its signature as 64 raw bytes. */
export function chainFiles(fact: Fact): readonly BundleFile[] {
  const name = chainName(fact)
  return [
    { name: `${name}.body`, bytes: utf8(canonicalJson(fact.body)) },
    { name: `${name}.sig`, bytes: fromBase64Url(fact.sig) ?? new Uint8Array(0) },
    { name: `${name}.signed`, bytes: utf8(signedText(fact)) },
  ]
}

/** The facts in fold order, one canonical JSON text a line. */
export function factsFile(record: JobRecord): BundleFile {
  return { name: names.facts, bytes: utf8(record.facts.map((fact) => `${canonicalJson(fact)}\n`).join('')) }
}

/** The devices by name, and which of them packed the bundle. */
export function keyFiles(devices: readonly Device[], packedBy: string): readonly BundleFile[] {
  const listed = devices.map(({ device, name, publicKey }) => ({ device, name, publicKey }))
  return [
    { name: names.devices, bytes: utf8(`${canonicalJson({ devices: listed, packedBy })}\n`) },
    ...devices.map(({ device, publicKey }) => ({ name: keyName(device), bytes: utf8(pemOf(publicKey)) })),
  ]
}

/** Blobs the facts of a record name, by SHA-256, each with the places of the facts that name it, from 1. */
export function blobsNamed(record: JobRecord): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>()
  const look = (value: unknown, place: number): void => {
    if (typeof value !== 'object' || value === null) return
    for (const [name, inner] of Object.entries(value)) {
      if (name !== 'blob' && name !== 'signature') look(inner, place)
      else if (typeof inner === 'string' && /^[0-9a-f]{64}$/.test(inner)) {
        const places = found.get(inner)
        if (places === undefined) found.set(inner, [place])
        else if (places.at(-1) !== place) places.push(place)
      }
    }
  }
  for (const [index, fact] of record.facts.entries()) look(fact.body, index + 1)
  return found
}
