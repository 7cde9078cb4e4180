/** Kinds of fact about what was agreed, what is kept how long, who saw it, and the devices. */
export const custodyWords = {
  'fact.call-taken':
    'Call taken {channel, select, phone {by telephone} message {by message} visit {in person} other {by the office}}; the car {starts, select, true {starts} false {does not start} other {may or may not start}}; to bring: {bring}',
  'fact.appointment-made': 'Appointment {day} at {from} UTC, {place}',
  'fact.appointment-ended':
    'Appointment {outcome, select, kept {kept} moved {moved} other {called off}}: {because}',
  'fact.quote-given': 'Quote given: {amount}',
  'fact.policy-answered': 'Rule "{question}" answered: {answer} ({pack})',
  'fact.plan-accepted': 'Plan accepted by {signer}, order {order}, {plan}…',
  'fact.step-done':
    'Step {outcome, select, done {done} failed {failed} other {left out}}: {step} ({because})',
  'fact.signature-drawn':
    'Signed by {signer} for the {what, select, consent {consent} plan {plan} quote {quote} handover {hand-over} other {acknowledgement}}',
  'fact.photo-attached':
    'Photo of {shows, select, key {a key} vin {the VIN} odometer {the odometer} lamps {the lamps} damage {damage} equipment {equipment} identity {an identity document} other {something else}}: {words}',
  'fact.vehicle-handed-over': 'Vehicle handed over to {to}; keys: {keys}',
  'fact.purpose-ended': '{what}: no longer needed. {because}',
  'fact.hold-placed': 'Nothing may be deleted: {reason}',
  'fact.hold-lifted': 'Deleting is allowed again: {reason}',
  'fact.deletion-proven': '{what}: {count, plural, one {# thing} other {# things}} deleted. {why}',
  'fact.secret-sealed':
    'Sealed: {what}, {count, plural, =0 {by a passphrase} one {one can open it} other {# can open it}}, {blob}…',
  'fact.secret-opened': 'Sealed data {blob}… opened: {reason}',
  'fact.device-enrolled': 'Device {name} ({device}) enrolled, approved by {by}',
  'fact.device-key-rotated': 'New key: this device is now {name} ({device}). {because}',
  'fact.device-revoked':
    'Device {device} no longer trusted ({because, select, retired {retired} replaced {replaced} lost {lost} stolen {stolen} other {its key may be in other hands}}): {reason}',
  'fact.newer-version':
    'A newer version recorded "{kind}" in a form this version cannot read. It is kept, not understood; update Shearline.',
} as const
