/** @module Reads a report that is a table: one delimiter, a line of headings, codes in a column. */

import { codesIn } from './code-pattern.ts'
import { reportedFault } from './text.ts'
import type { Doubt, ReadCode, ReadUnit, ScanReport } from './types.ts'
import {
  ADDRESS_HEADINGS,
  CODE_HEADINGS,
  NO_FAULT,
  STATUS_HEADINGS,
  TEXT_HEADINGS,
  UNIT_HEADINGS,
} from './words.ts'

const DELIMITERS = [';', '\t', ',', '|'] as const
const MOST_LINES_BEFORE_HEADINGS = 30

interface Columns {
  readonly delimiter: string
  readonly headingLine: number
  readonly unit: number
  readonly code: number
  readonly status: number
  readonly text: number
  readonly address: number
}

/** Reads a table; null when the text is none. Never throws. */
export function readTable(text: string): ScanReport | null {
  const lines = text.split(/\r\n|\r|\n/)
  const columns = columnsOf(lines)
  if (columns === null) return null
  const units: ReadUnit[] = []
  const codes: ReadCode[] = []
  let lastUnit: string | null = null
  for (const [index, line] of lines.entries()) {
    if (index <= columns.headingLine || line.trim() === '') continue
    const cells = cellsOf(line, columns.delimiter)
    const named = columns.unit < 0 ? '' : (cells[columns.unit] ?? '')
    // A table often names the unit only in the first of its rows.
    const unit: string | null = named === '' ? lastUnit : named
    lastUnit = unit
    const at = cells[columns.code] ?? ''
    const ids = columns.address < 0 ? [] : idsOfCell(cells[columns.address] ?? '')
    const [found] = codesIn(at)
    if (found === undefined) {
      if (unit !== null && NO_FAULT.test(line)) addUnit(units, unit, index + 1, true, ids)
      continue
    }
    if (unit !== null) addUnit(units, unit, index + 1, false, ids)
    const wording = columns.text < 0 ? '' : (cells[columns.text] ?? '')
    const state = columns.status < 0 ? wording : (cells[columns.status] ?? '')
    const byte = /^(?:0x|\$)?([0-9a-f]{2})$/i.exec(state.trim())?.[1]
    const from = Math.max(0, line.indexOf(at) + found.from)
    const doubts: Doubt[] = unit === null ? [...found.doubts, 'unit-not-named'] : [...found.doubts]
    codes.push({
      unit,
      fault: reportedFault(found.code, byte === undefined ? state : `status ${byte}`),
      wording,
      line: index + 1,
      from,
      to: from + found.to - found.from,
      doubts,
    })
  }
  return { form: 'table', units, codes, findings: [] }
}

function addUnit(
  units: ReadUnit[],
  name: string,
  line: number,
  saidClear: boolean,
  ids: readonly string[],
): void {
  if (units.some((unit) => unit.name === name)) return
  units.push({ name, ...(ids.length === 0 ? {} : { ids }), line, saidClear, doubts: [] })
}

function columnsOf(lines: readonly string[]): Columns | null {
  for (const [headingLine, line] of lines.slice(0, MOST_LINES_BEFORE_HEADINGS).entries()) {
    for (const delimiter of DELIMITERS) {
      const cells = cellsOf(line, delimiter)
      if (cells.length < 2) continue
      const place = (words: RegExp): number => cells.findIndex((cell) => cell !== '' && words.test(cell))
      const code = place(CODE_HEADINGS)
      const unit = place(UNIT_HEADINGS)
      const status = place(STATUS_HEADINGS)
      const text = place(TEXT_HEADINGS)
      if (code >= 0 && (unit >= 0 || status >= 0 || text >= 0))
        return { delimiter, headingLine, unit, code, status, text, address: place(ADDRESS_HEADINGS) }
    }
  }
  return null
}

/** Identifiers in a cell whose heading says that it holds some. */
function idsOfCell(cell: string): readonly string[] {
  const parts = cell.split(/[\s/,]+/).map((part) => part.replace(/^0x|h$/gi, '').toUpperCase())
  return parts.filter((part) => /^([0-9A-F]{3,4}|[0-9A-F]{8})$/.test(part))
}

/** Cells of a line, with quotes as RFC 4180 has them (within one line). */
function cellsOf(line: string, delimiter: string): string[] {
  const cells: string[] = []
  let cell = ''
  let quoted = false
  for (let at = 0; at < line.length; at++) {
    const letter = line[at] as string
    if (quoted) {
      if (letter !== '"') cell += letter
      else if (line[at + 1] === '"') {
        cell += '"'
        at++
      } else quoted = false
    } else if (letter === '"' && cell === '') quoted = true
    else if (letter === delimiter) {
      cells.push(cell.trim())
      cell = ''
    } else cell += letter
  }
  cells.push(cell.trim())
  return cells
}
