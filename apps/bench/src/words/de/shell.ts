import type { SameCodes } from '@shearline/jobfile'
import type { shellWords as english } from '../en/shell.ts'

/** German: Header, board, new job, this device, and what goes wrong. */
export const shellWords: SameCodes<typeof english> = {
  'app.name': 'Shearline',
  'app.device': 'Gerät',
  'app.skip': 'Zum Inhalt springen',
  'app.loading': 'Einen Moment ...',
  'title.board': 'Aufträge · Shearline',
  'title.new': 'Neuer Auftrag · Shearline',
  'title.job': 'Auftrag · Shearline',
  'title.device': 'Dieses Gerät · Shearline',
  yes: 'Ja',
  no: 'Nein',
  cancel: 'Abbrechen',
  close: 'Schließen',
  record: 'Eintragen',
  reason: 'Grund',
  'reason.writing': 'Schriftlicher Grund',
  'amount.more': 'Erhöhen',
  'amount.less': 'Verringern',
  'amount.unit': '{label} ({unit})',
  'names.add': 'Hinzufügen',
  'names.remove': '{name} entfernen',
  'saved.here': 'hier gespeichert',
  'saved.sent': 'gesendet',

  'sending.sent': 'Gespeichert, alles gesendet',
  'sending.sending': 'Gespeichert, sende {count}',
  'sending.waiting': 'Gespeichert, {count} zu senden',
  'sending.refused': 'Gespeichert, nicht angenommen',
  'sending.full.sent': 'Alles auf diesem Gerät ist auch auf dem Server.',
  'sending.full.sending':
    'Alles ist auf diesem Gerät gespeichert. Gesendet werden gerade: {facts, plural, one {# Eintrag} other {# Einträge}}{blobs, plural, =0 {} one { und # Aufzeichnung} other { und # Aufzeichnungen}}.',
  'sending.full.waiting':
    'Alles ist auf diesem Gerät gespeichert. Noch zu senden: {facts, plural, one {# Eintrag} other {# Einträge}}{blobs, plural, =0 {} one { und # Aufzeichnung} other { und # Aufzeichnungen}}. Die Werkbank versucht es von selbst erneut, auch nach einem Neustart.',
  'sending.full.refused':
    'Alles ist auf diesem Gerät gespeichert und bleibt hier. Vom Server nicht angenommen: {facts, plural, one {# Eintrag} other {# Einträge}}{blobs, plural, =0 {} one { und # Aufzeichnung} other { und # Aufzeichnungen}}.',
  'sending.refusal': '{what} ({code})',
  'sending.try': 'Jetzt senden',

  'board.day':
    '{open, plural, =0 {Nichts offen} one {# Auftrag offen} other {# Aufträge offen}}{ready, plural, =0 {} one {, # auf Linie} other {, # auf Linie}}',
  'board.new': 'Neuer Auftrag',
  'board.earlier': 'Frühere Tage',
  'board.invented': 'erfunden',
  'board.where': '{place} · {when}',
  'board.empty.title': 'Noch kein Auftrag',
  'board.empty.what':
    'Einen anlegen, wenn die Anfrage kommt. Jeder Auftrag erscheint dann hier als Schließzylinder, mit dem einen nächsten Schritt.',
  'board.empty.call': 'Neuer Auftrag: welches Fahrzeug, wo, für wen.',
  'board.empty.arrive':
    'Am Fahrzeug: VIN ablesen, jeden Schlüssel kennzeichnen, scannen, bevor etwas angefasst wird.',
  'board.empty.seal': 'Wenn alle sieben Zuhaltungen auf Linie stehen: das Dokument versiegeln und übergeben.',

  'new.title': 'Neuer Auftrag',
  'new.name': 'Name des Auftrags',
  'new.name.hint': 'Damit Sie ihn wiederfinden: „Kleintransporter, Schlüssel verloren“.',
  'new.vehicle': 'Fahrzeug, wie die Kundschaft es nennt',
  'new.vehicle.hint': 'Art und Farbe genügen. Die VIN entscheidet später.',
  'new.place': 'Wo es steht',
  'new.place.hint': 'Zeiten dieses Auftrags erscheinen in {zone}, der Zone dieses Geräts.',
  'new.work': 'Was gewünscht ist',
  'new.customer': 'Wer bestellt',
  'new.language': 'Sprache der Kundschaft',
  'new.language.hint': 'Einwilligungen und das Übergabedokument werden in ihr geschrieben.',
  'new.open': 'Auftrag anlegen',

  'device.title': 'Dieses Gerät',
  'device.by': 'Ihr Name',
  'device.by.hint': 'Steht im Protokoll neben allem, was Sie schreiben.',
  'device.name': 'Name dieses Geräts',
  'device.name.hint': 'Was andere lesen: „Tablet in Wagen 2“.',
  'device.keep': 'Behalten',
  'device.language': 'Sprache dieser Werkbank',
  'device.language.hint':
    'Was die Kundschaft bekommt, ist in der Sprache geschrieben, die beim jeweiligen Auftrag eingestellt ist.',
  'device.light': 'Licht',
  'device.light.hint':
    'Starker Kontrast ist Schwarz auf Weiß mit kräftigen Kanten, für Sonne und für schwache Augen.',
  'theme.auto': 'Wie das Gerät',
  'theme.light': 'Hell',
  'theme.dark': 'Dunkel',
  'theme.sun': 'Starker Kontrast',
  'device.sending': 'Gespeichert und gesendet',
  'device.kept': 'Hier aufbewahrt',
  'device.key':
    'Dieser Browser signiert, was er einträgt, mit einem Schlüssel, der ihn nicht verlassen kann. Andere erkennen das Gerät an:',
  'device.facts':
    '{count, plural, =0 {Mit diesem Gerät ist noch nichts eingetragen.} one {Mit diesem Gerät ist # Eintrag gemacht.} other {Mit diesem Gerät sind # Einträge gemacht.}}',
  'device.lasting': 'Der Browser hat zugesagt, diesen Speicher zu behalten.',
  'device.not-lasting':
    'Der Browser kann diesen Speicher verwerfen, wenn die Platte voll ist. Ihn bitten, den Speicher zu behalten; meist stimmt er zu, sobald die Werkbank oft benutzt wird oder installiert ist.',
  'device.ask-lasting': 'Browser bitten, ihn zu behalten',

  'by.title': 'Wer arbeitet?',
  'by.go-on': 'Weiter',
  'by.needed': 'Nichts wurde eingetragen: Das Protokoll braucht den Namen der Person, die arbeitet.',

  'mishap.title': 'Diese Seite ist gescheitert',
  'mishap.kept': 'Alles, was als gespeichert angezeigt war, ist weiterhin auf diesem Gerät gespeichert.',
  'mishap.reload': 'Seite neu laden',
  'problem.fact': 'Nicht eingetragen, der Wert bei „{path}“ passt nicht. {what}',
  'problem.cannot-sign':
    'Dieser Browser kann Einträge nicht signieren. Eine aktuelle Version oder einen anderen Browser verwenden.',
  'problem.refused': '{what} {doNext}',
  'problem.unreachable':
    'Der Server ist jetzt nicht erreichbar. Alles Eingetragene bleibt hier gespeichert; erneut versuchen, wenn es eine Verbindung gibt.',
  'problem.full':
    'Dieses Gerät ist voll, deshalb wurde nichts eingetragen. Platz schaffen und erneut eintragen.',
  'problem.other': 'Das hat nicht geklappt: {what}',
}
