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
  const [high, low, failureType] = bytes
  if (high === undefined || low === undefined) return ''
  const digits = `${UPPER_HEX[high]}${UPPER_HEX[low]}`
  const code = `${LETTERS.charAt(high >> 6)}${(high >> 4) & 3}${digits.slice(1)}`
  return failureType === undefined ? code : `${code}-${UPPER_HEX[failureType]}`
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
