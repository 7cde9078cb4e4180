import { describe, expect, it } from 'vitest'
import { linesOfPieces, readScanReport } from './index.ts'

/** A piece at a place; the matrix is that of upright text (ISO 32000-1, 9.4.2). */
const piece = (str: string, x: number, y: number, width = str.length * 5) => ({
  str,
  transform: [10, 0, 0, 10, x, y],
  width,
})

describe('pieces of a page', () => {
  it('become lines from top to bottom and left to right, whatever their order in the file', () => {
    const lines = linesOfPieces([
      piece('stored', 120, 680),
      piece('Engine control', 40, 700),
      piece('P0513-00', 40, 681),
    ])
    expect(lines).toEqual(['Engine control', 'P0513-00   stored'])
    expect(readScanReport(lines.join('\n')).codes).toMatchObject([
      { unit: 'Engine control', fault: { code: 'P0513-00', list: 'confirmed' } },
    ])
  })

  it('that touch are one word, near ones have a space, blank ones are dropped', () => {
    expect(
      linesOfPieces([
        piece('P05', 40, 500, 15),
        piece('13', 55, 500, 10),
        piece('key', 68, 500),
        piece(' ', 90, 500),
      ]),
    ).toEqual(['P0513 key'])
  })
})
