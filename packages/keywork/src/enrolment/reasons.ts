/** @module Why the order is as it is: what other orders would cost more (ENR-26). */

import { open, show } from './car.ts'
import type { Walk } from './interruptions.ts'
import { compareCosts, type PointCost } from './order-cost.ts'
import { startsCar } from './outcome.ts'
import { NO_FIGURE } from './session-times.ts'
import type { OrderCost, OrderReason } from './session-types.ts'

/** What an order costs at each of its break points. */
function pointsOf({ cars, order }: Walk, cost: PointCost): readonly (readonly number[])[] {
  let states = cars.map((car) => open(car, car.first))
  const points = [cost(states, [])]
  for (const [at, key] of order.entries()) {
    const before = states
    states = cars.map((car, index) => show(car, before[index] ?? car.first, key))
    points.push(cost(states, order.slice(0, at + 1)))
  }
  return points
}

function sumOf(points: readonly (readonly number[])[]): readonly number[] {
  return [0, 1, 2, 3].map((part) => points.reduce((sum, point) => sum + (point[part] ?? 0), 0))
}

/** The costs of the order that was walked. Seconds are null when a stranded stop has no way back with a figure. */
export function costOf(walk: Walk, cost: PointCost): OrderCost {
  const points = walk.states.length === 0 ? [] : pointsOf(walk, cost)
  const [strandedChance = 0, strandedSeconds = 0, lostChance = 0, spoiledChance = 0] = sumOf(points)
  const figure = points.some((point) => (point[0] ?? 0) > 0 && (point[1] ?? 0) >= NO_FIGURE * (point[0] ?? 0))
    ? null
    : strandedSeconds
  return { strandedChance, strandedSeconds: figure, lostChance, spoiledChance }
}

const CODES = ['other-strands-more', 'other-strands-longer', 'other-loses-more', 'other-spoils-more'] as const
/** In a plan of the base model ENR-14 looks at stranded points and lost keys only. */
const PLAIN_PARTS = [0, 2]
const ALL_PARTS = [0, 1, 2, 3]

/**
 * Compares the order with the given one and with each that shows another key first. One reason for each code and
 * first key, the given order before the others.
 */
export function reasonsFor(
  walk: Walk,
  given: readonly number[],
  cost: PointCost,
  extended: boolean,
): readonly OrderReason[] {
  const { order } = walk
  if (order.length < 2) return [{ code: 'only-order', other: [], more: 0, at: [] }]
  const others = [given, ...order.slice(1).map((first) => [first, ...order.filter((key) => key !== first)])]
  const different = new Map(others.map((other) => [other.join(), other]))
  different.delete(order.join())
  const ours = pointsOf(walk, cost)
  return [...different.values()].map((other) => reason(walk, ours, other, cost, extended))
}

function reason(
  walk: Walk,
  ours: readonly (readonly number[])[],
  other: readonly number[],
  cost: PointCost,
  extended: boolean,
): OrderReason {
  const name = (key: number): string => walk.plan.keys[key]?.id ?? ''
  const theirs = pointsOf({ ...walk, order: other }, cost)
  const [sum, otherSum] = [sumOf(ours), sumOf(theirs)]
  const parts = extended ? ALL_PARTS : PLAIN_PARTS
  const part = parts.find((each) => compareCosts([otherSum[each] ?? 0], [sum[each] ?? 0]) !== 0)
  if (part === undefined) {
    const starts = (key: number): boolean => walk.cars.every((car) => startsCar(car, car.first, key))
    const differs = other.findIndex((key, at) => starts(key) !== starts(walk.order[at] ?? -1))
    const code = differs >= 0 ? 'other-shows-starting-keys-later' : 'other-leaves-given-order'
    return { code, other: other.map(name), more: 0, at: differs >= 0 ? [name(other[differs] ?? -1)] : [] }
  }
  const least = sum[part] ?? 0
  return {
    code: CODES[part] ?? 'other-strands-more',
    other: other.map(name),
    more: (otherSum[part] ?? 0) - least,
    at: theirs.flatMap((point, at) => {
      const worse = (point[part] ?? 0) > (ours[at]?.[part] ?? 0)
      return worse ? [at === 0 ? 'open' : name(other[at - 1] ?? -1)] : []
    }),
  }
}
