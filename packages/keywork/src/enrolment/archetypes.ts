/**
 * @module Teaching rules by behaviour, to start from: no maker's system. Each says where the behaviour is described in
 * the practice notes, or that it is common practice without a source. A firm copies one and corrects it; what it does
 * not know it leaves `unknown`.
 */

import type { TeachingRule } from './types.ts'

/** One rule to start from. `title` is English; a page translates by `code`. */
export interface RuleArchetype {
  readonly code: string
  readonly title: string
  readonly rule: TeachingRule
  readonly source: string
}

const NO_SOURCE = 'common practice, no source'
const TAKES_ALL = ['known', 'blank', 'prepared', 'pre-coded'] as const

/** Durations nobody measured are left unknown rather than guessed. */
const BASE: TeachingRule = {
  kind: 'replace-all',
  capacity: 8,
  leastKeys: 1,
  mostKeys: 8,
  opensWith: 'equipment',
  erases: 'at-close',
  commits: 'at-close',
  sameKeyTwice: 'refused',
  onBreak: 'revert',
  accepts: TAKES_ALL,
  idleSeconds: 'unknown',
}

const rule = (changes: Partial<TeachingRule>): TeachingRule => ({ ...BASE, ...changes })

/** The catalogue. Codes are stable: firms' rules may name the one they came from. */
export const RULE_ARCHETYPES: readonly RuleArchetype[] = [
  {
    code: 'replace-all-at-close',
    title: 'Rewrites the list when the session is closed; a break changes nothing',
    rule: rule({}),
    source: 'practice notes 1.1 (replace-all) and 1.2.6 (saved only at the end)',
  },
  {
    code: 'replace-all-each-key',
    title: 'Rewrites the list with the first key taken; a break keeps the new keys only',
    rule: rule({ commits: 'each-key' }),
    source: 'practice notes 1.1 (replace-all) and 1.2.7 (only the new codes are valid)',
  },
  {
    code: 'replace-all-erased-at-open',
    title: 'Empties the list when the session opens',
    rule: rule({ erases: 'at-open', commits: 'each-key' }),
    source: `${NO_SOURCE}; the outcome "old list lost" is inferred in practice notes 1.2.7`,
  },
  {
    code: 'replace-all-list-lost',
    title: 'Rewrites the list at the close; a break loses it',
    rule: rule({ onBreak: 'list-lost' }),
    source: `${NO_SOURCE}; the outcome "old list lost" is inferred in practice notes 1.2.7`,
  },
  {
    code: 'append',
    title: 'Adds keys until the list is full',
    rule: rule({ kind: 'append', erases: 'never', commits: 'each-key' }),
    source: 'practice notes 1.1 (append)',
  },
  {
    code: 'append-drop-oldest',
    title: 'Adds keys; when the list is full the oldest entry is dropped without asking',
    rule: rule({ kind: 'append-drop-oldest', capacity: 5, erases: 'never', commits: 'each-key' }),
    source: 'practice notes 1.1 (append with overwrite) and 1.2.1 (counts)',
  },
  {
    code: 'append-same-key-twice',
    title: 'Adds entries; the same key shown twice takes two places',
    rule: rule({ kind: 'append', capacity: 4, erases: 'never', commits: 'each-key', sameKeyTwice: 'counts' }),
    source: 'practice notes 1.2.3 (entries, not keys)',
  },
  {
    code: 'self-add-two-keys',
    title: 'Two different keys that start the car open the list for one more',
    rule: rule({
      kind: 'append',
      erases: 'never',
      commits: 'each-key',
      opensWith: 'two-accepted-keys',
      mostKeys: 1,
    }),
    source: 'practice notes 1.1 (two-working-keys self-add)',
  },
  {
    code: 'code-gated-hour',
    title:
      'A code opens the session; three wrong tries cost one hour, and a lost supply starts the hour again',
    rule: rule({
      gate: { triesBeforeWait: 3, waitSeconds: 3600, ignitionOff: 'unknown', supplyLost: 'restarts' },
    }),
    source: 'practice notes 1.2.11 (three tries, one hour, restarted by disconnecting the battery)',
  },
  {
    code: 'code-gated-ignition-on',
    title: 'A code opens the session; five wrong tries cost 20 minutes with the ignition on',
    rule: rule({
      gate: { triesBeforeWait: 5, waitSeconds: 1200, ignitionOff: 'pauses', supplyLost: 'unknown' },
    }),
    source: 'practice notes 1.2.11 (five tries, 20 minutes ignition on) and 1.2.12 (the timer pauses)',
  },
  {
    code: 'timed-wait',
    title: 'Ignition on for ten minutes, three times, without equipment; then the list is rewritten',
    rule: rule({ opensWith: 'timed-wait', commits: 'each-key', seconds: { wait: 1800 } }),
    source: 'practice notes 1.1 (timed wait: about 10 minutes, three times)',
  },
  {
    code: 'all-keys-lost',
    title: 'No accepted key exists: equipment and a code open a session that rewrites the list',
    rule: rule({
      commits: 'unknown',
      onBreak: 'unknown',
      gate: {
        triesBeforeWait: 'unknown',
        waitSeconds: 'unknown',
        ignitionOff: 'unknown',
        supplyLost: 'unknown',
      },
    }),
    source: 'practice notes 1.1 (all keys lost)',
  },
  {
    code: 'numbered-slots',
    title: 'Each key has a numbered place; what is there is overwritten',
    rule: rule({ kind: 'numbered-slots', erases: 'never', commits: 'each-key', slotTaken: 'overwritten' }),
    source: NO_SOURCE,
  },
  {
    code: 'declared-count',
    title: 'Is told how many keys there will be and closes itself at that number',
    rule: rule({ declaredCount: true }),
    source: NO_SOURCE,
  },
  {
    code: 'pre-coded-key',
    title: 'Accepts keys that were supplied already matched to this car',
    rule: rule({ kind: 'append', erases: 'never', commits: 'each-key', accepts: ['known', 'pre-coded'] }),
    source: NO_SOURCE,
  },
  {
    code: 'nothing-known',
    title: 'Nothing is known: every answer is the worst that fits',
    rule: {
      kind: 'unknown',
      capacity: 'unknown',
      leastKeys: 1,
      mostKeys: 8,
      opensWith: 'unknown',
      erases: 'unknown',
      commits: 'unknown',
      sameKeyTwice: 'unknown',
      onBreak: 'unknown',
      accepts: TAKES_ALL,
      idleSeconds: 'unknown',
      wrongKey: 'unknown',
    },
    source: 'ENR-12',
  },
]
