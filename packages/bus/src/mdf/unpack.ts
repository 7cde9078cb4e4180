/**
 * @module Unpacks a DZ block.
 * Sources: RFC 1950/1951 (zlib, deflate; by fflate); ASAM MDF 4.1 for the transposition: the data is a table of
 * rows of `columns` bytes, stored column after column, and what does not fill a row follows as it is.
 */

import { Unzlib } from 'fflate'

/** What came out, and what is wrong with it (`undefined` when it is whole). */
export interface Unpacked {
  readonly bytes: Uint8Array
  readonly fault: string | undefined
}

/** Deflate cannot pack better than 1032 to 1 (258 bytes for two bits). */
const MOST_RATIO = 1032

/** Unpacks `packed` to at most `originalLength` bytes. Damaged input gives what could be unpacked. Never throws. */
export function unpack(packed: Uint8Array, originalLength: number, columns: number): Unpacked {
  if (originalLength > packed.length * MOST_RATIO)
    return { bytes: new Uint8Array(0), fault: 'it states more than it can hold' }
  const bytes = new Uint8Array(originalLength)
  let fill = 0
  let fault: string | undefined
  try {
    const stream = new Unzlib((chunk) => {
      const room = bytes.length - fill
      bytes.set(chunk.length > room ? chunk.subarray(0, room) : chunk, fill)
      fill += Math.min(chunk.length, room)
      if (chunk.length > room) fault = 'it holds more than it states'
    })
    // In pieces, so that a bomb is noticed before it has all been unpacked.
    for (let at = 0; at < packed.length && fault === undefined; at += 16_384) {
      stream.push(packed.subarray(at, at + 16_384), at + 16_384 >= packed.length)
    }
  } catch {
    fault = 'the packed bytes are damaged'
  }
  if (fault === undefined && fill < originalLength) fault = 'it holds less than it states'
  if (fault === undefined && adler32(bytes) !== checksumOf(packed)) fault = 'its checksum does not fit'
  // A transposed table that is not whole has holes in every row: nothing of it can be used.
  if (columns > 0 && fill < originalLength) return { bytes: new Uint8Array(0), fault }
  return { bytes: columns > 0 ? rowsOf(bytes, columns) : bytes.subarray(0, fill), fault }
}

/** Turns columns stored one after the other back into rows of `columns` bytes. */
function rowsOf(stored: Uint8Array, columns: number): Uint8Array {
  if (columns > stored.length) return stored
  const rows = Math.floor(stored.length / columns)
  const restored = new Uint8Array(stored.length)
  for (let column = 0, from = 0; column < columns; column += 1) {
    for (let row = 0, to = column; row < rows; row += 1, to += columns) restored[to] = stored[from++] ?? 0
  }
  restored.set(stored.subarray(rows * columns), rows * columns)
  return restored
}

/** The checksum at the end of a zlib stream (RFC 1950). */
function checksumOf(packed: Uint8Array): number {
  const at = packed.length - 4
  return at < 0 ? -1 : new DataView(packed.buffer, packed.byteOffset + at, 4).getUint32(0)
}

/** Adler-32, RFC 1950 section 8. */
function adler32(bytes: Uint8Array): number {
  let low = 1
  let high = 0
  for (let at = 0; at < bytes.length; ) {
    // 5552 is the longest run whose sums stay below 2^32 (RFC 1950).
    const end = Math.min(at + 5552, bytes.length)
    for (; at < end; at += 1) {
      low += bytes[at] ?? 0
      high += low
    }
    low %= 65_521
    high %= 65_521
  }
  return ((high << 16) | low) >>> 0
}
