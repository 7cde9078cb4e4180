import type { JobState } from '@shearline/jobfile'
import { startedIn } from '@shearline/keywork'
import { t } from '../words/index.ts'
import { type BreakPoint, breakPoint, type Plan } from './break-points.ts'

/** What the session starts from, as the record has it. */
export function planOf(state: JobState): Plan {
  return {
    rule: state.teaching.rule,
    known: state.keys
      .filter(
        (key) =>
          key.origin === 'existing' && key.onBench && startedIn(state.grid, key.id, 'before') !== false,
      )
      .map((key) => key.id),
    stored: state.tally.storedBefore,
    backup: state.teaching.backup !== null,
  }
}

/** A break point in one sentence about keys. */
export function keysSentence(point: BreakPoint, known: readonly string[]): string {
  const starts = list(point.starts)
  if (point.stranded) return t('stops.stranded')
  if (point.dropped.length > 0) return t('stops.dropped', { starts, dropped: list(point.dropped) })
  if (point.starts.length > known.length) return t('stops.more', { starts })
  return t('stops.same', { starts, count: point.starts.length })
}

/** The way back in one sentence. */
export function wayBackSentence(wayBack: BreakPoint['wayBack']): string {
  return t(`way-back.${wayBack}`)
}

/** "If it stops here": one sentence about keys and one about the way back, for the job as it stands now. */
export function ifItStops(state: JobState): {
  readonly keys: string
  readonly wayBack: string
  readonly note: string
} {
  const { rule, rehearsal, sessionOpen, sessionClosed, taught, breakOff } = state.teaching
  const note = rule === null || rehearsal === null ? t('stops.not-rehearsed') : ''
  if (sessionClosed && breakOff === null) {
    return { keys: t('stops.closed'), wayBack: t('way-back.not-needed'), note: '' }
  }
  if (!sessionOpen && breakOff === null) {
    return { keys: t('stops.untouched'), wayBack: t('way-back.not-needed'), note }
  }
  const plan = planOf(state)
  const point = breakPoint(plan, taught)
  return { keys: keysSentence(point, plan.known), wayBack: wayBackSentence(point.wayBack), note }
}

function list(keys: readonly string[]): string {
  return keys.join(', ')
}
