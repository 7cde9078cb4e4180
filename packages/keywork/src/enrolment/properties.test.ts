import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { possibleEnds, type Rehearsal, rehearse, type SessionOutcome, type TeachingPlan } from './index.ts'
import { ordersOf, worldsOf } from './testing/brute-force.ts'
import { anyPlan, EXAMPLE, key, PARAMETERS, planWith } from './testing/plans.ts'

const WAYS = ['not-needed', 'reopen', 'restore', 'none']
const given = (plan: TeachingPlan): Rehearsal => rehearse(plan, { order: 'given' })

describe('every possible end', () => {
  test('ENR-09 ENR-10 is reached by breaking or closing some beginning of some order, and each such end is there', () => {
    const name = (by: string, { accepted, starts, dropped, stranded }: SessionOutcome): string =>
      JSON.stringify({ by, accepted, starts, dropped, stranded })
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const found = rehearse(plan)
        const reached = new Set<string>()
        for (const order of found.opened ? ordersOf(found.order) : []) {
          for (const shown of [...order.keys(), order.length]) {
            const beginning = given({ ...plan, teach: order.slice(0, shown) })
            reached.add(name('break', beginning.breaks.at(-1) as SessionOutcome))
            reached.add(name('close', beginning.end))
          }
        }
        const possible = new Set(possibleEnds(plan).map((end) => name(end.by, end)))
        expect([...possible].sort()).toEqual([...reached].sort())
      }),
      { numRuns: 80 },
    )
  })
})

describe('properties over random plans', () => {
  test('ENR-10 dropped, starts and stranded follow from accepted at every point', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const found = given(plan)
        for (const point of [...found.breaks, found.end]) {
          const starting = plan.keys.filter(
            (each) => each.onBench === true && point.accepted.includes(each.identity),
          )
          expect(point.starts).toEqual(starting.map((each) => each.id))
          expect(point.dropped).toEqual(
            [...new Set(plan.stored)].filter((each) => !point.accepted.includes(each)),
          )
          expect(point.stranded).toBe(point.starts.length === 0)
          const all = given(plan).order.every((id) => point.starts.includes(id))
          expect(point.wayBack === 'not-needed').toBe(!point.stranded && all)
        }
      }),
    )
  })

  test('ENR-01 opened says what opensWith asks, and one break follows opening and each key shown', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const found = given(plan)
        const accepted = new Set(
          plan.keys
            .filter((each) => each.onBench && plan.stored.includes(each.identity))
            .map((each) => each.identity),
        )
        const opens =
          plan.rule.opensWith === 'equipment'
            ? plan.means.equipment
            : accepted.size >= (plan.rule.opensWith === 'accepted-key' ? 1 : 2)
        expect(found.opened).toBe(opens)
        expect(found.breaks.map((point) => point.after)).toEqual(opens ? ['open', ...found.order] : [])
        if (!opens) expect(found.end.accepted).toEqual(plan.stored)
      }),
    )
  })

  test('ENR-06 ENR-08 no list grows beyond its capacity, unless it was longer before', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const found = given(plan)
        const most = Math.max(Number(plan.rule.capacity), plan.stored.length)
        for (const point of [...found.breaks, found.end])
          expect(point.accepted.length).toBeLessThanOrEqual(most)
      }),
    )
  })

  test('ENR-06 append without erasing drops nobody', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const found = given({ ...plan, rule: { ...plan.rule, kind: 'append', erases: 'never' } })
        for (const point of [...found.breaks, found.end]) expect(point.dropped).toEqual([])
      }),
    )
  })

  test('ENR-07 ENR-09 at close with revert every break leaves what opening left', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const found = given({ ...plan, rule: { ...plan.rule, commits: 'at-close', onBreak: 'revert' } })
        for (const point of found.breaks) expect(point.accepted).toEqual(found.breaks[0]?.accepted)
      }),
    )
  })

  test('ENR-09 what keeps so far at close does at each break what closing there would do', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const rule = { ...plan.rule, commits: 'at-close', onBreak: 'keep-so-far', leastKeys: 1 } as const
        const found = given({ ...plan, rule })
        for (const [at, point] of found.breaks.entries()) {
          const shorter = given({ ...plan, rule, teach: found.order.slice(0, at) })
          expect(point.accepted).toEqual(shorter.end.accepted)
        }
      }),
    )
  })

  test('ENR-03 ENR-04 a key that is refused leaves the next break as it was', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const found = given({ ...plan, rule: { ...plan.rule, sameKeyTwice: 'refused' } })
        const identityOf = (id: string): string | undefined =>
          plan.keys.find((each) => each.id === id)?.identity
        for (const [at, id] of found.order.entries()) {
          const here = plan.keys.find((each) => each.id === id)
          const again = found.order.slice(0, at).includes(id) && here?.identity === identityOf(id)
          if (here?.onBench !== false && here?.state !== 'locked-elsewhere' && !again) continue
          const [before, after] = [found.breaks[at], found.breaks[at + 1]]
          if (before !== undefined && after !== undefined)
            expect({ ...after, after: '' }).toEqual({ ...before, after: '' })
        }
      }),
    )
  })

  test('ENR-12 an unknown answer is no better than the answer for any value', () => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom(...PARAMETERS), (plan, name) => {
        const unsettled = { ...plan, rule: { ...plan.rule, [name]: 'unknown' } } as TeachingPlan
        const worst = rehearse(unsettled)
        for (const world of worldsOf(unsettled)) {
          const settled = given({
            ...plan,
            teach: worst.order,
            rule: { ...plan.rule, ...world.rule } as TeachingPlan['rule'],
          })
          if (!worst.opened) continue
          for (const [at, point] of [...worst.breaks, worst.end].entries()) {
            const one = [...settled.breaks, settled.end][at] as Rehearsal['end']
            expect(point.stranded || !one.stranded).toBe(true)
            expect(one.dropped.filter((identity) => !point.dropped.includes(identity))).toEqual([])
            expect(WAYS.indexOf(point.wayBack)).toBeGreaterThanOrEqual(WAYS.indexOf(one.wayBack))
            expect(point.starts.filter((id) => !one.starts.includes(id))).toEqual([])
          }
        }
      }),
      { numRuns: 60 },
    )
  })

  test('ENR-12 a least number that is not known may be more than all keys give', () => {
    const keys = [key('A', 'known'), key('N', 'prepared')]
    const found = given(planWith({ leastKeys: 'unknown' }, { keys }))
    expect(found.end).toMatchObject({ accepted: ['A'], dropped: ['B', 'X'], wayBack: 'restore' })
    const many = given(planWith({ mostKeys: 'unknown' }, { keys }))
    expect(many.end).toMatchObject({ accepted: ['A'], dropped: ['B', 'X'], wayBack: 'reopen' })
  })

  test('ENR-12 a rule of which nothing is known is still answered', () => {
    const unknown = Object.fromEntries(PARAMETERS.map((name) => [name, 'unknown']))
    const found = rehearse(
      planWith(unknown, { keys: [...EXAMPLE.keys, key('B', 'known')], teach: undefined }),
    )
    expect(found.opened).toBe(true)
    expect(found.end).toMatchObject({ stranded: true, dropped: ['A', 'B', 'X'], starts: [] })
  })
})
