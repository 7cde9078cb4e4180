/**
 * @module Plain traffic is counted without making frames of it; what comes out is the same as when every line is read
 * by one plain pattern (`testing/plain-reading.ts`), for sound recordings and for damaged ones.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { candumpLine } from '../candump/write.ts'
import type { CaptureSink } from '../capture/contract.ts'
import { openRecognising } from '../capture/head-first.ts'
import { READERS } from '../capture/readers.ts'
import type { CanFrame } from '../frame/index.ts'
import { continueToSend, segment } from '../isotp/segment.ts'
import { PcapngWriter } from '../pcap/write.ts'
import { Decoder } from './decoder.ts'
import { decodeBytes } from './testing/decode.ts'
import { readPlainly, readWithoutSkipping } from './testing/plain-reading.ts'

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text)

/** Payloads that come again and again: long and short ones, some that look like ISO-TP for a while. */
const PLAIN_DATA = fc.oneof(
  { weight: 6, arbitrary: fc.uint8Array({ minLength: 8, maxLength: 8 }) },
  { weight: 2, arbitrary: fc.uint8Array({ minLength: 0, maxLength: 8 }) },
  { weight: 1, arbitrary: fc.constantFrom(Uint8Array.of(0x02, 0x3e, 0), Uint8Array.of(0x21, 1, 2, 3)) },
)

interface Speech {
  readonly id: number
  readonly extended: boolean
  readonly data: Uint8Array
}

const plain = fc
  .array(fc.tuple(fc.constantFrom(0, 0x80, 0x123, 0x6ff, 0x10000, 0xcf00400, 0x1fffffff), PLAIN_DATA), {
    minLength: 60,
    maxLength: 200,
  })
  .map((said): Speech[] => said.map(([id, data]) => ({ id, extended: id > 0x7ff, data })))

const exchange = fc
  .uint8Array({ minLength: 1, maxLength: 30 })
  .map((data): Speech[] => [
    { id: 0x7e0, extended: false, data: segment(Uint8Array.of(0x22, 0x12, 0x34))[0] as Uint8Array },
    ...segment(Uint8Array.from([0x62, 0x12, 0x34, ...data])).flatMap((part, index, parts) => [
      { id: 0x7e8, extended: false, data: part },
      ...(index === 0 && parts.length > 1
        ? [{ id: 0x7e0, extended: false, data: continueToSend(0, 0) }]
        : []),
    ]),
  ])

/** A recording: exchanges between plain traffic on one to three channels, the time going on, now and then back. */
const frames = fc
  .record({
    plain,
    exchanges: fc.array(exchange, { minLength: 1, maxLength: 4 }),
    channels: fc.constantFrom(['can0'], ['can0', 'can1'], ['a', 'vcan0', 'abcdefghijklmno']),
    steps: fc.array(fc.constantFrom(1, 130, 990, 40_000, 400_000, 999_999, 0, -1, -700_000), {
      minLength: 5,
      maxLength: 30,
    }),
    kinds: fc.array(fc.constantFrom('data', 'data', 'data', 'remote', 'error', 'fd'), {
      minLength: 3,
      maxLength: 17,
    }),
  })
  .map(({ plain: said, exchanges, channels, steps, kinds }): CanFrame[] => {
    const asked = exchanges.flat()
    const every = Math.max(1, Math.floor(said.length / asked.length))
    const all = said.flatMap((one, index) => {
      const next = index % every === 0 ? asked[index / every] : undefined
      return next === undefined ? [one] : [one, next]
    })
    let microseconds = 1_700_000_000_000_000
    return all.map((one, index) => {
      microseconds += steps[index % steps.length] as number
      // Kinds turn after the identifiers became known.
      const kind = index > 100 && one.id < 0x700 ? kinds[index % kinds.length] : 'data'
      return {
        time: {
          seconds: Math.floor(microseconds / 1e6),
          nanoseconds: (microseconds % 1e6) * 1000,
          decimals: 6,
        },
        channel: channels[index % channels.length] as string,
        id: one.id,
        extended: one.extended && kind !== 'error',
        fd: kind === 'fd',
        remote: kind === 'remote',
        error: kind === 'error',
        data: kind === 'remote' ? new Uint8Array(0) : one.data,
        where: {},
      }
    })
  })

const sizes = fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 6 })

/** Damage to a text: characters put in, taken out or changed. */
const damage = fc.array(
  fc.tuple(
    fc.nat(),
    fc.nat({ max: 2 }),
    fc.constantFrom('', '', '0', 'A', 'f', 'g', ' ', '#', 'R', '\n', '\r\n', ' R', '.', ')', '\u0011', '::'),
  ),
  { maxLength: 12 },
)

function damaged(text: string, changes: readonly (readonly [number, number, string])[]): string {
  let out = text
  for (const [place, taken, put] of changes) {
    const at = 400 + (place % Math.max(1, out.length - 400))
    out = out.slice(0, at) + put + out.slice(at + taken)
  }
  return out
}

describe('candump text', () => {
  it('PROPERTY is read as by one plain pattern, damaged or not, in chunks of any sizes', () => {
    fc.assert(
      fc.property(frames, damage, sizes, fc.boolean(), (recorded, changes, chunks, small) => {
        const written = recorded.map(candumpLine).join('')
        const text = damaged(
          small ? written.replace(/#[0-9A-F]+/g, (hex) => hex.toLowerCase()) : written,
          changes,
        )
        const fast = decodeBytes(utf8(text), {}, chunks)
        // A line in another layout or without a time is read by us and not by the pattern.
        fc.pre(!text.includes('[') && text.split('\n').every((line) => !/^\s*[^(\s]\S*\s/.test(line)))
        const { badLines, ...slow } = readPlainly(text)
        const told = fast.findings.filter((finding) => finding.code === 'bad-line')
        expect(told.map((finding) => finding.where.line)).toEqual(badLines)
        expect(fast.findings.filter((finding) => finding.code !== 'bad-line')).toEqual(slow.findings)
        expect(fast.messages).toEqual(slow.messages)
        const { 'bad-line': bad = 0, ...findings } = fast.summary.findings
        expect({ ...fast.summary, findings }).toEqual(slow.summary)
        expect(bad).toBe(badLines.length)
      }),
      { numRuns: 150 },
    )
  })

  it('PROPERTY gives the same with and without skipping, to the last finding', () => {
    fc.assert(
      fc.property(frames, damage, sizes, (recorded, changes, chunks) => {
        const bytes = utf8(damaged(recorded.map(candumpLine).join(''), changes))
        const { messages, findings, summary } = decodeBytes(bytes, {}, chunks)
        expect({ messages, findings, summary }).toEqual(readWithoutSkipping(bytes))
      }),
      { numRuns: 150 },
    )
  })
})

describe('pcapng', () => {
  function written(recorded: readonly CanFrame[]): Uint8Array {
    const writer = new PcapngWriter()
    return new Uint8Array(Buffer.concat([writer.header(), ...recorded.map((frame) => writer.frame(frame))]))
  }

  it('PROPERTY gives the same with and without skipping, damaged or not', () => {
    fc.assert(
      fc.property(
        frames,
        fc.array(fc.tuple(fc.nat(), fc.nat({ max: 255 })), { maxLength: 3 }),
        sizes,
        (recorded, changes, chunks) => {
          const bytes = written(recorded)
          for (const [place, value] of changes) bytes[3000 + (place % (bytes.length - 3000))] = value
          const { messages, findings, summary } = decodeBytes(bytes, {}, chunks)
          expect({ messages, findings, summary }).toEqual(readWithoutSkipping(bytes))
        },
      ),
      { numRuns: 150 },
    )
  })

  it('PROPERTY gives the messages the same frames give as text', () => {
    fc.assert(
      fc.property(frames, (recorded) => {
        const classic = recorded.filter((frame) => !frame.fd && !frame.error)
        const text = readPlainly(classic.map(candumpLine).join(''))
        const packed = decodeBytes(written(classic))
        const bare = (messages: typeof text.messages) =>
          messages.map(({ where: _, time, startTime, ...rest }) => ({
            ...rest,
            time: [time.seconds, time.nanoseconds],
            startTime: [startTime.seconds, startTime.nanoseconds],
          }))
        expect(bare(packed.messages)).toEqual(bare(text.messages))
        expect(packed.summary).toEqual(text.summary)
      }),
      { numRuns: 50 },
    )
  })
})

describe('skipping', () => {
  /** How many frames a reader made of a recording, and how many it only counted. */
  function made(bytes: Uint8Array): { frames: number; counted: number } {
    const decoder = new Decoder({})
    const seen = { frames: 0, counted: 0 }
    const sink: CaptureSink = {
      frame: (frame) => {
        seen.frames++
        decoder.frame(frame)
      },
      isPlain: (channel, id, extended) => decoder.isPlain(channel, id, extended),
      plainFrames: (channel, count, last) => {
        seen.counted += count
        decoder.plainFrames(channel, count, last)
      },
      doip: (message) => decoder.doip(message),
      announcement: (announcement) => decoder.announcement(announcement),
      finding: (finding) => decoder.finding(finding),
    }
    const reader = openRecognising(READERS, sink, {})
    reader.push(bytes)
    reader.end()
    return seen
  }

  const noise = Array.from(
    { length: 5000 },
    (_, index): CanFrame => ({
      time: {
        seconds: 1_700_000_000 + Math.floor(index / 2000),
        nanoseconds: (index % 2000) * 500_000,
        decimals: 6,
      },
      channel: 'can0',
      id: index % 50 === 49 ? 0x7e0 : 0x100 + (index % 50),
      extended: false,
      fd: false,
      remote: false,
      error: false,
      data:
        index % 50 === 49
          ? Uint8Array.of(1, 0x3e, 0, 0, 0, 0, 0, 0)
          : Uint8Array.of(0xff, index & 0xff, 0, 0, 9),
      where: {},
    }),
  )
  const writer = new PcapngWriter()

  it.each([
    ['candump', utf8(noise.map(candumpLine).join(''))],
    [
      'pcapng',
      new Uint8Array(Buffer.concat([writer.header(), ...noise.map((frame) => writer.frame(frame))])),
    ],
  ])('makes frames of few plain packets in %s, and of every diagnostic one', (_, bytes) => {
    const { frames: told, counted } = made(bytes)
    expect(told + counted).toBe(5000)
    expect(counted).toBeGreaterThan(4500)
    expect(told).toBeGreaterThanOrEqual(100)
  })

  it.each([
    ['odd digits', 'FF010', 'odd-nibbles'],
    ['a letter that is no hex digit', 'FF01000G09', 'not-hex'],
    ['a control character that differs from a digit in one bit', 'FF0100\u001109', 'not-hex'],
    ['nine bytes', 'FF0100000000000000', 'too-long-data'],
  ])('finds %s on a line of an identifier it skips', (_, data, reason) => {
    const lines = noise.map(candumpLine)
    lines[4000] = `(1700000002.000000) can0 100#${data}\n`
    const { findings } = decodeBytes(utf8(lines.join('')))
    expect(findings).toMatchObject([{ code: 'bad-line', where: { line: 4001 }, params: { reason } }])
  })

  it.each([
    ['a letter in the time', '(1700000001.9x9999)', 'bad-line'],
    ['a time before the last', '(1700000001.000000)', 'time-backwards'],
    ['a second before the last', '(1700000000.999999)', 'time-backwards'],
  ])('finds %s on a line of an identifier it skips', (_, time, code) => {
    const lines = noise.map(candumpLine)
    lines[4000] = `${time} can0 100#FF00000009\n`
    const { findings, summary } = decodeBytes(utf8(lines.join('')))
    expect(findings).toMatchObject([{ code, where: { line: 4001 } }])
    expect(summary.frames).toBe(code === 'bad-line' ? 4999 : 5000)
  })
})
