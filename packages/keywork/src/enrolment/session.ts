/** @module Rehearses a plan with all that can go otherwise, its times, its conditions and the reasons for its order. */

import { bestOrder } from './best-order.ts'
import { canOpen, carsOf, close, open, show } from './car.ts'
import { isExtended } from './extended.ts'
import { guardsOf } from './guards.ts'
import { interruptionsOf, isSpoiled, type Walk, Ways } from './interruptions.ts'
import { type PointCost, plainCost, weighedCost } from './order-cost.ts'
import { costOf, reasonsFor } from './reasons.ts'
import { keysToTeach, rehearseCars } from './rehearse.ts'
import { timesOf } from './session-times.ts'
import type { SessionRehearsal } from './session-types.ts'
import { lengthOf, timelineOf } from './timeline.ts'
import type { TeachingPlan } from './types.ts'
import { casesOf, MOST_CASES } from './unknowns.ts'

/** A way back costs a search of its own, so fewer states are weighed than ENR-14 alone would allow. */
const EVALUATIONS = 60_000

/**
 * Rehearses one session in full: the answer of `rehearse` and, for every step, everything that can go otherwise with
 * the shortest way back in steps and seconds; the session in time; the conditions of the plan; and why the order is
 * as it is (ENR-17 to ENR-26). For a plan of the base model the order is that of ENR-14; for an extended plan that of
 * ENR-24.
 *
 * @throws RangeError for a plan that `parsePlan` refuses for its unknowns.
 */
export function rehearseSession(
  plan: TeachingPlan,
  options: { readonly order?: 'best' | 'given' } = {},
): SessionRehearsal {
  const cases = casesOf(plan)
  if (cases === null) throw new RangeError(`Too much is unknown: more than ${MOST_CASES} cases.`)
  const cars = carsOf(cases)
  const times = timesOf(plan)
  const given = keysToTeach(plan, cars)
  const ways = new Ways(given, times)
  const weighed = weighedCost(plan, cars, ways, times)
  const cost: PointCost = isExtended(plan) ? weighed : plainCost(cars)
  const search = (): ReturnType<typeof bestOrder> =>
    isExtended(plan) ? bestOrder(cars, given, { cost, evaluations: EVALUATIONS }) : bestOrder(cars, given)
  const base = rehearseCars(plan, cars, given, options.order ?? 'best', search)
  const order = base.order.map((id) => plan.keys.findIndex((key) => key.id === id))
  const opens = cars.every((car) => canOpen(car, car.first.list))
  const walk = walkOf(plan, cars, order)
  const timeline = timelineOf(plan, base.order, times)
  const guards = guardsOf(plan, opens, timeline)
  return {
    ...base,
    interruptions: opens ? interruptionsOf(walk, times) : [],
    timeline,
    seconds: lengthOf(timeline),
    cost: costOf(opens ? walk : { ...walk, states: [] }, weighed),
    reasons: opens ? reasonsFor(walk, given, weighed, isExtended(plan)) : [],
    guards,
    unmet: guards.filter((each) => each.state !== 'met').map((each) => each.guard),
    spoiled: opens ? spoiledAtEnd(walk) : [],
  }
}

/** Walks an order through every case. */
function walkOf(plan: TeachingPlan, cars: Walk['cars'], order: readonly number[]): Walk {
  const states = [cars.map((car) => open(car, car.first))]
  for (const key of order) {
    const before = states.at(-1) ?? []
    states.push(cars.map((car, at) => show(car, before[at] ?? car.first, key)))
  }
  return { plan, cars, order, states }
}

function spoiledAtEnd({ plan, cars, states }: Walk): readonly string[] {
  const last = states.at(-1) ?? []
  const ends = cars.flatMap((car, at) =>
    close(car, last[at] ?? car.first).map(({ state }) => ({ car, state })),
  )
  return plan.keys
    .filter((_, key) => ends.some(({ car, state }) => isSpoiled(car, state, key)))
    .map((key) => key.id)
}
