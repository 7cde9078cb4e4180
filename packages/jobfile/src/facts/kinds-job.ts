import { z } from 'zod'
import { sha256Hex } from './envelope.ts'

const words = z.string().trim().min(1).max(2000)

/** Facts about the job as a whole: opening, authority, consent, cautions, money, corrections, sealing. */
export const jobKinds = {
  'job-opened': z.object({
    title: words,
    place: words,
    /** IANA time zone in which the job's instants are shown. */
    zone: z.string().min(1),
    work: z.enum(['add-a-key', 'all-keys-lost', 'replace-keys']),
    customer: z.enum(['private', 'trade', 'fleet']),
    vehicle: words,
    /** Language of the customer's document (BCP 47). */
    language: z.string().min(2).default('en'),
    /** Invented data, shown as such everywhere. */
    demo: z.boolean().default(false),
  }),
  'authority-seen': z.object({
    role: z.enum(['identity', 'entitlement']),
    document: words,
    issuer: words,
    /** Last characters only: never the whole number. */
    lastCharacters: z.string().min(1).max(6),
    original: z.boolean(),
    matched: z.boolean(),
    checkedBy: words,
    salt: z.string().optional(),
  }),
  'authority-decided': z.object({ decision: z.enum(['refused', 'held', 'released']), reason: words }),
  'consent-given': z.object({
    about: z.enum(['absent-keys-stop', 'no-check-before', 'clear-faults']),
    /** The absent keys by the customer's own names. */
    absentKeys: z.array(words).default([]),
    signer: words,
    signature: sha256Hex.optional(),
    salt: z.string().optional(),
  }),
  'caution-read': z.object({
    caution: z.enum([
      'airbag',
      'keyless-can-move',
      'high-voltage',
      'carbon-monoxide',
      'roadside',
      'lone-work',
      'button-cells',
      'locked-in',
      'steering-lock',
    ]),
  }),
  'price-agreed': z.object({
    currency: z.string().regex(/^[A-Z]{3}$/),
    lines: z.array(z.object({ text: words, amountMinor: z.number().int() })).min(1),
  }),
  'warranty-given': z.object({ months: z.number().int().min(0), excludes: z.array(words).default([]) }),
  'note-written': z.object({ text: words }),
  corrected: z.object({
    fact: z.uuid(),
    action: z.enum(['withdrawn', 'replaced']),
    /** The new body when replaced; checked against the schema of the corrected fact's kind. */
    body: z.record(z.string(), z.unknown()).optional(),
    /** Body version of the new body; that of the corrected fact when left out. */
    v: z.number().int().min(1).exactOptional(),
    reason: words,
  }),
  'document-sealed': z.object({
    /** Facts of this job before the seal, in fold order. */
    count: z.number().int().min(1),
    /** RFC 6962 Merkle tree head over their hashes. */
    root: sha256Hex,
    language: z.string().min(2),
    ready: z.boolean(),
    /** What was not in line when sealed, by need code; empty when ready. */
    open: z.array(z.string()).default([]),
  }),
} as const
