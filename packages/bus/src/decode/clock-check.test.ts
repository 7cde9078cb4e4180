/** @module N_Cr (ISO 15765-2: 1000 ms) on whole recordings, and clocks that make it useless (our own rule). */

import { describe, expect, it } from 'vitest'
import { decodeFrames, frame, short } from './testing/decode.ts'

/** One transfer of 6 + 7 bytes per consecutive frame; `gaps` in milliseconds before each consecutive frame. */
function transfer(start: number, gaps: readonly number[]) {
  const length = 6 + gaps.length * 7
  let clock = start
  return [
    frame(clock, 0x7e8, `10${length.toString(16).padStart(2, '0')}620100112233`),
    ...gaps.map((gap, index) => {
      clock += gap
      return frame(clock, 0x7e8, `2${(index + 1).toString(16)}00112233445566`)
    }),
  ]
}

describe('a pause longer than N_Cr', () => {
  it('makes a message incomplete: what came before the pause, dated there', () => {
    const { messages, findings, summary } = decodeFrames(transfer(0, [10, 1500]))
    expect(messages.map(short)).toEqual(['0.010000 7E8 62010011223300112233445566 !timeout'])
    expect(findings.map((finding) => finding.code)).toEqual(['isotp-timeout'])
    expect(summary).toMatchObject({ messages: 0, incomplete: 1 })
  })

  it('stays a pause beside prompt transfers, even when its own gaps are even', () => {
    const frames = [
      ...transfer(0, [10, 10, 10]),
      ...transfer(1000, [10, 10, 10]),
      ...transfer(2000, [2000, 2000, 2000, 2000]),
    ]
    expect(decodeFrames(frames).messages.map((message) => message.complete)).toEqual([true, true, false])
  })

  it('does not join the ends of two polls whose middle was lost', () => {
    const [first, , , last] = transfer(0, [10, 10, 10])
    const later = transfer(5000, [10, 10, 10])
    const frames = [first, transfer(0, [10])[1], later[2], later[3], last].filter((one) => one !== undefined)
    expect(decodeFrames(frames.slice(0, 4)).messages.map((message) => message.complete)).toEqual([false])
  })
})

describe('a clock that runs a thousand times too fast', () => {
  it('is told by even gaps in every transfer: the messages are whole', () => {
    const frames = [...transfer(0, [400, 5000, 4900, 5100]), ...transfer(100_000, [400, 5000, 5000])]
    expect(decodeFrames(frames).messages.map((message) => message.complete)).toEqual([true, true])
  })

  it('is not believed after one transfer with a single gap', () => {
    expect(decodeFrames(transfer(0, [400, 5000])).messages.map((message) => message.complete)).toEqual([
      false,
    ])
  })
})
