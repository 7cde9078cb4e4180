/** @module What the lines of one channel have in common: how they begin, and how they end. */

import type { KnownIds } from '../capture/known-ids.ts'
import { CONTROL_BYTES, type ScanStore } from '../capture/scan-store.ts'
import type { ReusedFrame } from '../frame/reused.ts'
import { CLOSE, DOT, HASH, isDigit, OPEN } from './bytes.ts'
import { CONTROL } from './scan-lines.ts'

const SPACE = 0x20
const DIGIT_0 = 0x30
/** What stands around the name and before the identifier: `(`, `.`, `)` and two blanks. */
const AROUND_BYTES = 5
/** A line's beginning is compared as its first sixteen characters and the last sixteen before its identifier. */
const LEAST_HEAD_BYTES = 16
const MOST_HEAD_BYTES = 32
/** Fewer characters before `)` no time has that a clock gave. */
const LEAST_CLOSE_AT = 8
const MOST_SECONDS_DIGITS = 15

/** How the lines of a channel are laid out: `(` seconds `.` decimals `) ` name blank, up to the identifier. */
export interface Layout {
  readonly secondsDigits: number
  readonly decimals: number
  readonly closeAt: number
  readonly idAt: number
  readonly lineEndBytes: number
}

/** The layout of a line that held a frame; `undefined` when it is laid out in another way. */
function layoutOf(frame: ReusedFrame, bytes: Uint8Array, start: number, crlf: boolean): Layout | undefined {
  if (bytes[start] !== OPEN) return undefined
  let at = start + 1
  while (isDigit(bytes[at])) at++
  const secondsDigits = at - start - 1
  const { decimals } = frame.time
  const closeAt = secondsDigits + decimals + 2
  const idAt = secondsDigits + decimals + frame.channel.length + AROUND_BYTES
  const idDigits = frame.extended || frame.error ? 8 : 3
  const alike =
    secondsDigits > 0 &&
    secondsDigits <= MOST_SECONDS_DIGITS &&
    decimals > 0 &&
    closeAt >= LEAST_CLOSE_AT &&
    frame.channel.length > 0 &&
    idAt >= LEAST_HEAD_BYTES &&
    idAt <= MOST_HEAD_BYTES &&
    bytes[at] === DOT &&
    bytes[start + closeAt] === CLOSE &&
    bytes[start + closeAt + 1] === SPACE &&
    bytes[start + idAt - 1] === SPACE &&
    bytes[start + idAt + idDigits] === HASH
  return alike ? { secondsDigits, decimals, closeAt, idAt, lineEndBytes: crlf ? 2 : 1 } : undefined
}

/** The lines of one channel, as far as they are alike. */
export class Track {
  readonly channel: string
  readonly ids: KnownIds
  readonly addresses: { readonly control: number; readonly table: number } | undefined
  /** Of the last line; `undefined` while that was laid out in another way. */
  layout: Layout | undefined
  /** The beginning of the last line, up to its identifier. */
  readonly head: Uint8Array = new Uint8Array(MOST_HEAD_BYTES)
  /** Whole seconds and nanoseconds of the last line. */
  seconds: number = 0
  nanoseconds: number = 0
  /** Lines that were only counted and are not yet told. */
  count: number = 0
  /** Its control, by bytes and by words. */
  readonly #control: Uint8Array | undefined
  readonly #words: Uint32Array | undefined

  constructor(channel: string, store: ScanStore) {
    const { ids, addresses } = store.openTrack()
    this.channel = channel
    this.ids = ids
    this.addresses = addresses
    const { memory } = store
    if (addresses === undefined || memory === undefined) return
    this.#control = new Uint8Array(memory.buffer, addresses.control, CONTROL_BYTES)
    this.#words = new Uint32Array(memory.buffer, addresses.control, CONTROL_BYTES / 4)
  }

  /** Learns from a line that held a frame. `crlf` says how the line ends. */
  learn(frame: ReusedFrame, bytes: Uint8Array, start: number, crlf: boolean): void {
    this.layout = layoutOf(frame, bytes, start, crlf)
    if (this.layout === undefined) return
    this.head.set(bytes.subarray(start, start + this.layout.idAt))
    this.seconds = frame.time.seconds
    this.nanoseconds = frame.time.nanoseconds
    if (this.#control !== undefined) this.#write(this.#control, this.layout)
  }

  /**
   * Goes on to a later second when the line at `start` begins as the lines before but for that. True when it does;
   * whether the rest of the line is sound is still open.
   */
  nextSecond(bytes: Uint8Array, start: number): boolean {
    const { layout, head } = this
    if (layout === undefined) return false
    const { secondsDigits, idAt, closeAt } = layout
    let seconds = 0
    for (let at = 1; at <= secondsDigits; at++) {
      const byte = bytes[start + at]
      if (!isDigit(byte)) return false
      seconds = seconds * 10 + (byte as number) - DIGIT_0
    }
    if (seconds <= this.seconds || bytes[start] !== OPEN) return false
    for (let at = secondsDigits + 1; at < idAt; at++) {
      const isDecimal = at > secondsDigits + 1 && at < closeAt
      if (isDecimal ? !isDigit(bytes[start + at]) : bytes[start + at] !== head[at]) return false
    }
    for (let at = 1; at <= secondsDigits; at++) head[at] = bytes[start + at] as number
    head.fill(DIGIT_0, secondsDigits + 2, closeAt)
    this.seconds = seconds
    this.nanoseconds = 0
    if (this.#control !== undefined) this.#writeTime(this.#control, layout)
    return true
  }

  /** Notes the time of a line that is alike to the last one. */
  setTime(bytes: Uint8Array, start: number): void {
    const { secondsDigits, decimals } = this.layout as Layout
    let nanoseconds = 0
    for (let at = start + secondsDigits + 2, end = at + decimals; at < end; at++)
      nanoseconds = nanoseconds * 10 + (bytes[at] as number) - DIGIT_0
    for (let digit = decimals; digit < 9; digit++) nanoseconds *= 10
    this.nanoseconds = nanoseconds
  }

  /** Remembers the identifier on this line, and whether it is plain. */
  know(frame: ReusedFrame, view: DataView, start: number, plain: boolean): void {
    if (this.layout === undefined) return
    const at = start + this.layout.idAt
    const second = frame.extended ? view.getInt32(at + 4, true) : 0
    this.ids.add(view.getInt32(at, true), second, frame.id, frame.extended, plain)
  }

  /** Tells the compiled loop what lines look like. */
  #write(control: Uint8Array, layout: Layout): void {
    const { secondsDigits, closeAt, idAt, lineEndBytes } = layout
    for (let index = 0; index < 16; index++) {
      const name = idAt - 16 + index
      control[CONTROL.headLimits + index] = index > secondsDigits + 1 && index < closeAt ? 9 : 0
      control[CONTROL.nameLimits + index] = name > secondsDigits + 1 && name < closeAt ? 9 : 0
      if (index >= 8) control[CONTROL.timeHighMask + index - 8] = closeAt - 1 - index < 0 ? 0 : 0xff
    }
    const words = this.#words as Uint32Array
    words[CONTROL.closeAt / 4] = closeAt
    words[CONTROL.idAt / 4] = idAt
    words[CONTROL.lineEnd / 4] = lineEndBytes === 2 ? 0x0a0d : 0x0a
    words[CONTROL.lineEndMask / 4] = lineEndBytes === 2 ? 0xffff : 0xff
    words[CONTROL.lineEndBytes / 4] = lineEndBytes
    this.#writeTime(control, layout)
  }

  /** Tells it how the last line began, and when it was. */
  #writeTime(control: Uint8Array, { secondsDigits, closeAt, idAt }: Layout): void {
    const { head } = this
    for (let index = 0; index < 16; index++) {
      const name = idAt - 16 + index
      control[CONTROL.headPattern + index] =
        index > secondsDigits + 1 && index < closeAt ? DIGIT_0 : (head[index] as number)
      control[CONTROL.namePattern + index] =
        name > secondsDigits + 1 && name < closeAt ? DIGIT_0 : (head[name] as number)
      // The characters before `)`, the last one lowest. Those before the line stand for nothing.
      const at = closeAt - 1 - index
      control[CONTROL.timeLow + index] = at < 0 ? 0 : (head[at] as number)
    }
  }

  /** A number the compiled loop told last. */
  told(place: number): number {
    return (this.#words as Uint32Array)[place >> 2] as number
  }

  /** A byte of the data it told last. */
  toldByte(index: number): number {
    return (this.#control as Uint8Array)[CONTROL.data + index] as number
  }
}
