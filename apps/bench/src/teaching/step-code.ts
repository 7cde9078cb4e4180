/** @module Steps of a rehearsal as they stand on record: by code, so that they are known again in any language. */
import { type Body, type Code, isCode, say as sayIn } from '@shearline/jobfile'
import type { InterruptionCause, RecoveryStep } from '@shearline/keywork'
import { en } from '../words/en.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'

/** One step as `step-done` names it. */
export interface StepCode {
  readonly code: `cause.${InterruptionCause}` | `recovery.${RecoveryStep['do']}`
  readonly key?: string
  /** Its place in its way back, from 1. */
  readonly place?: number
}

type Noted = Pick<Body<'step-done'>, 'step' | 'of'>

/** The step in words. */
export function stepCodeWords({ code, key }: StepCode): string {
  if (code.startsWith('recovery.')) return say(code, { key: key ?? '' })
  return key === undefined ? say(code) : t('cause.of-key', { cause: say(code), key })
}

/** What a note of this step holds beside its outcome. */
export function noteOf(step: StepCode): Pick<Body<'step-done'>, 'step'> & { readonly of: StepCode } {
  return { step: stepName(step), of: step }
}

/** True when the note is of this step. Notes from before steps had codes are known by their words. */
export function isNoteOf(noted: Noted, step: StepCode): boolean {
  if (noted.of === undefined) return noted.step === oldName(step)
  return noted.of.code === step.code && noted.of.key === step.key && noted.of.place === step.place
}

/** A noted step in the language of the reader; as it was written where it has no code that is known here. */
export function notedWords({ step, of }: Noted): string {
  if (of === undefined || !isCode(of.code)) return step
  return stepName({ ...of, code: of.code as StepCode['code'] })
}

function stepName(step: StepCode): string {
  if (isBeginning(step)) return t('wait.ignition-on')
  const words = stepCodeWords(step)
  return step.place === undefined ? words : t('way.step', { place: step.place, step: words })
}

/** The ignition went on and the waiting counts from here; the waiting itself is a step with a place. */
function isBeginning({ code, place }: StepCode): boolean {
  return code === 'recovery.wait-ignition-on' && place === undefined
}

/** How steps were named on record before they had codes: in English, the only language there was. */
function oldName({ code, key = '', place }: StepCode): string {
  if (isBeginning({ code, ...(place === undefined ? {} : { place }) })) return en['wait.ignition-on']
  const words = sayIn('en', code satisfies Code, { key })
  return place === undefined ? words : `Way back ${place}: ${words}`
}
