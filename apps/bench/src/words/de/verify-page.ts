import type { SameCodes } from '@shearline/jobfile'
import type { verifyPageWords as english } from '../en/verify-page.ts'

/** German: The page a customer can prove a document with. */
export const verifyPageWords: SameCodes<typeof english> = {
  'verify-page.save': 'Prüfseite für Dokumente speichern',
  'verify-page.about':
    'Eine Datei für die Kundschaft oder eine Versicherung: Sie weist das Dokument in jedem Browser nach, ohne Verbindung und ohne Shearline.',
}
