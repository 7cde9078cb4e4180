import { type ChapterName, type Fact, isKnownKind, type Kind, type TumblerName } from '@shearline/jobfile'

/** The chapter a tumbler leads to when nothing is missing. */
const homes: Readonly<Record<TumblerName, ChapterName>> = {
  authority: 'authority',
  identity: 'arrival',
  keys: 'prove',
  power: 'teach',
  teaching: 'teach',
  faults: 'faults',
  record: 'handover',
}

export function homeOf(tumbler: TumblerName): ChapterName {
  return homes[tumbler]
}

/** A table keyed by every kind, so that a new kind without a chapter fails to compile. */
const chapters: Readonly<Record<Kind, ChapterName | ((body: Fact['body']) => ChapterName)>> = {
  'job-opened': 'call',
  'keys-said': 'call',
  'note-written': 'call',
  'authority-seen': 'authority',
  'authority-decided': 'authority',
  'consent-given': (body) =>
    body.about === 'absent-keys-stop' ? 'plan' : body.about === 'clear-faults' ? 'faults' : 'authority',
  'vin-read': 'arrival',
  'recording-attached': 'arrival',
  'key-labelled': (body) => (body.origin === 'new' ? 'prepare' : 'arrival'),
  'key-count-read': (body) => (body.when === 'after' ? 'prove' : 'arrival'),
  'function-tested': (body) => (body.phase === 'after' ? 'prove' : 'arrival'),
  'difference-explained': (body) =>
    String(body.code).startsWith('said') || String(body.code).startsWith('stored-') ? 'arrival' : 'prove',
  'scan-attached': (body) => (body.phase === 'before' ? 'arrival' : 'faults'),
  'supply-set': 'plan',
  'supply-read': (body) =>
    body.during === 'rest' ? 'arrival' : body.during === 'session' ? 'teach' : 'prove',
  'rule-chosen': 'plan',
  'rehearsal-read': 'plan',
  'backup-proven': 'backup',
  'backup-waived': 'backup',
  'blank-chosen': 'prepare',
  'remote-compared': 'prepare',
  'session-opened': 'teach',
  'key-taught': 'teach',
  'session-closed': 'teach',
  'broke-off': 'teach',
  'break-off-mended': 'teach',
  'unit-named': 'faults',
  'unit-matched': 'faults',
  'fault-acknowledged': 'faults',
  'clear-requested': 'faults',
  'caution-read': 'handover',
  'price-agreed': 'handover',
  'invoice-issued': 'handover',
  'warranty-given': 'handover',
  'retention-set': 'handover',
  'document-sealed': 'handover',
  'call-taken': 'call',
  'appointment-made': 'call',
  'appointment-ended': 'call',
  'quote-given': 'call',
  'policy-answered': (body) => (String(body.question).startsWith('site.') ? 'arrival' : 'authority'),
  'plan-accepted': 'plan',
  'step-done': 'teach',
  'signature-drawn': (body) =>
    body.for === 'handover' ? 'handover' : body.for === 'acknowledgement' ? 'faults' : 'plan',
  'photo-attached': (body) => (body.shows === 'identity' ? 'authority' : 'arrival'),
  'secret-sealed': 'backup',
  'secret-opened': 'backup',
  'vehicle-handed-over': 'handover',
  'blank-used': 'close',
  'purpose-ended': 'close',
  'hold-placed': 'close',
  'hold-lifted': 'close',
  'deletion-proven': 'close',
  'device-enrolled': 'close',
  'device-key-rotated': 'close',
  'device-revoked': 'close',
  corrected: 'close',
}

/** The chapter a fact stands in; facts of kinds this version does not know stand in the last one. */
export function chapterOf(fact: Fact): ChapterName {
  if (!isKnownKind(fact.kind)) return 'close'
  const chapter = chapters[fact.kind]
  return typeof chapter === 'string' ? chapter : chapter(fact.body)
}
