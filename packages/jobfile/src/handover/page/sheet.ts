/** @module The sheets a handover document is drawn on: pages, letters, tags, and where the next line stands. */
import PDFDocument from 'pdfkit'
import { tidy } from '../document/index.ts'
import { HandoverRefused } from '../refused.ts'
import { ink, type Style } from './ink.ts'

/** TrueType or OpenType fonts as bytes; every one is embedded as a subset. */
export interface Fonts {
  readonly regular: Uint8Array
  readonly bold: Uint8Array
  /** For codes; the regular face when absent. */
  readonly mono?: Uint8Array
}

export type Tag = PDFKit.PDFStructureElement

/** What a document is called inside the file. */
export interface SheetOptions {
  readonly title: string
  readonly language: string
  readonly madeAtMilliseconds: number
  readonly fonts: Fonts
}

/** A4 in points, and the margins. */
export const page = { width: 595.28, height: 841.89, left: 50, right: 50, top: 48, bottom: 58 } as const
export const textWidth: number = page.width - page.left - page.right

/** The part of fontkit's font that says whether a character can be printed. */
interface Coverage {
  hasGlyphForCodePoint(codePoint: number): boolean
}

const replacement = '\uFFFD'

/** Draws tagged content downwards from page to page. */
export class Sheet {
  readonly doc: PDFKit.PDFDocument
  readonly root: Tag
  /** Where the next thing is drawn, in points from the top of the page. */
  y: number = page.top
  readonly #coverage = new Map<Style['face'], Coverage>()

  constructor(options: SheetOptions) {
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
    const { regular, bold, mono } = options.fonts
    for (const [face, bytes] of Object.entries({ regular, bold, mono: mono ?? regular })) {
      this.#open(face, bytes)
      const { _font } = this.doc as unknown as { _font: { font: Coverage } }
      this.#coverage.set(face as Style['face'], _font.font)
    }
    this.root = this.doc.struct('Document')
    this.doc.addStructure(this.root)
  }

  /** Registers a face. Throws HandoverRefused when its bytes are not a font. */
  #open(face: string, bytes: Uint8Array): void {
    this.doc.registerFont(face, bytes)
    try {
      this.doc.font(face)
    } catch {
      throw new HandoverRefused(
        `The bytes of the ${face} face are not a font.`,
        'Pass a TrueType or OpenType font.',
      )
    }
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

  /** The text as the face can print it; what it lacks stands as the replacement character. */
  printable(style: Style, text: string): string {
    const coverage = this.#coverage.get(style.face)
    return [...tidy(text)]
      .map((character) =>
        coverage?.hasGlyphForCodePoint(character.codePointAt(0) ?? 0) === false ? replacement : character,
      )
      .join('')
  }

  /** Height of a text set in a width, in points. */
  measure(style: Style, text: string, width: number): number {
    this.doc.font(style.face).fontSize(style.size)
    return this.doc.heightOfString(this.printable(style, text), this.#options(style, width)) - style.gap
  }

  /** Width of a text on one line, in points. */
  widthOf(style: Style, text: string): number {
    this.doc.font(style.face).fontSize(style.size)
    return this.doc.widthOfString(this.printable(style, text), { characterSpacing: style.spread ?? 0 })
  }

  /** Writes a text with its upper left corner at x, y. Returns its height in points. */
  write(
    style: Style,
    text: string,
    x: number,
    y: number,
    width: number,
    align: 'left' | 'right' | 'center' = 'left',
  ): number {
    const height = this.measure(style, text, width)
    this.doc.font(style.face).fontSize(style.size).fillColor(style.colour)
    this.doc.text(this.printable(style, text), x, y, { ...this.#options(style, width), align })
    return height
  }

  #options(style: Style, width: number): PDFKit.Mixins.TextOptions {
    return { width, lineGap: style.gap, characterSpacing: style.spread ?? 0 }
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
    draw()
    this.doc.endMarkedContent()
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
