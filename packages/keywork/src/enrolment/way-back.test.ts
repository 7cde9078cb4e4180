import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bestOrder } from './best-order.ts'
import { canOpen, carsOf } from './car.ts'
import { type Recovery, rehearseSession, type TeachingPlan } from './index.ts'
import { Ways } from './interruptions.ts'
import { weighedCost } from './order-cost.ts'
import { timesOf } from './session-times.ts'
import { opensNow, ordersOf, play, type World, worldsOf } from './testing/brute-force.ts'
import { anyPlan, key, planWith } from './testing/plans.ts'
import { casesOf } from './unknowns.ts'

const SECONDS = { open: 50, show: 7, close: 11, restore: 300, afterBreak: 40 }
const AWAY = 400

/** Small plans with times. */
const anyTimedPlan: fc.Arbitrary<TeachingPlan> = anyPlan.map((plan) => ({
  ...plan,
  teach: plan.teach === null ? null : [...new Set(plan.teach)].slice(0, 3),
  rule: { ...plan.rule, seconds: SECONDS },
  keys: plan.keys.slice(0, 4).map((key) => ({ ...key, awaySeconds: AWAY })),
}))

interface Spot {
  readonly list: readonly string[]
  readonly known: ReadonlySet<string>
}

/** Every list of different members, the empty one too. */
function sequencesOf(ids: readonly string[]): readonly (readonly string[])[] {
  return [
    [],
    ...ids.flatMap((id) => sequencesOf(ids.filter((each) => each !== id)).map((rest) => [id, ...rest])),
  ]
}

/**
 * The least seconds by looking at everything: any keys fetched first, then up to `actions` of restoring and of whole
 * sessions with any keys in any order, played by the second reading of the rules.
 */
function leastSeconds(
  world: World,
  spot: Spot,
  done: (world: World, list: readonly string[]) => boolean,
  actions: number,
): number {
  const away = world.keys.filter((key) => !key.onBench).map((key) => key.id)
  const sets = away.reduce<readonly (readonly string[])[]>(
    (all, id) => all.concat(all.map((set) => [...set, id])),
    [[]],
  )
  return Math.min(
    ...sets.map((fetched) => {
      const here = {
        ...world,
        keys: world.keys.map((key) => ({ ...key, onBench: key.onBench || fetched.includes(key.id) })),
      }
      return fetched.length * AWAY + from(here, spot, false, actions)
    }),
  )

  function from(here: World, { list, known }: Spot, waited: boolean, left: number): number {
    if (done(here, list)) return 0
    if (left === 0) return Number.POSITIVE_INFINITY
    let least = Number.POSITIVE_INFINITY
    if (here.equipment && here.backup)
      least = SECONDS.restore + from(here, { list: world.stored, known }, waited, left - 1)
    const now: World = {
      ...here,
      stored: [...list],
      keys: here.keys.map((key) => (known.has(key.id) ? { ...key, state: 'known' } : key)),
    }
    if (!opensNow(now, now.stored)) return least
    for (const shown of sequencesOf(now.keys.filter((key) => key.onBench).map((key) => key.id))) {
      const after = play(now, shown, 'close')
      const seconds =
        (waited ? 0 : SECONDS.afterBreak) + SECONDS.open + shown.length * SECONDS.show + SECONDS.close
      if (seconds >= least) continue
      const next = { list: after.list, known: new Set([...known, ...after.known]) }
      least = Math.min(least, seconds + from(here, next, true, left - 1))
    }
    return least
  }
}

describe('the shortest way back', () => {
  test('ENR-23 no way of fetching, restoring and up to two sessions is shorter, for random plans and breaks', () => {
    const told = (way: Recovery | null): number => way?.seconds ?? Number.POSITIVE_INFINITY
    let compared = 0
    fc.assert(
      fc.property(anyTimedPlan, (plan) => {
        const result = rehearseSession(plan)
        const [world] = worldsOf(plan)
        if (world === undefined || !result.opened) return
        const { order } = result
        for (const step of [0, order.length]) {
          const left = play(world, order.slice(0, step), 'break')
          const after = step === 0 ? 'open' : order[step - 1]
          const found = result.interruptions.find(
            (each) => each.after === after && each.cause === 'link-lost',
          )
          if (found === undefined) throw new Error(`nothing is told of a break after ${after}`)
          const starts = (here: World, list: readonly string[], id: string): boolean =>
            here.keys.some((key) => key.id === id && key.onBench && list.includes(key.identity))
          const going = leastSeconds(
            world,
            left,
            (here, list) => here.keys.some((key) => starts(here, list, key.id)),
            2,
          )
          const finished = leastSeconds(
            world,
            left,
            (here, list) =>
              here.keys.some((key) => starts(here, list, key.id)) &&
              order.every((id) => starts(here, list, id)),
            2,
          )
          compared += 2
          // The search may use more than two actions, so it may find a way where these few find none, never a longer one.
          expect(told(found.going)).toBeLessThanOrEqual(going)
          expect(told(found.finished)).toBeLessThanOrEqual(finished)
          const actions = (way: Recovery | null): number =>
            way?.steps.filter((each) => each.do === 'open' || each.do === 'restore').length ?? 0
          if (actions(found.going) <= 2) expect(told(found.going)).toBe(going)
          if (actions(found.finished) <= 2) expect(told(found.finished)).toBe(finished)
        }
      }),
      { numRuns: 200 },
    )
    expect(compared).toBeGreaterThan(100)
  })
})

test('ENR-23 a list that already holds more than its capacity can still come to hold every key that is meant', () => {
  const plan = planWith(
    { kind: 'append-drop-oldest', capacity: 2, commits: 'each-key', erases: 'never', seconds: SECONDS },
    {
      stored: ['A', 'B', 'X'],
      keys: [key('B', 'known'), key('X', 'known'), key('N', 'blank')],
      teach: ['B', 'X', 'N'],
    },
  )
  const broken = rehearseSession(plan).interruptions.find((each) => each.cause === 'link-lost')
  expect(broken?.finished).toMatchObject({ seconds: 40 + 50 + 7 + 11, way: 'reopen', proven: true })
})

describe('the order of an extended plan', () => {
  test('ENR-24 no order of random plans costs less, with and without likelihoods', () => {
    fc.assert(
      fc.property(
        anyTimedPlan,
        fc.option(
          fc.dictionary(
            fc.constantFrom('open', 'A', 'B', 'N'),
            fc.double({ min: 0.01, max: 0.9, noNaN: true }),
            { minKeys: 1 },
          ),
        ),
        (plan, likelihood) => {
          const weighed = { ...plan, ...(likelihood === null ? {} : { likelihood }) }
          const parts = (given: TeachingPlan): readonly number[] => {
            const { cost } = rehearseSession(given, { order: 'given' })
            return [cost.strandedChance, cost.strandedSeconds ?? 1e9, cost.lostChance, cost.spoiledChance]
          }
          const best = rehearseSession(weighed)
          if (!best.opened) return
          const ours = parts({ ...weighed, teach: best.order })
          for (const teach of ordersOf(best.order)) {
            const theirs = parts({ ...weighed, teach })
            const at = ours.findIndex((part, index) => Math.abs(part - (theirs[index] ?? 0)) > 1e-5)
            // A stranded stop without a figure weighs by its chance; it is compared by the part before.
            if (at === 1 && (ours[1] === 1e9 || theirs[1] === 1e9)) continue
            if (at >= 0) expect(ours[at]).toBeLessThan(theirs[at] ?? 0)
          }
        },
      ),
      { numRuns: 120 },
    )
  })

  test('ENR-24 merging states and skipping worse beginnings finds the order that looking at every state finds', () => {
    fc.assert(
      fc.property(anyTimedPlan, (plan) => {
        const cars = carsOf(casesOf(plan) ?? [])
        const [car] = cars
        if (car === undefined || !canOpen(car, car.first.list)) return
        const teach = (plan.teach ?? plan.keys.map((each) => each.id)).map((id) =>
          plan.keys.findIndex((key) => key.id === id),
        )
        const times = timesOf(plan)
        const cost = weighedCost(plan, cars, new Ways(teach, times), times)
        const [whole, merged] = [
          bestOrder(cars, teach, { cost, searchedWhole: 6 }),
          bestOrder(cars, teach, { cost, searchedWhole: 0 }),
        ]
        expect(merged.order).toEqual(whole.order)
      }),
      { numRuns: 300 },
    )
  })
})
