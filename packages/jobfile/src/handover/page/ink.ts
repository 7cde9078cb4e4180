/** @module Colours and letters of the printed page: the bench's own, chosen for white paper. Red is the line's alone. */

export const ink = {
  text: '#1d2528',
  quiet: '#525c60',
  paper: '#f6f2e9',
  sheet: '#fffdf8',
  rule: '#d9d1c0',
  edge: '#82796a',
  brass: '#b18b3b',
  brassLit: '#d6b366',
  brassDeep: '#6b4f14',
  brassWash: '#f2e6c9',
  steel: '#b9c2c8',
  steelLit: '#e2e7ea',
  steelDeep: '#5f6c74',
  housing: '#e2dbcb',
  plug: '#d3c9b4',
  bore: '#f8f4ea',
  line: '#b5352a',
  white: '#ffffff',
  black: '#000000',
} as const

/** Label colours of keys, and the ink of a letter on them. */
export const labelInk = {
  brass: { fill: '#b18b3b', letter: '#1d2528' },
  slate: { fill: '#42525a', letter: '#ffffff' },
  moss: { fill: '#5b7244', letter: '#ffffff' },
  rust: { fill: '#99572f', letter: '#ffffff' },
  sky: { fill: '#4f86a8', letter: '#ffffff' },
  plum: { fill: '#74476e', letter: '#ffffff' },
  sand: { fill: '#d6c08f', letter: '#1d2528' },
  ink: { fill: '#16191b', letter: '#ffffff' },
} as const

/** How a text is set: face, size in points, space between lines in points, colour. */
export interface Style {
  readonly face: 'regular' | 'bold' | 'mono'
  readonly size: number
  readonly gap: number
  readonly colour: string
  readonly spread?: number
}

export const styles = {
  over: { face: 'bold', size: 8.5, gap: 1, colour: ink.brassDeep, spread: 0.8 },
  title: { face: 'bold', size: 21, gap: 1, colour: ink.text },
  titleLong: { face: 'bold', size: 11, gap: 1, colour: ink.text },
  under: { face: 'regular', size: 11.5, gap: 1.5, colour: ink.quiet },
  notice: { face: 'bold', size: 9, gap: 1.5, colour: ink.brassDeep },
  heading: { face: 'bold', size: 13, gap: 1, colour: ink.text },
  subheading: { face: 'bold', size: 10, gap: 1, colour: ink.text },
  body: { face: 'regular', size: 9.2, gap: 2.4, colour: ink.text },
  strong: { face: 'bold', size: 9.2, gap: 2.4, colour: ink.text },
  quiet: { face: 'regular', size: 8.2, gap: 2, colour: ink.quiet },
  label: { face: 'regular', size: 8.6, gap: 2, colour: ink.quiet },
  value: { face: 'regular', size: 9.2, gap: 2, colour: ink.text },
  mono: { face: 'mono', size: 8.2, gap: 2.2, colour: ink.text },
  code: { face: 'mono', size: 9.6, gap: 2.2, colour: ink.text },
  hash: { face: 'mono', size: 7.4, gap: 2.2, colour: ink.text },
  head: { face: 'bold', size: 8, gap: 1.5, colour: ink.quiet },
  cell: { face: 'regular', size: 8.6, gap: 1.8, colour: ink.text },
  total: { face: 'bold', size: 9.2, gap: 1.8, colour: ink.text },
  pinName: { face: 'bold', size: 8.6, gap: 0.5, colour: ink.text },
  pinState: { face: 'regular', size: 8.2, gap: 0.5, colour: ink.text },
  pinCount: { face: 'regular', size: 7.6, gap: 0.5, colour: ink.quiet },
  letter: { face: 'bold', size: 17, gap: 0, colour: ink.white },
  cardTitle: { face: 'bold', size: 10.5, gap: 1, colour: ink.text },
  cardLine: { face: 'regular', size: 8.2, gap: 1.4, colour: ink.quiet },
  cardHead: { face: 'regular', size: 7.4, gap: 0, colour: ink.quiet },
  cardCell: { face: 'regular', size: 8.2, gap: 0.8, colour: ink.text },
  scale: { face: 'regular', size: 7.6, gap: 0, colour: ink.quiet },
  foot: { face: 'regular', size: 7.4, gap: 0, colour: ink.quiet },
} as const satisfies Record<string, Style>
