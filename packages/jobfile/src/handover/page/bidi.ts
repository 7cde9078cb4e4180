/** @module Lines of text in scripts that run from right to left, mixed with others: Unicode bidirectional algorithm (UAX #9). */
import bidiFactory, { type Bidi } from 'bidi-js'

const bidi = (bidiFactory as unknown as () => Bidi)()

/** Hebrew, Arabic and their neighbours, with presentation forms: what makes a text more than left to right. */
const rightToLeft = /[\u0590-\u08FF\uFB1D-\uFDFF\uFE70-\uFEFC\u{10800}-\u{10FFF}\u{1E800}-\u{1EFFF}]/u

/** True when a text holds a character of a script that runs from right to left. */
export function runsRightToLeft(text: string): boolean {
  return rightToLeft.test(text)
}

/** True when a text holds a letter or figure that no reordering ever turns round: classes L, EN and AN. */
export function holdsLeftToRight(text: string): boolean {
  return [...text].some((character) => ['L', 'EN', 'AN'].includes(bidi.getBidiCharTypeName(character)))
}

/** A stretch of one direction. `text` is in reading order. */
export interface Run {
  readonly text: string
  readonly reversed: boolean
}

/** A line: its runs in reading order, and the order in which they stand from left to right. */
export interface Line {
  readonly runs: readonly Run[]
  readonly fromLeft: readonly number[]
}

/**
 * Cuts a text into lines no wider than `width` and each line into runs. `widthOf` measures a word. A word that is
 * wider than a line is cut between characters. `base` is the direction of the paragraph; `auto`
 * takes that of its first letter.
 */
export function linesOf(
  text: string,
  width: number,
  base: 'ltr' | 'rtl' | 'auto',
  widthOf: (text: string) => number,
): readonly Line[] {
  const { levels } = bidi.getEmbeddingLevels(text, base)
  return breaks(text, width, widthOf).map(([from, to]) => lineOf(text, levels, from, to))
}

/** Where lines begin and end: greedy, at blanks. The blank at a break belongs to no line. */
function breaks(
  text: string,
  width: number,
  widthOf: (text: string) => number,
): readonly (readonly [from: number, to: number])[] {
  const found: [number, number][] = []
  let from = 0
  let to = 0
  for (const match of text.matchAll(/\S+/g)) {
    const end = match.index + match[0].length
    if (to > from && widthOf(text.slice(from, end)) > width) {
      found.push([from, to])
      from = match.index
    }
    to = end
    while (widthOf(text.slice(from, to)) > width) {
      const cut = cutOf(text.slice(from, to), width, widthOf)
      if (cut >= to - from) break
      found.push([from, from + cut])
      from += cut
    }
  }
  found.push([from, to])
  return found
}

/** How many characters of a word fit a width; at least one. */
function cutOf(word: string, width: number, widthOf: (text: string) => number): number {
  const characters = [...word]
  let low = 1
  let high = characters.length
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (widthOf(characters.slice(0, middle).join('')) <= width) low = middle
    else high = middle - 1
  }
  return characters.slice(0, low).join('').length
}

function lineOf(text: string, levels: Uint8Array, from: number, to: number): Line {
  const stretches: { level: number; from: number; to: number }[] = []
  for (let at = from; at < to; at++) {
    const level = levels[at] ?? 0
    const last = stretches.at(-1)
    if (last?.level === level) last.to = at + 1
    else stretches.push({ level, from: at, to: at + 1 })
  }
  return {
    runs: stretches.map((one) => ({ text: text.slice(one.from, one.to), reversed: one.level % 2 === 1 })),
    fromLeft: reordered(stretches.map(({ level }) => level)),
  }
}

/** Rule L2: from the highest level down, every unbroken sequence at that level or above is turned round. */
function reordered(levels: readonly number[]): readonly number[] {
  const order = levels.map((_, index) => index)
  const levelAt = (place: number) => levels[order[place] ?? 0] ?? 0
  for (let level = Math.max(0, ...levels); level > 0; level--) {
    for (let start = 0; start < order.length; start++) {
      let end = start
      while (end < order.length && levelAt(end) >= level) end++
      if (end - start > 1) order.splice(start, end - start, ...order.slice(start, end).reverse())
      start = Math.max(start, end)
    }
  }
  return order
}

/** The character that is drawn for a bracket in a run that stands reversed (rule L4). */
export function mirrored(character: string): string {
  return bidi.getMirroredCharacter(character) ?? character
}
