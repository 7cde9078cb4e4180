/** @module The text of a report that came as a file. */

/** Larger files are no fault reports. Bytes. */
const MOST_BYTES = 32 << 20
const PDF_BEGINS = '%PDF-'
/** A PDF may begin with other bytes (ISO 32000-1, annex H, note 13). */
const PDF_BEGINS_WITHIN = 1024

/** Why a file gives no text. */
export class NoText extends Error {
  readonly reason: 'too-large' | 'only-pictures' | 'damaged'
  constructor(reason: NoText['reason'], detail = '') {
    super(detail)
    this.reason = reason
  }
}

/** The text of a PDF or of a text file. Rejects with NoText. */
export async function sourceText(file: Blob): Promise<string> {
  if (file.size > MOST_BYTES) throw new NoText('too-large')
  const bytes = new Uint8Array(await file.arrayBuffer())
  if (!isPdf(bytes)) return plainText(bytes)
  const { pdfLines } = await import('./pdf-lines.ts')
  const lines = await pdfLines(bytes).catch((error: unknown) => {
    throw new NoText('damaged', error instanceof Error ? error.message : String(error))
  })
  if (lines.every((line) => line.trim() === '')) throw new NoText('only-pictures')
  return lines.join('\n')
}

function isPdf(bytes: Uint8Array): boolean {
  return new TextDecoder('latin1').decode(bytes.subarray(0, PDF_BEGINS_WITHIN)).includes(PDF_BEGINS)
}

/** UTF-8, UTF-16 with its mark, else the old Western code page. */
export function plainText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return new TextDecoder('windows-1252').decode(bytes)
  }
}
