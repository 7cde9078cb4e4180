/** @module Whether the recorder received or sent a message, where the recording says it. */

import { describe, expect, it } from 'vitest'
import { messageLine } from '../message/json.ts'
import { decodeLines } from './testing/decode.ts'

const directions = (lines: readonly string[]): (string | undefined)[] =>
  decodeLines(lines).messages.map((message) => messageLine(message).direction)

describe('the direction of a message', () => {
  it('is that of its first frame, in logs with extra information (candump -x)', () => {
    const lines = [
      '(1.000000) can0 7E0#0322F19000000000 T',
      '(1.010000) can0 7E8#1009 R',
      '(1.020000) can0 7E8#100962F190414243 R',
      '(1.030000) can0 7E0#3000000000000000 T',
      '(1.040000) can0 7E8#2144454600000000 R',
      '(1.050000) can0 7E0#023E000000000000',
    ]
    expect(directions(lines)).toEqual(['transmitted', 'received', undefined])
  })

  it('is read from console text: RX and TX stand before the identifier (candump.c of can-utils)', () => {
    const lines = [
      ' (1436509052.249713)  can0  TX - -  7E0   [3]  02 3E 00',
      ' (1436509052.259713)  can0  RX - -  7E8   [3]  02 7E 00',
      ' (1436509052.269713)  can0  7E0   [3]  02 3E 00',
    ]
    expect(directions(lines)).toEqual(['transmitted', 'received', undefined])
  })

  it('is read from a table that has a column for it, and kept for thousands of waiting messages', () => {
    const rows = Array.from({ length: 2000 }, (_, index) =>
      index % 2 === 0 ? `${index}.5,7E0,02 3E 00,Tx` : `${index}.5,7E8,02 7E 00,Rx`,
    )
    const read = directions(['time,id,data,direction', ...rows])
    expect(read).toEqual(rows.map((_, index) => (index % 2 === 0 ? 'transmitted' : 'received')))
  })
})
