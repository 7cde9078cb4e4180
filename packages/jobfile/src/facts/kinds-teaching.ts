import { z } from 'zod'
import { sha256Hex } from './envelope.ts'
import { keyLabel } from './kinds-keys.ts'

const words = z.string().trim().min(1).max(2000)

/** Facts about the teaching session: rule, rehearsal, backup, steps, break-offs. */
export const teachingKinds = {
  'rule-chosen': z.object({
    kind: z.enum(['replace-all', 'append', 'append-drop-oldest', 'unknown']),
    commits: z.enum(['at-close', 'each-key', 'unknown']),
    erases: z.enum(['at-open', 'at-close', 'never', 'unknown']),
    onBreak: z.enum(['revert', 'keep-so-far', 'unknown']),
    opensWith: z.enum(['equipment', 'accepted-key', 'two-accepted-keys', 'unknown']),
    sameKeyTwice: z.enum(['refused', 'ignored', 'counts', 'unknown']),
    capacity: z.number().int().min(1).max(99),
    source: words,
  }),
  'rehearsal-read': z.object({
    order: z.array(keyLabel).min(1),
    /** Break points at which no key on the bench starts the car. */
    strandedAt: z.array(z.string()).default([]),
    wayBack: z.enum(['not-needed', 'reopen', 'restore', 'none']),
  }),
  'backup-proven': z.object({ firstRead: sha256Hex, secondRead: sha256Hex, what: words }),
  'backup-waived': z.object({ because: words }),
  'session-opened': z.object({ rehearsed: z.boolean() }),
  'key-taught': z.object({
    key: keyLabel,
    /** The car's own count after this key, when it shows one. */
    carCount: z.number().int().min(0).exactOptional(),
    volts: z.number().min(0).max(60).exactOptional(),
  }),
  'session-closed': z.object({ carCount: z.number().int().min(0).exactOptional() }),
  'broke-off': z.object({
    why: z.enum(['supply', 'link', 'time-out', 'key-refused', 'ignition-off', 'operator', 'unknown']),
    after: z.string().min(1),
    volts: z.number().min(0).max(60).exactOptional(),
  }),
  'break-off-mended': z.object({ how: words }),
} as const
