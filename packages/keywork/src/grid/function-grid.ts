/** @module The grid of keys and functions, before and after the work (rules in SPEC.md). */

import { applicableFunctions, KEY_FUNCTIONS, STARTING_FUNCTIONS } from './forms.ts'
import type { FunctionGrid, FunctionTest, GridCell, GridKey, KeyFunction, TestPhase } from './types.ts'

type Row = FunctionGrid['rows'][number]

/** Tests of one key by the place of their function in KEY_FUNCTIONS. */
type Tried = Readonly<Record<TestPhase, (FunctionTest | undefined)[]>>

const PLACE_OF: ReadonlyMap<KeyFunction, number> = new Map(KEY_FUNCTIONS.map((name, place) => [name, place]))
const UNTRIED: Tried = { before: [], after: [] }

/**
 * Lays recorded tests out as a grid. Tests are in the order they were made: the last one of a cell counts.
 * Tests of keys that are not rows are left out. Never throws.
 */
export function functionGrid(keys: readonly GridKey[], tests: readonly FunctionTest[]): FunctionGrid {
  const tried = triedByKey(tests)
  const shown = new Map(keys.map((key) => [key.id, shownOf(key, tried.get(key.id) ?? UNTRIED)]))
  const places = PLACES.filter((place) => [...shown.values()].some((has) => has[place]))
  const rows = keys.map((key) => rowOf(key, places, shown.get(key.id) ?? [], tried.get(key.id) ?? UNTRIED))
  const before = rows.flatMap((row) => row.before)
  const after = rows.flatMap((row) => row.after)
  const openBefore = before.filter((cell) => cell.outcome === 'open').length
  const openAfter = after.filter((cell) => cell.outcome === 'open').length
  return {
    functions: places.map((place) => KEY_FUNCTIONS[place] as KeyFunction),
    rows,
    openBefore,
    openAfter,
    lost: after.filter((cell) => cell.lost),
    failing: after.filter((cell) => cell.outcome === 'fails'),
    completeBefore: openBefore === 0,
    completeAfter: openAfter === 0 && keys.some((key) => key.onBench),
  }
}

const PLACES = KEY_FUNCTIONS.map((_, place) => place)

function triedByKey(tests: readonly FunctionTest[]): ReadonlyMap<string, Tried> {
  const byKey = new Map<string, Tried>()
  for (const test of tests) {
    let tried = byKey.get(test.key)
    if (tried === undefined) {
      tried = { before: PLACES.map(() => undefined), after: PLACES.map(() => undefined) }
      byKey.set(test.key, tried)
    }
    const place = PLACE_OF.get(test.function)
    if (place === undefined) continue
    if (test.phase === 'before') tried.before[place] = test
    else if (test.phase === 'after') tried.after[place] = test
  }
  return byKey
}

/** By place: whether a key has the function, by its form or because it was seen to work or fail. */
function shownOf(key: GridKey, tried: Tried): readonly boolean[] {
  const applicable = applicableFunctions(key)
  return KEY_FUNCTIONS.map(
    (name, place) => applicable.includes(name) || wasSeen(tried.before[place]) || wasSeen(tried.after[place]),
  )
}

function rowOf(key: GridKey, places: readonly number[], shown: readonly boolean[], tried: Tried): Row {
  const before: GridCell[] = []
  const after: GridCell[] = []
  for (const place of places) {
    const name = KEY_FUNCTIONS[place] as KeyFunction
    const has = shown[place] === true
    const earlier = key.origin === 'new' ? null : cell(key, name, 'before', has, tried.before[place])
    if (earlier !== null) before.push(earlier)
    after.push(afterCell(key, name, has, tried.after[place], earlier?.outcome === 'works'))
  }
  return { key: key.id, before, after }
}

/**
 * Was this key seen to start the car in this phase? True when any way of starting worked, false when every way that
 * applies was tried and failed, null otherwise.
 */
export function startedIn(grid: FunctionGrid, key: string, phase: TestPhase): boolean | null {
  const row = grid.rows.find((each) => each.key === key)
  const cells = (row?.[phase] ?? []).filter(
    (cell) => STARTING_FUNCTIONS.includes(cell.function) && cell.outcome !== 'not-applicable',
  )
  if (cells.some((cell) => cell.outcome === 'works')) return true
  return cells.length > 0 && cells.every((cell) => cell.outcome === 'fails') ? false : null
}

/** A function that was seen to work or fail exists, whatever the form says. */
function wasSeen(test: FunctionTest | undefined): boolean {
  return test?.outcome === 'works' || test?.outcome === 'fails'
}

function afterCell(
  key: GridKey,
  name: KeyFunction,
  has: boolean,
  test: FunctionTest | undefined,
  workedBefore: boolean,
): GridCell {
  const plain = cell(key, name, 'after', has, test)
  if (!workedBefore) return plain
  // What worked before the work cannot have become "not applicable": the cell waits for a real test.
  if (plain.outcome === 'not-applicable') return { ...plain, outcome: 'open' }
  return { ...plain, lost: plain.outcome === 'fails' }
}

function cell(
  key: GridKey,
  name: KeyFunction,
  phase: TestPhase,
  has: boolean,
  test: FunctionTest | undefined,
): GridCell {
  const base = { key: key.id, function: name, phase, lost: false } as const
  if (!has) return { ...base, outcome: 'not-applicable', because: notApplicableBecause(key, name) }
  if (test === undefined) {
    return key.onBench
      ? { ...base, outcome: 'open' }
      : { ...base, outcome: 'not-tested', because: 'The key is not here.' }
  }
  const because = test.because?.trim() ?? ''
  const outcome = test.outcome === 'not-tested' && because === '' ? 'open' : test.outcome
  if (because === '' && test.customerPresent === undefined) return { ...base, outcome }
  return {
    ...base,
    outcome,
    ...(because === '' ? {} : { because }),
    ...(test.customerPresent === undefined ? {} : { customerPresent: test.customerPresent }),
  }
}

function notApplicableBecause(key: GridKey, name: KeyFunction): string {
  return key.lacks.includes(name)
    ? 'This key or car does not have it.'
    : `A ${key.form} key does not have it.`
}
