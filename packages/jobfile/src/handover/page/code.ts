/** @module A square code that a machine reads (QR, ISO/IEC 18004), drawn as shapes, with its sentence beside it. */
import { encode } from 'uqr'
import type { Block } from '../document/index.ts'
import { ink, styles } from './ink.ts'
import { page, type Sheet, textWidth } from './sheet.ts'

type Code = Extract<Block, { kind: 'code' }>

const side = 104
/** Modules of white around the code that readers need (ISO/IEC 18004, 9.1). */
const quietZone = 4

export const codeHeight: number = side + 8

export function drawCode(sheet: Sheet, block: Code): void {
  sheet.need(codeHeight)
  const top = sheet.y
  const box = sheet.box([page.left, top, page.left + side, top + side])
  sheet.figure(sheet.root, block.alt, [page.left, top, page.left + side, top + side], () => {
    // Never mirrored: a reader would take a mirrored code for damaged.
    const [x] = box
    const { data } = encode(block.data, { ecc: 'M', border: quietZone })
    const unit = side / data.length
    sheet.doc.rect(x, top, side, side).fill(ink.white)
    data.forEach((row, line) => {
      for (const { from, to } of stretches(row))
        sheet.doc.rect(x + from * unit, top + line * unit, (to - from) * unit, unit)
    })
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

/** Runs of dark modules in a row: one shape for each, so that no seam shows between them. */
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
