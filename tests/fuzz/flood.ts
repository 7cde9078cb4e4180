/**
 * @module Recordings that are far too large or claim to be, made while they are read, in a process of their own with a
 * small heap. Started by `extremes.test.ts`: `node --conditions=@shearline/source flood.ts NAME COUNT`; writes one
 * line of JSON with counts and the peak of resident memory.
 */

import { type CanFrame, candumpLine, decodeCapture, PcapngWriter } from '@shearline/bus'

const MB = 1 << 20
const encoder = new TextEncoder()

/** What a flood told. */
export interface Flooded {
  readonly format: string
  readonly frames: number
  readonly messages: number
  readonly told: number
  readonly codes: Readonly<Record<string, number>>
  readonly first: readonly { readonly code: string; readonly line?: number; readonly byteOffset?: number }[]
  readonly milliseconds: number
  readonly peakMegabytes: number
}

/** Text made line by line, in chunks of about 64 kB. */
function* lines(count: number, line: (index: number) => string): Generator<Uint8Array> {
  let text = ''
  for (let index = 0; index < count; index++) {
    text += line(index)
    if (text.length < 65_536) continue
    yield encoder.encode(text)
    text = ''
  }
  yield encoder.encode(text)
}

/** The same megabyte `count` times. */
function* megabytes(count: number, fill: number): Generator<Uint8Array> {
  const chunk = new Uint8Array(MB).fill(fill)
  for (let index = 0; index < count; index++) yield chunk
}

const GOOD = '(1.0) can0 123#00\n'
const frame: CanFrame = {
  time: { seconds: 1, nanoseconds: 0, decimals: 6 },
  channel: 'can0',
  id: 0x7e8,
  extended: false,
  fd: false,
  remote: false,
  error: false,
  data: Uint8Array.of(2, 0x7e, 0, 0, 0, 0, 0, 0),
  where: {},
}

function capture(): Uint8Array {
  const writer = new PcapngWriter()
  return new Uint8Array(
    Buffer.concat([writer.header(), ...Array.from({ length: 200 }, () => writer.frame(frame))]),
  )
}

/** The header of a pcap with link type 227 (draft-ietf-opsawg-pcap). */
function pcapHeader(...more: readonly number[]): Uint8Array {
  return new Uint8Array(Uint32Array.of(0xa1b2c3d4, 0x0004_0002, 0, 0, 65_535, 227, ...more).buffer)
}

const FLOODS: Readonly<Record<string, (count: number) => Generator<Uint8Array>>> = {
  *zeros(count) {
    yield* megabytes(count, 0)
  },
  *'zeros after text'(count) {
    yield encoder.encode(GOOD.repeat(500))
    yield* megabytes(count, 0)
  },
  *'zeros after pcapng'(count) {
    yield capture()
    yield* megabytes(count, 0)
  },
  *'zeros after pcap'(count) {
    yield pcapHeader()
    yield* megabytes(count, 0)
  },
  *'zeros after a table'(count) {
    yield encoder.encode(`time,id,data\n${'0.1,7E8,027E000000000000\n'.repeat(300)}`)
    yield* megabytes(count, 0)
  },
  *'long line'(count) {
    yield encoder.encode(GOOD.repeat(500))
    yield* megabytes(count, 0x41)
    yield encoder.encode('\n(1.0) can0 7E0#023E000000000000\n')
  },
  *'long line in a table'(count) {
    yield encoder.encode(`time,id,data\n${'0.1,7E8,027E000000000000\n'.repeat(8000)}"`)
    yield* megabytes(count, 0x41)
    yield encoder.encode('\n0.2,7E8,027E000000000000\n')
  },
  *identifiers(count) {
    yield* lines(count, (index) => `(1.0) can0 ${(0x10000000 + index).toString(16)}#0211\n`)
  },
  *channels(count) {
    yield* lines(count, (index) => `(1.0) can${index} 7E8#027E000000000000\n`)
  },
  *'bad lines'(count) {
    yield* lines(count, (index) => (index < 2 ? GOOD : `what is this ${index}\n`))
  },
  *'bad cells'(count) {
    yield encoder.encode(`time,id,data\n${'0.1,7E8,027E000000000000\n'.repeat(8000)}`)
    yield* lines(count, (index) => `x,y${index},z\n`)
  },
  *'block of 4 GB'(count) {
    yield capture()
    yield Uint8Array.of(6, 0, 0, 0, 0xfc, 0xff, 0xff, 0xff)
    yield* megabytes(count, 7)
  },
  *'record of 4 GB'(count) {
    yield pcapHeader(1, 1, 0xffff_ffff, 0xffff_ffff)
    yield* megabytes(count, 7)
  },
  *'first frames of 4 GB'(count) {
    // ISO 15765-2 escape: length 0, then 32 bits of length.
    yield* lines(count, (index) =>
      index % 16 === 0
        ? '(1.0) can0 7E0#1000FFFFFFFF3601\n'
        : `(1.0) can0 7E0#2${(index & 15).toString(16)}11223344556677\n`,
    )
  },
  *'transfers of 15 MB'(count) {
    // A thousand and twenty-four at once, each the largest that is believed.
    yield* lines(1024, (index) => `(1.0) can0 18DA${index.toString(16).padStart(4, '0')}#100000F000003601\n`)
    for (let turn = 1; turn <= count; turn++) {
      yield* lines(
        1024,
        (index) =>
          `(1.0) can0 18DA${index.toString(16).padStart(4, '0')}#2${(turn & 15).toString(16)}11223344556677\n`,
      )
    }
  },
  *'good text'(count) {
    yield* lines(count, (index) => candumpLine({ ...frame, time: { ...frame.time, seconds: index } }))
  },
}

function flood(name: string, count: number): Flooded {
  const pieces = FLOODS[name]
  if (pieces === undefined) throw new RangeError(`there is no flood "${name}"`)
  let [told, messages] = [0, 0]
  const first: Flooded['first'][number][] = []
  const decoding = decodeCapture({
    message: () => {
      messages++
    },
    finding: ({ code, where: { line, byteOffset } }) => {
      told++
      if (first.length >= 20) return
      first.push({
        code,
        ...(line === undefined ? {} : { line }),
        ...(byteOffset === undefined ? {} : { byteOffset }),
      })
    },
  })
  const started = performance.now()
  for (const piece of pieces(count)) decoding.push(piece)
  const { recognised, summary } = decoding.end()
  return {
    format: recognised.format,
    frames: summary.frames,
    messages,
    told,
    codes: summary.findings,
    first,
    milliseconds: Math.round(performance.now() - started),
    peakMegabytes: Math.round(process.resourceUsage().maxRSS / 1024),
  }
}

if (process.argv[2] !== undefined)
  console.log(JSON.stringify(flood(process.argv[2], Number(process.argv[3]))))
