/** Phrases of the handover document that its second edition added: photos, life lines, how the supply was left, the square code. */
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
} as const satisfies Record<`doc.${string}`, string>
