/** @module Fault reports as files: text, tables, JSON, and the text inside a PDF. */

import { HEAD_BYTES, recogniseCapture } from '@shearline/bus'
import { sayReportFinding } from '@shearline/jobfile'
import { readScanReport, type ScanReport } from '@shearline/keywork'
import { say, sayFinding } from './answer.ts'
import { bytesOf, sizeOf } from './input.ts'
import { pdfText } from './pdf-text.ts'

const LARGEST_REPORT_BYTES = 32 * 1024 * 1024

/**
 * The report in a file, or null when the file is a recording (or standard input, which is taken for one). Throws
 * CouldNot when it cannot be read.
 */
export async function scanReportOf(file: string): Promise<ScanReport | null> {
  const size = sizeOf(file)
  // A recording may be larger than memory; its beginning tells.
  if (size === null || size > LARGEST_REPORT_BYTES) return null
  const bytes = await bytesOf(file)
  if (recogniseCapture(bytes.subarray(0, HEAD_BYTES)).format !== 'unknown') return null
  const text = isPdf(bytes) ? await pdfText(file, bytes) : textOf(bytes)
  if (text === null) return null
  const report = readScanReport(text)
  for (const finding of report.findings) sayFinding(file, { ...finding, ...sayReportFinding('en', finding) })
  for (const read of report.codes) {
    if (read.doubts.length === 0) continue
    say(`look: ${file}, line ${read.line}: ${read.fault.code} (${read.doubts.join(', ')})`)
  }
  return report
}

function isPdf(bytes: Uint8Array): boolean {
  return Buffer.from(bytes.subarray(0, 5)).toString('latin1') === '%PDF-'
}

/** The bytes as text; null when they hold zero bytes or are no UTF-8 in which codes could be looked for. */
function textOf(bytes: Uint8Array): string | null {
  if (bytes.length === 0 || bytes.subarray(0, 4096).includes(0)) return null
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    // Codes and headings are plain letters in every older code page.
    return new TextDecoder('windows-1252').decode(bytes)
  }
}
