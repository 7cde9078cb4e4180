/** @module Every settled case that a plan with unknown parameters can turn out to be (ENR-12). */

import { isExtended } from './extended.ts'
import type {
  BreakCause,
  Commits,
  Erases,
  OnBreak,
  OpensWith,
  PlanKey,
  SameKeyTwice,
  SlotTaken,
  Spends,
  TeachingKeyState,
  TeachingKind,
  TeachingPlan,
  Unknown,
} from './types.ts'

/**
 * A rule in which all that steers a session is settled. What opens it and how few keys close it only bear on its two
 * ends, so they stay sets: a case stands for every value in them.
 */
export interface SettledRule {
  readonly kind: TeachingKind
  readonly capacity: number
  readonly mostKeys: number
  readonly erases: Erases
  readonly commits: Commits
  readonly sameKeyTwice: SameKeyTwice
  readonly onBreak: OnBreak
  readonly accepts: readonly TeachingKeyState[]
  readonly opensWith: readonly OpensWith[]
  /** Ascending, never empty. */
  readonly leastKeys: readonly number[]
  readonly slotTaken: SlotTaken
  /** Entries at which the session closes itself; null: it is not told a number. */
  readonly declared: number | null
  readonly spends: Spends
  /** What each cause of a break can do: more than one where that is not known. */
  readonly onBreakBy: Readonly<Partial<Record<BreakCause, readonly OnBreak[]>>>
  /** A code must be at hand before the session opens. */
  readonly gated: boolean
}

export interface SettledKey extends PlanKey {
  readonly state: TeachingKeyState
  readonly onBench: boolean
}

/** One settled case of a plan. */
export interface Case {
  readonly rule: SettledRule
  readonly keys: readonly SettledKey[]
  readonly stored: readonly string[]
  readonly means: { readonly equipment: boolean; readonly backup: boolean; readonly code: boolean }
}

const SLOT_TAKEN: readonly SlotTaken[] = ['overwritten', 'refused']
const SPENDS: readonly Spends[] = ['when-taken', 'when-stored']

/** More cases than this are not computed: a rehearsal would take minutes and say nothing. */
export const MOST_CASES = 40_000 as number

/**
 * All cases that fit what is known, each different in what the car does; one case for a plan without unknowns.
 * Null when there would be more than `MOST_CASES`.
 *
 * Values that fit: a list holds at least what it stores now; a session's least is not above its most, nor in a
 * replace-all above the capacity; a key whose identity is stored is `known`. Means that are not known are absent.
 * In an extended plan (ENR-15 and later) more values fit: numbered slots where a key names one, and a lost list.
 */
export function casesOf(plan: TeachingPlan): readonly Case[] | null {
  const keys = keyCases(plan)
  if (keys === null) return null
  const rules = ruleCases(plan)
  if (keys.length * rules.length > MOST_CASES) return null
  const { equipment, backup, code } = plan.means
  const means = { equipment: equipment === true, backup: backup === true, code: code === true }
  return rules.flatMap((rule) => keys.map((each) => ({ rule, keys: each, means, stored: plan.stored })))
}

function ruleCases(plan: TeachingPlan): readonly SettledRule[] {
  const { rule } = plan
  const shown = plan.teach?.length ?? plan.keys.length
  const entries = Math.max(shown, plan.keys.length)
  const leastCapacity = Math.max(1, plan.stored.length)
  const opensWith = either<OpensWith>(rule.opensWith, ['equipment', 'accepted-key', 'two-accepted-keys'])
  // From the upper ends of these ranges on, a larger number changes nothing.
  const leastKeys = either(rule.leastKeys, range(1, entries + 1))
  const extended = isExtended(plan)
  const kinds: readonly TeachingKind[] = plan.keys.some((key) => key.slot !== undefined)
    ? ['replace-all', 'append', 'append-drop-oldest', 'numbered-slots']
    : ['replace-all', 'append', 'append-drop-oldest']
  const breaks: readonly OnBreak[] = extended
    ? ['revert', 'keep-so-far', 'list-lost']
    : ['revert', 'keep-so-far']
  const onBreakBy = Object.fromEntries(
    Object.entries(rule.onBreakBy ?? {}).map(([cause, value]) => [cause, either<OnBreak>(value, breaks)]),
  )
  const gated = rule.gate !== undefined
  const all: SettledRule[] = []
  // `never` does as `at-close`, and `ignored` as `refused`.
  for (const kind of either(rule.kind, kinds))
    for (const capacity of either(rule.capacity, range(leastCapacity, leastCapacity + shown)))
      for (const mostKeys of either(rule.mostKeys, range(1, entries + 1)))
        for (const erases of either<Erases>(rule.erases, ['at-close', 'at-open']))
          for (const commits of either<Commits>(rule.commits, ['at-close', 'each-key']))
            for (const sameKeyTwice of either<SameKeyTwice>(rule.sameKeyTwice, ['refused', 'counts']))
              for (const onBreak of either(rule.onBreak, breaks))
                for (const accepts of either(rule.accepts, subsets(statesThatOccur(plan))))
                  for (const slotTaken of either<SlotTaken>(rule.slotTaken ?? 'overwritten', SLOT_TAKEN))
                    for (const counted of either(rule.declaredCount ?? false, [false, true]))
                      for (const spends of either<Spends>(rule.spends ?? 'when-taken', SPENDS))
                        all.push({
                          ...{ kind, capacity, mostKeys, erases, commits, sameKeyTwice, onBreak, accepts },
                          ...{ opensWith, leastKeys, slotTaken, spends, onBreakBy, gated },
                          declared: counted ? (plan.declared ?? identitiesMeant(plan)) : null,
                        })
  const numbersOpen = [rule.kind, rule.capacity, rule.leastKeys, rule.mostKeys].includes('unknown')
  const fitting = numbersOpen ? all.flatMap(withFittingLeast) : all
  return differentOnes(fitting.length > 0 ? fitting : all)
}

/** ENR-19: what a session is told when the plan does not say: the different identities that are meant and here. */
function identitiesMeant(plan: TeachingPlan): number {
  const meant = plan.keys.filter(
    (key) => key.onBench === true && (plan.teach === null || plan.teach.includes(key.id)),
  )
  return Math.max(1, new Set(meant.map((key) => key.identity)).size)
}

function withFittingLeast(rule: SettledRule): readonly SettledRule[] {
  const most = rule.kind === 'replace-all' ? Math.min(rule.mostKeys, rule.capacity) : rule.mostKeys
  const leastKeys = rule.leastKeys.filter((least) => least <= most)
  return leastKeys.length > 0 ? [{ ...rule, leastKeys }] : []
}

/** Leaves out rules that do the same as one before. */
function differentOnes(rules: readonly SettledRule[]): readonly SettledRule[] {
  const seen = new Map<string, SettledRule>()
  for (const rule of rules) {
    const replaces = rule.kind === 'replace-all'
    const does = [
      rule.kind,
      replaces ? '' : rule.capacity,
      replaces ? Math.min(rule.capacity, rule.mostKeys) : rule.mostKeys,
      rule.leastKeys.join(' '),
      rule.erases === 'at-open',
      rule.commits,
      rule.sameKeyTwice === 'counts',
      rule.commits === 'each-key' && rule.onBreak !== 'list-lost' ? '' : rule.onBreak,
      rule.kind === 'numbered-slots' ? rule.slotTaken : '',
      rule.declared,
      rule.spends,
      rule.accepts.join(' '),
    ].join('|')
    if (!seen.has(does)) seen.set(does, rule)
  }
  return [...seen.values()]
}

function keyCases(plan: TeachingPlan): readonly (readonly SettledKey[])[] | null {
  const ways = plan.keys.map((key) => statesOf(plan, key).length * (key.onBench === 'unknown' ? 2 : 1))
  if (ways.reduce((product, each) => product * each, 1) > MOST_CASES) return null
  let all: readonly (readonly SettledKey[])[] = [[]]
  for (const key of plan.keys) {
    const states = statesOf(plan, key)
    const places = either(key.onBench, [true, false])
    all = all.flatMap((keys) =>
      states.flatMap((state) => places.map((onBench) => [...keys, { ...key, state, onBench }])),
    )
  }
  return all
}

function statesOf(plan: TeachingPlan, key: PlanKey): readonly TeachingKeyState[] {
  if (key.state !== 'unknown') return [key.state]
  if (plan.stored.includes(key.identity)) return ['known']
  return isExtended(plan)
    ? ['known', 'blank', 'prepared', 'locked-elsewhere', 'pre-coded']
    : ['known', 'blank', 'prepared', 'locked-elsewhere']
}

function statesThatOccur(plan: TeachingPlan): readonly TeachingKeyState[] {
  const states = plan.keys.flatMap((key) => statesOf(plan, key))
  // A taken key becomes known, so that state always matters.
  return (['known', 'blank', 'prepared', 'pre-coded'] as const).filter(
    (state) => state === 'known' || states.includes(state),
  )
}

/** Every set of states a session may take, the empty one too: it may take only states that no key here is in. */
function subsets(states: readonly TeachingKeyState[]): readonly (readonly TeachingKeyState[])[] {
  return states.reduce<readonly (readonly TeachingKeyState[])[]>(
    (all, state) => all.flatMap((set) => [[...set, state], set]),
    [[]],
  )
}

function either<T>(value: T | Unknown, values: readonly T[]): readonly T[] {
  return value === 'unknown' ? values : [value as T]
}

function range(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(1, to - from + 1) }, (_, index) => from + index)
}
