import type { SameCodes } from '@shearline/jobfile'
import type { factWords as english } from '../en/facts.ts'

/** German: Every kind of fact as one sentence, as it stands on record. */
export const factWords: SameCodes<typeof english> = {
  'fact.job-opened': 'Auftrag angelegt: {title}, {place} ({zone})',
  'fact.keys-said':
    '{count, plural, =0 {Kein Schlüssel} one {# Schlüssel} other {# Schlüssel}} laut Kundschaft vorhanden; nicht hier: {absent}',
  'fact.note-written': 'Notiz: {text}',
  'fact.authority-seen':
    '{role}: {document}, {issuer}, endet auf {last}; Original: {original}; stimmt überein: {matched}',
  'fact.authority-decided': '{decision}: {reason}',
  'fact.consent-given': '{what}. Zugestimmt hat {signer}',
  'fact.vin-read':
    'VIN {vin}, {source}{picture, select, letters {; aus den Buchstaben eines Bildes gelesen} code {; aus einem Code im Bild gelesen} other {}}',
  'fact.recording-attached':
    'Aufzeichnung {name}: {format}, {size}, {messages, plural, one {# Nachricht} other {# Nachrichten}}',
  'fact.scan-attached':
    'Scan {phase}: {units, plural, one {# Steuergerät} other {# Steuergeräte}}, {faults, plural, =0 {kein Fehler} one {# Fehler} other {# Fehler}}',
  'fact.unit-named': 'Steuergerät {unit} ist zuständig für: {role}',
  'fact.fault-acknowledged':
    'Fehler {code} von Steuergerät {unit} zur Kenntnis genommen von {signer}: {words}',
  'fact.clear-requested': 'Fehler gelöscht in {units}',
  'fact.supply-set': 'Untergrenze der Spannung {volts} ({source}), {battery}',
  'fact.supply-read': 'Spannung {volts}, {during}',
  'fact.key-labelled': 'Schlüssel {key}, {colour}: {form}, {origin}',
  'fact.key-count-read':
    'Das Fahrzeug speichert {count, plural, one {# Schlüsseleintrag} other {# Schlüsseleinträge}} {when, select, before {vor der Arbeit} other {nach der Arbeit}}',
  'fact.key-count-none':
    'Das Fahrzeug zeigt keine Anzahl {when, select, before {vor der Arbeit} other {nach der Arbeit}}: {because}',
  'fact.function-tested':
    'Schlüssel {key}, {function}, {phase, select, before {vorher} other {nachher}}: {outcome}',
  'fact.difference-explained': 'Erklärt: {reason}',
  'fact.blank-chosen':
    'Rohling {item}: {fits, select, true {verglichen, passt} false {verglichen, passt nicht} other {nicht verglichen}}',
  'fact.blank-used':
    'Rohling {item}: {outcome, select, used {verbraucht} spoiled {verdorben} other {zurück in den Wagen}}',
  'fact.rule-chosen': '{kind}. Bekannt aus: {source}',
  'fact.rehearsal-read': 'Trockenlauf gelesen, Reihenfolge {order}. {wayBack}',
  'fact.backup-proven':
    'Datensicherung von {what}: {same, select, true {zwei gleiche Auslesungen, {first}…} other {zwei Auslesungen weichen ab, {first}… und {second}…}}',
  'fact.backup-waived': 'Keine Datensicherung: {because}',
  'fact.session-opened':
    'Sitzung geöffnet, {rehearsed, select, true {durchgespielt} other {nicht durchgespielt}}',
  'fact.key-taught': 'Schlüssel {key} angelernt; Zählung des Fahrzeugs: {count}; Spannung: {volts}',
  'fact.session-closed': 'Sitzung geschlossen; Zählung des Fahrzeugs: {count}',
  'fact.broke-off': 'Abgebrochen nach {after}: {why}',
  'fact.break-off-mended': 'Abbruch behoben: {how}',
  'fact.caution-read': 'Sicherheitshinweis gelesen: {caution}',
  'fact.price-agreed': 'Preis vereinbart: {amount}',
  'fact.warranty-given': 'Garantie: {months, plural, one {# Monat} other {# Monate}}',
  'fact.retention-set':
    'Löschfrist festgelegt für {count, plural, one {# Klasse} other {# Klassen}} ({pack})',
  'fact.corrected': '{action, select, withdrawn {Zurückgezogen} other {Ersetzt}}: {reason}',
  'fact.document-sealed':
    'Dokument versiegelt über {count, plural, one {# Eintrag} other {# Einträge}}, {root}…',
  'fact.unknown':
    'Eine neuere Version hat „{kind}“ eingetragen. Der Eintrag bleibt erhalten, wird aber nicht verstanden; Shearline aktualisieren.',
  'fact.erased':
    'Der Inhalt von „{kind}“ wurde gelöscht, als seine Frist um war. Sein Platz im Protokoll bleibt.',
  'fact.unreadable':
    'Der Inhalt von „{kind}“ passt nicht zu seiner Art. Er bleibt erhalten und wird nicht gezählt.',
}
