import type { SameCodes } from '@shearline/jobfile'
import type { captureWords as english } from '../en/capture.ts'

/** German: Taking facts in: camera, codes, letters of a picture, speech, and taking back what was just recorded. */
export const captureWords: SameCodes<typeof english> = {
  'camera.picture': 'Das Bild der Kamera',
  'camera.lamp': 'Leuchte',
  'camera.starting': 'Warten auf die Kamera …',
  'camera.refused':
    'Die Kamera darf nicht benutzt werden. Sie für diese Seite in den Einstellungen des Browsers erlauben oder ein Foto wählen.',
  'camera.none': 'Dieses Gerät hat keine Kamera. Stattdessen ein Foto wählen.',
  'camera.busy':
    'Die Kamera antwortet nicht: Vielleicht benutzt sie ein anderes Programm. Jenes schließen oder ein Foto wählen.',
  'camera.insecure':
    'Einer Seite ohne sichere Verbindung gibt der Browser keine Kamera. Stattdessen ein Foto wählen.',

  'scan.photo': 'Foto wählen',
  'scan.photo.looking': 'Das Foto wird durchsucht …',
  'scan.photo.none':
    'In diesem Foto wurde kein Code gefunden. Den Code flach, nah und gut beleuchtet halten und erneut versuchen.',
  'scan.no-reader':
    'Der Codeleser ließ sich nicht starten. Diese Seite neu laden oder eintippen, was zu sehen ist.',

  'vin.scan': 'Mit der Kamera lesen',
  'vin.scan.title': 'VIN mit der Kamera lesen',
  'vin.scan.how': 'Den Code vom Schild, vom Türrahmen oder vom Dokument in den Rahmen halten.',
  'vin.scan.found':
    'Gelesen aus {format, select, qr {einem QR-Code} matrix {einem Data-Matrix-Code} other {einem Code-39-Etikett}}. Mit dem Fahrzeug vergleichen, bevor Sie sie übernehmen.',
  'vin.scan.other': 'Der Code im Bild lautet „{text}“. Das ist keine VIN; es wird weiter gesucht.',
  'vin.scan.again': 'Weiter suchen',
  'vin.take': 'Diese VIN übernehmen',
  'vin.letters.camera': 'Kein Code: die Buchstaben nehmen',
  'vin.letters.picture': 'Das Bild des Schilds',
  'vin.letters.offer':
    'In diesem Bild ist kein Code. Stattdessen lassen sich seine Buchstaben auf diesem Gerät lesen. Aus einem Bild gelesene Buchstaben sind oft falsch.',
  'vin.letters.read': 'Buchstaben lesen',
  'vin.letters.reading': 'Buchstaben werden gelesen …',
  'vin.letters.stop': 'Lesen abbrechen',
  'vin.letters.none':
    'Keine Reihe von 17 Buchstaben und Ziffern wurde gefunden. Das Bild gerade von vorn, nah und ohne Spiegelung aufnehmen oder eintippen.',
  'vin.letters.failed': 'Die Buchstaben ließen sich nicht lesen: {why}',
  'vin.letters.mark': 'Aus einem Bild gelesen: jedes Zeichen prüfen.',
  'vin.letters.doubtful':
    '{count, plural, =0 {Der Leser gibt alle 17 als sicher an; er kann sich trotzdem irren.} one {Bei # Zeichen ist der Leser nicht sicher; es ist gestrichelt umrandet.} other {Bei # Zeichen ist der Leser nicht sicher; sie sind gestrichelt umrandet.}}',
  'vin.letters.signs': 'Die 17 Zeichen: {vin}',
  'vin.letters.next': 'Andere Lesart zeigen',
  'vin.letters.compared': 'Ich habe jedes der 17 Zeichen mit dem Schild verglichen',

  'speech.start': 'Sprechen',
  'speech.start-named': 'Sprechen: {label}',
  'speech.stop': 'Nicht mehr zuhören',
  'speech.stop-named': 'Nicht mehr zuhören: {label}',
  'speech.hearing': 'Hört zu …',
  'speech.agree.title': 'Ihre Worte würden dieses Gerät verlassen',
  'speech.agree':
    'Dieser Browser kann Sprache nicht auf dem Gerät in Worte umwandeln. Er würde das Gesagte an seinen Hersteller senden, der es vielleicht aufbewahrt. Keine Namen, Adressen oder Nummern der Kundschaft nennen.',
  'speech.agree.no': 'Ich tippe es',
  'speech.agree.yes': 'Meine Sprache dieses Mal senden',
  'speech.failed': 'Nichts wurde verstanden. Erneut sprechen oder eintippen.',
  'speech.refused':
    'Das Mikrofon darf nicht benutzt werden. Es für diese Seite in den Einstellungen des Browsers erlauben oder eintippen.',

  'undo.done': 'Eingetragen: {what}',
  'undo.do': 'Zurücknehmen',
  'undo.close': 'Diesen Hinweis schließen',
  'undo.reason': 'Gleich nach dem Eintragen zurückgenommen.',
}
