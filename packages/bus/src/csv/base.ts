/** @module The base of numbers whose column names none. */

import type { Confidence } from './columns.ts'
import type { Table } from './table.ts'
import { readFlag } from './values.ts'
import { baseOf, type CsvField } from './words.ts'

/** True when enough cells fit that they are no damage. */
function some(cells: readonly string[], pattern: RegExp): boolean {
  return cells.filter((cell) => pattern.test(cell)).length > cells.length / 50
}

/** The base of data bytes written one by one; `stated` is what the column's name says. */
export function guessByteBase(
  cells: readonly string[],
  stated: 10 | 16 | undefined,
): { base: 10 | 16; confidence: Confidence } {
  if (stated !== undefined) return { base: stated, confidence: 'certain' }
  const bare = cells.map((cell) => cell.replace(/^0x/i, ''))
  if (some(cells, /[a-fx]/i)) return { base: 16, confidence: 'certain' }
  if (bare.some((cell) => cell.length > 2)) return { base: 10, confidence: 'certain' }
  // Two digits throughout, with zeros in front: nobody pads decimal numbers so.
  if (bare.some((cell) => /^0\d$/.test(cell))) return { base: 16, confidence: 'likely' }
  return {
    base: bare.length >= 20 && bare.some((cell) => cell.length === 1) ? 10 : 16,
    confidence: 'guessed',
  }
}

/** The base of identifiers, and how sure that is. */
export function guessIdBase(
  table: Table,
  column: number,
  extended: number | undefined,
  confidence: Partial<Record<CsvField, Confidence>>,
): 10 | 16 {
  const stated = baseOf(table.names[column] ?? [])
  const how = (base: 10 | 16, sureness: Confidence): 10 | 16 => {
    if (confidence.id !== 'guessed') confidence.id = sureness
    return base
  }
  if (stated !== undefined) return how(stated, 'certain')
  const cells = table.cells(column)
  if (some(cells, /[a-fhx]/i)) return how(16, 'certain')
  const asHex = cells.map((cell) => Number.parseInt(cell, 16))
  if (asHex.some((id) => id > 0x1fff_ffff)) return how(10, 'likely')
  const short = (row: readonly string[]): boolean =>
    extended !== undefined && readFlag(row[extended] ?? '') === false
  if (table.rows().some((row) => short(row) && Number.parseInt(row[column] ?? '', 16) > 0x7ff))
    return how(10, 'likely')
  if (cells.some((cell) => cell.startsWith('0') && cell.length > 1)) return how(16, 'likely')
  // Of many different identifiers some would hold a letter if they were hex.
  return new Set(cells).size >= 12 ? how(10, 'likely') : how(16, 'guessed')
}
