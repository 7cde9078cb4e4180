/**
 * @module Which column of a table holds what: guessed from the names of the columns and from what stands in them.
 *
 * Names are judged by their words (`words.ts`), contents by what CAN allows: identifiers of 11 or 29 bits, at most
 * 64 data bytes, frames not closer than about 40 microseconds. A guess says how sure it is, field by field.
 */

import type { Finding } from '../finding/index.ts'
import { guessByteBase, guessIdBase } from './base.ts'
import {
  type Confidence,
  type CsvFindingCode,
  type CsvMapping,
  type FoundColumns,
  namesOf,
} from './columns.ts'
import { isAnyData, isByte, isBytesCell, isId, isLength, isTime, looksLikeId } from './shape.ts'
import { Table } from './table.ts'
import { guessTimeUnit } from './time-unit.ts'
import { readDirection, readFlag } from './values.ts'
import { baseOf, byteNumber, CSV_FIELDS, type CsvField, nameScore, unitOf } from './words.ts'

/** A guess at a table's columns. */
export interface MappingGuess {
  /** `undefined` when identifier or data cannot be found: a person must say. */
  readonly mapping: CsvMapping | undefined
  /** What was found, be it enough or not. */
  readonly found: FoundColumns
  /** True when no field is merely guessed. */
  readonly sure: boolean
  readonly confidence: Readonly<Partial<Record<CsvField, Confidence>>>
  readonly findings: readonly Finding<CsvFindingCode>[]
}

/** Share of cells that must fit where the name speaks for a column; damaged lines must not hide it. */
const NAMED = 0.5
/** The same where the contents alone speak. */
const ALONE = 0.9

/**
 * Guesses which column holds what. `headerAndRows` is the header line and some lines below it (a few hundred make the
 * time unit surer), as text cells. Never throws.
 */
export function guessMapping(headerAndRows: readonly (readonly string[])[]): MappingGuess {
  const table = new Table(headerAndRows)
  const used = new Set<number>()
  const confidence: Partial<Record<CsvField, Confidence>> = {}
  const data = findData(table, used, confidence)
  const take = (field: CsvField, fits: (cell: string) => boolean): number | undefined => {
    const column = byName(table, used, field, fits)
    if (column !== undefined) {
      used.add(column)
      confidence[field] = 'certain'
    }
    return column
  }
  const timeColumn = take('time', isTime)
  let idColumn = take('id', isId)
  if (idColumn === undefined) {
    idColumn = range(table.width).find(
      (column) => !used.has(column) && table.mostly(column, ALONE, looksLikeId),
    )
    if (idColumn !== undefined) {
      used.add(idColumn)
      confidence.id = 'guessed'
    }
  }
  const length = take('length', isLength)
  const channel = take('channel', (cell) => cell.length <= 32)
  const extended = take('extended', (cell) => readFlag(cell) !== undefined)
  const direction = take('direction', (cell) => readDirection(cell) !== undefined)
  const remote = take('remote', (cell) => readFlag(cell) !== undefined)
  const fd = take('fd', (cell) => readFlag(cell) !== undefined)
  const error = take('error', (cell) => readFlag(cell) !== undefined)
  const id =
    idColumn === undefined
      ? undefined
      : { column: idColumn, base: guessIdBase(table, idColumn, extended, confidence) }
  let time: CsvMapping['time']
  if (timeColumn !== undefined) {
    const stated = unitOf(table.names[timeColumn] ?? [])
    const guess = guessTimeUnit(table.rows(), timeColumn, channel, stated)
    time = { column: timeColumn, unit: guess.unit }
    confidence.time = guess.confidence
  }
  const found: FoundColumns = { time, id, extended, channel, length, data, direction, remote, fd, error }
  if (id === undefined || data === undefined) {
    return {
      mapping: undefined,
      found,
      sure: false,
      confidence,
      findings: [notUnderstood(id === undefined, data === undefined, headerAndRows[0] ?? [])],
    }
  }
  const mapping: CsvMapping = { ...found, id, data }
  const guessed = CSV_FIELDS.filter((field) => confidence[field] === 'guessed')
  const findings = guessed.map((field) => guessFinding(field, mapping))
  return { mapping, found, sure: guessed.length === 0, confidence, findings }
}

function range(count: number): number[] {
  return Array.from({ length: count }, (_, index) => index)
}

/** The column whose name says the field clearest and whose cells fit. */
function byName(
  table: Table,
  used: ReadonlySet<number>,
  field: CsvField,
  fits: (cell: string) => boolean,
): number | undefined {
  const scored = table.names
    .map((words, column) => ({ column, score: used.has(column) ? 0 : nameScore(field, words) }))
    .filter(({ score, column }) => score > 0 && table.mostly(column, NAMED, fits))
    .sort((a, b) => b.score - a.score || a.column - b.column)
  return scored[0]?.column
}

function findData(
  table: Table,
  used: Set<number>,
  confidence: Partial<Record<CsvField, Confidence>>,
): CsvMapping['data'] | undefined {
  const spread = byteColumns(table)
  if (spread.length > 1) {
    for (const column of spread) used.add(column)
    const stated = baseOf(table.names[spread[0] ?? 0] ?? [])
    const cells = spread.flatMap((column) => table.cells(column).slice(0, 200))
    const { base, confidence: how } = guessByteBase(cells, stated)
    confidence.data = how
    return { columns: spread, base, spread: true }
  }
  const single = byName(table, used, 'data', isAnyData)
  if (single !== undefined) return oneColumn(table, single, used, confidence)
  const run = unnamedBytes(table)
  if (run.length > 1) {
    for (const column of run) used.add(column)
    const { base } = guessByteBase(
      run.flatMap((column) => table.cells(column).slice(0, 200)),
      undefined,
    )
    confidence.data = 'guessed'
    return { columns: run, base, spread: true }
  }
  return undefined
}

/** One column of all bytes; or the first of many, when the rows go on beyond the header's names. */
function oneColumn(
  table: Table,
  column: number,
  used: Set<number>,
  confidence: Partial<Record<CsvField, Confidence>>,
): CsvMapping['data'] {
  used.add(column)
  const cells = table.cells(column)
  // Base64 holds letters beyond F, or ends in `=`.
  if (!table.mostly(column, NAMED, isBytesCell)) {
    confidence.data = 'likely'
    return { columns: [column], base: 64, spread: false }
  }
  const beyond = range(table.width).filter(
    (index) => index > column && (table.names[index] ?? []).length === 0,
  )
  if (
    column + beyond.length === table.width - 1 &&
    beyond.length > 0 &&
    cells.every((cell) => cell.replace(/^0x/i, '').length <= 3)
  ) {
    for (const index of beyond) used.add(index)
    const columns = [column, ...beyond]
    const { base, confidence: how } = guessByteBase(
      columns.flatMap((index) => table.cells(index).slice(0, 200)),
      baseOf(table.names[column] ?? []),
    )
    confidence.data = how === 'guessed' ? 'guessed' : 'likely'
    return { columns, base, spread: true }
  }
  const stated = baseOf(table.names[column] ?? [])
  const tokens = cells.flatMap((cell) => cell.split(/[^0-9a-fA-FxX]+/).filter((token) => token !== ''))
  // Three digits at most make a decimal byte: a longer token is hex pairs without blanks.
  const apart =
    cells.some((cell) => /[^0-9a-fA-FxX]/.test(cell)) &&
    tokens.every((token) => /^(0x.*|...?|.)$/i.test(token))
  const guess = apart ? guessByteBase(tokens, stated) : ({ base: 16, confidence: 'certain' } as const)
  confidence.data = guess.confidence
  return { columns: [column], base: guess.base, spread: false }
}

/** Columns named as byte 0 to n or 1 to n, in their order. */
function byteColumns(table: Table): number[] {
  const numbered = table.names
    .map((words, column) => ({ column, number: byteNumber(words) }))
    .filter(({ number }) => number >= 0)
  numbered.sort((a, b) => a.number - b.number || a.column - b.column)
  const first = numbered[0]?.number
  if (first === undefined || first > 1) return []
  const columns: number[] = []
  for (const { column, number } of numbered) if (number === first + columns.length) columns.push(column)
  const fits = columns.filter(
    (column) => table.cells(column).length === 0 || table.mostly(column, NAMED, isByte),
  )
  return fits.slice(0, 64)
}

/** The longest run of columns whose cells all look like hex bytes of two digits: for headers in unknown words. */
function unnamedBytes(table: Table): number[] {
  let best: number[] = []
  let run: number[] = []
  for (const column of range(table.width)) {
    const cells = table.cells(column)
    const fits =
      cells.every((cell) => /^(0x)?[0-9a-f]{2}$/i.test(cell)) && (cells.length > 0 || run.length > 0)
    run = fits ? [...run, column] : []
    if (run.length > best.length) best = run
  }
  return best.length >= 2 && best.some((column) => table.cells(column).some((cell) => /[a-f]/i.test(cell)))
    ? best
    : []
}

function notUnderstood(noId: boolean, noData: boolean, header: readonly string[]): Finding<CsvFindingCode> {
  const missing = [noId ? 'identifier' : '', noData ? 'data bytes' : ''].filter((word) => word !== '')
  return {
    code: 'csv-not-understood',
    severity: 'error',
    where: { line: 1 },
    what: `no column was found that holds the ${missing.join(' or the ')}`,
    doNext: `Say which column holds what: there are ${namesOf(header)}.`,
  }
}

function guessFinding(field: CsvField, mapping: CsvMapping): Finding<CsvFindingCode> {
  const detail: Partial<Record<CsvField, string>> = {
    time: `times are read in ${mapping.time?.unit ?? ''}`,
    id: `identifiers are read from column ${mapping.id.column + 1} as ${mapping.id.base === 16 ? 'hex' : 'decimal'} numbers`,
    data: `data bytes are read from column ${(mapping.data.columns[0] ?? 0) + 1} on as ${mapping.data.base === 10 ? 'decimal' : 'hex'} numbers`,
  }
  return {
    code: 'csv-guessed',
    severity: 'warning',
    where: { line: 1 },
    what: `${detail[field] ?? field}, which is a guess`,
    doNext: 'Check it, and say otherwise if it is wrong.',
    params: { field },
  }
}
