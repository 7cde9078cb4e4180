/** @module Exercises at the practice car: a visit that goes wrong, and a goal. */

import { buildCar, PRACTICE_RULES } from '../build/index.ts'
import type { PracticeKey, PracticeRule } from '../key-list/index.ts'
import type { CarChoices } from '../vehicle/index.ts'

/** What goes wrong, and when. */
export type Incident =
  | { readonly what: 'supply-lost'; readonly afterKeysTaken: number }
  | { readonly what: 'link-lost'; readonly afterKeysTaken: number }
  | { readonly what: 'none' }

/** A code that must be entered before the session opens, and what a wrong one costs. */
export interface PracticeGate {
  /** The first code entered is wrong: a digit was misread. */
  readonly firstIsWrong: boolean
  readonly triesBeforeWait: number
  readonly waitSeconds: number
}

/** One exercise. Its words are in the command's and the bench's catalogues, by `id`. */
export interface Exercise {
  readonly id: string
  readonly car: CarChoices
  readonly incident: Incident
  /** Keys that must start the car and do everything at the end. */
  readonly wanted: readonly string[]
  /** A proven backup of the list is at hand. */
  readonly backup: boolean
  /** Absent: the session opens without a code. */
  readonly gate?: PracticeGate
}

const key = (label: string, more: Partial<PracticeKey> = {}): PracticeKey => ({
  label,
  identity: label,
  state: 'known',
  onBench: true,
  cellVolts: 3,
  ...more,
})

const FRESH = { ampereHours: 60, stateOfCharge: 0.95, resistanceOhms: 0.006, celsius: 18 }
const WEAK = { ampereHours: 60, stateOfCharge: 0.3, resistanceOhms: 0.008, celsius: -6 }

/** All exercises, easiest first. */
export function exercises(): readonly Exercise[] {
  return [
    {
      id: 'one-more-key',
      car: car(11, 'adds a key', FRESH, ['A', 'B'], [key('A'), key('B'), key('N', { state: 'prepared' })]),
      incident: { what: 'none' },
      wanted: ['A', 'B', 'N'],
      backup: true,
    },
    {
      id: 'forgotten-at-home',
      car: car(
        12,
        'rewrites the list at the close',
        FRESH,
        ['A', 'B', 'X'],
        [key('A'), key('B', { onBench: false }), key('N', { state: 'prepared' })],
      ),
      incident: { what: 'none' },
      wanted: ['A', 'B', 'N'],
      backup: true,
    },
    {
      id: 'dies-after-second-key',
      car: car(
        13,
        'rewrites the list with each key',
        WEAK,
        ['A', 'B', 'X'],
        [key('A'), key('B'), key('N', { state: 'blank' })],
      ),
      incident: { what: 'supply-lost', afterKeysTaken: 2 },
      wanted: ['A', 'B', 'N'],
      backup: false,
    },
    {
      id: 'erased-and-cut',
      car: car(
        14,
        'erases the list when it opens',
        WEAK,
        ['A', 'B'],
        [key('A'), key('B', { cellVolts: 2.1 }), key('N', { state: 'blank' })],
        // Once the list is empty nothing opens a session any more: only the backup helps.
        { opensWith: 'accepted-key' },
      ),
      incident: { what: 'link-lost', afterKeysTaken: 0 },
      wanted: ['A', 'B', 'N'],
      backup: true,
    },
    {
      id: 'clone-on-the-ring',
      car: car(
        15,
        'wants two working keys',
        FRESH,
        ['A', 'B'],
        [
          key('A'),
          key('C', { identity: 'A' }),
          key('B', { onBench: false }),
          key('N', { state: 'prepared' }),
        ],
      ),
      incident: { what: 'none' },
      wanted: ['A', 'B', 'N'],
      backup: false,
    },
    {
      id: 'list-is-full',
      car: car(
        16,
        'adds a key and drops the oldest',
        FRESH,
        ['A', 'B', 'X', 'Y'],
        [key('A'), key('B'), key('N', { state: 'prepared' })],
      ),
      incident: { what: 'none' },
      wanted: ['A', 'B', 'N'],
      backup: true,
    },
    {
      id: 'misread-code',
      car: car(
        17,
        'rewrites the list at the close',
        { ...WEAK, stateOfCharge: 0.55 },
        ['A', 'B'],
        [key('A'), key('B'), key('N', { state: 'prepared' })],
      ),
      incident: { what: 'none' },
      wanted: ['A', 'B', 'N'],
      backup: true,
      gate: { firstIsWrong: true, triesBeforeWait: 1, waitSeconds: 1200 },
    },
  ]
}

function car(
  seed: number,
  rule: string,
  battery: CarChoices['battery'],
  stored: readonly string[],
  keys: readonly PracticeKey[],
  but: Partial<PracticeRule> = {},
): CarChoices {
  const known = PRACTICE_RULES[rule]
  if (known === undefined) throw new RangeError(`no rule "${rule}"`)
  return buildCar(seed, { battery, rule: { ...known, ...but }, stored, keys, startSeconds: 1_800_000_000 })
}
