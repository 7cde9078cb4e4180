/** @module The picture of a job: a lock cylinder cut open, seven tumblers against one red line. */
import type { Block, Pin } from '../document/index.ts'
import { ink, styles } from './ink.ts'
import { page, type Sheet, textWidth } from './sheet.ts'

type Cylinder = Extract<Block, { kind: 'cylinder' }>

// The drawing's own units are points. The joint between driver and pin stands on the line when in line.
const bodyHeight = 150
const lineAt = 66
const wellHalf = 15
const pinHalf = 12.5
const driverLength = 25
const pinLength = 30
const tip = 8
const rise = 13
const labelHeight = 34

export const cylinderHeight: number = bodyHeight + labelHeight + 12

const centre = (index: number, count: number): number =>
  page.left + (textWidth * (index + 0.5)) / Math.max(1, count)

export function drawCylinder(sheet: Sheet, block: Cylinder): void {
  sheet.need(cylinderHeight)
  const top = sheet.y
  const line = top + lineAt
  sheet.figure(sheet.root, block.alt, [page.left, top, page.left + textWidth, top + bodyHeight], () => {
    sheet.shape(() => {
      drawBody(sheet, top, line, block.pins)
      block.pins.forEach((pin, index) => {
        drawTumbler(sheet, pin, centre(index, block.pins.length), line, top)
      })
      sheet.doc.lineWidth(2).lineCap('round').strokeColor(ink.line)
      sheet.doc
        .moveTo(page.left - 5, line)
        .lineTo(page.left + textWidth + 5, line)
        .stroke()
        .lineCap('butt')
    })
  })
  const width = textWidth / Math.max(1, block.pins.length)
  const list = sheet.group(sheet.root, 'L')
  block.pins.forEach((pin, index) => {
    const x = page.left + index * width
    const y = top + bodyHeight + 6
    const entry = sheet.group(list, 'LI')
    sheet.tag(entry, 'LBody', () => {
      sheet.write(styles.pinName, pin.name, x, y, width, 'center')
      sheet.write(styles.pinState, pin.standing, x, y + 11.5, width, 'center')
      sheet.write(styles.pinCount, pin.count, x, y + 22.5, width, 'center')
    })
    entry.end()
  })
  list.end()
  sheet.y = top + cylinderHeight
}

/** Housing above the line, plug below it, and a bore for each tumbler. */
function drawBody({ doc }: Sheet, top: number, line: number, pins: readonly Pin[]): void {
  const right = page.left + textWidth
  doc.save()
  doc.rect(page.left, top, textWidth, line - top).clip()
  doc.roundedRect(page.left, top, textWidth, bodyHeight, 12).fill(ink.housing)
  doc.restore()
  doc.save()
  doc.rect(page.left, line, textWidth, top + bodyHeight - line).clip()
  doc.roundedRect(page.left + 6, line - 20, textWidth - 12, top + bodyHeight - line + 20, 12).fill(ink.plug)
  doc.restore()
  pins.forEach((_, index) => {
    const x = centre(index, pins.length)
    doc.roundedRect(x - wellHalf, top + 9, wellHalf * 2, bodyHeight - 18, 4).fill(ink.bore)
  })
  drawBlade(doc, line, top + bodyHeight, pins)
  doc
    .lineWidth(0.6)
    .strokeColor(ink.edge)
    .moveTo(page.left + 6, line)
    .lineTo(right - 6, line)
    .stroke()
}

const jointOf = (pin: Pin, line: number) => line - pin.height * rise * (pin.height < 0 ? 1.7 : 1)

/** The blade that lifts the pins: deep cut where a pin hangs, high where one stands above the line. */
function drawBlade(doc: PDFKit.PDFDocument, line: number, bottom: number, pins: readonly Pin[]): void {
  const rest = line + pinLength + tip
  const right = page.left + textWidth
  doc.moveTo(page.left - 5, rest - 12).lineTo(page.left + 14, rest - 12)
  pins.forEach((pin, index) => {
    const x = centre(index, pins.length)
    const seat = jointOf(pin, line) + pinLength + tip
    doc.lineTo(x - 8, seat).lineTo(x + 8, seat)
    const next = pins[index + 1]
    if (next === undefined) return
    const peak = Math.min(seat, jointOf(next, line) + pinLength + tip) - 5
    doc.lineTo((x + centre(index + 1, pins.length)) / 2, peak)
  })
  doc
    .lineTo(right - 12, rest + 12)
    .lineTo(right - 22, bottom - 8)
    .lineTo(page.left - 5, bottom - 8)
  doc.closePath().lineWidth(0.8).fillAndStroke(ink.brassLit, ink.brassDeep)
  doc.lineWidth(1).strokeColor(ink.brass)
  doc
    .moveTo(page.left - 5, bottom - 15)
    .lineTo(right - 34, bottom - 15)
    .stroke()
}

function drawTumbler({ doc }: Sheet, pin: Pin, x: number, line: number, top: number): void {
  const joint = jointOf(pin, line)
  const driverTop = joint - driverLength
  drawSpring(doc, x, top + 12, driverTop)
  doc.lineWidth(0.8)
  doc
    .roundedRect(x - pinHalf, driverTop, pinHalf * 2, driverLength, 2.5)
    .fillAndStroke(ink.steel, ink.steelDeep)
  doc.roundedRect(x - pinHalf + 4, driverTop + 3.5, 4, driverLength - 7, 1.5).fill(ink.steelLit)
  // In line: solid brass. Low: hollow. High: two dark bands. The shape says it without colour.
  const low = pin.state === 'low'
  pinPath(doc, x, joint)
  doc.lineWidth(low ? 1.1 : 0.8).fillAndStroke(low ? ink.bore : ink.brass, ink.brassDeep)
  if (low) hatch(doc, x, joint)
  else doc.roundedRect(x - pinHalf + 4, joint + 4, 4, pinLength - 7, 1.5).fill(ink.brassLit)
  if (pin.state === 'high') {
    doc.rect(x - pinHalf + 0.4, joint + 12, pinHalf * 2 - 0.8, 4).fill(ink.text)
    doc.rect(x - pinHalf + 0.4, joint + 20, pinHalf * 2 - 0.8, 4).fill(ink.text)
  }
}

function pinPath(doc: PDFKit.PDFDocument, x: number, joint: number): void {
  doc
    .moveTo(x - pinHalf, joint)
    .lineTo(x + pinHalf, joint)
    .lineTo(x + pinHalf, joint + pinLength)
    .lineTo(x + 4, joint + pinLength + tip)
    .lineTo(x - 4, joint + pinLength + tip)
    .lineTo(x - pinHalf, joint + pinLength)
    .closePath()
}

function hatch(doc: PDFKit.PDFDocument, x: number, joint: number): void {
  doc.save()
  pinPath(doc, x, joint)
  doc.clip()
  doc.lineWidth(1.1).strokeColor(ink.brass)
  for (let step = -40; step <= 40; step += 5.5)
    doc.moveTo(x + step - 24, joint + 44).lineTo(x + step + 24, joint - 4)
  doc.stroke()
  doc.restore()
  pinPath(doc, x, joint)
  doc.lineWidth(1.1).stroke(ink.brassDeep)
}

function drawSpring(doc: PDFKit.PDFDocument, x: number, from: number, to: number): void {
  const turns = 4
  const step = (to - from) / turns
  doc.moveTo(x, from)
  for (let turn = 0; turn < turns; turn++) {
    const y = from + turn * step
    doc.bezierCurveTo(x + 13, y + step * 0.1, x + 13, y + step * 0.45, x, y + step * 0.5)
    doc.bezierCurveTo(x - 13, y + step * 0.55, x - 13, y + step * 0.9, x, y + step)
  }
  doc.lineWidth(1.5).strokeColor(ink.steelDeep).stroke()
}
