/**
 * @module CAN frames out of a table with a header, whatever its columns are called.
 * Memory: the first `SAMPLE_BYTES` until the columns are understood, then one line.
 */

import type { CaptureReader, CaptureSink, ReaderOptions } from '../capture/contract.ts'
import type { Finding, Severity } from '../finding/index.ts'
import { Cells } from './cells.ts'
import { type CsvFindingCode, type CsvMapping, mappingFrom } from './columns.ts'
import { RowReader } from './row.ts'
import { isRemark, sampleTable, type TableSample } from './sample.ts'

/** How much of a table is looked at before its columns are decided, in bytes. */
export const SAMPLE_BYTES: number = 128 * 1024
const LONGEST_LINE = 1024 * 1024

/** Opens a reader of a table. With `options.columns` a person's mapping goes before the guess. */
export function openCsv(sink: CaptureSink, options: ReaderOptions): CaptureReader {
  return new CsvReader(sink, options)
}

class CsvReader implements CaptureReader {
  readonly #sink: CaptureSink
  readonly #options: ReaderOptions
  readonly #cells = new Cells()
  #buffer = new Uint8Array(16 * 1024)
  #fill = 0
  #line = 1
  #offset = 0
  #sample: TableSample | undefined
  #rows: RowReader | undefined
  #decided = false
  /** The line at hand is longer than allowed: it is passed over to its end. */
  #overlong = false

  constructor(sink: CaptureSink, options: ReaderOptions) {
    this.#sink = sink
    this.#options = options
  }

  push(chunk: Uint8Array): void {
    if (this.#decided && this.#rows === undefined) return
    this.#append(chunk)
    if (!this.#decided) {
      if (this.#fill < SAMPLE_BYTES) return
      this.#decide(false)
    }
    this.#lines(false)
  }

  end(): void {
    if (!this.#decided) this.#decide(true)
    this.#lines(true)
    this.#buffer = new Uint8Array(0)
  }

  #append(chunk: Uint8Array): void {
    const needed = this.#fill + chunk.length
    if (needed > this.#buffer.length) {
      const grown = new Uint8Array(Math.max(needed, this.#buffer.length * 2))
      grown.set(this.#buffer.subarray(0, this.#fill))
      this.#buffer = grown
    }
    this.#buffer.set(chunk, this.#fill)
    this.#fill = needed
  }

  #decide(complete: boolean): void {
    this.#decided = true
    const sample = sampleTable(this.#buffer.subarray(0, this.#fill), complete)
    if (sample === undefined) {
      if (this.#fill > 0) {
        this.#tell(
          'csv-not-understood',
          'error',
          { line: 1 },
          'there is no header line that names columns',
          'Add a header line, or say which column holds what.',
        )
      }
      return
    }
    const mapping = this.#mapping(sample)
    if (mapping === undefined) return
    if (mapping.time === undefined) {
      this.#tell(
        'csv-no-time',
        'warning',
        { line: sample.headerLine },
        'no column holds the time; every frame is shown at 0 seconds',
        'Say which column holds the time: without it no gap or time-out can be seen.',
      )
    } else if (mapping.time.unit === 'date') {
      this.#tell(
        'csv-time-zone',
        'note',
        { line: sample.headerLine },
        'dates carry no zone; they are taken as UTC',
        'Take the hour with care.',
      )
    }
    this.#sample = sample
    this.#rows = new RowReader(mapping, sample.header.length)
  }

  #mapping(sample: TableSample): CsvMapping | undefined {
    const { guess, header } = sample
    const where = { line: sample.headerLine }
    const { columns } = this.#options
    if (columns === undefined) {
      for (const finding of guess.findings) this.#sink.finding({ ...finding, where })
      return guess.mapping
    }
    const said = mappingFrom(columns, header, guess.found)
    for (const finding of said.findings) this.#sink.finding({ ...finding, where })
    if (said.mapping === undefined && said.findings.length === 0) {
      for (const finding of guess.findings) this.#sink.finding({ ...finding, where })
    }
    return said.mapping
  }

  /** Reads the lines at hand; the last one, without an end, only when nothing more will come. */
  #lines(ended: boolean): void {
    let from = 0
    while (from < this.#fill) {
      const found = this.#buffer.subarray(0, this.#fill).indexOf(0x0a, from)
      if (found < 0 && !ended) break
      const next = found < 0 ? this.#fill : found
      const to = next > from && this.#buffer[next - 1] === 0x0d ? next - 1 : next
      if (this.#overlong) this.#overlong = false
      else this.#row(from, to)
      this.#line += 1
      from = next + 1
    }
    const used = Math.min(from, this.#fill)
    this.#buffer.copyWithin(0, used, this.#fill)
    this.#fill -= used
    this.#offset += used
    if (this.#fill > LONGEST_LINE) {
      if (!this.#overlong) {
        this.#tell(
          'csv-line-too-long',
          'error',
          { line: this.#line, byteOffset: this.#offset },
          `the line is longer than ${LONGEST_LINE} bytes`,
          'It is left out.',
        )
      }
      this.#overlong = true
      this.#offset += this.#fill
      this.#fill = 0
    }
  }

  #row(from: number, to: number): void {
    const sample = this.#sample
    const rows = this.#rows
    if (sample === undefined || rows === undefined || this.#line <= sample.headerLine || to === from) return
    if (isRemark(this.#buffer, from)) return
    this.#cells.split(this.#buffer, from, to, sample.delimiter)
    const fault = rows.read(this.#cells)
    if (fault !== undefined && this.#isHeaderAgain(sample)) return
    if (fault !== undefined) {
      this.#tell('csv-bad-line', 'error', { line: this.#line }, fault, 'The line is left out.')
      return
    }
    rows.frame.where.line = this.#line
    rows.frame.where.byteOffset = this.#offset + from
    if (rows.shortBy > 0) {
      this.#tell(
        'csv-length-differs',
        'warning',
        { line: this.#line },
        `the line states ${rows.shortBy} more data bytes than it holds`,
        'The frame is shown with the bytes that are there.',
      )
    }
    this.#sink.frame(rows.frame)
  }

  /** Tables written one after another into a file repeat their header. */
  #isHeaderAgain(sample: TableSample): boolean {
    return (
      sample.header.length === this.#cells.count &&
      sample.header.every((name, column) => this.#cells.text(column) === name)
    )
  }

  #tell(
    code: CsvFindingCode,
    severity: Severity,
    where: Finding['where'],
    what: string,
    doNext: string,
  ): void {
    const finding: Finding<CsvFindingCode> = { code, severity, where, what, doNext }
    this.#sink.finding(finding)
  }
}
