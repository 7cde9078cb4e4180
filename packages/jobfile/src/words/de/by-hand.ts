import type { SameCodes } from '../catalogues.ts'
import type { byHandWords as english } from '../en/by-hand.ts'

/** German: How a stranger checks a document without us. */
export const byHandWords: SameCodes<typeof english> = {
  'doc.by-hand': 'Nur mit openssl',
  'doc.by-hand-how':
    'Speichern Sie diese Datei als document.pdf in einem leeren Ordner, öffnen Sie dort eine Shell (unter Linux oder unter macOS mit den GNU core utilities) und geben Sie diese Zeilen ein. Sie brauchen openssl 3 und kein Netz.',
  'doc.by-hand-commands': 'Befehle',
  'doc.by-hand-answer':
    'Es hält nur, wenn „It holds“ ausgegeben wird; vergleichen Sie dann den Fingerabdruck darunter mit dem, den Sie von der Firma erhalten haben. Alles andere bedeutet, dass die Datei verändert wurde oder nicht vollständig ist.',
  'doc.by-hand-limits':
    'Das beweist das Siegel und jedes Byte der Datei. Dass die Seiten angeben, was das Protokoll angibt, zeigen „shearline verify“ und die Prüfseite, eine HTML-Datei, die die Firma Ihnen geben kann.',
}
