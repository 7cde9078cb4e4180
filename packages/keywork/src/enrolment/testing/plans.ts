/** Plans for tests: the one of the design text, small edits of it, and random ones. */

import fc from 'fast-check'
import { type ParsedPlan, parsePlan } from '../parse-plan.ts'
import type { TeachingPlan } from '../types.ts'

type Json = Readonly<Record<string, unknown>>

/** The plan printed in the model's own text. */
export const EXAMPLE = {
  rule: {
    kind: 'replace-all',
    capacity: 8,
    leastKeys: 1,
    mostKeys: 8,
    opensWith: 'equipment',
    erases: 'at-close',
    commits: 'at-close',
    sameKeyTwice: 'refused',
    onBreak: 'revert',
    accepts: ['known', 'blank', 'prepared'],
  },
  stored: ['A', 'B', 'X'],
  keys: [
    { id: 'A', state: 'known', onBench: true },
    { id: 'N', state: 'prepared', onBench: true },
    { id: 'C', identity: 'A', state: 'known', onBench: true },
  ],
  means: { equipment: true, backup: true },
  teach: ['A', 'N'],
} as const

/** A key on the bench in a state, as JSON. */
export function key(id: string, state: string, more: object = {}): object {
  return { id, state, onBench: true, ...more }
}

/** The example with parts of its rule, and of the whole, replaced. */
export function planWith(rule: Json, whole: Json = {}): TeachingPlan {
  return readPlan({ ...EXAMPLE, ...whole, rule: { ...EXAMPLE.rule, ...rule } })
}

/** Reads a plan that must be readable. */
export function readPlan(json: unknown): TeachingPlan {
  const parsed = parsePlan(json)
  if (!isParsed(parsed)) throw new Error(`${parsed.path}: ${parsed.what}`)
  return parsed.plan
}

function isParsed(parsed: ReturnType<typeof parsePlan>): parsed is ParsedPlan {
  return 'plan' in parsed
}

const anyRule = fc.record({
  kind: fc.constantFrom('replace-all', 'append', 'append-drop-oldest'),
  capacity: fc.integer({ min: 1, max: 5 }),
  leastKeys: fc.integer({ min: 0, max: 3 }),
  mostKeys: fc.integer({ min: 1, max: 4 }),
  opensWith: fc.constantFrom('equipment', 'equipment', 'accepted-key', 'two-accepted-keys'),
  erases: fc.constantFrom('at-open', 'at-close', 'never'),
  commits: fc.constantFrom('each-key', 'at-close'),
  sameKeyTwice: fc.constantFrom('refused', 'ignored', 'counts'),
  onBreak: fc.constantFrom('revert', 'keep-so-far'),
  accepts: fc.constantFrom(
    ['known', 'blank', 'prepared'],
    ['known', 'prepared'],
    ['blank', 'prepared'],
    ['known'],
    ['known', 'locked-elsewhere'],
  ),
})

const LABELS = ['A', 'B', 'N', 'M', 'C'] as const

/** Small settled plans: clones, keys at home, entries held twice, keys shown twice. */
export const anyPlan: fc.Arbitrary<TeachingPlan> = fc
  .record({
    rule: anyRule,
    stored: fc.array(fc.constantFrom('A', 'B', 'X'), { maxLength: 4 }),
    keys: fc.array(
      fc.record({
        identity: fc.constantFrom(null, null, null, 'A', 'X'),
        state: fc.constantFrom('known', 'known', 'blank', 'prepared', 'locked-elsewhere'),
        onBench: fc.constantFrom(true, true, true, false),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    means: fc.record({ equipment: fc.constantFrom(true, true, true, false), backup: fc.boolean() }),
    shown: fc.option(fc.array(fc.nat({ max: 60 }), { maxLength: 5 })),
  })
  .map(({ shown, keys, ...plan }) => {
    const labelled = keys.map(({ identity, ...key }, index) => {
      const id = LABELS[index] ?? ''
      return { ...key, id, identity: identity ?? id }
    })
    const teach = shown?.map((at) => labelled[at % labelled.length]?.id ?? '')
    return readPlan({ ...plan, keys: labelled, ...(teach === undefined ? {} : { teach }) })
  })

/** Parameters of a rule by name. */
export const PARAMETERS = [
  'kind',
  'capacity',
  'leastKeys',
  'mostKeys',
  'opensWith',
  'erases',
  'commits',
  'sameKeyTwice',
  'onBreak',
  'accepts',
] as const

/** Small plans in which up to two parameters of the rule, a key and the means may be unknown. */
export const anyUnsettledPlan: fc.Arbitrary<TeachingPlan> = fc
  .record({
    plan: anyPlan,
    open: fc.uniqueArray(fc.constantFrom(...PARAMETERS), { maxLength: 2 }),
    state: fc.boolean(),
    place: fc.boolean(),
    means: fc.boolean(),
  })
  .map(({ plan, open, state, place, means }) => ({
    ...plan,
    teach: plan.teach?.slice(0, 4) ?? null,
    rule: { ...plan.rule, ...Object.fromEntries(open.map((name) => [name, 'unknown'])) },
    keys: plan.keys.map((key, index) => ({
      ...key,
      ...(state && index === 0 ? { state: 'unknown' as const } : {}),
      ...(place && index === 1 ? { onBench: 'unknown' as const } : {}),
    })),
    means: means ? { equipment: 'unknown', backup: 'unknown' } : plan.means,
  }))
