import { describe, expect, test } from 'vitest'
import { type Rehearsal, rehearse, type TeachingPlan } from './index.ts'
import { EXAMPLE, key, planWith, readPlan } from './testing/plans.ts'

const given = (plan: TeachingPlan): Rehearsal => rehearse(plan, { order: 'given' })
const acceptedAfter = (plan: TeachingPlan): readonly string[] =>
  given(plan).breaks.map((point) => `${point.after}: ${point.accepted.join(' ')}`)

describe('the example of the model text', () => {
  test('its output is the printed one, in the printed field order', () => {
    const found = rehearse(readPlan(EXAMPLE))
    const before = {
      accepted: ['A', 'B', 'X'],
      starts: ['A', 'C'],
      dropped: [],
      stranded: false,
      wayBack: 'reopen',
    }
    expect(JSON.stringify(found)).toBe(
      JSON.stringify({
        order: ['A', 'N'],
        opened: true,
        provenBest: true,
        explored: 9,
        breaks: [
          { after: 'open', ...before },
          { after: 'A', ...before },
          { after: 'N', ...before },
        ],
        end: {
          accepted: ['A', 'N'],
          starts: ['A', 'N', 'C'],
          dropped: ['B', 'X'],
          stranded: false,
          wayBack: 'not-needed',
        },
      }),
    )
  })
})

describe('opening', () => {
  test('ENR-01 a session that cannot be opened has no breaks and ends as it began', () => {
    const closed = rehearse(planWith({}, { means: { equipment: false, backup: true } }))
    expect(closed).toMatchObject({
      opened: false,
      provenBest: true,
      breaks: [],
      end: { accepted: ['A', 'B', 'X'] },
    })
    expect(closed.end.wayBack).toBe('none')
  })

  test('ENR-01 two accepted keys are two identities on the bench: a clone does not count', () => {
    const self = { opensWith: 'two-accepted-keys', kind: 'append' }
    expect(rehearse(planWith(self)).opened).toBe(false)
    const second = [...EXAMPLE.keys, key('B', 'known')]
    expect(rehearse(planWith(self, { keys: second })).opened).toBe(true)
    expect(rehearse(planWith({ opensWith: 'accepted-key' })).opened).toBe(true)
    expect(rehearse(planWith({ opensWith: 'accepted-key' }, { stored: ['X'] })).opened).toBe(false)
  })

  test('ENR-02 erasing at opening empties the list at once, and a revert does not bring it back', () => {
    const plan = planWith({ erases: 'at-open' })
    expect(acceptedAfter(plan)).toEqual(['open: ', 'A: ', 'N: '])
    expect(given(plan).breaks.every((point) => point.stranded)).toBe(true)
  })
})

describe('taking keys', () => {
  test('ENR-03 a key in a state that is not accepted, elsewhere or locked to another car changes nothing', () => {
    const keys = [
      key('A', 'known'),
      key('N', 'locked-elsewhere'),
      { id: 'B', state: 'known', onBench: false },
      key('M', 'blank'),
    ]
    const plan = planWith(
      { commits: 'each-key', accepts: ['known', 'locked-elsewhere'] },
      { keys, teach: ['N', 'B', 'M', 'A'] },
    )
    expect(acceptedAfter(plan)).toEqual(['open: A B X', 'N: A B X', 'B: A B X', 'M: A B X', 'A: A'])
  })

  test('ENR-04 the same identity twice is refused, ignored or takes a second entry', () => {
    const shown = { teach: ['A', 'C', 'N'] }
    for (const sameKeyTwice of ['refused', 'ignored']) {
      expect(acceptedAfter(planWith({ commits: 'each-key', sameKeyTwice }, shown)).at(-1)).toBe('N: A N')
    }
    expect(acceptedAfter(planWith({ commits: 'each-key', sameKeyTwice: 'counts' }, shown)).at(-1)).toBe(
      'N: A A N',
    )
    // An entry is not a key: both count towards the least number.
    const two = { leastKeys: 2, sameKeyTwice: 'counts' }
    expect(given(planWith(two, { teach: ['A', 'C'] })).end.accepted).toEqual(['A', 'A'])
    expect(given(planWith({ ...two, sameKeyTwice: 'ignored' }, { teach: ['A', 'C'] })).end.accepted).toEqual([
      'A',
      'B',
      'X',
    ])
  })

  test('ENR-05 committing each key of a replace-all drops all others with the first', () => {
    const plan = planWith({ commits: 'each-key' })
    expect(acceptedAfter(plan)).toEqual(['open: A B X', 'A: A', 'N: A N'])
    expect(given(plan).breaks[1]).toMatchObject({ dropped: ['B', 'X'], starts: ['A', 'C'] })
  })

  test('ENR-06 a full list refuses under append and drops its oldest under append-drop-oldest', () => {
    const each = { commits: 'each-key', capacity: 3 }
    expect(acceptedAfter(planWith({ ...each, kind: 'append' })).at(-1)).toBe('N: A B X')
    const dropping = planWith({ ...each, kind: 'append-drop-oldest' })
    expect(acceptedAfter(dropping)).toEqual(['open: A B X', 'A: A B X', 'N: B X N'])
    expect(given(dropping).end).toMatchObject({ dropped: ['A'], starts: ['N'], wayBack: 'reopen' })
    expect(acceptedAfter(planWith({ ...each, capacity: 4, kind: 'append' })).at(-1)).toBe('N: A B X N')
  })

  test('ENR-06 a key refused by a full list is not taken: it stays what it was', () => {
    const rule = { kind: 'append', capacity: 3, commits: 'each-key', accepts: ['prepared'] }
    // Taken it would be known, and a session that accepts only prepared keys could not be opened for it again.
    expect(given(planWith(rule)).breaks.at(-1)?.wayBack).toBe('reopen')
    expect(given(planWith({ ...rule, capacity: 4 }, { stored: ['X'] })).breaks.at(-1)?.wayBack).toBe(
      'restore',
    )
  })
})

describe('committing', () => {
  test('ENR-07 committing at close leaves the list alone until then', () => {
    for (const kind of ['replace-all', 'append', 'append-drop-oldest']) {
      expect(acceptedAfter(planWith({ kind }))).toEqual(['open: A B X', 'A: A B X', 'N: A B X'])
    }
  })

  test('ENR-07 a key absent from a replace-all session no longer starts the car (common practice, no source)', () => {
    const keys = [key('A', 'known'), key('B', 'known'), key('N', 'prepared')]
    const end = given(planWith({}, { keys, teach: ['A', 'N'] })).end
    expect(end).toMatchObject({ starts: ['A', 'N'], dropped: ['B', 'X'] })
    // And it can be taught later, in a new session (common practice, no source).
    const later = given(planWith({}, { stored: ['A', 'N'], keys, teach: ['A', 'N', 'B'] })).end
    expect(later).toMatchObject({ starts: ['A', 'B', 'N'], wayBack: 'not-needed' })
  })

  test('ENR-08 closing with too few entries is a break', () => {
    const few = given(planWith({ leastKeys: 3 }))
    expect(few.end).toEqual(
      (({ after: _after, ...outcome }) => outcome)(few.breaks.at(-1) as (typeof few.breaks)[number]),
    )
    expect(given(planWith({ leastKeys: 3, onBreak: 'keep-so-far' })).end.accepted).toEqual(['A', 'N'])
    expect(given(planWith({ leastKeys: 2 })).end.accepted).toEqual(['A', 'N'])
  })

  test('ENR-08 a session takes no more than its most keys, a replace-all no more than the list holds', () => {
    const keys = [...EXAMPLE.keys, key('M', 'blank')]
    const plan = (rule: object): readonly string[] =>
      given(planWith(rule as never, { keys, teach: ['A', 'N', 'M'] })).end.accepted
    expect(plan({ mostKeys: 2 })).toEqual(['A', 'N'])
    expect(plan({ capacity: 2 })).toEqual(['A', 'N'])
    expect(plan({ kind: 'append', capacity: 4 })).toEqual(['A', 'B', 'X', 'N'])
    expect(plan({ kind: 'append-drop-oldest', capacity: 4 })).toEqual(['B', 'X', 'N', 'M'])
  })

  test('ENR-08 closing does not commit again what was committed key by key', () => {
    const keys = [key('A', 'known'), key('N', 'prepared')]
    const plan = planWith(
      { kind: 'append-drop-oldest', commits: 'each-key', capacity: 2 },
      { stored: ['A', 'X'], keys },
    )
    expect(given(plan).breaks.at(-1)?.accepted).toEqual(['X', 'N'])
    expect(given(plan).end.accepted).toEqual(['X', 'N'])
  })

  test('ENR-09 a break reverts or keeps what was taught so far', () => {
    expect(acceptedAfter(planWith({ onBreak: 'keep-so-far' }))).toEqual(['open: A B X', 'A: A', 'N: A N'])
    expect(acceptedAfter(planWith({ onBreak: 'keep-so-far', erases: 'at-open' }))).toEqual([
      'open: ',
      'A: A',
      'N: A N',
    ])
    const full = { kind: 'append', capacity: 3, onBreak: 'keep-so-far' }
    expect(acceptedAfter(planWith(full)).at(-1)).toBe('N: A B X')
  })
})

describe('what is left', () => {
  test('ENR-10 a car whose only starting keys are at home is stranded', () => {
    const keys = [{ ...key('A', 'known'), onBench: false }, key('N', 'blank')]
    expect(given(planWith({}, { keys, teach: ['N'] })).breaks[0]).toMatchObject({
      starts: [],
      stranded: true,
    })
    expect(given(planWith({}, { keys, teach: ['N'] })).end).toMatchObject({
      starts: ['N'],
      dropped: ['A', 'B', 'X'],
    })
  })

  test('ENR-11 reopening wants what opens the session and enough keys that can be taken', () => {
    const way = (rule: object, whole: object = {}): string | undefined =>
      given(planWith(rule as never, whole as never)).breaks[0]?.wayBack
    expect(way({})).toBe('reopen')
    expect(way({ leastKeys: 2 })).toBe('reopen')
    expect(way({ leastKeys: 3 })).toBe('restore')
    // Three keys, two identities.
    expect(way({ leastKeys: 3, sameKeyTwice: 'counts' })).toBe('reopen')
    expect(way({ leastKeys: 3 }, { means: { equipment: true, backup: false } })).toBe('none')
    expect(way({ erases: 'at-open', opensWith: 'accepted-key' })).toBe('restore')
    expect(
      way({ erases: 'at-open', opensWith: 'accepted-key' }, { means: { equipment: false, backup: true } }),
    ).toBe('none')
  })

  test('ENR-11 nothing is needed only when every key meant to be taught starts the car', () => {
    expect(given(planWith({}, { teach: ['A', 'C'] })).breaks[0]?.wayBack).toBe('not-needed')
    expect(given(planWith({}, { teach: ['A', 'N'] })).breaks[0]?.wayBack).toBe('reopen')
  })

  test('ENR-13 a prepared key taken by a session that reverts is spent', () => {
    const rule = { accepts: ['prepared'], kind: 'append', leastKeys: 1 }
    expect(given(planWith(rule)).breaks.map((point) => point.wayBack)).toEqual([
      'reopen',
      'reopen',
      'restore',
    ])
    // Where known keys are accepted it can be taken again by the same car.
    expect(given(planWith({ ...rule, accepts: ['prepared', 'known'] })).breaks.at(-1)?.wayBack).toBe('reopen')
    // Known after the first time, it is no longer what this session accepts.
    const twice = planWith({ ...rule, sameKeyTwice: 'counts', leastKeys: 2 }, { teach: ['N', 'N'] })
    expect(given(twice).end.accepted).toEqual(['A', 'B', 'X'])
  })
})
