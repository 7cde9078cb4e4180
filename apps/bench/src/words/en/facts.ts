/** Every kind of fact as one sentence, as it stands on record. */
export const factWords = {
  'fact.job-opened': 'Job opened: {title}, {place} ({zone})',
  'fact.keys-said':
    '{count, plural, =0 {No key} one {# key} other {# keys}} said to exist; not here: {absent}',
  'fact.note-written': 'Note: {text}',
  'fact.authority-seen':
    '{role}: {document}, {issuer}, ending {last}; original: {original}; matches: {matched}',
  'fact.authority-decided': '{decision}: {reason}',
  'fact.consent-given': '{what}. Agreed by {signer}',
  'fact.vin-read':
    'VIN {vin}, {source}{picture, select, letters {; read from the letters of a picture} code {; read from a code in a picture} other {}}',
  'fact.recording-attached':
    'Recording {name}: {format}, {size}, {messages, plural, one {# message} other {# messages}}',
  'fact.scan-attached':
    'Scan {phase}: {units, plural, one {# unit} other {# units}}, {faults, plural, =0 {no fault} one {# fault} other {# faults}}',
  'fact.unit-named': 'Control unit {unit} is for: {role}',
  'fact.fault-acknowledged': 'Fault {code} of unit {unit} acknowledged by {signer}: {words}',
  'fact.clear-requested': 'Faults cleared in {units}',
  'fact.supply-set': 'Supply floor {volts} ({source}), {battery}',
  'fact.supply-read': 'Supply {volts}, {during}',
  'fact.key-labelled': 'Key {key}, {colour}: {form}, {origin}',
  'fact.key-count-read':
    'The car stores {count, plural, one {# entry} other {# entries}} {when, select, before {before the work} other {after the work}}',
  'fact.key-count-none':
    'The car shows no count {when, select, before {before the work} other {after the work}}: {because}',
  'fact.function-tested': 'Key {key}, {function}: {outcome} {phase, select, before {before} other {after}}',
  'fact.difference-explained': 'Explained: {reason}',
  'fact.blank-chosen':
    'Blank {item}: {fits, select, true {compared, fits} false {compared, does not fit} other {not compared}}',
  'fact.blank-used': 'Blank {item}: {outcome, select, used {used} spoiled {spoiled} other {back to the van}}',
  'fact.rule-chosen': '{kind}. Known from: {source}',
  'fact.rehearsal-read': 'Rehearsal read, order {order}. {wayBack}',
  'fact.backup-proven':
    'Backup of {what}: {same, select, true {two equal reads, {first}…} other {two reads differ, {first}… and {second}…}}',
  'fact.backup-waived': 'No backup: {because}',
  'fact.session-opened': 'Session opened, {rehearsed, select, true {rehearsed} other {not rehearsed}}',
  'fact.key-taught': 'Key {key} taught; count of the car: {count}; supply: {volts}',
  'fact.session-closed': 'Session closed; count of the car: {count}',
  'fact.broke-off': 'Stopped after {after}: {why}',
  'fact.break-off-mended': 'Break-off mended: {how}',
  'fact.caution-read': 'Caution read: {caution}',
  'fact.price-agreed': 'Price agreed: {amount}',
  'fact.warranty-given': 'Warranty: {months, plural, one {# month} other {# months}}',
  'fact.retention-set': 'Deletion set for {count, plural, one {# class} other {# classes}} ({pack})',
  'fact.corrected': '{action, select, withdrawn {Withdrawn} other {Replaced}}: {reason}',
  'fact.document-sealed': 'Document sealed over {count, plural, one {# fact} other {# facts}}, {root}…',
  'fact.unknown': 'A newer version recorded "{kind}". It is kept, not understood; update Shearline.',
  'fact.erased': 'The content of "{kind}" was deleted when its time was over. Its place in the record stays.',
  'fact.unreadable': 'The content of "{kind}" does not fit its kind. It is kept and not counted.',
} as const
