/** @module Takes the record out of a file and proves it. */
import type { Verifier } from '../../chain/index.ts'
import { type RecordCheck, verifyRecord } from '../../record/index.ts'
import { indexOf, utf8 } from '../pdf/bytes.ts'
import type { PdfFile } from '../pdf/file.ts'
import { type JsonScan, scanJson } from '../pdf/json.ts'
import { attached } from '../seal/parts.ts'
import { askAgain, finding, type HandoverFinding } from './findings.ts'

export interface RecordRead {
  readonly check: RecordCheck | null
  readonly findings: readonly HandoverFinding[]
}

/** Where the attached record's text stands: as the PDF says, else as the seal says, else where it is recognised. */
export function recordPlace(
  bytes: Uint8Array,
  file: PdfFile | null,
  sealed: { readonly at: number; readonly bytes: number } | null,
): { from: number; to: number } | null {
  const object = file?.attachments().get(attached.record)?.file
  const stream = object === undefined ? null : (file?.object(object)?.stream ?? null)
  if (stream !== null) return stream
  if (sealed !== null && sealed.at + sealed.bytes <= bytes.length)
    return { from: sealed.at, to: sealed.at + sealed.bytes }
  const from = indexOf(bytes, '{"devices":[')
  if (from < 0) return null
  const scan = scanJson(bytes, from)
  return { from, to: 'end' in scan ? scan.end : bytes.length }
}

/** Scans JSON that must reach to the end of the bytes, but for blanks. */
function wholeJson(bytes: Uint8Array, from: number): JsonScan {
  const scan = scanJson(bytes, from)
  if ('errorAt' in scan) return scan
  const rest = bytes.subarray(scan.end).findIndex((byte) => byte > 0x20)
  return rest < 0 ? scan : { errorAt: scan.end + rest }
}

/**
 * Proves a record from its JSON bytes. `nameAt` names the part of the file that holds a byte, so that text that
 * is no longer JSON still says which fact was changed. Never throws.
 */
export async function readRecord(
  bytes: Uint8Array,
  place: { readonly from: number; readonly to: number },
  verifier: Verifier,
  nameAt: (byteOffset: number) => string,
): Promise<RecordRead> {
  const text = utf8(bytes.subarray(place.from, place.to))
  const scan = wholeJson(bytes.subarray(0, place.to), place.from)
  if ('errorAt' in scan || text === null) {
    const byteOffset = 'errorAt' in scan ? scan.errorAt : place.from
    const what = 'The record is no longer readable from this byte on: it was changed or cut off.'
    const part = nameAt(byteOffset)
    return { check: null, findings: [finding('record-unreadable', { part, byteOffset }, what, askAgain)] }
  }
  try {
    const check = await verifyRecord(JSON.parse(text), verifier)
    return { check, findings: check.findings }
  } catch {
    const what = 'The record has a form that cannot be checked.'
    return { check: null, findings: [finding('record-unreadable', { part: 'record' }, what, askAgain)] }
  }
}
