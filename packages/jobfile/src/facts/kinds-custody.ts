import { z } from 'zod'
import { sha256Hex } from './envelope.ts'

const words = z.string().trim().min(1).max(2000)

/** What is kept, by how long it may be kept; `job-rest` is everything that has no clock of its own. */
export const retentionClass = z.enum([
  'invoice',
  'authority-record',
  'identity-image',
  'photo',
  'recording',
  'vehicle-secret',
  'job-rest',
])

/** What starts a deletion clock. */
export const retentionTrigger = z.enum([
  'sealed',
  'handed-over',
  'warranty-ended',
  'purpose-ended',
  'recorded',
])

/** Facts about what is kept and who saw it: periods, holds, deletions, sealed secrets. */
export const custodyKinds = {
  /** Version 2: every class names what starts its clock. Version 1 counted all of them from the sealing. */
  'retention-set': z.object({
    pack: words,
    classes: z
      .array(
        z.object({
          class: retentionClass,
          days: z.number().int().min(0).max(36_500),
          trigger: retentionTrigger.default('sealed'),
          source: words,
        }),
      )
      .min(1),
  }),
  /** What a class was kept for is over, before or without its usual trigger. */
  'purpose-ended': z.object({ class: retentionClass, because: words }),
  /** Nothing of the job is deleted while a hold stands. */
  'hold-placed': z.object({ reason: words, classes: z.array(retentionClass).default([]) }),
  'hold-lifted': z.object({ hold: z.uuid(), reason: words }),
  /** Written after the content is gone. It names what was deleted by hash, so that the chain still proves its place. */
  'deletion-proven': z.object({
    class: retentionClass,
    items: z
      .array(
        z.object({
          /** The fact whose content, or whose blob, was deleted. */
          fact: z.uuid(),
          what: z.enum(['body', 'blob', 'document']),
          /** Hash of the deleted content: of the body's canonical JSON, or of the blob's bytes as kept. */
          sha256: sha256Hex,
          /** The blob was encrypted and its key was destroyed, so that copies of it are lost too. */
          keyDestroyed: z.boolean(),
        }),
      )
      .min(1),
    why: words,
    pack: words,
  }),
  /** A vehicle secret sealed to the firm's recipients before it touched a disk; neither it nor its hash in the clear. */
  'secret-sealed': z.object({
    what: words,
    class: z.enum(['immobiliser-data', 'recording', 'other']).default('other'),
    /** SHA-256 of the ciphertext, which is the blob. */
    blob: sha256Hex,
    bytes: z.number().int().min(1),
    /** Length of the secret itself. */
    secretBytes: z.number().int().min(0).exactOptional(),
    /** HMAC-SHA-256 of the secret under a key that lies inside the sealed file (decision 0011). */
    digest: sha256Hex.exactOptional(),
    /** Public keys (`age1...`) of those who can open it; none when it is sealed by a passphrase. */
    recipients: z.array(words).default([]),
    passphrase: z.boolean().default(false),
  }),
  'secret-opened': z.object({ blob: sha256Hex, reason: words }),
} as const
