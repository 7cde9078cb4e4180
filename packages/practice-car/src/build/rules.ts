/** @module Teaching rules a practice car may follow; behaviours of general trade practice, no maker's. */

import type { PracticeRule } from '../key-list/index.ts'

const PLAIN: PracticeRule = {
  kind: 'replace-all',
  capacity: 8,
  leastKeys: 1,
  mostKeys: 8,
  opensWith: 'equipment',
  erases: 'at-close',
  commits: 'at-close',
  sameKeyTwice: 'refused',
  onBreak: 'revert',
  accepts: ['known', 'blank', 'prepared'],
}

/** Rules by a name that says what the car does. */
export const PRACTICE_RULES: Readonly<Record<string, PracticeRule>> = {
  'rewrites the list at the close': PLAIN,
  'rewrites the list with each key': { ...PLAIN, commits: 'each-key' },
  'erases the list when it opens': { ...PLAIN, erases: 'at-open', onBreak: 'keep-so-far', leastKeys: 2 },
  'adds a key': { ...PLAIN, kind: 'append', erases: 'never', commits: 'each-key', capacity: 5 },
  'adds a key and drops the oldest': {
    ...PLAIN,
    kind: 'append-drop-oldest',
    erases: 'never',
    commits: 'each-key',
    capacity: 4,
  },
  'wants two working keys': {
    ...PLAIN,
    kind: 'append',
    erases: 'never',
    commits: 'each-key',
    opensWith: 'two-accepted-keys',
  },
}
