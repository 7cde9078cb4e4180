/** @module What the tally means, in plain sentences for customer and insurer. */

import type { TallyCounts } from './counts.ts'
import type { StatementCode, TallyStatement } from './types.ts'
import { countOf, named, verb } from './words.ts'

/** All statements that the evidence carries; nothing is claimed that was not read or tested. */
export function statementsOf(counts: TallyCounts): readonly TallyStatement[] {
  return [
    ...storedStatements(counts),
    ...absentStatements(counts),
    ...identityStatements(counts),
    ...testStatements(counts),
  ]
}

function storedStatements({ input }: TallyCounts): TallyStatement[] {
  const statements: TallyStatement[] = []
  if (input.storedBefore !== null) {
    const text = `Before the work this car stored ${countOf(input.storedBefore, 'entry', 'entries').toLowerCase()}.`
    statements.push(statement('stored-before', input.storedBefore, [], text))
  }
  if (input.storedAfter !== null) {
    const text = `After the work it stores ${countOf(input.storedAfter, 'entry', 'entries').toLowerCase()}.`
    statements.push(statement('stored-after', input.storedAfter, [], text))
  }
  return statements
}

/** What becomes of keys that are not here: the sentence that matters most to an insurer. */
function absentStatements(counts: TallyCounts): TallyStatement[] {
  const { input, bench, unaccounted, absentClones } = counts
  const clones = absentClones.map((key) => key.id)
  const keys = counts.absent.filter((key) => !absentClones.includes(key)).map((key) => key.id)
  const saidAway = Math.max(0, (input.saidToExist ?? bench.length) - bench.length - clones.length)
  const count = Math.max(unaccounted ?? 0, saidAway, keys.length)
  const cloneStatements = clones.length === 0 ? [] : [absentCloneStatement(clones)]
  return count === 0 ? cloneStatements : [...fateStatements(counts, count, keys), ...cloneStatements]
}

/** A clone that is away shares its entry with a key that stays. */
function absentCloneStatement(clones: readonly string[]): TallyStatement {
  const many = clones.length
  const text = `${countOf(many, 'key')}${named(clones)} ${verb(many, 'is', 'are')} not here but ${verb(many, 'repeats the identity of a key', 'repeat identities of keys')} that ${verb(many, 'is', 'are')}: ${verb(many, 'it starts', 'they start')} this car as long as ${verb(many, 'that key does', 'those keys do')}.`
  return statement('absent-clone-still-starts', many, clones, text)
}

function fateStatements(counts: TallyCounts, count: number, keys: readonly string[]): TallyStatement[] {
  const { input, unaccounted, expectedAfter } = counts
  if (input.replacesAll === true && input.storedAfter !== null) {
    if (input.storedAfter > expectedAfter) {
      const text = `The list was rewritten, but the car stores more than the keys explain: it is not proven that keys that were not here have stopped starting this car.`
      return [statement('absent-keys-not-proven-stopped', count, keys, text)]
    }
    const text = 'Keys that were not here stopped starting this car today. The blade may still open the door.'
    return [statement('absent-keys-stopped', count, keys, text)]
  }

  const statements: TallyStatement[] = []
  if (unaccounted !== null && unaccounted > 0) {
    const text =
      unaccounted === 1
        ? 'One key somewhere still starts this car.'
        : `Up to ${unaccounted} keys somewhere still start this car.`
    statements.push(statement('keys-somewhere-start', unaccounted, keys, text))
    statements.push(...entriesAreNotKeys(counts, unaccounted))
  }
  if (input.replacesAll === true) {
    const text =
      'Keys that are not here will stop starting this car when the list is rewritten. The blade may still open the door.'
    statements.push(statement('absent-keys-will-stop', count, keys, text))
  } else if (input.replacesAll === false) {
    const text = 'Keys that are not here are not removed by this work.'
    statements.push(statement('absent-keys-still-start', count, keys, text))
  } else {
    const text =
      'It is not known whether this work removes keys that are not here: expect that they stop starting this car, and do not count on it.'
    statements.push(statement('absent-keys-unknown', count, keys, text))
  }
  return statements
}

/** Some systems give one key two places; without a key on the bench no duplicate can be ours. */
function entriesAreNotKeys(counts: TallyCounts, unaccounted: number): TallyStatement[] {
  if (counts.identitiesOnBench.length === 0) return []
  const text = `Entries are not keys: in some systems one key takes two places, so ${
    unaccounted === 1 ? 'this entry may be' : `some of these ${unaccounted} entries may be`
  } a second place of a key on the bench.`
  return [statement('entries-are-not-keys', unaccounted, [], text)]
}

function identityStatements(counts: TallyCounts): TallyStatement[] {
  const here = [...counts.bench, ...counts.fresh]
  const clones = here.filter((key) => key.cloneOf !== null)
  if (clones.length === 0) return []
  const keys = clones.map((key) => key.id)
  const text = `${countOf(keys.length, 'key')}${named(keys)} ${verb(keys.length, 'is a clone', 'are clones')}: to the car a clone and its original are one key, and erasing one erases both.`
  return [statement('clones-count-once', keys.length, keys, text)]
}

function testStatements(counts: TallyCounts): TallyStatement[] {
  const here = [...counts.bench, ...counts.fresh]
  const starting = here.filter((key) => key.startsAfter === true).map((key) => key.id)
  const statements: TallyStatement[] = []
  if (starting.length > 0) {
    const text = `${countOf(starting.length, 'key')} here ${verb(starting.length, 'was', 'were')} seen to start this car after the work${named(starting)}.`
    statements.push(statement('keys-start-now', starting.length, starting, text))
  }
  for (const id of counts.noLongerStart) {
    const text = `Key ${id} started this car before the work and does not now.`
    statements.push(statement('key-no-longer-starts', 1, [id], text))
  }
  if (counts.neverTested.length > 0) {
    const text = `${countOf(counts.neverTested.length, 'key')} here ${verb(counts.neverTested.length, 'was', 'were')} never tested${named(counts.neverTested)}.`
    statements.push(statement('keys-never-tested', counts.neverTested.length, counts.neverTested, text))
  }
  return statements
}

function statement(
  code: StatementCode,
  count: number,
  keys: readonly string[],
  text: string,
): TallyStatement {
  return { code, count, keys, text }
}
