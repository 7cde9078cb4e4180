/** @module Every state one session can reach: keys shown in any order, stopped or closed at any point. */

import {
  breakOff,
  type Car,
  type CarState,
  canOpen,
  carsOf,
  commitAtClose,
  mostLeastKeys,
  open,
  show,
  takeable,
} from './car.ts'
import { outcomeOf } from './outcome.ts'
import { StateTable } from './state-table.ts'
import type { SessionOutcome, TeachingPlan } from './types.ts'
import { casesOf } from './unknowns.ts'

/** An end a session can have: the state it leaves, and how it came to it. */
export interface ReachableEnd {
  readonly by: 'break' | 'close'
  readonly state: CarState
}

/** How many distinct states the open session has, and every distinct end. */
export interface Exploration {
  readonly states: number
  readonly endCount: number
  readonly ends: Iterable<ReachableEnd>
}

/** One end of a session, in the words of the plan. */
export interface PossibleEnd extends SessionOutcome {
  readonly by: 'break' | 'close'
}

/**
 * Every end the session of a plan can have, whatever order the keys are shown in and wherever it is broken off or
 * closed early; for parameters that are not known, of every value that can be opened. Each different end once.
 *
 * @throws RangeError for a plan that `parsePlan` refuses for its unknowns.
 */
export function possibleEnds(plan: TeachingPlan): readonly PossibleEnd[] {
  const cases = casesOf(plan)
  if (cases === null) throw new RangeError('Too much is unknown.')
  const ends = new Map<string, PossibleEnd>()
  for (const car of carsOf(cases)) {
    if (!canOpen(car, car.first.list)) continue
    const teach =
      plan.teach?.map((id) => plan.keys.findIndex((key) => key.id === id)) ??
      [...plan.keys.keys()].filter((key) => ((takeable(car, car.first) >> key) & 1) === 1)
    for (const { by, state } of explore(car, teach).ends) {
      const end = { by, ...outcomeOf(car, state, teach) }
      ends.set(JSON.stringify(end), end)
    }
  }
  return [...ends.values()]
}

const BREAK = 0
const CLOSE = 1

/**
 * Walks through every state of one opened session. `teach` are keys by index, at most 30; each is shown once, in any
 * order, and the session can be broken off or closed at any point.
 */
export function explore(car: Car, teach: readonly number[]): Exploration {
  const states = new StateTable()
  const ends = new StateTable()
  const fewest = car.case.rule.leastKeys[0] ?? 0
  const most = mostLeastKeys(car)
  const opened = open(car, car.first)
  states.add(0, opened.list, opened.taught, opened.taken)
  for (let next = 0; next < states.size; next += 1) {
    const shown = states.at(next, 0)
    const state = { list: states.at(next, 1), taught: states.at(next, 2), taken: states.at(next, 3) }
    const entries = car.lists.size(state.taught)
    const broken = breakOff(car, state)
    ends.add(BREAK, broken.list, 0, broken.taken)
    if (entries < most) ends.add(CLOSE, broken.list, 0, broken.taken)
    if (entries >= fewest) ends.add(CLOSE, commitAtClose(car, state).list, 0, state.taken)
    for (let position = 0; position < teach.length; position += 1) {
      if (((shown >> position) & 1) === 1) continue
      const after = show(car, state, teach[position] ?? -1)
      states.add(shown | (1 << position), after.list, after.taught, after.taken)
    }
  }
  return { states: states.size, endCount: ends.size, ends: { [Symbol.iterator]: () => reachedEnds(ends) } }
}

function* reachedEnds(ends: StateTable): Generator<ReachableEnd> {
  for (let index = 0; index < ends.size; index += 1) {
    yield {
      by: ends.at(index, 0) === BREAK ? 'break' : 'close',
      state: { list: ends.at(index, 1), taught: 0, taken: ends.at(index, 3) },
    }
  }
}
