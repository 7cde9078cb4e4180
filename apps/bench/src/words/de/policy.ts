import type { SameCodes } from '@shearline/jobfile'
import type { policyWords as english } from '../en/policy.ts'

/** German: Rules of place and firm (policy packs), the car and its place, cautions where they matter, custody. */
export const policyWords: SameCodes<typeof english> = {
  'title.rules': 'Regeln · Shearline',
  'title.keeping': 'Zur Löschung fällig · Shearline',
  'board.find': 'Auftrag suchen',
  'board.find.hint': 'Wörter aus Name, Ort oder Fahrzeug, oder das Ende der VIN.',
  'board.found': '{count, plural, =0 {Kein Auftrag passt} one {# Auftrag passt} other {# Aufträge passen}}',
  'board.more': '{count, plural, one {# weiterer Auftrag} other {# weitere Aufträge}}',
  'rules.title': 'Regeln von Ort und Firma',
  'rules.law':
    'Regeln sind Daten, keine Beratung. Das örtliche Recht prüfen; wo es anders lautet, geht es vor.',
  'rules.by': 'Dieser Auftrag richtet sich nach: {pack}.',
  'rules.which': 'Regeln, nach denen gearbeitet wird',
  'rules.choose': 'Nach diesen Regeln arbeiten',
  'rules.other': 'Nach anderen Regeln arbeiten',
  'rules.not-here':
    'Die Regeln „{pack}“ sind nicht auf diesem Gerät. Was sie fragen, steht im Protokoll und unten.',
  'rules.identity-any': 'Identität, eines davon: {documents}.',
  'rules.entitlement-any': 'Berechtigung, eines davon: {documents}.',
  'rules.or': '; ',
  'rules.label': '{name}, {region}, {dated}',
  'rules.source': 'Quelle: {source} ({basis}).',
  'rules.why-not': 'Warum nicht',
  'rules.because': 'Mit Nein beantwortet: {why}',
  'rules.record-no': 'Nein mit diesem Grund eintragen',
  'rules.link': 'Regeln',
  'rules.page': 'Regeln von Ort und Firma',
  'rules.page.what':
    'Ein Regelpaket sagt, was zeigt, dass jemand einen Schlüssel haben darf, was wie lange aufbewahrt wird, was der Kundschaft am Straßenrand zu sagen ist und welche Funkbänder üblich sind. Eines kopieren, an das eigene Recht anpassen und danach arbeiten.',
  'rules.usual': 'neue Aufträge beginnen damit',
  'rules.make-usual': 'Neue Aufträge damit beginnen',
  'rules.make-usual-named': 'Neue Aufträge damit beginnen: {name}',
  'rules.copy': 'Kopie ändern',
  'rules.copy-named': 'Kopie ändern: {name}',
  'rules.edit': 'Ändern',
  'rules.edit-named': 'Ändern: {name}',
  'rules.save': 'Als Datei speichern',
  'rules.save-named': 'Als Datei speichern: {name}',
  'rules.forget': 'Vergessen',
  'rules.forget-named': 'Vergessen: {name}',
  'rules.where': '{region}; geprüft {dated}',
  'rules.read-file': 'Regelpaket aus einer Datei lesen',
  'rules.read-file.hint': 'Eine Datei in JSON, wie „Als Datei speichern“ sie schreibt.',
  'rules.read': 'Gelesen: {name}. Es bleibt auf diesem Gerät.',
  'rules.not-json': 'Die Datei ist kein JSON, deshalb wurde nichts gelesen: {what}',
  'rules.troubles':
    '{count, plural, one {Eine Stelle ist falsch} other {# Stellen sind falsch}}, deshalb wurde nichts gelesen:',
  'rules.trouble': '{what}. {doNext}',
  'rules.form.name': 'Name der Regeln',
  'rules.form.region': 'Wo sie gelten',
  'rules.form.dated': 'Tag, an dem sie mit dem Recht verglichen wurden',
  'rules.form.dated.hint': 'Zum Beispiel 2026-11-28.',
  'rules.form.authority': 'Was zeigt, dass jemand einen Schlüssel haben darf',
  'rules.form.identity': 'Identität, eines von',
  'rules.form.entitlement': 'Berechtigung, eines von',
  'rules.form.checks': 'Außerdem gefragt',
  'rules.form.own': 'Eigene Fragen',
  'rules.form.own.hint': 'Jede verlangt ein Ja, oder ein Nein mit Grund.',
  'rules.form.source': 'Woher das stammt',
  'rules.form.retention': 'Was wie lange aufbewahrt wird',
  'rules.form.days': '{name}: Tage',
  'rules.form.stalled': 'Tage, nach denen ein nie beendeter Auftrag als beendet gilt',
  'rules.form.contract': 'Was Privatkundschaft vor der Arbeit gesagt wird',
  'rules.form.radio': 'Funkbänder von',
  'rules.form.radio.none': 'kein Gebiet',
  'rules.form.keep': 'Diese Regeln behalten',
  'rules.own-suffix': '{name} (eigene)',

  'site.title': 'Das Fahrzeug und sein Standort',
  'site.why': 'Diese vier Antworten entscheiden, welche Sicherheitshinweise hier zählen.',

  'cautions.here':
    '{count, plural, one {Dies lesen, bevor es weitergeht} other {Diese # lesen, bevor es weitergeht}}',

  'keeping.title': 'Zur Löschung fällig',
  'keeping.link': 'Zur Löschung fällig',
  'keeping.what':
    'Was dieses Gerät von jedem Auftrag weiß, verglichen mit seinen Fristen. Gelöscht wird, mit Nachweis, auf dem Rechner, der das Protokoll führt: „shearline retention delete“.',
  'keeping.reading':
    '{count, plural, one {# Auftrag wird durchgesehen} other {# Aufträge werden durchgesehen}} ...',
  'keeping.none': 'Heute ist nichts fällig.',
  'keeping.since': 'seit {day}',
  'keeping.items': '{count, plural, one {# Sache} other {# Sachen}}',
  'keeping.rule':
    '{days, plural, one {# Tag} other {# Tage}} ab {trigger, select, sealed {dem Versiegeln} handed_over {der Übergabe} warranty_ended {dem Ende der Garantie} purpose_ended {dem Ende des Zwecks} other {dem Eintragen}}; {source}',
  'keeping.held': 'Festgehalten, bleibt also: {reason}',
  'keeping.stalled': 'Der Auftrag wurde nie beendet; gezählt ab seinem letzten Eintrag.',

  'custody.title': 'Was aufbewahrt wird, und bis wann',
  'custody.pack': 'Fristen: {pack}.',
  'custody.class':
    '{count, plural, =0 {nichts aufbewahrt} one {# Sache aufbewahrt} other {# Sachen aufbewahrt}}',
  'custody.not-running': 'seine Frist hat nicht begonnen',
  'custody.until': 'bis {day}',
  'custody.due': 'fällig seit {day}',
  'custody.deleted': '{count, plural, one {# gelöscht} other {# gelöscht}}',
  'custody.hold': 'Nichts löschen lassen',
  'custody.hold.why': 'Warum, und auf wessen Verlangen',
  'custody.hold.place': 'Alles von diesem Auftrag festhalten',
  'custody.hold.stands': 'Nichts von diesem Auftrag darf gelöscht werden: {reason} ({by}, {day}).',
  'custody.hold.lift': 'Dieses Festhalten beenden',
  'custody.deletion':
    '{what}: {count, plural, one {# Sache} other {# Sachen}}, {day}, durch {by}. {why}{keys, select, true { Die Schlüssel dazu sind vernichtet.} other {}}',

  'doubts.title': 'Was in diesem Protokoll nicht zusammenpasst',
  'doubts.clock.before-its-predecessor':
    'Ein Eintrag von Gerät {device} trägt eine frühere Zeit als der davor.',
  'doubts.clock.before-what-it-names':
    'Ein Eintrag von Gerät {device} trägt eine frühere Zeit als das, was er nennt.',
  'doubts.clock.written-after-receipt':
    'Ein Eintrag von Gerät {device} trägt eine spätere Zeit als seine Ankunft.',
  'doubts.clock.in-the-future': 'Ein Eintrag von Gerät {device} trägt eine Zeit in der Zukunft.',
  'doubts.clock.other': 'Die Uhr von Gerät {device} passt nicht zum Protokoll.',
  'doubts.device-revoked':
    '{count, plural, one {Ein Eintrag stammt} other {# Einträge stammen}} von einem Gerät, dem nicht mehr vertraut wird ({devices}). Was stimmt, auf einem vertrauten Gerät erneut eintragen.',
  'doubts.not-witnessed':
    '{count, plural, one {Ein Eintrag stammt} other {# Einträge stammen}} von einem Gerät, dessen Signaturschlüssel vielleicht in fremden Händen ist ({devices}). Nur dieser Schlüssel zeigt, wann geschrieben wurde.',
  'doubts.own-revoked':
    'Die Firma vertraut diesem Gerät nicht mehr ({because, select, retired {ausgemustert} replaced {ersetzt} lost {verloren gemeldet} stolen {gestohlen gemeldet} other {sein Signaturschlüssel ist vielleicht in fremden Händen}}). Was es jetzt einträgt, wird nicht angenommen. Auf einem anderen Gerät arbeiten.',

  'hand.title': 'Diesen Auftrag weitergeben',
  'hand.how':
    'Wer eine Werkbank am selben Server hat, öffnet diese Adresse oder scannt sie mit der Kamera: Dort öffnet sich der Auftrag mit allem, was bisher gesendet ist.',
  'hand.here-only':
    'Diese Werkbank wurde unter einer Adresse geöffnet, die nur dieses Gerät versteht ({address}). Die Datei unten weitergeben oder die Werkbank zuerst unter einer Adresse Ihres Netzes öffnen.',
  'hand.qr': 'Adresse dieses Auftrags als QR-Code',
  'hand.unsent':
    '{count, plural, one {# Eintrag ist} other {# Einträge sind}} bisher nur auf diesem Gerät. Zuerst senden oder auch die Datei weitergeben.',
  'hand.all-sent': 'Alles von diesem Auftrag ist gesendet.',
  'hand.bundle': 'Ganzen Auftrag als Datei speichern',
  'hand.bundle.how':
    'Ohne Netz: Die Datei enthält jeden Eintrag und jede Datei des Auftrags, die auf diesem Gerät ist. Jede Person kann sie mit „shearline verify“ nachweisen, auch Jahre später; sie ist zum Lesen, weiter geht die Arbeit über die Adresse oben.',
  'hand.bundle.unsealed':
    'Der Auftrag ist noch nicht versiegelt: Jeder Eintrag in der Datei ist signiert, aber nichts darin zeigt, dass keiner fehlt. Erst das Dokument versiegeln, dann ist das Ganze nachweisbar.',

  'handed.title': 'Übergeben',
  'handed.to': 'An wen',
  'handed.to.hint': 'Name oder Funktion der Person, die das Fahrzeug und seine Schlüssel genommen hat.',
  'handed.keys': 'Schlüssel, die mit dem Fahrzeug gingen',
  'handed.first': 'Zuerst das Dokument versiegeln; dies kommt danach.',
  'handed.record': 'Übergeben',
  'handed.again': 'Weitere Übergabe eintragen',
  'handed.done':
    'An {to}, {day}, {time}; {count, plural, =0 {kein Schlüssel genannt} one {Schlüssel {keys}} other {Schlüssel {keys}}}.',
}
