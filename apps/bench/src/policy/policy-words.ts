/** @module Words of what a pack asks: the firm's own where it has them, else the catalogue's, else the code. */
import { isCode } from '@shearline/jobfile'
import { say } from '../words/engine.ts'

/** A question of a pack. */
export function questionWords(question: string, words: string | null = null): string {
  if (words !== null) return words
  const code = `policy-asks.${question}`
  return isCode(code) ? say(code) : question
}

/** A document a pack accepts. */
export function documentWords({ code, words }: { readonly code: string; readonly words?: string }): string {
  if (words !== undefined) return words
  const known = `policy-document.${code}`
  return isCode(known) ? say(known) : code
}

/** An answer that is a code (`electric`, `leaseholder`); one the catalogue does not know is shown as it is. */
export function answerWords(question: string, answer: string): string {
  const code = question === 'authority.situation' ? `situation.${answer}` : `${question}.${answer}`
  return isCode(code) ? say(code) : answer
}
