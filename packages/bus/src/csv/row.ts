/** @module One row of a table turned into a frame. */

import { base64Bytes, type Cells, dataBytes, unsigned } from './cells.ts'
import type { CsvMapping } from './columns.ts'
import { readTime, type TimeParts } from './time.ts'
import { channelName, readDirection, readFlag } from './values.ts'

const LONGEST_DATA = 64
/** Data length of a CAN FD frame by its length code 9 to 15 (ISO 11898-1:2015). */
const FD_LENGTHS: readonly number[] = [12, 16, 20, 24, 32, 48, 64]

/** The frame a row fills, again and again. */
export interface RowFrame {
  readonly time: TimeParts
  channel: string
  id: number
  extended: boolean
  fd: boolean
  remote: boolean
  error: boolean
  data: Uint8Array
  direction: 'received' | 'transmitted' | undefined
  readonly where: { line: number; byteOffset: number }
}

/** Reads rows by a mapping. */
export class RowReader {
  readonly frame: RowFrame = {
    time: { seconds: 0, nanoseconds: 0, decimals: 0 },
    channel: 'can0',
    id: 0,
    extended: false,
    fd: false,
    remote: false,
    error: false,
    data: new Uint8Array(0),
    direction: undefined,
    where: { line: 0, byteOffset: 0 },
  }
  /** How many data bytes the last row states beyond those it holds. */
  shortBy = 0
  readonly #mapping: CsvMapping
  readonly #bytes = new Uint8Array(LONGEST_DATA)
  /** Words seen in columns of few different words: channels, flags, directions. */
  readonly #channels = new Map<string, string>()

  readonly #headerWidth: number

  /** `headerWidth`: how many columns the header has; data bytes may go on in columns right of them. */
  constructor(mapping: CsvMapping, headerWidth: number) {
    this.#mapping = mapping
    this.#headerWidth = headerWidth
  }

  /**
   * Fills `frame` from a row; or says in words why the row is no frame. The words name columns and never quote a
   * cell: where a delimiter is lost, any cell may hold secret data bytes.
   */
  read(cells: Cells): string | undefined {
    const { frame } = this
    const { time, id, extended, channel, direction, remote, fd, error } = this.#mapping
    if (cells.unclosed) return 'a quote is not closed'
    if (
      time !== undefined &&
      !readTime(cells.bytes, cells.starts[time.column] ?? 0, endOf(cells, time.column), time.unit, frame.time)
    ) {
      return `the time in column ${time.column + 1} cannot be read`
    }
    const number = unsigned(cells.bytes, cells.starts[id.column] ?? 0, endOf(cells, id.column), id.base)
    if (number < 0 || number > 0xffff_ffff) return `the identifier in column ${id.column + 1} cannot be read`
    // Bits 29 to 31 carry marks in some writers' identifiers (extended, remote, error); they are no part of it.
    frame.id = (number >>> 0) & 0x1fff_ffff
    frame.extended = number >>> 31 === 1 || frame.id > 0x7ff || this.#markedExtended(cells, id.column)
    if (extended !== undefined) {
      const flag = readFlag(cells.text(extended))
      if (flag === undefined) return `column ${extended + 1} does not say whether the identifier is extended`
      if (!flag && frame.id > 0x7ff)
        return `the identifier in column ${id.column + 1} has more than 11 bits but is not extended`
      frame.extended = flag
    }
    const name = this.#channelOf(cells, channel)
    if (name === undefined) return `the channel in column ${(channel ?? 0) + 1} cannot be read`
    frame.channel = name
    frame.direction = direction === undefined ? undefined : readDirection(cells.text(direction))
    frame.remote = remote !== undefined && readFlag(cells.text(remote)) === true
    frame.error = error !== undefined && readFlag(cells.text(error)) === true
    const fault = this.#readData(cells)
    frame.fd = frame.data.length > 8 || (fd !== undefined && readFlag(cells.text(fd)) === true)
    return fault
  }

  #readData(cells: Cells): string | undefined {
    const { length, data } = this.#mapping
    const { frame } = this
    let stated = -1
    if (length !== undefined && !cells.empty(length)) {
      stated = unsigned(cells.bytes, cells.starts[length] ?? 0, endOf(cells, length), 10)
      if (stated < 0 || stated > LONGEST_DATA) return `the length in column ${length + 1} cannot be read`
    }
    this.shortBy = 0
    if (frame.remote) {
      frame.data = this.#bytes.subarray(0, 0)
      return undefined
    }
    const held = data.spread ? this.#spread(cells, stated) : this.#single(cells)
    if (typeof held === 'string') return held
    let count = stated < 0 ? held : stated
    // Above 8, a length may be the length code of a CAN FD frame.
    const byCode = FD_LENGTHS[stated - 9]
    if (byCode !== undefined && held >= byCode && stated !== held) count = byCode
    if (count > held) {
      this.shortBy = count - held
      count = held
    }
    frame.data = this.#bytes.subarray(0, count)
    return undefined
  }

  /** One column of all bytes. */
  #single(cells: Cells): number | string {
    const { columns, base } = this.#mapping.data
    const column = columns[0] ?? 0
    if (cells.empty(column)) return 0
    const from = cells.starts[column] ?? 0
    const to = endOf(cells, column)
    const count =
      base === 64
        ? base64Bytes(cells.bytes, from, to, this.#bytes)
        : dataBytes(cells.bytes, from, to, base, this.#bytes)
    return count < 0 ? `the data in column ${column + 1} cannot be read` : count
  }

  /** One column for each byte, then those right of the header, up to the first empty one; beyond the stated length nothing is looked at. */
  #spread(cells: Cells, stated: number): number | string {
    const { columns, base } = this.#mapping.data
    const wanted = stated >= 0 && stated <= 8 ? stated : LONGEST_DATA
    const last = columns[columns.length - 1] ?? 0
    let count = 0
    for (; count < wanted; count += 1) {
      const beyond = Math.max(this.#headerWidth, last + 1) + count - columns.length
      const column = columns[count] ?? beyond
      if (cells.empty(column)) break
      const value = unsigned(
        cells.bytes,
        cells.starts[column] ?? 0,
        endOf(cells, column),
        base === 10 ? 10 : 16,
      )
      if (value < 0 || value > 255) return `the data byte in column ${column + 1} cannot be read`
      this.#bytes[count] = value
    }
    return count
  }

  /** An identifier written with an `x` behind it (`18DAF110x`) is extended. */
  #markedExtended(cells: Cells, column: number): boolean {
    const end = endOf(cells, column)
    return ((cells.bytes[end - 1] ?? 0) | 0x20) === 0x78
  }

  #channelOf(cells: Cells, column: number | undefined): string | undefined {
    if (column === undefined) return 'can0'
    const text = cells.text(column)
    const known = this.#channels.get(text)
    if (known !== undefined) return known
    const name = channelName(text)
    if (name === undefined) return undefined
    if (this.#channels.size < 256) this.#channels.set(text, name)
    return name
  }
}

function endOf(cells: Cells, column: number): number {
  return column < cells.count ? (cells.ends[column] ?? 0) : (cells.starts[column] ?? 0)
}
