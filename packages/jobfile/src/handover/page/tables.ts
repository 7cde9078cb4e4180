/** @module Facts (label and value) and tables whose head is repeated on every page. */
import type { Block, Column, Strand } from '../document/index.ts'
import { ink, type Style, styles } from './ink.ts'
import { pageRoom, writeLong } from './long.ts'
import { page, type Sheet, type Tag, textWidth } from './sheet.ts'
import { drawStrand } from './strand.ts'

type Kind<K extends Block['kind']> = Extract<Block, { kind: K }>
type Fact = Kind<'facts'>['rows'][number]

const labelWidth = 138
/** What is no higher than this, in points, is not broken over pages. */
export const wholeHeight = 190
/** Room that a row longer than a page wants for its beginning. */
const longStart = 60
const rowPad = 3
const cellPad = 5

/** Long codes, such as a hash in groups, are set small enough for one line. */
const valueStyle = (row: Fact): Style =>
  row.mono !== true ? styles.value : row.value.length > 40 ? styles.hash : styles.code

function factHeight(sheet: Sheet, row: Fact): number {
  const label = sheet.measure(styles.label, row.label, labelWidth - 10)
  const value = sheet.measure(valueStyle(row), row.value, textWidth - labelWidth)
  return Math.max(label, value) + 2 * rowPad
}

/** All rows when they are few, else the first two: what must stay together. */
export function factsStart(sheet: Sheet, { rows }: Kind<'facts'>): number {
  const heights = rows.map((row) => factHeight(sheet, row))
  const all = heights.reduce((sum, height) => sum + height, 0)
  return all <= wholeHeight ? all : heights.slice(0, 2).reduce((sum, height) => sum + height, 0)
}

export function drawFacts(sheet: Sheet, { rows }: Kind<'facts'>): void {
  const table = sheet.group(sheet.root, 'Table')
  rows.forEach((row, index) => {
    const height = factHeight(sheet, row)
    if (height > pageRoom) {
      drawLongFact(sheet, table, row)
      return
    }
    const turned = sheet.need(height)
    const top = sheet.y
    if (index > 0 && !turned) sheet.rule(page.left, top, textWidth)
    const line = sheet.group(table, 'TR')
    sheet.tag(
      line,
      'TH',
      () => sheet.write(styles.label, row.label, page.left, top + rowPad + 0.4, labelWidth - 10),
      scope('Row'),
    )
    sheet.tag(line, 'TD', () =>
      sheet.write(valueStyle(row), row.value, page.left + labelWidth, top + rowPad, textWidth - labelWidth),
    )
    line.end()
    sheet.y = top + height
  })
  table.end()
  sheet.y += 6
}

/** A label whose value is longer than a page: the value below it, at full width. */
function drawLongFact(sheet: Sheet, table: Tag, row: Fact): void {
  const line = sheet.group(table, 'TR')
  const place = { x: page.left, width: textWidth }
  writeLong(sheet, line, 'TH', styles.label, row.label, place)
  writeLong(sheet, line, 'TD', valueStyle(row), row.value, place)
  line.end()
}

/** A header cell's scope, which pdfkit knows and its types do not. */
function scope(of: 'Row' | 'Column'): PDFKit.Mixins.StructureElementOptions {
  return { scope: of } as PDFKit.Mixins.StructureElementOptions
}

type Table = Kind<'table'>

const styleOf = (column: Column, total: boolean): Style =>
  total ? styles.total : column.mono === true ? styles.mono : styles.cell

/** A sheet turns left and right round on a mirrored page; lines to type keep to the left there. */
const sideOf = (sheet: Sheet, column: Column): 'left' | 'right' | undefined =>
  column.leftToRight === true && sheet.direction === 'rtl' ? 'right' : column.align

/** Left edge and inner width of each column, in points. */
function edges(columns: readonly Column[]): readonly { x: number; width: number }[] {
  let x: number = page.left
  return columns.map((column) => {
    const place = { x: x + cellPad, width: column.share * textWidth - 2 * cellPad }
    x += column.share * textWidth
    return place
  })
}

function headHeight(sheet: Sheet, { columns }: Table): number {
  const places = edges(columns)
  const heights = columns.map((column, index) =>
    sheet.measure(styles.head, column.text, places[index]?.width ?? textWidth),
  )
  return Math.max(...heights) + 2 * rowPad + 1
}

function rowHeight(sheet: Sheet, { columns }: Table, row: readonly string[], total: boolean): number {
  const places = edges(columns)
  const heights = columns.map((column, index) =>
    sheet.measure(styleOf(column, total), row[index] ?? '', places[index]?.width ?? textWidth),
  )
  return Math.max(...heights) + 2 * rowPad
}

/** The whole table when it is short, else its head and first row: what must stay together. */
export function tableStart(sheet: Sheet, table: Table): number {
  const head = headHeight(sheet, table)
  const most = table.whole === true ? table.rows.length : 12
  let all = head
  for (const row of table.rows.slice(0, most)) all += rowHeight(sheet, table, row, false)
  const room = table.whole === true ? pageRoom - 90 : wholeHeight
  const whole = table.rows.length <= most && all <= room
  if (whole) return all + 4
  const first = rowHeight(sheet, table, table.rows[0] ?? [], false)
  return head + (first > pageRoom - 40 ? longStart : first)
}

export function drawTable(sheet: Sheet, block: Table): void {
  const group = sheet.group(sheet.root, 'Table')
  sheet.need(tableStart(sheet, block))
  drawHead(sheet, block, group)
  block.rows.forEach((row, index) => {
    const total = block.lastIsTotal === true && index === block.rows.length - 1
    const height = rowHeight(sheet, block, row, total)
    if (height > pageRoom - 40) {
      drawLongRow(sheet, block, group, row)
      return
    }
    if (sheet.need(height)) drawHead(sheet, block, null)
    drawRow(sheet, block, group, { row, strand: block.strands?.rows[index], total, height })
  })
  group.end()
  sheet.rule(page.left, sheet.y, textWidth, ink.edge, 0.5)
  sheet.y += 9
}

/** The head row: tagged the first time, a running head on later pages. */
function drawHead(sheet: Sheet, block: Table, group: Tag | null): void {
  const height = headHeight(sheet, block)
  const top = sheet.y
  const places = edges(block.columns)
  sheet.decorate(() => {
    sheet.doc.rect(page.left, top, textWidth, height).fill(ink.paper)
  })
  const cell = (column: Column, index: number) => {
    const place = places[index]
    if (place !== undefined)
      sheet.write(styles.head, column.text, place.x, top + rowPad + 0.5, place.width, sideOf(sheet, column))
  }
  if (group === null) {
    sheet.decorate(() => block.columns.forEach(cell), 'Pagination')
  } else {
    const line = sheet.group(group, 'TR')
    block.columns.forEach((column, index) => {
      sheet.tag(line, 'TH', () => cell(column, index), scope('Column'))
    })
    line.end()
  }
  sheet.y = top + height
}

/** A row higher than a page: its cells below each other, at full width. */
function drawLongRow(sheet: Sheet, block: Table, group: Tag, row: readonly string[]): void {
  sheet.rule(page.left, sheet.y, textWidth)
  sheet.y += rowPad
  const line = sheet.group(group, 'TR')
  const place = { x: page.left + cellPad, width: textWidth - 2 * cellPad }
  block.columns.forEach((column, index) => {
    writeLong(sheet, line, 'TD', styleOf(column, false), row[index] ?? '', place)
  })
  line.end()
}

interface Row {
  readonly row: readonly string[]
  readonly strand: Strand | undefined
  readonly total: boolean
  readonly height: number
}

function drawRow(sheet: Sheet, block: Table, group: Tag, { row, strand, total, height }: Row): void {
  const top = sheet.y
  const places = edges(block.columns)
  sheet.rule(page.left, top, textWidth, total ? ink.edge : ink.rule, total ? 0.9 : 0.6)
  const line = sheet.group(group, 'TR')
  block.columns.forEach((column, index) => {
    const place = places[index]
    if (place === undefined) return
    if (strand !== undefined && index === block.strands?.column) {
      const cell = sheet.group(line, 'TD')
      drawStrand(sheet, cell, strand, [place.x, top + rowPad, place.x + place.width, top + rowPad + 12])
      cell.end()
      return
    }
    sheet.tag(line, 'TD', () =>
      sheet.write(
        styleOf(column, total),
        row[index] ?? '',
        place.x,
        top + rowPad,
        place.width,
        sideOf(sheet, column),
      ),
    )
  })
  line.end()
  sheet.y = top + height
}
