/**
 * @module Lines of delimited text taken apart into cells, and cells into numbers, without making strings.
 * Source: RFC 4180 for quotes; common practice (no source) for `;`, tab and `|` as delimiters.
 */

const QUOTE = 0x22
const SPACE = 0x20
const TAB = 0x09

/** The cells of one line: cell `n` is `bytes[starts[n]..ends[n])`, without surrounding blanks and quotes. */
export class Cells {
  bytes: Uint8Array = new Uint8Array(0)
  readonly starts: number[] = []
  readonly ends: number[] = []
  count = 0
  /** A quote was opened and never closed. */
  unclosed = false

  /** Takes the line `bytes[from..to)` apart. A quoted cell may hold the delimiter, not the end of a line. */
  split(bytes: Uint8Array, from: number, to: number, delimiter: number): void {
    this.bytes = bytes
    this.count = 0
    this.unclosed = false
    let start = from
    let quoted = false
    for (let at = from; at < to; at += 1) {
      const byte = bytes[at]
      if (byte === QUOTE) quoted = !quoted
      else if (byte === delimiter && !quoted) {
        this.#add(start, at)
        start = at + 1
      }
    }
    this.unclosed = quoted
    this.#add(start, to)
  }

  /** True when the line has no such cell, or an empty one. */
  empty(cell: number): boolean {
    return cell >= this.count || (this.starts[cell] ?? 0) >= (this.ends[cell] ?? 0)
  }

  /** The cell as text; empty when the line has no such cell. */
  text(cell: number): string {
    return cell >= this.count
      ? ''
      : decode(this.bytes.subarray(this.starts[cell], this.ends[cell])).replaceAll('""', '"')
  }

  #add(from: number, to: number): void {
    let start = from
    let end = to
    while (start < end && isBlank(this.bytes[start])) start += 1
    while (end > start && isBlank(this.bytes[end - 1])) end -= 1
    if (end - start >= 2 && this.bytes[start] === QUOTE && this.bytes[end - 1] === QUOTE) {
      start += 1
      end -= 1
    }
    this.starts[this.count] = start
    this.ends[this.count] = end
    this.count += 1
  }
}

function isBlank(byte: number | undefined): boolean {
  return byte === SPACE || byte === TAB
}

/** Bytes as text: UTF-8, or one character per byte where that does not fit (old Windows files). Never throws. */
export function decode(bytes: Uint8Array): string {
  let text = ''
  let plain = true
  let escaped = ''
  for (const byte of bytes) {
    text += String.fromCharCode(byte)
    if (byte >= 0x80) plain = false
  }
  if (plain) return text
  for (const byte of bytes) escaped += `%${byte.toString(16).padStart(2, '0')}`
  try {
    return decodeURIComponent(escaped)
  } catch {
    return text
  }
}

/** Value of a hex digit, or -1. */
export function hexDigit(byte: number | undefined): number {
  if (byte === undefined) return -1
  if (byte >= 0x30 && byte <= 0x39) return byte - 0x30
  const letter = byte | 0x20
  return letter >= 0x61 && letter <= 0x66 ? letter - 0x57 : -1
}

/**
 * An unsigned number of base 10 or 16 in `bytes[from..to)`, with or without `0x` before or `h` or `x` behind;
 * -1 when it is none or above 2^53.
 */
export function unsigned(bytes: Uint8Array, from: number, to: number, base: 10 | 16): number {
  let start = from
  let end = to
  let radix: number = base
  if (bytes[start] === 0x30 && ((bytes[start + 1] ?? 0) | 0x20) === 0x78 && end - start > 2) {
    start += 2
    radix = 16
  } else if (end - start > 1) {
    const last = (bytes[end - 1] ?? 0) | 0x20
    if (last === 0x68 || last === 0x78) {
      end -= 1
      radix = 16
    }
  }
  if (start >= end || end - start > 16) return -1
  let value = 0
  for (let at = start; at < end; at += 1) {
    const digit = hexDigit(bytes[at])
    if (digit < 0 || digit >= radix) return -1
    value = value * radix + digit
  }
  return value <= Number.MAX_SAFE_INTEGER ? value : -1
}

/**
 * Data bytes written in one cell: hex pairs with or without blanks, dashes, colons, dots, commas, brackets or `0x`
 * between them; of base 10 the numbers must stand apart. Gives how many were written to `into`, or -1.
 */
export function dataBytes(
  bytes: Uint8Array,
  from: number,
  to: number,
  base: 10 | 16,
  into: Uint8Array,
): number {
  let count = 0
  let at = from
  while (at < to) {
    if (!isWordByte(bytes[at])) {
      if (!isSeparator(bytes[at])) return -1
      at += 1
      continue
    }
    let end = at
    while (end < to && isWordByte(bytes[end])) end += 1
    const prefixed = bytes[at] === 0x30 && ((bytes[at + 1] ?? 0) | 0x20) === 0x78 && end - at > 2
    const start = prefixed ? at + 2 : at
    const size = base === 16 || prefixed ? 2 : end - start
    if (end - start > 2 && (end - start) % 2 !== 0 && size === 2) return -1
    for (let pair = start; pair < end; pair += size) {
      const value = unsigned(bytes, pair, Math.min(pair + size, end), prefixed ? 16 : base)
      if (value < 0 || value > 255 || count >= into.length) return -1
      into[count] = value
      count += 1
    }
    at = end
  }
  return count
}

function isWordByte(byte: number | undefined): boolean {
  return hexDigit(byte) >= 0 || (byte !== undefined && (byte | 0x20) === 0x78)
}

function isSeparator(byte: number | undefined): boolean {
  // blank, tab, comma, dash, dot, colon, semicolon, brackets, underscore, bar
  return (
    byte !== undefined && [0x20, 0x09, 0x2c, 0x2d, 0x2e, 0x3a, 0x3b, 0x5b, 0x5d, 0x5f, 0x7c].includes(byte)
  )
}

/** Data bytes as base64 (RFC 4648) in `bytes[from..to)`. Gives how many were written to `into`, or -1. */
export function base64Bytes(bytes: Uint8Array, from: number, to: number, into: Uint8Array): number {
  let end = to
  while (end > from && to - end < 2 && bytes[end - 1] === 0x3d) end -= 1
  if ((to - from) % 4 !== 0 || (end - from) % 4 === 1) return -1
  let count = 0
  let bits = 0
  let held = 0
  for (let at = from; at < end; at += 1) {
    const digit = base64Digit(bytes[at] ?? 0)
    if (digit < 0) return -1
    held = ((held << 6) | digit) & 0xffff
    bits += 6
    if (bits < 8) continue
    bits -= 8
    if (count >= into.length) return -1
    into[count] = (held >> bits) & 0xff
    count += 1
  }
  return count
}

function base64Digit(byte: number): number {
  if (byte >= 0x41 && byte <= 0x5a) return byte - 0x41
  if (byte >= 0x61 && byte <= 0x7a) return byte - 0x61 + 26
  if (byte >= 0x30 && byte <= 0x39) return byte - 0x30 + 52
  if (byte === 0x2b) return 62
  return byte === 0x2f ? 63 : -1
}
