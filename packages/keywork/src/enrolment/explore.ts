/** @module Every state one session can reach: keys shown in any order, stopped or closed at any point. */

import {
  type Car,
  type CarState,
  canOpen,
  carsOf,
  ended,
  mostLeastKeys,
  open,
  show,
  takeable,
  withEntry,
} from './car.ts'
import { outcomeOf } from './outcome.ts'
import { StateTable } from './state-table.ts'
import type { OnBreak, SessionOutcome, TeachingPlan } from './types.ts'
import { casesOf } from './unknowns.ts'

/** An end a session can have: the state it leaves, and how it came to it. */
export interface ReachableEnd {
  readonly by: 'break' | 'close'
  readonly state: CarState
}

/** How many distinct states the open session has, how many distinct states its ends leave, and every end. */
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

const BROKEN = 1
const CLOSED = 2

/**
 * Walks through every state of one opened session. `teach` are keys by index, at most 30; each is shown once, in any
 * order, and the session can be broken off or closed at any point. A key named twice can be shown again. With
 * `refusals` every key can also be refused when it is shown (ENR-22).
 */
export function explore(
  car: Car,
  teach: readonly number[],
  options: { readonly refusals?: boolean } = {},
): Exploration {
  const states = new StateTable()
  // An ended session has taught nothing more: its list stands in that place, by which states are found.
  const ends = new StateTable()
  const committing = new Commits(car)
  const refusals = options.refusals === true
  const fewest = Math.max(car.case.rule.leastKeys[0] ?? 0, car.case.rule.declared ?? 0)
  const most = mostLeastKeys(car)
  const { onBreak } = car.case.rule
  const opened = open(car, car.first)
  const all = teach.length
  states.add(opened.taught, opened.list, 0, opened.taken, 0)
  for (let next = 0; next < states.size; next += 1) {
    const shown = states.shown(next)
    const state = { list: states.list(next), taught: states.taught(next), taken: states.taken(next) }
    const entries = car.lists.size(state.taught)
    const committed = committing.of(state)
    const broken =
      entries >= car.closesAt && most <= entries ? committed : committing.broken(state, committed, onBreak)
    if (broken === committed && entries >= fewest) ends.add(broken, 0, 0, state.taken, BROKEN | CLOSED)
    else {
      ends.add(broken, 0, 0, state.taken, entries < most ? BROKEN | CLOSED : BROKEN)
      if (entries >= fewest) ends.add(committed, 0, 0, state.taken, CLOSED)
    }
    for (let position = 0; position < all; position += 1) {
      const bit = 1 << position
      if ((shown & bit) !== 0) continue
      const after = show(car, state, teach[position] as number)
      states.add(after.taught, after.list, shown | bit, after.taken, 0)
      if (refusals) states.add(state.taught, state.list, shown | bit, state.taken, 0)
    }
  }
  return {
    states: states.size,
    endCount: ends.size,
    ends: { [Symbol.iterator]: () => reachedEnds(car, ends) },
  }
}

/** What commits leave, each list of entries worked out once from the list one entry shorter. */
class Commits {
  private readonly car: Car
  private readonly atClose: boolean
  private readonly replaces: boolean
  /** The list that the remembered commits start from: while the session commits at its close, always the same. */
  private from = -1
  private known: Int32Array = new Int32Array(256)

  constructor(car: Car) {
    this.car = car
    this.atClose = car.case.rule.commits === 'at-close'
    this.replaces = car.case.rule.kind === 'replace-all'
  }

  of(state: CarState): number {
    if (!this.atClose) return state.list
    return this.replaces ? state.taught : this.withEach(state.list, state.taught)
  }

  broken(state: CarState, committed: number, onBreak: OnBreak): number {
    if (onBreak === 'list-lost') return 0
    return this.atClose && onBreak === 'keep-so-far' && state.taught !== 0 ? committed : state.list
  }

  private withEach(list: number, taught: number): number {
    if (taught === 0) return list
    if (list !== this.from) {
      this.from = list
      this.known.fill(0)
    }
    if (taught >= this.known.length) {
      const wider = new Int32Array(Math.max(taught + 1, this.known.length * 4))
      wider.set(this.known)
      this.known = wider
    }
    const known = this.known[taught] as number
    if (known !== 0) return known - 1
    const { lists } = this.car
    const list1 = this.withEach(list, lists.withoutNewest(taught))
    const found = withEntry(this.car, list1, lists.newestOf(taught))
    this.known[taught] = found + 1
    return found
  }
}

/** Ends as the walk met them; what ENR-20 makes of the keys taken can make two of them one. */
function* reachedEnds(car: Car, ends: StateTable): Generator<ReachableEnd> {
  for (let index = 0; index < ends.size; index += 1) {
    const state = ended(car, ends.taught(index), ends.taken(index))
    if ((ends.marks(index) & BROKEN) !== 0) yield { by: 'break', state }
    if ((ends.marks(index) & CLOSED) !== 0) yield { by: 'close', state }
  }
}
