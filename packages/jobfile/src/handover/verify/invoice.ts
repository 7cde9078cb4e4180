/** @module Checks that the invoice attached for programs says what the record says. */
import type { JobRecord } from '../../record/index.ts'
import { invoiceText } from '../invoice-text.ts'
import { utf8 } from '../pdf/bytes.ts'
import type { PdfFile } from '../pdf/file.ts'
import { editionOf, type Manifest } from '../seal/manifest.ts'
import { attached } from '../seal/parts.ts'
import { askAgain, finding, type HandoverFinding } from './findings.ts'

/** The first edition that carries invoices. */
const firstEdition = 2

/** Derives the invoice again from the record and compares it, byte for byte, with the attached one. */
export function checkInvoice(
  file: PdfFile,
  record: JobRecord,
  manifest: Manifest,
): readonly HandoverFinding[] {
  const edition = editionOf(manifest.maker)
  const expected = edition !== null && edition >= firstEdition ? invoiceText(record) : null
  const object = file.attachments().get(attached.invoice)?.file
  const stream = object === undefined ? null : (file.object(object)?.stream ?? null)
  const found = stream === null ? null : utf8(file.bytes.subarray(stream.from, stream.to))
  if (found === expected && (object === undefined) === (expected === null)) return []
  const what =
    expected === null
      ? 'An invoice is attached that the record does not hold.'
      : found === null
        ? 'The invoice of the record is not attached.'
        : 'The attached invoice does not say what the record says.'
  const where = { part: 'invoice', ...(stream === null ? {} : { byteOffset: stream.from }) }
  return [finding('invoice-does-not-follow', where, what, askAgain)]
}
