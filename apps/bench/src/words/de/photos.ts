import type { SameCodes } from '@shearline/jobfile'
import type { photoWords as english } from '../en/photos.ts'

/** German: Photos: taking, what they show, seeing them whole, deletion. */
export const photoWords: SameCodes<typeof english> = {
  'photo.title': 'Fotos',
  'photo.identity.title': 'Bild eines Dokuments',
  'photo.take': 'Foto aufnehmen',
  'photo.take.of': 'Foto aufnehmen: {what}',
  'photo.take.key': 'Foto',
  'photo.shutter': 'Auslösen',
  'photo.again': 'Noch einmal aufnehmen',
  'photo.keep': 'Dieses Foto behalten',
  'photo.preview': 'Das Foto, wie es aufbewahrt wird',
  'photo.kept-how':
    'Es bleibt verschlüsselt in der Werkbank und kommt nicht in die Galerie. Ort, Zeit und Kamera, die eine Datei enthalten kann, bleiben zurück.',
  'photo.what': 'Was zeigt es?',
  'photo.which-key': 'Welcher Schlüssel?',
  'photo.shows.key': 'ein Schlüssel',
  'photo.shows.key-named': 'Schlüssel {key}',
  'photo.shows.vin': 'die VIN',
  'photo.shows.odometer': 'der Kilometerstand',
  'photo.shows.lamps': 'leuchtende Kontrollleuchten',
  'photo.shows.damage': 'ein Schaden',
  'photo.shows.equipment': 'Ausrüstung',
  'photo.shows.identity': 'ein Ausweisdokument',
  'photo.shows.other': 'ein Teil oder etwas anderes',
  'photo.shows.with': '{what}: {words}',
  'photo.words': 'In wenigen Worten',
  'photo.words.hint': 'Welches Teil, welche Seite, was zu sehen ist.',
  'photo.identity':
    'Ein Bild eines Dokuments nur aufbewahren, wo die Regeln, nach denen Sie arbeiten, es verlangen. Es hat ein eigenes Löschdatum.',
  'photo.unreadable':
    '„{name}“ lässt sich hier nicht als Bild lesen. Eine Datei in JPEG, PNG oder WebP wählen oder mit der Kamera aufnehmen.',
  'photo.file': 'Foto',
  'photo.open': 'Foto zeigen: {what}',
  'photo.close': 'Schließen',
  'photo.about': 'Ins Protokoll genommen {when} von {by}, {size}.',
  'photo.reading': 'Wird geöffnet …',
  'photo.missing': 'Nicht hier',
  'photo.missing.no-connection':
    'Dieses Foto ist nicht auf diesem Gerät, und der Server ist jetzt nicht erreichbar.',
  'photo.missing.not-there':
    'Dieses Foto ist noch nicht auf dem Server. Es kommt, wenn das Gerät, das es aufgenommen hat, es gesendet hat.',
  'photo.missing.damaged':
    'Die Bytes dieses Fotos passen nicht zum Protokoll, deshalb werden sie nicht gezeigt.',
  'photo.deleted':
    'Gelöscht {when}, weil seine Frist um war. Das Protokoll beweist weiterhin, dass es da war.',
  'photo.deleted.short': 'Gelöscht',
}
