/**
 * @module Diagnostic trouble codes as text and as bytes.
 *
 * Structure: SAE J2012 / ISO 15031-6. The first two bytes make `P0513`: two bits for the letter (P powertrain,
 * C chassis, B body, U network), two for the first digit, three hex digits. A third byte is the failure type,
 * written after a dash: `U0140-87`.
 */

import { UPPER_HEX } from '../frame/hex.ts'

const LETTERS = 'PCBU'

const TEXT = /^([PCBU])([0-3])([0-9A-F]{3})(?:-([0-9A-F]{2}))?$/

/** Upper-case hex of bytes, without separators. */
export function hexUpper(bytes: Uint8Array): string {
  let text = ''
  for (const byte of bytes) text += UPPER_HEX[byte]
  return text
}

/** Text of a code from its two bytes, or three with the failure type; empty when there are fewer than two. */
export function dtcText(bytes: Uint8Array): string {
  return dtcTextAt(bytes, 0)
}

/** The same of the first three bytes from `at` on, as far as they are there. */
export function dtcTextAt(bytes: Uint8Array, at: number): string {
  if (at + 2 > bytes.length) return ''
  const high = bytes[at] as number
  const digit = UPPER_HEX[high]?.charAt(1) ?? ''
  const code = `${LETTERS.charAt(high >> 6)}${(high >> 4) & 3}${digit}${UPPER_HEX[bytes[at + 1] as number]}`
  return at + 2 < bytes.length ? `${code}-${UPPER_HEX[bytes[at + 2] as number]}` : code
}

/** Bytes of a code from its text (two, or three with a failure type); `undefined` when the text is none. */
export function dtcBytes(text: string): Uint8Array | undefined {
  const parts = TEXT.exec(text.toUpperCase())
  if (parts === null) return undefined
  const [, letter, digit, rest, failureType] = parts as unknown as [string, string, string, string, string?]
  const word = (LETTERS.indexOf(letter) << 14) | (Number(digit) << 12) | Number.parseInt(rest, 16)
  const bytes = [word >> 8, word & 255]
  if (failureType !== undefined) bytes.push(Number.parseInt(failureType, 16))
  return Uint8Array.from(bytes)
}
