/** @module The seal of a document: what its parts are, which record it holds, who sealed it. */
import { z } from 'zod'
import { canonicalJson, type Sign, toBase64Url } from '../../chain/index.ts'
import { deviceId, instant, sha256Hex, signature } from '../../facts/index.ts'
import type { Part } from './parts.ts'

/** Which version made a document: the same version must derive the same text from the same record. */
export const maker = 'shearline 0.1.0'

const manifestForm = z.strictObject({
  format: z.literal('shearline-seal'),
  version: z.literal(1),
  job: z.string(),
  language: z.string(),
  madeAt: instant,
  maker: z.string(),
  device: deviceId,
  publicKey: z.string(),
  /** The PDF object that holds the seal. */
  object: z.number().int().min(1),
  /** Every byte of the file before the seal's own update: name, length, SHA-256. */
  parts: z.array(z.tuple([z.string(), z.number().int().min(0), sha256Hex])),
  /** Where the attached record's text stands in the file, and its SHA-256. */
  record: z.strictObject({
    at: z.number().int().min(0),
    bytes: z.number().int().min(0),
    sha256: sha256Hex,
  }),
  /** Hash of the record's latest `document-sealed` fact, or null when it holds none. */
  sealFact: sha256Hex.nullable(),
  /** SHA-256 of what the pages print, in reading order. */
  text: sha256Hex,
})

/** What the sealing device signs. */
export type Manifest = z.infer<typeof manifestForm>

const sealForm = z.strictObject({ manifest: manifestForm, signature })

/** A manifest and its signature. */
export type Seal = z.infer<typeof sealForm>

/** Reads a seal; null when the value is not one. */
export function readSeal(value: unknown): Seal | null {
  const read = sealForm.safeParse(value)
  return read.success ? read.data : null
}

/** The bytes a device signs: the manifest in RFC 8785 canonical JSON, as UTF-8. */
export function manifestBytes(manifest: Manifest): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(canonicalJson(manifest))
}

/** Signs a manifest. */
export async function signManifest(manifest: Manifest, sign: Sign): Promise<Seal> {
  return { manifest, signature: toBase64Url(await sign(manifestBytes(manifest))) }
}

/** Parts as a manifest lists them. */
export function listParts(parts: readonly Part[]): Manifest['parts'] {
  return parts.map(({ name, length, sha256 }) => [name, length, sha256])
}

/** Parts from a manifest's list. */
export function partsListed(manifest: Manifest): readonly Part[] {
  return manifest.parts.map(([name, length, sha256]) => ({ name, length, sha256 }))
}
