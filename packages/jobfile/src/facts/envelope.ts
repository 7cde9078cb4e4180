import { z } from 'zod'

/** UTC instant with milliseconds, `2026-11-25T09:12:00.000Z`: readable in court and sorted as text. */
export const instant = z
  .string()
  .regex(
    /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d:[0-5]\d\.\d{3}Z$/,
    'a UTC instant like 2026-11-25T09:12:00.000Z',
  )

/** SHA-256 in lower-case hex. */
export const sha256Hex = z.string().regex(/^[0-9a-f]{64}$/, '64 lower-case hex digits')

/** Device identifier: `dev-` and the first 16 hex digits of the SHA-256 of its public key. */
export const deviceId = z.string().regex(/^dev-[0-9a-f]{16}$/, 'dev- and 16 hex digits')

/** Ed25519 signature, 64 bytes in base64url without padding. */
export const signature = z.string().regex(/^[A-Za-z0-9_-]{86}$/, '86 base64url characters')

/**
 * The envelope every fact has, whatever its kind (architecture.md, Facts).
 * `v` is the version of the kind's body, `prev` the hash of the device's previous fact or null for its first.
 */
export const envelope = z.strictObject({
  v: z.number().int().min(1),
  id: z.uuid(),
  job: z.string().regex(/^[a-z0-9][a-z0-9-]{2,63}$/, '3 to 64 lower-case letters, digits and hyphens'),
  device: deviceId,
  seq: z.number().int().min(1),
  at: instant,
  by: z.string().min(1).max(120),
  kind: z.string().regex(/^[a-z][a-z0-9-]{1,63}$/, '2 to 64 lower-case letters, digits and hyphens'),
  body: z.record(z.string(), z.unknown()),
  prev: sha256Hex.nullable(),
  sig: signature,
})

/** A fact as kept and sent: the envelope is checked, the body is whatever its kind and version say. */
export type Fact = z.infer<typeof envelope>

/** A fact before it has its place in a chain and its signature. */
export type FactDraft = Pick<Fact, 'id' | 'job' | 'at' | 'by' | 'kind' | 'body'> & { readonly v?: number }

/** Orders facts of a job: by instant, then device, then sequence, so that every device folds alike. */
export function compareFacts(a: Fact, b: Fact): number {
  if (a.at !== b.at) return a.at < b.at ? -1 : 1
  if (a.device !== b.device) return a.device < b.device ? -1 : 1
  return a.seq - b.seq
}
