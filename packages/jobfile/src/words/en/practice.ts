/** Training at the practice car: exercises, what came of an action, and why points were lost. */
export const practiceWords = {
  'practice.one-more-key': 'One more key',
  'practice.one-more-key.story':
    'Two keys work and the customer wants a third. The car adds a key and keeps the others. Prove every key afterwards.',
  'practice.forgotten-at-home': 'A key was left at home',
  'practice.forgotten-at-home.story':
    'The car rewrites its list when the session is closed. The second key lies at home, half an hour away. A third key is stored that nobody has.',
  'practice.dies-after-second-key': 'The session dies after the second key',
  'practice.dies-after-second-key.story':
    'A cold morning, a weak battery, no backup. The list is rewritten with each key. Get them home.',
  'practice.erased-and-cut': 'The list is erased, then the link goes',
  'practice.erased-and-cut.story':
    'The car opens a session only with a working key, and forgets every key at that moment. A proven backup of the list is at hand, and one remote has a flat cell.',
  'practice.clone-on-the-ring': 'Two keys that are one',
  'practice.clone-on-the-ring.story':
    'The car wants two different working keys before it takes a third. Two keys hang on the ring; one of them is a clone.',
  'practice.list-is-full': 'The list is full',
  'practice.list-is-full.story':
    'Four places, four keys stored, two of them lost long ago. The car drops the oldest without a word when it takes another.',

  'practice.misread-code': 'The code was misread',
  'practice.misread-code.story':
    'The session opens only with a code, and somebody took a 1 for a 7. Each wrong try costs twenty minutes. The battery is not the best.',

  'practice.did.supply-on': 'Supply set to {amperes} A: {volts} V.',
  'practice.did.scanned':
    '{faults, plural, =0 {No fault stored} one {# fault stored} other {# faults stored}}; {units, plural, one {# unit} other {# units}} answered.',
  'practice.did.cleared': 'Fault memories cleared; the airbag unit was left alone.',
  'practice.did.cycled': 'Ignition off and on again.',
  'practice.did.session-opened': 'The session is open.',
  'practice.did.session-refused': 'The car does not open the session.',
  'practice.did.session-wants-code': 'The car wants the code first.',
  'practice.did.code-accepted': 'The car takes the code.',
  'practice.did.code-refused':
    'The car refuses the code{minutes, plural, =0 {.} one { and takes no other for # minute.} other { and takes no other for # minutes.}}',
  'practice.did.code-wait':
    'The car still waits: it takes a code in {minutes, plural, one {# minute} other {# minutes}}.',
  'practice.did.code-not-wanted': 'This car asks for no code.',
  'practice.did.stopped': 'The session was stopped.',
  'practice.did.no-session': 'No session is open.',
  'practice.did.session-closed':
    'The session is closed; {stored, plural, one {# key is stored} other {# keys are stored}}.',
  'practice.did.session-too-few':
    'Too few keys were taught: the session ended without being closed; {stored, plural, one {# key is stored} other {# keys are stored}}.',
  'practice.did.no-backup': 'There is no backup.',
  'practice.did.restored':
    'The saved list is back; {stored, plural, one {# key is stored} other {# keys are stored}}.',
  'practice.did.waited': '{minutes, plural, one {# minute} other {# minutes}} later: {volts} V.',
  'practice.did.no-such-key': 'There is no key {key} here.',
  'practice.did.show-taken': 'Key {key} was taken: {taught} taught in this session.',
  'practice.did.show-no-session': 'Key {key} was shown, but no session is open.',
  'practice.did.show-not-accepted': 'Key {key} was not taken.',
  'practice.did.show-same-key': 'Key {key} is known to this session already.',
  'practice.did.show-list-full': 'Key {key} was not taken: the list is full.',
  'practice.did.start-started': 'Key {key} starts the car.',
  'practice.did.start-key-not-accepted': 'Key {key} is not accepted. The car keeps a fault code of it.',
  'practice.did.start-battery-too-weak':
    'Key {key} is accepted, but the battery is too weak to crank: {volts} V.',
  'practice.did.start-not-on-the-bench': 'Key {key} is not here.',
  'practice.did.button-works': 'The buttons of key {key} work.',
  'practice.did.button-dead': 'The buttons of key {key} do nothing.',
  'practice.did.fetched': 'Key {key} was fetched. That took half an hour.',
  'practice.did.cell-new': 'Key {key} has a new cell.',
  'practice.did.incident-supply-lost': 'The supply is gone! The session ended; now {volts} V.',
  'practice.did.incident-link-lost': 'The link to the car is lost! The session ended.',

  'practice.mark.stranded': 'No key here starts the car: the customer is stranded.',
  'practice.mark.session-open': 'The session was left open.',
  'practice.mark.key-does-not-start': 'Key {key} does not start the car.',
  'practice.mark.start-not-proven': 'Nobody tried to start the car with key {key}.',
  'practice.mark.buttons-not-proven': 'Nobody tried the buttons of key {key}.',
  'practice.mark.no-scan-before': 'No fault scan before the work.',
  'practice.mark.no-scan-after': 'No fault scan after the work.',
  'practice.mark.no-supply': 'A weak battery, and no supply before the session.',
} as const
