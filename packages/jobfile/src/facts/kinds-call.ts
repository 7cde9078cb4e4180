import { z } from 'zod'
import { instant, sha256Hex } from './envelope.ts'
import { keyLabel } from './kinds-keys.ts'

const words = z.string().trim().min(1).max(2000)

const policyQuestion = z.string().regex(/^[a-z0-9][a-z0-9.-]{0,63}$/, 'the code of a question')

const money = {
  currency: z.string().regex(/^[A-Z]{3}$/),
  lines: z.array(z.object({ text: words, amountMinor: z.number().int() })).min(1),
}

/** Facts about what is agreed and shown: call, appointment, quote, answers to a policy pack, plan, signatures, photos. */
export const callKinds = {
  'call-taken': z.object({
    channel: z.enum(['phone', 'message', 'visit', 'office']),
    /** Whether the car starts with any key; null when the caller does not know. */
    starts: z.boolean().nullable(),
    keyless: z.boolean().nullable(),
    /** What the customer was told to bring. */
    toBring: z.array(words).default([]),
    words: words.exactOptional(),
  }),
  'appointment-made': z.object({ from: instant, to: instant.exactOptional(), place: words }),
  'appointment-ended': z.object({
    outcome: z.enum(['kept', 'moved', 'called-off']),
    because: words.exactOptional(),
  }),
  'quote-given': z.object({ ...money, validUntil: instant.exactOptional() }),
  /** One answer to one question of a policy pack; the pack is named with its date, so the question can be found. */
  'policy-answered': z.object({
    pack: words,
    question: policyQuestion,
    answer: z.union([z.boolean(), words]),
    because: words.exactOptional(),
    /** Questions that follow from this answer, as the pack had them then; `yes` wants a yes or a no with a reason. */
    asks: z
      .array(
        z.object({
          question: policyQuestion,
          wants: z.enum(['yes', 'answer']),
          words: words.exactOptional(),
        }),
      )
      .exactOptional(),
  }),
  /** The customer accepted the plan with its break points; `plan` is the SHA-256 of the plan's canonical JSON. */
  'plan-accepted': z.object({
    plan: sha256Hex,
    order: z.array(keyLabel).min(1),
    signer: words,
    signature: sha256Hex.exactOptional(),
  }),
  /** A step of the plan that has no kind of its own. */
  'step-done': z.object({
    step: words,
    /** Which step of a rehearsal it is, whatever language `step` is written in. */
    of: z
      .object({
        code: z.string().regex(/^[a-z][a-z.-]{0,63}$/, 'the code of a step'),
        key: keyLabel.exactOptional(),
        /** Its place in its way back, from 1: a way can ask for the same thing twice. */
        place: z.number().int().min(1).exactOptional(),
      })
      .exactOptional(),
    outcome: z.enum(['done', 'left-out', 'failed']),
    because: words.exactOptional(),
  }),
  /** A drawn signature, kept as a blob. */
  'signature-drawn': z.object({
    signer: words,
    for: z.enum(['consent', 'plan', 'quote', 'handover', 'acknowledgement']),
    blob: sha256Hex,
    /** The fact that is signed for. */
    fact: z.uuid().exactOptional(),
    /** SHA-256 of the UTF-8 of the words that were shown when it was signed; the words stand in the blob. */
    shown: sha256Hex.exactOptional(),
    /** By hand, or as a name on a keyboard by somebody who cannot or does not want to draw; absent: drawn. */
    how: z.enum(['drawn', 'typed']).exactOptional(),
    salt: z.string().exactOptional(),
  }),
  'photo-attached': z.object({
    blob: sha256Hex,
    mediaType: z.string().regex(/^image\/[a-z0-9.+-]+$/, 'an image media type'),
    bytes: z.number().int().min(1),
    /** An identity document has its own, shorter, clock. */
    shows: z.enum(['key', 'vin', 'odometer', 'lamps', 'damage', 'equipment', 'identity', 'other']),
    key: keyLabel.exactOptional(),
    words: words.exactOptional(),
  }),
  /** The vehicle and its keys left the technician's hands. */
  'vehicle-handed-over': z.object({ to: words, keys: z.array(keyLabel).default([]) }),
} as const
