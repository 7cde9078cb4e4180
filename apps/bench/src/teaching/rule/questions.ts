/** @module The questions of the guided form: one for each parameter of a rule, in the order a person would tell them. */

/** A parameter by its path in the rule's JSON; `gate` and `onBreakBy` are asked by yes or no first. */
export type RulePath = (typeof questions)[number]['path']

/** `places`, `keys`, `tries` are whole numbers; times are asked in seconds or minutes and kept in seconds. */
export type Ask = 'one' | 'several' | 'whole' | 'seconds' | 'minutes' | 'amperes'

export type Group = 'session' | 'numbers' | 'code' | 'more' | 'times' | 'currents'
export const groups: readonly Group[] = ['session', 'numbers', 'code', 'more', 'times', 'currents']

export interface Question {
  readonly path: string
  readonly group: Group
  readonly ask: Ask
  readonly answers?: readonly string[]
  /** Least whole number. */
  readonly least?: number
  /** Asked only while another question has one of these answers. */
  readonly when?: { readonly path: string; readonly is: readonly string[] }
}

const onBreak = ['revert', 'keep-so-far', 'list-lost'] as const
const pause = ['runs', 'pauses', 'restarts'] as const
const gated = { path: 'gate', is: ['yes'] } as const
const byCause = { path: 'onBreakBy', is: ['yes'] } as const

export const questions = [
  {
    path: 'kind',
    group: 'session',
    ask: 'one',
    answers: ['replace-all', 'append', 'append-drop-oldest', 'numbered-slots'],
  },
  {
    path: 'opensWith',
    group: 'session',
    ask: 'one',
    answers: ['equipment', 'accepted-key', 'two-accepted-keys', 'timed-wait'],
  },
  { path: 'commits', group: 'session', ask: 'one', answers: ['at-close', 'each-key'] },
  { path: 'erases', group: 'session', ask: 'one', answers: ['at-open', 'at-close', 'never'] },
  { path: 'onBreak', group: 'session', ask: 'one', answers: onBreak },
  { path: 'onBreakBy', group: 'session', ask: 'one', answers: ['no', 'yes'] },
  { path: 'onBreakBy.supply-lost', group: 'session', ask: 'one', answers: onBreak, when: byCause },
  { path: 'onBreakBy.link-lost', group: 'session', ask: 'one', answers: onBreak, when: byCause },
  { path: 'onBreakBy.time-out', group: 'session', ask: 'one', answers: onBreak, when: byCause },
  { path: 'capacity', group: 'numbers', ask: 'whole', least: 1 },
  { path: 'leastKeys', group: 'numbers', ask: 'whole', least: 0 },
  { path: 'mostKeys', group: 'numbers', ask: 'whole', least: 1 },
  { path: 'declaredCount', group: 'numbers', ask: 'one', answers: ['no', 'yes'] },
  { path: 'gate', group: 'code', ask: 'one', answers: ['no', 'yes'] },
  { path: 'gate.triesBeforeWait', group: 'code', ask: 'whole', least: 1, when: gated },
  { path: 'gate.waitSeconds', group: 'code', ask: 'minutes', when: gated },
  { path: 'gate.ignitionOff', group: 'code', ask: 'one', answers: pause, when: gated },
  { path: 'gate.supplyLost', group: 'code', ask: 'one', answers: pause, when: gated },
  { path: 'sameKeyTwice', group: 'more', ask: 'one', answers: ['refused', 'ignored', 'counts'] },
  { path: 'wrongKey', group: 'more', ask: 'one', answers: ['ignored', 'ends-session'] },
  { path: 'accepts', group: 'more', ask: 'several', answers: ['known', 'blank', 'prepared', 'pre-coded'] },
  { path: 'spends', group: 'more', ask: 'one', answers: ['when-taken', 'when-stored'] },
  {
    path: 'slotTaken',
    group: 'more',
    ask: 'one',
    answers: ['overwritten', 'refused'],
    when: { path: 'kind', is: ['numbered-slots', 'unknown'] },
  },
  { path: 'idleSeconds', group: 'times', ask: 'seconds' },
  { path: 'seconds.open', group: 'times', ask: 'seconds' },
  { path: 'seconds.show', group: 'times', ask: 'seconds' },
  { path: 'seconds.close', group: 'times', ask: 'seconds' },
  { path: 'seconds.afterBreak', group: 'times', ask: 'minutes' },
  { path: 'seconds.restore', group: 'times', ask: 'minutes' },
  {
    path: 'seconds.wait',
    group: 'times',
    ask: 'minutes',
    when: { path: 'opensWith', is: ['timed-wait', 'unknown'] },
  },
  { path: 'amperes.open', group: 'currents', ask: 'amperes' },
  { path: 'amperes.show', group: 'currents', ask: 'amperes' },
  { path: 'amperes.close', group: 'currents', ask: 'amperes' },
  {
    path: 'amperes.wait',
    group: 'currents',
    ask: 'amperes',
    when: { path: 'opensWith', is: ['timed-wait', 'unknown'] },
  },
] as const satisfies readonly Question[]
