/**
 * @module Address bytes found from evidence (ISO 15765-2 extended and mixed addressing on 11-bit identifiers). The
 * frames are laid out by hand from the standard's tables; no recording of the test set has such identifiers.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { DiagnosticId } from '../decode/senders.ts'
import { decodeFrames, frame, short } from '../decode/testing/decode.ts'
import type { CanFrame } from '../frame/index.ts'
import { segment } from '../isotp/segment.ts'

function play(lines: readonly string[]): CanFrame[] {
  return lines.map((line, index) => {
    const [id, data] = line.split(' ') as [string, string]
    return frame(index * 10, Number.parseInt(id, 16), data, index + 1)
  })
}

const read = (lines: readonly string[]): string[] =>
  decodeFrames(play(lines)).messages.map((message) => short(message).slice(9))

const found = (frames: readonly CanFrame[]): unknown[] =>
  decodeFrames(frames).findings.filter((finding) => finding.code === 'address-byte-found')

const EXTENDED = [
  // One tester, F1, asks unit 12: the answer of 20 bytes runs under flow control that names the unit.
  '6F1 120322F190',
  '612 F1101462F1903141',
  '6F1 12300000',
  '612 F121313131313131',
  '612 F122313131313131',
  '612 F123313131',
  // Unit 40 answers once only, and all are asked by address DF.
  '6F1 4003190209',
  '640 F1047F191278',
  '6F1 DF023E80',
]

describe('extended addressing', () => {
  it('is found from one segmented answer, and the messages before it are read too', () => {
    expect(read(EXTENDED)).toEqual([
      '6F1-12 22f190',
      '612-F1 62f1903141313131313131313131313131313131',
      '6F1-40 190209',
      '640-F1 7f191278',
      '6F1-DF 3e80',
    ])
  })

  it('is told once for each identifier, with the reason', () => {
    const findings = decodeFrames(play(EXTENDED)).findings
    expect(findings.map((finding) => finding.params)).toMatchObject([
      { id: '6F1', addressing: 'extended' },
      { id: '612', addressing: 'extended' },
      { id: '640', addressing: 'extended' },
    ])
    expect(findings[1]?.what).toContain('ran under flow control')
  })

  it('is found from single frames once two services were answered', () => {
    expect(
      read([
        '6F1 29021003',
        '629 F1065003003201F4',
        '6F1 29023E00',
        '629 F1027E00',
        '6F1 2903221001',
        '629 F1037F2231',
      ]),
    ).toEqual([
      '6F1-29 1003',
      '629-F1 5003003201f4',
      '6F1-29 3e00',
      '629-F1 7e00',
      '6F1-29 221001',
      '629-F1 7f2231',
    ])
  })

  it('is found on identifiers of the standards too', () => {
    const moved = EXTENDED.map((line) => line.replace(/^6/, '7'))
    expect(read(moved)[0]).toBe('7F1-12 22f190')
  })

  it('is found where an address looks like a length or a frame type', () => {
    for (const unit of ['02', '05', '10', '21', '30']) {
      const lines = EXTENDED.slice(0, 6).map((line) => line.replace('6F1 12', `6F1 ${unit}`))
      expect(read(lines), unit).toContain('612-F1 62f1903141313131313131313131313131313131')
      expect(read(lines)[0], unit).toBe(`6F1-${unit} 22f190`)
    }
  })

  it('is looked for among named identifiers unless their addressing is named too', () => {
    const id = (id: number, addressing?: 'normal'): DiagnosticId => ({
      id,
      extended: false,
      ...(addressing === undefined ? {} : { addressing }),
    })
    const named = (...ids: DiagnosticId[]): string[] =>
      decodeFrames(play(EXTENDED), { ids }).messages.map((message) => message.id)
    expect(named(id(0x6f1), id(0x612))).toEqual(['6F1-12', '612-F1', '6F1-40', '6F1-DF'])
    expect(named(id(0x6f1, 'normal'), id(0x612, 'normal')).join()).not.toContain('-')
  })

  it('is not found where nobody answers', () => {
    expect(read(EXTENDED.filter((line) => line.startsWith('6F1')))).toEqual([])
  })
})

describe('mixed addressing', () => {
  it('is found where both sides carry the same extension byte', () => {
    const lines = [
      '748 AC0322F190',
      '749 AC101462F1903141',
      '748 AC300000',
      '749 AC21313131313131',
      '749 AC22313131313131',
      '749 AC23313131',
    ]
    expect(read(lines)).toEqual(['748-AC 22f190', '749-AC 62f1903141313131313131313131313131313131'])
    expect(found(play(lines))).toMatchObject([
      { params: { id: '748', addressing: 'mixed' } },
      { params: { id: '749', addressing: 'mixed' } },
    ])
  })
})

describe('normal addressing', () => {
  const payload = fc.uint8Array({ minLength: 1, maxLength: 60 })

  it('is never taken for it: requests and answers of any content, on any identifiers', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(0x641, 0x6f1, 0x7e0, 0x7df), payload, payload), {
          minLength: 1,
          maxLength: 30,
        }),
        (exchanges) => {
          const frames: CanFrame[] = []
          const put = (id: number, data: Uint8Array): void => {
            frames.push({ ...frame(frames.length * 5, id, ''), data })
          }
          for (const [id, asked, answered] of exchanges) {
            const service = (asked[0] as number) & 0x3f
            for (const data of segment(Uint8Array.of(service, ...asked), { padding: 0 })) put(id, data)
            const answer = Uint8Array.of(service | 0x40, ...answered)
            for (const data of segment(answer, { padding: 0 })) put(id + 8, data)
          }
          expect(found(frames)).toEqual([])
        },
      ),
      { numRuns: 300, seed: 11 },
    )
  })

  it('is never taken for it: noise', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(0x100, 0x321, 0x612, 0x6f1), fc.uint8Array({ maxLength: 8 })), {
          maxLength: 400,
        }),
        (noise) => {
          const frames = noise.map(([id, data], index) => ({ ...frame(index, id, ''), data }))
          expect(found(frames)).toEqual([])
        },
      ),
      { numRuns: 200, seed: 12 },
    )
  })
})
