/** Phrases of the handover document that its second edition added: photos, life lines, how the supply was left, the square code, signatures, hand-over. */
export const pictureWords = {
  'doc.code-alt':
    'A square code to scan. It holds the SHA-256 of the record and the fingerprint of the sealing key, both printed below.',
  'doc.code-about':
    'Scan this code to compare by machine: it holds the SHA-256 of the record and the fingerprint of the key, as printed below. It opens no page and asks for no network.',
  'doc.key-photo': 'Photo on record, SHA-256 beginning {hash}.',
  'doc.key-photo-alt': 'Photo of key {key}: {form}, {colour} label. The record holds it by its SHA-256.',
  'doc.key-cell-rest': 'Coin cell, {rest} V at rest: {verdict}.',
  'doc.key-cell-loaded': 'Coin cell, {loaded} V while transmitting: {verdict}.',
  'doc.key-cell-both': 'Coin cell, {rest} V at rest and {loaded} V while transmitting: {verdict}.',
  'doc.key-cell-replaced': 'The cell was replaced.',
  'doc.fault-strand': 'Life line',
  'doc.fault-strand-alt': '{code}, life line: {life}',
  'doc.fault-strand-legend':
    'The life line stands for {phases}, from the first to the last. A full disc: reported. A ring: the control unit answered and did not report it. A short stroke: not read.',
  'doc.power-verdict': 'Reckoned before the work',
  'doc.power-supply-first': 'Connect a supply first.',
  'doc.power-drain': 'Current after locking',
  'doc.power-drain-read':
    '{milliamperes} mA, {minutes, plural, one {# minute} other {# minutes}} after locking. {state}.',
  'doc.power-removed': 'Support supply',
  'doc.power-removed-state':
    '{removed, select, yes {taken off before the last reading after the work} other {still connected at the last reading after the work}}',
  'doc.handed': 'Handed over',
  'doc.handed-to': '{at}, to {to}. Keys: {keys}',
  'doc.handed-to-unnamed': '{at}, to {to}. Which keys is not on record.',
  'doc.handed-not': 'not on record when this document was made',
  'doc.stopped-button-away':
    'Starting the car and locking it by button are taught separately: a key that does not start the car may still lock or unlock it by button. This cannot be tried with a key that is not here.',
  'doc.consent-unsigned': '{about}. Given in the name of {signer}; no signature for it is on record.',
  'doc.consent-keys-unsigned':
    '{about}: {names}. Given in the name of {signer}; no signature for it is on record.',
  'doc.signatures': 'Signatures on record',
  'doc.signatures-none': 'No signature is on record.',
  'doc.signature-signer': 'Name',
  'doc.signature-for': 'For',
  'doc.signature-how': 'How',
  'doc.signature-when': 'When',
  'doc.signature-kept': 'SHA-256 begins',
  'doc.signature-for.consent': 'Consent',
  'doc.signature-for.plan': 'Plan of the work',
  'doc.signature-for.quote': 'Quote',
  'doc.signature-for.handover': 'Car and keys received',
  'doc.signature-for.acknowledgement': 'Faults acknowledged',
  'doc.signature-drawn': 'drawn by hand',
  'doc.signature-typed': 'name typed on a keyboard',
  'doc.signatures-limit':
    'The signatures themselves are not printed here; the record names each by its SHA-256. It shows what was entered and when, not whose hand it was.',
  'doc.supply-readings': 'Readings',
  'doc.price-tax': 'The record does not say whether this price includes tax.',
  'doc.span-day': '{date}, {from} to {to} ({zone})',
  'doc.span-days': '{from} to {to}',
} as const satisfies Record<`doc.${string}`, string>
