/** @module The text of a PDF, line by line as it stands on the pages. Loaded only when a PDF is given. */
import { linesOfPieces } from '@shearline/keywork'
import { getDocument, PDFWorker, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** A report has few pages; a thick book is no report. */
const MOST_PAGES = 200

/** The lines of all pages; empty when the file holds only pictures. Rejects when it is damaged or locked. */
export async function pdfLines(bytes: Uint8Array): Promise<readonly string[]> {
  const port = new Worker(new URL('./pdf.worker.ts', import.meta.url), { type: 'module' })
  const worker = PDFWorker.create({ port })
  try {
    const task = getDocument({ data: bytes, worker, useSystemFonts: false, verbosity: VerbosityLevel.ERRORS })
    const document = await task.promise
    const lines: string[] = []
    for (let page = 1; page <= Math.min(document.numPages, MOST_PAGES); page++) {
      const content = await (await document.getPage(page)).getTextContent()
      lines.push(...linesOfPieces(content.items.flatMap((item) => ('str' in item ? [item] : []))))
    }
    await task.destroy()
    return lines
  } finally {
    worker.destroy()
    port.terminate()
  }
}
