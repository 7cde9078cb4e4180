import { type JobState, rewritesList } from '@shearline/jobfile'

/**
 * Keys the session takes, in the order of the rehearsal when one was read; else known keys first and new ones
 * last. Existing keys are taught again when the list is rewritten, which an unknown rule counts as.
 */
export function teachingOrder(state: JobState): readonly string[] {
  const { rule, rehearsal } = state.teaching
  const rewrites = rewritesList(rule)
  const taken = state.keys.filter(
    (key) => key.onBench && key.cloneOf === null && (key.origin === 'new' || rewrites),
  )
  const labels = [...taken]
    .sort((a, b) => Number(a.origin === 'new') - Number(b.origin === 'new'))
    .map((key) => key.id)
  const read = rehearsal?.order.filter((key) => labels.includes(key)) ?? []
  return [...read, ...labels.filter((label) => !read.includes(label))]
}

/** The keys the present or last session was shown, and its whole order: those first, then what is left. */
export function sessionOrder(state: JobState): {
  readonly shown: readonly string[]
  readonly order: readonly string[]
} {
  const { taught } = state.teaching
  const shown = state.teaching.shown.filter((key) => state.keys.some((one) => one.id === key))
  const rest = teachingOrder(state).filter((key) => !shown.includes(key) && !taught.includes(key))
  return { shown, order: [...shown, ...rest] }
}
