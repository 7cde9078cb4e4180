/** @module Reconciles the numbers: said, on the bench, stored before, stored after (rules in SPEC.md). */

import { countsOf } from './counts.ts'
import { differencesOf } from './differences.ts'
import { writtenReason } from './reason.ts'
import { statementsOf } from './statements.ts'
import type { MissingNumber, Tally, TallyInput } from './types.ts'

/**
 * Reconciles what the customer said, what lies on the bench and what the car says it stores.
 *
 * Counts are whole numbers; a negative or broken one is taken as not known. Never throws. Every difference wants a
 * reason in writing before `reconciled` can be true.
 */
export function reconcile(given: TallyInput): Tally {
  const input: TallyInput = {
    ...given,
    saidToExist: wholeCount(given.saidToExist),
    storedBefore: wholeCount(given.storedBefore),
    storedAfter: wholeCount(given.storedAfter),
  }
  const counts = countsOf(input)
  const differences = differencesOf(counts)
  const missing = (['saidToExist', 'storedBefore', 'storedAfter'] as const).filter(
    (name) => input[name] === null,
  )
  return {
    saidToExist: input.saidToExist,
    onBench: counts.bench.length,
    storedBefore: input.storedBefore,
    storedAfter: input.storedAfter,
    identitiesOnBench: counts.identitiesOnBench.length,
    unaccounted: counts.unaccounted,
    unaccountedAtMost: counts.unaccountedAtMost,
    expectedAfter: counts.expectedAfter,
    newKeys: counts.fresh.length,
    differences,
    neverTested: counts.neverTested,
    noLongerStart: counts.noLongerStart,
    missing,
    reconciled:
      differences.every((difference) => difference.reason !== null) &&
      missing.every((name) => reasonForMissing(input, name) !== null),
    statements: statementsOf(counts),
  }
}

function reasonForMissing(input: TallyInput, name: MissingNumber): string | null {
  return writtenReason(input.missingReasons?.[name])
}

function wholeCount(count: number | null): number | null {
  return count !== null && Number.isSafeInteger(count) && count >= 0 ? count : null
}
