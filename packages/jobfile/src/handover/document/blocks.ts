/** @module What a handover document says, before anyone draws it: blocks of text in reading order. */
import type { KeyForm, TestOutcome } from '@shearline/keywork'
import type { Body } from '../../facts/index.ts'
import type { Tumbler } from '../../fold/state.ts'

/** One pin of the cylinder. `height` is -1 (lowest) to 1 (highest), 0 at the line. */
export interface Pin {
  readonly name: string
  readonly standing: string
  readonly count: string
  readonly state: Tumbler['state']
  readonly height: number
}

/** What a cell of a key's grid shows; `blank` is a place that does not apply to a new key. */
export type CellMark = TestOutcome | 'open' | 'blank'

export interface KeyRow {
  readonly name: string
  readonly before: { readonly mark: CellMark; readonly text: string }
  readonly after: { readonly mark: CellMark; readonly text: string }
}

/** A photo the record names: which one, and its description. */
export interface Photo {
  /** SHA-256 of its bytes. */
  readonly sha256: string
  readonly alt: string
}

/** A fault in one scan: reported, answered without it, or its control unit not read. */
export type StrandMark = 'reported' | 'not-reported' | 'not-read'

/** The life line of a fault over the scans, in order. */
export interface Strand {
  readonly alt: string
  readonly marks: readonly StrandMark[]
}

/** One key as a card: label colour and letter, what it is, and its grid. */
export interface KeyCard {
  readonly letter: string
  readonly title: string
  readonly colour: Body<'key-labelled'>['colour']
  readonly form: KeyForm
  readonly alt: string
  /** Drawn instead of the outline where the photo is at hand and can be carried. */
  readonly photo?: Photo
  readonly lines: readonly string[]
  readonly head: { readonly function: string; readonly before: string; readonly after: string }
  readonly rows: readonly KeyRow[]
  readonly notes: readonly string[]
}

/** A column of a table; `share` is its part of the width. */
export interface Column {
  readonly text: string
  readonly share: number
  readonly align?: 'left' | 'right'
  readonly mono?: boolean
  /** Written from the left edge also where the page is read from right to left: lines to type. */
  readonly leftToRight?: boolean
}

export type Block =
  | { readonly kind: 'title'; readonly over: string; readonly title: string; readonly under: string }
  | { readonly kind: 'notice'; readonly text: string }
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'subheading'; readonly text: string }
  | {
      readonly kind: 'paragraph'
      readonly text: string
      readonly quiet?: boolean
      readonly strong?: boolean
      /** May not stand at the foot of a page without the block below it. */
      readonly leads?: boolean
    }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | {
      readonly kind: 'facts'
      readonly rows: readonly { readonly label: string; readonly value: string; readonly mono?: boolean }[]
    }
  | {
      readonly kind: 'table'
      readonly columns: readonly Column[]
      readonly rows: readonly (readonly string[])[]
      readonly lastIsTotal?: boolean
      /** Not broken over two pages where it fits one: lines to be taken over in one go. */
      readonly whole?: boolean
      /** Life lines, one for each row, drawn in the cells of a column whose texts are empty. */
      readonly strands?: { readonly column: number; readonly rows: readonly Strand[] }
    }
  /** Lines to be filled in by hand. */
  | { readonly kind: 'signature'; readonly labels: readonly string[] }
  | { readonly kind: 'code'; readonly alt: string; readonly data: string; readonly about: string }
  | { readonly kind: 'cylinder'; readonly alt: string; readonly pins: readonly Pin[] }
  | { readonly kind: 'keys'; readonly cards: readonly KeyCard[] }
  | {
      readonly kind: 'curve'
      readonly alt: string
      /** Volts in order of time, and where each stands between first and last, 0 to 1. */
      readonly points: readonly { readonly at: number; readonly volts: number; readonly session: boolean }[]
      readonly floorVolts: number | null
      readonly floorText: string | null
      readonly scale: readonly { readonly volts: number; readonly text: string }[]
      /** What a filled and what an open point is. */
      readonly legend: readonly [session: string, outside: string]
    }

/** The whole document: what it says, in one language. */
export interface HandoverText {
  readonly language: string
  readonly direction: 'ltr' | 'rtl'
  readonly title: string
  /** Repeated at the foot of every page, beside the page number. */
  readonly running: { readonly left: string; readonly pageOf: (page: number, pages: number) => string }
  readonly blocks: readonly Block[]
}

/** The texts of a block in the order in which they are drawn and read. */
export function textsOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'title':
      return [block.over, block.title, block.under]
    case 'notice':
    case 'heading':
    case 'subheading':
    case 'paragraph':
      return [block.text]
    case 'list':
      return block.items
    case 'facts':
      return block.rows.flatMap(({ label, value }) => [label, value])
    case 'table':
      return [...block.columns.map((column) => column.text), ...block.rows.flat()]
    case 'signature':
      return block.labels
    case 'code':
      return [block.about]
    case 'cylinder':
      return block.pins.flatMap(({ name, standing, count }) => [name, standing, count])
    case 'keys':
      return block.cards.flatMap(textsOfCard)
    case 'curve':
      return [...block.scale.map((mark) => mark.text), block.floorText ?? '', ...block.legend]
  }
}

function textsOfCard(card: KeyCard): readonly string[] {
  return [
    card.letter,
    card.title,
    ...card.lines,
    card.head.function,
    card.head.before,
    card.head.after,
    ...card.rows.flatMap(({ name, before, after }) => [name, before.text, after.text]),
    ...card.notes,
  ]
}

/** Every text the pages print, in reading order; running feet and repeated table heads are not among them. */
export function printedTexts(text: HandoverText): readonly string[] {
  return text.blocks.flatMap(textsOf).filter((part) => part !== '')
}
