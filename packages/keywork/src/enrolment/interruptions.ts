/** @module Everything that can go otherwise at every step of a session, and the way back from it (ENR-18, ENR-22, ENR-23). */

import { breakOff, type Car, type CarState, carWithKeysMoved, close, show } from './car.ts'
import { outcomeOf, worstOf } from './outcome.ts'
import { NO_FIGURE, penaltySeconds, type SessionTimes } from './session-times.ts'
import type { Interruption, InterruptionCause, Recovery } from './session-types.ts'
import type { BreakCause, SessionOutcome, TeachingPlan } from './types.ts'
import { type Goal, type Plight, shortestWayBack } from './way-back.ts'

const BREAK_CAUSES: readonly BreakCause[] = ['supply-lost', 'link-lost', 'time-out']

/** What a session came to: the car (a key may have turned out not to be here), its state, and what closing wanted. */
interface Ending {
  readonly car: Car
  readonly state: CarState
  readonly leastKeys?: number
}

interface Happening {
  readonly after: string
  readonly cause: InterruptionCause
  /** By index. */
  readonly key?: number
  readonly sessionOver: boolean
  readonly waitSeconds: number
  readonly endings: readonly Ending[]
}

/** A session that is walked through: the cars of all cases, the order by key index, and the states after each step. */
export interface Walk {
  readonly plan: TeachingPlan
  readonly cars: readonly Car[]
  readonly order: readonly number[]
  /** `states[step][case]`; step 0 is right after opening. */
  readonly states: readonly (readonly CarState[])[]
}

/** Every interruption of an opened session, step by step. */
export function interruptionsOf(walk: Walk, times: SessionTimes): readonly Interruption[] {
  const ways = new Ways(walk.order, times)
  return happeningsOf(walk, times).map((each) => told(walk, each, ways))
}

function happeningsOf(walk: Walk, times: SessionTimes): readonly Happening[] {
  const all: Happening[] = []
  if (walk.plan.rule.gate !== undefined)
    all.push({
      ...{ after: 'open', cause: 'wrong-code', sessionOver: true },
      waitSeconds: penaltySeconds(walk.plan, 1),
      endings: walk.cars.map((car) => ({ car, state: car.first })),
    })
  for (const step of walk.states.keys()) all.push(...atStep(walk, step, times))
  return all
}

function atStep(walk: Walk, step: number, times: SessionTimes): readonly Happening[] {
  const { plan, order } = walk
  const last = order[step - 1]
  const next = order[step]
  const at = { after: last === undefined ? 'open' : (plan.keys[last]?.id ?? '') }
  const broken = { ...at, sessionOver: true, waitSeconds: times.afterBreak }
  const goesOn = { ...at, sessionOver: false, waitSeconds: 0 }
  const happenings: Happening[] = BREAK_CAUSES.map((cause) => ({
    ...{ ...broken, cause },
    endings: eachCase(walk, step, (car, state) => breaks(car, state, cause)),
  }))
  happenings.push(wrongKey(walk, step, broken, goesOn))
  if (last !== undefined)
    happenings.push({
      ...{ ...goesOn, cause: 'repeated-key', key: last },
      endings: eachCase(walk, step, (car, state) => playOut(car, show(car, state, last), order.slice(step))),
    })
  if (next === undefined) return happenings
  happenings.push({ ...broken, cause: 'closed-early', endings: eachCase(walk, step, closed) })
  const without = order.slice(step + 1)
  for (const cause of ['key-refused', 'flat-cell'] as const)
    happenings.push({
      ...{ ...goesOn, cause, key: next },
      endings: eachCase(walk, step, (car, state) => playOut(car, state, without)),
    })
  happenings.push({
    ...{ ...goesOn, cause: 'key-forgotten', key: next },
    endings: eachCase(walk, step, (car, state) =>
      playOut(carWithKeysMoved(car, 0, 1 << next), state, without),
    ),
  })
  return happenings
}

/** ENR-22: a key of another car is passed over, or ends the session; not known is both. */
function wrongKey(
  walk: Walk,
  step: number,
  broken: Omit<Happening, 'cause' | 'endings'>,
  goesOn: Omit<Happening, 'cause' | 'endings'>,
): Happening {
  const does = walk.plan.rule.wrongKey ?? 'ignored'
  const rest = walk.order.slice(step)
  const endings: Ending[] = []
  if (does !== 'ignored')
    endings.push(...eachCase(walk, step, (car, state) => [{ car, state: breakOff(car, state) }]))
  if (does !== 'ends-session')
    endings.push(...eachCase(walk, step, (car, state) => playOut(car, state, rest)))
  return { ...(does === 'ignored' ? goesOn : broken), cause: 'wrong-key', endings }
}

function eachCase(
  { cars, states }: Walk,
  step: number,
  ends: (car: Car, state: CarState) => readonly Ending[],
): readonly Ending[] {
  return cars.flatMap((car, index) => ends(car, states[step]?.[index] ?? car.first))
}

/** ENR-18: what a cause of a break leaves; each way it can be where that is not known. */
export function breaks(car: Car, state: CarState, cause: BreakCause): readonly Ending[] {
  const ways = car.case.rule.onBreakBy[cause] ?? [car.case.rule.onBreak]
  return ways.map((onBreak) => ({ car, state: breakOff(car, state, onBreak) }))
}

function closed(car: Car, state: CarState): readonly Ending[] {
  return close(car, state).map((closing) => ({ car, ...closing }))
}

/** The end that the session comes to with these keys still to show. */
function playOut(car: Car, state: CarState, rest: readonly number[]): readonly Ending[] {
  return closed(
    car,
    rest.reduce((before, key) => show(car, before, key), state),
  )
}

function told(walk: Walk, happening: Happening, ways: Ways): Interruption {
  const { plan, order } = walk
  const { after, cause, key, sessionOver, waitSeconds, endings } = happening
  const identities = [...plan.stored.filter((each) => each !== ''), ...plan.keys.map((each) => each.identity)]
  const outcomes = endings.map(({ car, state, leastKeys }) => outcomeOf(car, state, order, leastKeys))
  const flat = cause === 'flat-cell' ? key : undefined
  const worst = dearestEndings(endings, outcomes)
  const plights = worst.slice(0, MOST_WAYS).map(({ car, state }) => ({
    car,
    plight: { state, waitSeconds, ...(flat === undefined ? {} : { flat }) },
  }))
  return {
    after,
    cause,
    ...(key === undefined ? {} : { key: plan.keys[key]?.id ?? '' }),
    sessionOver,
    ...worstOf(outcomes, plan.stored, identities),
    spoiled: plan.keys
      .filter((_, at) => endings.some(({ car, state }) => isSpoiled(car, state, at)))
      .map((each) => each.id),
    going: dearest(
      plights.map(({ car, plight }) => ways.to('going', car, plight)),
      worst.length <= MOST_WAYS,
    ),
    finished: dearest(
      plights.map(({ car, plight }) => ways.to('finished', car, plight)),
      worst.length <= MOST_WAYS,
    ),
  }
}

/** Of many cases that end alike, ways back are searched for this many; the dearest of them is then not proven. */
export const MOST_WAYS = 24 as number

/** Few endings are all looked at; of many only those that are stranded, or else wait for the dearest way back. */
function dearestEndings(endings: readonly Ending[], outcomes: readonly SessionOutcome[]): readonly Ending[] {
  if (endings.length <= MOST_WAYS) return endings
  const none = outcomes.some((each) => each.wayBack === 'none')
  const stranded = outcomes.some((each) => each.stranded)
  return endings.filter((_, at) => {
    const outcome = outcomes[at]
    return none ? outcome?.wayBack === 'none' : outcome?.stranded === stranded
  })
}

/** ENR-20: used up for other cars and not accepted by this one. */
export function isSpoiled(car: Car, state: CarState, key: number): boolean {
  return ((state.taken >> key) & 1) === 1 && !car.lists.holds(state.list, car.identityOf[key] ?? -1)
}

/** ENR-12: of the ways back of all cases the dearest: none, then those without a figure, then the longest. */
function dearest(ways: readonly (Recovery | null)[], all: boolean): Recovery | null {
  let worst: Recovery | null = ways[0] ?? null
  for (const way of ways) {
    if (way === null || worst === null) return null
    const length = (each: Recovery): number => each.seconds ?? NO_FIGURE + each.steps.length
    if (length(way) > length(worst)) worst = way
  }
  return worst === null || all ? worst : { ...worst, proven: false }
}

/** Ways back, each worked out once. */
export class Ways {
  private readonly order: readonly number[]
  private readonly times: SessionTimes
  private readonly known = new Map<Car, Map<string, Recovery | null>>()

  constructor(order: readonly number[], times: SessionTimes) {
    this.order = order
    this.times = times
  }

  to(goal: Goal, car: Car, plight: Plight): Recovery | null {
    const { state, waitSeconds, flat } = plight
    const name = `${goal} ${state.list} ${state.taken} ${waitSeconds} ${flat}`
    const known = this.known.get(car) ?? new Map<string, Recovery | null>()
    this.known.set(car, known)
    let way = known.get(name)
    if (way === undefined) {
      way = shortestWayBack(car, plight, this.order, goal, this.times)
      known.set(name, way)
    }
    return way
  }
}
