/** @module What must be settled before a session is opened (ENR-25). */

import type { GuardCheck, SessionStep } from './session-types.ts'
import type { TeachingPlan, Unknown } from './types.ts'

/**
 * Checks the conditions of a plan. What the plan does not say is not met. `opens`: the session can be opened in every
 * case; `timeline`: its steps.
 */
export function guardsOf(
  plan: TeachingPlan,
  opens: boolean,
  timeline: readonly SessionStep[],
): readonly GuardCheck[] {
  const { guards = {}, means, rule, keys } = plan
  const away = keys.filter((key) => key.onBench !== true).map((key) => key.id)
  const foreign = new Set(keys.map((key) => key.identity))
  const nobodys = plan.stored.some((identity) => identity !== '' && !foreign.has(identity))
  const slow = timeline.filter((step) => step.overIdle).map((step) => step.step)
  const keysHere =
    away.length > 0 ? 'not-met' : nobodys ? said(guards.allKeysHere ?? false) : said(guards.allKeysHere)
  return [
    { guard: 'opens', state: opens ? 'met' : 'not-met', keys: [] },
    ...(rule.gate === undefined ? [] : [{ guard: 'code' as const, state: said(means.code), keys: [] }]),
    { guard: 'backup-proven', state: said(guards.backupProven ?? means.backup), keys: [] },
    { guard: 'consent', state: said(guards.consent), keys: [] },
    { guard: 'supply', state: said(guards.supply), keys: [] },
    { guard: 'all-keys-here', state: keysHere, keys: away },
    ...(rule.idleSeconds === undefined
      ? []
      : [{ guard: 'idle-time' as const, state: idle(plan, slow), keys: slow }]),
  ]
}

function said(value: boolean | Unknown | undefined): GuardCheck['state'] {
  if (value === true) return 'met'
  return value === false ? 'not-met' : 'not-said'
}

function idle({ rule }: TeachingPlan, slow: readonly string[]): GuardCheck['state'] {
  if (rule.idleSeconds === 'unknown' || typeof rule.seconds?.show !== 'number') return 'not-said'
  return slow.length === 0 ? 'met' : 'not-met'
}
