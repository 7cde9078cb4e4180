/** @module Several characters at once: whether they are digits. */

import { hex, NO_HEX } from './bytes.ts'

const HEX_DIGITS: readonly number[] = Array.from({ length: 256 }, (_, byte) => byte).filter(
  (byte) => hex(byte) !== NO_HEX,
)

/** 0 for two characters, read as a little-endian number, that are hex digits of either case; 1 for any others. */
const NOT_HEX: Uint8Array = (() => {
  const table = new Uint8Array(0x1_0000).fill(1)
  for (const second of HEX_DIGITS) for (const first of HEX_DIGITS) table[(second << 8) | first] = 0
  return table
})()

function pair(view: DataView, at: number): number {
  return NOT_HEX[view.getUint16(at, true)] as number
}

/** Zero when `length` characters are hex digits; `length` is even. */
export function notHex(view: DataView, start: number, length: number): number {
  // Eight bytes of data are by far the most common.
  if (length === 16) {
    return (
      pair(view, start) |
      pair(view, start + 2) |
      pair(view, start + 4) |
      pair(view, start + 6) |
      pair(view, start + 8) |
      pair(view, start + 10) |
      pair(view, start + 12) |
      pair(view, start + 14)
    )
  }
  let wrong = 0
  for (let at = start; at < start + length; at += 2) wrong |= pair(view, at)
  return wrong
}

/**
 * Zero when the four bytes of `word` are decimal digits: the upper half of each is 3, and stays 3 when 6 is added
 * ("SIMD within a register", H. S. Warren, Hacker's Delight, chapter 6).
 */
export function notDecimal(word: number): number {
  return (((word & 0xf0f0f0f0) | 0) ^ 0x30303030) | ((((word + 0x06060606) & 0xf0f0f0f0) | 0) ^ 0x30303030)
}
