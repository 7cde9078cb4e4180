/** @module Rehearses a plan: what if it stops here? (rules in SPEC.md; JSON as in `shearline rehearse --json`) */

import { bestOrder, type OrderFound } from './best-order.ts'
import { breakOff, type Car, type CarState, canOpen, carsOf, close, open, show, takeable } from './car.ts'
import { outcomeOf, startsCar, worstOf } from './outcome.ts'
import type { BreakPoint, Rehearsal, SessionOutcome, TeachingPlan } from './types.ts'
import { casesOf, MOST_CASES } from './unknowns.ts'

/**
 * Rehearses one session: for every point where it can stop, which keys start the car, which are dropped, whether the
 * car is stranded and how to get back.
 *
 * `order: 'best'` (default) shows the keys in the best order of ENR-14; `given` keeps the plan's order, and
 * `provenBest` then says whether that is the best one. Parameters that are not known give the worst case (ENR-12).
 *
 * @throws RangeError when so much is unknown that more than `MOST_CASES` cases would have to be computed; `parsePlan`
 * refuses such a plan.
 */
export function rehearse(plan: TeachingPlan, options: { readonly order?: 'best' | 'given' } = {}): Rehearsal {
  const cases = casesOf(plan)
  if (cases === null) throw new RangeError(`Too much is unknown: more than ${MOST_CASES} cases.`)
  const cars = carsOf(cases)
  const given = keysToTeach(plan, cars)
  return rehearseCars(plan, cars, given, options.order ?? 'best', () => bestOrder(cars, given))
}

/** The rehearsal of cases made ready, with the order that `search` finds among those of `given`. */
export function rehearseCars(
  plan: TeachingPlan,
  cars: readonly Car[],
  given: readonly number[],
  wanted: 'best' | 'given',
  search: () => OrderFound,
): Rehearsal {
  const opens = cars.every((car) => canOpen(car, car.first.list))
  const found = opens ? search() : unopenedOrder(cars, given)
  const kept = wanted === 'given'
  const order = kept ? given : found.order
  const provenBest = found.proven && (!kept || given.every((key, index) => key === found.order[index]))
  const walk = opens
    ? walkThrough(cars, order, plan)
    : { breaks: [], end: worst(cars, firstStates(cars), order, plan) }
  return {
    order: order.map((key) => plan.keys[key]?.id ?? ''),
    opened: opens,
    provenBest,
    explored: found.explored,
    breaks: walk.breaks,
    end: walk.end,
  }
}

/** The keys to show, by index: as the plan says, else every key on the bench that can be taken in some case. */
export function keysToTeach(plan: TeachingPlan, cars: readonly Car[]): readonly number[] {
  if (plan.teach !== null) return plan.teach.map((id) => plan.keys.findIndex((key) => key.id === id))
  return [...plan.keys.keys()].filter((key) =>
    cars.some((car) => ((takeable(car, car.first) >> key) & 1) === 1),
  )
}

/** Without a session no break point differs: keys that start the car first, then the given order. */
function unopenedOrder(cars: readonly Car[], given: readonly number[]): OrderFound {
  const starts = (key: number): boolean => cars.every((car) => startsCar(car, car.first, key))
  return {
    order: [...given.filter(starts), ...given.filter((key) => !starts(key))],
    proven: true,
    explored: 1,
  }
}

function walkThrough(
  cars: readonly Car[],
  order: readonly number[],
  plan: TeachingPlan,
): { readonly breaks: readonly BreakPoint[]; readonly end: SessionOutcome } {
  const breakHere = (after: string, states: readonly CarState[]): BreakPoint => {
    const broken = cars.map((car, index) => breakOff(car, states[index] ?? car.first))
    return { after, ...worst(cars, broken, order, plan) }
  }
  let states: readonly CarState[] = cars.map((car) => open(car, car.first))
  const breaks = [breakHere('open', states)]
  for (const key of order) {
    const shown: readonly CarState[] = cars.map((car, index) => show(car, states[index] ?? car.first, key))
    breaks.push(breakHere(plan.keys[key]?.id ?? '', shown))
    states = shown
  }
  const ends = cars.flatMap((car, index) =>
    close(car, states[index] ?? car.first).map((closing) =>
      outcomeOf(car, closing.state, order, closing.leastKeys),
    ),
  )
  return { breaks, end: worstOf(ends, plan.stored, identitiesOf(plan)) }
}

function firstStates(cars: readonly Car[]): readonly CarState[] {
  return cars.map((car) => car.first)
}

function worst(
  cars: readonly Car[],
  states: readonly CarState[],
  teach: readonly number[],
  plan: TeachingPlan,
): SessionOutcome {
  const outcomes = cars.map((car, index) => outcomeOf(car, states[index] ?? car.first, teach))
  return worstOf(outcomes, plan.stored, identitiesOf(plan))
}

function identitiesOf(plan: TeachingPlan): readonly string[] {
  return [...plan.stored.filter((identity) => identity !== ''), ...plan.keys.map((key) => key.identity)]
}
