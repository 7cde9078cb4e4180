/** @module Bytes as a PDF file uses them: one character per byte where it is syntax, UTF-8 where it is text. */

/** Bytes as Latin-1 text, one character each. */
export function latin1(bytes: Uint8Array, from = 0, to: number = bytes.length): string {
  let text = ''
  // Spreading more than some ten thousand arguments overflows the stack.
  for (let at = from; at < to; at += 8192)
    text += String.fromCharCode(...bytes.subarray(at, Math.min(at + 8192, to)))
  return text
}

/** Text of UTF-8 bytes, or null when they are not UTF-8. */
export function utf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    return null
  }
}

/** Where `needle` (ASCII) stands in the bytes, first at or after `from`; -1 when it does not. */
export function indexOf(bytes: Uint8Array, needle: string, from = 0): number {
  const last = bytes.length - needle.length
  for (let at = Math.max(0, from); at <= last; at++) if (standsAt(bytes, needle, at)) return at
  return -1
}

/** Where `needle` (ASCII) stands last in the bytes; -1 when it does not. */
export function lastIndexOf(bytes: Uint8Array, needle: string): number {
  for (let at = bytes.length - needle.length; at >= 0; at--) if (standsAt(bytes, needle, at)) return at
  return -1
}

function standsAt(bytes: Uint8Array, needle: string, at: number): boolean {
  for (let index = 0; index < needle.length; index++)
    if (bytes[at + index] !== needle.charCodeAt(index)) return false
  return true
}

/** Joins byte pieces. */
export function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0))
  let at = 0
  for (const piece of pieces) {
    bytes.set(piece, at)
    at += piece.length
  }
  return bytes
}
