/** @module The log layout after the channel: `7DF#0201000000000000`, `123##1AABBCC`, `123#R`. */

import type { ReusedFrame } from '../frame/reused.ts'
import { COLON, HASH, hex, isBlank, isDigit, LETTER_R, LETTER_T, NO_HEX, UNDERSCORE } from './bytes.ts'
import type { LineFault } from './faults.ts'

/** Flags of `linux/can.h` carried in an eight-digit identifier. */
const CAN_EFF_FLAG = 0x80000000
const CAN_RTR_FLAG = 0x40000000
const CAN_ERR_FLAG = 0x20000000
const CAN_EFF_MASK = 0x1fffffff

/** Data lengths CAN FD knows above 8 (ISO 11898-1). */
const FD_LENGTHS: ReadonlySet<number> = new Set([12, 16, 20, 24, 32, 48, 64])

/** Tells whether a data length is one that CAN FD can carry. */
export function isFdLength(length: number): boolean {
  return length <= 8 || FD_LENGTHS.has(length)
}

/** Sets a frame's identifier and clears its flags. Three digits are 11 bits, eight are 29 bits or an error frame. */
export function setIdentifier(frame: ReusedFrame, value: number, digits: number): LineFault | undefined {
  frame.direction = undefined
  frame.error = false
  frame.remote = false
  frame.fd = false
  if (digits === 3) {
    if (value > 0x7ff) return 'id-range'
    frame.extended = false
    frame.id = value
    return undefined
  }
  if (digits !== 8) return 'id-digits'
  if (value & CAN_ERR_FLAG) {
    frame.error = true
    frame.extended = false
    frame.id = value & CAN_EFF_MASK
    return undefined
  }
  if (value >= CAN_EFF_FLAG || (value & CAN_RTR_FLAG) !== 0) return 'id-range'
  frame.extended = true
  frame.id = value
  return undefined
}

/** Reads what follows the `#`. */
export function readLogData(
  frame: ReusedFrame,
  bytes: Uint8Array,
  start: number,
  end: number,
): LineFault | undefined {
  let at = start
  if (at < end && bytes[at] === LETTER_R) {
    frame.remote = true
    frame.setLength(0)
    at++
    if (isDigit(bytes[at]) && at < end) {
      // `R8`, or `R8_E` with the raw length code that some controllers transmit.
      if ((bytes[at] as number) > 0x38) return 'remote-junk'
      at++
      if (at + 1 < end && bytes[at] === UNDERSCORE && hex(bytes[at + 1]) !== NO_HEX) at += 2
    }
    return at < end && !isBlank(bytes[at]) ? 'remote-junk' : tail(frame, bytes, at, end)
  }
  let most = 8
  if (at < end && bytes[at] === HASH) {
    frame.fd = true
    most = 64
    at++
    if (at >= end) return 'cut'
    if (hex(bytes[at]) === NO_HEX) return 'not-hex'
    at++
  }
  let length = 0
  while (at < end && !isBlank(bytes[at])) {
    const high = hex(bytes[at])
    if (high === NO_HEX) {
      if (
        bytes[at] === UNDERSCORE &&
        length === 8 &&
        !frame.fd &&
        at + 1 < end &&
        hex(bytes[at + 1]) !== NO_HEX
      ) {
        at += 2
        break
      }
      return bytes[at] === HASH || bytes[at] === COLON ? 'can-xl' : 'not-hex'
    }
    if (at + 1 >= end || isBlank(bytes[at + 1])) return 'odd-nibbles'
    const low = hex(bytes[at + 1])
    if (low === NO_HEX) return 'not-hex'
    if (length === most) return tooLong(bytes, at, end)
    frame.bytes[length++] = high * 16 + low
    at += 2
  }
  if (frame.fd && !isFdLength(length)) return 'fd-length'
  frame.setLength(length)
  return tail(frame, bytes, at, end)
}

function tooLong(bytes: Uint8Array, start: number, end: number): LineFault {
  let at = start
  while (at < end && hex(bytes[at]) !== NO_HEX) at++
  return (at - start) % 2 === 1 ? 'odd-nibbles' : 'too-long-data'
}

/** Nothing, or the direction that `candump -x` adds. */
function tail(frame: ReusedFrame, bytes: Uint8Array, start: number, end: number): LineFault | undefined {
  let at = start
  if (at < end && !isBlank(bytes[at])) return 'junk'
  while (at < end && isBlank(bytes[at])) at++
  if (at < end && (bytes[at] === LETTER_R || bytes[at] === LETTER_T))
    frame.direction = bytes[at++] === LETTER_T ? 'transmitted' : 'received'
  while (at < end && isBlank(bytes[at])) at++
  return at === end ? undefined : 'junk'
}
