/** @module Whether a cell can be an identifier, a time, a length or data bytes. */

import { base64Bytes, dataBytes, unsigned } from './cells.ts'
import type { DataBase } from './columns.ts'

const encoder = (cell: string): Uint8Array =>
  Uint8Array.from(cell, (letter) => Math.min(letter.charCodeAt(0), 255))
const scratch = new Uint8Array(64)

/** Data bytes written in this way. */
export function isDataCell(cell: string, base: DataBase): boolean {
  const bytes = encoder(cell)
  if (base === 64) return base64Bytes(bytes, 0, bytes.length, scratch) >= 0
  return dataBytes(bytes, 0, bytes.length, base, scratch) >= 0
}

/** Data bytes as hex or decimal numbers. */
export function isBytesCell(cell: string): boolean {
  return isDataCell(cell, 16) || isDataCell(cell, 10)
}

/** Data bytes in any way a table writes them. */
export function isAnyData(cell: string): boolean {
  return isBytesCell(cell) || isDataCell(cell, 64)
}

/** One byte, decimal or hex. */
export function isByte(cell: string): boolean {
  return /^(0x)?[0-9a-f]{1,2}h?$/i.test(cell) || (/^\d{3}$/.test(cell) && Number(cell) <= 255)
}

/** A number of at most 32 bits. */
export function isId(cell: string): boolean {
  const bytes = encoder(cell)
  const value = unsigned(bytes, 0, bytes.length, 16)
  return value >= 0 && (value <= 0xffff_ffff || unsigned(bytes, 0, bytes.length, 10) <= 0xffff_ffff)
}

/** A hex identifier written in full: three digits for 11 bits, eight for 29. For columns whose name says nothing. */
export function looksLikeId(cell: string): boolean {
  return /^(0x)?([0-7][0-9a-f]{2}|[01][0-9a-f]{7})$/i.test(cell)
}

/** A number, a date or a time of day. */
export function isTime(cell: string): boolean {
  return /^\d[\d.,eE+-]*$/.test(cell) || /^\d{1,4}[-/.:]\d{1,2}[-/.:]\d{1,2}/.test(cell)
}

/** A number of data bytes. */
export function isLength(cell: string): boolean {
  return /^\d{1,2}$/.test(cell) && Number(cell) <= 64
}
