/** @module Sets a line whose letters take their shape from their neighbours, such as Arabic, through fontkit's shaper. */
import { type Line, mirrored, type Run, runsRightToLeft } from './bidi.ts'

/** The part of pdfkit's embedded font that is used here; its types leave it out. */
export interface EmbeddedFace {
  readonly id: string
  readonly scale: number
  readonly ascender: number
  readonly font: {
    layout(
      text: string,
      features: undefined,
      script: undefined,
      language: undefined,
      direction: 'ltr' | 'rtl',
    ): { readonly glyphs: readonly Glyph[]; readonly positions: readonly Position[] }
    glyphForCodePoint(codePoint: number): Glyph
    hasGlyphForCodePoint(codePoint: number): boolean
  }
  readonly subset: { readonly glyphs: number[] }
  readonly widths: (number | undefined)[]
  readonly unicode: (readonly number[] | undefined)[]
  ref(): unknown
}

interface Glyph {
  readonly id: number
  readonly advanceWidth: number
  readonly codePoints: readonly number[]
}

interface Position {
  readonly xAdvance: number
  readonly xOffset: number
  readonly yOffset: number
}

/** A glyph at its place in a run, from the run's left edge; thousandths of the letter size. */
interface Placed {
  readonly code: string
  readonly x: number
  readonly y: number
  readonly advance: number
}

interface SetRun {
  readonly glyphs: readonly Placed[]
  readonly width: number
  readonly reversed: boolean
}

/** Codes given out for a face, by glyph and the text it stands for. */
const codes = new WeakMap<EmbeddedFace, Map<string, string>>()

/**
 * The code that prints a glyph and reads as a text. One glyph may stand for several texts (a bracket that is drawn
 * turned, one shape of two letters); each pair gets a code of its own, so that what is read is what was meant.
 */
function codeOf(face: EmbeddedFace, glyph: Glyph, codePoint: number): string {
  const known = codes.get(face) ?? new Map<string, string>()
  codes.set(face, known)
  const pair = `${glyph.id} ${codePoint}`
  const given = known.get(pair)
  if (given !== undefined) return given
  const place = face.subset.glyphs.push(glyph.id) - 1
  face.widths[place] = glyph.advanceWidth * face.scale
  face.unicode[place] = [codePoint]
  const code = place.toString(16).padStart(4, '0')
  known.set(pair, code)
  return code
}

/** Words that were shaped already, by face: letters join inside a word only, and most words come again. */
const shapedWords = new WeakMap<EmbeddedFace, Map<string, SetRun>>()

/** A word or a run of blanks, shaped once for each direction. */
function wordOf(face: EmbeddedFace, text: string, reversed: boolean): SetRun {
  const known = shapedWords.get(face) ?? new Map<string, SetRun>()
  shapedWords.set(face, known)
  const key = `${reversed ? '<' : '>'}${text}`
  const shaped = known.get(key) ?? shape(face, { text, reversed })
  known.set(key, shaped)
  return shaped
}

const wordsOf = (text: string): readonly string[] => text.match(/ +|[^ ]+/g) ?? []

/** Glyphs of a run from left to right. */
function setRun(face: EmbeddedFace, { text, reversed }: Run): SetRun {
  const words = wordsOf(text).map((word) => wordOf(face, word, reversed))
  const glyphs: Placed[] = []
  let width = 0
  for (const word of reversed ? words.reverse() : words) {
    const left = width
    glyphs.push(...word.glyphs.map((glyph) => ({ ...glyph, x: glyph.x + left })))
    width += word.width
  }
  return { glyphs, width, reversed }
}

/** Shapes a word. */
function shape(face: EmbeddedFace, { text, reversed }: Run): SetRun {
  const drawn = reversed ? [...text].map(mirrored).join('') : text
  const { glyphs, positions } = face.font.layout(
    drawn,
    undefined,
    undefined,
    undefined,
    reversed ? 'rtl' : 'ltr',
  )
  const blank = face.font.glyphForCodePoint(face.font.hasGlyphForCodePoint(0x200b) ? 0x200b : 0x20)
  const carriers: Carrier[][] = []
  let pen = 0
  glyphs.forEach((glyph, index) => {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[index] ?? {}
    const read = glyph.codePoints.map((point) =>
      reversed ? (mirrored(String.fromCodePoint(point)).codePointAt(0) ?? point) : point,
    )
    const carrier = (of: Glyph, point: number, x: number, y: number): Carrier => ({
      point,
      placed: {
        code: codeOf(face, of, point),
        x: x * face.scale,
        y: y * face.scale,
        advance: of.advanceWidth * face.scale,
      },
    })
    const [first = 0xfffd, ...further] = read
    // A joined shape reads as its first letter; blanks laid on it read as the others, so that no reader has to
    // know in which order the letters of one shape come.
    carriers.push([
      carrier(glyph, first, pen + xOffset, yOffset),
      ...further.map((point) => carrier(blank, point, pen, 0)),
    ])
    pen += xAdvance
  })
  const spoken = inOrderOf(text, (reversed ? carriers.reverse() : carriers).flat())
  const placed = spoken.map((carrier) => carrier.placed)
  return { glyphs: reversed ? placed.reverse() : placed, width: pen * face.scale, reversed }
}

/** A glyph and the one character it reads as. */
interface Carrier {
  readonly point: number
  readonly placed: Placed
}

/**
 * Carriers in the order of the characters they read as. Shaping joins letters over a mark that stands between them
 * (lam, vowel, alef), and hands the mark over after the joined shape.
 */
function inOrderOf(text: string, carriers: readonly Carrier[]): readonly Carrier[] {
  const waiting = [...carriers]
  const found: Carrier[] = []
  for (const character of text) {
    const at = waiting.findIndex(({ point }) => point === character.codePointAt(0))
    // Characters were taken apart or put together: the order of the glyphs is all there is.
    if (at < 0 || at > 8) return carriers
    found.push(...waiting.splice(at, 1))
  }
  return waiting.length === 0 ? found : carriers
}

/** Width of a text as it is shaped, in thousandths of the letter size. */
export function shapedWidth(face: EmbeddedFace, text: string): number {
  return wordsOf(text).reduce((sum, word) => sum + wordOf(face, word, runsRightToLeft(word)).width, 0)
}

/** A line ready to be drawn: its width, and the operators that draw it from x, y (ISO 32000-1, 9.4). */
export interface SetLine {
  readonly width: number
  readonly operators: (x: number, y: number, size: number) => readonly string[]
}

/**
 * Sets a line. Its runs are drawn in reading order; a run from right to left is drawn from its left end under the
 * mark ReversedChars (ISO 32000-1, 14.8.2.3.3), which tells a reader to turn it round.
 */
export function setLine(face: EmbeddedFace, line: Line): SetLine {
  const runs = line.runs.map((run) => setRun(face, run))
  const lefts: number[] = []
  let width = 0
  for (const index of line.fromLeft) {
    lefts[index] = width
    width += runs[index]?.width ?? 0
  }
  const operators = (x: number, y: number, size: number): readonly string[] =>
    runs.flatMap((run, index) => {
      const left = x + ((lefts[index] ?? 0) * size) / 1000
      const shown = [
        'BT',
        `1 0 0 1 ${short(left)} ${short(y)} Tm`,
        `/${face.id} ${short(size)} Tf`,
        ...showing(run.glyphs, size),
        'ET',
      ]
      return run.reversed ? ['/ReversedChars BMC', ...shown, 'EMC'] : shown
    })
  return { width, operators }
}

/** Show operators for glyphs at their places; marks above or below the line are lifted by a text rise. */
function showing(glyphs: readonly Placed[], size: number): readonly string[] {
  const shown: string[] = []
  let pen = 0
  let rise = 0
  let pieces = ''
  const flush = () => {
    if (pieces !== '') shown.push(`[${pieces}] TJ`)
    pieces = ''
  }
  for (const glyph of glyphs) {
    if (glyph.y !== rise) {
      flush()
      shown.push(`${short((glyph.y * size) / 1000)} Ts`)
      rise = glyph.y
    }
    const gap = pen - glyph.x
    if (Math.abs(gap) > 0.05) pieces += `${short(gap)} `
    pieces += `<${glyph.code}> `
    pen = glyph.x + glyph.advance
  }
  flush()
  if (rise !== 0) shown.push('0 Ts')
  return shown
}

const short = (value: number) => String(Math.round(value * 1000) / 1000)
