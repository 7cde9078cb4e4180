/** @module Turns a record of a CAN group into a frame. */

import type { Direction } from '../frame/index.ts'
import { Clock, type TimeParts } from './clock.ts'
import { fieldValue } from './field.ts'
import type { FrameLayout } from './layout.ts'

const NOTHING = new Uint8Array(0)

/** The parts of a frame, to be filled again for every record. */
export interface FrameParts {
  readonly time: TimeParts
  channel: string
  id: number
  extended: boolean
  fd: boolean
  remote: boolean
  error: boolean
  data: Uint8Array
  direction: Direction | undefined
  readonly where: { byteOffset: number }
}

/** Parts to be filled. */
export function emptyParts(): FrameParts {
  return {
    time: { seconds: 0, nanoseconds: 0, decimals: 0 },
    channel: '',
    id: 0,
    extended: false,
    fd: false,
    remote: false,
    error: false,
    data: NOTHING,
    direction: undefined,
    where: { byteOffset: 0 },
  }
}

/** Copies parts into others; the data bytes (at most 64) into `store`. */
export function copyParts(from: FrameParts, into: FrameParts, store: Uint8Array): void {
  into.time.seconds = from.time.seconds
  into.time.nanoseconds = from.time.nanoseconds
  into.time.decimals = from.time.decimals
  into.channel = from.channel
  into.id = from.id
  into.extended = from.extended
  into.fd = from.fd
  into.remote = from.remote
  into.error = from.error
  into.direction = from.direction
  into.where.byteOffset = from.where.byteOffset
  const length = Math.min(from.data.length, store.length)
  for (let index = 0; index < length; index += 1) store[index] = from.data[index] ?? 0
  into.data = store.subarray(0, length)
}

/** Data length of a CAN FD frame by its length code (ISO 11898-1:2015). */
const FD_LENGTHS: readonly number[] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 12, 16, 20, 24, 32, 48, 64]
/** Data bytes of the longest frame (CAN FD). */
export const LONGEST_FRAME = 64

/** Reads the records of one group. */
export class FrameReader {
  readonly layout: FrameLayout
  readonly #clock: Clock
  readonly #channels: string[] = []
  /** Longest data of a record, whatever its length field says. */
  readonly #longest: number

  constructor(layout: FrameLayout, start: { readonly seconds: number; readonly nanoseconds: number }) {
    this.layout = layout
    this.#clock = new Clock(layout.time, start)
    this.#longest =
      layout.bytes?.kind === 'inside' ? Math.min(layout.bytes.longest, LONGEST_FRAME) : LONGEST_FRAME
  }

  /** Fills `frame` from the record at `record`; data bytes that stand elsewhere are left empty. */
  read(bytes: Uint8Array, record: number, frame: FrameParts): void {
    const { layout } = this
    const id = layout.id === undefined ? 0 : fieldValue(layout.id, bytes, record)
    const number = (id >>> 0) & 0x1fff_ffff
    this.#clock.read(bytes, record, frame.time)
    frame.channel = this.#channel(bytes, record)
    frame.id = number
    // Some writers mark a 29-bit identifier in its own bit 31 and leave the IDE member out.
    const marked =
      layout.extended === undefined ? id >>> 31 === 1 : fieldValue(layout.extended, bytes, record) !== 0
    frame.extended = marked || number > 0x7ff
    frame.fd = layout.fd !== undefined && fieldValue(layout.fd, bytes, record) !== 0
    frame.remote = layout.event === 'remote'
    frame.error = layout.event === 'error'
    frame.direction =
      layout.direction === undefined ? undefined : directionOf(fieldValue(layout.direction, bytes, record))
    frame.data = NOTHING
    if (layout.event === 'data' && layout.bytes?.kind === 'inside') {
      const from = record + layout.bytes.byteOffset
      frame.data = bytes.subarray(from, from + this.dataLength(bytes, record, frame.fd))
    }
  }

  /** How many data bytes the record states, at most what its group can hold. */
  dataLength(bytes: Uint8Array, record: number, fd: boolean): number {
    const { length, dlc } = this.layout
    let stated = this.#longest
    if (length !== undefined) stated = fieldValue(length, bytes, record)
    else if (dlc !== undefined) {
      const code = fieldValue(dlc, bytes, record)
      stated = fd ? (FD_LENGTHS[code] ?? LONGEST_FRAME) : Math.min(code, 8)
    }
    return Math.max(Math.min(Math.floor(stated), this.#longest), 0) || 0
  }

  /** The offset of data bytes that stand elsewhere. */
  reference(bytes: Uint8Array, record: number): number {
    return this.layout.bytes?.kind === 'elsewhere'
      ? fieldValue(this.layout.bytes.reference, bytes, record)
      : 0
  }

  #channel(bytes: Uint8Array, record: number): string {
    const { busChannel, sourceName } = this.layout
    if (busChannel === undefined)
      return sourceName === '' ? 'can0' : sourceName.toLowerCase().replace(/\s+/g, '_')
    const number = fieldValue(busChannel, bytes, record)
    const known = this.#channels[number]
    if (known !== undefined) return known
    const name = `can${number}`
    if (Number.isInteger(number) && number >= 0 && number < 256) this.#channels[number] = name
    return name
  }
}

function directionOf(value: number): Direction {
  return value === 1 ? 'transmitted' : 'received'
}
