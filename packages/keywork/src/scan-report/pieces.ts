/** @module Pieces of text with a place on a page, put into lines as a reader sees them. */

/** One piece of text as a PDF holds it (`TextItem` of pdfjs-dist, of which it is the part needed here). */
export interface TextPiece {
  readonly str: string
  /** Six numbers; the last two are where the piece begins, in points, counted from the lower left. */
  readonly transform: readonly number[]
  /** Points. */
  readonly width: number
}

/** Pieces whose base lines are closer than this stand in one line, in points. */
const SAME_LINE_POINTS = 2
/** A gap wider than this parts two columns; a narrower one is a space; below the least it is none. In points. */
const COLUMN_GAP_POINTS = 12
const SPACE_POINTS = 0.5

/** The lines of one page from top to bottom, each from left to right, with gaps kept as spaces. */
export function linesOfPieces(pieces: readonly TextPiece[]): readonly string[] {
  const rows: { y: number; pieces: TextPiece[] }[] = []
  for (const piece of pieces) {
    if (piece.str.trim() === '') continue
    const y = piece.transform[5] ?? 0
    const row = rows.find((each) => Math.abs(each.y - y) <= SAME_LINE_POINTS)
    if (row === undefined) rows.push({ y, pieces: [piece] })
    else row.pieces.push(piece)
  }
  return rows.sort((one, other) => other.y - one.y).map((row) => lineOfRow(row.pieces))
}

function lineOfRow(pieces: TextPiece[]): string {
  let text = ''
  let end = 0
  for (const piece of pieces.sort((one, other) => leftOf(one) - leftOf(other))) {
    const gap = leftOf(piece) - end
    if (text !== '') text += gap > COLUMN_GAP_POINTS ? '   ' : gap > SPACE_POINTS ? ' ' : ''
    text += piece.str
    end = leftOf(piece) + piece.width
  }
  return text
}

function leftOf(piece: TextPiece): number {
  return piece.transform[4] ?? 0
}
