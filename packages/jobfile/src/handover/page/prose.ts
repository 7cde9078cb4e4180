/** @module Titles, headings, paragraphs, lists. */
import type { Block } from '../document/index.ts'
import { ink, type Style, styles } from './ink.ts'
import { pageRoom, writeLong } from './long.ts'
import { page, type Sheet, textWidth } from './sheet.ts'
import { wholeHeight } from './tables.ts'

type Kind<K extends Block['kind']> = Extract<Block, { kind: K }>

const noticePad = 7
const bandPad = 13
const indent = 13

/** Titles are set smaller when they are long, so that any title fits a page. */
function titleStyle(title: string): Style {
  return title.length <= 70 ? styles.title : styles.titleLong
}

export function drawTitle(sheet: Sheet, { over, title, under }: Kind<'title'>): void {
  const style = titleStyle(title)
  const inner = textWidth - 2 * bandPad
  const heights = [
    sheet.measure(styles.over, over, inner),
    sheet.measure(style, title, inner),
    sheet.measure(styles.under, under, inner),
  ] as const
  const height = heights[0] + heights[1] + heights[2] + 12 + 2 * bandPad - 4
  const top = sheet.y
  sheet.decorate(() => {
    sheet.doc.roundedRect(page.left, top, textWidth, height, 6).fill(ink.paper)
    sheet.doc.rect(page.left, top + 10, 3, height - 20).fill(ink.brass)
  })
  const x = page.left + bandPad
  let y = top + bandPad - 2
  sheet.tag(sheet.root, 'P', () => sheet.write(styles.over, over, x, y, inner))
  y += heights[0] + 6
  sheet.tag(sheet.root, 'H1', () => sheet.write(style, title, x, y, inner))
  y += heights[1] + 4
  sheet.tag(sheet.root, 'P', () => sheet.write(styles.under, under, x, y, inner))
  sheet.y = top + height + 10
}

export function drawNotice(sheet: Sheet, { text }: Kind<'notice'>): void {
  const inner = textWidth - 2 * noticePad
  const height = sheet.measure(styles.notice, text, inner) + 2 * noticePad
  sheet.need(height)
  const top = sheet.y
  sheet.decorate(() => {
    sheet.doc.roundedRect(page.left, top, textWidth, height, 4).fill(ink.brassWash)
    sheet.doc.lineWidth(0.8).dash(4, { space: 3 }).strokeColor(ink.brass)
    sheet.doc.roundedRect(page.left, top, textWidth, height, 4).stroke().undash()
  })
  sheet.tag(sheet.root, 'P', () =>
    sheet.write(styles.notice, text, page.left + noticePad, top + noticePad, inner, 'center'),
  )
  sheet.y = top + height + 8
}

const headingAbove = 13
const headingBelow = 7

export function headingHeight(sheet: Sheet, block: Kind<'heading'> | Kind<'subheading'>): number {
  if (block.kind === 'subheading') return 8 + sheet.measure(styles.subheading, block.text, textWidth) + 3
  return headingAbove + sheet.measure(styles.heading, block.text, textWidth) + headingBelow + 4
}

export function drawHeading(sheet: Sheet, block: Kind<'heading'> | Kind<'subheading'>): void {
  const main = block.kind === 'heading'
  const style = main ? styles.heading : styles.subheading
  const above = sheet.atTop ? 0 : main ? headingAbove : 8
  const top = sheet.y + above
  const height = sheet.measure(style, block.text, textWidth)
  sheet.tag(sheet.root, main ? 'H2' : 'H3', () => sheet.write(style, block.text, page.left, top, textWidth))
  sheet.y = top + height + (main ? 4 : 3)
  if (!main) return
  sheet.rule(page.left, sheet.y, textWidth, ink.brass, 0.8)
  sheet.y += headingBelow
}

function paragraphStyle({ quiet, strong }: Kind<'paragraph'>): Style {
  return quiet === true ? styles.quiet : strong === true ? styles.strong : styles.body
}

export function paragraphHeight(sheet: Sheet, block: Kind<'paragraph'>): number {
  return sheet.measure(paragraphStyle(block), block.text, textWidth) + 5
}

export function drawParagraph(sheet: Sheet, block: Kind<'paragraph'>): void {
  const style = paragraphStyle(block)
  const needed = paragraphHeight(sheet, block)
  if (needed > pageRoom) {
    writeLong(sheet, sheet.root, 'P', style, block.text, { x: page.left, width: textWidth })
    return
  }
  sheet.need(needed)
  const top = sheet.y
  let height = 0
  sheet.tag(sheet.root, 'P', () => {
    height = sheet.write(style, block.text, page.left, top, textWidth)
  })
  sheet.y = top + height + 5
}

function listItemHeight(sheet: Sheet, text: string): number {
  return sheet.measure(styles.body, text, textWidth - indent) + 3.5
}

/** All items when they are few, else the first: what must stay together. */
export function listStart(sheet: Sheet, { items }: Kind<'list'>): number {
  const first = listItemHeight(sheet, items[0] ?? '')
  if (items.length > 8) return first
  const all = items.reduce((sum, item) => sum + listItemHeight(sheet, item), 0)
  return all <= wholeHeight / 2 ? all : first
}

export function drawList(sheet: Sheet, { items }: Kind<'list'>): void {
  const list = sheet.group(sheet.root, 'L')
  for (const item of items) {
    const needed = listItemHeight(sheet, item)
    if (needed > pageRoom) {
      const entry = sheet.group(list, 'LI')
      const place = { x: page.left + indent, width: textWidth - indent }
      writeLong(sheet, entry, 'LBody', styles.body, item, place)
      entry.end()
      continue
    }
    sheet.need(needed)
    const top = sheet.y
    const middle = top + styles.body.size * 0.62
    sheet.decorate(() => {
      const x = page.left + 4
      sheet.doc
        .moveTo(x - 2.4, middle)
        .lineTo(x, middle - 2.4)
        .lineTo(x + 2.4, middle)
        .lineTo(x, middle + 2.4)
        .fill(ink.brass)
    })
    const entry = sheet.group(list, 'LI')
    let height = 0
    sheet.tag(entry, 'LBody', () => {
      height = sheet.write(styles.body, item, page.left + indent, top, textWidth - indent)
    })
    entry.end()
    sheet.y = top + height + 3.5
  }
  list.end()
  sheet.y += 2
}
