/** @module What a VIN that does not fit may have been. Proposals only: a person reads the plate again and decides. */

import { FORBIDDEN_LOOK_ALIKES, isWellFormedVin, tidyVin, VIN_ALPHABET, VIN_LENGTH } from './alphabet.ts'
import { expectedCheckDigit } from './check-digit.ts'
import { YEAR_CODES } from './model-year.ts'
import type { VinChange, VinRepair } from './types.ts'

/**
 * Characters taken for one another on stamped plates, worn glass, in handwriting and by letter readers, the likelier
 * mistake first. A zero with a dot or a stroke in it is read as 8, G or 6; as the forbidden Q it is in
 * `FORBIDDEN_LOOK_ALIKES`. Common practice, no source; the order is ours.
 */
const LOOK_ALIKES: readonly (readonly [one: string, other: string, rank: number])[] = [
  ['0', 'D', 1],
  ['8', 'B', 1],
  ['5', 'S', 1],
  ['2', 'Z', 1],
  ['6', 'G', 2],
  ['U', 'V', 2],
  ['1', 'L', 2],
  ['1', '7', 2],
  ['1', 'T', 3],
  ['4', 'A', 3],
  ['V', 'Y', 3],
  ['C', 'G', 3],
  ['3', '8', 3],
  ['6', '8', 3],
  ['5', '6', 3],
  ['M', 'N', 3],
  ['E', 'F', 3],
  ['P', 'R', 3],
  ['K', 'X', 3],
  ['H', 'N', 3],
  ['V', 'W', 3],
  ['0', '6', 4],
  ['0', '8', 4],
  ['0', 'G', 4],
  ['3', '5', 4],
  ['7', 'Z', 4],
  ['2', '7', 4],
  ['C', '0', 4],
  ['J', 'U', 4],
]

/** A forbidden letter's other readings, beside the likeliest one. Common practice, no source. */
const FORBIDDEN_OTHERS: Readonly<Record<string, readonly string[]>> = {
  I: ['L', 'T', 'J'],
  O: ['D', 'C'],
  Q: ['D', 'G'],
}

const TRANSPOSED_RANK = 2
const FORBIDDEN_OTHER_RANK = 2
/** A repair whose position 10 is no year code is the last to believe. */
const NO_YEAR_RANK = 10
/** With more forbidden letters than this only their likeliest readings are tried. */
const MOST_FORBIDDEN_VARIED = 3

interface Candidate {
  readonly characters: readonly string[]
  readonly changes: readonly VinChange[]
  readonly by: VinRepair['by']
  readonly rank: number
}

/**
 * Repairs of a VIN that make form and check digit right, likeliest first; empty when it is right already, has not
 * 17 characters, or nothing near fits.
 *
 * Forbidden letters are read as their look-alikes. Only when that is not enough is one further look-alike or one pair
 * of transposed neighbours tried: every further freedom passes the check digit by chance about 1 time in 11.
 * Where the check digit is not required (outside North America) a proposal means less.
 */
export function proposeRepairs(text: string): readonly VinRepair[] {
  const given = [...tidyVin(text)]
  if (given.length !== VIN_LENGTH) return []
  if (
    given.some(
      (character) => !VIN_ALPHABET.includes(character) && FORBIDDEN_LOOK_ALIKES[character] === undefined,
    )
  ) {
    return []
  }
  const readable = readForbidden(given)
  const unchanged = readable.filter((candidate) => candidate.changes.length === 0)
  if (unchanged.some(fits)) return []
  const direct = readable.filter(fits)
  const found = direct.length > 0 ? direct : readable.flatMap(oneMistakeMore).filter(fits)
  return rankedAndDistinct(found)
}

function readForbidden(given: readonly string[]): readonly Candidate[] {
  const vary =
    given.filter((character) => FORBIDDEN_LOOK_ALIKES[character] !== undefined).length <=
    MOST_FORBIDDEN_VARIED
  let candidates: readonly Candidate[] = [{ characters: [], changes: [], by: [], rank: 0 }]
  for (const [index, character] of given.entries()) {
    const likeliest = FORBIDDEN_LOOK_ALIKES[character]
    const readings =
      likeliest === undefined
        ? [character]
        : [likeliest, ...(vary ? (FORBIDDEN_OTHERS[character] ?? []) : [])]
    candidates = candidates.flatMap((candidate) =>
      readings.map((reading, choice) => ({
        characters: [...candidate.characters, reading],
        changes:
          reading === character
            ? candidate.changes
            : [...candidate.changes, { position: index + 1, from: character, to: reading }],
        by: reading === character ? candidate.by : (['forbidden-letter'] as const),
        rank: candidate.rank + (choice === 0 ? 0 : FORBIDDEN_OTHER_RANK + choice),
      })),
    )
  }
  return candidates
}

function oneMistakeMore(base: Candidate): readonly Candidate[] {
  const more: Candidate[] = []
  for (let index = 0; index < VIN_LENGTH; index += 1) {
    const here = base.characters[index] ?? ''
    for (const [one, other, rank] of LOOK_ALIKES) {
      const reading = here === one ? other : here === other ? one : null
      if (reading === null) continue
      more.push({
        characters: base.characters.with(index, reading),
        changes: [...base.changes, { position: index + 1, from: here, to: reading }],
        by: [...base.by, 'look-alike'],
        rank: base.rank + rank,
      })
    }
    const next = base.characters[index + 1]
    if (next === undefined || next === here) continue
    more.push({
      characters: base.characters.with(index, next).with(index + 1, here),
      changes: [
        ...base.changes,
        { position: index + 1, from: here, to: next },
        { position: index + 2, from: next, to: here },
      ],
      by: [...base.by, 'transposed-neighbours'],
      rank: base.rank + TRANSPOSED_RANK,
    })
  }
  return more
}

function fits(candidate: Candidate): boolean {
  const vin = candidate.characters.join('')
  return isWellFormedVin(vin) && expectedCheckDigit(vin) === vin.charAt(8)
}

function rankedAndDistinct(candidates: readonly Candidate[]): readonly VinRepair[] {
  const repairs = new Map<string, VinRepair>()
  for (const candidate of candidates) {
    const vin = candidate.characters.join('')
    const rank = candidate.rank + (YEAR_CODES.includes(vin.charAt(9)) ? 0 : NO_YEAR_RANK)
    const known = repairs.get(vin)
    if (known !== undefined && known.rank <= rank) continue
    repairs.set(vin, { vin, changes: candidate.changes, by: candidate.by, rank, what: describe(candidate) })
  }
  return [...repairs.values()].sort((a, b) => a.rank - b.rank || (a.vin < b.vin ? -1 : 1))
}

function describe(candidate: Candidate): string {
  const parts = candidate.changes.map(
    (change) => `${change.from} at position ${change.position} read as ${change.to}`,
  )
  return `${parts.join(', ')}: form and check digit are then right.`
}
