import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  applicableFunctions,
  type Disturbance,
  type FunctionTest,
  functionGrid,
  type GridKey,
  KEY_FUNCTIONS,
  type KeyForm,
  type KeyFunction,
  leastTests,
  startedIn,
  type TestPhase,
} from './index.ts'

const FORMS: readonly KeyForm[] = ['blade', 'transponder', 'remote-head', 'flip', 'proximity', 'card']

const key = (id: string, form: KeyForm, more: Partial<GridKey> = {}): GridKey => ({
  id,
  form,
  origin: 'existing',
  onBench: true,
  lacks: [],
  ...more,
})
const tested = (
  id: string,
  name: KeyFunction,
  phase: TestPhase,
  outcome: FunctionTest['outcome'],
  because?: string,
): FunctionTest => ({
  key: id,
  function: name,
  phase,
  outcome,
  ...(because === undefined ? {} : { because }),
})

const answerAll = (keys: readonly GridKey[], phase: TestPhase): readonly FunctionTest[] =>
  keys.flatMap((each) => applicableFunctions(each).map((name) => tested(each.id, name, phase, 'works')))
const cellOf = (
  grid: ReturnType<typeof functionGrid>,
  id: string,
  phase: TestPhase,
  name: KeyFunction,
): ReturnType<typeof functionGrid>['lost'][number] | undefined =>
  grid.rows.find((row) => row.key === id)?.[phase].find((cell) => cell.function === name)

describe('what applies', () => {
  test('GRD-01 form and what a key lacks decide which functions apply', () => {
    expect(applicableFunctions(key('A', 'transponder'))).toEqual([
      'start',
      'blade-door',
      'blade-ignition',
      'blade-boot',
    ])
    expect(applicableFunctions(key('A', 'proximity', { lacks: ['panic', 'boot'] }))).toEqual([
      'emergency-start',
      'passive-start',
      'passive-entry',
      'lock',
      'unlock',
      'blade-door',
    ])
  })

  test('GRD-02 a function that was seen to work applies, whatever the form says', () => {
    const grid = functionGrid([key('A', 'transponder')], [tested('A', 'lock', 'before', 'works')])
    expect(cellOf(grid, 'A', 'before', 'lock')?.outcome).toBe('works')
    expect(cellOf(grid, 'A', 'after', 'lock')?.outcome).toBe('open')
  })

  test('GRD-03 a function of one key is not applicable, with a reason, on a key that cannot have it', () => {
    const grid = functionGrid([key('A', 'transponder'), key('B', 'flip', { lacks: ['panic'] })], [])
    expect(grid.functions).toEqual([
      'start',
      'lock',
      'unlock',
      'boot',
      'blade-door',
      'blade-ignition',
      'blade-boot',
    ])
    expect(cellOf(grid, 'A', 'after', 'lock')).toMatchObject({
      outcome: 'not-applicable',
      because: 'A transponder key does not have it.',
    })
  })
})

describe('tests', () => {
  test('GRD-04 the latest test counts', () => {
    const grid = functionGrid(
      [key('A', 'flip')],
      [tested('A', 'lock', 'after', 'fails'), tested('A', 'lock', 'after', 'works')],
    )
    expect(cellOf(grid, 'A', 'after', 'lock')?.outcome).toBe('works')
  })

  test('GRD-05 not tested counts only with a reason', () => {
    const outcome = (because?: string): string | undefined =>
      cellOf(
        functionGrid([key('A', 'flip')], [tested('A', 'panic', 'after', 'not-tested', because)]),
        'A',
        'after',
        'panic',
      )?.outcome
    expect([outcome(), outcome('  '), outcome('night, houses near')]).toEqual(['open', 'open', 'not-tested'])
  })

  test('GRD-06 a key that is not here is answered by that', () => {
    const grid = functionGrid([key('A', 'blade', { onBench: false })], [])
    expect(cellOf(grid, 'A', 'before', 'start')).toMatchObject({
      outcome: 'not-tested',
      because: 'The key is not here.',
    })
    expect([grid.completeBefore, grid.completeAfter]).toEqual([true, false])
  })

  test('GRD-07 a new key has no before', () => {
    const grid = functionGrid([key('N', 'flip', { origin: 'new' })], [tested('N', 'lock', 'before', 'works')])
    expect(grid.rows[0]?.before).toEqual([])
    expect(grid.completeBefore).toBe(true)
    expect(grid.openAfter).toBe(8)
  })

  test('GRD-08 the grid is complete when every cell is answered, and not before', () => {
    const keys = [key('A', 'flip'), key('B', 'proximity'), key('N', 'flip', { origin: 'new' })]
    const before = answerAll([keys[0] as GridKey, keys[1] as GridKey], 'before')
    const after = answerAll(keys, 'after')
    expect(functionGrid(keys, [...before, ...after])).toMatchObject({
      completeBefore: true,
      completeAfter: true,
    })
    expect(functionGrid(keys, [...before.slice(1), ...after]).completeBefore).toBe(false)
    expect(functionGrid(keys, [...before, ...after.slice(0, -1)]).completeAfter).toBe(false)
    expect(functionGrid([], []).completeAfter).toBe(false)
  })

  test('GRD-09 lost is worked before and fails after; failing includes what never worked', () => {
    const grid = functionGrid(
      [key('A', 'flip')],
      [
        tested('A', 'lock', 'before', 'works'),
        tested('A', 'lock', 'after', 'fails'),
        tested('A', 'unlock', 'before', 'fails'),
        tested('A', 'unlock', 'after', 'fails'),
      ],
    )
    expect(grid.lost.map((cell) => cell.function)).toEqual(['lock'])
    expect(grid.failing.map((cell) => cell.function)).toEqual(['lock', 'unlock'])
  })

  test('GRD-10 what worked before cannot be not applicable after', () => {
    const grid = functionGrid(
      [key('A', 'flip')],
      [tested('A', 'boot', 'before', 'works'), tested('A', 'boot', 'after', 'not-applicable')],
    )
    expect(cellOf(grid, 'A', 'after', 'boot')?.outcome).toBe('open')
  })

  test('GRD-11 any way of starting proves it, all ways failing disprove it', () => {
    const started = (...tests: readonly FunctionTest[]): boolean | null =>
      startedIn(functionGrid([key('A', 'proximity')], tests), 'A', 'after')
    expect(started()).toBeNull()
    expect(started(tested('A', 'passive-start', 'after', 'fails'))).toBeNull()
    expect(
      started(
        tested('A', 'passive-start', 'after', 'fails'),
        tested('A', 'emergency-start', 'after', 'works'),
      ),
    ).toBe(true)
    expect(
      started(
        tested('A', 'passive-start', 'after', 'fails'),
        tested('A', 'emergency-start', 'after', 'fails'),
      ),
    ).toBe(false)
  })
})

describe('the least set of tests', () => {
  const names = (keys: readonly GridKey[], ...what: readonly Disturbance['what'][]): readonly string[] =>
    leastTests(
      keys,
      what.map((each) => ({ what: each })),
    ).map((needed) => `${needed.key}:${needed.function}`)

  test('GRD-12 nothing disturbed and no new key needs no test', () => {
    expect(names([key('A', 'flip'), key('B', 'proximity')])).toEqual([])
    expect(names([key('A', 'flip', { onBench: false })], 'list-rewritten')).toEqual([])
  })

  test('GRD-13 an interrupted supply asks one button of every remote, and nothing of a plain key', () => {
    const keys = [key('A', 'flip'), key('B', 'proximity', { lacks: ['lock'] }), key('C', 'transponder')]
    expect(names(keys, 'supply-interrupted')).toEqual(['A:lock', 'B:unlock'])
    expect(leastTests(keys, [{ what: 'cell-changed', keys: ['A'] }]).map((needed) => needed.key)).toEqual([
      'A',
    ])
  })

  test('GRD-14 an open list asks passive start and emergency start of a passive key', () => {
    expect(names([key('A', 'flip'), key('B', 'proximity')], 'list-rewritten')).toEqual([
      'A:start',
      'B:emergency-start',
      'B:passive-start',
    ])
  })

  test('GRD-15 a new turned key needs everything but the blade in the ignition, which its start proves', () => {
    expect(names([key('N', 'flip', { origin: 'new' })])).toEqual([
      'N:start',
      'N:lock',
      'N:unlock',
      'N:boot',
      'N:panic',
      'N:blade-door',
      'N:blade-boot',
    ])
    expect(names([key('N', 'proximity', { origin: 'new' })])).toHaveLength(8)
  })

  test('GRD-12 every part of the set is needed: without any one test something disturbed stays unproven', () => {
    const anyKey = fc.record({
      id: fc.constant('K'),
      form: fc.constantFrom(...FORMS),
      origin: fc.constantFrom('existing' as const, 'new' as const),
      onBench: fc.constant(true),
      lacks: fc.subarray([...KEY_FUNCTIONS]),
    })
    const anyDisturbance = fc.subarray<Disturbance['what']>([
      'list-rewritten',
      'remote-list-rewritten',
      'supply-interrupted',
      'cell-changed',
      'case-opened',
      'blade-cut',
      'lock-changed',
    ])
    /** Written apart from the source: which single functions can stand for which worry. */
    const worries: Readonly<Record<string, readonly (readonly KeyFunction[])[]>> = {
      'list-rewritten': [['start', 'emergency-start'], ['passive-start']],
      'remote-list-rewritten': [['lock', 'unlock', 'boot', 'panic'], ['passive-entry']],
      'supply-interrupted': [['lock', 'unlock', 'boot', 'panic']],
      'cell-changed': [['lock', 'unlock', 'boot', 'panic'], ['passive-start'], ['passive-entry']],
      'case-opened': [
        ['start', 'emergency-start'],
        ['passive-start'],
        ['passive-entry'],
        ['lock'],
        ['unlock'],
        ['boot'],
        ['panic'],
      ],
      'blade-cut': [['blade-door'], ['blade-ignition', 'start'], ['blade-boot']],
      'lock-changed': [['blade-door'], ['blade-ignition', 'start'], ['blade-boot']],
    }
    fc.assert(
      fc.property(anyKey, anyDisturbance, (each, what) => {
        const applicable = applicableFunctions(each)
        const groups = [...what, ...(each.origin === 'new' ? ['case-opened', 'blade-cut'] : [])]
          .flatMap((name) => worries[name] ?? [])
          .map((group) => group.filter((name) => applicable.includes(name)))
          .filter((group) => group.length > 0)
        const chosen = leastTests(
          [each],
          what.map((name) => ({ what: name })),
        ).map((needed) => needed.function)
        const proves = (set: readonly KeyFunction[]): boolean =>
          groups.every((group) => group.some((name) => set.includes(name)))
        expect(proves(chosen)).toBe(true)
        // No smaller set does: all subsets one smaller, counted by brute force.
        for (let mask = 0; mask < 2 ** applicable.length; mask += 1) {
          const subset = applicable.filter((_, index) => (mask >> index) & 1)
          if (subset.length === chosen.length - 1) expect(proves(subset)).toBe(false)
        }
      }),
      { numRuns: 60 },
    )
  })

  test('GRD-12 every needed test says which disturbance asks for it', () => {
    const needed = leastTests(
      [key('B', 'proximity')],
      [{ what: 'supply-interrupted' }, { what: 'list-rewritten' }],
    )
    expect(needed.every((each) => each.because.length > 0)).toBe(true)
    expect(needed.find((each) => each.function === 'lock')?.because.map((reason) => reason.what)).toEqual([
      'supply-interrupted',
    ])
  })
})
