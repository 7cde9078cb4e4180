/** @module Keys as cards: label colour and letter, a drawing of the key, and what it can do before and after. */
import type { Block, CellMark, KeyCard, KeyRow } from '../document/index.ts'
import { ink, labelInk, styles } from './ink.ts'
import { jpegSize } from './jpeg.ts'
import { drawKeyShape } from './key-shape.ts'
import { type Box, page, type Sheet, type Tag, textWidth } from './sheet.ts'
import { dots } from './strand.ts'

type Keys = Extract<Block, { kind: 'keys' }>

const gap = 12
const width = (textWidth - gap) / 2
const pad = 9
const label = 32
const shape = 62
const outlineHeight = 26
const photoHeight = 50
const markWidth = 11
const columns = [0.44, 0.28, 0.28] as const
const inner = width - 2 * pad

/** Cards in rows of two. */
function pairs(cards: readonly KeyCard[]): readonly (readonly KeyCard[])[] {
  const rows: KeyCard[][] = []
  cards.forEach((card, index) => {
    if (index % 2 === 0) rows.push([card])
    else rows.at(-1)?.push(card)
  })
  return rows
}

const textLeft = label + 8
const lineWidth = inner - textLeft - shape

/** The photo of a key and its size in pixels, where it is at hand and can be carried. */
function photoAtHand(sheet: Sheet, { photo }: KeyCard): { bytes: Uint8Array; alt: string } | null {
  const bytes = photo === undefined ? undefined : sheet.pictures.get(photo.sha256)
  return photo === undefined || bytes === undefined || jpegSize(bytes) === null
    ? null
    : { bytes, alt: photo.alt }
}

function headHeight(sheet: Sheet, card: KeyCard): number {
  const title = sheet.measure(styles.cardTitle, card.title, lineWidth)
  const lines = card.lines.map((line, index) =>
    sheet.measure(styles.cardLine, line, lineRoom(sheet, card, index)),
  )
  const picture = photoAtHand(sheet, card) === null ? outlineHeight : photoHeight
  return Math.max(label, picture, title + lines.reduce((sum, line) => sum + line + 1.5, 2)) + 7
}

/** Below an outline a line may run to the card's edge; beside a photo it may not. */
function lineRoom(sheet: Sheet, card: KeyCard, index: number): number {
  return index === 0 || photoAtHand(sheet, card) !== null ? lineWidth : inner - textLeft
}

function rowHeight(sheet: Sheet, row: KeyRow): number {
  const cells = [
    sheet.measure(styles.cardCell, row.name, inner * columns[0] - 4),
    sheet.measure(styles.cardCell, row.before.text, inner * columns[1] - markWidth - 2),
    sheet.measure(styles.cardCell, row.after.text, inner * columns[2] - markWidth - 2),
  ]
  return Math.max(...cells) + 4.2
}

function cardHeight(sheet: Sheet, card: KeyCard): number {
  const rows = card.rows.map((row) => rowHeight(sheet, row))
  const notes = card.notes.map((note) => sheet.measure(styles.cardLine, note, inner) + 2)
  const sum = [...rows, ...notes].reduce((total, each) => total + each, 0)
  return pad + headHeight(sheet, card) + 11 + sum + pad + 1
}

/** Height of the first row of cards. */
export function keysStart(sheet: Sheet, { cards }: Keys): number {
  return Math.max(...cards.slice(0, 2).map((card) => cardHeight(sheet, card)))
}

export function drawKeys(sheet: Sheet, { cards }: Keys): void {
  for (const pair of pairs(cards)) {
    const height = Math.max(...pair.map((card) => cardHeight(sheet, card)))
    sheet.need(height)
    const top = sheet.y
    pair.forEach((card, index) => {
      drawCard(sheet, card, page.left + index * (width + gap), top, height)
    })
    sheet.y = top + height + gap
  }
}

function drawCard(sheet: Sheet, card: KeyCard, x: number, top: number, height: number): void {
  const { doc } = sheet
  const section = sheet.group(sheet.root, 'Sect')
  const colour = labelInk[card.colour]
  const left = x + pad
  sheet.decorate(() => {
    doc.lineWidth(0.8).roundedRect(x, top, width, height, 6).fillAndStroke(ink.sheet, ink.rule)
    doc.roundedRect(left, top + pad, label, label, 5).fill(colour.fill)
    // The hole of the tag.
    doc.circle(left + 6, top + pad + 6, 2.2).fill(ink.sheet)
  })
  drawPicture(sheet, card, section, [x + width - pad - shape, top + pad])
  const letter = { ...styles.letter, colour: colour.letter }
  let y = top + pad
  sheet.tag(section, 'H3', () => {
    sheet.write(letter, card.letter, left, top + pad + 7, label, 'center')
    y += sheet.write(styles.cardTitle, card.title, left + textLeft, y, lineWidth) + 2
  })
  card.lines.forEach((line, index) => {
    sheet.tag(section, 'P', () => {
      const room = lineRoom(sheet, card, index)
      y += sheet.write(styles.cardLine, line, left + textLeft, y, room) + 1.5
    })
  })
  y = top + pad + headHeight(sheet, card)
  y = drawGrid(sheet, card, section, left, y)
  for (const note of card.notes)
    sheet.tag(section, 'P', () => {
      y += sheet.write(styles.cardLine, note, left, y + 2, inner) + 2
    })
  section.end()
}

/** The photo where there is one, else an outline of this form of key. */
function drawPicture(
  sheet: Sheet,
  card: KeyCard,
  section: Tag,
  [left, top]: readonly [number, number],
): void {
  const { doc } = sheet
  const photo = photoAtHand(sheet, card)
  const right = left + shape
  if (photo === null) {
    sheet.figure(section, card.alt, [left, top, right, top + outlineHeight], () =>
      sheet.shape(() => drawKeyShape(doc, card.form, left, top, shape)),
    )
    return
  }
  const box: Box = [left, top, right, top + photoHeight]
  const [x] = sheet.box(box)
  sheet.figure(section, photo.alt, box, () => {
    const bytes: ArrayBuffer = new Uint8Array(photo.bytes).buffer
    doc.save().roundedRect(x, top, shape, photoHeight, 4).clip()
    doc.image(bytes, x, top, {
      cover: [shape, photoHeight],
      align: 'center',
      valign: 'center',
    })
    doc.restore()
  })
}

function drawGrid(sheet: Sheet, card: KeyCard, section: Tag, left: number, top: number): number {
  const table = sheet.group(section, 'Table')
  const places = [left, left + inner * columns[0], left + inner * (columns[0] + columns[1])] as const
  const line = sheet.group(table, 'TR')
  const heads = [card.head.function, card.head.before, card.head.after]
  heads.forEach((head, index) => {
    const x = (places[index] ?? left) + (index === 0 ? 0 : markWidth)
    const options = { scope: 'Column' } as PDFKit.Mixins.StructureElementOptions
    sheet.tag(line, 'TH', () => sheet.write(styles.cardHead, head, x, top, inner * 0.4), options)
  })
  line.end()
  let y = top + 11
  for (const row of card.rows) {
    const height = rowHeight(sheet, row)
    const at = y
    sheet.rule(left, at, inner)
    const tags = sheet.group(table, 'TR')
    const options = { scope: 'Row' } as PDFKit.Mixins.StructureElementOptions
    sheet.tag(
      tags,
      'TH',
      () => sheet.write(styles.cardCell, row.name, places[0], at + 2, inner * columns[0] - 4),
      options,
    )
    for (const [cell, x, share] of [
      [row.before, places[1], columns[1]],
      [row.after, places[2], columns[2]],
    ] as const) {
      sheet.decorate(() => drawMark(sheet.doc, cell.mark, x + 4, at + 7))
      const style = cell.mark === 'fails' ? { ...styles.cardCell, face: 'bold' as const } : styles.cardCell
      sheet.tag(tags, 'TD', () =>
        sheet.write(style, cell.text, x + markWidth, at + 2, inner * share - markWidth - 2),
      )
    }
    tags.end()
    y += height
  }
  table.end()
  return y
}

/** A mark beside the word: full disc works, cross fails, ring not tested, short stroke does not apply. */
function drawMark(doc: PDFKit.PDFDocument, mark: CellMark, x: number, y: number): void {
  doc.lineWidth(1.2).strokeColor(ink.text)
  if (mark === 'works') dots(doc, [x], y, 2.7, ink.brassDeep)
  else if (mark === 'fails')
    doc
      .moveTo(x - 2.4, y - 2.4)
      .lineTo(x + 2.4, y + 2.4)
      .moveTo(x + 2.4, y - 2.4)
      .lineTo(x - 2.4, y + 2.4)
      .stroke()
  else if (mark === 'not-applicable' || mark === 'blank')
    doc
      .moveTo(x - 2.4, y)
      .lineTo(x + 2.4, y)
      .stroke(ink.edge)
  else if (mark === 'not-tested') doc.circle(x, y, 2.3).stroke(ink.edge)
  else doc.circle(x, y, 2.3).dash(1, { space: 1 }).stroke(ink.edge).undash()
}
