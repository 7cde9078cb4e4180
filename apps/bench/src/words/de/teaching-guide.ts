import type { SameCodes } from '@shearline/jobfile'
import type { teachingGuideWords as english } from '../en/teaching-guide.ts'

/** German: The session guide, "it stopped", the way back, the tests after it, and the four numbers. */
export const teachingGuideWords: SameCodes<typeof english> = {
  'teach.open': 'Sitzung öffnen',
  'teach.open.again': 'Weitere Sitzung öffnen',
  'teach.open.record': 'Die Sitzung ist offen',
  'teach.is-closed': 'Die Sitzung ist geschlossen.',
  'teach.is-stopped': 'Die Sitzung ist nicht offen.',
  'teach.rehearsed':
    'Durchgespielte Reihenfolge: {order}. Stützgerät an, Schlüssel, die nicht angelernt werden, weg vom Fahrzeug.',
  'teach.not-rehearsed':
    'Der Trockenlauf ist nicht gelesen. Die Sitzung nur öffnen, wenn Sie wissen, was bei einem Abbruch gilt.',
  'teach.key': 'Schlüssel {key} dem Fahrzeug zeigen',
  'teach.key.record': 'Schlüssel {key} ist angenommen',
  'teach.taught': 'Schlüssel {key} ist angelernt',
  'teach.count': 'Zählung, die das Fahrzeug zeigt',
  'teach.count.hint': 'Leer lassen, wenn es keine zeigt.',
  'teach.not-all': 'Noch ist nicht jeder geplante Schlüssel angelernt.',
  'teach.close': 'Sitzung schließen',
  'teach.close.early': 'Schließen, bevor jeder Schlüssel angelernt ist',
  'teach.close.record': 'Die Sitzung ist geschlossen',

  'guide.title': 'Die Sitzung, Schritt für Schritt',
  'guide.count': 'Schritt {step} von {of}',
  'guide.keys': '{count} von {of} Schlüsseln angenommen',
  'guide.other': 'Dieser Schlüssel ist nicht zur Hand oder abgelehnt?',
  'guide.first': 'Schlüssel {key} zuerst',
  'guide.say.open':
    'Sagen: „Ich öffne jetzt die Schlüsselliste des Fahrzeugs. Bitte lassen Sie die Türen und alle anderen Schlüssel in Ruhe, bis ich Bescheid gebe.“',
  'guide.say.show':
    'Sagen: „Jetzt Schlüssel {key}. {left, plural, =0 {Es ist der letzte.} one {Danach kommt noch einer.} other {Danach kommen noch #.}} Bitte halten Sie die anderen vom Fahrzeug fern.“',
  'guide.say.close':
    'Sagen: „Alle Schlüssel sind angenommen. Ich schließe die Liste; dann sehen Sie jeden Schlüssel funktionieren, bevor Sie unterschreiben.“',
  'meter.time': 'In der Sitzung',
  'meter.supply': 'Spannung',
  'meter.count': 'Das Fahrzeug zählt',
  'meter.none': 'nicht abgelesen',
  'meter.above': 'über {floor}',
  'meter.below': 'unter {floor}!',
  'meter.no-floor': 'keine Untergrenze',
  'meter.ago': 'vor {time}',
  'take-back': 'Zurücknehmen',

  'stopped.button': 'es brach ab',
  'stopped.title': 'Abgebrochen nach {after}',
  'stopped.after-opening': 'dem Öffnen',
  'stopped.after-key': 'Schlüssel {key}',
  'stopped.why': 'Warum sie vorbei ist',
  'stopped.goes-on': 'Oder etwas anderes, und die Sitzung ist noch offen',
  'stopped.leave-out': 'Auslassen und weitermachen oder erneut versuchen.',
  'stopped.went-on': 'Die Sitzung ging weiter.',
  'stopped.record': 'Abbruch eintragen',
  'stopped.record-other': 'Eintragen',
  'stopped.not': 'Es ist nicht abgebrochen',

  'mend.title': 'Abgebrochen nach {after}',
  'mend.why': 'Was es abbrach: {why}.',
  'mend.first': 'Zuerst jeden Schlüssel prüfen: Was das Fahrzeug jetzt annimmt, zeigt nur das Probieren.',
  'mend.how': 'Wie es behoben wurde',
  'mend.how.hint': 'Was jeder Schlüssel tat und was Sie dagegen getan haben.',
  'recover.by-rule': 'Nach der Regel:',
  'recover.not-known':
    'Die Regel sagt nicht, was ein Abbruch hier hinterlässt. Jeden Schlüssel probieren und unten angeben, wie es behoben wurde.',
  'recover.goal': 'Was wird jetzt gebraucht?',
  'recover.none':
    'Mit dem Vorhandenen gibt es keinen. Ein weiterer Schlüssel, die Datensicherung oder andere Ausrüstung ist nötig.',
  'recover.count': 'Rückweg, Schritt {step} von {of}',
  'recover.done': 'Erledigt',
  'recover.step-done': '(erledigt)',
  'recover.failed': 'Es hat nicht geklappt',
  'recover.failed.because': 'Es hat nicht geklappt.',
  'recover.starts': 'Es startet',
  'recover.starts-not': 'Es startet nicht',
  'recover.reopen': 'Neue Sitzung öffnen',
  'recover.reopen.then':
    'Die Führung geht dann weiter, Schlüssel für Schlüssel. Am Ende wird jeder Schlüssel erneut probiert.',
  'recover.try-all': 'Jeden Schlüssel probieren',
  'recover.mended': 'Es ist behoben',
  'recover.how.reopened': 'Nach {after}: Eine neue Sitzung wurde geöffnet, wie die Regel es verlangt.',
  'recover.how.tried': 'Nach {after}: Der Rückweg wurde gegangen und jeder Schlüssel erneut probiert.',
  'recover.otherwise': 'Anders behoben',
  'recover.otherwise.more': 'Schriftlich angeben, wie es behoben wurde',
  'recover.mistake': 'War es gar nicht abgebrochen?',
  'way.step': 'Rückweg {place}: {step}',

  'wait.not-begun': 'Das Warten hat nicht begonnen: {time}.',
  'wait.left': 'übrig von {time}. Es zählt weiter, wenn diese Seite geschlossen ist.',
  'wait.over': 'Die Zeit ist um.',
  'wait.no-figure': 'seither; wie lange es dauert, ist nicht bekannt',
  'wait.begin': 'Die Zündung ist ein: ab jetzt zählen',
  'wait.begin-again': 'Die Zündung war aus: ab jetzt neu zählen',
  'wait.ignition-on': 'Zündung ein, das Warten beginnt',
  'wait.ignition.runs': 'Die Zeit läuft weiter, während die Zündung aus ist.',
  'wait.ignition.pauses': 'Die Zeit steht still, während die Zündung aus ist.',
  'wait.ignition.restarts': 'Die Zeit beginnt von vorn, wenn die Zündung aus war.',
  'wait.ignition.unknown': 'Zündung eingeschaltet lassen: Sonst zählt die Zeit vielleicht nicht.',
  'code.refused': 'Der Code wurde abgelehnt',
  'code.because': 'Das Fahrzeug hat ihn abgelehnt.',
  'code.tries': '{count, plural, =0 {Noch kein Fehlversuch.} one {# Fehlversuch.} other {# Fehlversuche.}}',
  'code.most': 'Warten muss man nach {count, plural, one {# Fehlversuch} other {# Fehlversuchen}}.',
  'code.most-unknown':
    'Nach wie vielen man warten muss, ist nicht bekannt: den nächsten als den letzten behandeln.',

  'retest.title': 'Jeden Schlüssel noch einmal',
  'retest.count': 'Jeden Schlüssel noch einmal: {done} von {of}',
  'retest.why':
    'Die Sitzung war abgebrochen. Was das Fahrzeug jetzt annimmt, zeigt nur das Probieren jedes Schlüssels.',
  'retest.starts': 'startet',
  'retest.not': 'startet nicht',
  'retest.starts-named': 'Schlüssel {key} startet das Fahrzeug',
  'retest.not-named': 'Schlüssel {key} startet das Fahrzeug nicht',
  'least.title':
    '{count, plural, one {Diese Prüfung weist den Auftrag nach} other {Diese # Prüfungen weisen den Auftrag nach}}; erledigt {done}',
  'least.why':
    'Die wenigsten Prüfungen, die alles abdecken, was die Arbeit gestört haben kann. Im Raster eintragen.',
  'least.open': 'noch zu tun',
  'tally.title': 'Schlüssel und Einträge',
  'tally.said': 'Laut Aussage vorhanden',
  'tally.bench': 'Auf dem Tisch',
  'tally.before': 'Vorher gespeichert',
  'tally.after': 'Nachher gespeichert',
  'tally.identities':
    '{keys, plural, one {# Schlüssel} other {# Schlüssel}} auf dem Tisch: für das Fahrzeug {identities, plural, one {# Identität} other {# Identitäten}}.',
  'tally.unaccounted':
    '{count, plural, =0 {Jeder frühere Eintrag ist erklärt.} one {# früherer Eintrag gehört zu keinem Schlüssel hier.} other {# frühere Einträge gehören zu keinem Schlüssel hier.}}',
  'tally.expected': 'Nach der Arbeit erwartet: {count, plural, one {# Eintrag} other {# Einträge}}.',
}
