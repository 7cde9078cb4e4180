import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Rehearsal, rehearse } from './index.ts'
import { bruteForce } from './testing/brute-force.ts'
import { anyPlan, anyUnsettledPlan, key, planWith } from './testing/plans.ts'

/** Without what counts the searcher's own work. */
const answer = ({ explored: _explored, provenBest: _proven, ...rest }: Rehearsal): unknown => rest

describe('against a second reading of the rules by brute force', () => {
  test('every field of random settled plans is the same in best and in given order', () => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom('best' as const, 'given' as const), (plan, order) => {
        const found = rehearse(plan, { order })
        expect(answer(found)).toEqual(bruteForce(plan, order))
        if (order === 'best') expect(found.provenBest).toBe(true)
        else expect(found.provenBest).toBe(bruteForce(plan, 'best').order.join() === found.order.join())
      }),
      { numRuns: 800 },
    )
  })

  test('ENR-12 every field of random plans with unknowns is the worst over all values written out', () => {
    fc.assert(
      fc.property(anyUnsettledPlan, (plan) => {
        const found = rehearse(plan)
        expect(answer(found)).toEqual(bruteForce(plan, 'best'))
        expect(found.provenBest).toBe(true)
      }),
      { numRuns: 250 },
    )
  })

  test('ENR-14 seven keys: leaving out what cannot matter finds the same order as all 5,040', () => {
    const keys = [
      key('A', 'known'),
      key('B', 'known'),
      key('C', 'known', { identity: 'A' }),
      key('D', 'locked-elsewhere'),
      key('N', 'prepared'),
      key('M', 'blank'),
      key('O', 'blank'),
    ]
    const teach = ['N', 'A', 'D', 'M', 'C', 'B', 'O']
    for (const rule of [
      { erases: 'at-open', commits: 'each-key', accepts: ['blank', 'prepared'] },
      { kind: 'append-drop-oldest', capacity: 3, onBreak: 'keep-so-far', mostKeys: 4 },
    ]) {
      const plan = planWith(rule, { keys, teach })
      const found = rehearse(plan)
      expect(answer(found)).toEqual(bruteForce(plan, 'best'))
      expect(found.provenBest).toBe(true)
    }
  })
})
