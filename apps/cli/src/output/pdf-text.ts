/** @module The text of a PDF, line by line as it stands on the pages. */

import { linesOfPieces } from '@shearline/keywork'
import { CouldNot } from './answer.ts'

/** The lines of all pages. Throws CouldNot when the file is damaged, locked, or holds no text. */
export async function pdfText(file: string, bytes: Uint8Array): Promise<string> {
  const { getDocument, VerbosityLevel } = await import('pdfjs-dist/legacy/build/pdf.mjs')
  try {
    const task = getDocument({
      data: Uint8Array.from(bytes),
      useSystemFonts: false,
      verbosity: VerbosityLevel.ERRORS,
    })
    const document = await task.promise
    const lines: string[] = []
    for (let page = 1; page <= document.numPages; page++) {
      const content = await (await document.getPage(page)).getTextContent()
      lines.push(...linesOfPieces(content.items.flatMap((item) => ('str' in item ? [item] : []))))
    }
    await task.destroy()
    if (lines.every((line) => line.trim() === ''))
      throw new CouldNot(`${file} holds no text, only pictures.`, 'Type the faults in instead.')
    return lines.join('\n')
  } catch (error) {
    if (error instanceof CouldNot) throw error
    throw new CouldNot(
      `${file} cannot be read as a PDF: ${(error as Error).message}.`,
      'Type the faults in instead.',
    )
  }
}
