import { RULE_ARCHETYPES, type TeachingRule } from '@shearline/keywork'
import type { KeptRule } from './kept-rules.ts'
import { type RuleBody, ruleOf } from './rule-of.ts'

/** A rule to start the form from: a behaviour, a rule the firm keeps, or the one on record. */
export interface Start {
  readonly id: string
  readonly rule: TeachingRule
  readonly source: string
  readonly archetype: string
  /** The firm's own name for it; empty where it has none. */
  readonly name: string
}

/** The code of a behaviour in the catalogue, which has words for each. */
type Archetype =
  | 'replace-all-at-close'
  | 'replace-all-each-key'
  | 'replace-all-erased-at-open'
  | 'replace-all-list-lost'
  | 'append'
  | 'append-drop-oldest'
  | 'append-same-key-twice'
  | 'self-add-two-keys'
  | 'code-gated-hour'
  | 'code-gated-ignition-on'
  | 'timed-wait'
  | 'all-keys-lost'
  | 'numbered-slots'
  | 'declared-count'
  | 'pre-coded-key'
  | 'nothing-known'

/** True for a behaviour this version has; a record may name one of a later version. */
export function isArchetype(code: string): code is Archetype {
  return RULE_ARCHETYPES.some((each) => each.code === code)
}

export const behaviours: readonly Start[] = RULE_ARCHETYPES.map(({ code, rule }) => ({
  id: `behaviour ${code}`,
  rule,
  source: '',
  archetype: code,
  name: '',
}))

export function startOfKept({ name, rule, source, archetype }: KeptRule): Start {
  return { id: `kept ${name}`, rule, source, archetype, name }
}

export function startOfRecord(body: RuleBody): Start {
  return {
    id: 'on record',
    rule: ruleOf(body),
    source: body.source,
    archetype: body.archetype ?? '',
    name: body.name ?? '',
  }
}
