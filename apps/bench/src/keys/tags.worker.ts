/** @module Draws the sheet of key tags away from the page; needs no connection. */
import regular from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url'
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url'
import mono from 'dejavu-fonts-ttf/ttf/DejaVuSansMono.ttf?url'
import PDFDocument from 'pdfkit'
import { encode } from 'uqr'
import { type PrintedTag, placeOfTag, sheet, type TagsAnswer, type TagsAsk } from './tag-sheet.ts'

/** The tag colours as printed: those of tokens.css. */
const colours: Readonly<Record<string, readonly [ground: string, letter: string]>> = {
  brass: ['#b18b3b', '#1c1606'],
  slate: ['#42525a', '#ffffff'],
  moss: ['#5b7244', '#ffffff'],
  rust: ['#99572f', '#ffffff'],
  sky: ['#4f86a8', '#06131c'],
  plum: ['#74476e', '#ffffff'],
  sand: ['#d6c08f', '#1c1606'],
  ink: ['#16191b', '#ffffff'],
}

addEventListener('message', (event: MessageEvent<TagsAsk>) => {
  draw(event.data).then(
    (pdf) => postMessage({ what: 'made', pdf } satisfies TagsAnswer),
    (error: unknown) => postMessage({ what: 'failed', why: String(error) } satisfies TagsAnswer),
  )
})

async function draw({ title, skip, tags }: TagsAsk): Promise<Uint8Array<ArrayBuffer>> {
  const doc = new PDFDocument({
    size: 'A4',
    margins: { top: 0, bottom: 0, left: 0, right: 0 },
    autoFirstPage: false,
    font: null as unknown as string,
    info: { Title: title, Producer: 'Shearline', Creator: 'Shearline' },
  })
  const pieces: Uint8Array[] = []
  const ended = new Promise<void>((resolve, reject) => {
    doc.on('data', (piece: Uint8Array) => pieces.push(piece))
    doc.on('end', resolve)
    doc.on('error', reject)
  })
  doc.registerFont('regular', await font(regular))
  doc.registerFont('bold', await font(bold))
  doc.registerFont('mono', await font(mono))
  let page = -1
  for (const [index, tag] of tags.entries()) {
    const place = placeOfTag(skip + index)
    if (place.page !== page) {
      doc.addPage()
      page = place.page
    }
    drawTag(doc, tag, place.x, place.y)
  }
  doc.end()
  await ended
  return new Uint8Array(await new Blob(pieces as Uint8Array<ArrayBuffer>[]).arrayBuffer())
}

async function font(address: string): Promise<ArrayBuffer> {
  const response = await fetch(address)
  if (!response.ok) throw new Error(`The font ${address} is not in this browser (${response.status}).`)
  return response.arrayBuffer()
}

function drawTag(doc: PDFKit.PDFDocument, tag: PrintedTag, x: number, y: number): void {
  const { width, height } = sheet.tag
  const mm = sheet.millimetre
  const [ground, letter] = colours[tag.colour] ?? ['#ffffff', '#000000']
  doc.rect(x, y, width, height).lineWidth(0.4).dash(2, { space: 2 }).stroke('#888888').undash()
  // The band with hole and letter hangs from the string; the code stands below or beside it.
  doc.rect(x + 1.5 * mm, y + 1.5 * mm, 24 * mm, height - 3 * mm).fill(ground)
  doc.circle(x + 6 * mm, y + 6 * mm, 2.2 * mm).fillAndStroke('#ffffff', '#888888')
  doc
    .fillColor(letter)
    .font('bold')
    .fontSize(tag.letter.length === 1 ? 54 : 38)
  doc.text(tag.letter, x + 1.5 * mm, y + (tag.letter.length === 1 ? 9 : 11) * mm, {
    width: 24 * mm,
    align: 'center',
    lineBreak: false,
  })
  doc.font('regular').fontSize(8)
  doc.text(tag.colourWord, x + 1.5 * mm, y + height - 6.2 * mm, {
    width: 24 * mm,
    align: 'center',
    lineBreak: false,
  })
  const side = 23 * mm
  drawCode(doc, tag.text, x + 31 * mm, y + 1.5 * mm, side)
  doc.fillColor('#000000').font('mono').fontSize(13)
  doc.text(tag.code, x + 26 * mm, y + 25.5 * mm, { width: 35 * mm, align: 'center', lineBreak: false })
  doc.fontSize(7.5)
  doc.text(tag.job, x + 26.5 * mm, y + 31 * mm, { width: 34 * mm, align: 'center', height: 6 * mm })
}

/** A QR code with its quiet zone of four modules (ISO/IEC 18004), as one path. */
function drawCode(doc: PDFKit.PDFDocument, text: string, x: number, y: number, side: number): void {
  const { data, size } = encode(text, { ecc: 'M', border: 4 })
  const module = side / size
  for (const [row, line] of data.entries()) {
    for (const [column, dark] of line.entries()) {
      // A hair wider, so that no printer leaves a gap between two dark modules.
      if (dark) doc.rect(x + column * module, y + row * module, module * 1.03, module * 1.03)
    }
  }
  doc.fill('#000000')
}
