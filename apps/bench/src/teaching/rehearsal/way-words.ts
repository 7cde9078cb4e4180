import type { Recovery, RecoveryStep } from '@shearline/keywork'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'

/** A step of a way back in words. */
export interface WordedStep extends RecoveryStep {
  /** What to do. */
  readonly words: string
  /** How it stands on record: with its place, because a way can ask for the same thing twice. */
  readonly name: string
}

/** The steps of a way back, in order, each in words. */
export function stepsOf(way: Recovery): readonly WordedStep[] {
  return way.steps.map((step, index) => {
    const words = say(`recovery.${step.do}`, { key: step.key ?? '' })
    return { ...step, words, name: t('way.step', { place: index + 1, step: words }) }
  })
}
