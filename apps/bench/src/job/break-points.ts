/**
 * @module What holds when a teaching session stops, from the rule's parameters: which keys on the bench start
 * the car, and the way back. Rules ENR-02, ENR-05 to ENR-07 and ENR-09 to ENR-12 of the rehearsal model.
 */
import type { Body } from '@shearline/jobfile'

type Rule = Body<'rule-chosen'>
export type WayBack = Body<'rehearsal-read'>['wayBack']

export interface Plan {
  /** null: not chosen, every parameter unknown. */
  readonly rule: Rule | null
  /** Keys on the bench that the car accepts before the session. */
  readonly known: readonly string[]
  /** Entries the car stores before, or null. */
  readonly stored: number | null
  readonly backup: boolean
}

export interface BreakPoint {
  /** Keys on the bench that start the car for certain. */
  readonly starts: readonly string[]
  /** Keys on the bench that started it before and may not now. */
  readonly dropped: readonly string[]
  readonly stranded: boolean
  readonly wayBack: WayBack
}

interface Known {
  readonly kind: Exclude<Rule['kind'], 'unknown'>
  readonly commits: Exclude<Rule['commits'], 'unknown'>
  readonly erases: Exclude<Rule['erases'], 'unknown'>
  readonly onBreak: Exclude<Rule['onBreak'], 'unknown'>
  readonly opensWith: Exclude<Rule['opensWith'], 'unknown'>
}

const dearer: readonly WayBack[] = ['not-needed', 'reopen', 'restore', 'none']

/** What holds when the session stops after `taught` keys, in order. An unknown parameter counts as its worst. */
export function breakPoint(plan: Plan, taught: readonly string[]): BreakPoint {
  const cases = everyCase(plan.rule).map((rule) => oneCase(plan, rule, taught))
  const starts = [...new Set([...plan.known, ...taught])].filter((key) =>
    cases.every((one) => one.starts.includes(key)),
  )
  const wayBack = cases.reduce<WayBack>(
    (worst, one) => (dearer.indexOf(one.wayBack) > dearer.indexOf(worst) ? one.wayBack : worst),
    'not-needed',
  )
  return {
    starts,
    dropped: plan.known.filter((key) => !starts.includes(key)),
    stranded: cases.some((one) => one.starts.length === 0),
    wayBack,
  }
}

/** The break points of a whole session: right after opening, then after each key of `order`. */
export function breakPoints(plan: Plan, order: readonly string[]): readonly BreakPoint[] {
  return [...order.keys(), order.length].map((count) => breakPoint(plan, order.slice(0, count)))
}

/** The dearest way back among break points. */
export function dearest(points: readonly BreakPoint[]): WayBack {
  return points.reduce<WayBack>(
    (worst, point) => (dearer.indexOf(point.wayBack) > dearer.indexOf(worst) ? point.wayBack : worst),
    'not-needed',
  )
}

function oneCase(
  plan: Plan,
  rule: Known,
  taught: readonly string[],
): { starts: readonly string[]; wayBack: WayBack } {
  const list = rule.erases === 'at-open' ? [] : plan.known
  const committed = rule.commits === 'each-key' || rule.onBreak === 'keep-so-far'
  const starts = taught.length === 0 || !committed ? list : commit(plan, rule, list, taught)
  return { starts, wayBack: wayBackOf(plan, rule, starts) }
}

function commit(
  plan: Plan,
  rule: Known,
  list: readonly string[],
  taught: readonly string[],
): readonly string[] {
  if (rule.kind === 'replace-all') return taught
  const both = [...new Set([...list, ...taught])]
  if (rule.kind === 'append') return both
  const fresh = taught.filter((key) => !plan.known.includes(key)).length
  const capacity = plan.rule?.capacity ?? 1
  // A full list drops its oldest entries without saying which: then no older key is certain.
  const fits = plan.stored !== null && plan.stored + fresh <= capacity
  return fits ? both : taught
}

function wayBackOf(plan: Plan, rule: Known, starts: readonly string[]): WayBack {
  const needed = { equipment: 0, 'accepted-key': 1, 'two-accepted-keys': 2 }[rule.opensWith]
  if (starts.length >= needed) return 'reopen'
  return plan.backup ? 'restore' : 'none'
}

function everyCase(rule: Rule | null): readonly Known[] {
  const of = <V extends string>(value: V | 'unknown' | undefined, all: readonly V[]): readonly V[] =>
    value === undefined || value === 'unknown' ? all : [value]
  const cases: Known[] = []
  // An unknown kind is treated as replace-all, which is its worst.
  for (const kind of of(rule?.kind, ['replace-all']))
    for (const commits of of(rule?.commits, ['at-close', 'each-key']))
      for (const erases of of(rule?.erases, ['at-open', 'at-close', 'never']))
        for (const onBreak of of(rule?.onBreak, ['revert', 'keep-so-far']))
          for (const opensWith of of(rule?.opensWith, ['equipment', 'accepted-key', 'two-accepted-keys']))
            cases.push({ kind, commits, erases, onBreak, opensWith })
  return cases
}
