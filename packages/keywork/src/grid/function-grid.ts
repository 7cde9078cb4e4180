/** @module The grid of keys and functions, before and after the work (rules in SPEC.md). */

import { applicableFunctions, KEY_FUNCTIONS, STARTING_FUNCTIONS } from './forms.ts'
import type { FunctionGrid, FunctionTest, GridCell, GridKey, KeyFunction, TestPhase } from './types.ts'

type Row = FunctionGrid['rows'][number]

/**
 * Lays recorded tests out as a grid. Tests are in the order they were made: the last one of a cell counts.
 * Tests of keys that are not rows are left out. Never throws.
 */
export function functionGrid(keys: readonly GridKey[], tests: readonly FunctionTest[]): FunctionGrid {
  const latest = new Map<string, FunctionTest>()
  for (const test of tests) latest.set(cellName(test.key, test.function, test.phase), test)
  const find = (key: string, name: KeyFunction, phase: TestPhase): FunctionTest | undefined =>
    latest.get(cellName(key, name, phase))

  const shown = (key: GridKey): readonly KeyFunction[] => {
    const applicable = applicableFunctions(key)
    return KEY_FUNCTIONS.filter(
      (name) =>
        applicable.includes(name) ||
        wasSeen(find(key.id, name, 'before')) ||
        wasSeen(find(key.id, name, 'after')),
    )
  }
  const shownByKey = new Map(keys.map((key) => [key.id, shown(key)]))
  const functions = KEY_FUNCTIONS.filter((name) =>
    [...shownByKey.values()].some((names) => names.includes(name)),
  )

  const rows = keys.map((key): Row => {
    const has = shownByKey.get(key.id) ?? []
    const before =
      key.origin === 'new'
        ? []
        : functions.map((name) => beforeCell(key, name, has.includes(name), find(key.id, name, 'before')))
    const after = functions.map((name) =>
      afterCell(
        key,
        name,
        has.includes(name),
        find(key.id, name, 'after'),
        before.find((cell) => cell.function === name)?.outcome === 'works',
      ),
    )
    return { key: key.id, before, after }
  })
  const before = rows.flatMap((row) => row.before)
  const after = rows.flatMap((row) => row.after)
  const openBefore = before.filter((cell) => cell.outcome === 'open').length
  const openAfter = after.filter((cell) => cell.outcome === 'open').length
  return {
    functions,
    rows,
    openBefore,
    openAfter,
    lost: after.filter((cell) => cell.lost),
    failing: after.filter((cell) => cell.outcome === 'fails'),
    completeBefore: openBefore === 0,
    completeAfter: openAfter === 0 && keys.some((key) => key.onBench),
  }
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

function cellName(key: string, name: KeyFunction, phase: TestPhase): string {
  // Phase and name hold no space, so that the label behind them may hold anything.
  return `${phase} ${name} ${key}`
}

/** A function that was seen to work or fail exists, whatever the form says. */
function wasSeen(test: FunctionTest | undefined): boolean {
  return test?.outcome === 'works' || test?.outcome === 'fails'
}

function beforeCell(key: GridKey, name: KeyFunction, has: boolean, test: FunctionTest | undefined): GridCell {
  return cell(key, name, 'before', has, test)
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
