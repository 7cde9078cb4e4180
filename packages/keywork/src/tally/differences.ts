/** @module Every way in which the numbers of a tally disagree, each with what it means. */

import type { TallyCounts } from './counts.ts'
import { writtenReason } from './reason.ts'
import type { Difference, DifferenceCode, TallyInput } from './types.ts'
import { countOf, named, verb } from './words.ts'

/** All differences, in the order of the four numbers. */
export function differencesOf(counts: TallyCounts): readonly Difference[] {
  return [
    ...saidDifferences(counts),
    ...storedDifferences(counts),
    ...afterDifferences(counts),
    ...startDifferences(counts),
  ]
}

function saidDifferences(counts: TallyCounts): Difference[] {
  const { input, bench, absent, absentClones } = counts
  if (input.saidToExist === null) return []
  const more = input.saidToExist - bench.length
  if (more > 0) {
    const keys = absent.map((key) => key.id)
    const clones = absentClones.map((key) => key.id)
    const clonesKeep =
      clones.length === 0 ? '' : ` A clone of a key that is here${named(clones)} keeps starting it.`
    const means = `${countOf(more, 'key')} said to exist ${verb(more, 'is', 'are')} not here${named(keys)}. ${fateOfAbsent(input, more)}${clonesKeep}`
    return [difference(input, 'said-more-than-bench', more, keys, means)]
  }
  if (more < 0) {
    const keys = bench.map((key) => key.id)
    const means = `${countOf(-more, 'key')} more ${verb(-more, 'lies', 'lie')} here than the customer knew of. Ask whose ${verb(-more, 'it is', 'they are')}.`
    return [difference(input, 'said-fewer-than-bench', -more, keys, means)]
  }
  return []
}

function fateOfAbsent(input: TallyInput, count: number): string {
  const it = verb(count, 'It', 'They')
  if (input.replacesAll === true) {
    return `${it} will not start this car once the list is rewritten; the blade may still open the door.`
  }
  if (input.replacesAll === false) return `${it} may still start this car.`
  return `Until the teaching rule is known, expect that ${it.toLowerCase()} will stop starting this car.`
}

function storedDifferences(counts: TallyCounts): Difference[] {
  const { input, absent, bench, unaccounted, identitiesOnBench } = counts
  if (input.storedBefore === null || unaccounted === null) return []
  if (unaccounted > 0) {
    const keys = absent.map((key) => key.id)
    const means =
      unaccounted === 1
        ? 'The car stored one entry that no key here explains. One key somewhere started this car before the work.'
        : `The car stored ${unaccounted} entries that no key here explains. Up to ${unaccounted} keys somewhere started this car before the work.`
    return [difference(input, 'stored-more-than-bench', unaccounted, keys, means)]
  }
  const fewer = identitiesOnBench.length - input.storedBefore
  if (fewer <= 0) return []
  const silent = bench.filter((key) => key.startedBefore !== true).map((key) => key.id)
  const means = `${countOf(fewer, 'key')} here ${verb(fewer, 'has', 'have')} no entry in the car: never taught, taught to another car, or a clone that is not marked as one.`
  return [difference(input, 'stored-fewer-than-bench', fewer, silent, means)]
}

function afterDifferences(counts: TallyCounts): Difference[] {
  const { input, expectedAfter } = counts
  if (input.storedAfter === null) return []
  const more = input.storedAfter - expectedAfter
  if (more > 0) {
    const means = `The car stores ${countOf(more, 'entry', 'entries').toLowerCase()} more than the keys explain. A key that is not accounted for may start this car, or one key took two places.`
    return [difference(input, 'after-more-than-keys', more, [], means)]
  }
  if (more < 0) {
    const untaught = [...counts.bench, ...counts.fresh]
      .filter((key) => key.startsAfter !== true)
      .map((key) => key.id)
    const means = `The car stores ${countOf(-more, 'entry', 'entries').toLowerCase()} fewer than there are keys. A key was not stored, or one is a clone that is not marked as one.`
    return [difference(input, 'after-fewer-than-keys', -more, untaught, means)]
  }
  return []
}

function startDifferences(counts: TallyCounts): Difference[] {
  const { input, bench, fresh } = counts
  const silent = [...bench, ...fresh].filter(
    (key) => key.startsAfter === false || (key.startsAfter === null && key.startedBefore === false),
  )
  if (silent.length === 0) return []
  const keys = silent.map((key) => key.id)
  const later = silent.some((key) => key.startsAfter === false)
  const means = `${countOf(keys.length, 'key')} on the bench ${verb(keys.length, 'does', 'do')} not start this car${later ? ' after the work' : ''}${named(keys)}. If it holds no entry, one more entry belongs to a key that is not here.`
  return [difference(input, 'stored-key-does-not-start', keys.length, keys, means)]
}

function difference(
  input: TallyInput,
  code: DifferenceCode,
  count: number,
  keys: readonly string[],
  means: string,
): Difference {
  return { code, count, keys, means, reason: writtenReason(input.reasons[code]) }
}
