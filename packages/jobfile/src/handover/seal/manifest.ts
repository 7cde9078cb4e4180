/** @module The seal of a document: what its parts are, which record it holds, who sealed it. */
import { z } from 'zod'
import { canonicalJson, type Sign, toBase64Url } from '../../chain/index.ts'
import { deviceId, instant, sha256Hex, signature } from '../../facts/index.ts'
import { latestEdition } from '../document/index.ts'
import type { Part } from './parts.ts'

/** Which version made a document, and in which edition: the same edition gives the same text for the same record. */
export const maker: string = `shearline 0.1.0, document ${latestEdition}`

/** Makers that did not name their edition yet. */
const unnamed: ReadonlyMap<string, number> = new Map([['shearline 0.1.0', 1]])

/** The edition of a document by who made it; null when this version does not know that edition. */
export function editionOf(madeBy: string): number | null {
  const named = /, document (\d{1,4})$/.exec(madeBy)
  const edition = named === null ? (unnamed.get(madeBy) ?? null) : Number(named[1])
  return edition === null || edition < 1 || edition > latestEdition ? null : edition
}

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
  /**
   * For whoever has openssl and a shell only: all bytes before the seal's update in one, and the update's lines but
   * for the seal's own and the identifiers. Stands last in the canonical form. Older documents have none.
   */
  whole: z
    .strictObject({ bytes: z.number().int().min(0), rest: sha256Hex, sha256: sha256Hex })
    .exactOptional(),
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
