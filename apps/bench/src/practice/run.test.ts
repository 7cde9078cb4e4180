import { exercises } from '@shearline/practice-car'
import { describe, expect, it } from 'vitest'
import { CarSaysOtherwise, PracticeRun } from './run.ts'

const run = (id: string) => {
  const exercise = exercises().find((each) => each.id === id)
  if (exercise === undefined) throw new Error(id)
  return new PracticeRun(exercise, 'UTC')
}
const taught = (key: string) => ({ kind: 'key-taught' as const, body: { key } })
const opened = { kind: 'session-opened' as const, body: { rehearsed: false } }

describe('an exercise in the bench', () => {
  it.each(exercises().map((each) => [each.id] as const))(
    '%s begins with every key, the count and the rule on its bench',
    (id) => {
      const { state, exercise } = run(id)
      expect(state.unreadable).toEqual([])
      expect(state.keys.map((key) => key.id)).toEqual(exercise.car.keys.map((key) => key.label))
      expect(state.tally.storedBefore).toBe(exercise.car.stored.length)
      expect(state.teaching.rule?.kind).toBe(exercise.car.rule.kind)
    },
  )

  it('notes nothing that the car did not do', () => {
    const practice = run('one-more-key')
    expect(() => practice.record([taught('N')])).toThrow(CarSaysOtherwise)
    expect(practice.state.teaching.taught).toEqual([])
    practice.record([opened, taught('N')])
    expect(practice.state.teaching.taught).toEqual(['N'])
    expect(practice.happened.map(({ outcome }) => outcome.code)).toEqual([
      'show-no-session',
      'session-opened',
      'show-taken',
    ])
  })

  it('lets the session die, and tells it', () => {
    const practice = run('dies-after-second-key')
    practice.record([opened, taught('A'), taught('B')])
    expect(practice.happened.at(-1)?.outcome.code).toBe('incident-supply-lost')
    expect(() => practice.record([taught('N')])).toThrow(CarSaysOtherwise)
    practice.record([{ kind: 'broke-off', body: { why: 'supply', after: 'B', step: 'B' } }])
    expect(practice.state.teaching.breakOff?.why).toBe('supply')
  })

  it('moves its clock on by what was waited, and brings a fetched key to the bench', () => {
    const practice = run('forgotten-at-home')
    practice.act({ do: 'wait', minutes: 20 })
    expect(practice.aheadMs).toBe(20 * 60_000)
    practice.act({ do: 'fetch', key: 'B' })
    expect(practice.state.keys.find((key) => key.id === 'B')?.onBench).toBe(true)
  })
})
