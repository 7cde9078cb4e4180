import type { SameCodes } from '@shearline/jobfile'
import type { sheetWords as english } from '../en/sheets.ts'

/** German: Sheets beside the handover document, and the row of a register. */
export const sheetWords: SameCodes<typeof english> = {
  'sheets.title': 'Blätter',
  'sheets.show': 'Einwilligungen, Mitteilungen und Auskünfte zum Aushändigen',
  'sheets.looking': 'Sehe nach, was im Protokoll steht ...',
  'sheets.about': 'Jedes entsteht auf diesem Gerät aus dem Protokoll, ohne Verbindung.',
  'sheets.language': 'Sprache der Person, die es liest',
  'sheets.make': 'Erstellen',
  'sheets.make-named': 'Erstellen: {sheet}',
  'sheets.busy': 'Blatt wird erstellt ...',
  'sheets.others': 'Blätter, für die das Protokoll nichts enthält',
  'sheets.open': 'Öffnen',
  'sheets.open-named': 'Öffnen: {sheet}',
  'sheets.save': 'Speichern',
  'sheets.save-named': 'Speichern: {sheet}',
  'sheets.message': 'Als Nachricht',
  'sheets.copy': 'Nachricht kopieren',
  'sheets.copied': 'Kopiert. In eine Nachricht an die Kundschaft einfügen.',
  'sheets.not-copied':
    'Dieser Browser lässt das Kopieren nicht zu. Die Worte markieren und von Hand kopieren.',
  'sheets.register': 'Zeile für ein Register',
  'sheets.register-about':
    'Was ein Register der Schlüsselarbeiten von diesem Auftrag führen kann. Welche Felder eine Regelung verlangt, steht in einem Paket, das das Büro wählt.',
  'sheets.register-csv': 'Als Tabelle (CSV)',
  'sheets.register-json': 'Als Daten (JSON)',
}
