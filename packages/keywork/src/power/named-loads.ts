/** @module Loads by name, where nobody has measured them. */

interface NamedLoad {
  readonly low: number
  readonly mid: number
  readonly high: number
  readonly source: string
}

/** What a car may have switched on during the work. */
export type LoadName =
  | 'ignition-on'
  | 'first-minutes'
  | 'low-beam'
  | 'side-lamps'
  | 'hazard-lamps'
  | 'interior-lamps'
  | 'blower'
  | 'cooling-fan'
  | 'heated-items'
  | 'awake'
  | 'asleep'

/** Amperes at 12 V. A load is drawn between low and high, most often near mid. */
export const NAMED_LOADS: Readonly<Record<LoadName, NamedLoad>> = {
  'ignition-on': {
    low: 5,
    mid: 10,
    high: 20,
    source: 'trade practice 5.3 (8 to 15 A); 5 to 20 A from memory',
  },
  'first-minutes': {
    low: 20,
    mid: 28,
    high: 40,
    source: 'trade practice 5.3: 20 to 40 A at first, all told',
  },
  'low-beam': { low: 8, mid: 11, high: 15, source: 'from memory; with ignition on 15 to 35 A in all' },
  'side-lamps': { low: 1.5, mid: 3, high: 6, source: 'from memory' },
  'hazard-lamps': { low: 1, mid: 4, high: 8, source: 'from memory' },
  'interior-lamps': { low: 0.5, mid: 1.5, high: 4, source: 'from memory' },
  blower: { low: 4, mid: 10, high: 25, source: 'from memory' },
  'cooling-fan': {
    low: 15,
    mid: 25,
    high: 45,
    source: 'trade practice 5.3: fans bring the sum to 70 A or more',
  },
  'heated-items': { low: 10, mid: 20, high: 40, source: 'from memory' },
  awake: {
    low: 0.85,
    mid: 3,
    high: 10,
    source: 'low end an older workshop page (0.85 A); the rest from memory',
  },
  asleep: {
    low: 0.005,
    mid: 0.02,
    high: 0.05,
    source: 'manual pages "Ignition Off Draw Test"; trade practice 2',
  },
}

/** The names in a fixed order. */
export const LOAD_NAMES: readonly LoadName[] = Object.keys(NAMED_LOADS) as LoadName[]

/** What a step of unknown load is taken to draw: from ignition on to lamps and a fan. Own choice. */
export const UNKNOWN_LOAD: { readonly low: number; readonly mid: number; readonly high: number } = {
  low: 5,
  mid: 15,
  high: 40,
}
