import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bestOrder } from './best-order.ts'
import { canOpen, carsOf } from './car.ts'
import { type Rehearsal, rehearse, type TeachingPlan } from './index.ts'
import { ordersOf } from './testing/brute-force.ts'
import { anyPlan, key, planWith } from './testing/plans.ts'
import { casesOf } from './unknowns.ts'

const given = (plan: TeachingPlan): Rehearsal => rehearse(plan, { order: 'given' })

describe('leaving out what cannot matter', () => {
  test('ENR-14 merging states and skipping worse beginnings finds the order that looking at every state finds', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const cars = carsOf(casesOf(plan) ?? [])
        if (!cars.every((car) => canOpen(car, car.first.list))) return
        const teach = (plan.teach ?? plan.keys.map((each) => each.id)).map((id) =>
          plan.keys.findIndex((each) => each.id === id),
        )
        const [whole, merged] = [
          bestOrder(cars, teach, { searchedWhole: 6 }),
          bestOrder(cars, teach, { searchedWhole: 0 }),
        ]
        expect([merged.order, merged.proven]).toEqual([whole.order, whole.proven])
        expect(merged.explored).toBeLessThanOrEqual(whole.explored)
      }),
      { numRuns: 1500 },
    )
  })
})

describe('the best order', () => {
  test('ENR-14 a new key shown first would strand nobody but cost a key that started: known keys go first', () => {
    const found = rehearse(planWith({ commits: 'each-key' }, { teach: ['N', 'A'] }))
    expect(found.order).toEqual(['A', 'N'])
  })

  test('ENR-14 stranded points weigh most: with an emptied list the key that can be taken goes first', () => {
    const plan = planWith(
      { erases: 'at-open', commits: 'each-key', accepts: ['prepared'] },
      { teach: ['A', 'C', 'N'] },
    )
    expect(rehearse(plan).order).toEqual(['N', 'A', 'C'])
    expect(given(plan)).toMatchObject({ order: ['A', 'C', 'N'], provenBest: false })
  })

  test('ENR-14 no order of random plans has fewer stranded points, nor as few with fewer lost ones', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const cost = ({ breaks }: Rehearsal, first: readonly string[]): number =>
          breaks.filter((point) => point.stranded).length * 100 +
          breaks.filter((point) => !first.every((id) => point.starts.includes(id))).length
        const starters = plan.keys
          .filter((each) => each.onBench === true && plan.stored.includes(each.identity))
          .map((each) => each.id)
        const best = rehearse(plan)
        const all = ordersOf(best.order).map((teach) =>
          cost(rehearse({ ...plan, teach }, { order: 'given' }), starters),
        )
        expect(cost(best, starters)).toBe(Math.min(...all))
      }),
      { numRuns: 120 },
    )
  })

  test('ENR-14 twelve keys are answered within the search limit, and what is proven says so', () => {
    const keys = Array.from({ length: 12 }, (_, at) => key(`K${at}`, at < 3 ? 'known' : 'blank'))
    const easy = rehearse(
      planWith({ mostKeys: 12, capacity: 12 }, { keys, stored: ['K0', 'K1', 'K2'], teach: undefined }),
    )
    expect(easy.provenBest).toBe(true)
    expect(easy.order).toEqual(keys.map((_, at) => `K${at}`))
    const hard = rehearse(
      planWith(
        { kind: 'append-drop-oldest', capacity: 5, mostKeys: 12, onBreak: 'keep-so-far' },
        { keys, stored: ['K0', 'K1', 'K2', 'X'], teach: undefined },
      ),
    )
    expect(hard.breaks).toHaveLength(13)
    expect(hard.explored).toBeGreaterThan(1000)
  })
})
