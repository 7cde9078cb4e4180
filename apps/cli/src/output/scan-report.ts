/** @module Fault reports as files: text, tables, JSON, and the text inside a PDF. */

import { readFileSync, statSync } from 'node:fs'
import { HEAD_BYTES, recogniseCapture } from '@shearline/bus'
import { sayReportFinding } from '@shearline/jobfile'
import { readScanReport, type ScanReport } from '@shearline/keywork'
import { CouldNot, say, sayFinding } from './answer.ts'
import { pdfText } from './pdf-text.ts'

const LARGEST_REPORT_BYTES = 32 * 1024 * 1024

/** The report in a file, or null when the file is a recording (or standard input, which is taken for one). */
export async function scanReportOf(file: string): Promise<ScanReport | null> {
  if (file === '-') return null
  let bytes: Uint8Array
  try {
    // A recording may be larger than memory; its beginning tells.
    if (statSync(file).size > LARGEST_REPORT_BYTES) return null
    bytes = readFileSync(file)
  } catch (error) {
    throw new CouldNot(
      `${file} cannot be read: ${(error as Error).message}.`,
      'Check the name and try again.',
    )
  }
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
