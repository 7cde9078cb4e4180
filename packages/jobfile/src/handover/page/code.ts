/** @module A square code that a machine reads (QR, ISO/IEC 18004), drawn as shapes, with its sentence beside it. */
import { codeShape, codeSide as side } from '../code-shape.ts'
import type { Block } from '../document/index.ts'
import { ink, styles } from './ink.ts'
import { page, type Sheet, textWidth } from './sheet.ts'

type Code = Extract<Block, { kind: 'code' }>

export const codeHeight: number = side + 8

export function drawCode(sheet: Sheet, block: Code): void {
  sheet.need(codeHeight)
  const top = sheet.y
  const box = sheet.box([page.left, top, page.left + side, top + side])
  sheet.figure(sheet.root, block.alt, [page.left, top, page.left + side, top + side], () => {
    // Never mirrored: a reader would take a mirrored code for damaged.
    const [x] = box
    sheet.doc.rect(x, top, side, side).fill(ink.white)
    for (const one of codeShape(block.data)) sheet.doc.rect(x + one.x, top + one.y, one.width, one.height)
    sheet.doc.fill(ink.black)
  })
  const left = page.left + side + 12
  const width = textWidth - side - 12
  const height = sheet.measure(styles.body, block.about, width)
  sheet.tag(sheet.root, 'P', () =>
    sheet.write(styles.body, block.about, left, top + Math.max(0, (side - height) / 2), width),
  )
  sheet.y = top + codeHeight
}
