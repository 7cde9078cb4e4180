/** @module The beginning of a table: its delimiter, its header, its first rows as text. */

import { Cells } from './cells.ts'
import { guessMapping, type MappingGuess } from './mapping.ts'
import { isBytesCell, isTime, looksLikeId } from './shape.ts'

/** The beginning of a table, as a mapping dialog shows it. */
export interface TableSample {
  /** The delimiter as a character code. */
  readonly delimiter: number
  /** Line of the header, from 1; lines before it are remarks. */
  readonly headerLine: number
  readonly header: readonly string[]
  readonly rows: readonly (readonly string[])[]
  readonly guess: MappingGuess
}

const DELIMITERS: readonly (readonly [number, string])[] = [
  [0x2c, 'comma'],
  [0x3b, 'semicolon'],
  [0x09, 'tab'],
  [0x7c, 'bar'],
]
/** Lines looked at for the header. */
const MOST_PREAMBLE = 60
const MOST_ROWS = 1000
const LEAST_COLUMNS = 3

/** The word for a delimiter. */
export function delimiterName(delimiter: number): string {
  return DELIMITERS.find(([code]) => code === delimiter)?.[1] ?? 'other'
}

/**
 * Takes the beginning of a text apart. `complete` is false when the last line may be cut: it is then left out.
 * `undefined` when the text is no table with a header: binary, too narrow, or all numbers.
 */
export function sampleTable(bytes: Uint8Array, complete: boolean): TableSample | undefined {
  const lines = linesOf(bytes, complete)
  if (lines === undefined || lines.length === 0) return undefined
  let best: TableSample | undefined
  for (const [delimiter] of DELIMITERS) {
    const found = sampleWith(bytes, lines, delimiter)
    if (found === undefined) continue
    if (found.guess.mapping !== undefined) return found
    best ??= found
  }
  return best
}

type Line = readonly [from: number, to: number, number: number]

/**
 * Lines that carry something, without remarks and without damaged ones (recorders that lose power leave zeros);
 * `undefined` for bytes that are no text.
 */
function linesOf(bytes: Uint8Array, complete: boolean): Line[] | undefined {
  const lines: Line[] = []
  let from = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0
  let number = 1
  let damaged = 0
  let isDamaged = false
  for (let at = from; at <= bytes.length && lines.length < MOST_ROWS + MOST_PREAMBLE; at += 1) {
    const byte = bytes[at]
    if (byte !== undefined && byte < 0x20 && byte !== 0x09 && byte !== 0x0a && byte !== 0x0d) {
      if (!isDamaged) damaged += 1
      isDamaged = true
    }
    if (byte !== 0x0a && (at < bytes.length || !complete)) continue
    const to = at > from && bytes[at - 1] === 0x0d ? at - 1 : at
    if (to > from && !isDamaged && !isRemark(bytes, from)) lines.push([from, to, number])
    isDamaged = false
    from = at + 1
    number += 1
  }
  return damaged > lines.length / 2 ? undefined : lines
}

/** Lines that begin with `#` or `//` are remarks. */
export function isRemark(bytes: Uint8Array, from: number): boolean {
  return bytes[from] === 0x23 || (bytes[from] === 0x2f && bytes[from + 1] === 0x2f)
}

function sampleWith(bytes: Uint8Array, lines: readonly Line[], delimiter: number): TableSample | undefined {
  const cells = new Cells()
  const textOf = ([from, to]: Line): string[] => {
    cells.split(bytes, from, to, delimiter)
    return Array.from({ length: cells.count }, (_, index) => cells.text(index))
  }
  let fallback: TableSample | undefined
  for (const [index, line] of lines.slice(0, MOST_PREAMBLE).entries()) {
    const header = textOf(line)
    if (header.length < LEAST_COLUMNS || !isHeader(header)) continue
    const rows = lines.slice(index + 1, index + 1 + MOST_ROWS).map(textOf)
    // A remark before the header is seldom as wide as the rows.
    const width = rows
      .slice(0, 20)
      .filter((row) => row.length >= LEAST_COLUMNS && row.length >= header.length - 1)
    if (width.length < Math.min(rows.length, 20) / 2) continue
    const guess = guessMapping([header, ...rows])
    const found: TableSample = { delimiter, headerLine: line[2], header, rows, guess }
    if (guess.mapping !== undefined) return found
    if (isTableOfNumbers(header, rows)) fallback ??= found
  }
  return fallback
}

/**
 * A table nobody understands is still a table when its rows are as wide as its header and a column holds times,
 * identifiers or data. Prose with commas in it is not.
 */
function isTableOfNumbers(header: readonly string[], rows: readonly (readonly string[])[]): boolean {
  const whole = rows.filter((row) => row.length === header.length)
  if (whole.length === 0 || whole.length < rows.length * 0.9) return false
  return header.some((_, column) => {
    const fitting = whole.filter((row) => {
      const cell = row[column]?.trim() ?? ''
      return cell !== '' && (isTime(cell) || looksLikeId(cell) || isBytesCell(cell))
    })
    return fitting.length >= whole.length * 0.8
  })
}

/** Most names hold a letter, and no cell is a plain number or a hex word with a digit. */
function isHeader(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== '')
  const worded = filled.filter((cell) => /\p{L}/u.test(cell) && !/^(0x)?[0-9a-f]*\d[0-9a-f]*$/i.test(cell))
  return filled.length >= 2 && worded.length >= filled.length * 0.75 - nibbleNames(filled)
}

/** Names like `B0` or `D7` look like hex numbers but name data bytes. */
function nibbleNames(cells: readonly string[]): number {
  return cells.filter((cell) => /^(B|D|DB)\d{1,2}$/i.test(cell)).length
}
