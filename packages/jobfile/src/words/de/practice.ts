import type { SameCodes } from '../catalogues.ts'
import type { practiceWords as english } from '../en/practice.ts'

/** German: Training at the practice car: exercises, what came of an action, and why points were lost. */
export const practiceWords: SameCodes<typeof english> = {
  'practice.one-more-key': 'Ein Schlüssel mehr',
  'practice.one-more-key.story':
    'Zwei Schlüssel funktionieren, und die Kundschaft möchte einen dritten. Das Fahrzeug fügt einen Schlüssel hinzu und behält die anderen. Danach jeden Schlüssel nachweisen.',
  'practice.forgotten-at-home': 'Ein Schlüssel blieb zu Hause',
  'practice.forgotten-at-home.story':
    'Das Fahrzeug schreibt seine Liste neu, wenn die Sitzung geschlossen wird. Der zweite Schlüssel liegt zu Hause, eine halbe Stunde entfernt. Ein dritter ist gespeichert, den niemand hat.',
  'practice.dies-after-second-key': 'Die Sitzung stirbt nach dem zweiten Schlüssel',
  'practice.dies-after-second-key.story':
    'Ein kalter Morgen, eine schwache Batterie, keine Datensicherung. Die Liste wird mit jedem Schlüssel neu geschrieben. Dafür sorgen, dass sie nach Hause kommen.',
  'practice.erased-and-cut': 'Die Liste wird gelöscht, dann reißt die Verbindung ab',
  'practice.erased-and-cut.story':
    'Das Fahrzeug öffnet eine Sitzung nur mit einem funktionierenden Schlüssel und vergisst in diesem Moment jeden Schlüssel. Eine nachgewiesene Sicherung der Liste liegt vor, und eine Fernbedienung hat eine leere Knopfzelle.',
  'practice.clone-on-the-ring': 'Zwei Schlüssel, die einer sind',
  'practice.clone-on-the-ring.story':
    'Das Fahrzeug verlangt zwei verschiedene funktionierende Schlüssel, bevor es einen dritten annimmt. Am Ring hängen zwei Schlüssel; einer davon ist ein Klon.',
  'practice.list-is-full': 'Die Liste ist voll',
  'practice.list-is-full.story':
    'Vier Plätze, vier gespeicherte Schlüssel, zwei davon längst verloren. Das Fahrzeug verliert ohne ein Wort den ältesten, wenn es einen weiteren annimmt.',
  'practice.misread-code': 'Der Code wurde falsch gelesen',
  'practice.misread-code.story':
    'Die Sitzung öffnet nur mit einem Code, und jemand hielt eine 1 für eine 7. Jeder Fehlversuch kostet zwanzig Minuten. Die Batterie ist nicht die beste.',

  'practice.did.supply-on': 'Stützgerät auf {amperes} A eingestellt: {volts} V.',
  'practice.did.scanned':
    '{faults, plural, =0 {Kein Fehler gespeichert} one {# Fehler gespeichert} other {# Fehler gespeichert}}; {units, plural, one {# Steuergerät antwortete} other {# Steuergeräte antworteten}}.',
  'practice.did.cleared': 'Fehlerspeicher gelöscht; das Airbagsteuergerät blieb unberührt.',
  'practice.did.cycled': 'Zündung aus und wieder ein.',
  'practice.did.session-opened': 'Die Sitzung ist offen.',
  'practice.did.session-refused': 'Das Fahrzeug öffnet die Sitzung nicht.',
  'practice.did.session-wants-code': 'Das Fahrzeug verlangt zuerst den Code.',
  'practice.did.code-accepted': 'Das Fahrzeug nimmt den Code an.',
  'practice.did.code-refused':
    'Das Fahrzeug lehnt den Code ab{minutes, plural, =0 {.} one { und nimmt # Minute lang keinen anderen an.} other { und nimmt # Minuten lang keinen anderen an.}}',
  'practice.did.code-wait':
    'Das Fahrzeug wartet noch: Es nimmt in {minutes, plural, one {# Minute} other {# Minuten}} einen Code an.',
  'practice.did.code-not-wanted': 'Dieses Fahrzeug verlangt keinen Code.',
  'practice.did.stopped': 'Die Sitzung wurde abgebrochen.',
  'practice.did.no-session': 'Keine Sitzung ist offen.',
  'practice.did.session-closed':
    'Die Sitzung ist geschlossen; {stored, plural, one {# Schlüssel ist gespeichert} other {# Schlüssel sind gespeichert}}.',
  'practice.did.session-too-few':
    'Zu wenige Schlüssel wurden angelernt: Die Sitzung endete, ohne geschlossen zu werden; {stored, plural, one {# Schlüssel ist gespeichert} other {# Schlüssel sind gespeichert}}.',
  'practice.did.no-backup': 'Es gibt keine Datensicherung.',
  'practice.did.restored':
    'Die gesicherte Liste ist zurück; {stored, plural, one {# Schlüssel ist gespeichert} other {# Schlüssel sind gespeichert}}.',
  'practice.did.waited': '{minutes, plural, one {# Minute} other {# Minuten}} später: {volts} V.',
  'practice.did.no-such-key': 'Einen Schlüssel {key} gibt es hier nicht.',
  'practice.did.show-taken': 'Schlüssel {key} wurde angenommen: {taught} in dieser Sitzung angelernt.',
  'practice.did.show-no-session': 'Schlüssel {key} wurde gezeigt, aber keine Sitzung ist offen.',
  'practice.did.show-not-accepted': 'Schlüssel {key} wurde nicht angenommen.',
  'practice.did.show-same-key': 'Schlüssel {key} ist dieser Sitzung schon bekannt.',
  'practice.did.show-list-full': 'Schlüssel {key} wurde nicht angenommen: Die Liste ist voll.',
  'practice.did.start-started': 'Schlüssel {key} startet das Fahrzeug.',
  'practice.did.start-key-not-accepted':
    'Schlüssel {key} wird nicht angenommen. Das Fahrzeug speichert dazu einen Fehlercode.',
  'practice.did.start-battery-too-weak':
    'Schlüssel {key} wird angenommen, aber die Batterie ist zum Anlassen zu schwach: {volts} V.',
  'practice.did.start-not-on-the-bench': 'Schlüssel {key} ist nicht hier.',
  'practice.did.button-works': 'Die Tasten von Schlüssel {key} funktionieren.',
  'practice.did.button-dead': 'Die Tasten von Schlüssel {key} bewirken nichts.',
  'practice.did.fetched': 'Schlüssel {key} wurde geholt. Das dauerte eine halbe Stunde.',
  'practice.did.cell-new': 'Schlüssel {key} hat eine neue Knopfzelle.',
  'practice.did.incident-supply-lost': 'Die Spannung ist weg! Die Sitzung ist beendet; jetzt {volts} V.',
  'practice.did.incident-link-lost': 'Die Verbindung zum Fahrzeug ist weg! Die Sitzung ist beendet.',

  'practice.mark.stranded': 'Kein Schlüssel hier startet das Fahrzeug: Die Kundschaft sitzt fest.',
  'practice.mark.session-open': 'Die Sitzung blieb offen.',
  'practice.mark.key-does-not-start': 'Schlüssel {key} startet das Fahrzeug nicht.',
  'practice.mark.start-not-proven': 'Niemand versuchte, das Fahrzeug mit Schlüssel {key} zu starten.',
  'practice.mark.buttons-not-proven': 'Niemand probierte die Tasten von Schlüssel {key}.',
  'practice.mark.no-scan-before': 'Kein Fehlerscan vor der Arbeit.',
  'practice.mark.no-scan-after': 'Kein Fehlerscan nach der Arbeit.',
  'practice.mark.no-supply': 'Eine schwache Batterie, und kein Stützgerät vor der Sitzung.',
}
