import { describe, expect, test } from 'vitest'
import {
  type Interruption,
  isExtended,
  parsePlan,
  parseRule,
  RULE_ARCHETYPES,
  rehearse,
  rehearseSession,
  type SessionRehearsal,
} from './index.ts'
import { EXAMPLE, key, planWith } from './testing/plans.ts'

const SECONDS = { open: 60, show: 20, close: 10, restore: 600 }
const at = (result: SessionRehearsal, after: string, cause: string, id?: string): Interruption | undefined =>
  result.interruptions.find(
    (each) => each.after === after && each.cause === cause && (id === undefined || each.key === id),
  )

describe('the base answer', () => {
  test('ENR-14 a plan of the base model has the same answer in the full rehearsal', () => {
    for (const commits of ['each-key', 'at-close']) {
      const plan = planWith({ commits, erases: 'at-open' }, { teach: ['N', 'A'] })
      expect(isExtended(plan)).toBe(false)
      expect(rehearseSession(plan)).toMatchObject(rehearse(plan))
    }
  })

  test('ENR-12 losing the list is a value that fits only in an extended plan', () => {
    const base = planWith({ onBreak: 'unknown' })
    expect(rehearse(base).breaks[0]?.stranded).toBe(false)
    const extended = planWith({ onBreak: 'unknown', idleSeconds: 'unknown' })
    expect(rehearse(extended).breaks[0]?.stranded).toBe(true)
  })
})

describe('rules beyond the base model', () => {
  test('ENR-15 a key goes to its slot and overwrites what is there, or is refused', () => {
    const slots = (slotTaken: string): SessionRehearsal =>
      rehearseSession(
        planWith(
          { kind: 'numbered-slots', capacity: 4, commits: 'each-key', erases: 'never', slotTaken },
          {
            stored: ['A', null, 'X'],
            keys: [key('A', 'known'), key('N', 'blank', { slot: 3 })],
            teach: ['N'],
          },
        ),
      )
    expect(slots('overwritten').end).toMatchObject({
      slots: ['A', null, 'N'],
      dropped: ['X'],
      accepted: ['A', 'N'],
    })
    expect(slots('refused').end).toMatchObject({ slots: ['A', null, 'X'], dropped: [], starts: ['A'] })
  })

  test('ENR-17 a wrong code costs the waiting penalty before the session can be opened again', () => {
    const gate = { triesBeforeWait: 3, waitSeconds: 3600, ignitionOff: 'pauses', supplyLost: 'restarts' }
    const gated = (wrongTries: number): Interruption | undefined =>
      at(
        rehearseSession(
          planWith(
            { gate, seconds: SECONDS },
            { means: { equipment: true, backup: false, code: true, wrongTries } },
          ),
        ),
        'open',
        'wrong-code',
      )
    expect(gated(0)?.finished?.seconds).toBe(60 + 40 + 10)
    expect(gated(2)?.finished).toMatchObject({ seconds: 3600 + 60 + 40 + 10 })
    expect(gated(2)?.finished?.steps[0]).toEqual({ do: 'wait-ignition-on', seconds: 3600 })
    expect(rehearse(planWith({ gate })).opened).toBe(false)
  })

  test('ENR-18 each cause of a break can leave something else', () => {
    const result = rehearseSession(
      planWith({ onBreakBy: { 'time-out': 'keep-so-far', 'supply-lost': 'list-lost' } }),
    )
    expect(at(result, 'A', 'link-lost')?.accepted).toEqual(['A', 'B', 'X'])
    expect(at(result, 'A', 'time-out')?.accepted).toEqual(['A'])
    expect(at(result, 'A', 'supply-lost')).toMatchObject({ accepted: [], stranded: true })
  })

  test('ENR-19 a session that was told two keys closes itself with the second, and fails with one', () => {
    const told = (teach: readonly string[]): SessionRehearsal =>
      rehearseSession(planWith({ declaredCount: true }, { declared: 2, teach }))
    expect(told(['A', 'N']).breaks.at(-1)?.accepted).toEqual(['A', 'N'])
    expect(told(['A']).end.accepted).toEqual(['A', 'B', 'X'])
  })

  test('ENR-20 a blank taken by a session that reverts is spoiled, unless it is spent only once stored', () => {
    const spoiled = (spends: string): readonly string[] | undefined =>
      at(rehearseSession(planWith({ spends })), 'N', 'supply-lost')?.spoiled
    expect(spoiled('when-taken')).toEqual(['N'])
    expect(spoiled('when-stored')).toEqual([])
  })

  test('ENR-22 refused, forgotten, repeated and foreign keys let the session come to another end', () => {
    const result = rehearseSession(planWith({ sameKeyTwice: 'counts', mostKeys: 2, seconds: SECONDS }))
    expect(at(result, 'open', 'key-refused', 'A')?.accepted).toEqual(['N'])
    expect(at(result, 'open', 'key-forgotten', 'A')?.starts).toEqual(['N'])
    expect(at(result, 'A', 'repeated-key', 'A')).toMatchObject({ accepted: ['A', 'A'], dropped: ['B', 'X'] })
    expect(at(result, 'A', 'flat-cell', 'N')?.finished?.steps.map((step) => step.do)).toContain('change-cell')
    expect(at(result, 'A', 'wrong-key')).toMatchObject({ sessionOver: false, accepted: ['A', 'N'] })
    const ends = rehearseSession(planWith({ wrongKey: 'ends-session' }))
    expect(at(ends, 'A', 'wrong-key')).toMatchObject({ sessionOver: true, accepted: ['A', 'B', 'X'] })
  })
})

describe('order, time and conditions', () => {
  test('ENR-24 of orders that strand alike the one that spoils fewer blanks wins, and the reason says so', () => {
    const result = rehearseSession(planWith({ seconds: SECONDS }, { stored: [], teach: ['N', 'A'] }))
    expect(result.order).toEqual(['A', 'N'])
    expect(result.reasons).toEqual([{ code: 'other-spoils-more', other: ['N', 'A'], more: 1, at: ['N'] }])
  })

  test('ENR-24 a likely break weighs more than two unlikely ones', () => {
    const rule = { commits: 'each-key', erases: 'at-open', accepts: ['prepared'], seconds: SECONDS }
    const keys = [key('A', 'prepared'), key('N', 'locked-elsewhere')]
    const plan = planWith(rule, {
      keys,
      stored: ['A'],
      teach: ['N', 'A'],
      likelihood: { open: 0.1, A: 0.1, N: 0.5 },
    })
    const result = rehearseSession(plan)
    expect(result.order).toEqual(['A', 'N'])
    expect(result.cost.strandedChance).toBeCloseTo(0.1, 9)
  })

  test('ENR-21 the timeline adds up and names steps that take longer than the car waits', () => {
    const result = rehearseSession(planWith({ seconds: SECONDS, idleSeconds: 15, amperes: { show: 9 } }))
    expect(result.seconds).toBe(60 + 40 + 10)
    expect(result.timeline[2]).toEqual({
      ...{ step: 'N', part: 'show', startSeconds: 80, seconds: 20, amperes: 9, overIdle: true },
    })
    expect(result.unmet).toContain('idle-time')
  })

  test('ENR-25 what is not said is not settled', () => {
    const guards = { backupProven: true, consent: true, supply: true, allKeysHere: true }
    expect(rehearseSession(planWith({}, { guards })).unmet).toEqual([])
    expect(rehearseSession(planWith({}, { guards: { consent: false } })).unmet).toEqual([
      'consent',
      'supply',
      'all-keys-here',
    ])
  })
})

describe('what is shipped and read', () => {
  test.each(RULE_ARCHETYPES.map((each) => [each.code, each] as const))(
    'the rule %s says where it comes from and is read back as it is',
    (_code, { rule, source }) => {
      expect(source).not.toBe('')
      expect(parseRule(JSON.parse(JSON.stringify(rule)))).toEqual({ rule, ignored: [] })
      const parsed = parsePlan({ ...EXAMPLE, rule, means: { equipment: true, backup: true, code: true } })
      if (!('plan' in parsed)) throw new Error(`${parsed.path}: ${parsed.what}`)
      expect(rehearseSession(parsed.plan).breaks.length).toBe(rehearse(parsed.plan).opened ? 3 : 0)
    },
  )

  test.each([
    [{ ...EXAMPLE, rule: { ...EXAMPLE.rule, gate: { triesBeforeWait: 0 } } }, 'rule.gate.triesBeforeWait'],
    [{ ...EXAMPLE, rule: { ...EXAMPLE.rule, seconds: { open: -1 } } }, 'rule.seconds.open'],
    [
      { ...EXAMPLE, rule: { ...EXAMPLE.rule, onBreakBy: { 'time-out': 'maybe' } } },
      'rule.onBreakBy.time-out',
    ],
    [{ ...EXAMPLE, stored: ['A', null] }, 'stored[1]'],
    [{ ...EXAMPLE, likelihood: { A: 2 } }, 'likelihood.A'],
    [{ ...EXAMPLE, likelihood: { Q: 0.1 } }, 'likelihood.Q'],
    [{ ...EXAMPLE, keys: [{ ...EXAMPLE.keys[0], slot: 0 }] }, 'keys[0].slot'],
  ])('what is wrong is named by its path', (json, path) => {
    expect(parsePlan(json)).toMatchObject({ path })
  })
})
