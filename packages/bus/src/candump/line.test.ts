/**
 * @module Lines of candump text. Layout: `can-utils` (lib.c); examples below are written by hand after its manual.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatTime } from '../frame/index.ts'
import { ReusedFrame } from '../frame/reused.ts'
import type { LineFault } from './faults.ts'
import { LineParser } from './line.ts'
import { plainFrame } from './testing/reference.ts'

function parse(line: string): ReusedFrame | LineFault {
  const frame = new ReusedFrame()
  const bytes = new TextEncoder().encode(line)
  return new LineParser(frame).parse(bytes, 0, bytes.length) ?? frame
}

function read(line: string): string {
  const frame = parse(line)
  if (typeof frame === 'string') return frame
  const flags = [
    frame.extended && 'ext',
    frame.fd && 'fd',
    frame.remote && 'rtr',
    frame.error && 'err',
  ].filter(Boolean)
  const data = Buffer.from(frame.data).toString('hex')
  return `${formatTime(frame.time)} ${frame.channel} ${frame.id.toString(16)} [${flags.join(' ')}] ${data}`
}

describe('the log layout', () => {
  it.each([
    ['(1436509052.249713) vcan0 044#2A366C2BBA', '1436509052.249713 vcan0 44 [] 2a366c2bba'],
    ['(0000000000.000000) can1 7DF#0201000000000000', '0.000000 can1 7df [] 0201000000000000'],
    ['(1.5) can0 18DAF110#023E00 R', '1.5 can0 18daf110 [ext] 023e00'],
    ['(1.500000000) can0 18DAF110#023E00 T', '1.500000000 can0 18daf110 [ext] 023e00'],
    ['(1.000000) can0 123#', '1.000000 can0 123 [] '],
    ['(1.000000) can0 123#R', '1.000000 can0 123 [rtr] '],
    ['(1.000000) can0 123#R8', '1.000000 can0 123 [rtr] '],
    [
      '(1.000000) can0 00000123##1AABBCCDDEEFF00112233AABB',
      '1.000000 can0 123 [ext fd] aabbccddeeff00112233aabb',
    ],
    ['(1.000000) can0 123##0', '1.000000 can0 123 [fd] '],
    ['(1.000000) can0 20000080#0000000000000000', '1.000000 can0 80 [err] 0000000000000000'],
    ['(1.000000) can0 123#1122334455667788_B', '1.000000 can0 123 [] 1122334455667788'],
    ['(2024-03-05 12:34:56.250000) can0 123#11', '1709642096.250000 can0 123 [] 11'],
  ])('%s', (line, expected) => {
    expect(read(line)).toBe(expected)
  })

  it.each<[string, LineFault]>([
    ['', 'empty'],
    ['# made by hand', 'comment'],
    ['(abc) can1 7DF#0201', 'time'],
    ['(1.0', 'cut'],
    ['(1.0)', 'cut'],
    ['(1.0) can0', 'cut'],
    ['(1.0) can0 7DF', 'cut'],
    ['(1.0) can0 17DF#0201', 'id-digits'],
    ['(1.0) can0 FFF#0201', 'id-range'],
    ['(1.0) can0 98DAF110#0201', 'id-range'],
    ['(1.0) can0 7DF#020', 'odd-nibbles'],
    ['(1.0) can0 7DF#02GG', 'not-hex'],
    ['(1.0) can0 7DF#020100000000000011', 'too-long-data'],
    ['(1.0) can0 7DF##1020100000000000011', 'fd-length'],
    ['(1.0) can0 7DF#R0201', 'remote-junk'],
    ['(1.0) can0 7DF#R9', 'remote-junk'],
    ['(1.0) can0 7DF#0201 R what', 'junk'],
    ['(1.0) a-name-that-is-too-long 7DF#0201', 'channel'],
    ['(1.0) can0 00000123#81:00:00000000#AABB', 'can-xl'],
  ])('%s is refused', (line, fault) => {
    expect(parse(line)).toBe(fault)
  })
})

describe('the console layout', () => {
  it.each([
    ['  can0  7DF   [8]  02 01 00 00 00 00 00 00', '0 can0 7df [] 0201000000000000'],
    [" (1436509052.249713)  can0  7DF   [2]  02 01   '..'", '1436509052.249713 can0 7df [] 0201'],
    [' (000.000123)  can0  TX B E  18DAF110   [3]  02 3E 00', '0.000123 can0 18daf110 [ext] 023e00'],
    [
      '  can0  RX - -  123  [12]  00 01 02 03 04 05 06 07 08 09 0A 0B',
      '0 can0 123 [fd] 000102030405060708090a0b',
    ],
    ['  can0  123   [0]  remote request', '0 can0 123 [rtr] '],
    ['  can0  20000080   [8]  00 00 00 00 00 00 00 00   ERRORFRAME', '0 can0 80 [err] 0000000000000000'],
    ['  can0  123   [0]', '0 can0 123 [] '],
  ])('%s', (line, expected) => {
    expect(read(line)).toBe(expected)
  })

  it.each<[string, LineFault]>([
    ['  can0  7DF   [8]  02 01', 'length-differs'],
    ['  can0  7DF   [1]  02 01', 'length-differs'],
    ['  can0  7DF   [9]  02 01 00 00 00 00 00 00 00', 'too-long-data'],
    ['  can0  7DF   [2]  02 0', 'odd-nibbles'],
    ['  can0  7DF   [8', 'cut'],
    ['  can0  7DF   02 01', 'junk'],
  ])('%s is refused', (line, fault) => {
    expect(parse(line)).toBe(fault)
  })
})

describe('the fast parser and the plain reading', () => {
  const pairs = (counts: readonly number[]) =>
    fc
      .constantFrom(...counts)
      .chain((count) => fc.uint8Array({ minLength: count, maxLength: count }))
      .map((bytes) => Buffer.from(bytes).toString('hex').toUpperCase())
  const contents = fc.oneof(
    pairs([0, 1, 2, 3, 4, 5, 6, 7, 8, 8, 8, 8, 9]),
    pairs([0, 8, 12, 16, 20, 24, 32, 48, 64, 9, 65]).map((hex) => `#1${hex}`),
    pairs([8, 7]).map((hex) => `${hex}_B`),
    fc.constantFrom('R', 'R0', 'R8', 'R8_E', 'R9', 'R12'),
  )
  const wellFormed = fc
    .tuple(
      fc.stringMatching(/^\d{1,11}(\.\d{0,10})?$/),
      fc.constantFrom('can0', 'vcan12', 'a', 'abcdefghijklmno', 'abcdefghijklmnop'),
      fc.oneof(fc.stringMatching(/^[0-8][0-9A-Fa-f]{2}$/), fc.stringMatching(/^[0-3][0-9A-F]{7}$/)),
      contents,
      fc.constantFrom('', ' R', ' T', ' ', '\t', ' X'),
    )
    .map(([time, channel, id, data, end]) => `(${time}) ${channel} ${id}#${data}${end}`)
  const line = fc.oneof(
    wellFormed,
    fc
      .tuple(
        wellFormed,
        fc.nat(),
        fc.constantFrom('', ' ', '#', '_', '0', 'A', 'g', 'R', '.', ')'),
        fc.nat({ max: 2 }),
      )
      .map(([text, place, put, taken]) => {
        const where = place % text.length
        return text.slice(0, where) + put + text.slice(where + taken)
      }),
  )

  it('agree on every line that begins with a time and holds a #', () => {
    fc.assert(
      fc.property(line, (text) => {
        fc.pre(text.startsWith('(') && text.includes('#'))
        const plain = plainFrame(text)
        const fast = parse(text)
        if (plain === undefined) {
          expect(typeof fast).toBe('string')
          return
        }
        expect(fast).toMatchObject({
          channel: plain.channel,
          id: plain.id,
          extended: plain.extended,
          error: plain.error,
          remote: plain.remote,
          fd: plain.fd,
          time: {
            seconds: plain.seconds,
            decimals: plain.fraction.length,
            nanoseconds: Number(plain.fraction.padEnd(9, '0')),
          },
        })
        expect([...(fast as ReusedFrame).data]).toEqual(plain.data)
      }),
      { numRuns: 5000 },
    )
  })

  it('never throws, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 120 }), (bytes) => {
        const fault = new LineParser(new ReusedFrame()).parse(bytes, 0, bytes.length)
        expect(fault === undefined || typeof fault === 'string').toBe(true)
      }),
      { numRuns: 2000 },
    )
  })
})
