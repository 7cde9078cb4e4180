import {
  applicableFunctions,
  type FunctionGrid,
  functionGrid,
  type KeyFunction,
  reconcile,
  type Tally,
  type TallyInput,
  type TallyKey,
} from '@shearline/keywork'
import type { Collected } from './collect.ts'
import type { JobKey, JobState } from './state.ts'
import { touchedSince } from './teaching.ts'

const starting: readonly KeyFunction[] = ['start', 'passive-start', 'emergency-start']

/** The keys of a job, the grid of what each can do, and the reconciled numbers. */
export function foldKeys(
  facts: Collected,
  taughtKeys: readonly string[],
): {
  keys: readonly JobKey[]
  grid: FunctionGrid
  tally: Tally
  absentKeys: readonly string[]
  retest: JobState['retest']
} {
  const taught = new Set(taughtKeys)
  const labelled = new Map<string, JobKey>()
  for (const { body } of facts.all('key-labelled')) {
    labelled.set(body.key, {
      id: body.key,
      form: body.form,
      origin: body.origin,
      onBench: body.onBench,
      lacks: body.lacks,
      make: body.make,
      colour: body.colour,
      cloneOf: body.cloneOf,
      note: body.note ?? null,
      shownAs: body.shownAs ?? null,
      taught: taught.has(body.key),
    })
  }
  const keys = [...labelled.values()]
  const since = touchedSince(facts)
  const tests = facts
    .all('function-tested')
    .filter(({ body, order }) => body.phase === 'before' || order > since || isBlade(body.function))
    .map((entry) => entry.body)
  const grid = functionGrid(keys, tests)
  const said = facts.last('keys-said')?.body ?? null
  const rule = facts.last('rule-chosen')?.body.kind ?? 'unknown'
  const absent = said?.absent ?? []
  const tally = reconcile({
    saidToExist: said?.count ?? null,
    storedBefore: countOf(facts, 'before'),
    storedAfter: countOf(facts, 'after') ?? facts.last('session-closed')?.body.carCount ?? null,
    keys: [...keys.map((key) => tallyKey(key, tests)), ...absent.map(absentKey)],
    replacesAll: rule === 'unknown' ? null : rule === 'replace-all',
    missingReasons: missingReasons(facts),
    reasons: Object.fromEntries(
      facts.all('difference-explained').map(({ body }) => [body.code, body.reason]),
    ),
  })
  return { keys, grid, tally, absentKeys: absent, retest: since < 0 ? [] : retestOf(keys, tests) }
}

/** No session touches what a blade was cut to. */
function isBlade(name: KeyFunction): boolean {
  return name.startsWith('blade-')
}

function retestOf(
  keys: readonly JobKey[],
  tests: readonly { key: string; function: KeyFunction; phase: string; outcome: string }[],
): JobState['retest'] {
  return keys
    .filter((key) => key.onBench && applicableFunctions(key).some((name) => starting.includes(name)))
    .map((key) => ({
      key: key.id,
      done: tests.some(
        (test) =>
          test.key === key.id &&
          test.phase === 'after' &&
          starting.includes(test.function) &&
          (test.outcome === 'works' || test.outcome === 'fails'),
      ),
    }))
}

function countOf(facts: Collected, when: 'before' | 'after'): number | null {
  return facts.all('key-count-read').findLast((entry) => entry.body.when === when)?.body.count ?? null
}

function tallyKey(
  key: JobKey,
  tests: readonly { key: string; function: KeyFunction; phase: 'before' | 'after'; outcome: string }[],
): TallyKey {
  const starts = (phase: 'before' | 'after'): boolean | null => {
    let known: boolean | null = null
    for (const test of tests) {
      if (test.key !== key.id || test.phase !== phase || !starting.includes(test.function)) continue
      if (test.outcome === 'works') known = true
      else if (test.outcome === 'fails' && known === null) known = false
    }
    return known
  }
  return {
    id: key.id,
    origin: key.origin,
    onBench: key.onBench,
    cloneOf: key.cloneOf,
    startedBefore: key.origin === 'new' ? null : starts('before'),
    startsAfter: starts('after'),
    ...(key.note === null ? {} : { note: key.note }),
    ...(key.shownAs === null ? {} : { shownAs: key.shownAs }),
  }
}

/** A key that exists but is not here, known by the customer's own name for it. */
function absentKey(name: string): TallyKey {
  return {
    id: name,
    origin: 'existing',
    onBench: false,
    cloneOf: null,
    startedBefore: null,
    startsAfter: null,
  }
}

function missingReasons(facts: Collected): NonNullable<TallyInput['missingReasons']> {
  const reasons: { storedBefore?: string; storedAfter?: string } = {}
  for (const { body } of facts.all('key-count-read')) {
    if (body.count !== null || body.because === undefined) continue
    reasons[body.when === 'before' ? 'storedBefore' : 'storedAfter'] = body.because
  }
  return reasons
}
