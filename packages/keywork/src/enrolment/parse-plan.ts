/** @module Reads a plan from JSON and says where it is wrong. */

import { MOST_HELD } from './lists.ts'
import type {
  Commits,
  Erases,
  OnBreak,
  OpensWith,
  PlanKey,
  SameKeyTwice,
  TeachingKeyState,
  TeachingKind,
  TeachingMeans,
  TeachingPlan,
  TeachingRule,
  Unknown,
} from './types.ts'
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

const KINDS: readonly TeachingKind[] = ['replace-all', 'append', 'append-drop-oldest']
const OPENS_WITH: readonly OpensWith[] = ['equipment', 'accepted-key', 'two-accepted-keys']
const ERASES: readonly Erases[] = ['at-open', 'at-close', 'never']
const COMMITS: readonly Commits[] = ['each-key', 'at-close']
const SAME_KEY_TWICE: readonly SameKeyTwice[] = ['refused', 'ignored', 'counts']
const ON_BREAK: readonly OnBreak[] = ['revert', 'keep-so-far']
const KEY_STATES: readonly TeachingKeyState[] = ['known', 'blank', 'prepared', 'locked-elsewhere']
const UNKNOWN = 'unknown' as const

/**
 * Reads a plan as `shearline rehearse` takes it. Every field but `identity` and `teach` is required; a field that is
 * not known to the model is ignored and named in `ignored`, so that plans may carry more than this model reads.
 * Never throws.
 */
export function parsePlan(json: unknown): ParsedPlan | PlanRefusal {
  const reader = new Reader()
  try {
    const plan = reader.plan(json)
    if (casesOf(plan) === null) {
      return { path: 'rule', what: `too much is unknown: more than ${MOST_CASES} cases; state what is known` }
    }
    return { plan, ignored: reader.ignored }
  } catch (refusal) {
    if (refusal instanceof Refused) return { path: refusal.path, what: refusal.message }
    throw refusal
  }
}

class Refused extends Error {
  readonly path: string
  constructor(path: string, what: string) {
    super(what)
    this.path = path
  }
}

type Fields = Readonly<Record<string, unknown>>

class Reader {
  readonly ignored: string[] = []

  plan(json: unknown): TeachingPlan {
    const fields = this.fields(json, '', ['rule', 'stored', 'keys', 'means', 'teach'])
    const rule = this.rule(fields.rule)
    const stored = this.list(fields.stored, 'stored').map((each, index) => label(each, `stored[${index}]`))
    const keys = this.list(fields.keys, 'keys').map((each, index) => this.key(each, `keys[${index}]`))
    for (const [index, key] of keys.entries()) {
      const first = keys.findIndex((other) => other.id === key.id)
      if (first < index)
        throw new Refused(`keys[${index}].id`, `${quoted(key.id)} is already the label of keys[${first}]`)
    }
    if (keys.length > MOST_HELD)
      throw new Refused('keys', `must be ${MOST_HELD} keys or fewer; found ${keys.length}`)
    return { rule, stored, keys, means: this.means(fields.means), teach: this.teach(fields.teach, keys) }
  }

  private rule(json: unknown): TeachingRule {
    const fields = this.fields(json, 'rule', [
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
    ])
    return {
      kind: choice(fields.kind, KINDS, 'rule.kind'),
      capacity: count(fields.capacity, 1, 'rule.capacity'),
      leastKeys: count(fields.leastKeys, 0, 'rule.leastKeys'),
      mostKeys: count(fields.mostKeys, 1, 'rule.mostKeys'),
      opensWith: choice(fields.opensWith, OPENS_WITH, 'rule.opensWith'),
      erases: choice(fields.erases, ERASES, 'rule.erases'),
      commits: choice(fields.commits, COMMITS, 'rule.commits'),
      sameKeyTwice: choice(fields.sameKeyTwice, SAME_KEY_TWICE, 'rule.sameKeyTwice'),
      onBreak: choice(fields.onBreak, ON_BREAK, 'rule.onBreak'),
      accepts: this.accepts(fields.accepts),
    }
  }

  private accepts(json: unknown): readonly TeachingKeyState[] | Unknown {
    if (json === UNKNOWN) return UNKNOWN
    return this.list(json, 'rule.accepts').map((each, index) => {
      const path = `rule.accepts[${index}]`
      const state = KEY_STATES.find((known) => known === each)
      if (state === undefined)
        throw new Refused(path, `must be one of ${KEY_STATES.join(', ')}; found ${quoted(each)}`)
      return state
    })
  }

  private key(json: unknown, path: string): PlanKey {
    const fields = this.fields(json, path, ['id', 'identity', 'state', 'onBench'])
    const id = label(fields.id, `${path}.id`)
    return {
      id,
      identity: fields.identity === undefined ? id : label(fields.identity, `${path}.identity`),
      state: choice(fields.state, KEY_STATES, `${path}.state`),
      onBench: yesOrNo(fields.onBench, `${path}.onBench`),
    }
  }

  private means(json: unknown): TeachingMeans {
    const fields = this.fields(json, 'means', ['equipment', 'backup'])
    return {
      equipment: yesOrNo(fields.equipment, 'means.equipment'),
      backup: yesOrNo(fields.backup, 'means.backup'),
    }
  }

  private teach(json: unknown, keys: readonly PlanKey[]): readonly string[] | null {
    if (json === undefined) return null
    return this.list(json, 'teach').map((each, index) => {
      const id = label(each, `teach[${index}]`)
      if (keys.some((key) => key.id === id)) return id
      throw new Refused(`teach[${index}]`, `${quoted(id)} is the label of no key in keys`)
    })
  }

  private fields(json: unknown, path: string, known: readonly string[]): Fields {
    if (typeof json !== 'object' || json === null || Array.isArray(json)) {
      throw new Refused(path, `must be an object; found ${quoted(json)}`)
    }
    const fields = json as Fields
    for (const name of Object.keys(fields)) {
      if (!known.includes(name)) this.ignored.push(path === '' ? name : `${path}.${name}`)
    }
    return Object.fromEntries(
      known.map((name) => [name, Object.hasOwn(fields, name) ? fields[name] : undefined]),
    )
  }

  private list(json: unknown, path: string): readonly unknown[] {
    if (!Array.isArray(json)) throw new Refused(path, `must be a list; found ${quoted(json)}`)
    return json
  }
}

function choice<T extends string>(json: unknown, values: readonly T[], path: string): T | Unknown {
  if (json === UNKNOWN) return UNKNOWN
  const value = values.find((each) => each === json)
  if (value !== undefined) return value
  throw new Refused(path, `must be one of ${values.join(', ')}, unknown; found ${quoted(json)}`)
}

function count(json: unknown, least: number, path: string): number | Unknown {
  if (json === UNKNOWN) return UNKNOWN
  if (typeof json === 'number' && Number.isSafeInteger(json) && json >= least) return json
  throw new Refused(path, `must be a whole number of ${least} or more, or unknown; found ${quoted(json)}`)
}

function yesOrNo(json: unknown, path: string): boolean | Unknown {
  if (json === UNKNOWN) return UNKNOWN
  if (typeof json === 'boolean') return json
  throw new Refused(path, `must be true, false or unknown; found ${quoted(json)}`)
}

function label(json: unknown, path: string): string {
  if (typeof json === 'string' && json !== '') return json
  throw new Refused(path, `must be a text that is not empty; found ${quoted(json)}`)
}

function quoted(json: unknown): string {
  if (json === undefined) return 'nothing'
  if (Array.isArray(json)) return 'a list'
  if (typeof json === 'object' && json !== null) return 'an object'
  const text = JSON.stringify(json) ?? String(json)
  return text.length > 60 ? `${text.slice(0, 60)}...` : text
}
