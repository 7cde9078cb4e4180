/** @module What a break point costs when orders are compared (ENR-14, ENR-24). */

import { breakOff, type Car, type CarState } from './car.ts'
import { breaks, isSpoiled, MOST_WAYS, type Ways } from './interruptions.ts'
import { isStranded } from './outcome.ts'
import { NO_FIGURE, type SessionTimes } from './session-times.ts'
import type { BreakCause, TeachingPlan } from './types.ts'

/**
 * What a break here costs, first things first; each part adds up over the break points. `states` has one for each
 * case; `shown` are the keys shown so far, by index: empty right after opening.
 */
export type PointCost = (states: readonly CarState[], shown: readonly number[]) => readonly number[]

/** ENR-14: one for a stranded point, and one for a point at which a key that started the car does not. */
export function plainCost(cars: readonly Car[]): PointCost {
  const starters = cars.map(startersOf)
  return (states) => {
    let stranded = 0
    let lost = 0
    for (const [at, car] of cars.entries()) {
      const broken = breakOff(car, states[at] ?? car.first)
      if (isStranded(car, broken)) stranded = 1
      if (((starters[at] ?? 0) & ~car.lists.set(broken.list)) !== 0) lost = 1
    }
    return [stranded, lost]
  }
}

const CAUSES: readonly BreakCause[] = ['supply-lost', 'link-lost', 'time-out']

/** ENR-24: chance of a stranded stop, chance times seconds until a key here starts, of a lost key, of a spoiled blank. */
export function weighedCost(
  plan: TeachingPlan,
  cars: readonly Car[],
  ways: Ways,
  times: SessionTimes,
): PointCost {
  const starters = cars.map(startersOf)
  const chances = chancesOf(plan)
  return (states, shown) => {
    let stranded = 0
    let seconds = 0
    let lost = 0
    let spoiled = 0
    let searched = 0
    for (const [at, car] of cars.entries()) {
      for (const cause of CAUSES)
        for (const { state } of breaks(car, states[at] ?? car.first, cause)) {
          if (((starters[at] ?? 0) & ~car.lists.set(state.list)) !== 0) lost = 1
          spoiled = Math.max(spoiled, spoiledIn(car, state))
          if (!isStranded(car, state)) continue
          stranded = 1
          if (seconds >= NO_FIGURE || searched >= MOST_WAYS) continue
          searched += 1
          const way = ways.to('going', car, { state, waitSeconds: times.afterBreak })
          seconds = Math.max(seconds, way?.seconds ?? NO_FIGURE)
        }
    }
    const weight = chances(shown)
    return [weight * stranded, weight * seconds, weight * lost, weight * spoiled]
  }
}

/** Compares costs part by part. What differs less than rounding does not differ. */
export function compareCosts(a: readonly number[], b: readonly number[]): number {
  for (const [at, cost] of a.entries()) {
    const difference = Math.round(cost * 1e6) - Math.round((b[at] ?? 0) * 1e6)
    if (difference !== 0) return difference
  }
  return 0
}

/**
 * The chance that the session stops right after the last of these keys. Without likelihoods every point weighs one;
 * with some, a step that none is given for is as likely as the likeliest of them.
 */
function chancesOf({ likelihood, keys }: TeachingPlan): (shown: readonly number[]) => number {
  if (likelihood === undefined) return () => 1
  const likeliest = Math.max(0, ...Object.values(likelihood))
  const at = (step: string): number => likelihood[step] ?? likeliest
  return (shown) => {
    const steps = ['open', ...shown.map((key) => keys[key]?.id ?? '')]
    const reached = steps.slice(0, -1).reduce((chance, step) => chance * (1 - at(step)), 1)
    return reached * at(steps.at(-1) ?? 'open')
  }
}

function spoiledIn(car: Car, state: CarState): number {
  return state.taken === 0 ? 0 : car.case.keys.filter((_, key) => isSpoiled(car, state, key)).length
}

/** Identities of the keys that start the car before the work, one bit each. */
function startersOf(car: Car): number {
  return car.lists.set(car.first.list) & car.identitiesOnBench
}
