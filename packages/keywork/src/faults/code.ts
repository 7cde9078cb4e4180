/** @module Fault codes as text (SAE J2012, ISO 15031-6): five characters, and a failure type after a dash. */

import { dtcBytes, dtcText } from '@shearline/bus'
import { remembered } from './remembered.ts'

/** A code taken apart; `failureType` is null when the report gave only two bytes. */
export interface CodeText {
  readonly base: string
  readonly failureType: string | null
}

/** Takes a code apart; null when it does not have the J2012 form. */
export const readCode: (code: string) => CodeText | null = remembered((code) => {
  const bytes = dtcBytes(tidyCode(code))
  if (bytes === undefined) return null
  const [base = '', failureType = null] = dtcText(bytes).split('-')
  return { base, failureType }
})

/** The code in upper case without surrounding space. */
export function tidyCode(code: string): string {
  return code.trim().toUpperCase()
}
