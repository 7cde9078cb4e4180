import { say } from '@shearline/jobfile'
import type { Interruption, Recovery, Rehearsal, SessionRehearsal } from '@shearline/keywork'
import { paint, print } from '../output/answer.ts'

/** One line: what holds at a point. */
export function printPoint(when: string, state: Rehearsal['end']): void {
  const starts =
    state.starts.length === 0
      ? paint('no key here starts the car', 'red')
      : `${state.starts.join(', ')} start the car`
  const dropped = state.dropped.length === 0 ? '' : `; dropped: ${state.dropped.join(', ')}`
  print(`${when.padEnd(20)} ${starts}${dropped}; way back: ${state.wayBack}`)
}

/** What can go otherwise and leaves the car stranded or work undone, then what the plan still wants. */
export function printInterruptions(result: SessionRehearsal): void {
  const worse = result.interruptions.filter((each) => each.stranded || each.finished?.seconds !== 0)
  if (worse.length > 0) print('\nIf it goes otherwise:')
  for (const each of worse) print(interruptionLine(each))
  for (const { code, other, at } of result.reasons)
    print(say('en', `order-reason.${code}`, { other: other.join(', '), at: at.join(', ') }))
  if (result.seconds !== null) print(`The session takes ${rounded(result.seconds)} s.`)
  for (const guard of result.unmet)
    print(`Not settled yet: ${say('en', `guard.${guard}`)}. ${say('en', `guard-meet.${guard}`)}`)
}

function interruptionLine({ after, cause, key, stranded, going, finished }: Interruption): string {
  const when = `${after === 'open' ? 'after opening' : `after ${after}`}: ${say('en', `cause.${cause}`)}${key === undefined ? '' : ` (${key})`}`
  const way = stranded
    ? `${paint('stranded', 'red')}; to start: ${wayWords(going)}`
    : `to finish: ${wayWords(finished)}`
  return `  ${when.padEnd(52)} ${way}`
}

function wayWords(way: Recovery | null): string {
  if (way === null) return 'no way with what is on hand'
  const steps = way.steps.map((step) => say('en', `recovery.${step.do}`, { key: step.key ?? '' }))
  return `${steps.join('; ')} (${way.seconds === null ? 'time not known' : `${rounded(way.seconds)} s`})`
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000
}
