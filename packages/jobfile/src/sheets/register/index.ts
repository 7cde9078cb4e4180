/** @module The export for a register: a row for each job, the fields of a pack, as CSV or JSON. */
import type { JobRecord } from '../../record/index.ts'
import { type FieldValue, fieldsOf } from './fields.ts'
import type { RegisterPack } from './pack.ts'

export { type FieldName, type FieldValue, fieldNames } from './fields.ts'
export { plainRegister, type RegisterPack, readRegisterPack } from './pack.ts'

/** A register: columns, a row for each job, and what a row lacks although the pack wants it. */
export interface JobRegister {
  readonly pack: Pick<RegisterPack, 'id' | 'title' | 'date' | 'source'>
  readonly columns: readonly string[]
  readonly rows: readonly (readonly FieldValue[])[]
  /** Wanted and not on record, by job and column. The row is there all the same, the place empty. */
  readonly lacking: readonly { readonly job: string; readonly column: string }[]
}

/** Makes a register of jobs, in the order given. */
export function makeRegister(pack: RegisterPack, records: readonly JobRecord[]): JobRegister {
  const wanted = pack.fields.map(({ from }) => from)
  const rows = records.map((record) => fieldsOf(record, wanted))
  const { id, title, date, source } = pack
  return {
    pack: { id, title, date, source },
    columns: pack.fields.map(({ column }) => column),
    rows,
    lacking: records.flatMap(({ job }, line) =>
      pack.fields.flatMap(({ column, required }, place) =>
        required && rows[line]?.[place] === null ? [{ job, column }] : [],
      ),
    ),
  }
}

/** A register as CSV (RFC 4180) in UTF-8, lines ended by CR LF; a place that is not known is empty. */
export function registerCsv({ columns, rows }: JobRegister): string {
  return [columns, ...rows].map((row) => `${row.map(csvField).join(',')}\r\n`).join('')
}

/** A register as JSON text: pack, a row object for each job, what is lacking. */
export function registerJson({ pack, columns, rows, lacking }: JobRegister): string {
  const objects = rows.map((row) =>
    Object.fromEntries(columns.map((column, place) => [column, row[place] ?? null])),
  )
  return `${JSON.stringify({ format: 'shearline-register', version: 1, pack, rows: objects, lacking }, null, 2)}\n`
}

/**
 * A value as a CSV field. Text that a spreadsheet would take for a formula is led by an apostrophe (OWASP, "CSV
 * Injection"), since places and names come from people.
 */
function csvField(value: FieldValue): string {
  if (value === null) return ''
  const text = typeof value === 'string' && /^[=+\-@\t\r]/.test(value) ? `'${value}` : String(value)
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}
