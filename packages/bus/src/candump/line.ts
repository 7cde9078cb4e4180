/**
 * @module One line of a candump text, parsed from bytes into a reused frame.
 *
 * Two layouts, both written by the CAN utilities of Linux (`candump -L` or `-l`, and `candump` on the console):
 *
 *     (1436509052.249713) can0 7DF#0201000000000000
 *     (1436509052.249713) can0 123##1AABBCC R
 *       can0  7DF   [8]  02 01 00 00 00 00 00 00
 *
 * Source of the log layout: the parser and printer in the public `can-utils` library file `lib.c`
 * (`parse_canframe`, `snprintf_canframe`) and the flag values of `linux/can.h`. The console layout is
 * recalled from the tool's output and checked against recordings.
 */

import type { ReusedFrame } from '../frame/reused.ts'
import { HASH, hex, isBlank, LETTER_R, LETTER_T, LETTER_X, NO_HEX, OPEN, SEMICOLON, SLASH } from './bytes.ts'
import { readConsole } from './console-layout.ts'
import type { LineFault } from './faults.ts'
import { readLogData, setIdentifier } from './log-layout.ts'
import { readTime } from './time-stamp.ts'

/** Parser of lines. It keeps the last channel name, so that a recording of one bus makes one string. */
export class LineParser {
  readonly #frame: ReusedFrame
  #channelBytes: Uint8Array = new Uint8Array(16)
  #channelLength = 0

  /** True when the last line parsed had no time stamp (console text without `-t`). */
  timeless = false

  constructor(frame: ReusedFrame) {
    this.#frame = frame
  }

  /** Parses the line `bytes[start..end)`, without its line end. Fills the frame and returns `undefined`, or says why not. */
  parse(bytes: Uint8Array, start: number, end: number): LineFault | undefined {
    let at = start
    while (at < end && isBlank(bytes[at])) at++
    if (at === end) return 'empty'
    const first = bytes[at]
    if (first === HASH || first === SEMICOLON || (first === SLASH && at + 1 < end && bytes[at + 1] === SLASH))
      return 'comment'
    this.timeless = first !== OPEN
    if (first === OPEN) {
      const after = readTime(bytes, at + 1, end, this.#frame.time)
      if (typeof after === 'string') return after
      at = after
      if (at < end && !isBlank(bytes[at])) return 'time'
      while (at < end && isBlank(bytes[at])) at++
      if (at === end) return 'cut'
    } else {
      const time = this.#frame.time
      time.seconds = 0
      time.nanoseconds = 0
      time.decimals = 0
    }
    const nameStart = at
    while (at < end && !isBlank(bytes[at])) at++
    if (at - nameStart > 15) return 'channel'
    this.#channel(bytes, nameStart, at)
    while (at < end && isBlank(bytes[at])) at++
    if (at === end) return 'cut'
    return this.#identifier(bytes, at, end)
  }

  #channel(bytes: Uint8Array, start: number, end: number): void {
    const length = end - start
    let same = length === this.#channelLength
    for (let index = 0; same && index < length; index++)
      same = this.#channelBytes[index] === bytes[start + index]
    if (same) return
    this.#channelLength = length
    this.#channelBytes.set(bytes.subarray(start, end))
    this.#frame.channel = String.fromCharCode(...bytes.subarray(start, end))
  }

  #identifier(bytes: Uint8Array, start: number, end: number): LineFault | undefined {
    let at = start
    let id = 0
    while (at < end && hex(bytes[at]) !== NO_HEX && at - start < 9) {
      id = id * 16 + hex(bytes[at])
      at++
    }
    const digits = at - start
    if (at < end && bytes[at] === HASH) {
      const fault = setIdentifier(this.#frame, id, digits)
      return fault ?? readLogData(this.#frame, bytes, at + 1, end)
    }
    if (at === end) return 'cut'
    if (isBlank(bytes[at])) return readConsole(this.#frame, bytes, start, end)
    // `RX`, `TX` or a word: only the console layout has those, and it needs a blank next.
    if (digits <= 1 && !isBlank(bytes[at])) {
      const direction = bytes[start]
      if (
        (direction === LETTER_R || direction === LETTER_T) &&
        start + 1 < end &&
        bytes[start + 1] === LETTER_X
      ) {
        return readConsole(this.#frame, bytes, start, end)
      }
    }
    return 'id-digits'
  }
}
