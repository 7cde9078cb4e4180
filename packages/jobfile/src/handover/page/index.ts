/** @module Draws a handover text on A4 pages as PDF/A-3a. */
import type { Block, HandoverText } from '../document/index.ts'
import { drawKeys, keysStart } from './cards.ts'
import { codeHeight, drawCode } from './code.ts'
import { curveHeight, drawCurve } from './curve.ts'
import { cylinderHeight, drawCylinder } from './cylinder.ts'
import { styles } from './ink.ts'
import {
  drawHeading,
  drawList,
  drawNotice,
  drawParagraph,
  drawTitle,
  headingHeight,
  listStart,
  paragraphHeight,
} from './prose.ts'
import { type Fonts, instantOf, type Pictures, page, Sheet, textWidth } from './sheet.ts'
import { drawSignature, signatureHeight } from './signature.ts'
import { drawFacts, drawTable, factsStart, tableStart } from './tables.ts'

export type { Fonts, Pictures } from './sheet.ts'

/** A file to carry inside the document. */
export interface Attachment {
  readonly name: string
  readonly description: string
  readonly bytes: Uint8Array
  /** `Source`: what the pages were made from. `Data`: what belongs to them.
   * `Alternative`: what says the same for programs (ISO 19005-3, AFRelationship). */
  readonly relationship: 'Source' | 'Data' | 'Alternative'
  /** Media type. */
  readonly type: 'application/json' | 'text/xml'
}

/** Draws the text and attaches the files. The same input gives the same bytes, in Node and in a browser. */
export async function drawHandover(
  text: HandoverText,
  fonts: Fonts,
  madeAtMilliseconds: number,
  attachments: readonly Attachment[],
  pictures: Pictures = new Map(),
): Promise<Uint8Array> {
  const { language, direction, title } = text
  const sheet = new Sheet({ title, language, direction, madeAtMilliseconds, fonts, pictures })
  text.blocks.forEach((block, index) => {
    keepTogether(sheet, text.blocks, index)
    wayOf(block).draw(sheet, block)
  })
  drawFeet(sheet, text)
  for (const { bytes, name, description, relationship, type } of attachments) {
    const options = {
      name,
      description,
      relationship,
      type,
      creationDate: instantOf(madeAtMilliseconds),
      modifiedDate: instantOf(madeAtMilliseconds),
    }
    sheet.doc.file(bytes as unknown as ArrayBuffer, options)
  }
  return sheet.finish()
}

/** How a kind of block is drawn, and the least part of it, in points, that may stand at the foot of a page. */
interface Way<B> {
  readonly draw: (sheet: Sheet, block: B) => void
  readonly start: (sheet: Sheet, block: B) => number
}

/** Keyed by every kind, so that a new kind without a way to draw it fails to compile. */
const ways: { readonly [K in Block['kind']]: Way<Extract<Block, { kind: K }>> } = {
  title: { draw: drawTitle, start: () => 0 },
  notice: { draw: drawNotice, start: () => 0 },
  heading: { draw: drawHeading, start: headingHeight },
  subheading: { draw: drawHeading, start: headingHeight },
  paragraph: { draw: drawParagraph, start: paragraphHeight },
  list: { draw: drawList, start: listStart },
  facts: { draw: drawFacts, start: factsStart },
  table: { draw: drawTable, start: tableStart },
  signature: { draw: drawSignature, start: () => signatureHeight },
  code: { draw: drawCode, start: () => codeHeight },
  cylinder: { draw: drawCylinder, start: () => cylinderHeight },
  keys: { draw: drawKeys, start: keysStart },
  curve: { draw: drawCurve, start: () => curveHeight },
}

function wayOf(block: Block): Way<Block> {
  return ways[block.kind] as Way<Block>
}

/** True when a block belongs to the one below it and may not stay behind on a page without it. */
function leads(block: Block, below: Block['kind'] | undefined): boolean {
  if (block.kind === 'heading' || block.kind === 'subheading') return true
  if (block.kind === 'paragraph' && block.leads === true) return true
  if (block.kind === 'paragraph')
    return below === 'table' || below === 'keys' || below === 'list' || below === 'signature'
  if (below === 'facts') return block.kind === 'list' || block.kind === 'code'
  return block.kind === 'facts' && below === 'curve'
}

/** A heading or a leading sentence goes to the next page unless what it stands over begins on this one. */
function keepTogether(sheet: Sheet, blocks: readonly Block[], index: number): void {
  let height = 0
  for (let at = index; at < blocks.length; at++) {
    const block = blocks[at]
    if (block === undefined) return
    height += wayOf(block).start(sheet, block)
    if (leads(block, blocks[at + 1]?.kind)) continue
    if (at > index) sheet.need(height)
    return
  }
}

/** Job, record and page number at the foot of every page. */
function drawFeet(sheet: Sheet, { running }: HandoverText): void {
  const { start, count } = sheet.doc.bufferedPageRange()
  const y = page.height - page.bottom + 22
  for (let index = 0; index < count; index++) {
    sheet.doc.switchToPage(start + index)
    sheet.rule(page.left, y - 7, textWidth)
    sheet.decorate(() => {
      sheet.write(styles.foot, running.left, page.left, y, textWidth * 0.78)
      sheet.write(styles.foot, running.pageOf(index + 1, count), page.left, y, textWidth, 'right')
    }, 'Pagination')
  }
}
