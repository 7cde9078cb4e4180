/** @module Texts too long for their place, up to longer than a page: nothing of a record is ever cut. */
import type { Style } from './ink.ts'
import { page, type Sheet, type Tag } from './sheet.ts'

/** Height of an empty page between its margins, in points. */
export const pageRoom: number = page.height - page.top - page.bottom

const pieceLength = 1500

/** Cuts a text at blanks into pieces that fit a page at full width. */
function pieces(text: string): readonly string[] {
  const found: string[] = []
  let rest = text
  while (rest.length > pieceLength) {
    const blank = rest.lastIndexOf(' ', pieceLength)
    const at = blank > 0 ? blank : pieceLength
    found.push(rest.slice(0, at))
    rest = rest.slice(at)
  }
  return [...found, rest]
}

/** Writes a text in pieces one below the other, each under its own tag, from page to page. */
export function writeLong(
  sheet: Sheet,
  parent: Tag,
  type: string,
  style: Style,
  text: string,
  place: { readonly x: number; readonly width: number },
): void {
  for (const piece of pieces(text)) {
    sheet.need(sheet.measure(style, piece, place.width) + 3)
    const top = sheet.y
    let height = 0
    sheet.tag(parent, type, () => {
      height = sheet.write(style, piece, place.x, top, place.width)
    })
    sheet.y = top + height + 3
  }
}
