/** @module The German words of the verify page. */
import type { SameCodes } from '@shearline/jobfile'
import type { en as english } from './en.ts'

export const de: SameCodes<typeof english> = {
  'page.language': 'Sprache',
  'page.title': 'Ein Übergabedokument prüfen',
  'page.lead':
    'Legen Sie das Dokument oder das Paket hier ab, das die Firma übergeben hat. Es wird in dieser Seite geprüft: Nichts verlässt dieses Gerät, und eine Verbindung ist nicht nötig.',
  'page.drop': 'Datei hier ablegen',
  'page.choose': 'Datei auswählen',
  'page.another': 'Andere Datei prüfen',
  'page.kinds': 'Ein versiegeltes Dokument (PDF), ein Protokoll (JSON) oder ein Paket (ZIP)',
  'page.foot':
    'Diese Seite führt dieselben Prüfungen aus wie der Befehl „shearline verify“. Bewahren Sie sie bei Ihren Dokumenten auf: Sie funktioniert, solange es Browser gibt.',
  'page.no-signatures':
    'Dieser Browser kann Ed25519-Signaturen nicht prüfen, deshalb kann diese Seite hier nichts nachweisen. Öffnen Sie sie in einem neueren Browser.',
  'busy.read': '{name} wird geprüft: {share} % gelesen ...',
  'busy.stop': 'Anhalten',
  'busy.stopped': 'Angehalten. Nichts wurde nachgewiesen.',
  'busy.failed': 'Die Datei ließ sich nicht lesen: {why} Wählen Sie sie erneut aus.',
  'verdict.holds': 'Es hält',
  'verdict.holds-means':
    '{name} ist Byte für Byte das, was versiegelt wurde, und sagt, was das Protokoll darin sagt.',
  'verdict.holds-bundle':
    '{name} ist Byte für Byte das, was gepackt wurde, und jeder Eintrag darin ist nachgewiesen.',
  'verdict.holds-record':
    'Jeder Eintrag von {name} ist nachgewiesen. Es ist ein Protokoll allein: Es gibt keine Seiten zum Vergleichen.',
  'verdict.fails': 'Es hält nicht',
  'verdict.fails-means':
    '{count, plural, one {An {name} stimmt ein Punkt nicht.} other {An {name} stimmen # Punkte nicht.}} Verlassen Sie sich nicht darauf.',
  'mark.holds': 'stimmt',
  'mark.fails': 'stimmt nicht',
  'mark.unknown': 'nicht bekannt',
  'check.line': '{check}: {mark}',
  'check.seal': 'Das Siegel',
  'check.seal.holds':
    'Die Signatur stimmt: Das unten genannte Gerät hat genau diese Liste von Teilen versiegelt.',
  'check.seal.fails': 'Es gibt kein Siegel, dessen Signatur stimmt.',
  'check.bytes': 'Jedes Byte',
  'check.bytes.holds':
    'Jedes der {bytes} Bytes außerhalb der Stelle des Siegels ist das versiegelte, und das Siegel steht da, wie es geschrieben wurde.',
  'check.bytes.fails':
    '{count, plural, =0 {Die Teile der Datei sind die versiegelten, aber das Ende der Datei ist nicht so, wie das Siegel geschrieben wurde.} one {Von {all} Teilen der Datei ist einer nicht der versiegelte.} other {Von {all} Teilen der Datei sind # nicht die versiegelten.}}',
  'check.bytes.unknown':
    'Ohne ein Siegel, das stimmt, kann niemand sagen, welche Bytes zu der Datei gehören.',
  'check.zip.holds': 'Jedes Byte der ZIP-Datei ist das gepackte, und die Liste der Dateien ist signiert.',
  'check.zip.fails': 'Die ZIP-Datei oder die Liste der Dateien darin ist nicht die gepackte.',
  'check.facts': 'Einträge und Signaturen',
  'check.facts.holds':
    '{facts, plural, one {Der eine Eintrag ist} other {Alle # Einträge sind}} signiert und verkettet; {signatures, plural, one {eine Signatur stimmt} other {# Signaturen stimmen}}.',
  'check.facts.fails':
    '{facts, plural, one {Es gibt einen Eintrag} other {Es gibt # Einträge}}; {signatures, plural, one {eine Signatur stimmt} other {# Signaturen stimmen}}. Was nicht stimmt, steht unten.',
  'check.facts.unknown': 'Kein Eintrag ließ sich lesen.',
  'check.hashes': 'Hashwerte',
  'check.hashes.holds':
    '{hashes, plural, one {Ein Hash wurde neu gebildet und stimmt} other {# Hashes wurden neu gebildet und stimmen}}.',
  'check.hashes.fails':
    '{hashes, plural, one {Ein Hash wurde neu gebildet und stimmt} other {# Hashes wurden neu gebildet und stimmen}}; andere stimmen nicht.',
  'check.pages': 'Seiten und Protokoll',
  'check.pages.holds': 'Die gedruckten Seiten sagen, was das signierte Protokoll sagt, Zeichen für Zeichen.',
  'check.pages.fails': 'Die gedruckten Seiten sagen nicht, was das signierte Protokoll sagt.',
  'check.pages.unknown':
    'Das weiß man nur, wenn jedes Byte das versiegelte ist, das Protokoll nachgewiesen ist und diese Prüfseite die Fassung hat, die das Dokument erstellt hat.',
  'wrong.title': 'Was nicht hält, und wo',
  'wrong.note': 'Zur Kenntnis',
  'wrong.notes': 'Was zu wissen ist',
  'who.title': 'Wessen Siegel es ist',
  'who.device': 'Gerät',
  'who.print': 'Fingerabdruck des Schlüssels (SHA-256)',
  'who.packed': 'Gepackt von',
  'who.means':
    'Ein Siegel, das stimmt, beweist, dass nichts verändert wurde, seit dieser Schlüssel es versiegelt hat. Wessen Schlüssel es ist, kann nur die Firma sagen: Vergleichen Sie den Fingerabdruck mit einem, den Sie auf einem anderen Weg von der Firma erhalten haben.',
  'who.compare': 'Fingerabdruck, den Sie von der Firma erhalten haben',
  'who.same': 'Es ist derselbe: Dieser Schlüssel gehört denen, die Ihnen diesen Fingerabdruck gegeben haben.',
  'who.other': 'Es ist ein anderer: Das Dokument wurde nicht mit dem Schlüssel versiegelt, den Sie kennen.',
  'who.short':
    'Geben Sie alle 64 Stellen ein; {count, plural, one {# Stelle ist} other {# Stellen sind}} eingegeben.',
  'strip.title': 'Die Datei vom ersten bis zum letzten Byte',
  'strip.alt':
    '{count, plural, one {Ein Teil} other {# Teile}} in der Reihenfolge der Datei; {changed, plural, =0 {keiner ist verändert} one {einer ist verändert} other {# sind verändert}}. Die Liste darunter nennt jeden.',
  'strip.seal': 'die Stelle des Siegels',
  'strip.parts': '{count, plural, one {Ein Teil} other {# Teile}}, Byte für Byte',
  'strip.part': 'Teil',
  'strip.from': 'Erstes Byte',
  'strip.to': 'Letztes Byte',
  'strip.state': 'Zustand',
  'facts.title': '{count, plural, one {Ein Eintrag} other {# Einträge}} des Protokolls',
  'facts.fact': 'Eintrag',
  'facts.at': 'Eingetragen (UTC)',
  'facts.by': 'Von',
  'file.title': 'Die Datei',
  'file.name': 'Dateiname',
  'file.bytes': 'Bytes',
  'file.job': 'Auftrag',
}
