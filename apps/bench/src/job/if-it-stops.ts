import type { JobState } from '@shearline/jobfile'
import { rehearse, type SessionOutcome, type TeachingPlan, type WayBack } from '@shearline/keywork'
import { planOf } from '../teaching/plan-of.ts'
import { sessionOrder } from '../teaching/teaching-order.ts'
import { listMark } from '../words/engine.ts'
import { t } from '../words/index.ts'

/** What holds when a session ends, in one sentence about keys: those here, and those that are not. */
export function keysSentence(outcome: SessionOutcome, plan: TeachingPlan): string {
  const here = plan.keys.filter((key) => key.onBench === true)
  const startedBefore = here.filter((key) => plan.stored.includes(key.identity)).map((key) => key.id)
  const lost = startedBefore.filter((key) => !outcome.starts.includes(key))
  const absent = outcome.dropped.filter(
    (identity) => !plan.keys.some((key) => key.identity === identity),
  ).length
  const starts = outcome.starts.join(listMark())
  if (outcome.stranded) return t('stops.stranded')
  if (lost.length > 0) return t('stops.dropped', { starts, lost: lost.join(listMark()), absent })
  const count = outcome.starts.length
  if (count > startedBefore.length) return t('stops.more', { starts, count, absent })
  return t('stops.same', { starts, count, absent })
}

/** The way back in one sentence. */
export function wayBackSentence(wayBack: WayBack): string {
  return t(`way-back.${wayBack}`)
}

/** "If it stops here": one sentence about keys and one about the way back, for the job as it stands now. */
export function ifItStops(state: JobState): {
  readonly keys: string
  readonly wayBack: string
  /** Said beside them while the rule or its rehearsal is not on record; empty otherwise. */
  readonly note: string
} {
  const { rule, rehearsal, sessionOpen, sessionClosed, breakOff } = state.teaching
  const note = rule === null || rehearsal === null ? t('stops.not-rehearsed') : ''
  if (sessionClosed && breakOff === null) {
    return { keys: t('stops.closed'), wayBack: wayBackSentence('not-needed'), note: '' }
  }
  if (!sessionOpen && breakOff === null) {
    return { keys: t('stops.untouched'), wayBack: wayBackSentence('not-needed'), note }
  }
  const { shown, order } = sessionOrder(state)
  const plan = planOf(state, order)
  const rehearsed = rehearse(plan, { order: 'given' })
  // A session the rule says could not have opened: take what holds at the end, which is the list as it was.
  const point = rehearsed.breaks[shown.length] ?? rehearsed.end
  return { keys: keysSentence(point, plan), wayBack: wayBackSentence(point.wayBack), note }
}
