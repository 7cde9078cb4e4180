import type { z } from 'zod'
import { callKinds } from './kinds-call.ts'
import { custodyKinds } from './kinds-custody.ts'
import { deviceKinds } from './kinds-devices.ts'
import { evidenceKinds } from './kinds-evidence.ts'
import { invoiceKinds } from './kinds-invoice.ts'
import { jobKinds } from './kinds-job.ts'
import { keyKinds } from './kinds-keys.ts'
import { teachingKinds } from './kinds-teaching.ts'

/** The body schema of every kind this version knows. Kinds it does not know are kept and shown, never dropped. */
export const bodySchemas = {
  ...jobKinds,
  ...callKinds,
  ...invoiceKinds,
  ...evidenceKinds,
  ...keyKinds,
  ...teachingKinds,
  ...custodyKinds,
  ...deviceKinds,
} as const

export type Kind = keyof typeof bodySchemas
export type Body<K extends Kind> = z.infer<(typeof bodySchemas)[K]>
/** A body as a caller may write it: fields with a default may be left out. */
export type BodyInput<K extends Kind> = z.input<(typeof bodySchemas)[K]>

/** True when this version knows the kind. */
export function isKnownKind(kind: string): kind is Kind {
  return Object.hasOwn(bodySchemas, kind)
}

/** Every kind this version knows. */
export const kinds = Object.keys(bodySchemas) as readonly Kind[]

/**
 * Kinds whose facts stand for ever as written: what proves other facts, and what another act ends
 * (a hold is lifted, a device revoked), cannot be corrected away.
 */
const lasting: ReadonlySet<string> = new Set<Kind>([
  'corrected',
  'document-sealed',
  'deletion-proven',
  'hold-placed',
  'hold-lifted',
  'secret-sealed',
  'secret-opened',
  'device-enrolled',
  'device-key-rotated',
  'device-revoked',
])

/** True when a correction of a fact of this kind counts. Unknown kinds are not folded, so nothing corrects them. */
export function canBeCorrected(kind: string): kind is Kind {
  return isKnownKind(kind) && !lasting.has(kind)
}
