import { readScanReport } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { linesOfSource, marksOf } from './marks.ts'

const marked = (text: string) => {
  const lines = linesOfSource(text)
  return [...marksOf(readScanReport(text), lines)]
    .sort(([one], [other]) => one - other)
    .map(([line, marks]) => [
      line,
      marks.map(({ kind, from, to }) => [kind, lines[line - 1]?.slice(from, to)]),
    ])
}

describe('marks in the source', () => {
  it('stand on the heading, the code and the words that say that there is none', () => {
    expect(marked('1. Engine control\n  P0513-00 stored\nBrakes: no faults stored')).toEqual([
      [1, [['unit', 'Engine control']]],
      [2, [['code', 'P0513-00']]],
      [
        3,
        [
          ['unit', 'Brakes'],
          ['clear', 'no faults stored'],
        ],
      ],
    ])
  })

  it('stand on the cells of a table', () => {
    expect(marked('unit;code\nEngine;P0513')).toEqual([
      [
        2,
        [
          ['unit', 'Engine'],
          ['code', 'P0513'],
        ],
      ],
    ])
  })

  it('stand on the codes of JSON, in their order', () => {
    const text = JSON.stringify({ items: [{ code: 'P0513' }, { code: 'U0140-87' }] }, null, 1)
    expect(marked(text).map(([, marks]) => marks)).toEqual([[['code', 'P0513']], [['code', 'U0140']]])
  })
})
