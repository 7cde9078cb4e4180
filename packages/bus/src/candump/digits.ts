/** @module Several characters at once: whether they are digits. */

import { hex, NO_HEX } from './bytes.ts'

const HEX_DIGITS: readonly number[] = Array.from({ length: 256 }, (_, byte) => byte).filter(
  (byte) => hex(byte) !== NO_HEX,
)

/** 0 for two characters, read as a little-endian number, that are hex digits of either case; 1 for any others. */
let notHexTable: Uint8Array | undefined

/** The table is made when it is first needed: compiled loops do without. */
function table(): Uint8Array {
  if (notHexTable !== undefined) return notHexTable
  notHexTable = new Uint8Array(0x1_0000).fill(1)
  for (const second of HEX_DIGITS) for (const first of HEX_DIGITS) notHexTable[(second << 8) | first] = 0
  return notHexTable
}

/** Zero when `length` characters are hex digits; `length` is even. */
export function notHex(view: DataView, start: number, length: number): number {
  const pairs = table()
  let wrong = 0
  for (let at = start; at < start + length; at += 2) wrong |= pairs[view.getUint16(at, true)] as number
  return wrong
}
