import type { Recovery, RecoveryStep } from '@shearline/keywork'
import { type StepCode, stepCodeWords } from '../step-code.ts'

/** A step of a way back in words. */
export interface WordedStep extends RecoveryStep {
  /** What to do. */
  readonly words: string
  /** How it stands on record: with its place, because a way can ask for the same thing twice. */
  readonly code: StepCode
}

/** The steps of a way back, in order, each in words. */
export function stepsOf(way: Recovery): readonly WordedStep[] {
  return way.steps.map((step, index) => {
    const code: StepCode = {
      code: `recovery.${step.do}`,
      ...(step.key === undefined ? {} : { key: step.key }),
      place: index + 1,
    }
    return { ...step, words: stepCodeWords(code), code }
  })
}
