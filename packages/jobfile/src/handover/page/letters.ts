/** @module Letters on a page: what a face can print, how high and wide a text is, and how it is written in any direction. */
import { tidy } from '../document/index.ts'
import { HandoverRefused } from '../refused.ts'
import { linesOf, runsRightToLeft } from './bidi.ts'
import type { Style } from './ink.ts'
import { type EmbeddedFace, type SetLine, setLine, shapedWidth } from './shaped.ts'

/** TrueType or OpenType fonts as bytes; every one is embedded as a subset. */
export interface Fonts {
  readonly regular: Uint8Array
  readonly bold: Uint8Array
  /** For codes; the regular face when absent. */
  readonly mono?: Uint8Array
}

/** A4 in points, and the margins. */
export const page = { width: 595.28, height: 841.89, left: 50, right: 50, top: 48, bottom: 58 } as const
export const textWidth: number = page.width - page.left - page.right

export type Align = 'left' | 'right' | 'center'

/** Where a text goes: upper left corner and width, in points from the upper left corner of the page. */
interface Place {
  readonly x: number
  readonly y: number
  readonly width: number
}

/** What pdfkit keeps to itself: the face that is set, and how to add to a page. */
interface Inner {
  readonly _font: EmbeddedFace
  readonly page: { readonly fonts: Record<string, unknown> }
  addContent(line: string): void
}

const replacement = '\uFFFD'

/** Measures and writes texts in the faces of a document. */
export class Letters {
  readonly #doc: PDFKit.PDFDocument
  readonly #direction: 'ltr' | 'rtl'
  readonly #faces = new Map<Style['face'], EmbeddedFace>()

  /** Opens the faces. Throws HandoverRefused when the bytes of one are not a font. */
  constructor(doc: PDFKit.PDFDocument, fonts: Fonts, direction: 'ltr' | 'rtl') {
    this.#doc = doc
    this.#direction = direction
    const { regular, bold, mono } = fonts
    for (const [face, bytes] of Object.entries({ regular, bold, mono: mono ?? regular })) {
      this.#open(face, bytes)
      this.#faces.set(face as Style['face'], (doc as unknown as Inner)._font)
    }
  }

  #face(style: Style): EmbeddedFace {
    const face = this.#faces.get(style.face)
    if (face === undefined) throw new Error('every face is opened when the sheet is made')
    return face
  }

  /** Registers a face. Throws HandoverRefused when its bytes are not a font. */
  #open(face: string, bytes: Uint8Array): void {
    this.#doc.registerFont(face, bytes)
    try {
      this.#doc.font(face)
    } catch {
      throw new HandoverRefused(
        `The bytes of the ${face} face are not a font.`,
        'Pass a TrueType or OpenType font.',
      )
    }
  }

  /** The text as the face can print it; what it lacks stands as the replacement character. */
  #printable(style: Style, text: string): string {
    const { font } = this.#face(style)
    return [...tidy(text)]
      .map((character) =>
        font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0) ? character : replacement,
      )
      .join('')
  }

  /** Height of a text set in a width, in points. */
  measure(style: Style, text: string, width: number): number {
    this.#doc.font(style.face).fontSize(style.size)
    const printable = this.#printable(style, text)
    if (runsRightToLeft(printable))
      return this.#shaped(style, printable, width).length * this.#lineHeight(style) - style.gap
    return this.#doc.heightOfString(printable, this.#options(style, width)) - style.gap
  }

  /** Width of a text on one line, in points. */
  widthOf(style: Style, text: string): number {
    this.#doc.font(style.face).fontSize(style.size)
    const printable = this.#printable(style, text)
    if (runsRightToLeft(printable)) return this.#shapedWidth(style, printable)
    return this.#doc.widthOfString(printable, { characterSpacing: style.spread ?? 0 })
  }

  /**
   * Writes a text with its upper left corner at x, y; on a mirrored page at the mirrored place, and what stands to
   * the left there stands to the right. Returns its height in points.
   */
  write(style: Style, text: string, at: Place, align: Align): number {
    const { x, y, width } = at
    const height = this.measure(style, text, width)
    this.#doc.font(style.face).fontSize(style.size).fillColor(style.colour)
    const printable = this.#printable(style, text)
    const turned = this.#direction === 'rtl'
    const place = { x: turned ? page.width - x - width : x, y, width }
    const side = turned && align !== 'center' ? (align === 'left' ? 'right' : 'left') : align
    if (runsRightToLeft(printable)) this.#writeShaped(style, printable, place, side)
    else this.#doc.text(printable, place.x, y, { ...this.#options(style, width), align: side })
    return height
  }

  #lineHeight(style: Style): number {
    return this.#doc.currentLineHeight(true) + style.gap
  }

  #shapedWidth(style: Style, text: string): number {
    return (shapedWidth(this.#face(style), text) * style.size) / 1000
  }

  /** Lines of a text with letters from right to left. Codes always run from left to right. */
  #shaped(style: Style, text: string, width: number): ReturnType<typeof linesOf> {
    const base = style.face === 'mono' ? 'ltr' : this.#direction === 'rtl' ? 'rtl' : 'auto'
    return linesOf(text, width, base, (part) => this.#shapedWidth(style, part))
  }

  #writeShaped(style: Style, text: string, place: Place, side: Align): void {
    const doc = this.#doc
    const face = this.#face(style)
    const height = this.#lineHeight(style)
    const rise = (face.ascender * style.size) / 1000
    const inner = doc as unknown as Inner
    const lines: readonly SetLine[] = this.#shaped(style, text, place.width).map((line) =>
      setLine(face, line),
    )
    doc.save()
    doc.transform(1, 0, 0, -1, 0, page.height)
    inner.page.fonts[face.id] ??= face.ref()
    lines.forEach((line, index) => {
      const room = place.width - (line.width * style.size) / 1000
      const x = place.x + (side === 'left' ? 0 : side === 'right' ? room : room / 2)
      const y = page.height - (place.y + index * height) - rise
      for (const operator of line.operators(x, y, style.size)) inner.addContent(operator)
    })
    doc.restore()
  }

  #options(style: Style, width: number): PDFKit.Mixins.TextOptions {
    return { width, lineGap: style.gap, characterSpacing: style.spread ?? 0 }
  }
}
