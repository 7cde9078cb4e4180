/** @module Which column holds what, and how a person says it: by the names of the columns. */

import type { Finding } from '../finding/index.ts'
import { TIME_UNITS, type TimeUnit } from './time.ts'
import { CSV_FIELDS } from './words.ts'

/** Every finding of this folder. */
export type CsvFindingCode =
  | 'csv-not-understood'
  | 'csv-guessed'
  | 'csv-column-unknown'
  | 'csv-bad-line'
  | 'csv-length-differs'
  | 'csv-no-time'
  | 'csv-time-zone'
  | 'csv-line-too-long'

/** How data bytes are written: decimal, hexadecimal, or the base64 of RFC 4648 (one column only). */
export type DataBase = 10 | 16 | 64

/** Which column holds what. Columns count from 0. */
export interface CsvMapping {
  readonly time: { readonly column: number; readonly unit: TimeUnit } | undefined
  readonly id: { readonly column: number; readonly base: 10 | 16 }
  readonly extended: number | undefined
  readonly channel: number | undefined
  readonly length: number | undefined
  /** One column of all bytes, or one column for each byte (`spread`). */
  readonly data: { readonly columns: readonly number[]; readonly base: DataBase; readonly spread: boolean }
  readonly direction: number | undefined
  readonly remote: number | undefined
  readonly fd: number | undefined
  readonly error: number | undefined
}

/** A mapping that may lack what it needs most. */
export type FoundColumns = Omit<CsvMapping, 'id' | 'data'> & {
  readonly id: CsvMapping['id'] | undefined
  readonly data: CsvMapping['data'] | undefined
}

/**
 * How sure a field's column (with its unit or base) is: `certain` said by the header, `likely` by header and
 * contents together, `guessed` when another reading is as possible.
 */
export type Confidence = 'certain' | 'likely' | 'guessed'

/**
 * What a person may say, beside the fields: `data` may name several columns as `first..last`, a column without
 * a name is `#n` (from 1), and these name no column but how to read one.
 */
const READINGS: readonly string[] = ['timeUnit', 'idBase', 'dataBase']

/**
 * A mapping as a person says it (`ReaderOptions.columns`), put over a guess. What is not said stays as guessed; a
 * field set to the empty text is left out. Columns that the header does not have are told.
 */
export function mappingFrom(
  columns: Readonly<Record<string, string>>,
  header: readonly string[],
  guess: FoundColumns,
): { readonly mapping: CsvMapping | undefined; readonly findings: readonly Finding<CsvFindingCode>[] } {
  const findings: Finding<CsvFindingCode>[] = []
  const find = (field: string, name: string): number | undefined => {
    const numbered = /^#(\d+)$/.exec(name)
    const column = numbered === null ? header.indexOf(name) : Number(numbered[1]) - 1
    if (column >= 0 && column < header.length) return column
    findings.push(unknownColumn(field, name, header))
    return undefined
  }
  const one = (field: string, guessed: number | undefined): number | undefined => {
    const name = columns[field]
    if (name === undefined) return guessed
    return name === '' ? undefined : find(field, name)
  }
  for (const field of Object.keys(columns)) {
    if (!FIELDS.has(field) && !READINGS.includes(field))
      findings.push(unknownColumn(field, columns[field] ?? '', header))
  }
  const timeColumn = one('time', guess.time?.column)
  const unit = TIME_UNITS.find((known) => known === columns.timeUnit) ?? guess.time?.unit ?? 's'
  const idColumn = one('id', guess.id?.column)
  const data = dataFrom(columns, guess.data, find)
  if (idColumn === undefined || data === undefined) return { mapping: undefined, findings }
  return {
    mapping: {
      time: timeColumn === undefined ? undefined : { column: timeColumn, unit },
      id: { column: idColumn, base: baseFrom(columns.idBase) ?? guess.id?.base ?? 16 },
      extended: one('extended', guess.extended),
      channel: one('channel', guess.channel),
      length: one('length', guess.length),
      data,
      direction: one('direction', guess.direction),
      remote: one('remote', guess.remote),
      fd: one('fd', guess.fd),
      error: one('error', guess.error),
    },
    findings,
  }
}

/** The mapping in the words `mappingFrom` takes: what a mapping dialog shows first. */
export function columnsOf(mapping: CsvMapping, header: readonly string[]): Record<string, string> {
  const name = (column: number | undefined): string => {
    if (column === undefined) return ''
    const text = header[column] ?? ''
    return text === '' || header.indexOf(text) !== column || text.includes('..') ? `#${column + 1}` : text
  }
  const { data } = mapping
  return {
    time: name(mapping.time?.column),
    timeUnit: mapping.time?.unit ?? 's',
    id: name(mapping.id.column),
    idBase: mapping.id.base === 16 ? 'hex' : 'dec',
    extended: name(mapping.extended),
    channel: name(mapping.channel),
    length: name(mapping.length),
    data: data.spread
      ? `${name(data.columns[0])}..${name(data.columns[data.columns.length - 1])}`
      : name(data.columns[0]),
    dataBase: { 10: 'dec', 16: 'hex', 64: 'base64' }[data.base],
    direction: name(mapping.direction),
    remote: name(mapping.remote),
    fd: name(mapping.fd),
    error: name(mapping.error),
  }
}

const FIELDS: ReadonlySet<string> = new Set(CSV_FIELDS)

function dataFrom(
  columns: Readonly<Record<string, string>>,
  guess: CsvMapping['data'] | undefined,
  find: (field: string, name: string) => number | undefined,
): CsvMapping['data'] | undefined {
  const base = dataBaseFrom(columns.dataBase) ?? guess?.base ?? 16
  const said = columns.data
  if (said === undefined) return guess === undefined ? undefined : { ...guess, base }
  const ends = said.split('..')
  const first = find('data', ends[0] ?? '')
  if (first === undefined) return undefined
  if (ends.length === 1) return { columns: [first], base, spread: false }
  const last = find('data', ends[1] ?? '')
  if (last === undefined || last < first || last - first >= 64) return undefined
  return {
    columns: Array.from({ length: last - first + 1 }, (_, index) => first + index),
    base,
    spread: true,
  }
}

const MOST_NAMES = 40
const LONGEST_NAME = 24
/** A row of data may have been taken for the header: what looks like data bytes is not repeated. */
const LIKE_DATA = /(?:[0-9a-f][^0-9a-z]*){5}/i

/** The names of a header for a person to choose from; a column whose name is none is shown by its number. */
export function namesOf(header: readonly string[]): string {
  const names = header.slice(0, MOST_NAMES).map((name, column) => {
    const isName = /^\p{L}[\p{L}\p{N} _.:/%()[\]-]*$/u.test(name) && name.length <= LONGEST_NAME
    const hasDigit = /\d/.test(name)
    return isName && !(hasDigit && LIKE_DATA.test(name)) ? name : `#${column + 1}`
  })
  return `${names.join(', ')}${header.length > MOST_NAMES ? ' and more' : ''}`
}

function dataBaseFrom(text: string | undefined): DataBase | undefined {
  return text === 'base64' ? 64 : baseFrom(text)
}

function baseFrom(text: string | undefined): 10 | 16 | undefined {
  if (text === 'hex') return 16
  return text === 'dec' ? 10 : undefined
}

function unknownColumn(field: string, name: string, header: readonly string[]): Finding<CsvFindingCode> {
  return {
    code: 'csv-column-unknown',
    severity: 'error',
    where: { line: 1 },
    what: `the table has no column "${name}" for "${field}"`,
    doNext: `Its columns are ${namesOf(header)}; a column may also be named by its number, #1, #2 and so on.`,
    params: { field, name },
  }
}
