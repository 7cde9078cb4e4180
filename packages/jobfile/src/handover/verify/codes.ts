/** @module The square codes that the pages draw, held against what they must hold. */
import { type CodeRectangle, codeShape, codeSide } from '../code-shape.ts'
import { latin1 } from '../pdf/bytes.ts'
import type { PdfFile } from '../pdf/file.ts'
import { Ref } from '../pdf/objects.ts'

/** Numbers of a content stream are written to a millionth of a point. */
const tolerance = 0.0001

/**
 * True when the pages draw exactly these codes, in order: a white square, then the dark rectangles of the code and
 * nothing else before the end of its figure. What another drawing covers is not seen (see the README).
 */
export function codesMatch(file: PdfFile, expected: readonly string[]): boolean {
  const drawn = file.pages.flatMap((page) => codesOf(contentLines(file, page)))
  return (
    drawn.length === expected.length &&
    expected.every((text, index) => isDrawing(drawn[index] ?? [], codeShape(text)))
  )
}

function contentLines(file: PdfFile, page: Ref): readonly string[] {
  const contents = file.dictionary(page)?.get('Contents')
  const stream = contents instanceof Ref ? file.object(contents.object)?.stream : null
  return stream === null || stream === undefined ? [] : latin1(file.bytes, stream.from, stream.to).split('\n')
}

const rectangle = /^(-?[\d.]+) (-?[\d.]+) (-?[\d.]+) (-?[\d.]+) re$/

function rectangleOf(line: string): CodeRectangle | null {
  const match = rectangle.exec(line)
  if (match === null) return null
  const [x = 0, y = 0, width = 0, height = 0] = match.slice(1).map(Number)
  return { x, y, width, height }
}

/** Lines of each code: from its white square to the end of its figure. */
function codesOf(lines: readonly string[]): readonly (readonly string[])[] {
  return lines.flatMap((line, from) => {
    const found = rectangleOf(line)
    if (found?.width !== codeSide || found.height !== codeSide) return []
    const end = lines.indexOf('EMC', from)
    // Naming the colour space again changes nothing; pdfkit does so when it must.
    return [lines.slice(from, end < 0 ? undefined : end).filter((one) => one !== '/DeviceRGB cs')]
  })
}

function isDrawing(lines: readonly string[], shape: readonly CodeRectangle[]): boolean {
  const ground = rectangleOf(lines[0] ?? '')
  if (ground === null || lines.length !== shape.length + 5) return false
  if (lines[1] !== '1 1 1 scn' || lines[2] !== 'f') return false
  if (lines.at(-2) !== '0 0 0 scn' || lines.at(-1) !== 'f') return false
  return shape.every((one, index) => {
    const drawn = rectangleOf(lines[3 + index] ?? '')
    return (
      drawn !== null &&
      near(drawn.x - ground.x, one.x) &&
      near(drawn.y - ground.y, one.y) &&
      near(drawn.width, one.width) &&
      near(drawn.height, one.height)
    )
  })
}

const near = (one: number, other: number) => Math.abs(one - other) < tolerance
