/** @module Which functions a key can have by the way it is built. Common practice, no source; `lacks` corrects it. */

import type { GridKey, KeyForm, KeyFunction } from './types.ts'

/** All functions, in the order a page shows them. */
export const KEY_FUNCTIONS: readonly KeyFunction[] = [
  'start',
  'emergency-start',
  'passive-start',
  'passive-entry',
  'lock',
  'unlock',
  'boot',
  'panic',
  'blade-door',
  'blade-ignition',
  'blade-boot',
]

const BLADES: readonly KeyFunction[] = ['blade-door', 'blade-ignition', 'blade-boot']
const BUTTONS: readonly KeyFunction[] = ['lock', 'unlock', 'boot', 'panic']
/** A key the car finds by itself is not turned; its hidden blade opens a door only (practice 1.5.2). */
const KEYLESS: readonly KeyFunction[] = [
  'emergency-start',
  'passive-start',
  'passive-entry',
  ...BUTTONS,
  'blade-door',
]

/** Each in page order. */
const BY_FORM: Readonly<Record<KeyForm, readonly KeyFunction[]>> = {
  blade: ['start', ...BLADES],
  transponder: ['start', ...BLADES],
  'remote-head': ['start', ...BUTTONS, ...BLADES],
  flip: ['start', ...BUTTONS, ...BLADES],
  proximity: KEYLESS,
  card: KEYLESS,
}

/** Functions that starting the car can be proven by. */
export const STARTING_FUNCTIONS: readonly KeyFunction[] = ['start', 'emergency-start', 'passive-start']

/** The functions that apply to one key: those of its form without those it is said to lack, in page order. */
export function applicableFunctions(key: Pick<GridKey, 'form' | 'lacks'>): readonly KeyFunction[] {
  const names = BY_FORM[key.form]
  return key.lacks.length === 0 ? names : names.filter((name) => !key.lacks.includes(name))
}
