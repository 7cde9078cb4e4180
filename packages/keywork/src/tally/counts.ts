/** @module The numbers behind a tally, before any sentence is written. */

import { identitiesAmong, identityOf } from './identity.ts'
import type { TallyInput, TallyKey } from './types.ts'

/** What the rules compute before any sentence is written. */
export interface TallyCounts {
  readonly input: TallyInput
  /** Existing keys on the bench. */
  readonly bench: readonly TallyKey[]
  /** New keys on the bench. */
  readonly fresh: readonly TallyKey[]
  /** Existing keys that are known of but not here. */
  readonly absent: readonly TallyKey[]
  /** Those of them that repeat an identity on the bench: no work on the list stops them alone. */
  readonly absentClones: readonly TallyKey[]
  readonly identitiesOnBench: readonly string[]
  readonly unaccounted: number | null
  readonly unaccountedAtMost: number | null
  readonly expectedAfter: number
  readonly noLongerStart: readonly string[]
  readonly neverTested: readonly string[]
}

/** Counts keys, identities and entries of one tally. */
export function countsOf(input: TallyInput): TallyCounts {
  const { keys, storedBefore } = input
  const bench = keys.filter((key) => key.origin === 'existing' && key.onBench)
  const fresh = keys.filter((key) => key.origin === 'new' && key.onBench)
  const absent = keys.filter((key) => key.origin === 'existing' && !key.onBench)
  const identitiesOnBench = identitiesAmong(bench, keys)
  const identitiesHere = identitiesAmong([...bench, ...fresh], keys)
  const absentClones = absent.filter((key) => identitiesHere.includes(identityOf(key.id, keys)))
  const proven = identitiesAmong(
    bench.filter((key) => key.startedBefore === true),
    keys,
  )
  return {
    input,
    bench,
    fresh,
    absent,
    absentClones,
    identitiesOnBench,
    unaccounted: storedBefore === null ? null : Math.max(0, storedBefore - identitiesOnBench.length),
    unaccountedAtMost: storedBefore === null ? null : Math.max(0, storedBefore - proven.length),
    expectedAfter: expectedAfter(input, bench, fresh),
    noLongerStart: [...bench, ...fresh]
      .filter((key) => key.startedBefore === true && key.startsAfter === false)
      .map((key) => key.id),
    neverTested: [...bench, ...fresh]
      .filter((key) => key.startedBefore === null && key.startsAfter === null)
      .map((key) => key.id),
  }
}

/**
 * Identities that should be stored after the work. A rule that is not known is treated as replace-all, the worst for
 * the keys that are not here.
 */
function expectedAfter(input: TallyInput, bench: readonly TallyKey[], fresh: readonly TallyKey[]): number {
  const { keys, storedBefore } = input
  const here = identitiesAmong([...bench, ...fresh], keys).length
  if (input.replacesAll !== false || storedBefore === null) return here
  const existing = new Set(
    keys.filter((key) => key.origin === 'existing').map((key) => identityOf(key.id, keys)),
  )
  const added = identitiesAmong(fresh, keys).filter((identity) => !existing.has(identity))
  return storedBefore + added.length
}
