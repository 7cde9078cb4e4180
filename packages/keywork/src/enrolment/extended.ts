/** @module Which plans say more than the base model: any field or value of ENR-15 and later. */

import type { TeachingPlan, TeachingRule } from './types.ts'

const RULE_FIELDS: readonly (keyof TeachingRule)[] = [
  'slotTaken',
  'declaredCount',
  'spends',
  'wrongKey',
  'onBreakBy',
  'gate',
  'idleSeconds',
  'seconds',
  'amperes',
]

/**
 * True for a plan with any field or value of ENR-15 and later. Only then can a parameter that is not known have one
 * of the later values (ENR-12), and only then is the order weighed by time and blanks (ENR-24).
 */
export function isExtended(plan: TeachingPlan): boolean {
  const { rule } = plan
  return (
    RULE_FIELDS.some((name) => rule[name] !== undefined) ||
    rule.kind === 'numbered-slots' ||
    rule.opensWith === 'timed-wait' ||
    rule.onBreak === 'list-lost' ||
    (rule.accepts !== 'unknown' && rule.accepts.includes('pre-coded')) ||
    plan.keys.some(
      (key) => key.state === 'pre-coded' || key.slot !== undefined || key.awaySeconds !== undefined,
    ) ||
    plan.means.code !== undefined ||
    plan.means.wrongTries !== undefined ||
    plan.declared !== undefined ||
    plan.guards !== undefined ||
    plan.likelihood !== undefined
  )
}
