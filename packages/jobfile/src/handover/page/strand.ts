/** @module The life line of a fault: one mark for each scan, joined by a line. */
import type { Strand, StrandMark } from '../document/index.ts'
import { ink } from './ink.ts'
import type { Box, Sheet, Tag } from './sheet.ts'

const radius = 3.1

/** Draws a life line into a box of 12 points' height, its first mark where reading begins. */
export function drawStrand(sheet: Sheet, parent: Tag, strand: Strand, box: Box): void {
  const [left, top, right] = box
  const { doc } = sheet
  const middle = top + 6
  const step = (right - left - 2 * radius) / Math.max(1, strand.marks.length - 1)
  const at = (index: number) => left + radius + index * Math.min(step, 22)
  sheet.figure(parent, strand.alt, box, () =>
    sheet.shape(() => {
      doc.lineWidth(0.8).strokeColor(ink.edge)
      doc
        .moveTo(at(0), middle)
        .lineTo(at(strand.marks.length - 1), middle)
        .stroke()
      const places = (mark: StrandMark) =>
        strand.marks.flatMap((each, index) => (each === mark ? [at(index)] : []))
      dots(doc, [...places('reported'), ...places('not-reported')], middle, radius, ink.text)
      dots(doc, places('not-reported'), middle, radius - 1.2, ink.sheet)
      dots(doc, places('not-read'), middle, radius, ink.sheet)
      doc.lineWidth(1.1)
      for (const x of places('not-read'))
        doc
          .moveTo(x - 2.2, middle)
          .lineTo(x + 2.2, middle)
          .stroke(ink.edge)
    }),
  )
}

/** Discs, as strokes without length and with round ends: a twentieth of the bytes that a circle's curves take. */
export function dots(
  doc: PDFKit.PDFDocument,
  places: readonly number[],
  y: number,
  size: number,
  colour: string,
): void {
  if (places.length === 0) return
  doc.lineCap('round').lineWidth(2 * size)
  for (const x of places) doc.moveTo(x, y).lineTo(x, y)
  doc.stroke(colour).lineCap('butt')
}
