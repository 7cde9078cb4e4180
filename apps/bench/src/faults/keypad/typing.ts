/** @module A trouble code as it grows under the thumb (form of SAE J2012: letter, 0 to 3, three hex digits, type). */

export const LETTERS = ['P', 'C', 'B', 'U'] as const
export const FIRST_DIGITS = ['0', '1', '2', '3'] as const
export const HEX_DIGITS = [...'0123456789ABCDEF'] as const

/** Digits of a code without and with its failure type. */
const CODE_LENGTH = 5
const LONGEST = 7

/** Keys that may follow what is typed so far. */
export function keysAfter(typed: string): readonly string[] {
  if (typed.length === 0) return LETTERS
  if (typed.length === 1) return FIRST_DIGITS
  return typed.length < LONGEST ? HEX_DIGITS : []
}

/** What is typed with one more key, or as it was when the key cannot follow. */
export function withKey(typed: string, key: string): string {
  return keysAfter(typed).includes(key) ? typed + key : typed
}

/** The code that is typed, or null while it is not whole: five signs, or seven with the failure type. */
export function wholeCode(typed: string): string | null {
  if (typed.length === CODE_LENGTH) return typed
  return typed.length === LONGEST ? `${typed.slice(0, CODE_LENGTH)}-${typed.slice(CODE_LENGTH)}` : null
}
