/** @module The supply over time, against the lowest allowed voltage. */
import type { Block } from '../document/index.ts'
import { ink, styles } from './ink.ts'
import { page, type Sheet, textWidth } from './sheet.ts'

type Curve = Extract<Block, { kind: 'curve' }>

const height = 96
const left = 46
const pad = 12

const legendHeight = 14

export const curveHeight: number = height + legendHeight + 10

export function drawCurve(sheet: Sheet, block: Curve): void {
  sheet.need(curveHeight)
  const top = sheet.y
  const volts = block.points.map((point) => point.volts)
  if (block.floorVolts !== null) volts.push(block.floorVolts)
  const least = Math.min(...volts)
  const span = Math.max(0.2, Math.max(...volts) - least)
  const place: Place = {
    top,
    x: (at) => page.left + left + at * (textWidth - left - pad * 2),
    y: (value) => top + height - pad - ((value - least) / span) * (height - pad * 2),
  }
  sheet.figure(
    sheet.root,
    block.alt,
    [page.left, top, page.left + textWidth, top + height + legendHeight],
    () => {
      sheet.shape(() =>
        sheet.doc.roundedRect(page.left + left - pad, top, textWidth - left + pad, height, 5).fill(ink.paper),
      )
      drawFloor(sheet, block, place)
      sheet.shape(() => drawReadings(sheet, block, place))
      drawLegend(sheet, block, top + height + 5)
    },
  )
  sheet.y = top + curveHeight
}

/** Where the picture begins, and the place of a time (0 to 1) and of a voltage. */
interface Place {
  readonly top: number
  readonly x: (at: number) => number
  readonly y: (volts: number) => number
}

function drawReadings({ doc }: Sheet, block: Curve, { x, y }: Place): void {
  block.points.forEach((point, index) => {
    if (index === 0) doc.moveTo(x(point.at), y(point.volts))
    else doc.lineTo(x(point.at), y(point.volts))
  })
  doc.lineWidth(1.4).lineJoin('round').strokeColor(ink.steelDeep).stroke()
  for (const point of block.points) drawPoint(doc, x(point.at), y(point.volts), point.session)
}

/** The floor holds for the session, so it is drawn over the session only. */
function drawFloor(sheet: Sheet, block: Curve, { top, x, y }: Place): void {
  for (const mark of block.scale)
    sheet.write(styles.scale, mark.text, page.left, y(mark.volts) - 4.5, left - pad - 5, 'right')
  if (block.floorVolts === null || block.floorText === null) return
  const session = block.points.filter((point) => point.session).map((point) => point.at)
  const from = session.length === 0 ? 0 : Math.min(...session)
  const to = session.length === 0 ? 1 : Math.max(...session)
  const floor = y(block.floorVolts)
  sheet.shape(() => {
    sheet.doc.lineWidth(1).dash(5, { space: 3 }).strokeColor(ink.text)
    sheet.doc
      .moveTo(x(from) - 8, floor)
      .lineTo(x(to) + 8, floor)
      .stroke()
      .undash()
  })
  const below = floor + 12 < top + height
  const width = sheet.widthOf(styles.scale, block.floorText) + 2
  const middle = (x(from) + x(to) - width) / 2
  const at = Math.min(Math.max(middle, x(0)), x(1) - width)
  sheet.write(styles.scale, block.floorText, at, floor + (below ? 2.5 : -11.5), width)
}

function drawPoint(doc: PDFKit.PDFDocument, x: number, y: number, session: boolean): void {
  doc.lineWidth(1).circle(x, y, 2.6)
  doc.fillAndStroke(session ? ink.brass : ink.sheet, ink.brassDeep)
}

function drawLegend(sheet: Sheet, { legend }: Curve, y: number): void {
  let x = page.left + left - pad + 6
  legend.forEach((text, index) => {
    const at = x
    sheet.shape(() => drawPoint(sheet.doc, at, y + 4.4, index === 0))
    const width = sheet.widthOf(styles.scale, text) + 2
    sheet.write(styles.scale, text, x + 7, y, width)
    x += width + 26
  })
}
