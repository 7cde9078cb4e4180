/** Phrases of the sheets beside the handover document: consents, what to bring, refusal, statement of keys, return visit. */
export const sheetWords = {
  'sheet.absent-keys': 'Consent: keys that are not here',
  'sheet.no-check': 'Consent: no check before the work',
  'sheet.bring-this': 'What to bring',
  'sheet.refusal': 'Note: work not done',
  'sheet.insurer': 'Statement of keys',
  'sheet.return-visit': 'Return visit',
  'sheet-preview.absent-keys':
    '{count, plural, one {One key is named as not here} other {# keys are named as not here}}: {names}.',
  'sheet-preview.absent-keys.nothing': 'No key is named as not here.',
  'sheet-preview.no-check': 'No key that is here is on record as starting the car before the work.',
  'sheet-preview.no-check.nothing': 'A key started the car before the work, so it could be checked.',
  'sheet-preview.bring-this': 'For {when}, {place}.',
  'sheet-preview.bring-this.nothing': 'No appointment is on record.',
  'sheet-preview.refusal': '{decision}: {reason}',
  'sheet-preview.refusal.nothing': 'The work was neither refused nor held.',
  'sheet-preview.insurer':
    '{here, plural, one {One key was here} other {# keys were here}}, {absent, plural, =0 {none is named as absent} one {one is named as absent} other {# are named as absent}}.',
  'sheet-preview.insurer.nothing': 'No key is on record.',
  'sheet-preview.return-visit':
    '{count, plural, =0 {Nothing is open; the sheet says what was done.} one {One point is open.} other {# points are open.}}',
  'sheet-preview.return-visit.nothing': 'No work is on record to come back to.',
  'sheet.running': '{sheet}, job {job}',
  'sheet.made': '{at}, from the record as it stood then',
  'sheet.record': 'SHA-256 of that record',
  'sheet.not-a-seal':
    'This sheet carries no seal. What it states stands in the signed record of the job, which the firm keeps and hands over.',
  'sheet.car': 'Car',
  'sheet.job': 'Job',
  'sheet.law': 'Rights given by law stay untouched by this sheet.',
  'sheet.sign': 'Signature',
  'sheet.sign-name': 'Name',
  'sheet.sign-date': 'Place and date',
  'sheet.sign-by': 'Signature',
  'sheet.signed': 'On record as signed by {signer}, {how}.',
  'sheet.agreed': 'On record as agreed in the name of {signer}; no signature for it is on record.',
  'sheet.absent-what': 'What the work does to them',
  'sheet.absent-replace-all':
    'The work rewrites the list of keys that this car accepts. Only keys that are here and are taught again will start it afterwards.',
  'sheet.absent-append':
    'The work adds keys to the list that this car accepts. Keys that are not here should go on starting it; this cannot be tested while they are away.',
  'sheet.absent-oldest':
    'The work adds keys to a list that is full or may be. The car may drop the oldest of them, which can be one that is not here.',
  'sheet.absent-slots':
    'The work puts keys into numbered places. A key that is not here and holds one of these places will no longer start this car.',
  'sheet.absent-unknown':
    'How this car keeps its list is not known. It is treated as if the list were rewritten: keys that are not here may no longer start it.',
  'sheet.absent-named': 'Keys that are not here, by your own names for them:',
  'sheet.absent-others': 'The same holds for a key that nobody named here.',
  'sheet.absent-back':
    'A key that stops can be taught again later, when it is brought to the car. That is a new job with its own price.',
  'sheet.absent-agree': 'I have understood this and agree that the work is done without these keys.',
  'sheet.nocheck-what': 'What cannot be known',
  'sheet.nocheck-why':
    'No key that is here starts this car. Before the work nobody can therefore see what worked and what did not.',
  'sheet.nocheck-functions':
    'Locks, buttons, lamps and other functions can only be tried after the work. If one of them fails then, it cannot be said whether it worked before.',
  'sheet.nocheck-faults':
    'Faults that are found after the work may have been there before. Where the car can be read without a key, this is done first and kept.',
  'sheet.nocheck-damage': 'What can be seen from outside is written down and photographed before the work.',
  'sheet.nocheck-agree': 'I have understood this and agree that the work is done without a check before it.',
  'sheet.bring-hello': 'Please have these things at the car:',
  'sheet.bring-keys':
    'Every key of this car that you have, also one that does not work, is broken or only opens a door.',
  'sheet.bring-keys-why':
    'A key that is not there when the work is done may stop starting the car. It need not be a key you use.',
  'sheet.bring-identity': 'Your identity document with a photo, the original.',
  'sheet.bring-private':
    'The document that shows you as keeper or owner of the car, the original. If the car is not yours: the written consent of the owner and how to reach them.',
  'sheet.bring-trade':
    'The order of your firm with a name and number to call back, and the document that shows who owns the car.',
  'sheet.bring-fleet':
    'The order of the fleet office with a name and number to call back, and the registration document of the car or its number.',
  'sheet.bring-other': 'Also agreed: {what}',
  'sheet.bring-when': 'When',
  'sheet.bring-where': 'Where',
  'sheet.bring-no-time': 'at a time still to be agreed',
  'sheet.bring-place-car':
    'The car stands where one can walk around it and open its doors, if possible off the road and with a phone signal nearby.',
  'sheet.bring-not-sent':
    'Do not send photos of your identity document or of the cuts of a key by message. They are looked at on the spot.',
  'sheet.bring-message':
    '{firm, select, none {Key work} other {{firm}: key work}} on {vehicle}, {when}, {place}. Please bring: every key of this car, working or not; your identity document; {entitlement} A key that is not there may stop starting the car. Please send no photos of documents or key cuts.',
  'sheet.bring-short-private': 'the document that shows you as keeper or owner.',
  'sheet.bring-short-trade': 'the order of your firm and the document that shows who owns the car.',
  'sheet.bring-short-fleet': 'the order of the fleet office and the registration document.',
  'sheet.refusal-what': 'What was decided',
  'sheet.refusal-refused': 'The work was not done. Reason on record: {reason}',
  'sheet.refusal-held': 'The work waits. Reason on record: {reason}',
  'sheet.refusal-no-blame':
    'This note says that what was shown did not suffice for the work. It accuses nobody of anything.',
  'sheet.refusal-by': 'Decided {at} by {by}.',
  'sheet.refusal-seen': 'What was seen',
  'sheet.refusal-seen-none': 'No document was recorded as seen.',
  'sheet.refusal-missing': 'What is missing',
  'sheet.refusal-missing-none': 'The record names nothing further; ask the firm.',
  'sheet.refusal-car': 'What was done to the car',
  'sheet.refusal-untouched': 'No teaching session was opened. No key of this car was changed by us.',
  'sheet.refusal-touched':
    'A teaching session was opened before this decision. The record says what happened in it.',
  'sheet.refusal-scans':
    '{count, plural, =0 {No scan of the control units is on record.} one {One scan of the control units is on record; reading changes nothing in the car.} other {# scans of the control units are on record; reading changes nothing in the car.}}',
  'sheet.insurer-what': 'What this statement is',
  'sheet.insurer-limit':
    'It says what was seen and tried at this car on that day. It cannot say whether further keys exist that nobody named, and it is no statement about who owns the car.',
  'sheet.insurer-tests':
    '{count, plural, =0 {No test on record is marked as done with the customer present.} one {# test on record is marked as done with the customer present.} other {# tests on record are marked as done with the customer present.}}',
  'sheet.insurer-rows': 'Keys on record',
  'sheet.insurer-key': 'Key',
  'sheet.insurer-about': 'What it is',
  'sheet.insurer-before': 'Started the car before',
  'sheet.insurer-after': 'Starts the car after',
  'sheet.insurer-not-tried': 'not tried',
  'sheet.insurer-absent': 'Keys named as not here',
  'sheet.insurer-absent-none': 'None was named.',
  'sheet.return-done': 'What was done',
  'sheet.return-sealed': 'The record of this job was sealed {at} by {by}.',
  'sheet.return-not-sealed': 'The record of this job is not sealed yet.',
  'sheet.return-open': 'What is open',
  'sheet.return-open-none': 'Nothing that this job asks for is open.',
  'sheet.return-broke': 'The teaching session broke off after {after}, because {why}.',
  'sheet.return-keys': 'Which keys start the car now',
  'sheet.return-starts':
    '{count, plural, one {Key {keys} was seen to start it.} other {Keys {keys} were seen to start it.}}',
  'sheet.return-starts-none': 'No key was seen to start it after the work.',
  'sheet.return-fault': 'Fault {code} in {unit}: {class}',
  'sheet.return-faults-none': 'No fault is left open.',
  'sheet.return-faults': 'Faults to look at again',
  'sheet.return-bring': 'For the visit',
  'sheet.return-bring-all': 'Every key of this car, also those that were not here the first time.',
  'sheet.return-bring-file': 'The handover document as a file, not only on paper.',
  'sheet.return-bring-changes': 'What was done to the car since: battery, repairs, other keys.',
} as const satisfies Record<`sheet.${string}` | `sheet-preview.${string}`, string>
