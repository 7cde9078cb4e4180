/**
 * @module Why the work may have raised a fault: rules as data with our stated confidence. Their sources and what they
 * say stand in the catalogue of words, as `explanation-source.ID` and `explanation.ID`.
 */

import { readCode } from './code.ts'
import { LOST_COMMUNICATION, roleOf } from './roles.ts'
import type { CompareOptions, WorkEvent, WorkEventKind } from './types.ts'

/** What each rule is called. */
export type ExplanationRuleId =
  | 'reset-silence'
  | 'muted-silence'
  | 'supply-low-supply-codes'
  | 'supply-low-silence'
  | 'key-refused'
  | 'immobiliser-teaching'
  | 'battery-off-steering'

/** One rule. A fault it fits, absent before and of the right time, may be called ours. */
export interface ExplanationRule {
  readonly id: ExplanationRuleId
  readonly causes: readonly WorkEventKind[]
  /** Codes by pattern on the five characters, or the lost-communication codes that name the unit of the event. */
  readonly codes: RegExp | 'lost-communication-naming-the-unit' | 'any-lost-communication'
  /** What it did may last until a key the car knows is shown, or the like: the test may fail still. */
  readonly mayStillFail?: true
  /** 0 to 1, for a fault whose time fits and that stays away after clearing and a cycle. Ours, stated, not measured. */
  readonly confidence: number
}

/** The rule by which a low supply explains that any unit was missed. */
export const WHOLE_CAR_SILENCE: ExplanationRuleId = 'supply-low-silence'

export const EXPLANATION_RULES: readonly ExplanationRule[] = [
  {
    id: 'reset-silence',
    causes: ['reset'],
    codes: 'lost-communication-naming-the-unit',
    confidence: 0.9,
  },
  {
    id: 'muted-silence',
    causes: ['muted'],
    codes: 'lost-communication-naming-the-unit',
    confidence: 0.9,
  },
  {
    id: 'supply-low-supply-codes',
    causes: ['supply-low', 'battery-disconnected'],
    codes: /^(P056[02]|U3003|U300[67])$/,
    confidence: 0.9,
  },
  {
    id: WHOLE_CAR_SILENCE,
    causes: ['supply-low', 'battery-disconnected'],
    codes: 'any-lost-communication',
    confidence: 0.75,
  },
  {
    id: 'key-refused',
    causes: ['key-refused'],
    codes: /^(P0513|P0633)$/,
    mayStillFail: true,
    confidence: 0.9,
  },
  {
    id: 'immobiliser-teaching',
    causes: ['teaching'],
    codes: /^(P0513|P0633|U0426)$/,
    confidence: 0.8,
  },
  {
    id: 'battery-off-steering',
    causes: ['battery-disconnected'],
    codes: /^C0460$/,
    mayStillFail: true,
    confidence: 0.85,
  },
]

/** Below this a fault is not called ours: unsure rather than wrong. */
const LEAST_CONFIDENCE = 0.6
const TIME_NOT_KNOWN = 0.85
const NOT_YET_PROVEN_AWAY = 0.9
const STILL_FAILING = 0.85

/** What is asked: one new fault and the bounds of its beginning. */
export interface ExplanationQuestion {
  readonly unit: string
  readonly code: string
  /** Time of the unit's last reading without the fault and first reading with it; null when not known. */
  readonly lastWithout: string | null
  readonly firstWith: string | null
  /** It went away by clearing and was still away, its test run, after a cycle. */
  readonly provenAway: boolean
  /** Its test fails at the last reading. */
  readonly failingNow: boolean
}

export interface Explanation {
  readonly rule: ExplanationRule
  readonly event: WorkEvent
  readonly confidence: number
}

/** What explaining takes beside the question. */
export interface ExplainOptions extends CompareOptions {
  /** False: a low supply explains no silence (FLT-16). */
  readonly wholeCarSilence?: boolean
}

/** Every explanation of a new fault by what the work did that is sure enough, likeliest first. */
export function explanationsOf(
  question: ExplanationQuestion,
  options: ExplainOptions,
): readonly Explanation[] {
  const sureEnough: Explanation[] = []
  for (const event of options.events ?? []) {
    const inTime = timeFits(event, question)
    if (inTime === false) continue
    for (const rule of EXPLANATION_RULES) {
      if (!rule.causes.includes(event.kind) || !codeFits(rule, event, question, options)) continue
      if (rule.id === WHOLE_CAR_SILENCE && options.wholeCarSilence === false) continue
      if (question.failingNow && rule.mayStillFail !== true) continue
      const doubts =
        (inTime === null ? TIME_NOT_KNOWN : 1) *
        (question.provenAway ? 1 : NOT_YET_PROVEN_AWAY) *
        (question.failingNow ? STILL_FAILING : 1)
      const confidence = Math.round(rule.confidence * doubts * 1000) / 1000
      if (confidence >= LEAST_CONFIDENCE) sureEnough.push({ rule, event, confidence })
    }
  }
  return sureEnough.sort((one, other) => other.confidence - one.confidence)
}

/** True or false when all times are known, null when one is not. */
function timeFits(event: WorkEvent, question: ExplanationQuestion): boolean | null {
  const at = event.time === null ? null : Number(event.time)
  const from = question.lastWithout === null ? null : Number(question.lastWithout)
  const to = question.firstWith === null ? null : Number(question.firstWith)
  // One known bound is enough to refuse; only both known make it fit.
  if (at !== null && from !== null && at < from) return false
  if (at !== null && to !== null && at > to) return false
  return at === null || from === null || to === null || Number.isNaN(at + from + to) ? null : true
}

function codeFits(
  rule: ExplanationRule,
  event: WorkEvent,
  question: ExplanationQuestion,
  options: CompareOptions,
): boolean {
  const base = readCode(question.code)?.base ?? ''
  if (rule.codes instanceof RegExp) return rule.codes.test(base)
  const named = Object.hasOwn(LOST_COMMUNICATION, base) ? LOST_COMMUNICATION[base] : undefined
  if (named === undefined) return false
  if (rule.codes === 'any-lost-communication') return true
  // Silence of the whole car is silence of the named unit too; a unit does not miss itself.
  if (event.unit === null) return roleOf(question.unit, options.roles) !== named
  return event.unit !== question.unit && roleOf(event.unit, options.roles) === named
}
