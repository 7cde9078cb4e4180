import { z } from 'zod'
import { sha256Hex } from './envelope.ts'
import { keyLabel } from './kinds-keys.ts'

const words = z.string().trim().min(1).max(2000)
const unknown = z.enum(['unknown'])
const onBreak = z.enum(['revert', 'keep-so-far', 'list-lost', 'unknown'])
const pause = z.enum(['runs', 'pauses', 'restarts', 'unknown'])
const yesNo = z.union([z.boolean(), unknown])
const entries = z.union([z.number().int().min(0).max(99), unknown])
const seconds = z.union([z.number().min(0).max(1_000_000), unknown]).exactOptional()
const amperes = z.union([z.number().min(0).max(1000), unknown]).exactOptional()

/** What a rule may say beyond its first eight fields (enrolment rules ENR-15 and later); absent: not asked. */
const furtherRule = {
  leastKeys: entries.exactOptional(),
  mostKeys: entries.exactOptional(),
  accepts: z
    .union([z.array(z.enum(['known', 'blank', 'prepared', 'locked-elsewhere', 'pre-coded'])), unknown])
    .exactOptional(),
  slotTaken: z.enum(['overwritten', 'refused', 'unknown']).exactOptional(),
  declaredCount: yesNo.exactOptional(),
  spends: z.enum(['when-taken', 'when-stored', 'unknown']).exactOptional(),
  wrongKey: z.enum(['ignored', 'ends-session', 'unknown']).exactOptional(),
  onBreakBy: z
    .object({
      'supply-lost': onBreak.exactOptional(),
      'link-lost': onBreak.exactOptional(),
      'time-out': onBreak.exactOptional(),
    })
    .exactOptional(),
  gate: z
    .object({
      triesBeforeWait: z.union([z.number().int().min(1).max(99), unknown]),
      waitSeconds: z.union([z.number().min(0).max(1_000_000), unknown]),
      ignitionOff: pause,
      supplyLost: pause,
    })
    .exactOptional(),
  idleSeconds: seconds,
  seconds: z
    .object({
      open: seconds,
      show: seconds,
      close: seconds,
      restore: seconds,
      wait: seconds,
      afterBreak: seconds,
    })
    .exactOptional(),
  amperes: z.object({ open: amperes, show: amperes, close: amperes, wait: amperes }).exactOptional(),
  /** The behaviour it was made from, by its code in the catalogue of rules. */
  archetype: z
    .string()
    .regex(/^[a-z][a-z-]{0,63}$/, 'the code of a behaviour')
    .exactOptional(),
  /** The firm's own name for it. */
  name: words.exactOptional(),
  /** Whether the code that opens a gated session is at hand. The code itself never stands in a record. */
  codeAtHand: yesNo.exactOptional(),
  /** What the new keys of this job are before they are taught; absent: blanks. */
  newKeys: z.enum(['blank', 'prepared', 'pre-coded', 'unknown']).exactOptional(),
}

/** Facts about the teaching session: rule, rehearsal, backup, steps, break-offs. */
export const teachingKinds = {
  'rule-chosen': z.object({
    kind: z.enum(['replace-all', 'append', 'append-drop-oldest', 'numbered-slots', 'unknown']),
    commits: z.enum(['at-close', 'each-key', 'unknown']),
    erases: z.enum(['at-open', 'at-close', 'never', 'unknown']),
    onBreak,
    opensWith: z.enum(['equipment', 'accepted-key', 'two-accepted-keys', 'timed-wait', 'unknown']),
    sameKeyTwice: z.enum(['refused', 'ignored', 'counts', 'unknown']),
    capacity: z.union([z.number().int().min(1).max(99), unknown]),
    source: words,
    ...furtherRule,
  }),
  'rehearsal-read': z.object({
    order: z.array(keyLabel).min(1),
    /** Break points at which no key on the bench starts the car. */
    strandedAt: z.array(z.string()).default([]),
    wayBack: z.enum(['not-needed', 'reopen', 'restore', 'none']),
  }),
  'backup-proven': z.object({
    /** Digests of the two reads, made the same way. */
    firstRead: sha256Hex,
    secondRead: sha256Hex,
    what: words,
    /** How the digests were made; absent: SHA-256. With a key, the key lies inside the sealed file (decision 0011). */
    digest: z.enum(['sha256', 'hmac-sha256']).exactOptional(),
    /** Length of each read. */
    bytes: z.number().int().min(0).exactOptional(),
    /** SHA-256 of the sealed file that holds it. */
    blob: sha256Hex.exactOptional(),
  }),
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
    /** The key shown last, by its label; `open`: none yet. Absent in records that only say `after`. */
    step: z.union([keyLabel, z.enum(['open'])]).exactOptional(),
    /** What happened, in the words of the rehearsal; absent where only `why` was asked. */
    cause: z.enum(['supply-lost', 'link-lost', 'time-out', 'closed-early', 'wrong-key']).exactOptional(),
    volts: z.number().min(0).max(60).exactOptional(),
  }),
  'break-off-mended': z.object({ how: words }),
} as const
