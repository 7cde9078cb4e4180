/** @module The text that the pages print, read from their content streams through the fonts' ToUnicode maps. */
import { holdsLeftToRight } from '../page/bidi.ts'
import { latin1 } from './bytes.ts'
import type { PdfFile } from './file.ts'
import {
  type Dictionary,
  isDictionary,
  Name,
  ObjectReader,
  type PdfValue,
  Ref,
  Text,
  Word,
} from './objects.ts'

/** What one page prints: its content in order, and its running parts (marked as artifacts), one text each. */
export interface PrintedPage {
  readonly content: string
  readonly running: readonly string[]
}

type GlyphText = ReadonlyMap<number, string>

/** Reads what every page prints; null for a page that cannot be read. */
export function printedPages(file: PdfFile): readonly (PrintedPage | null)[] {
  const fonts = new Map<number, GlyphText>()
  return file.pages.map((page) => {
    const dictionary = file.dictionary(page)
    const contents = dictionary?.get('Contents')
    if (!isDictionary(dictionary ?? undefined) || !(contents instanceof Ref)) return null
    const stream = file.object(contents.object)?.stream
    if (stream === null || stream === undefined) return null
    const named = pageFonts(file, dictionary, fonts)
    return new ContentReader(file.bytes.subarray(stream.from, stream.to), named).read()
  })
}

function pageFonts(
  file: PdfFile,
  page: Dictionary | null,
  known: Map<number, GlyphText>,
): ReadonlyMap<string, GlyphText> {
  const named = new Map<string, GlyphText>()
  const fonts = file.dictionary(file.dictionary(page?.get('Resources'))?.get('Font'))
  for (const [name, font] of fonts ?? []) {
    if (!(font instanceof Ref)) continue
    const glyphs = known.get(font.object) ?? glyphTexts(file, file.dictionary(font))
    known.set(font.object, glyphs)
    named.set(name, glyphs)
  }
  return named
}

/** Reads a ToUnicode map (ISO 32000-1, 9.10.3) of the form that lists the text of every glyph in ranges. */
function glyphTexts(file: PdfFile, font: Dictionary | null): GlyphText {
  const glyphs = new Map<number, string>()
  const map = font?.get('ToUnicode')
  const stream = map instanceof Ref ? file.object(map.object)?.stream : null
  if (stream === null || stream === undefined) return glyphs
  const text = latin1(file.bytes, stream.from, stream.to)
  for (const range of text.matchAll(/<([0-9a-f]{4})> <[0-9a-f]{4}> \[([^\]]*)\]/gi)) {
    const first = Number.parseInt(range[1] ?? '', 16)
    const entries = [...(range[2] ?? '').matchAll(/<([^>]*)>/g)]
    entries.forEach((entry, index) => {
      const units = (entry[1] ?? '').match(/[0-9a-f]{4}/gi) ?? []
      glyphs.set(first + index, String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16))))
    })
  }
  return glyphs
}

/** Walks a content stream: fonts, shown strings, marked content. Everything else draws no text. */
class ContentReader {
  readonly #reader: ObjectReader
  readonly #fonts: ReadonlyMap<string, GlyphText>
  readonly #marks: boolean[] = []
  readonly #running: string[] = []
  #content = ''
  /** Texts of glyphs since a mark that says they stand in reversed order; null outside of one. */
  #reversed: string[] | null = null
  #font: GlyphText = new Map()

  constructor(bytes: Uint8Array, fonts: ReadonlyMap<string, GlyphText>) {
    this.#reader = new ObjectReader(bytes)
    this.#fonts = fonts
  }

  read(): PrintedPage {
    let operands: PdfValue[] = []
    for (;;) {
      const value = this.#reader.read()
      if (value === undefined) break
      if (!(value instanceof Word)) operands.push(value)
      else {
        this.#operate(value.word, operands)
        operands = []
      }
    }
    return { content: this.#content, running: this.#running.filter((text) => text !== '') }
  }

  #operate(operator: string, operands: readonly PdfValue[]): void {
    if (operator === 'Tf') this.#font = this.#fonts.get(asName(operands[0])) ?? new Map()
    else if (operator === 'TJ' || operator === 'Tj' || operator === "'" || operator === '"')
      this.#show(operands.at(-1))
    else if (operator === 'BMC' || operator === 'BDC') {
      const artifact = asName(operands[0]) === 'Artifact'
      if (artifact && !this.#inArtifact) this.#running.push('')
      this.#marks.push(artifact || this.#inArtifact)
      if (asName(operands[0]) === 'ReversedChars') this.#reversed = []
    } else if (operator === 'EMC') {
      this.#endReversed()
      this.#marks.pop()
    }
  }

  get #inArtifact(): boolean {
    return this.#marks.at(-1) === true
  }

  #show(shown: PdfValue | undefined): void {
    const pieces = Array.isArray(shown) ? shown : [shown]
    const glyphs = pieces.flatMap((piece) => (piece instanceof Text ? this.#decode(piece.text) : []))
    if (this.#reversed === null) this.#print(glyphs.join(''))
    else this.#reversed.push(...glyphs)
  }

  /**
   * Turns reversed characters round (ISO 32000-1, 14.8.2.3.3). Letters and figures that run from left to right are
   * never drawn so; a page that claims it is read as it stands.
   */
  #endReversed(): void {
    const glyphs = this.#reversed
    this.#reversed = null
    if (glyphs === null) return
    const strange = holdsLeftToRight(glyphs.join(''))
    this.#print((strange ? glyphs : [...glyphs].reverse()).join(''))
  }

  #print(text: string): void {
    if (this.#inArtifact) this.#running.push(`${this.#running.pop() ?? ''}${text}`)
    else this.#content += text
  }

  /** Two bytes a glyph (Identity-H). A glyph without a text prints something that no record says. */
  #decode(codes: string): readonly string[] {
    const texts: string[] = []
    for (let at = 0; at < codes.length; at += 2) {
      const glyph = (codes.charCodeAt(at) << 8) | (codes.charCodeAt(at + 1) & 0xff)
      texts.push(this.#font.get(glyph) ?? '\u{F0000}')
    }
    return texts
  }
}

function asName(value: PdfValue | undefined): string {
  return value instanceof Name ? value.name : ''
}
