import { t } from '../words/index.ts'
import type { draftOf } from './plan.ts'

/** What a suggested plan is called in the bench's language. */
export function draftWords(): Parameters<typeof draftOf>[1] {
  return { usual: t('plan.floor.usual'), step: (step) => t(`power.step.${step}`) }
}
