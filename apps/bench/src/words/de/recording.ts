import type { SameCodes } from '@shearline/jobfile'
import type { recordingWords as english } from '../en/recording.ts'
import { recordingServiceWords } from './recording-services.ts'
import { recordingViewWords } from './recording-view.ts'

/** German: Recordings and faults. */
export const recordingWords: SameCodes<typeof english> = {
  ...recordingViewWords,
  ...recordingServiceWords,

  'recording.pick': 'Aufzeichnung importieren',
  'recording.pick.hint': 'Oder irgendwo auf dieser Seite ablegen. Gelesen wird sie auf diesem Gerät.',
  'recording.drop': 'Aufzeichnung hier ablegen',
  'recording.title': 'Aufzeichnung {name}',
  'recording.reading': 'Aufzeichnung wird gelesen',
  'recording.looking': 'Sehe nach, was für eine Aufzeichnung das ist.',
  'recording.read-so-far': '{read} von {whole} gelesen',
  'recording.frames-so-far': '{count, plural, =0 {noch kein Frame} one {# Frame} other {# Frames}}',
  'recording.messages-so-far':
    '{count, plural, =0 {noch keine Nachricht} one {# Nachricht} other {# Nachrichten}}',
  'recording.read-percent': '{percent} Prozent gelesen',
  'recording.cancel.hint': 'Nichts wird aufbewahrt, bevor Sie es sagen.',
  'recording.failed': 'Das Lesen brach ab: {problem} Nichts wurde eingetragen.',
  'recording.unknown':
    'Diese Datei lässt sich nicht als Aufzeichnung lesen: {reason}. Nichts wurde eingetragen.',
  'recording.format': 'Format: {format}; Grund: {reason}.',
  'recording.size': 'Größe',
  'recording.frames': 'Frames',
  'recording.messages': 'Nachrichten',
  'recording.messages.of':
    '{count, number}{incomplete, plural, =0 {} one {, # weitere unvollständig} other {, # weitere unvollständig}}',
  'recording.units': 'Steuergeräte, die antworteten',
  'recording.faults': 'Gemeldete Fehler',
  'recording.faults.of':
    '{units, plural, =0 {keine Fehlerliste darin} one {{faults} von # Steuergerät} other {{faults} von # Steuergeräten}}',
  'recording.vin': 'Mitgehörte VIN:',
  'recording.vin.same': 'dieselbe wie im Protokoll.',
  'recording.vin.differs': 'Nicht die aus dem Protokoll ({vin}): Eingetragen steht sie im Widerspruch dazu.',
  'recording.not-vin':
    'Steuergerät {unit} antwortete „{text}“ auf die Frage nach der VIN. Die Form ist nicht richtig; es wird nicht als VIN eingetragen.',
  'recording.clean': 'Jede Zeile war lesbar.',
  'recording.findings': '{count, plural, one {# Stelle zum Ansehen} other {# Stellen zum Ansehen}}',
  'recording.left-out':
    '{count, plural, one {# Stelle war nicht lesbar und ist ausgelassen.} other {# Stellen waren nicht lesbar und sind ausgelassen.}}',
  'recording.left-out.first': 'Die erste bei {where}: {what}.',
  'recording.more-findings': '{count, plural, one {und # weitere} other {und # weitere}}',
  'recording.again': 'Genau diese Aufzeichnung steht bei diesem Auftrag schon im Protokoll.',
  'recording.which': 'Welcher Scan ist das?',
  'recording.which.hint': 'Sie entscheiden: Nichts in der Datei sagt, ob die Arbeit schon getan war.',
  'recording.no-scan': 'Sie enthält keine Fehlerliste und wird nur als Aufzeichnung aufbewahrt.',
  'recording.which.before': 'Vor der Arbeit',
  'recording.which.after': 'Nach der Arbeit',
  'recording.which.cleared': 'Nach dem Löschen',
  'recording.which.cycled': 'Nach Zündung aus und ein',
  'recording.which.keep': 'Nur aufbewahren',
  'recording.kept-as-is':
    'Aufbewahrt werden ihre Nachrichten, mit geschwärztem Inhalt der Sicherheitsdienste, und der Hash der Datei. Die Datei selbst bleibt, wo sie ist.',
  'recording.sealed': 'Die Datei selbst',
  'recording.sealed.do': 'Auch sie aufbewahren, versiegelt',
  'recording.sealed.hint': 'Öffnen können sie dann: {names}. Alles, was über die Leitung ging, steht darin.',
  'recording.sealed.nobody':
    'Um auch die Datei selbst aufzubewahren, einen Schlüssel nennen, der sie öffnen kann.',
  'recording.record': 'Eintragen',
  'recording.leave': 'Weglassen',
  'strip.what':
    '{length}, {messages, plural, one {# Nachricht} other {# Nachrichten}}, {units, plural, one {# Steuergerät} other {# Steuergeräte}}',
  'strip.events':
    '{count, plural, =0 {Kein Ereignis} one {# Ereignis} other {# Ereignisse}} entlang der Aufzeichnung',
  'event.session-opened': '{count, plural, one {# Sitzung geöffnet} other {# Sitzungen geöffnet}}',
  'event.reset': '{count, plural, one {# Neustart} other {# Neustarts}}',
  'event.muted':
    '{count, plural, one {# Steuergerät stumm geschaltet} other {# Steuergeräte stumm geschaltet}}',
  'event.faults-cleared': '{count, plural, one {# Löschvorgang} other {# Löschvorgänge}}',
  'event.refused': '{count, plural, one {# Ablehnung} other {# Ablehnungen}}',
  'event.supply-low': '{count, plural, one {#-mal niedrige Spannung} other {#-mal niedrige Spannung}}',
}
