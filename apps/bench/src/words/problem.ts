import { FactRefused } from '@shearline/jobfile'
import { CannotSign } from '../device/self.ts'
import { Refused, Unreachable } from '../sync/remote.ts'
import { t } from './index.ts'

/** What went wrong and what to do, in plain words. */
export function problemWords(error: unknown): string {
  if (error instanceof FactRefused) return t('problem.fact', { path: error.path, what: error.message })
  if (error instanceof CannotSign) return t('problem.cannot-sign')
  if (error instanceof Refused) {
    return t('problem.refused', { what: error.refusal.what, doNext: error.refusal.doNext })
  }
  if (error instanceof Unreachable) return t('problem.unreachable')
  if (error instanceof DOMException && error.name === 'QuotaExceededError') return t('problem.full')
  return t('problem.other', { what: error instanceof Error ? error.message : String(error) })
}
