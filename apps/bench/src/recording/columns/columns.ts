/** @module Which column of a table holds what, as a person says it in the dialog. Columns count from 0; null is none. */
import type { CsvField, MappingGuess, TableSample, TimeUnit } from '@shearline/bus'

/** Fields held by one column, in the order of the dialog; data may take several and stands apart. */
export const singleFields = [
  'time',
  'id',
  'length',
  'channel',
  'extended',
  'direction',
  'remote',
  'fd',
  'error',
] as const satisfies readonly CsvField[]
export type SingleField = (typeof singleFields)[number]

/** A person's answer for every field. */
export interface Columns {
  readonly fields: Readonly<Record<SingleField, number | null>>
  readonly timeUnit: TimeUnit
  readonly idBase: 'hex' | 'dec'
  readonly dataFirst: number | null
  readonly dataLast: number | null
  readonly dataBase: 'hex' | 'dec' | 'base64'
}

/** The beginning of a table as the dialog shows it. */
export interface Table {
  readonly header: readonly string[]
  readonly headerLine: number
  readonly rows: readonly (readonly string[])[]
  /** What was guessed, to be offered first. */
  readonly columns: Columns
  /** True when nothing is merely guessed, and there is a time. */
  readonly sure: boolean
  /** Fields that were guessed without certainty. */
  readonly guessed: readonly CsvField[]
}

const shownRows = 6

/** What the dialog shows of a sample. */
export function tableOf(sample: TableSample): Table {
  const { guess } = sample
  return {
    header: sample.header,
    headerLine: sample.headerLine,
    rows: sample.rows.slice(0, shownRows),
    columns: columnsFrom(guess),
    // A table without a time can be read, but no person wants that without having said so.
    sure: guess.sure && guess.found.time !== undefined,
    guessed: guessedFields(guess),
  }
}

function guessedFields({ confidence }: MappingGuess): CsvField[] {
  return ([...singleFields, 'data'] as const).filter((field) => confidence[field] === 'guessed')
}

const baseWords = { 10: 'dec', 16: 'hex', 64: 'base64' } as const

function columnsFrom({ found }: MappingGuess): Columns {
  const single = (field: Exclude<SingleField, 'time' | 'id'>): number | null => found[field] ?? null
  return {
    fields: {
      time: found.time?.column ?? null,
      id: found.id?.column ?? null,
      length: single('length'),
      channel: single('channel'),
      extended: single('extended'),
      direction: single('direction'),
      remote: single('remote'),
      fd: single('fd'),
      error: single('error'),
    },
    timeUnit: found.time?.unit ?? 's',
    idBase: found.id?.base === 10 ? 'dec' : 'hex',
    dataFirst: found.data?.columns[0] ?? null,
    dataLast: found.data?.columns.at(-1) ?? null,
    dataBase: baseWords[found.data?.base ?? 16],
  }
}

/** The answer in the words the reader takes (`ReaderOptions.columns`); every column by its number. */
export function readerColumns(columns: Columns): Record<string, string> {
  const name = (column: number | null): string => (column === null ? '' : `#${column + 1}`)
  const first = name(columns.dataFirst)
  const last = name(columns.dataLast ?? columns.dataFirst)
  return {
    ...Object.fromEntries(singleFields.map((field) => [field, name(columns.fields[field])])),
    timeUnit: columns.timeUnit,
    idBase: columns.idBase,
    data: first === last ? first : `${first}..${last}`,
    dataBase: columns.dataBase,
  }
}

/** What still keeps the answer from being usable, or null. */
export function lacking(columns: Columns): 'id' | 'data' | 'data-order' | 'twice' | null {
  const { fields, dataFirst } = columns
  if (fields.id === null) return 'id'
  if (dataFirst === null) return 'data'
  const dataLast = columns.dataLast ?? dataFirst
  if (dataLast < dataFirst || dataLast - dataFirst >= 64) return 'data-order'
  const used = singleFields.map((field) => fields[field]).filter((column) => column !== null)
  const inData = used.some((column) => column >= dataFirst && column <= dataLast)
  return inData || new Set(used).size < used.length ? 'twice' : null
}

/** What a column is said to hold. */
export function fieldsOfColumn(columns: Columns, column: number): readonly CsvField[] {
  const { dataFirst } = columns
  const dataLast = columns.dataLast ?? dataFirst
  const inData = dataFirst !== null && dataLast !== null && column >= dataFirst && column <= dataLast
  return [
    ...singleFields.filter((field) => columns.fields[field] === column),
    ...(inData ? (['data'] as const) : []),
  ]
}

/** A header as a key to remember its columns by. */
export function headerKey(header: readonly string[]): string {
  return JSON.stringify(header)
}
