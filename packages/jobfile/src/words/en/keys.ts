import type { DifferenceCode, KeyForm, KeyFunction, StatementCode, TestOutcome } from '@shearline/keywork'
import type { Body } from '../../facts/index.ts'

type Label = Body<'key-labelled'>

/** Keys: what they are and what each can do. */
export const keyWords = {
  'function.start': 'Start',
  'function.emergency-start': 'Emergency start position',
  'function.passive-start': 'Passive start',
  'function.passive-entry': 'Passive entry',
  'function.lock': 'Lock button',
  'function.unlock': 'Unlock button',
  'function.boot': 'Boot button',
  'function.panic': 'Alarm button',
  'function.blade-door': 'Blade in the door lock',
  'function.blade-ignition': 'Blade in the ignition lock',
  'function.blade-boot': 'Blade in the boot lock',
  'form.blade': 'Plain blade',
  'form.transponder': 'Transponder key',
  'form.remote-head': 'Remote head key',
  'form.flip': 'Flip key',
  'form.proximity': 'Proximity key',
  'form.card': 'Card key',
  'outcome.works': 'works',
  'outcome.fails': 'fails',
  'outcome.not-applicable': 'has none',
  'outcome.not-tested': 'not tested',
  'outcome.open': 'no answer',
  'origin.existing': 'was here before',
  'origin.new': 'new',
  'make.genuine': 'genuine',
  'make.aftermarket': 'aftermarket',
  'make.renewed': 'renewed',
  'make.unknown': 'origin not known',
  'colour.brass': 'brass',
  'colour.slate': 'slate',
  'colour.moss': 'moss',
  'colour.rust': 'rust',
  'colour.sky': 'sky',
  'colour.plum': 'plum',
  'colour.sand': 'sand',
  'colour.ink': 'ink',
} as const satisfies Record<
  | `function.${KeyFunction}`
  | `form.${KeyForm}`
  | `outcome.${TestOutcome | 'open'}`
  | `origin.${Label['origin']}`
  | `make.${Label['make']}`
  | `colour.${Label['colour']}`,
  string
>

/** Disagreements between the numbers, short enough to stand in a need. */
export const differenceWords = {
  'difference.said-more-than-bench':
    '{count, plural, one {# key said to exist is not here} other {# keys said to exist are not here}}',
  'difference.said-fewer-than-bench':
    '{count, plural, one {# key more is here than the customer knew of} other {# keys more are here than the customer knew of}}',
  'difference.stored-more-than-bench':
    '{count, plural, one {the car stored # entry that no key here explains} other {the car stored # entries that no key here explains}}',
  'difference.stored-fewer-than-bench':
    '{count, plural, one {# key here had no entry in the car} other {# keys here had no entry in the car}}',
  'difference.after-more-than-keys':
    '{count, plural, one {the car stores # entry more than the keys explain} other {the car stores # entries more than the keys explain}}',
  'difference.after-fewer-than-keys':
    '{count, plural, one {the car stores # entry fewer than there are keys} other {the car stores # entries fewer than there are keys}}',
  'difference.stored-key-does-not-start':
    '{count, plural, one {# key on the bench does not start the car} other {# keys on the bench do not start the car}}',
} as const satisfies Record<`difference.${DifferenceCode}`, string>

/** What the tally means, for customer and insurer. */
export const statementWords = {
  'statement.stored-before':
    'Before the work this car stored {count, plural, =0 {no entry} one {# entry} other {# entries}}.',
  'statement.stored-after':
    'After the work it stores {count, plural, =0 {no entry} one {# entry} other {# entries}}.',
  'statement.keys-somewhere-start':
    '{count, plural, one {One key somewhere still starts this car.} other {Up to # keys somewhere still start this car.}}',
  'statement.absent-keys-stopped':
    'Keys that were not here stopped starting this car. The blade may still open the door.',
  'statement.absent-keys-will-stop':
    'Keys that are not here will stop starting this car when the list is rewritten. The blade may still open the door.',
  'statement.absent-keys-still-start': 'Keys that are not here are not removed by this work.',
  'statement.absent-keys-not-proven-stopped':
    'The list was rewritten, but the car stores more than the keys explain. It is not proven that keys that were not here have stopped starting this car.',
  'statement.absent-keys-unknown':
    'It is not known whether this work removes keys that are not here. Expect that they stop starting this car, and do not count on it.',
  'statement.absent-clone-still-starts':
    '{count, plural, one {# key} other {# keys}} ({keys}) {count, plural, one {is not here but repeats the identity of a key that is: it starts this car as long as that key does} other {are not here but repeat identities of keys that are: they start this car as long as those keys do}}.',
  'statement.entries-are-not-keys':
    'Entries are not keys: in some systems one key takes two places, so {count, plural, one {this entry may be} other {some of these # entries may be}} a second place of a key on the bench.',
  'statement.clones-count-once':
    '{count, plural, one {# key} other {# keys}} ({keys}) {count, plural, one {is a clone} other {are clones}}: to the car a clone and its original are one key, and erasing one erases both.',
  'statement.keys-start-now':
    '{count, plural, one {# key here was} other {# keys here were}} seen to start this car after the work ({keys}).',
  'statement.key-no-longer-starts': 'Key {keys} started this car before the work and does not now.',
  'statement.keys-never-tested':
    '{count, plural, one {# key here was} other {# keys here were}} never tested ({keys}).',
} as const satisfies Record<`statement.${StatementCode}`, string>
