import { t } from '../words/index.ts'
import type { Standing } from './geometry.ts'

/** A tumbler's standing in words: `in line`, `2 of 5`, `conflict`. */
export function standingWords(tumbler: Standing): string {
  if (tumbler.state === 'in-line') return t('standing.in-line')
  if (tumbler.state === 'high') return t('standing.high')
  return t('standing.low', { done: tumbler.done, of: tumbler.of })
}
