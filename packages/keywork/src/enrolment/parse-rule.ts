/** @module Reads a teaching rule from JSON. */

import {
  amountOrUnknown,
  choice,
  count,
  type JsonReader,
  list,
  present,
  quoted,
  Refused,
  UNKNOWN,
  yesOrNo,
} from './json-reader.ts'
import type {
  BreakCause,
  CodeGate,
  Commits,
  Erases,
  OnBreak,
  OpensWith,
  PenaltyPause,
  SameKeyTwice,
  SessionAmperes,
  SessionSeconds,
  SlotTaken,
  Spends,
  TeachingKeyState,
  TeachingKind,
  TeachingRule,
  Unknown,
  WrongKey,
} from './types.ts'

const KINDS: readonly TeachingKind[] = ['replace-all', 'append', 'append-drop-oldest', 'numbered-slots']
const OPENS_WITH: readonly OpensWith[] = ['equipment', 'accepted-key', 'two-accepted-keys', 'timed-wait']
const ERASES: readonly Erases[] = ['at-open', 'at-close', 'never']
const COMMITS: readonly Commits[] = ['each-key', 'at-close']
const SAME_KEY_TWICE: readonly SameKeyTwice[] = ['refused', 'ignored', 'counts']
const ON_BREAK: readonly OnBreak[] = ['revert', 'keep-so-far', 'list-lost']
const SLOT_TAKEN: readonly SlotTaken[] = ['overwritten', 'refused']
const SPENDS: readonly Spends[] = ['when-taken', 'when-stored']
const WRONG_KEY: readonly WrongKey[] = ['ignored', 'ends-session']
const PENALTY_PAUSE: readonly PenaltyPause[] = ['runs', 'pauses', 'restarts']
const BREAK_CAUSES: readonly BreakCause[] = ['supply-lost', 'link-lost', 'time-out']

/** States a key can be in, for the keys of a plan too. */
export const KEY_STATES: readonly TeachingKeyState[] = [
  'known',
  'blank',
  'prepared',
  'locked-elsewhere',
  'pre-coded',
]

/** Reads a rule that stands at `path`. The fields of the base model are required. @throws Refused */
export function readRule(reader: JsonReader, json: unknown, path: string): TeachingRule {
  const at = (name: string): string => (path === '' ? name : `${path}.${name}`)
  const read: {
    readonly [K in keyof TeachingRule]-?: (json: unknown) => Exclude<TeachingRule[K], undefined>
  } = {
    kind: (each) => choice(each, KINDS, at('kind')),
    capacity: (each) => count(each, 1, at('capacity')),
    leastKeys: (each) => count(each, 0, at('leastKeys')),
    mostKeys: (each) => count(each, 1, at('mostKeys')),
    opensWith: (each) => choice(each, OPENS_WITH, at('opensWith')),
    erases: (each) => choice(each, ERASES, at('erases')),
    commits: (each) => choice(each, COMMITS, at('commits')),
    sameKeyTwice: (each) => choice(each, SAME_KEY_TWICE, at('sameKeyTwice')),
    onBreak: (each) => choice(each, ON_BREAK, at('onBreak')),
    accepts: (each) => accepts(each, at('accepts')),
    slotTaken: (each) => choice(each, SLOT_TAKEN, at('slotTaken')),
    declaredCount: (each) => yesOrNo(each, at('declaredCount')),
    spends: (each) => choice(each, SPENDS, at('spends')),
    wrongKey: (each) => choice(each, WRONG_KEY, at('wrongKey')),
    onBreakBy: (each) => onBreakBy(reader, each, at('onBreakBy')),
    gate: (each) => gate(reader, each, at('gate')),
    idleSeconds: (each) => amountOrUnknown(each, at('idleSeconds')),
    seconds: (each) => seconds(reader, each, at('seconds')),
    amperes: (each) => amperes(reader, each, at('amperes')),
  }
  const fields = reader.fields(json, path, Object.keys(read))
  const required = {
    kind: read.kind(fields.kind),
    capacity: read.capacity(fields.capacity),
    leastKeys: read.leastKeys(fields.leastKeys),
    mostKeys: read.mostKeys(fields.mostKeys),
    opensWith: read.opensWith(fields.opensWith),
    erases: read.erases(fields.erases),
    commits: read.commits(fields.commits),
    sameKeyTwice: read.sameKeyTwice(fields.sameKeyTwice),
    onBreak: read.onBreak(fields.onBreak),
    accepts: read.accepts(fields.accepts),
  }
  return { ...present<TeachingRule>(fields, read), ...required }
}

function accepts(json: unknown, path: string): readonly TeachingKeyState[] | Unknown {
  if (json === UNKNOWN) return UNKNOWN
  return list(json, path).map((each, index) => {
    const state = KEY_STATES.find((known) => known === each)
    if (state !== undefined) return state
    throw new Refused(`${path}[${index}]`, `must be one of ${KEY_STATES.join(', ')}; found ${quoted(each)}`)
  })
}

function onBreakBy(
  reader: JsonReader,
  json: unknown,
  path: string,
): Readonly<Partial<Record<BreakCause, OnBreak | Unknown>>> {
  const fields = reader.fields(json, path, BREAK_CAUSES)
  const causes = BREAK_CAUSES.filter((cause) => fields[cause] !== undefined)
  return Object.fromEntries(
    causes.map((cause) => [cause, choice(fields[cause], ON_BREAK, `${path}.${cause}`)]),
  )
}

function gate(reader: JsonReader, json: unknown, path: string): CodeGate {
  const fields = reader.fields(json, path, ['triesBeforeWait', 'waitSeconds', 'ignitionOff', 'supplyLost'])
  return {
    triesBeforeWait: count(fields.triesBeforeWait, 1, `${path}.triesBeforeWait`),
    waitSeconds: amountOrUnknown(fields.waitSeconds, `${path}.waitSeconds`),
    ignitionOff: choice(fields.ignitionOff, PENALTY_PAUSE, `${path}.ignitionOff`),
    supplyLost: choice(fields.supplyLost, PENALTY_PAUSE, `${path}.supplyLost`),
  }
}

function seconds(reader: JsonReader, json: unknown, path: string): SessionSeconds {
  const names = ['open', 'show', 'close', 'restore', 'wait', 'afterBreak'] as const
  const fields = reader.fields(json, path, names)
  const read = (name: (typeof names)[number]) => (each: unknown) => amountOrUnknown(each, `${path}.${name}`)
  return present<SessionSeconds>(fields, {
    open: read('open'),
    show: read('show'),
    close: read('close'),
    restore: read('restore'),
    wait: read('wait'),
    afterBreak: read('afterBreak'),
  })
}

function amperes(reader: JsonReader, json: unknown, path: string): SessionAmperes {
  const names = ['open', 'show', 'close', 'wait'] as const
  const fields = reader.fields(json, path, names)
  const read = (name: (typeof names)[number]) => (each: unknown) => amountOrUnknown(each, `${path}.${name}`)
  return present<SessionAmperes>(fields, {
    open: read('open'),
    show: read('show'),
    close: read('close'),
    wait: read('wait'),
  })
}
