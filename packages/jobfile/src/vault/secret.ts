/**
 * @module What stands inside a sealed file: one line that says what it is and holds the digest's key, then the bytes.
 * See docs/decisions/0011.
 */
import { bytesToHex } from '@noble/hashes/utils.js'
import { z } from 'zod'
import { canonicalJson } from '../chain/index.ts'
import { sha256Hex } from '../facts/index.ts'

/** What a secret is; its time of deletion depends on it. */
export const secretClasses = ['immobiliser-data', 'recording', 'other'] as const
export type SecretClass = (typeof secretClasses)[number]

const headForm = z.strictObject({
  format: z.literal('shearline-secret'),
  version: z.literal(1),
  class: z.enum(secretClasses),
  what: z.string(),
  /** Length of the secret in bytes, without this line. */
  bytes: z.number().int().min(0),
  /** Key of the HMAC-SHA-256 that stands for the secret in facts, 32 bytes in hex. */
  key: sha256Hex,
})

/** The first line of a secret. */
export type SecretHead = z.infer<typeof headForm>

/** Longest first line that is looked for. */
export const headMost = 16_384

/** How every first line begins: RFC 8785 sorts the names. */
export const headStart = '{"bytes":'

/** Describes a secret of so many bytes; `key` is 32 random bytes made for this secret alone. */
export function secretHead(
  about: { readonly class: SecretClass; readonly what: string; readonly bytes: number },
  key: Uint8Array,
): SecretHead {
  if (key.length !== 32) throw new RangeError('the key of the digest is 32 random bytes')
  return { format: 'shearline-secret', version: 1, ...about, key: bytesToHex(key) }
}

/** The first line's bytes. */
export function headBytes(head: SecretHead): Uint8Array {
  return new TextEncoder().encode(`${canonicalJson(head)}\n`)
}

/** Reads a first line without its line end; null when it is none of ours. */
export function readHead(line: Uint8Array): SecretHead | null {
  try {
    const read = headForm.safeParse(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(line)))
    return read.success ? read.data : null
  } catch {
    return null
  }
}
