/** @module Finds trouble codes in free text (SAE J2012 form), mistyped ones too. */

import { dtcBytes } from '@shearline/bus'
import type { Doubt } from './types.ts'

/** A code found in a line. */
export interface FoundCode {
  readonly code: string
  readonly from: number
  readonly to: number
  readonly doubts: readonly Doubt[]
}

/**
 * Letter, digit 0 to 3, three hex digits; then perhaps a failure type of two hex digits after `-`, `:` or nothing.
 * O and I are let in where a digit belongs, because people and cameras take them for 0 and 1.
 */
const CODE =
  /(?<![A-Za-z0-9])([PCBU])([0-3OI])([0-9A-FOI]{3})(?:[-:]([0-9A-FOI]{2})|([0-9A-F]{2}))?(?![A-Za-z0-9])/gi

/** Every code of a line in its order. */
export function codesIn(line: string): readonly FoundCode[] {
  const found: FoundCode[] = []
  for (const match of line.matchAll(CODE)) {
    const [whole, letter = '', digit = '', rest = '', marked, joined] = match
    const failureType = marked ?? joined
    const read = `${digit}${rest}${failureType ?? ''}`.toUpperCase()
    const mended = read.replaceAll('O', '0').replaceAll('I', '1')
    const code = `${letter.toUpperCase()}${mended.slice(0, 4)}${failureType === undefined ? '' : `-${mended.slice(4)}`}`
    if (dtcBytes(code) === undefined) continue
    const doubts: Doubt[] = []
    if (mended !== read) doubts.push('code-mended')
    // In lower case such letters are as likely a word or a part number: "bead2", "c0ffee".
    if (letter !== letter.toUpperCase() || /[a-z]/.test(rest)) doubts.push('perhaps-no-code')
    found.push({ code, from: match.index, to: match.index + whole.length, doubts })
  }
  return found
}
