/** @module Reads a plan from JSON and says where it is wrong. */

import {
  amount,
  choice,
  count,
  JsonReader,
  label,
  list,
  present,
  quoted,
  Refused,
  UNKNOWN,
  yesOrNo,
} from './json-reader.ts'
import { MOST_HELD } from './lists.ts'
import { KEY_STATES, readRule } from './parse-rule.ts'
import type { PlanGuards, PlanKey, TeachingMeans, TeachingPlan, TeachingRule } from './types.ts'
import { casesOf, MOST_CASES } from './unknowns.ts'

/** A plan that was read; `ignored` are the paths of fields this model does not know. */
export interface ParsedPlan {
  readonly plan: TeachingPlan
  readonly ignored: readonly string[]
}

/** What is wrong with a plan, and where: `rule.kind`, `keys[1].state`, `teach[0]`; an empty path is the whole. */
export interface PlanRefusal {
  readonly path: string
  readonly what: string
}

/** A rule that was read alone, as a firm keeps it. */
export interface ParsedRule {
  readonly rule: TeachingRule
  readonly ignored: readonly string[]
}

/**
 * Reads a plan as `shearline rehearse` takes it. Every field of the base model but `identity` and `teach` is
 * required; a field that is not known to the model is ignored and named in `ignored`, so that plans may carry more
 * than this model reads. Never throws.
 */
export function parsePlan(json: unknown): ParsedPlan | PlanRefusal {
  return orRefusal(() => {
    const reader = new JsonReader()
    const plan = readPlan(reader, json)
    if (casesOf(plan) === null)
      throw new Refused('rule', `too much is unknown: more than ${MOST_CASES} cases; state what is known`)
    return { plan, ignored: reader.ignored }
  })
}

/** Reads a rule alone; paths have no `rule.` before them. Never throws. */
export function parseRule(json: unknown): ParsedRule | PlanRefusal {
  return orRefusal(() => {
    const reader = new JsonReader()
    return { rule: readRule(reader, json, ''), ignored: reader.ignored }
  })
}

function orRefusal<T>(read: () => T): T | PlanRefusal {
  try {
    return read()
  } catch (refusal) {
    if (refusal instanceof Refused) return { path: refusal.path, what: refusal.message }
    throw refusal
  }
}

function readPlan(reader: JsonReader, json: unknown): TeachingPlan {
  const fields = reader.fields(json, '', [
    'rule',
    'stored',
    'keys',
    'means',
    'teach',
    'declared',
    'guards',
    'likelihood',
  ])
  const rule = readRule(reader, fields.rule, 'rule')
  const slots = rule.kind === 'numbered-slots'
  const stored = list(fields.stored, 'stored').map((each, index) =>
    slots && each === null ? '' : label(each, `stored[${index}]`),
  )
  const keys = list(fields.keys, 'keys').map((each, index) => readKey(reader, each, `keys[${index}]`))
  for (const [index, key] of keys.entries()) {
    const first = keys.findIndex((other) => other.id === key.id)
    if (first < index)
      throw new Refused(`keys[${index}].id`, `${quoted(key.id)} is already the label of keys[${first}]`)
  }
  if (keys.length > MOST_HELD)
    throw new Refused('keys', `must be ${MOST_HELD} keys or fewer; found ${keys.length}`)
  const plan: TeachingPlan = {
    rule,
    stored,
    keys,
    means: readMeans(reader, fields.means),
    teach: readTeach(fields.teach, keys),
    ...present<Pick<TeachingPlan, 'guards' | 'likelihood'>>(fields, {
      guards: (each) => readGuards(reader, each),
      likelihood: (each) => readLikelihood(each, keys),
    }),
  }
  if (fields.declared === undefined) return plan
  const declared = count(fields.declared, 1, 'declared')
  if (declared === UNKNOWN)
    throw new Refused('declared', 'must be a whole number of 1 or more; leave it out when it is not known')
  return { ...plan, declared }
}

function readKey(reader: JsonReader, json: unknown, path: string): PlanKey {
  const fields = reader.fields(json, path, ['id', 'identity', 'state', 'onBench', 'slot', 'awaySeconds'])
  const id = label(fields.id, `${path}.id`)
  const key: PlanKey = {
    id,
    identity: fields.identity === undefined ? id : label(fields.identity, `${path}.identity`),
    state: choice(fields.state, KEY_STATES, `${path}.state`),
    onBench: yesOrNo(fields.onBench, `${path}.onBench`),
  }
  return {
    ...key,
    ...(fields.slot === undefined ? {} : { slot: slotNumber(fields.slot, `${path}.slot`) }),
    ...(fields.awaySeconds === undefined
      ? {}
      : { awaySeconds: amount(fields.awaySeconds, `${path}.awaySeconds`) }),
  }
}

function slotNumber(json: unknown, path: string): number {
  const slot = count(json, 1, path)
  if (slot === UNKNOWN)
    throw new Refused(path, 'must be a whole number of 1 or more; leave it out when it is not known')
  return slot
}

function readMeans(reader: JsonReader, json: unknown): TeachingMeans {
  const fields = reader.fields(json, 'means', ['equipment', 'backup', 'code', 'wrongTries'])
  const more = present<Pick<TeachingMeans, 'code' | 'wrongTries'>>(fields, {
    code: (each) => yesOrNo(each, 'means.code'),
    wrongTries: (each) => amount(each, 'means.wrongTries'),
  })
  return {
    equipment: yesOrNo(fields.equipment, 'means.equipment'),
    backup: yesOrNo(fields.backup, 'means.backup'),
    ...more,
  }
}

function readTeach(json: unknown, keys: readonly PlanKey[]): readonly string[] | null {
  if (json === undefined) return null
  return list(json, 'teach').map((each, index) => {
    const id = label(each, `teach[${index}]`)
    if (keys.some((key) => key.id === id)) return id
    throw new Refused(`teach[${index}]`, `${quoted(id)} is the label of no key in keys`)
  })
}

function readGuards(reader: JsonReader, json: unknown): PlanGuards {
  const fields = reader.fields(json, 'guards', ['backupProven', 'consent', 'supply', 'allKeysHere'])
  return present<PlanGuards>(fields, {
    backupProven: (each) => yesOrNo(each, 'guards.backupProven'),
    consent: (each) => yesOrNo(each, 'guards.consent'),
    supply: (each) => yesOrNo(each, 'guards.supply'),
    allKeysHere: (each) => yesOrNo(each, 'guards.allKeysHere'),
  })
}

function readLikelihood(json: unknown, keys: readonly PlanKey[]): Readonly<Record<string, number>> {
  const steps = ['open', ...keys.map((key) => key.id)]
  const fields = new JsonReader().fields(json, 'likelihood', steps)
  for (const name of Object.keys(json as object))
    if (!steps.includes(name))
      throw new Refused(`likelihood.${name}`, 'is neither open nor the label of a key in keys')
  return Object.fromEntries(
    steps.flatMap((step) =>
      fields[step] === undefined ? [] : [[step, amount(fields[step], `likelihood.${step}`, 1)]],
    ),
  )
}
