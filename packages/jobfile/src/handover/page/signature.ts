/** @module Lines to be filled in by hand, each over its label. */
import type { Block } from '../document/index.ts'
import { ink, styles } from './ink.ts'
import { page, type Sheet, textWidth } from './sheet.ts'

type Signature = Extract<Block, { kind: 'signature' }>

/** Room for handwriting above a line, in points. */
const writing = 34
const gap = 14

export const signatureHeight: number = writing + 22

export function drawSignature(sheet: Sheet, { labels }: Signature): void {
  sheet.need(signatureHeight)
  const width = (textWidth - gap * (labels.length - 1)) / Math.max(1, labels.length)
  const line = sheet.y + writing
  labels.forEach((label, index) => {
    const x = page.left + index * (width + gap)
    sheet.rule(x, line, width, ink.text, 0.7)
    sheet.tag(sheet.root, 'P', () => sheet.write(styles.quiet, label, x, line + 4, width))
  })
  sheet.y += signatureHeight
}
