/** @module The English words of the verify page. Its keys are the list of keys every language must have. */
export const en = {
  'page.language': 'Language',
  'page.title': 'Verify a handover document',
  'page.lead':
    'Drop the document or the bundle that the firm handed over. It is checked inside this page: nothing leaves this device, and no connection is needed.',
  'page.drop': 'Drop the file here',
  'page.choose': 'Choose the file',
  'page.another': 'Check another file',
  'page.kinds': 'A sealed document (PDF), a record (JSON) or a bundle (ZIP)',
  'page.foot':
    'This page runs the same checks as the command "shearline verify". Keep it beside your documents: it works for as long as browsers do.',
  'page.no-signatures':
    'This browser cannot check Ed25519 signatures, so this page can prove nothing here. Open it in a newer browser.',
  'busy.read': 'Checking {name}: {share} % read ...',
  'busy.stop': 'Stop',
  'busy.stopped': 'Stopped. Nothing was proven.',
  'busy.failed': 'The file could not be read: {why} Choose it again.',
  'verdict.holds': 'It holds',
  'verdict.holds-means': '{name} is, byte for byte, what was sealed, and says what its record says.',
  'verdict.holds-bundle': '{name} is, byte for byte, what was packed, and every fact in it is proven.',
  'verdict.holds-record':
    'Every fact of {name} is proven. It is a bare record: there are no pages to compare.',
  'verdict.fails': 'It does not hold',
  'verdict.fails-means':
    '{count, plural, one {One thing is wrong with {name}.} other {# things are wrong with {name}.}} Do not rely on it.',
  'mark.holds': 'holds',
  'mark.fails': 'does not hold',
  'mark.unknown': 'not known',
  'check.line': '{check}: {mark}',
  'check.seal': 'The seal',
  'check.seal.holds': 'Its signature is right: the device named below sealed exactly this list of parts.',
  'check.seal.fails': 'There is no seal whose signature is right.',
  'check.bytes': 'Every byte',
  'check.bytes.holds':
    'Every one of the {bytes} bytes outside the place of the seal is the sealed one, and the seal stands as it was written.',
  'check.bytes.fails':
    '{count, plural, =0 {The parts of the file are the sealed ones, but the end of the file is not as the seal was written.} one {One of {all} parts of the file is not the sealed one.} other {# of {all} parts of the file are not the sealed ones.}}',
  'check.bytes.unknown': 'Without a right seal nobody can say which bytes belong to the file.',
  'check.zip.holds': 'Every byte of the zip is the one that was packed, and the list of files is signed.',
  'check.zip.fails': 'The zip or the list of its files is not the one that was packed.',
  'check.facts': 'Facts and signatures',
  'check.facts.holds':
    '{facts, plural, one {The one fact is} other {All # facts are}} signed and linked; {signatures, plural, one {one signature is} other {# signatures are}} right.',
  'check.facts.fails':
    '{facts, plural, one {There is one fact} other {There are # facts}}; {signatures, plural, one {one signature is} other {# signatures are}} right. What is wrong stands below.',
  'check.facts.unknown': 'No fact could be read.',
  'check.hashes': 'Hashes',
  'check.hashes.holds':
    '{hashes, plural, one {One hash was} other {# hashes were}} made again and {hashes, plural, one {is} other {are}} right.',
  'check.hashes.fails':
    '{hashes, plural, one {One hash was} other {# hashes were}} made again and {hashes, plural, one {is} other {are}} right; others are not.',
  'check.pages': 'Pages and record',
  'check.pages.holds': 'The printed pages state what the signed record states, character by character.',
  'check.pages.fails': 'The printed pages do not state what the signed record states.',
  'check.pages.unknown':
    'That is only known when every byte is the sealed one, the record is proven and this page is of the version that made the document.',
  'wrong.title': 'What does not hold, and where',
  'wrong.note': 'To know',
  'wrong.notes': 'What to know',
  'who.title': 'Whose seal it is',
  'who.device': 'Device',
  'who.print': 'Key fingerprint (SHA-256)',
  'who.packed': 'Packed by',
  'who.means':
    'A right seal proves that nothing was changed since this key sealed it. Whose key it is, only the firm can tell: compare the fingerprint with one that you got from the firm by another way.',
  'who.compare': 'Fingerprint you got from the firm',
  'who.same': 'It is the same: this key belongs to whoever gave you that fingerprint.',
  'who.other': 'It is another one: the document was not sealed by the key you know.',
  'who.short': 'Type all 64 digits; {count, plural, one {# digit is} other {# digits are}} there.',
  'strip.title': 'The file from its first to its last byte',
  'strip.alt':
    '{count, plural, one {One part} other {# parts}} in order of the file; {changed, plural, =0 {none is changed} one {one is changed} other {# are changed}}. The list below names each.',
  'strip.seal': 'the place of the seal',
  'strip.parts': '{count, plural, one {One part} other {# parts}}, byte by byte',
  'strip.part': 'Part',
  'strip.from': 'First byte',
  'strip.to': 'Last byte',
  'strip.state': 'State',
  'facts.title': '{count, plural, one {One fact} other {# facts}} of the record',
  'facts.fact': 'Fact',
  'facts.at': 'Recorded (UTC)',
  'facts.by': 'By',
  'file.title': 'The file',
  'file.name': 'Name',
  'file.bytes': 'Bytes',
  'file.job': 'Job',
} as const
