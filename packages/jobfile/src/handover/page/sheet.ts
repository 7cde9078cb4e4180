/** @module The sheets a handover document is drawn on: pages, letters, tags, and where the next line stands. */
import PDFDocument from 'pdfkit'
import { ink, type Style } from './ink.ts'
import { type Align, type Fonts, Letters, page } from './letters.ts'

export { type Fonts, page, textWidth } from './letters.ts'

/** Left, top, right, bottom in points from the upper left corner of the page. */
export type Box = readonly [left: number, top: number, right: number, bottom: number]

/** Bytes of pictures that are at hand, by their SHA-256. */
export type Pictures = ReadonlyMap<string, Uint8Array>

export type Tag = PDFKit.PDFStructureElement

/** What a document is called inside the file. */
export interface SheetOptions {
  readonly title: string
  readonly language: string
  /** Direction the language is written in: pages for a right-to-left language are mirrored. */
  readonly direction: 'ltr' | 'rtl'
  readonly madeAtMilliseconds: number
  readonly fonts: Fonts
  readonly pictures: Pictures
}

/** The catalogue of the file, which pdfkit keeps to itself. */
interface Catalogued {
  readonly _root: { readonly data: { readonly ViewerPreferences?: { data: Record<string, unknown> } } }
}

/** Draws tagged content downwards from page to page. */
export class Sheet {
  readonly doc: PDFKit.PDFDocument
  readonly root: Tag
  /** Where the next thing is drawn, in points from the top of the page. */
  y: number = page.top
  readonly direction: 'ltr' | 'rtl'
  readonly pictures: Pictures
  readonly #letters: Letters

  constructor(options: SheetOptions) {
    this.direction = options.direction
    this.pictures = options.pictures
    this.doc = new PDFDocument({
      size: 'A4',
      margins: { top: 0, bottom: 0, left: 0, right: 0 },
      bufferPages: true,
      compress: false,
      pdfVersion: '1.7',
      subset: 'PDF/A-3a',
      tagged: true,
      lang: options.language,
      displayTitle: true,
      font: null as unknown as string,
      info: {
        Title: options.title,
        Producer: 'Shearline',
        Creator: 'Shearline',
        CreationDate: instantOf(options.madeAtMilliseconds),
      },
    })
    this.#letters = new Letters(this.doc, options.fonts, options.direction)
    const preferences = (this.doc as unknown as Catalogued)._root.data.ViewerPreferences
    if (preferences !== undefined && this.direction === 'rtl') preferences.data.Direction = 'R2L'
    this.root = this.doc.struct('Document')
    this.doc.addStructure(this.root)
  }

  /** Room left on this page, in points. */
  get room(): number {
    return page.height - page.bottom - this.y
  }

  /** True when nothing stands on this page yet. */
  get atTop(): boolean {
    return this.y <= page.top
  }

  /** Begins a new page when `height` points do not fit on this one. True when it did. */
  need(height: number): boolean {
    if (height <= this.room || this.atTop) return false
    this.doc.addPage()
    this.y = page.top
    return true
  }

  /** Height of a text set in a width, in points. */
  measure(style: Style, text: string, width: number): number {
    return this.#letters.measure(style, text, width)
  }

  /** Width of a text on one line, in points. */
  widthOf(style: Style, text: string): number {
    return this.#letters.widthOf(style, text)
  }

  /** Writes a text with its upper left corner at x, y, mirrored on a mirrored page. Returns its height in points. */
  write(style: Style, text: string, x: number, y: number, width: number, align: Align = 'left'): number {
    return this.#letters.write(style, text, { x, y, width }, align)
  }

  /** Draws what a reader should be told of, under a tag. */
  tag(
    parent: Tag,
    type: string,
    draw: () => void,
    options: PDFKit.Mixins.StructureElementOptions = {},
  ): void {
    parent.add(this.doc.struct(type, options, [draw]))
  }

  /** A tag that holds other tags; end it when all of them are in. */
  group(parent: Tag, type: string, options: PDFKit.Mixins.StructureElementOptions = {}): Tag {
    const group = this.doc.struct(type, options)
    parent.add(group)
    return group
  }

  /** Draws decoration that means nothing to a reader: rules, grounds, running feet. */
  decorate(draw: () => void, type: 'Layout' | 'Pagination' = 'Layout'): void {
    this.doc.markContent('Artifact', { type })
    if (type === 'Layout') this.shape(draw)
    else draw()
    this.doc.endMarkedContent()
  }

  /** Draws shapes, no letters: mirrored on a mirrored page. */
  shape(draw: () => void): void {
    if (this.direction === 'ltr') {
      draw()
      return
    }
    this.doc.save()
    this.doc.transform(-1, 0, 0, 1, page.width, 0)
    draw()
    this.doc.restore()
  }

  /** A box of left, top, right and bottom, where it stands on this page. */
  box([left, top, right, bottom]: Box): Box {
    return this.direction === 'ltr'
      ? [left, top, right, bottom]
      : [page.width - right, top, page.width - left, bottom]
  }

  /** Draws a picture that is described in words, under its tag. */
  figure(parent: Tag, alt: string, box: Box, draw: () => void): void {
    const options = { alt, bbox: this.box(box) } as PDFKit.Mixins.StructureElementOptions
    this.tag(parent, 'Figure', draw, options)
  }

  /** A thin rule across a width. */
  rule(x: number, y: number, width: number, colour: string = ink.rule, weight = 0.6): void {
    this.decorate(() => {
      this.doc
        .lineWidth(weight)
        .strokeColor(colour)
        .moveTo(x, y)
        .lineTo(x + width, y)
        .stroke()
    })
  }

  /** Ends the document and gives its bytes. */
  finish(): Promise<Uint8Array> {
    this.root.end()
    return new Promise((resolve, reject) => {
      const chunks: Uint8Array[] = []
      this.doc.on('data', (chunk: Uint8Array) => chunks.push(chunk))
      this.doc.on('error', reject)
      this.doc.on('end', () => {
        const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0))
        let at = 0
        for (const chunk of chunks) {
          bytes.set(chunk, at)
          at += chunk.length
        }
        resolve(bytes)
      })
      this.doc.end()
    })
  }
}

/** pdfkit takes a Date. This one is made from the instant passed in; no clock is read. */
// biome-ignore lint/style/noRestrictedGlobals: a given instant in the form pdfkit wants, not the clock
export const instantOf = (milliseconds: number): Date => new Date(milliseconds)
