/** @module Console text with pauses or with times from the first frame, as `candump -t d` and `-t z` write them. */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decodeBytes, decodeLines } from '../decode/testing/decode.ts'
import { formatTime } from '../frame/index.ts'

const stamp = (microseconds: number): string =>
  `(${String(Math.floor(microseconds / 1e6)).padStart(3, '0')}.${String(microseconds % 1e6).padStart(6, '0')})`

/** One line per number: `02 3E 00` from 7E0 at these microseconds. */
const text = (microseconds: readonly number[], more = ''): string[] =>
  microseconds.map((at) => ` ${stamp(at)}  can0  7E0   [3]  02 3E 00${more}`)

const times = (lines: readonly string[]): string[] =>
  decodeLines(lines).messages.map((message) => formatTime(message.time))

const kinds = (lines: readonly string[]): string[] =>
  decodeLines(lines)
    .findings.map((finding) => finding.code)
    .filter((code) => code.startsWith('times-'))

const total = (pauses: readonly number[], index: number): number =>
  pauses.slice(0, index + 1).reduce((sum, pause) => sum + pause, 0)

describe('times of console text', () => {
  it('are added up when they go up and down from 0', () => {
    const pauses = [0, 10_000, 200, 1_500_000, 999_999, 7]
    expect(times(text(pauses))).toEqual([
      '0.000000',
      '0.010000',
      '0.010200',
      '1.510200',
      '2.510199',
      '2.510206',
    ])
    expect(kinds(text(pauses))).toEqual(['times-are-pauses'])
  })

  it('are added up when one message comes at even pauses', () => {
    expect(kinds(text([0, 100_012, 99_987, 100_004, 99_999, 100_001]))).toEqual(['times-are-pauses'])
  })

  it('are taken as they are when they only rise, or two interfaces differ by a little', () => {
    expect(kinds(text([0, 10_000, 20_000, 30_000]))).toEqual(['times-since-start'])
    expect(times(text([0, 10_000, 20_000]))).toEqual(['0.000000', '0.010000', '0.020000'])
    expect(kinds(text([0, 10_000, 20_000, 19_990, 30_000, 40_000]))).toEqual(['times-since-start'])
  })

  it('are taken as they are when they do not begin with 0, and in the log layout', () => {
    expect(kinds(text([5, 10_000, 200, 7]))).toEqual([])
    expect(
      kinds(['(0.000000) can0 7E0#023E00', '(0.010000) can0 7E0#023E00', '(0.000200) can0 7E0#023E00']),
    ).toEqual([])
  })

  it('cross no line: a damaged one loses its own pause only', () => {
    const lines = text([0, 10_000, 200, 300])
    lines.splice(2, 1, ' (000.000200)  can0  7E0   [3]  02 3E')
    expect(times(lines)).toEqual(['0.000000', '0.010000', '0.010300'])
  })

  it('PROPERTY give the same in chunks of any sizes', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat({ max: 2_000_000 }), { minLength: 200, maxLength: 300 }),
        fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 1, maxLength: 5 }),
        (drawn, chunks) => {
          const pauses = [0, ...drawn]
          const bytes = new TextEncoder().encode(`${text(pauses, ' ').join('\n')}\n`)
          const { messages } = decodeBytes(bytes, {}, chunks)
          expect(messages.map((message) => formatTime(message.time))).toEqual(
            pauses.map((_, index) => {
              const sum = total(pauses, index)
              return `${Math.floor(sum / 1e6)}.${String(sum % 1e6).padStart(6, '0')}`
            }),
          )
        },
      ),
      { numRuns: 20, seed: 3 },
    )
  })
})
