/**
 * @module What a reader or a rule found worth saying.
 *
 * Engines return findings beside their values; they neither throw on bad input nor log.
 * `what` and `doNext` are English for the command line; a page translates by `code` and `params`.
 */

/** Where in the input a finding stands. Lines count from 1, byte offsets from 0. */
export interface Where {
  readonly line?: number
  readonly byteOffset?: number
  /** A path inside structured input, or the name of a part ("fact 12", "page 2"). */
  readonly part?: string
}

/** How much a finding matters: `note` changes nothing, `warning` deserves a look, `error` means data was left out. */
export type Severity = 'note' | 'warning' | 'error'

/** One finding: a closed code, how much it matters, where it stands, what it is and what to do next. */
export interface Finding<Code extends string = string> {
  readonly code: Code
  readonly severity: Severity
  readonly where: Where
  readonly what: string
  readonly doNext: string
  readonly params?: Readonly<Record<string, string | number>>
}

/** Writes a finding's place as words: `line 6`, `byte 290604`, `page 2`; empty when it has none. */
export function describeWhere(where: Where): string {
  const words: string[] = []
  if (where.part !== undefined) words.push(where.part)
  if (where.line !== undefined) words.push(`line ${where.line}`)
  if (where.byteOffset !== undefined) words.push(`byte ${where.byteOffset}`)
  return words.join(', ')
}
