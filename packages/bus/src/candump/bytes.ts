/** @module The bytes of candump text: blanks, digits, marks. */

const SPACE: number = 0x20
const TAB: number = 0x09
export const HASH: number = 0x23
export const SEMICOLON: number = 0x3b
export const SLASH: number = 0x2f
export const OPEN: number = 0x28
export const CLOSE: number = 0x29
export const DASH: number = 0x2d
export const DOT: number = 0x2e
export const COLON: number = 0x3a
export const UNDERSCORE: number = 0x5f
export const OPEN_BRACKET: number = 0x5b
export const CLOSE_BRACKET: number = 0x5d
export const LETTER_R: number = 0x52
export const LETTER_T: number = 0x54
export const LETTER_X: number = 0x58
export const SMALL_R: number = 0x72

/** What `hex` gives for a byte that is no hex digit. */
export const NO_HEX: number = 255

/** Value of a hex digit by its byte, 255 for anything else. */
const HEX: Uint8Array = (() => {
  const table = new Uint8Array(256).fill(255)
  for (let digit = 0; digit < 10; digit++) table[0x30 + digit] = digit
  for (let digit = 0; digit < 6; digit++) {
    table[0x41 + digit] = 10 + digit
    table[0x61 + digit] = 10 + digit
  }
  return table
})()

/** Value of a hex digit, `NO_HEX` for anything else. */
export function hex(byte: number | undefined): number {
  return byte === undefined ? 255 : (HEX[byte] ?? 255)
}

/** Whether a byte is a decimal digit. */
export function isDigit(byte: number | undefined): boolean {
  return byte !== undefined && byte >= 0x30 && byte <= 0x39
}

/** Whether a byte is a space or a tab. */
export function isBlank(byte: number | undefined): boolean {
  return byte === SPACE || byte === TAB
}
