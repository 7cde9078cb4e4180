/** @module How long the parts of a session and its penalties take (ENR-17, ENR-21). */

import type { RecoveryStep } from './session-types.ts'
import type { TeachingPlan, Unknown } from './types.ts'

/** Stands for a time without a figure: longer than all that have one, so that ways of known length come first. */
export const NO_FIGURE = 1e9

/** Seconds of each part; `NO_FIGURE` where the rule has none. */
export interface SessionTimes {
  readonly open: number
  readonly show: number
  readonly close: number
  readonly restore: number
  readonly wait: number
  /** Before a session that was broken off can be opened again. */
  readonly afterBreak: number
  readonly penaltyStep: Extract<RecoveryStep['do'], 'wait' | 'wait-ignition-on'>
}

/** The times of a plan's rule. A wait after a break that the rule does not speak of is none. */
export function timesOf({ rule }: TeachingPlan): SessionTimes {
  const seconds = rule.seconds ?? {}
  const off = rule.gate?.ignitionOff ?? 'runs'
  return {
    open: secondsOf(seconds.open),
    show: secondsOf(seconds.show),
    close: secondsOf(seconds.close),
    restore: secondsOf(seconds.restore),
    wait: secondsOf(seconds.wait),
    afterBreak: seconds.afterBreak === undefined ? 0 : secondsOf(seconds.afterBreak),
    penaltyStep: off === 'runs' ? 'wait' : 'wait-ignition-on',
  }
}

/** ENR-17: seconds to wait once this many wrong tries were made. A number of tries not known is one. */
export function penaltySeconds({ rule, means }: TeachingPlan, moreTries: number): number {
  if (rule.gate === undefined) return 0
  const tries = (means.wrongTries ?? 0) + moreTries
  const most = rule.gate.triesBeforeWait === 'unknown' ? 1 : rule.gate.triesBeforeWait
  return tries >= most ? secondsOf(rule.gate.waitSeconds) : 0
}

function secondsOf(value: number | Unknown | undefined): number {
  return typeof value === 'number' ? value : NO_FIGURE
}

/** Seconds as they are told: null once a part of them has no figure. */
export function figure(seconds: number): number | null {
  return seconds >= NO_FIGURE ? null : seconds
}
