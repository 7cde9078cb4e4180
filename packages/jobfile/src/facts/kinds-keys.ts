import { z } from 'zod'

const words = z.string().trim().min(1).max(2000)

/** Label of a key on the bench: one or two capital letters or digits, so that it fits a tag. */
export const keyLabel = z.string().regex(/^[A-Z][A-Z0-9]?$/, 'one or two capital letters or digits')

const keyFunction = z.enum([
  'start',
  'emergency-start',
  'passive-start',
  'passive-entry',
  'lock',
  'unlock',
  'boot',
  'panic',
  'blade-door',
  'blade-ignition',
  'blade-boot',
])

/** What was measured of one remote's radio: physical values only. null: not measured, or not defined for its keying. */
const measuredRadio = z.object({
  modulation: z.enum(['OOK', '2-FSK', 'unsure']),
  carrierHertz: z.number().min(0).nullable(),
  deviationHertz: z.number().min(0).nullable(),
  symbolsPerSecond: z.number().min(0).nullable(),
  snrDecibels: z.number().nullable(),
  /** The key it belongs to, when that was said. */
  key: keyLabel.exactOptional(),
})

/** Facts about keys and blanks. */
export const keyKinds = {
  'keys-said': z.object({
    count: z.number().int().min(0).max(99),
    /** Keys that are not here, by the customer's own names. */
    absent: z.array(words).default([]),
  }),
  'key-labelled': z.object({
    key: keyLabel,
    origin: z.enum(['existing', 'new']),
    form: z.enum(['blade', 'transponder', 'remote-head', 'flip', 'proximity', 'card']),
    make: z.enum(['genuine', 'aftermarket', 'renewed', 'unknown']).default('unknown'),
    colour: z.enum(['brass', 'slate', 'moss', 'rust', 'sky', 'plum', 'sand', 'ink']),
    onBench: z.boolean(),
    cloneOf: keyLabel.nullable().default(null),
    lacks: z.array(keyFunction).default([]),
    note: words.exactOptional(),
    /** How the car itself shows this key, where it does: `key 3`. Keys shown alike are one key to the car. */
    shownAs: z.string().trim().min(1).max(60).exactOptional(),
    /** Its coin cells as measured: volts over all of them, at rest and while it transmits. */
    cell: z
      .object({
        cells: z.number().int().min(1).max(4),
        restVolts: z.number().min(0).max(20).exactOptional(),
        loadedVolts: z.number().min(0).max(20).exactOptional(),
        replaced: z.boolean().exactOptional(),
      })
      .exactOptional(),
  }),
  'key-count-read': z.object({
    when: z.enum(['before', 'after']),
    /** Entries the car accepts; null when it does not show them, then `because` says so. */
    count: z.number().int().min(0).max(99).nullable(),
    source: z.enum(['car', 'equipment', 'recording']),
    because: words.exactOptional(),
  }),
  'function-tested': z.object({
    key: keyLabel,
    function: keyFunction,
    phase: z.enum(['before', 'after']),
    outcome: z.enum(['works', 'fails', 'not-applicable', 'not-tested']),
    because: words.exactOptional(),
    customerPresent: z.boolean().exactOptional(),
  }),
  'difference-explained': z.object({ code: z.string().min(1), reason: words }),
  'blank-chosen': z.object({
    item: words,
    carrierMegahertz: z.number().positive().exactOptional(),
    transponder: words.exactOptional(),
    profile: words.exactOptional(),
    /** True when compared with the car and its present key; null when not compared. */
    fits: z.boolean().nullable(),
  }),
  /** Two remotes compared by their radio. The recordings themselves are not kept. */
  'remote-compared': z.object({
    verdict: z.enum(['same', 'different', 'unsure']),
    /** Why, by the engine's code; `side` names the recording a reason is about. */
    reasons: z.array(
      z.object({
        code: words,
        points: z.enum(['same', 'different', 'unsure']),
        side: z.enum(['both', 'original', 'new']),
      }),
    ),
    original: measuredRadio,
    fresh: measuredRadio,
  }),
  'blank-used': z.object({
    item: words,
    key: keyLabel.exactOptional(),
    outcome: z.enum(['used', 'spoiled', 'returned']),
  }),
} as const
