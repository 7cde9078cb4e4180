/** @module The invoice a document carries, derived from its record alone. */
import { Collected } from '../fold/collect.ts'
import { invoiceXml } from '../invoice/index.ts'
import type { JobRecord } from '../record/index.ts'

/** The XML of the latest invoice of a record, corrections applied; null when it holds none. */
export function invoiceText(record: JobRecord): string | null {
  const issued = new Collected(record.facts).last('invoice-issued')
  return issued === null ? null : invoiceXml(issued.body)
}
