import type { SameCodes } from '@shearline/jobfile'
import type { tagWords as english } from '../en/tags.ts'

/** German: Tags that tell keys apart: printing them and finding a key by its tag. */
export const tagWords: SameCodes<typeof english> = {
  'tags.find': 'Schlüssel am Anhänger erkennen',
  'tags.find.how': 'Den Anhänger des Schlüssels in den Rahmen halten.',
  'tags.find.other': 'Das ist ein Code, aber kein Schlüsselanhänger. Es wird weiter gesucht.',
  'tags.find.code': 'Oder die vier Zeichen auf dem Anhänger eintippen',
  'tags.find.code.hint': 'Sie stehen unter dem quadratischen Code.',
  'tags.find.do': 'Suchen',
  'tags.find.unknown':
    'Kein Schlüssel dieses Auftrags hat den Code {code}. Erneut ablesen; 0, 1, I, L, O und U werden nie gedruckt.',
  'tags.chosen': 'Der in Ihrer Hand',
  'tags.found': 'In Ihrer Hand: {key}',
  'tags.found.is':
    '{origin, select, new {{taught, select, true {Ein neuer Schlüssel, in diesem Auftrag angelernt.} other {Ein neuer Schlüssel, noch nicht angelernt.}}} other {{taught, select, true {Ein Schlüssel der Kundschaft, in diesem Auftrag angelernt.} other {Ein Schlüssel der Kundschaft.}}}}',
  'tags.found.go': 'Seine Karte zeigen',
  'tags.elsewhere': 'Kein Schlüssel dieser Werkbank',
  'tags.elsewhere.job':
    'Das ist Schlüssel {key} eines anderen Auftrags. Von den Schlüsseln dieses Auftrags getrennt halten.',
  'tags.elsewhere.gone':
    'Der Anhänger nennt Schlüssel {key} dieses Auftrags, und kein solcher Schlüssel steht jetzt im Protokoll.',
  'tags.elsewhere.open': 'Jenen Auftrag öffnen',
  'tags.print': 'Anhänger drucken',
  'tags.print.what':
    'Ein Anhänger je Schlüssel: sein Buchstabe und seine Farbe, die Nummer des Auftrags und ein Code, an dem die Kamera ihn erkennt. Kein Fahrzeug, kein Name, keine Adresse steht darauf: Ein verlorener Anhänger verrät niemandem, wohin der Schlüssel passt.',
  'tags.print.keys': 'Für welche Schlüssel?',
  'tags.print.used': 'Schon verbrauchte Plätze des Bogens',
  'tags.print.used.hint': 'Ein Bogen hat {count} Plätze, Zeile für Zeile gezählt.',
  'tags.print.make': 'Bogen erstellen',
  'tags.print.busy': 'Bogen wird erstellt …',
  'tags.print.ready': 'Der Bogen ist fertig: speichern und in voller Größe drucken.',
  'tags.print.save': 'Bogen speichern',
  'tags.sheet.title': 'Schlüsselanhänger, Auftrag {job}',
}
