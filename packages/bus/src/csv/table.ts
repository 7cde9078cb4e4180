/** @module A table as guesses look at it: words of its names, cells of its columns. */

import { wordsOf } from './words.ts'

/** Rows that carry something, and the names above them. */
export class Table {
  readonly names: readonly (readonly string[])[]
  readonly width: number
  readonly #rows: readonly (readonly string[])[]

  constructor(rows: readonly (readonly string[])[]) {
    this.names = (rows[0] ?? []).map(wordsOf)
    this.#rows = rows.slice(1)
    this.width = Math.max(this.names.length, ...this.#rows.slice(0, 100).map((row) => row.length))
  }

  /** The cells of a column that are not empty. */
  cells(column: number): string[] {
    return this.#rows.map((row) => row[column] ?? '').filter((cell) => cell !== '')
  }

  /** Cells of several columns, row by row. */
  rows(): readonly (readonly string[])[] {
    return this.#rows
  }

  /** True when at least this share of the cells fits; a column without cells fits nothing. */
  mostly(column: number, share: number, fits: (cell: string) => boolean): boolean {
    const cells = this.cells(column)
    return cells.length > 0 && cells.filter(fits).length >= cells.length * share
  }
}
