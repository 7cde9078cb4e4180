/**
 * @module Plain traffic is counted without making frames of it in every layout recorders write: compiled, uncompiled
 * and without any shortcut all come to the same, and few frames are made.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CaptureSink } from '../capture/contract.ts'
import { openRecognising } from '../capture/head-first.ts'
import { READERS } from '../capture/readers.ts'
import { ScanStore } from '../capture/scan-store.ts'
import {
  enhancedPacket,
  interfaceDescription,
  joined,
  pcap,
  sectionHeader,
  sll,
  sll2,
  socketCan,
} from '../pcap/testing/build.ts'
import { Decoder } from './decoder.ts'
import { decodeBytes } from './testing/decode.ts'
import { readUncompiled, readWithoutSkipping } from './testing/plain-reading.ts'

const FRAMES = 2000
const SECOND = 1_700_000_000

interface Said {
  readonly microseconds: number
  readonly id: number
  readonly data: readonly number[]
}

/** Fifty identifiers, 11 and 29 bits, of several lengths; every fiftieth frame is a tester's. */
function traffic(seed: number): Said[] {
  return Array.from({ length: FRAMES }, (_, index) => {
    const number = index % 50
    const tester = number === 49
    const id = tester ? 0x7e0 : number % 7 === 6 ? 0x0cf0_0000 + number : 0x100 + number
    const length = tester || number % 5 !== 4 ? 8 : 1 + (number % 7)
    const data = Array.from({ length }, (_, at) => (tester ? 0 : 0xff - ((index * (at + seed)) & 0x3f)))
    if (tester) data.splice(0, 2, 2, 0x3e)
    return { microseconds: index * 1700, id, data }
  })
}

const hex = (value: number, digits: number) => value.toString(16).toUpperCase().padStart(digits, '0')

function text(
  said: readonly Said[],
  write: (seconds: number, micro: number) => string,
  end = '\n',
  name = 'can0',
): Uint8Array {
  const lines = said.map(({ microseconds, id, data }) => {
    const time = write(SECOND + Math.floor(microseconds / 1e6), microseconds % 1e6)
    return `(${time}) ${name} ${hex(id, id > 0x7ff ? 8 : 3)}#${data.map((byte) => hex(byte, 2)).join('')}${end}`
  })
  return new TextEncoder().encode(lines.join(''))
}

const micro = (seconds: number, rest: number) => `${seconds}.${String(rest).padStart(6, '0')}`

type Wrap = (frame: Uint8Array, index: number) => Uint8Array
const CLASSIC_PCAP = [true, false].flatMap((littleEndian) =>
  [true, false].map((nanoseconds) => ({ littleEndian, nanoseconds })),
)

function classic(said: readonly Said[], choices: (typeof CLASSIC_PCAP)[number], linkType = 227, wrap?: Wrap) {
  const packets = said.map(({ microseconds, id, data }, index) => {
    const frame = socketCan(id, data)
    return {
      seconds: SECOND + Math.floor(microseconds / 1e6),
      fraction: (microseconds % 1e6) * (choices.nanoseconds ? 1000 : 1),
      data: wrap?.(frame, index) ?? frame,
    }
  })
  return pcap(packets, { ...choices, linkType })
}

function blocks(
  said: readonly Said[],
  littleEndian: boolean,
  linkType = 227,
  wrap?: Wrap,
  options: (index: number) => readonly number[] = () => [],
) {
  const order = { littleEndian }
  return joined(
    sectionHeader(order),
    interfaceDescription(linkType, order),
    ...said.map(({ microseconds, id, data }, index) => {
      const frame = socketCan(id, data)
      return enhancedPacket(
        0,
        BigInt(SECOND) * 1_000_000n + BigInt(microseconds),
        wrap?.(frame, index) ?? frame,
        order,
        options(index),
      )
    }),
  )
}

/** In nanoseconds: the upper word of the time is another half a second after the first frame. */
function nanosecondBlocks(said: readonly Said[], littleEndian: boolean) {
  const order = { littleEndian }
  const start = ((1_700_000_000_000_000_000n >> 32n) << 32n) - 500_000_000n
  return joined(
    sectionHeader(order),
    interfaceDescription(227, { ...order, resolution: 9 }),
    ...said.map(({ microseconds, id, data }) =>
      enhancedPacket(0, start + BigInt(microseconds) * 1000n, whole(socketCan(id, data), 0), order),
    ),
  )
}

const cooked: Wrap = (frame) => sll(0x0c, frame)
const cooked2: Wrap = (frame, index) => sll2(0x0c, 3 + (index % 2), frame)

/** As the kernel hands frames out: sixteen bytes, however many are data. */
const whole: Wrap = (frame) => joined(frame, new Uint8Array(16 - frame.length))
const ODD = [1, 2, 4, 8, 9, 12, 15, 16, 128]
/** Every fourth has something in it that few have: flags, bytes without meaning, more data than there is room for. */
const odd: Wrap = (frame, index) => {
  const bytes = whole(frame, index)
  if (index % 4 === 1) bytes[4 + ((index >> 2) % 4)] = ODD[(index >> 4) % ODD.length] as number
  return bytes
}
/** A comment (option 1) behind every third packet. */
const comment = (index: number) => (index % 3 === 0 ? [0, 1, 0, 4, 0x6f, 0x64, 0x64, 0x21, 0, 0, 0, 0] : [])

const LAYOUTS: readonly (readonly [name: string, bytes: (said: readonly Said[]) => Uint8Array])[] = [
  ['text in microseconds', (said) => text(said, micro)],
  ['text that ends its lines with CR and LF', (said) => text(said, micro, '\r\n')],
  ['text in nanoseconds', (said) => text(said, (s, us) => `${micro(s, us)}123`)],
  ['text in milliseconds', (said) => text(said, (s, us) => micro(s, us).slice(0, -3))],
  ['text in tenths of a millisecond', (said) => text(said, (s, us) => micro(s, us).slice(0, -2))],
  ['text that counts from zero', (said) => text(said, (s, us) => micro(s - SECOND, us), '\n', 'vcan12')],
  ['text with a long name', (said) => text(said, micro, '\n', 'gateway-11')],
  ['pcapng, little-endian', (said) => blocks(said, true)],
  ['pcapng, big-endian', (said) => blocks(said, false)],
  ['pcapng, padded', (said) => blocks(said, true, 227, whole)],
  ['pcapng, padded, big-endian', (said) => blocks(said, false, 227, whole)],
  ['pcapng, some packets with options', (said) => blocks(said, true, 227, whole, comment)],
  ['pcapng, nanoseconds', (said) => nanosecondBlocks(said, true)],
  ['pcapng, nanoseconds, big-endian', (said) => nanosecondBlocks(said, false)],
  ['pcap, padded', (said) => classic(said, { littleEndian: true, nanoseconds: false }, 227, whole)],
  ['pcapng, cooked', (said) => blocks(said, true, 113, cooked)],
  ['pcapng, cooked with interface numbers', (said) => blocks(said, false, 276, cooked2)],
  ...CLASSIC_PCAP.map(
    (choices) =>
      [
        `pcap, ${choices.littleEndian ? 'little' : 'big'}-endian, ${choices.nanoseconds ? 'nano' : 'micro'}seconds`,
        (said: readonly Said[]) => classic(said, choices),
      ] as const,
  ),
  ['pcap, cooked', (said) => classic(said, { littleEndian: true, nanoseconds: false }, 113, cooked)],
  [
    'pcap, cooked with interface numbers',
    (said) => classic(said, { littleEndian: true, nanoseconds: true }, 276, cooked2),
  ],
]

/** Some packets are no frames: these are only read in every way. */
const ODD_LAYOUTS: typeof LAYOUTS = [
  ['pcapng, some frames odd', (said) => blocks(said, true, 227, odd)],
  ['pcapng, some frames odd, big-endian', (said) => blocks(said, false, 227, odd)],
  ['pcap, some frames odd', (said) => classic(said, { littleEndian: false, nanoseconds: true }, 227, odd)],
]

/** How many frames a reader made of a recording, how many it only counted, and the most it counted in one second. */
function made(bytes: Uint8Array, store: ScanStore): { frames: number; counted: number; most: number } {
  const decoder = new Decoder({})
  const seen = { frames: 0, counted: 0, most: 0 }
  const sink: CaptureSink = {
    frame: (frame) => {
      seen.frames++
      decoder.frame(frame)
    },
    isPlain: (channel, id, extended) => decoder.isPlain(channel, id, extended),
    plainFrames: (channel, count, last) => {
      seen.counted += count
      seen.most = Math.max(seen.most, count)
      decoder.plainFrames(channel, count, last)
    },
    doip: (message) => decoder.doip(message),
    announcement: (announcement) => decoder.announcement(announcement),
    finding: (finding) => decoder.finding(finding),
  }
  const reader = openRecognising(READERS, sink, {}, store)
  reader.push(bytes)
  reader.end()
  return seen
}

describe('frames of one a second', () => {
  const seldom = traffic(1).map((one, index) => ({
    ...one,
    microseconds: index * 990_000,
    id: 0x100 + (index % 3),
  }))

  it.each(LAYOUTS)('are told second by second: %s', (_, write) => {
    for (const store of [new ScanStore(), new ScanStore(false)]) {
      const { frames, counted, most } = made(write(seldom), store)
      expect(frames + counted).toBe(FRAMES)
      // A new second is no reason to make a frame.
      expect(frames).toBeLessThan(FRAMES / 10)
      expect(most).toBeLessThanOrEqual(2)
    }
  })
})

describe.each(LAYOUTS)('%s', (_, write) => {
  it('is counted without making frames of plain traffic, compiled or not', () => {
    const bytes = write(traffic(1))
    for (const store of [new ScanStore(), new ScanStore(false)]) {
      const { frames, counted, most } = made(bytes, store)
      expect(frames + counted).toBe(FRAMES)
      expect(counted).toBeGreaterThan(FRAMES / 2)
      // A frame every 1.7 ms, every fiftieth a tester's: what is told at once stands in one second.
      expect(most).toBeLessThan(50)
    }
  })
})

it('finds the next record after lost bytes also where the clock was set while frames were only counted', () => {
  // Ten years later from the 300th frame on; a length in the middle of what follows is damaged.
  const said = traffic(1).map((one, index) =>
    index < 300 ? one : { ...one, microseconds: one.microseconds + 10 * 365 * 86_400 * 1e6 },
  )
  const bytes = classic(said, { littleEndian: true, nanoseconds: false }, 227, whole)
  const record = 16 + 16
  bytes[24 + 700 * record + 11] = 0x7f
  const { messages, findings, summary } = decodeBytes(bytes, {}, [bytes.length])
  expect({ messages, findings, summary }).toEqual(readWithoutSkipping(bytes))
  expect(findings.find(({ code }) => code === 'bytes-lost')?.params).toEqual({ bytes: record })
})

describe.each(ODD_LAYOUTS)('%s', (_, write) => {
  it('is counted alike, compiled or not', () => {
    const bytes = write(traffic(1))
    const compiled = made(bytes, new ScanStore())
    const uncompiled = made(bytes, new ScanStore(false))
    expect(compiled.frames + compiled.counted).toBe(uncompiled.frames + uncompiled.counted)
    // Of the last 128 bytes one makes frames, where the other counts.
    expect(uncompiled.frames - compiled.frames).toBeGreaterThanOrEqual(0)
    expect(uncompiled.frames - compiled.frames).toBeLessThan(4)
  })
})

describe.each([...LAYOUTS, ...ODD_LAYOUTS])('%s', (_, write) => {
  it('PROPERTY is read the same in every way, damaged or not, in chunks of any sizes', () => {
    const byte = fc.constantFrom(
      0,
      1,
      2,
      4,
      8,
      10,
      13,
      16,
      0x20,
      0x23,
      0x2e,
      0x30,
      0x39,
      0x3a,
      0x47,
      0x80,
      255,
    )
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.array(fc.tuple(fc.nat(), byte), { maxLength: 4 }),
        fc.array(fc.integer({ min: 1, max: 9000 }), { minLength: 1, maxLength: 4 }),
        (seed, changes, chunks) => {
          const bytes = write(traffic(seed).slice(0, 600))
          for (const [place, value] of changes) bytes[5000 + (place % (bytes.length - 5000))] = value
          const plain = readWithoutSkipping(bytes)
          const { messages, findings, summary } = decodeBytes(bytes, {}, chunks)
          expect({ messages, findings, summary }).toEqual(plain)
          expect(readUncompiled(bytes, chunks)).toEqual(plain)
        },
      ),
      { numRuns: 25 },
    )
  })
})
