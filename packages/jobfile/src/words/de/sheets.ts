import type { SameCodes } from '../catalogues.ts'
import type { sheetWords as english } from '../en/sheets.ts'

/** German: Phrases of the sheets beside the handover document: consents, what to bring, refusal, statement of keys, return visit. */
export const sheetWords: SameCodes<typeof english> = {
  'sheet.absent-keys': 'Einwilligung: Schlüssel, die nicht hier sind',
  'sheet.no-check': 'Einwilligung: keine Prüfung vor der Arbeit',
  'sheet.bring-this': 'Was mitzubringen ist',
  'sheet.refusal': 'Mitteilung: Arbeit nicht ausgeführt',
  'sheet.insurer': 'Auskunft über die Schlüssel',
  'sheet.return-visit': 'Erneuter Besuch',
  'sheet-preview.absent-keys':
    '{count, plural, one {Ein Schlüssel ist als nicht hier genannt} other {# Schlüssel sind als nicht hier genannt}}: {names}.',
  'sheet-preview.absent-keys.nothing': 'Kein Schlüssel ist als nicht hier genannt.',
  'sheet-preview.no-check':
    'Von keinem Schlüssel hier steht im Protokoll, dass er das Fahrzeug vor der Arbeit startete.',
  'sheet-preview.no-check.nothing':
    'Ein Schlüssel startete das Fahrzeug vor der Arbeit, also konnte geprüft werden.',
  'sheet-preview.bring-this': 'Für {when}, {place}.',
  'sheet-preview.bring-this.nothing': 'Kein Termin ist im Protokoll.',
  'sheet-preview.refusal': '{decision}: {reason}',
  'sheet-preview.refusal.nothing': 'Die Arbeit wurde weder abgelehnt noch zurückgestellt.',
  'sheet-preview.insurer':
    '{here, plural, one {Ein Schlüssel war hier} other {# Schlüssel waren hier}}, {absent, plural, =0 {keiner ist als fehlend genannt} one {einer ist als fehlend genannt} other {# sind als fehlend genannt}}.',
  'sheet-preview.insurer.nothing': 'Kein Schlüssel ist im Protokoll.',
  'sheet-preview.return-visit':
    '{count, plural, =0 {Nichts ist offen; das Blatt sagt, was getan wurde.} one {Ein Punkt ist offen.} other {# Punkte sind offen.}}',
  'sheet-preview.return-visit.nothing': 'Im Protokoll steht keine Arbeit, zu der man zurückkäme.',
  'sheet.running': '{sheet}, Auftrag {job}',
  'sheet.made': '{at}, aus dem Protokoll, wie es da stand',
  'sheet.record': 'SHA-256 dieses Protokolls',
  'sheet.not-a-seal':
    'Dieses Blatt trägt kein Siegel. Was es angibt, steht im signierten Protokoll des Auftrags, das die Firma aufbewahrt und übergibt.',
  'sheet.car': 'Fahrzeug',
  'sheet.job': 'Auftrag',
  'sheet.law': 'Gesetzliche Rechte bleiben von diesem Blatt unberührt.',
  'sheet.sign': 'Unterschrift',
  'sheet.sign-name': 'Name',
  'sheet.sign-date': 'Ort und Datum',
  'sheet.sign-by': 'Unterschrift',
  'sheet.signed': 'Laut Protokoll unterschrieben von {signer}, {how}.',
  'sheet.agreed':
    'Laut Protokoll zugestimmt im Namen von {signer}; eine Unterschrift dazu ist nicht im Protokoll.',
  'sheet.absent-what': 'Was die Arbeit mit ihnen macht',
  'sheet.absent-replace-all':
    'Die Arbeit schreibt die Liste der Schlüssel neu, die dieses Fahrzeug annimmt. Nur Schlüssel, die hier sind und wieder angelernt werden, starten es danach.',
  'sheet.absent-append':
    'Die Arbeit fügt Schlüssel zu der Liste hinzu, die dieses Fahrzeug annimmt. Schlüssel, die nicht hier sind, sollten es weiterhin starten; das lässt sich nicht prüfen, solange sie fehlen.',
  'sheet.absent-oldest':
    'Die Arbeit fügt Schlüssel zu einer Liste hinzu, die voll ist oder sein kann. Das Fahrzeug kann den ältesten daraus entfernen, und das kann einer sein, der nicht hier ist.',
  'sheet.absent-slots':
    'Die Arbeit legt Schlüssel auf nummerierte Plätze. Ein Schlüssel, der nicht hier ist und einen dieser Plätze innehat, startet dieses Fahrzeug danach nicht mehr.',
  'sheet.absent-unknown':
    'Wie dieses Fahrzeug seine Liste führt, ist nicht bekannt. Es wird behandelt, als würde die Liste neu geschrieben: Schlüssel, die nicht hier sind, starten es danach möglicherweise nicht mehr.',
  'sheet.absent-named': 'Schlüssel, die nicht hier sind, mit Ihren eigenen Namen dafür:',
  'sheet.absent-others': 'Dasselbe gilt für einen Schlüssel, den hier niemand genannt hat.',
  'sheet.absent-back':
    'Ein Schlüssel, der nicht mehr funktioniert, kann später wieder angelernt werden, wenn er zum Fahrzeug gebracht wird. Das ist ein neuer Auftrag mit eigenem Preis.',
  'sheet.absent-agree':
    'Ich habe das verstanden und stimme zu, dass die Arbeit ohne diese Schlüssel ausgeführt wird.',
  'sheet.nocheck-what': 'Was sich nicht wissen lässt',
  'sheet.nocheck-why':
    'Kein Schlüssel, der hier ist, startet dieses Fahrzeug. Vor der Arbeit kann daher niemand sehen, was funktionierte und was nicht.',
  'sheet.nocheck-functions':
    'Schlösser, Tasten, Leuchten und andere Funktionen lassen sich erst nach der Arbeit probieren. Geht dann etwas davon nicht, lässt sich nicht sagen, ob es vorher ging.',
  'sheet.nocheck-faults':
    'Fehler, die nach der Arbeit gefunden werden, können schon vorher da gewesen sein. Wo sich das Fahrzeug ohne Schlüssel auslesen lässt, geschieht das zuerst und wird aufbewahrt.',
  'sheet.nocheck-damage': 'Was von außen zu sehen ist, wird vor der Arbeit aufgeschrieben und fotografiert.',
  'sheet.nocheck-agree':
    'Ich habe das verstanden und stimme zu, dass die Arbeit ohne vorherige Prüfung ausgeführt wird.',
  'sheet.bring-hello': 'Bitte halten Sie am Fahrzeug bereit:',
  'sheet.bring-keys':
    'Jeden Schlüssel dieses Fahrzeugs, den Sie haben, auch einen, der nicht funktioniert, zerbrochen ist oder nur eine Tür öffnet.',
  'sheet.bring-keys-why':
    'Ein Schlüssel, der bei der Arbeit nicht da ist, startet das Fahrzeug danach möglicherweise nicht mehr. Es muss kein Schlüssel sein, den Sie benutzen.',
  'sheet.bring-identity': 'Ihren Ausweis mit Foto, im Original.',
  'sheet.bring-private':
    'Das Dokument, das zeigt, dass Sie das Fahrzeug halten oder dass es Ihnen gehört, im Original. Gehört es Ihnen nicht: die schriftliche Zustimmung der Person, der es gehört, und wie sie zu erreichen ist.',
  'sheet.bring-trade':
    'Den Auftrag Ihrer Firma mit Namen und Nummer für einen Rückruf, und das Dokument, das zeigt, wem das Fahrzeug gehört.',
  'sheet.bring-fleet':
    'Den Auftrag der Flottenverwaltung mit Namen und Nummer für einen Rückruf, und die Zulassungsbescheinigung des Fahrzeugs oder ihre Nummer.',
  'sheet.bring-other': 'Außerdem vereinbart: {what}',
  'sheet.bring-when': 'Wann',
  'sheet.bring-where': 'Wo',
  'sheet.bring-no-time': 'zu einer noch zu vereinbarenden Zeit',
  'sheet.bring-place-car':
    'Das Fahrzeug steht so, dass man darum herumgehen und seine Türen öffnen kann, möglichst abseits der Straße und mit Mobilfunkempfang in der Nähe.',
  'sheet.bring-not-sent':
    'Senden Sie keine Fotos Ihres Ausweises oder der Einschnitte eines Schlüssels per Nachricht. Sie werden vor Ort angesehen.',
  'sheet.bring-message':
    '{firm, select, none {Arbeit} other {{firm}: Arbeit}} an den Schlüsseln von {vehicle}, {when}, {place}. Bitte mitbringen: jeden Schlüssel dieses Fahrzeugs, ob er funktioniert oder nicht; Ihren Ausweis; {entitlement} Ein Schlüssel, der nicht da ist, startet das Fahrzeug danach möglicherweise nicht mehr. Bitte senden Sie keine Fotos von Dokumenten oder Schlüsseleinschnitten.',
  'sheet.bring-short-private':
    'das Dokument, das zeigt, dass Sie das Fahrzeug halten oder dass es Ihnen gehört.',
  'sheet.bring-short-trade': 'den Auftrag Ihrer Firma und das Dokument, das zeigt, wem das Fahrzeug gehört.',
  'sheet.bring-short-fleet': 'den Auftrag der Flottenverwaltung und die Zulassungsbescheinigung.',
  'sheet.refusal-what': 'Was entschieden wurde',
  'sheet.refusal-refused': 'Die Arbeit wurde nicht ausgeführt. Grund laut Protokoll: {reason}',
  'sheet.refusal-held': 'Die Arbeit wartet. Grund laut Protokoll: {reason}',
  'sheet.refusal-no-blame':
    'Diese Mitteilung sagt, dass das Gezeigte für die Arbeit nicht ausreichte. Sie wirft niemandem etwas vor.',
  'sheet.refusal-by': 'Entschieden am {at} von {by}.',
  'sheet.refusal-seen': 'Was gesehen wurde',
  'sheet.refusal-seen-none': 'Kein Dokument wurde als gesehen eingetragen.',
  'sheet.refusal-missing': 'Was fehlt',
  'sheet.refusal-missing-none': 'Das Protokoll nennt nichts Weiteres; fragen Sie die Firma.',
  'sheet.refusal-car': 'Was am Fahrzeug getan wurde',
  'sheet.refusal-untouched':
    'Keine Anlernsitzung wurde geöffnet. Kein Schlüssel dieses Fahrzeugs wurde von uns verändert.',
  'sheet.refusal-touched':
    'Vor dieser Entscheidung wurde eine Anlernsitzung geöffnet. Das Protokoll sagt, was darin geschah.',
  'sheet.refusal-scans':
    '{count, plural, =0 {Kein Scan der Steuergeräte ist im Protokoll.} one {Ein Scan der Steuergeräte ist im Protokoll; Auslesen verändert nichts am Fahrzeug.} other {# Scans der Steuergeräte sind im Protokoll; Auslesen verändert nichts am Fahrzeug.}}',
  'sheet.insurer-what': 'Was diese Auskunft ist',
  'sheet.insurer-limit':
    'Sie sagt, was an diesem Tag an diesem Fahrzeug gesehen und probiert wurde. Sie kann nicht sagen, ob es weitere Schlüssel gibt, die niemand genannt hat, und sie ist keine Aussage darüber, wem das Fahrzeug gehört.',
  'sheet.insurer-tests':
    '{count, plural, =0 {Keine Prüfung im Protokoll ist als in Anwesenheit der Kundschaft erfolgt vermerkt.} one {# Prüfung im Protokoll ist als in Anwesenheit der Kundschaft erfolgt vermerkt.} other {# Prüfungen im Protokoll sind als in Anwesenheit der Kundschaft erfolgt vermerkt.}}',
  'sheet.insurer-rows': 'Schlüssel im Protokoll',
  'sheet.insurer-key': 'Schlüssel',
  'sheet.insurer-about': 'Was er ist',
  'sheet.insurer-before': 'Startete das Fahrzeug vorher',
  'sheet.insurer-after': 'Startet das Fahrzeug nachher',
  'sheet.insurer-not-tried': 'nicht probiert',
  'sheet.insurer-absent': 'Als nicht hier genannte Schlüssel',
  'sheet.insurer-absent-none': 'Keiner wurde genannt.',
  'sheet.return-done': 'Was getan wurde',
  'sheet.return-sealed': 'Das Protokoll dieses Auftrags wurde am {at} von {by} versiegelt.',
  'sheet.return-not-sealed': 'Das Protokoll dieses Auftrags ist noch nicht versiegelt.',
  'sheet.return-open': 'Was offen ist',
  'sheet.return-open-none': 'Nichts, was dieser Auftrag verlangt, ist offen.',
  'sheet.return-broke': 'Die Anlernsitzung brach ab nach {after}, Grund: {why}.',
  'sheet.return-keys': 'Welche Schlüssel das Fahrzeug jetzt starten',
  'sheet.return-starts':
    '{count, plural, one {Bei Schlüssel {keys} wurde gesehen, dass er es startet.} other {Bei den Schlüsseln {keys} wurde gesehen, dass sie es starten.}}',
  'sheet.return-starts-none': 'Von keinem Schlüssel wurde gesehen, dass er es nach der Arbeit startet.',
  'sheet.return-fault': 'Fehler {code} in {unit}: {class}',
  'sheet.return-faults-none': 'Kein Fehler ist offen geblieben.',
  'sheet.return-faults': 'Fehler, die noch einmal anzusehen sind',
  'sheet.return-bring': 'Für den Besuch',
  'sheet.return-bring-all':
    'Jeden Schlüssel dieses Fahrzeugs, auch die, die beim ersten Mal nicht hier waren.',
  'sheet.return-bring-file': 'Das Übergabedokument als Datei, nicht nur auf Papier.',
  'sheet.return-bring-changes':
    'Was seither am Fahrzeug gemacht wurde: Batterie, Reparaturen, andere Schlüssel.',
}
