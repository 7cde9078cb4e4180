/** @module The steps of the work and what they draw, suggested from the job's rule. */
import type { JobState } from '@shearline/jobfile'
import type { LoadName } from '@shearline/keywork'

/** A suggested step; its words are in the catalogue. */
export interface PlannedStep {
  readonly name: 'first' | 'read' | 'wait' | 'teach' | 'prove'
  readonly minutes: number
  readonly loads: readonly LoadName[]
  /** Stated by the rule; the named loads are then left out. */
  readonly amperes: number | null
}

/** Three times ten minutes with the ignition on: trade practice 1.1, "Timed wait". */
const TIMED_WAIT_MINUTES = 30
/** Own choice: a key with its waiting and its count. */
const SHOW_SECONDS = 180
const OPEN_SECONDS = 120

/** Ignition on, reading, any timed wait, the keys one by one, proving. Times and currents the rule states are taken. */
export function plannedSteps({
  teaching,
  keys,
}: Pick<JobState, 'teaching' | 'keys'>): readonly PlannedStep[] {
  const { rule } = teaching
  const seconds = rule?.seconds ?? {}
  const amperes = rule?.amperes ?? {}
  const present = keys.filter((key) => key.onBench || key.origin === 'new').length
  const count = Math.max(2, present)
  const teachSeconds =
    figure(seconds.open, OPEN_SECONDS) +
    count * figure(seconds.show, SHOW_SECONDS) +
    figure(seconds.close, 60)
  const waits = rule?.opensWith === 'timed-wait' || typeof seconds.wait === 'number'
  const wait = Math.ceil(figure(seconds.wait, TIMED_WAIT_MINUTES * 60) / 60)
  return [
    { name: 'first', minutes: 5, loads: ['first-minutes'], amperes: null },
    { name: 'read', minutes: 15, loads: ['ignition-on'], amperes: null },
    ...(waits && wait > 0 ? [step('wait', wait, amperes.wait)] : []),
    step('teach', Math.max(5, Math.ceil(teachSeconds / 300) * 5), amperes.show),
    { name: 'prove', minutes: 10, loads: ['ignition-on'], amperes: null },
  ]
}

function step(
  name: PlannedStep['name'],
  minutes: number,
  amperes: number | 'unknown' | undefined,
): PlannedStep {
  return typeof amperes === 'number'
    ? { name, minutes, loads: [], amperes }
    : { name, minutes, loads: ['ignition-on'], amperes: null }
}

function figure(stated: number | 'unknown' | undefined, usual: number): number {
  return typeof stated === 'number' ? stated : usual
}
