/**
 * @module Which identifiers are taken for diagnostics. The ranges are those of ISO 15765-4 and ISO 15765-2; that any
 * other identifier must prove itself, and how, is our own rule.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decodeFrames, decodeLines, frame, short } from '../decode/testing/decode.ts'
import type { CanFrame } from '../frame/index.ts'
import { standardAddressing, usualPeers } from './standard.ts'

const ids = (frames: readonly CanFrame[]): string[] => [
  ...new Set(decodeFrames(frames).messages.map((message) => message.id)),
]

/** `7E8 1014...` per frame, one every 10 ms. */
function play(...lines: readonly string[]): CanFrame[] {
  return lines.map((line, index) => {
    const [id, data] = line.split(' ') as [string, string]
    return frame(index * 10, Number.parseInt(id, 16), data, index + 1)
  })
}

describe('the standards', () => {
  it('set aside 700-7FF and the 29-bit formats DA, DB, CD, CE at any priority', () => {
    expect(standardAddressing(0x7df, false)).toBe('normal')
    expect(standardAddressing(0x6ff, false)).toBeUndefined()
    expect(standardAddressing(0x18daf110, true)).toBe('normal')
    expect(standardAddressing(0x14dbfef1, true)).toBe('normal')
    expect(standardAddressing(0x18cef110, true)).toBe('mixed')
    expect(standardAddressing(0x19daf110, true)).toBeUndefined()
    expect(standardAddressing(0x0cf00400, true)).toBeUndefined()
  })

  it('say which identifiers usually answer which', () => {
    expect(usualPeers(0x7e0, false)[0]).toBe(0x7e8)
    expect(usualPeers(0x7ed, false)[0]).toBe(0x7e5)
    expect(usualPeers(0x18da10f1, true)).toEqual([0x18daf110])
    expect(usualPeers(0x123, false)).toEqual([])
  })
})

describe('identifiers outside the standards', () => {
  it('are shown when one asks and the other answers', () => {
    const exchange = play(
      '641 023E00',
      '651 027E00',
      '641 021003',
      '651 065003003201F4',
      '641 0322F190',
      '651 037F2231',
    )
    expect(ids(exchange)).toEqual(['641', '651'])
  })

  it('are shown when a scan asks at least four of them once each, answers equally far away', () => {
    const asked = (count: number): CanFrame[] =>
      play(
        ...Array.from({ length: count }, (_, unit) => {
          const id = 0x640 + unit * 16
          return [`${id.toString(16)} 031902FF`, `${(id + 8).toString(16)} 035902FF`]
        }).flat(),
      )
    expect(ids(asked(4))).toHaveLength(8)
    expect(ids(asked(3))).toEqual([])
    const uneven = ['641 031902FF', '651 035902FF', '661 031902FF', '669 035902FF']
    expect(ids(play(...uneven, '681 031902FF', '68A 035902FF', '691 031902FF', '69C 035902FF'))).toEqual([])
  })

  it('are shown when a segmented message ran under flow control', () => {
    expect(ids(play('241 1008360011223344', '641 300000', '241 215566'))).toEqual(['241'])
  })

  it('are shown when they send whole segmented answers only', () => {
    const answer = ['5E8 1008620100112233', '5E8 214455']
    expect(ids(play(...answer, ...answer, ...answer))).toEqual(['5E8'])
    expect(ids(play(...answer))).toEqual([])
  })

  it('are shown from their first message on, when the proof comes later', () => {
    const { messages } = decodeFrames(
      play(
        '641 0322F187',
        '123 0000',
        '651 0462F18741',
        '641 0322F190',
        '651 037F2231',
        '641 023E00',
        '651 027E00',
      ),
    )
    expect(messages.map(short)[0]).toBe('0.000000 641 22f187')
    expect(messages).toHaveLength(6)
  })

  it('are not shown when their bytes only look like it', () => {
    const cyclic = Array.from({ length: 50 }, () => ['3C9 0766000000000000', '1F1 050A000008000070']).flat()
    expect(ids(play(...cyclic))).toEqual([])
    const counter = Array.from({ length: 60 }, (_, n) => [
      `0C0 04${(n * 7).toString(16).padStart(2, '0')}112233`,
      `0C8 04${(n + 64).toString(16).padStart(2, '0')}112233`,
    ]).flat()
    expect(ids(play(...counter))).toEqual([])
  })

  it('that send what no transfer can be are not shown, and nothing is told of them', () => {
    const marker = Array.from({ length: 5 }, () => '00A 4543555245534554')
    const { messages, findings } = decodeFrames(play(...marker, '201 54D4001CF1', '201 28D000F7FC'))
    expect(messages).toEqual([])
    expect(findings).toEqual([])
  })

  it('PROPERTY random plain traffic is hardly ever taken for diagnostics', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 15 }), fc.uint8Array({ minLength: 8, maxLength: 8 })), {
          minLength: 50,
          maxLength: 400,
          size: 'max',
        }),
        (traffic) => {
          const frames = traffic.map(([sender, data], index) => ({
            ...frame(index, 0x100 + sender, ''),
            data,
          }))
          expect(decodeFrames(frames).messages).toEqual([])
        },
      ),
      { numRuns: 200, seed: 1 },
    )
  })
})

describe('identifiers inside the standards', () => {
  it('are shown without any proof', () => {
    expect(ids(play('725 0210035555555555', '7BB 0462010141'))).toEqual(['725', '7BB'])
  })

  it('are given up when most of their frames are no ISO-TP', () => {
    const plain = Array.from({ length: 40 }, (_, n) => `77A ${(0x80 + n).toString(16)}11223344556677`)
    const { messages, findings } = decodeFrames(play(...plain))
    expect(messages).toEqual([])
    expect(findings).toEqual([])
  })

  it('are given up when their messages hold no service any standard knows', () => {
    expect(ids(play(...Array.from({ length: 20 }, () => '77A 03B2112233000000')))).toEqual([])
  })
})

describe('named identifiers', () => {
  const lines = ['(1.0) can0 123#023E00', '(1.1) can0 7E0#023E00']

  it('are the only ones shown', () => {
    expect(decodeLines(lines, { ids: [{ id: 0x123, extended: false }] }).messages.map(short)).toEqual([
      '1.0 123 3e00',
    ])
  })

  it('may be read with extended addressing: the address byte is part of the name', () => {
    const lines = ['(1.0) can0 6F1#1203220102', '(1.1) can0 612#F10462010241', '(1.2) can0 6F1#40023E00']
    const named = [0x6f1, 0x612].map((id) => ({ id, extended: false, addressing: 'extended' as const }))
    expect(decodeLines(lines, { ids: named }).messages.map(short)).toEqual([
      '1.0 6F1-12 220102',
      '1.1 612-F1 62010241',
      '1.2 6F1-40 3e00',
    ])
  })

  it('with mixed 29-bit addressing are recognised by their format byte', () => {
    expect(decodeLines(['(1.0) can0 18CE10F1#20023E00']).messages.map(short)).toEqual([
      '1.0 18CE10F1-20 3e00',
    ])
  })
})
