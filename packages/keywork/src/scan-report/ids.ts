/**
 * @module Identifiers and addresses of control units that stand beside their names in a report.
 *
 * ISO 15765-4 (11-bit and 29-bit identifiers of diagnostics), ISO 13400-2 (logical addresses). Only what is marked as
 * one is taken: behind `0x`, or alone in brackets and in a range that diagnostics use. A plain number is none.
 */

/** `0x7E0`, `0x18DAF110`; `(7E0/7E8)`, `[18DA10F1]`. Three digits without a mark from 600 up: below lie other things. */
const MARKED = /\b0x([0-9A-F]{8}|[0-9A-F]{3,4})\b/gi
const BRACKETED =
  /[([]\s*((?:[67][0-9A-F]{2}|18D[AB][0-9A-F]{4})(?:\s*[/,]\s*(?:[67][0-9A-F]{2}|18D[AB][0-9A-F]{4}))*)\s*[)\]]/gi

/** The identifiers of a line, as part of a unit; nothing when it has none. */
export function idsIn(line: string): { readonly ids?: readonly string[] } {
  const marked = [...line.matchAll(MARKED)].map(([, digits = '']) => digits)
  const bracketed = [...line.matchAll(BRACKETED)].flatMap(([, list = '']) => list.split(/\s*[/,]\s*/))
  const ids = [...new Set([...marked, ...bracketed].map((each) => each.toUpperCase()))]
  return ids.length === 0 ? {} : { ids }
}

/** The text without its identifiers and the brackets round them. */
export function withoutIds(text: string): string {
  return text.replace(BRACKETED, ' ').replace(/[([]?\s*0x(?:[0-9A-F]{8}|[0-9A-F]{3,4})\b\s*[)\]]?/gi, ' ')
}
