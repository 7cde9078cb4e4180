/** @module The square code (QR, ISO/IEC 18004) as the rectangles it is drawn with: what draws it and what checks it share this. */
import { encode } from 'uqr'

/** Length of a side on the page, in points, its white edge included. */
export const codeSide = 104
/** Modules of white around the code that readers need (ISO/IEC 18004, 9.1). */
const quietZone = 4

/** A rectangle in points from the upper left corner of the code. */
export interface CodeRectangle {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** The dark rectangles of a code, row by row: one for each run of dark modules, so that no seam shows between them. */
export function codeShape(text: string): readonly CodeRectangle[] {
  const { data } = encode(text, { ecc: 'M', border: quietZone })
  const unit = codeSide / data.length
  return data.flatMap((row, line) =>
    stretches(row).map(({ from, to }) => ({
      x: from * unit,
      y: line * unit,
      width: (to - from) * unit,
      height: unit,
    })),
  )
}

function stretches(row: readonly boolean[]): readonly { readonly from: number; readonly to: number }[] {
  const found: { from: number; to: number }[] = []
  row.forEach((dark, at) => {
    const last = found.at(-1)
    if (!dark) return
    if (last?.to === at) last.to = at + 1
    else found.push({ from: at, to: at + 1 })
  })
  return found
}
