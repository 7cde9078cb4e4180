import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Finding } from '../finding/index.ts'
import { formatTime } from '../frame/index.ts'
import { bytesSource, MDF_FORMAT, mdfFeeder, readMdf } from './index.ts'
import * as build from './testing/build.ts'
import { collectFrames, hex } from './testing/collect.ts'
import { frameChannels, HEAD_BYTES, record, recordHead, type Sample, samples } from './testing/frames.ts'

function lineOf(sample: Sample): string {
  const time = `${1_700_000_000 + Math.floor(sample.ticks / 1e6)}.${String(sample.ticks % 1e6).padStart(6, '0')}`
  return `${time} can${sample.bus} ${sample.id.toString(16)}${sample.extended ? 'x' : ''} ${sample.sent ? 'T' : 'R'}${sample.fd ? 'F' : ''} ${hex(sample.data)}`
}

function collect() {
  const lines: string[] = []
  const offsets: (number | undefined)[] = []
  const { sink, findings } = collectFrames((frame) => {
    const direction = 'direction' in frame ? (frame.direction === 'transmitted' ? 'T' : 'R') : '?'
    const kind = `${frame.fd ? 'F' : ''}${frame.remote ? 'remote' : ''}${frame.error ? 'error' : ''}`
    lines.push(
      `${formatTime(frame.time)} ${frame.channel} ${frame.id.toString(16)}${frame.extended ? 'x' : ''} ${direction}${kind} ${hex(frame.data)}`,
    )
    offsets.push(frame.where.byteOffset)
  })
  return { sink, findings, lines, offsets, codes: () => findings.map((finding: Finding) => finding.code) }
}

function read(file: Uint8Array) {
  const got = collect()
  for (const _ of readMdf(bytesSource(file), got.sink));
  return got
}

function feed(file: Uint8Array, size: number, mostKept?: number) {
  const got = collect()
  const reader = mdfFeeder(got.sink, mostKept)
  for (let at = 0; at < file.length; at += size) reader.push(file.slice(at, at + size))
  reader.end()
  return got
}

function join(parts: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(parts.flatMap((part) => [...part]))
}

const SAMPLES = samples(24)
const LINES = SAMPLES.map(lineOf)
const WIDTH = HEAD_BYTES + 8
const ROWS = join(SAMPLES.map((sample) => record(sample, 8)))

type Layout = (dataLast: boolean) => Uint8Array

function sortedFile(data: build.Draft | undefined, dataLast: boolean): Uint8Array {
  const group = build.group({ recordBytes: WIDTH, channels: frameChannels(8), cycles: SAMPLES.length })
  const root = build.dataGroup(group, data, 0)
  return build.mdfFile({ order: build.inOrder(root, dataLast), firstGroup: root })
}

/** Records of values without the byte of invalidation bits that the group says each has (MDF 4.2). */
function valuesFile(data: build.Draft, dataLast: boolean): Uint8Array {
  const group = build.group({
    recordBytes: WIDTH,
    channels: frameChannels(8),
    cycles: SAMPLES.length,
    invalidationBytes: 1,
  })
  const root = build.dataGroup(group, data, 0)
  return build.mdfFile({ order: build.inOrder(root, dataLast), firstGroup: root })
}

/** One record group with data bytes in a place of their own. */
function elsewhereFile(cut: (bytes: Uint8Array) => build.Draft | undefined, dataLast: boolean): Uint8Array {
  let at = 0
  const heads: Uint8Array[] = []
  const bytes: Uint8Array[] = []
  for (const sample of SAMPLES) {
    heads.push(recordHead(sample), build.fields([8, at]))
    bytes.push(build.fields([4, sample.data.length]), sample.data)
    at += 4 + sample.data.length
  }
  const group = build.group({
    recordBytes: HEAD_BYTES + 8,
    channels: frameChannels(8, cut(join(bytes))),
    cycles: SAMPLES.length,
  })
  const root = build.dataGroup(group, build.draft('DT', [], join(heads)), 0)
  return build.mdfFile({ order: build.inOrder(root, dataLast), firstGroup: root })
}

/** Two record groups and one of variable records in one block, as recorders write while driving. */
function unsortedFile(
  options: { readonly unfinished?: number; readonly bytesFirst?: boolean; readonly references?: boolean },
  dataLast: boolean,
): Uint8Array {
  const variable = build.group({
    recordId: 3,
    recordBytes: 0,
    variable: true,
    cycles: SAMPLES.filter((_, index) => index % 2 === 1).length,
  })
  const apart = build.group(
    {
      recordId: 2,
      recordBytes: HEAD_BYTES + 8,
      channels: frameChannels(8, variable),
      cycles: SAMPLES.filter((_, index) => index % 2 === 1).length,
    },
    variable,
  )
  const inside = build.group(
    {
      recordId: 1,
      recordBytes: WIDTH,
      channels: frameChannels(8),
      cycles: SAMPLES.filter((_, index) => index % 2 === 0).length,
    },
    apart,
  )
  const parts: Uint8Array[] = []
  let at = 0
  for (const [index, sample] of SAMPLES.entries()) {
    if (index % 2 === 0) {
      parts.push(Uint8Array.of(1), record(sample, 8))
      continue
    }
    const head = join([
      Uint8Array.of(2),
      recordHead(sample),
      build.fields([8, options.references === false ? 0 : at]),
    ])
    const bytes = join([Uint8Array.of(3), build.fields([4, sample.data.length]), sample.data])
    at += 4 + sample.data.length
    parts.push(...(options.bytesFirst === true ? [bytes, head] : [head, bytes]))
  }
  const root = build.dataGroup(inside, build.draft('DT', [], join(parts)), 1)
  const unfinished = options.unfinished === undefined ? {} : { unfinished: options.unfinished }
  return build.mdfFile({ order: build.inOrder(root, dataLast), firstGroup: root, ...unfinished })
}

/** One data group per bus, each in order of time. */
function perBusFile(dataLast: boolean): Uint8Array {
  let next: build.Draft | undefined
  for (const bus of [2, 1]) {
    const mine = SAMPLES.filter((sample) => sample.bus === bus)
    const group = build.group({ recordBytes: WIDTH, channels: frameChannels(8), cycles: mine.length })
    next = build.dataGroup(
      group,
      build.draft('DT', [], join(mine.map((sample) => record(sample, 8)))),
      0,
      next,
    )
  }
  if (next === undefined) throw new Error('no group')
  return build.mdfFile({ order: build.inOrder(next, dataLast), firstGroup: next })
}

const LAYOUTS: Record<string, Layout> = {
  'one block': (last) => sortedFile(build.draft('DT', [], ROWS), last),
  'a list of blocks that cut records': (last) =>
    sortedFile(
      build.list(
        build.pieces(ROWS, 100).map((piece) => build.draft('DT', [], piece)),
        100,
      ),
      last,
    ),
  'one packed block': (last) => sortedFile(build.packed('DT', ROWS, 0), last),
  'packed blocks in a list': (last) =>
    sortedFile(
      build.headed(
        build.list(
          build.pieces(ROWS, 160).map((piece) => build.packed('DT', piece, 0)),
          160,
        ),
        0,
      ),
      last,
    ),
  'packed and transposed blocks in a list': (last) =>
    sortedFile(
      build.headed(
        build.list(
          build.pieces(ROWS, 150).map((piece) => build.packed('DT', piece, WIDTH)),
          150,
        ),
        1,
      ),
      last,
    ),
  'a block of values': (last) => valuesFile(build.draft('DV', [], ROWS), last),
  'a packed block of values': (last) => valuesFile(build.packed('DV', ROWS, WIDTH), last),
  'a list of blocks of values beside their invalidation bits': (last) => {
    const pieces = build.pieces(ROWS, 6 * WIDTH)
    return valuesFile(
      build.valueList(
        pieces.map((piece) => build.draft('DV', [], piece)),
        pieces.map(() => build.draft('DI', [], new Uint8Array(6))),
        6,
      ),
      last,
    )
  },
  'data bytes in one block of their own': (last) =>
    elsewhereFile((bytes) => build.draft('SD', [], bytes), last),
  'data bytes in a list of packed blocks': (last) =>
    elsewhereFile(
      (bytes) =>
        build.headed(
          build.list(
            build.pieces(bytes, 90).map((piece) => build.packed('SD', piece, 0)),
            90,
          ),
          0,
        ),
      last,
    ),
  'record ids, bytes after their record': (last) => unsortedFile({}, last),
  'record ids, bytes before their record': (last) => unsortedFile({ bytesFirst: true }, last),
  'one data group per bus': perBusFile,
}

/** For each channel block of a file: its count of links set to 16. */
function linkCounts(bytes: Uint8Array): [[number, number][]][] {
  const found: [[number, number][]][] = []
  for (let at = 0; at + 24 < bytes.length; at++)
    if (String.fromCharCode(...bytes.subarray(at, at + 4)) === '##CN') found.push([[[at + 16, 16]]])
  return found
}

describe('an MDF 4 recording (ASAM MDF 4.1 layouts, written here)', () => {
  for (const [name, file] of Object.entries(LAYOUTS)) {
    for (const dataLast of [true, false]) {
      it(`gives its frames from ${name}, data ${dataLast ? 'last' : 'first'}, whole and in pieces`, () => {
        const bytes = file(dataLast)
        const got = read(bytes)
        expect(got.lines).toEqual(LINES)
        expect(got.findings).toEqual([])
        for (const size of [1, 7, 1000]) {
          const fed = feed(bytes, size)
          expect(fed.lines).toEqual(LINES)
          expect(fed.findings).toEqual([])
          expect(fed.offsets).toEqual(got.offsets)
        }
      })
    }

    it(`never throws on ${name} cut at any byte, and tells no frame that was not there`, () => {
      const bytes = file(true)
      const all = new Set(LINES)
      const wrong: unknown[] = []
      // The description is much the same in every layout: every byte of it is cut in the first only.
      const every = (at: number): number => (name === 'one block' || at > bytes.length - 900 ? 1 : 7)
      for (let cut = 0; cut < bytes.length; cut += every(cut)) {
        const got = read(bytes.slice(0, cut))
        const foreign = got.lines.filter((line) => !all.has(line))
        const silent = got.lines.length < LINES.length && got.findings.length === 0
        if (foreign.length > 0 || silent) wrong.push({ cut, foreign, silent })
      }
      expect(wrong).toEqual([])
    })

    it(`never throws on ${name} with any bytes changed`, () => {
      const bytes = file(true)
      fc.assert(
        fc.property(
          fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.integer({ min: 0, max: 255 })), {
            minLength: 1,
            maxLength: 8,
          }),
          (changes) => {
            const damaged = bytes.slice()
            for (const [at, value] of changes) damaged[at] = value
            const got = read(damaged)
            expect(feed(damaged, 333).lines).toEqual(got.lines)
          },
        ),
        // A count of links that leaves a channel block too little room for its data.
        { numRuns: 60, examples: linkCounts(bytes) },
      )
    })
  }

  it('reads a file that was never finished to its end, whatever its counts and last length say', () => {
    const got = read(unsortedFile({ unfinished: 0x25 }, true))
    expect(got.lines).toEqual(LINES)
    expect(got.codes()).toEqual(['mdf-not-finalised'])
  })

  it('pairs records and bytes in order when an unfinished file leaves the references out', () => {
    const got = read(unsortedFile({ unfinished: 0x65, references: false }, true))
    expect(got.lines).toEqual(LINES)
  })

  it('says at which byte a frame stands', () => {
    const file = sortedFile(build.draft('DT', [], ROWS), true)
    const first = file.length - ROWS.length
    expect(read(file).offsets.slice(0, 3)).toEqual([first, first + WIDTH, first + 2 * WIDTH])
  })

  it('says when a record is of a kind nobody described, with its byte', () => {
    const file = unsortedFile({}, true)
    const at = file.length - ROWS.length
    const row = file.findIndex(
      (byte, index) =>
        index > at - 400 &&
        byte === 1 &&
        hex(file.slice(index + 1, index + 1 + WIDTH)) === hex(record(SAMPLES[2] as Sample, 8)),
    )
    expect(row).toBeGreaterThan(0)
    file[row] = 9
    const got = read(file)
    expect(got.lines).toEqual(LINES.slice(0, 2))
    expect(got.findings.find((finding) => finding.code === 'mdf-record-unknown')?.where).toEqual({
      byteOffset: row,
    })
  })

  it('goes on with the next whole record after a packed block that cannot be unpacked', () => {
    const blocks = build.pieces(ROWS, 160).map((piece) => build.packed('DT', piece, 0))
    const second = blocks[1] as build.Draft
    second.data.fill(0xff, 24 + 2, 24 + 12)
    const got = read(sortedFile(build.headed(build.list(blocks, 160), 0), true))
    expect(got.codes()).toContain('mdf-unpack-failed')
    expect(got.lines.slice(0, 7)).toEqual(LINES.slice(0, 7))
    // The third block begins inside a record: the next whole one is record 16.
    expect(got.lines.slice(-8)).toEqual(LINES.slice(16))
  })

  it('leaves out only the frames whose data bytes stood in a block that cannot be read', () => {
    let blocks: build.Draft[] = []
    const file = elsewhereFile((bytes) => {
      blocks = build.pieces(bytes, 90).map((piece) => build.packed('SD', piece, 0))
      const second = blocks[1] as build.Draft
      second.data[2] = 9
      return build.headed(build.list(blocks, 90), 0)
    }, true)
    const got = read(file)
    expect(got.codes()).toEqual(['mdf-storage-unknown', 'mdf-data-missing'])
    const missing = LINES.filter((line) => !got.lines.includes(line))
    // The second block held bytes 90 to 179 of the data: each record there has 4 to 12 bytes.
    let at = 0
    const expected = SAMPLES.filter((sample) => {
      const from = at
      at += 4 + sample.data.length
      return at > 90 && from < 180
    }).map(lineOf)
    expect(missing).toEqual(expected)
  })

  it('says when unpacked bytes do not fit their checksum', () => {
    const block = build.packed('DT', ROWS, 0)
    block.data[block.data.length - 1] = (block.data[block.data.length - 1] ?? 0) ^ 1
    const got = read(sortedFile(block, true))
    expect(got.lines).toEqual(LINES)
    expect(got.codes()).toEqual(['mdf-unpack-failed'])
  })

  it('says when the counts of a finished file differ from its records', () => {
    const got = read(sortedFile(build.draft('DT', [], ROWS.slice(0, 10 * WIDTH)), true))
    expect(got.lines).toEqual(LINES.slice(0, 10))
    expect(got.findings).toMatchObject([{ code: 'mdf-count-differs', severity: 'warning' }])
  })

  it('stops with a clear word when a stream would have to be kept beyond the limit', () => {
    const file = perBusFile(true)
    const got = feed(file, 500, 3000)
    expect(got.codes()).toContain('mdf-needs-random-access')
    // One block at the end is streamed within the same limit, however long it is.
    const long = join(Array.from({ length: 250 }, () => ROWS))
    const group = build.group({ recordBytes: WIDTH, channels: frameChannels(8), cycles: 6000 })
    const root = build.dataGroup(group, build.draft('DT', [], long), 0)
    const streamed = build.mdfFile({ order: build.inOrder(root, true), firstGroup: root })
    expect(streamed.length).toBeGreaterThan(120_000)
    expect(feed(streamed, 500, 70_000).lines).toHaveLength(6000)
  })

  it('puts frames of several groups in order of time, the earlier record first among equals', () => {
    const bus = (number: number, ticks: readonly number[]): Sample[] =>
      ticks.map((tick) => ({ ...(SAMPLES[0] as Sample), bus: number, ticks: tick }))
    const one = bus(1, [10, 20, 30, 40])
    const two = bus(2, [10, 15, 40])
    const groups = build.group(
      { recordId: 1, recordBytes: WIDTH, channels: frameChannels(8), cycles: 4 },
      build.group({ recordId: 2, recordBytes: WIDTH, channels: frameChannels(8), cycles: 3 }),
    )
    const rows = [
      ...one.map((sample) => [1, ...record(sample, 8)]),
      ...two.map((sample) => [2, ...record(sample, 8)]),
    ]
    const root = build.dataGroup(groups, build.draft('DT', [], Uint8Array.from(rows.flat())), 1)
    const got = read(build.mdfFile({ order: build.inOrder(root, true), firstGroup: root }))
    expect(got.lines.map((line) => line.slice(15, 22))).toEqual([
      '10 can1',
      '10 can2',
      '15 can2',
      '20 can1',
      '30 can1',
      '40 can1',
      '40 can2',
    ])
  })

  it('reads remote and error frames, FD lengths from DLC, constants, tables and big-endian values', () => {
    const time = { name: 't', type: 2, dataType: 4, bitCount: 64 }
    const remote = build.group({
      recordId: 1,
      recordBytes: 12,
      channels: build.channels([
        time,
        { name: 'CAN_RemoteFrame.ID', dataType: 1, byteOffset: 8, bitCount: 32 },
        { name: 'CAN_RemoteFrame.BusChannel', type: 6, conversion: build.conversion(1, [7, 0]) },
      ]),
      cycles: 1,
    })
    const error = build.group(
      {
        recordId: 2,
        recordBytes: 8,
        channels: build.channels([
          time,
          { name: 'CAN_ErrorFrame.BusChannel', type: 6, conversion: build.conversion(1, [7, 0]) },
        ]),
        cycles: 1,
      },
      remote,
    )
    const fd = build.group(
      {
        recordId: 3,
        recordBytes: 8 + 4 + 1 + 64,
        channels: build.channels([
          time,
          { name: 'CAN_DataFrame.ID', byteOffset: 8, bitCount: 32 },
          { name: 'CAN_DataFrame.EDL', type: 6, conversion: build.conversion(1, [1, 0]) },
          { name: 'CAN_DataFrame.BusChannel', type: 6, conversion: build.conversion(1, [7, 0]) },
          { name: 'CAN_DataFrame.DLC', byteOffset: 12, bitCount: 4 },
          { name: 'CAN_DataFrame.DataBytes', dataType: 10, byteOffset: 13, bitCount: 512 },
        ]),
        cycles: 1,
      },
      error,
    )
    const table = build.group(
      {
        recordId: 4,
        recordBytes: 8 + 4 + 1 + 64,
        channels: build.channels([
          time,
          { name: 'CAN_DataFrame.ID', byteOffset: 8, bitCount: 32 },
          { name: 'CAN_DataFrame.BusChannel', type: 6, conversion: build.conversion(1, [7, 0]) },
          {
            name: 'CAN_DataFrame.DataLength',
            byteOffset: 12,
            bitCount: 4,
            conversion: build.conversion(5, [0, 0, 8, 8, 9, 12, 10, 16]),
          },
          { name: 'CAN_DataFrame.DataBytes', dataType: 10, byteOffset: 13, bitCount: 512 },
        ]),
        cycles: 1,
      },
      fd,
    )
    const ones = new Array<number>(64).fill(0x11)
    const rows = [
      [1, ...build.fields(['f', 0.25]), 0x18, 0xda, 0x10, 0xf1],
      [2, ...build.fields(['f', 0.5])],
      [3, ...build.fields(['f', 0.75], [4, 0x8000_0123], [1, 10]), ...ones],
      [4, ...build.fields(['f', 1.000_000_001], [4, 0x123], [1, 9]), ...ones],
    ]
    const root = build.dataGroup(table, build.draft('DT', [], Uint8Array.from(rows.flat())), 1)
    const got = read(build.mdfFile({ order: build.inOrder(root, true), firstGroup: root }))
    expect(got.lines).toEqual([
      '1700000000.250000000 can7 18da10f1x Rremote ',
      '1700000000.500000000 can7 0 Rerror ',
      `1700000000.750000000 can7 123x RF ${'11'.repeat(16)}`,
      `1700000001.000000001 can7 123 R ${'11'.repeat(12)}`,
    ])
    expect(got.findings).toEqual([])
  })

  it('keeps every digit of a 64-bit nanosecond time stamp', () => {
    const channels = build.channels([
      { name: 't', type: 2, bitCount: 64, conversion: build.conversion(1, [0, 1e-9]) },
      { name: 'CAN_DataFrame.ID', byteOffset: 8, bitCount: 16 },
    ])
    const group = build.group({ recordBytes: 10, channels, cycles: 1 })
    const row = Uint8Array.from([
      ...new Uint8Array(BigUint64Array.of(1_234_567_890_123_456_789n).buffer),
      0x23,
      0x01,
    ])
    const root = build.dataGroup(group, build.draft('DT', [], row), 0)
    const got = read(
      build.mdfFile({ order: build.inOrder(root, true), firstGroup: root, startNanoseconds: 5n }),
    )
    expect(got.lines[0]?.split(' ')[0]).toBe('1234567890.123456794')
  })

  it('says what it cannot read: other versions, other storage, other buses', () => {
    const group = build.group({ recordBytes: WIDTH, channels: frameChannels(8), cycles: 0 })
    const root = build.dataGroup(group, build.draft('RD', [], ROWS), 0)
    expect(read(build.mdfFile({ order: build.inOrder(root, true), firstGroup: root })).codes()).toEqual([
      'mdf-storage-unknown',
    ])
    const old = build.mdfFile({ order: build.inOrder(root, true), firstGroup: root, version: 330 })
    old.set(new TextEncoder().encode('3.30'), 8)
    expect(read(old).findings).toMatchObject([
      {
        code: 'mdf-version',
        what: expect.stringContaining('MDF version 3.30'),
        doNext: expect.stringContaining('MDF 4.1'),
      },
    ])
    const columns = build.group({
      recordBytes: WIDTH,
      channels: frameChannels(8),
      cycles: SAMPLES.length,
      remoteMaster: true,
    })
    const apart = build.dataGroup(columns, build.draft('DV', [], ROWS), 0)
    expect(
      read(build.mdfFile({ order: build.inOrder(apart, true), firstGroup: apart })).findings,
    ).toMatchObject([
      { code: 'mdf-storage-unknown', what: expect.stringContaining('column storage') },
      { code: 'mdf-no-frames' },
    ])
    const lin = build.group({
      recordBytes: 8,
      channels: build.channels([{ name: 'LIN_Frame.ID', bitCount: 8 }]),
      cycles: 1,
    })
    const only = build.dataGroup(lin, build.draft('DT', [], new Uint8Array(8)), 0)
    expect(read(build.mdfFile({ order: build.inOrder(only, true), firstGroup: only })).codes()).toEqual([
      'mdf-no-frames',
    ])
  })

  it('is recognised by its first bytes, finished or not, and not by others', () => {
    const file = sortedFile(undefined, true)
    expect(MDF_FORMAT.recognise(file)).toContain('finished ASAM MDF file, version 4.10')
    expect(MDF_FORMAT.recognise(unsortedFile({ unfinished: 1 }, true))).toContain('unfinished')
    expect(MDF_FORMAT.recognise(new TextEncoder().encode('(0.1) can0 123#'))).toBeUndefined()
    expect(MDF_FORMAT.recognise(new Uint8Array(0))).toBeUndefined()
  })

  it('never throws on any bytes behind its mark', () => {
    fc.assert(
      fc.property(
        fc.uint8Array({ maxLength: 300 }),
        fc.constantFrom('MDF     4.10    ', 'UnFinMF 4.11    '),
        (bytes, mark) => {
          const file = new Uint8Array(64 + bytes.length)
          for (const [index, letter] of [...mark].entries()) file[index] = letter.charCodeAt(0)
          file[28] = 0x9a
          file[29] = 1
          file.set(bytes, 64)
          expect(read(file).findings.length).toBeGreaterThan(0)
        },
      ),
    )
  })
})
