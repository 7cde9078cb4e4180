/** @module The sheet of tags: how many, where each stands, what the page and its worker tell each other. */

const millimetre = 72 / 25.4

/** A4 and the grid of tags on it, in points. */
export const sheet = {
  width: 210 * millimetre,
  height: 297 * millimetre,
  columns: 3,
  rows: 7,
  tag: { width: 62 * millimetre, height: 38 * millimetre },
  left: 12 * millimetre,
  top: 15.5 * millimetre,
  millimetre,
} as const

export const tagsOnSheet: number = sheet.columns * sheet.rows

/** What one tag says. */
export interface PrintedTag {
  readonly letter: string
  readonly colour: string
  readonly colourWord: string
  readonly job: string
  readonly code: string
  /** What its QR code says. */
  readonly text: string
}

export interface TagsAsk {
  readonly title: string
  /** Places of the first sheet that are cut out already. */
  readonly skip: number
  readonly tags: readonly PrintedTag[]
}

export type TagsAnswer =
  | { readonly what: 'made'; readonly pdf: Uint8Array<ArrayBuffer> }
  | { readonly what: 'failed'; readonly why: string }

/** Sheet and upper left corner of the tag at a place, counted row by row from 0; points. */
export function placeOfTag(place: number): { readonly page: number; readonly x: number; readonly y: number } {
  const onPage = place % tagsOnSheet
  return {
    page: Math.floor(place / tagsOnSheet),
    x: sheet.left + (onPage % sheet.columns) * sheet.tag.width,
    y: sheet.top + Math.floor(onPage / sheet.columns) * sheet.tag.height,
  }
}
