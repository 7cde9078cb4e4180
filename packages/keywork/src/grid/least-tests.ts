/** @module The fewest tests that prove the job, given what the work could have disturbed (rules in SPEC.md). */

import { applicableFunctions } from './forms.ts'
import type { Disturbance, GridKey, KeyFunction, NeededTest } from './types.ts'

/** One part of a key that can be disturbed by itself: starting authority, radio and passive entry are separate learnings. */
type Part =
  | 'transponder'
  | 'passive-authority'
  | 'passive-antenna'
  | 'remote-in-step'
  | 'button-lock'
  | 'button-unlock'
  | 'button-boot'
  | 'button-panic'
  | 'cuts-door'
  | 'cuts-ignition'
  | 'cuts-boot'

/**
 * What a passed test proves. A start by turning proves the chip and the blade in the ignition lock; a passive start
 * proves the radio answer but not the chip, which only the emergency start with the cell out does (practice 1.5.3).
 */
const PROVES: Readonly<Record<KeyFunction, readonly Part[]>> = {
  start: ['transponder', 'cuts-ignition'],
  'emergency-start': ['transponder'],
  'passive-start': ['passive-authority'],
  'passive-entry': ['passive-antenna'],
  lock: ['button-lock', 'remote-in-step'],
  unlock: ['button-unlock', 'remote-in-step'],
  boot: ['button-boot', 'remote-in-step'],
  panic: ['button-panic', 'remote-in-step'],
  'blade-door': ['cuts-door'],
  'blade-ignition': ['cuts-ignition'],
  'blade-boot': ['cuts-boot'],
}

const ALL_PARTS: readonly Part[] = [...new Set(Object.values(PROVES).flat())]
const ELECTRONICS: readonly Part[] = ALL_PARTS.filter((part) => !part.startsWith('cuts-'))
const AUTHORITY: readonly Part[] = ['transponder', 'passive-authority']

/** What each disturbance can have touched, why, and where that is said. */
const DISTURBS: Readonly<
  Record<Disturbance['what'], { readonly parts: readonly Part[]; readonly because: string }>
> = {
  'list-rewritten': {
    parts: AUTHORITY,
    because: 'The list of accepted keys was open: each key must be seen to start the car (practice 1.2.7).',
  },
  'remote-list-rewritten': {
    parts: ['remote-in-step', 'passive-antenna'],
    because:
      'The list of remotes was open: remote and passive entry are learnt apart from starting (practice 1.3).',
  },
  'supply-interrupted': {
    parts: ['remote-in-step'],
    because: 'A supply that was interrupted or supported can put every remote out of step (practice 1.4).',
  },
  'cell-changed': {
    parts: ['remote-in-step', 'passive-authority', 'passive-antenna'],
    because: 'A changed cell can put the remote out of step and feeds the passive answer (practice 1.4.1).',
  },
  'case-opened': {
    parts: ELECTRONICS,
    because:
      'The case was open: the chip can stay behind and buttons can miss their contacts (practice 1.3.2).',
  },
  'blade-cut': {
    parts: ['cuts-door', 'cuts-ignition', 'cuts-boot'],
    because: 'A cut blade is tried in every lock; locks may differ (practice 2, common practice).',
  },
  'lock-changed': {
    parts: ['cuts-door', 'cuts-ignition', 'cuts-boot'],
    because: 'A lock was changed: each blade is tried in every lock (practice 2).',
  },
  'key-new': {
    parts: ALL_PARTS,
    because: 'A new key has never been seen to work.',
  },
}

/**
 * The least set of tests after the work: for each key on the bench the fewest functions that together prove every
 * part the work could have disturbed. A disturbance without `keys` touches all; every new key is wholly unproven.
 * Among sets of equal size the one earlier in page order is taken. Exact: all subsets are compared.
 */
export function leastTests(
  keys: readonly GridKey[],
  disturbed: readonly Disturbance[],
): readonly NeededTest[] {
  return keys.filter((key) => key.onBench).flatMap((key) => leastForKey(key, disturbed))
}

function leastForKey(key: GridKey, disturbed: readonly Disturbance[]): readonly NeededTest[] {
  const touching: Disturbance['what'][] = disturbed
    .filter((each) => each.keys === undefined || each.keys.includes(key.id))
    .map((each) => each.what)
  if (key.origin === 'new') touching.push('key-new')
  const functions = applicableFunctions(key)
  const provable = new Set(functions.flatMap((name) => PROVES[name]))
  const needed = new Set(
    touching.flatMap((what) => DISTURBS[what].parts).filter((part) => provable.has(part)),
  )

  let best: readonly KeyFunction[] = functions
  for (let subset = 0; subset < 2 ** functions.length; subset += 1) {
    const chosen = functions.filter((_, index) => (subset >> index) & 1)
    if (chosen.length >= best.length) continue
    const proven = new Set(chosen.flatMap((name) => PROVES[name]))
    if ([...needed].every((part) => proven.has(part))) best = chosen
  }
  return best.map((name) => ({
    key: key.id,
    function: name,
    because: [...new Set(touching)]
      .filter((what) => DISTURBS[what].parts.some((part) => PROVES[name].includes(part)))
      .map((what) => ({ what, text: DISTURBS[what].because })),
  }))
}
