import { sha256OfBytes } from '../chain/index.ts'
import { type HandoverText, printedTexts, tidy } from './document/index.ts'

/** Text without blanks, so that line breaks and columns do not matter to a comparison. */
export function solid(text: string): string {
  return tidy(text).replaceAll(' ', '')
}

/** What the pages must print, as one run of characters without blanks. */
export function solidText(text: HandoverText): string {
  return printedTexts(text).map(solid).join('')
}

/** SHA-256 of what the pages must print. */
export function textHash(text: HandoverText): string {
  return sha256OfBytes(solidText(text))
}
