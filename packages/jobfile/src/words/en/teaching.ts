import type {
  Disturbance,
  GuardCheck,
  InterruptionCause,
  OrderReason,
  RecoveryStep,
  RecoveryWay,
} from '@shearline/keywork'

/** The rehearsal: what can go otherwise, the way back, why the order is as it is, what must be settled first. */
export const teachingWords = {
  'cause.supply-lost': 'The supply was lost',
  'cause.link-lost': 'The connection was lost',
  'cause.time-out': 'The time ran out',
  'cause.closed-early': 'The session was closed early',
  'cause.wrong-code': 'A wrong code was entered',
  'cause.wrong-key': 'A key of another car was shown',
  'cause.repeated-key': 'The same key was shown again',
  'cause.key-refused': 'A key was refused',
  'cause.key-forgotten': 'A key is not here after all',
  'cause.flat-cell': 'A key has a flat cell',

  'recovery.start-with': 'Start the car with key {key}',
  'recovery.emergency-start-with': 'Start with key {key} in the emergency start position, its cell is flat',
  'recovery.wait': 'Wait',
  'recovery.wait-ignition-on': 'Wait with the ignition on',
  'recovery.change-cell': 'Put a new cell into key {key}',
  'recovery.fetch': 'Fetch key {key}',
  'recovery.enter-code': 'Enter the code again',
  'recovery.open': 'Open a new session',
  'recovery.show': 'Show key {key}',
  'recovery.close': 'Close the session',
  'recovery.restore': 'Put the backup back',
  'recovery-way.use-key': 'A key here starts the car',
  'recovery-way.reopen': 'Open a new session',
  'recovery-way.fetch': 'Fetch a key',
  'recovery-way.restore': 'Put the backup back',
  'recovery-way.none': 'No way back with what is here',

  'order-reason.other-strands-more': 'The order {other} leaves the car stranded at more places: {at}.',
  'order-reason.other-strands-longer': 'The order {other} leaves the car stranded for longer: {at}.',
  'order-reason.other-loses-more': 'The order {other} risks more keys that start the car now: {at}.',
  'order-reason.other-spoils-more': 'The order {other} can spoil more new keys: {at}.',
  'order-reason.other-shows-starting-keys-later':
    'The order {other} costs no more, but shows a key that starts the car later.',
  'order-reason.other-leaves-given-order': 'The order {other} is just as good; the given one was kept.',
  'order-reason.only-order': 'There is only one order.',

  'guard.opens': 'The session opens with what is here',
  'guard.code': 'The code is at hand',
  'guard.backup-proven': 'The backup is proven',
  'guard.consent': 'The customer agreed that absent keys may stop working',
  'guard.supply': 'The supply is above its floor',
  'guard.all-keys-here': 'Every key of the car is here',
  'guard.idle-time': 'Every step is quicker than the session waits',
  'guard-meet.opens': 'Bring what opens it: another accepted key, or equipment that can.',
  'guard-meet.code': 'Get the code by a lawful way before opening. It is never written down here.',
  'guard-meet.backup-proven': 'Read the data twice and compare, in the chapter Backup.',
  'guard-meet.consent': 'Name the absent keys and let the customer sign, below.',
  'guard-meet.supply': 'Connect a support supply, set the floor and note a reading.',
  'guard-meet.all-keys-here': 'Ask for every key; what stays away may stop working.',
  'guard-meet.idle-time': 'Find out how long the session waits, and lay the keys out ready.',
  'guard-state.met': 'settled',
  'guard-state.not-met': 'not settled',
  'guard-state.not-said': 'not known',

  'archetype.replace-all-at-close': 'Rewrites the list, saves at the end',
  'archetype.replace-all-each-key': 'Rewrites the list with the first key',
  'archetype.replace-all-erased-at-open': 'Empties the list when it opens',
  'archetype.replace-all-list-lost': 'Rewrites at the end; a break loses the list',
  'archetype.append': 'Adds keys until the list is full',
  'archetype.append-drop-oldest': 'Adds keys; a full list drops its oldest',
  'archetype.append-same-key-twice': 'Adds entries; one key can take two places',
  'archetype.self-add-two-keys': 'Two working keys let in one more',
  'archetype.code-gated-hour': 'A code opens it; wrong tries cost an hour',
  'archetype.code-gated-ignition-on': 'A code opens it; wrong tries cost 20 minutes of ignition',
  'archetype.timed-wait': 'Ignition on and waiting, no equipment',
  'archetype.all-keys-lost': 'No key works any more',
  'archetype.numbered-slots': 'Each key has a numbered place',
  'archetype.declared-count': 'Is told how many keys there will be',
  'archetype.pre-coded-key': 'Takes keys supplied ready for this car',
  'archetype.nothing-known': 'Nothing is known',
  'archetype-absent.replace-all-at-close':
    'Keys that are not here stop working, but only once the session is closed.',
  'archetype-absent.replace-all-each-key':
    'Keys that are not here stop working as soon as the first key is taken.',
  'archetype-absent.replace-all-erased-at-open':
    'Every key stops working the moment the session opens; only those taken start again.',
  'archetype-absent.replace-all-list-lost':
    'Keys that are not here stop working; if the session breaks off, all keys do.',
  'archetype-absent.append': 'Keys that are not here keep working.',
  'archetype-absent.append-drop-oldest':
    'Keys that are not here keep working until the list is full; then the oldest stops without a word.',
  'archetype-absent.append-same-key-twice':
    'Keys that are not here keep working; places fill sooner than there are keys.',
  'archetype-absent.self-add-two-keys': 'Keys that are not here keep working.',
  'archetype-absent.code-gated-hour': 'Keys that are not here stop working once the session is closed.',
  'archetype-absent.code-gated-ignition-on':
    'Keys that are not here stop working once the session is closed.',
  'archetype-absent.timed-wait': 'Keys that are not here stop working as soon as the first key is taken.',
  'archetype-absent.all-keys-lost': 'Keys that turn up later will not start the car.',
  'archetype-absent.numbered-slots':
    'Keys that are not here keep working, unless a new key is put into their place.',
  'archetype-absent.declared-count': 'Keys that are not here stop working once the session is closed.',
  'archetype-absent.pre-coded-key': 'Keys that are not here keep working.',
  'archetype-absent.nothing-known': 'Count on it that keys that are not here stop working.',

  'disturbed.list-rewritten': 'the list of accepted keys was open',
  'disturbed.remote-list-rewritten': 'the list of remotes was open',
  'disturbed.supply-interrupted': 'the supply was interrupted or supported',
  'disturbed.cell-changed': 'its cell was changed',
  'disturbed.case-opened': 'its case was open',
  'disturbed.blade-cut': 'its blade was cut',
  'disturbed.lock-changed': 'a lock was changed',
  'disturbed.key-new': 'it is new',
} as const satisfies Record<
  | `cause.${InterruptionCause}`
  | `recovery.${RecoveryStep['do']}`
  | `recovery-way.${RecoveryWay | 'none'}`
  | `order-reason.${OrderReason['code']}`
  | `guard.${GuardCheck['guard']}`
  | `guard-meet.${GuardCheck['guard']}`
  | `guard-state.${GuardCheck['state']}`
  | `disturbed.${Disturbance['what']}`,
  string
> &
  Record<`archetype.${string}` | `archetype-absent.${string}`, string>
