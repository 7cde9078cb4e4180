/** @module The console layout after the channel: `7DF   [8]  02 01 ...`, with `RX - -` before it when `-x` was given. */

import type { Direction } from '../frame/index.ts'
import type { ReusedFrame } from '../frame/reused.ts'
import {
  CLOSE_BRACKET,
  hex,
  isBlank,
  isDigit,
  LETTER_R,
  LETTER_T,
  NO_HEX,
  OPEN_BRACKET,
  SMALL_R,
} from './bytes.ts'
import type { LineFault } from './faults.ts'
import { isFdLength, setIdentifier } from './log-layout.ts'

/** Reads what follows the channel. */
export function readConsole(
  frame: ReusedFrame,
  bytes: Uint8Array,
  start: number,
  end: number,
): LineFault | undefined {
  let at = start
  let direction: Direction | undefined
  if (bytes[at] === LETTER_R || bytes[at] === LETTER_T) {
    direction = bytes[at] === LETTER_T ? 'transmitted' : 'received'
    for (let word = 0; word < 3; word++) {
      while (at < end && !isBlank(bytes[at])) at++
      while (at < end && isBlank(bytes[at])) at++
    }
  }
  const idStart = at
  let id = 0
  while (at < end && hex(bytes[at]) !== NO_HEX && at - idStart < 9) {
    id = id * 16 + hex(bytes[at])
    at++
  }
  const fault = setIdentifier(frame, id, at - idStart)
  if (fault !== undefined) return fault
  frame.direction = direction
  while (at < end && isBlank(bytes[at])) at++
  if (at === end) return 'cut'
  if (bytes[at] !== OPEN_BRACKET) return 'junk'
  at++
  let stated = 0
  const lengthStart = at
  while (at < end && isDigit(bytes[at]) && at - lengthStart < 3) {
    stated = stated * 10 + (bytes[at] as number) - 0x30
    at++
  }
  if (at === end) return 'cut'
  if (bytes[at] !== CLOSE_BRACKET || at === lengthStart) return 'junk'
  frame.fd = at - lengthStart === 2
  if (stated > (frame.fd ? 64 : 8)) return frame.fd ? 'fd-length' : 'too-long-data'
  if (frame.fd && !isFdLength(stated)) return 'fd-length'
  at++
  let length = 0
  while (length < stated) {
    while (at < end && isBlank(bytes[at])) at++
    if (at === end) return length === 0 ? 'cut' : 'length-differs'
    const high = hex(bytes[at])
    const low = at + 1 < end ? hex(bytes[at + 1]) : 255
    if (high === NO_HEX || low === NO_HEX) {
      if (length === 0 && bytes[at] === SMALL_R /* remote request */) {
        frame.remote = true
        frame.setLength(0)
        return undefined
      }
      return low === NO_HEX && high !== NO_HEX ? 'odd-nibbles' : 'not-hex'
    }
    frame.bytes[length++] = high * 16 + low
    at += 2
  }
  if (stated === 0) frame.remote = bytes.subarray(at, end).includes(SMALL_R)
  frame.setLength(length)
  while (at < end && isBlank(bytes[at])) at++
  // After the data stand nothing, an ASCII view in quotes (-a), or the word ERRORFRAME.
  if (
    at < end &&
    hex(bytes[at]) !== NO_HEX &&
    at + 1 < end &&
    hex(bytes[at + 1]) !== NO_HEX &&
    isBlank(bytes[at - 1])
  ) {
    return frame.error ? undefined : 'length-differs'
  }
  return undefined
}
