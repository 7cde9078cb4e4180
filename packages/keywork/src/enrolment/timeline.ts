/** @module A session in time: each part, when it begins and what the car draws meanwhile (ENR-21). */

import { figure, NO_FIGURE, type SessionTimes } from './session-times.ts'
import type { SessionStep } from './session-types.ts'
import type { TeachingPlan, Unknown } from './types.ts'

/** The parts of a session that shows these keys, one after the other. */
export function timelineOf(
  plan: TeachingPlan,
  order: readonly string[],
  times: SessionTimes,
): readonly SessionStep[] {
  const amperes = plan.rule.amperes ?? {}
  const idle = typeof plan.rule.idleSeconds === 'number' ? plan.rule.idleSeconds : NO_FIGURE
  const steps: SessionStep[] = []
  let clock = 0
  const add = (
    step: string,
    part: SessionStep['part'],
    seconds: number,
    draws: number | Unknown | undefined,
  ): void => {
    steps.push({
      ...{ step, part, startSeconds: figure(clock), seconds: figure(seconds) },
      amperes: typeof draws === 'number' ? draws : null,
      overIdle: part === 'show' && seconds < NO_FIGURE && seconds > idle,
    })
    clock += seconds
  }
  if (plan.rule.opensWith === 'timed-wait') add('wait', 'wait', times.wait, amperes.wait)
  add('open', 'open', times.open, amperes.open)
  for (const key of order) add(key, 'show', times.show, amperes.show)
  add('close', 'close', times.close, amperes.close)
  return steps
}

/** How long all parts take together; null: no figure. */
export function lengthOf(steps: readonly SessionStep[]): number | null {
  return steps.reduce<number | null>(
    (sum, { seconds }) => (sum === null || seconds === null ? null : sum + seconds),
    0,
  )
}
