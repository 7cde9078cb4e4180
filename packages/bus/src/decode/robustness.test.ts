/** @module Whatever the bytes hold, nothing throws, memory stays bounded, and the size of the chunks changes nothing. */

import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { gzipSync } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { continueToSend, segment } from '../isotp/segment.ts'
import { pcap, socketCan } from '../pcap/testing/build.ts'
import { PcapngWriter } from '../pcap/write.ts'
import { decodeCapture } from './decode-capture.ts'
import { at, decodeBytes, decodeFrames, decodeLines, frame, short } from './testing/decode.ts'

const text = (lines: readonly string[]): Uint8Array => new TextEncoder().encode(`${lines.join('\n')}\n`)

const LOG = text([
  '(1.000000) can0 7DF#0209025555555555',
  '(1.010000) can0 7E8#1014490201303030',
  '(1.011000) can0 7E0#3000000000000000',
  '(1.020000) can0 7E8#2130303030303030',
  '(1.021000) can0 123#0011223344556677',
  '(1.030000) can0 7E8#2230303030303030',
  '(1.040000) can0 18DA10F1#0322F190',
  '(1.050000) can0 18DAF110#037F2231',
])

const PCAP = pcap(
  Array.from({ length: 12 }, (_, index) => ({
    seconds: index,
    fraction: index,
    data: socketCan(index % 2 === 0 ? 0x7e0 : 0x7e8, [2, index % 2 === 0 ? 0x3e : 0x7e, 0]),
  })),
  { littleEndian: true, linkType: 227 },
)

const PCAPNG = (() => {
  const writer = new PcapngWriter()
  return Buffer.concat([
    writer.header(),
    ...segment(Uint8Array.from({ length: 40 }, (_, index) => 0x62 + index)).map((data, index) =>
      writer.frame({ ...frame(index, 0x7e8, ''), data }),
    ),
  ])
})()

const SAMPLES: readonly (readonly [string, Uint8Array])[] = [
  ['candump', LOG],
  ['pcap', PCAP],
  ['pcapng', new Uint8Array(PCAPNG)],
  ['gzip', new Uint8Array(gzipSync(LOG))],
]

describe.each(SAMPLES)('a recording as %s', (name, bytes) => {
  it('is recognised by content, with a reason', () => {
    const { recognised } = decodeBytes(bytes)
    expect(recognised.format).toBe(name)
    expect(recognised.reason.length).toBeGreaterThan(10)
  })

  it('comes to the same in chunks of any sizes', () => {
    const whole = decodeBytes(bytes)
    expect(whole.messages.length).toBeGreaterThan(0)
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 1, maxLength: 8 }), (chunks) => {
        expect(decodeBytes(bytes, {}, chunks)).toEqual(whole)
      }),
      { numRuns: 60 },
    )
  })

  it('cut at every byte, it ends without an exception', () => {
    for (let length = 0; length < bytes.length; length++) decodeBytes(bytes.subarray(0, length), {}, [17])
  })

  it('with any bytes changed, it ends without an exception, and findings have a place', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat({ max: bytes.length - 1 }), fc.nat({ max: 255 })), { maxLength: 12 }),
        (changes) => {
          const damaged = bytes.slice()
          for (const [place, value] of changes) damaged[place] = value
          const { findings } = decodeBytes(damaged, {}, [64])
          for (const finding of findings) {
            expect(finding.where.line ?? finding.where.byteOffset).toBeGreaterThanOrEqual(0)
            expect(finding.what).not.toBe('')
            expect(finding.doNext).not.toBe('')
          }
        },
      ),
      { numRuns: 400 },
    )
  })
})

describe('anything else', () => {
  it('any bytes end without an exception', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 3000 }), (bytes) => {
        decodeBytes(bytes, {}, [100])
      }),
    )
  })

  it('any bytes after a good beginning end without an exception', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SAMPLES), fc.uint8Array({ maxLength: 3000 }), ([, good], bytes) => {
        decodeBytes(Buffer.concat([good, bytes]), {}, [777])
      }),
    )
  })

  it('is unknown, with a reason and a finding, and nothing is read', () => {
    for (const bytes of [new Uint8Array(0), new Uint8Array(9000), text(['hello', 'world'])]) {
      const { recognised, findings, messages } = decodeBytes(bytes, {}, [1000])
      expect(recognised.format).toBe('unknown')
      expect(findings.map((finding) => finding.code)).toEqual(['format-unknown'])
      expect(messages).toEqual([])
    }
  })
})

/** Collects garbage at once, as Node does not let everybody. */
function collectGarbage(): void {
  setFlagsFromString('--expose-gc')
  const collect = runInNewContext('gc') as () => void
  collect()
}

describe('memory stays bounded', () => {
  /** Pushes the same chunk over and over and says by how much the heap grew, in bytes. */
  function growth(start: Uint8Array, chunk: Uint8Array, times: number): number {
    const decoding = decodeCapture({})
    decoding.push(start)
    const before = process.memoryUsage()
    for (let time = 0; time < times; time++) decoding.push(chunk)
    const after = process.memoryUsage()
    decoding.end()
    return after.heapUsed - before.heapUsed + (after.arrayBuffers - before.arrayBuffers)
  }
  const MB = 1 << 20

  it('over 200 MB of zeros after a line of text, or inside a capture', () => {
    const zeros = new Uint8Array(MB)
    const head = new Uint8Array(Buffer.concat([LOG, Buffer.alloc(5000, '(1.0) can0 123#00\n')]))
    expect(growth(head, zeros, 200)).toBeLessThan(30 * MB)
    const capture = new Uint8Array(Buffer.concat(Array.from({ length: 20 }, () => PCAPNG)))
    expect(growth(capture, zeros, 50)).toBeLessThan(30 * MB)
  })

  it('over lines of 1 MB', () => {
    const line = new Uint8Array(MB).fill(0x41)
    line[MB - 1] = 0x0a
    const head = new Uint8Array(Buffer.concat([LOG, Buffer.alloc(5000, '(1.0) can0 123#00\n')]))
    expect(growth(head, line, 100)).toBeLessThan(30 * MB)
    const { findings } = decodeBytes(new Uint8Array(Buffer.concat([LOG, line, LOG])))
    expect(findings.map((finding) => [finding.code, finding.where.line])).toContainEqual(['line-too-long', 9])
  })

  it('over a gzip file that unpacks to a thousand times its size', async () => {
    const bomb = new Uint8Array(gzipSync(Buffer.concat([LOG, Buffer.alloc(60 * MB)])))
    const decoding = decodeCapture({})
    collectGarbage()
    const before = process.memoryUsage().arrayBuffers
    decoding.push(bomb)
    const grown = () => process.memoryUsage().arrayBuffers - before
    // When what is let go is collected is the engine's business, and its rooms are given back beside the program: only
    // what is still held after several collections was kept.
    for (let collections = 0; collections < 10 && grown() >= 30 * MB; collections++) {
      await new Promise((resolve) => setTimeout(resolve, 20))
      collectGarbage()
    }
    const kept = grown()
    decoding.end()
    expect(kept).toBeLessThan(30 * MB)
  })

  it('PROPERTY says the same place of damage inside a packed recording in chunks of any sizes', () => {
    // Data that hardly packs, so that damage falls into one of many pieces.
    const lines = Array.from(
      { length: 1500 },
      (_, index) =>
        `(${index}.5) can0 123#${(Math.imul(index + 1, 0x9e3779b1) >>> 0).toString(16).padStart(8, '0')}`,
    )
    const packed = new Uint8Array(gzipSync(text(lines)))
    fc.assert(
      fc.property(
        fc.nat(),
        fc.integer({ min: 1, max: 255 }),
        fc.array(fc.integer({ min: 100, max: 3000 }), { minLength: 1, maxLength: 4 }),
        (place, change, chunks) => {
          const bytes = new Uint8Array(packed)
          const at = 30 + (place % (bytes.length - 30))
          bytes[at] = (bytes[at] as number) ^ change
          const whole = decodeBytes(bytes)
          const cut = decodeBytes(bytes, {}, chunks)
          const places = ({ findings }: typeof whole) => findings.map(({ code, where }) => ({ code, where }))
          expect(places(cut)).toEqual(places(whole))
          expect(cut.summary).toEqual(whole.summary)
        },
      ),
      { numRuns: 15 },
    )
  })

  it('over frames of ever new identifiers, told once', () => {
    const decoding = decodeLines(
      Array.from({ length: 30_000 }, (_, index) => `(1.0) can0 ${(0x10000000 + index).toString(16)}#0211`),
    )
    expect(decoding.findings.filter((finding) => finding.code === 'too-many-identifiers')).toHaveLength(1)
  })

  it('findings beyond the limit are counted, not told', () => {
    const lines = ['(1.0) can0 123#00', ...new Array<string>(50).fill('what')]
    const { findings, summary } = decodeLines(lines, { findingsPerCode: 10 })
    expect(findings).toHaveLength(10)
    expect(summary.findings['bad-line']).toBe(50)
  })
})

describe('live frames', () => {
  it('are decoded at once when nothing is to be waited for', () => {
    const { messages } = decodeFrames([frame(0, 0x7e0, '023E00'), frame(1, 0x7e8, '027E00')], {
      lookAhead: 0,
    })
    expect(messages.map(short)).toEqual(['0.000000 7E0 3e00', '0.001000 7E8 7e00'])
  })
})

describe('what a recording means does not depend on padding or on what else is on the bus', () => {
  it('PROPERTY the same exchange between any plain traffic gives the same messages', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(0x00, 0x55, 0xaa, 0xcc, 0xff),
        fc.array(
          fc.tuple(fc.integer({ min: 0, max: 0x6ff }), fc.uint8Array({ minLength: 1, maxLength: 8 })),
          {
            maxLength: 40,
          },
        ),
        fc.uint8Array({ minLength: 1, maxLength: 50 }),
        (padding, plain, data) => {
          const request = Uint8Array.of(0x22, 0x12, 0x34)
          const answer = Uint8Array.from([0x62, 0x12, 0x34, ...data])
          const exchange = [
            ...segment(request, { padding }).map((one) => ({ ...frame(0, 0x7a0, ''), data: one })),
            ...segment(answer, { padding }).flatMap((one, index) => [
              { ...frame(0, 0x7a8, ''), data: one },
              ...(index === 0 && answer.length > 7
                ? [{ ...frame(0, 0x7a0, ''), data: continueToSend(0, 0, { padding }) }]
                : []),
            ]),
          ]
          const mixed = exchange.flatMap((one, index) => [
            one,
            ...plain
              .filter((_, place) => place % exchange.length === index)
              .map(([id, bytes]) => ({
                ...frame(0, id, ''),
                data: bytes,
              })),
          ])
          const timed = mixed.map((one, index) => ({ ...one, time: at(index) }))
          const { messages } = decodeFrames(timed)
          const hex = messages.map(
            (message) => `${message.id} ${Buffer.from(message.payload).toString('hex')}`,
          )
          expect(hex).toEqual([`7A0 221234`, `7A8 ${Buffer.from(answer).toString('hex')}`])
        },
      ),
      { numRuns: 200 },
    )
  })
})
