import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { identityOf, reconcile, type TallyInput, type TallyKey } from './index.ts'

const key = (id: string, more: Partial<TallyKey> = {}): TallyKey => ({
  id,
  origin: 'existing',
  onBench: true,
  cloneOf: null,
  startedBefore: true,
  startsAfter: null,
  ...more,
})
const input = (more: Partial<TallyInput>): TallyInput => ({
  saidToExist: null,
  storedBefore: null,
  storedAfter: null,
  keys: [],
  replacesAll: true,
  reasons: {},
  ...more,
})
const statementCodes = (given: Partial<TallyInput>): readonly string[] =>
  reconcile(input(given)).statements.map((statement) => statement.code)
const differenceCodes = (given: Partial<TallyInput>): readonly string[] =>
  reconcile(input(given)).differences.map((difference) => difference.code)

/** The demo job: five entries stored, two keys on the bench, two new ones wanted, a clone that counts once. */
const demoKeys: readonly TallyKey[] = [
  key('A'),
  key('B', { startedBefore: null, note: 'flat cell' }),
  key('N1', { origin: 'new', startedBefore: null }),
  key('N2', { origin: 'new', startedBefore: null, cloneOf: 'A' }),
]

describe('the numbers', () => {
  test('TAL-01 new keys and keys elsewhere are not on the bench', () => {
    const tally = reconcile(input({ keys: [...demoKeys, key('C', { onBench: false })] }))
    expect([tally.onBench, tally.newKeys]).toEqual([2, 2])
    expect(
      reconcile(input({ saidToExist: -1, storedBefore: 1.5, storedAfter: Number.NaN })).missing,
    ).toHaveLength(3)
  })

  test('TAL-02 a clone counts once, through clones of clones and circles', () => {
    const keys = [key('A'), key('B', { cloneOf: 'A' }), key('C', { cloneOf: 'B' })]
    expect(keys.map(({ id }) => identityOf(id, keys))).toEqual(['A', 'A', 'A'])
    expect(reconcile(input({ keys, storedBefore: 3 })).unaccounted).toBe(2)
    const circle = [key('A', { cloneOf: 'B' }), key('B', { cloneOf: 'A' }), key('C', { cloneOf: 'B' })]
    expect(circle.map(({ id }) => identityOf(id, circle))).toEqual(['A', 'A', 'A'])
    expect(identityOf('D', [key('D', { cloneOf: 'not listed' })])).toBe('not listed')
  })

  test('TAL-16 keys that the car shows alike count once, and their clones with them', () => {
    const keys = [
      key('A', { shownAs: '17 03' }),
      key('B', { shownAs: ' 17 03 ' }),
      key('C', { cloneOf: 'B' }),
      key('D', { shownAs: '22 40' }),
      key('E'),
      key('F', { shownAs: ' ' }),
    ]
    expect(keys.map(({ id }) => identityOf(id, keys))).toEqual(['A', 'A', 'A', 'D', 'E', 'F'])
    expect(reconcile(input({ keys, storedBefore: 5 })).unaccounted).toBe(1)
  })

  test('TAL-03 five stored and two on the bench leave three unaccounted', () => {
    const tally = reconcile(input({ saidToExist: 2, storedBefore: 5, keys: demoKeys }))
    expect([tally.identitiesOnBench, tally.unaccounted, tally.unaccountedAtMost]).toEqual([2, 3, 4])
    const cloneOnBench = reconcile(
      input({ storedBefore: 5, keys: [...demoKeys, key('C', { cloneOf: 'A' })] }),
    )
    expect([cloneOnBench.onBench, cloneOnBench.unaccounted]).toEqual([3, 3])
    expect(reconcile(input({ keys: demoKeys })).unaccounted).toBeNull()
  })

  test('TAL-04 after a replace-all the bench is expected, after an append the old entries and the new', () => {
    const expected = (replacesAll: boolean | null): number =>
      reconcile(input({ storedBefore: 5, keys: demoKeys, replacesAll })).expectedAfter
    expect([expected(true), expected(false), expected(null)]).toEqual([3, 6, 3])
    const cloneOfAbsent = [key('A'), key('X', { onBench: false }), key('N', { origin: 'new', cloneOf: 'X' })]
    expect(reconcile(input({ storedBefore: 2, keys: cloneOfAbsent, replacesAll: false })).expectedAfter).toBe(
      2,
    )
  })
})

describe('differences', () => {
  test('TAL-05 the customer may say more or fewer than lie here', () => {
    const more = reconcile(
      input({ saidToExist: 3, keys: [key('A'), key('B', { onBench: false })] }),
    ).differences
    expect(more).toMatchObject([{ code: 'said-more-than-bench', count: 2, keys: ['B'] }])
    expect(more[0]?.means).toContain('Two keys said to exist are not here (B).')
    expect(differenceCodes({ saidToExist: 1, keys: [key('A'), key('B')] })).toEqual(['said-fewer-than-bench'])
    expect(differenceCodes({ saidToExist: 2, keys: [key('A'), key('B')] })).toEqual([])
  })

  test('TAL-06 the car may store more or fewer than the bench explains', () => {
    expect(differenceCodes({ storedBefore: 5, keys: demoKeys })).toEqual(['stored-more-than-bench'])
    const fewer = reconcile(input({ storedBefore: 1, keys: [key('A'), key('B', { startedBefore: null })] }))
    expect(fewer.differences).toMatchObject([{ code: 'stored-fewer-than-bench', count: 1, keys: ['B'] }])
  })

  test('TAL-07 the number stored after is held against what is expected', () => {
    const keys = [
      key('A', { startsAfter: true }),
      key('N', { origin: 'new', startedBefore: null, startsAfter: true }),
    ]
    expect(differenceCodes({ storedBefore: 1, storedAfter: 2, keys })).toEqual([])
    expect(differenceCodes({ storedBefore: 1, storedAfter: 3, keys })).toEqual(['after-more-than-keys'])
    expect(differenceCodes({ storedBefore: 1, storedAfter: 1, keys })).toEqual(['after-fewer-than-keys'])
  })

  test('TAL-08 a key that does not start is named, by its last test', () => {
    const keys = [
      key('A', { startedBefore: false, startsAfter: true }),
      key('B', { startedBefore: false }),
      key('C', { startsAfter: false }),
      key('D', { onBench: false, startsAfter: false }),
    ]
    expect(reconcile(input({ keys })).differences).toMatchObject([
      { code: 'stored-key-does-not-start', count: 2, keys: ['B', 'C'] },
    ])
  })

  test('TAL-09 reconciled wants every number or why not, and a written reason for every difference', () => {
    const given = { saidToExist: 2, storedBefore: 5, storedAfter: 3, keys: demoKeys }
    expect(reconcile(input(given)).reconciled).toBe(false)
    expect(reconcile(input({ ...given, reasons: { 'stored-more-than-bench': '  ' } })).reconciled).toBe(false)
    const reasons = { 'stored-more-than-bench': 'three keys kept by earlier hirers' }
    expect(reconcile(input({ ...given, reasons })).reconciled).toBe(true)
    expect(reconcile(input({ ...given, storedAfter: null, reasons })).reconciled).toBe(false)
    const missingReasons = { storedAfter: 'the car does not show the count' }
    expect(reconcile(input({ ...given, storedAfter: null, reasons, missingReasons })).reconciled).toBe(true)
  })

  test('TAL-10 keys never tested and keys that no longer start are listed', () => {
    const tally = reconcile(input({ keys: [...demoKeys, key('C', { startsAfter: false })] }))
    expect(tally.neverTested).toEqual(['B', 'N1', 'N2'])
    expect(tally.noLongerStart).toEqual(['C'])
  })
})

describe('what it means', () => {
  const text = (given: Partial<TallyInput>): string =>
    reconcile(input(given))
      .statements.map((statement) => statement.text)
      .join(' ')

  test('TAL-11 one unaccounted entry is one key somewhere', () => {
    expect(text({ storedBefore: 2, keys: [key('A')], replacesAll: false })).toContain(
      'One key somewhere still starts this car.',
    )
    expect(text({ storedBefore: 5, keys: demoKeys, replacesAll: null })).toContain(
      'Up to 3 keys somewhere still start this car.',
    )
  })

  test('TAL-12 absent keys have stopped only when the list was read back as expected', () => {
    const sentence =
      'Keys that were not here stopped starting this car today. The blade may still open the door.'
    const given = { storedBefore: 5, keys: demoKeys, replacesAll: true }
    expect(text({ ...given, storedAfter: 3 })).toContain(sentence)
    expect(statementCodes({ ...given, storedAfter: 3 })).not.toContain('keys-somewhere-start')
    expect(statementCodes({ ...given, storedAfter: 5 })).toContain('absent-keys-not-proven-stopped')
    expect(statementCodes(given)).toEqual(
      expect.arrayContaining(['keys-somewhere-start', 'absent-keys-will-stop']),
    )
    expect(text({ storedBefore: 1, storedAfter: 1, keys: [key('A')] })).not.toContain(sentence)
  })

  test('TAL-13 entries are not keys is said where a key here could hold a second place', () => {
    expect(statementCodes({ storedBefore: 3, keys: [key('A')], replacesAll: false })).toContain(
      'entries-are-not-keys',
    )
    expect(statementCodes({ storedBefore: 3, keys: [], replacesAll: false })).not.toContain(
      'entries-are-not-keys',
    )
    expect(statementCodes({ storedBefore: 1, keys: [key('A')] })).not.toContain('entries-are-not-keys')
  })

  test('TAL-15 a clone that is away is not said to have stopped', () => {
    const keys = [key('A'), key('C', { cloneOf: 'A', onBench: false })]
    const given = { saidToExist: 2, storedBefore: 1, storedAfter: 1, keys, replacesAll: true }
    expect(statementCodes(given)).toContain('absent-clone-still-starts')
    expect(statementCodes(given)).not.toContain('absent-keys-stopped')
    const away = reconcile(
      input({ ...given, storedBefore: 2, keys: [...keys, key('X', { onBench: false })] }),
    )
    expect(away.statements.find((each) => each.code === 'absent-keys-stopped')?.keys).toEqual(['X'])
    expect(reconcile(input(given)).differences[0]?.means).toContain('A clone of a key that is here (C)')
  })

  test('TAL-14 a key is said to start only when it was seen to', () => {
    const statements = reconcile(input({ keys: [key('A', { startsAfter: true }), key('B')] })).statements
    expect(statements.find((statement) => statement.code === 'keys-start-now')?.keys).toEqual(['A'])
  })
})

describe('properties over random tallies', () => {
  const labels = ['A', 'B', 'C', 'D', 'E']
  const anyKey = (id: string): fc.Arbitrary<TallyKey> =>
    fc.record({
      id: fc.constant(id),
      origin: fc.constantFrom('existing' as const, 'new' as const),
      onBench: fc.boolean(),
      cloneOf: fc.constantFrom(null, null, null, ...labels),
      startedBefore: fc.constantFrom(null, true, false),
      startsAfter: fc.constantFrom(null, true, false),
    })
  const count = fc.option(fc.nat({ max: 8 }))
  const anyInput: fc.Arbitrary<TallyInput> = fc.record({
    saidToExist: count,
    storedBefore: count,
    storedAfter: count,
    keys: fc.tuple(...labels.map(anyKey)).chain((keys) => fc.subarray(keys)),
    replacesAll: fc.constantFrom(null, true, false),
    reasons: fc.constant({}),
  })

  test('TAL-02 marking one more key as a clone never raises the identities on the bench', () => {
    fc.assert(
      fc.property(anyInput, fc.constantFrom(...labels), (given, original) => {
        const keys = given.keys.map((each, index) =>
          index === 0 && each.id !== original && each.cloneOf === null
            ? { ...each, cloneOf: original }
            : each,
        )
        const before = reconcile(given).identitiesOnBench
        expect(reconcile({ ...given, keys }).identitiesOnBench).toBeLessThanOrEqual(before)
      }),
    )
  })

  test('TAL-03 stored before is explained identities plus unaccounted, unless fewer are stored than lie here', () => {
    fc.assert(
      fc.property(anyInput, (given) => {
        const tally = reconcile(given)
        if (tally.storedBefore === null) {
          expect([tally.unaccounted, tally.unaccountedAtMost]).toEqual([null, null])
          return
        }
        expect(tally.identitiesOnBench + (tally.unaccounted ?? 0)).toBe(
          Math.max(tally.storedBefore, tally.identitiesOnBench),
        )
        expect(tally.unaccountedAtMost).toBeGreaterThanOrEqual(tally.unaccounted ?? 0)
        expect(tally.unaccountedAtMost).toBeLessThanOrEqual(tally.storedBefore)
      }),
    )
  })

  test('TAL-05 TAL-06 TAL-07 each pair of numbers gives at most one difference, of the right size', () => {
    fc.assert(
      fc.property(anyInput, (given) => {
        const tally = reconcile(given)
        const sizes = new Map(tally.differences.map((difference) => [difference.code, difference.count]))
        expect(sizes.size).toBe(tally.differences.length)
        const signed = (more: 'said' | 'stored' | 'after', less: string, over: string): number =>
          (sizes.get(`${more}-${over}` as never) ?? 0) - (sizes.get(`${more}-${less}` as never) ?? 0)
        if (tally.saidToExist !== null) {
          expect(signed('said', 'fewer-than-bench', 'more-than-bench')).toBe(
            tally.saidToExist - tally.onBench,
          )
        }
        if (tally.storedBefore !== null) {
          expect(signed('stored', 'fewer-than-bench', 'more-than-bench')).toBe(
            tally.storedBefore - tally.identitiesOnBench,
          )
        }
        if (tally.storedAfter !== null) {
          expect(signed('after', 'fewer-than-keys', 'more-than-keys')).toBe(
            tally.storedAfter - tally.expectedAfter,
          )
        }
        for (const difference of tally.differences) expect(difference.count).toBeGreaterThan(0)
      }),
    )
  })

  test('TAL-09 reasons for everything reconcile any tally, and one reason less never does', () => {
    fc.assert(
      fc.property(anyInput, (given) => {
        const open = reconcile(given)
        const reasons = Object.fromEntries(open.differences.map((difference) => [difference.code, 'stated']))
        const missingReasons = Object.fromEntries(open.missing.map((name) => [name, 'not shown']))
        expect(reconcile({ ...given, reasons, missingReasons }).reconciled).toBe(true)
        for (const code of Object.keys(reasons)) {
          const { [code]: _left, ...fewer } = reasons
          expect(reconcile({ ...given, reasons: fewer, missingReasons }).reconciled).toBe(false)
        }
        for (const name of Object.keys(missingReasons)) {
          const { [name]: _left, ...fewer } = missingReasons
          expect(reconcile({ ...given, reasons, missingReasons: fewer }).reconciled).toBe(false)
        }
      }),
    )
  })

  test('TAL-12 stopped is never claimed of an append, an unread list or a list too long', () => {
    fc.assert(
      fc.property(anyInput, (given) => {
        const tally = reconcile(given)
        if (!tally.statements.some((statement) => statement.code === 'absent-keys-stopped')) return
        expect(given.replacesAll).toBe(true)
        expect(tally.storedAfter).not.toBeNull()
        expect(tally.storedAfter).toBeLessThanOrEqual(tally.expectedAfter)
      }),
    )
  })
})
