/** @module Outlines of keys by form, drawn in one hand. Our own shapes; none is a maker's. */
import type { KeyForm } from '@shearline/keywork'
import { ink } from './ink.ts'

type Doc = PDFKit.PDFDocument

/** Draws a key of a form into a box of `width` points by 26, its left upper corner at x, y. */
export function drawKeyShape(doc: Doc, form: KeyForm, x: number, y: number, width: number): void {
  const middle = y + 13
  doc.lineWidth(1).lineJoin('round')
  drawings[form](doc, x, middle, width)
}

const drawings: Readonly<Record<KeyForm, (doc: Doc, x: number, middle: number, width: number) => void>> = {
  blade: (doc, x, middle, width) => {
    blade(doc, x + 20, middle, width - 22)
    doc.circle(x + 12, middle, 11).fillAndStroke(ink.steelLit, ink.steelDeep)
    doc.circle(x + 8, middle, 3.2).fillAndStroke(ink.sheet, ink.steelDeep)
  },
  transponder: (doc, x, middle, width) => {
    blade(doc, x + 22, middle, width - 24)
    doc.roundedRect(x + 1, middle - 11, 23, 22, 8).fillAndStroke(ink.text, ink.text)
    doc.circle(x + 7, middle, 2.6).fill(ink.sheet)
    doc.roundedRect(x + 15, middle - 4, 5, 8, 1).fill(ink.brassLit)
  },
  'remote-head': (doc, x, middle, width) => {
    blade(doc, x + 28, middle, width - 30)
    doc.roundedRect(x + 1, middle - 11, 29, 22, 7).fillAndStroke(ink.text, ink.text)
    doc.circle(x + 6, middle, 2.2).fill(ink.sheet)
    button(doc, x + 12, middle - 6.5)
    button(doc, x + 12, middle + 1.5)
  },
  flip: (doc, x, middle, width) => {
    blade(doc, x + 29, middle - 4, width - 31)
    doc.roundedRect(x + 1, middle - 10, 30, 21, 4).fillAndStroke(ink.text, ink.text)
    doc.circle(x + 26, middle - 4, 3.4).fillAndStroke(ink.steel, ink.steelDeep)
    button(doc, x + 6, middle - 5.5)
    button(doc, x + 6, middle + 2.5)
  },
  proximity: (doc, x, middle, width) => {
    blade(doc, x + 33, middle, width - 35)
    doc.roundedRect(x + 1, middle - 10.5, 36, 21, 10).fillAndStroke(ink.text, ink.text)
    button(doc, x + 9, middle - 6)
    button(doc, x + 9, middle + 2)
    arcs(doc, x + 26, middle)
  },
  card: (doc, x, middle, width) => {
    doc.roundedRect(x + width - 44, middle - 12, 40, 24, 3).fillAndStroke(ink.text, ink.text)
    button(doc, x + width - 38, middle - 6)
    button(doc, x + width - 38, middle + 2)
    arcs(doc, x + width - 18, middle)
  },
}

function blade(doc: Doc, x: number, middle: number, length: number): void {
  const cuts = [0, -1.6, -0.4, -2.6, -1.2, -2.2] as const
  const step = (length - 8) / cuts.length
  doc.moveTo(x, middle + 3.6).lineTo(x, middle - 3.6)
  cuts.forEach((cut, index) => {
    doc.lineTo(x + index * step + step * 0.3, middle - 3.6 - cut)
    doc.lineTo(x + index * step + step * 0.8, middle - 3.6 - cut)
  })
  doc
    .lineTo(x + length - 5, middle - 3)
    .lineTo(x + length, middle + 0.5)
    .lineTo(x + length - 4, middle + 3.6)
    .closePath()
    .fillAndStroke(ink.steelLit, ink.steelDeep)
}

function button(doc: Doc, x: number, y: number): void {
  doc.roundedRect(x, y, 10, 4.6, 2).fill(ink.steel)
}

/** Two arcs: found by the car without a button. */
function arcs(doc: Doc, x: number, middle: number): void {
  doc.lineWidth(1.1)
  for (const radius of [3, 6])
    doc
      .moveTo(x, middle - radius)
      .bezierCurveTo(
        x + radius * 0.75,
        middle - radius * 0.6,
        x + radius * 0.75,
        middle + radius * 0.6,
        x,
        middle + radius,
      )
      .stroke(ink.brassLit)
  doc.lineWidth(1)
}
