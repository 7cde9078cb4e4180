import { readdirSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ReaderOptions } from '../capture/contract.ts'
import type { Finding } from '../finding/index.ts'
import { formatId, formatTime } from '../frame/index.ts'
import { collectFrames, hex } from '../mdf/testing/collect.ts'
import { sharedBytes, sharedPresent, sharedUrl } from '../testing/shared.ts'
import { CSV_FORMAT, columnsOf, openCsv, SAMPLE_BYTES, sampleTable } from './index.ts'

function read(text: string | Uint8Array, options: ReaderOptions = {}, size = 100_000) {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text
  const lines: string[] = []
  const places: (number | undefined)[] = []
  const { sink, findings } = collectFrames((frame) => {
    const direction = 'direction' in frame && typeof frame.direction === 'string' ? ` ${frame.direction}` : ''
    const marks = `${frame.fd ? ' fd' : ''}${frame.remote ? ' remote' : ''}${direction}`
    lines.push(
      `(${formatTime(frame.time)}) ${frame.channel} ${formatId(frame.id, frame.extended)}#${hex(frame.data).toUpperCase()}${marks}`,
    )
    places.push(frame.where.line)
  })
  const reader = openCsv(sink, options)
  for (let at = 0; at < bytes.length; at += size) reader.push(bytes.slice(at, at + size))
  reader.end()
  return { lines, places, findings, codes: () => findings.map((finding: Finding) => finding.code) }
}

// Source of the expectation: a candump log made from the same recording beforehand by a script that is not part of
// this project (recording: CC0, an open collection of electric-car logs).
describe.skipIf(!sharedPresent)('a real recording as a table', () => {
  it('gives the frames of its candump twin, and is sure of its columns', () => {
    const name = readdirSync(sharedUrl('captures/files/')).find((file) => /^01_.*\.csv$/.test(file))
    const bytes = sharedBytes(`captures/files/${name}`)
    const twin = new TextDecoder()
      .decode(sharedBytes('captures/files/01_can11_obd_uds_kwp_scan.log'))
      .trimEnd()
      .split('\n')
    for (const size of [1, 1000, 1_000_000]) {
      const got = read(bytes, {}, size)
      expect(got.lines).toEqual(twin)
      expect(got.findings).toEqual([])
    }
    expect(sampleTable(bytes, true)?.guess.confidence).toMatchObject({
      id: 'certain',
      data: 'certain',
      time: 'likely',
      extended: 'certain',
    })
    expect(CSV_FORMAT.recognise(bytes.subarray(0, 4096))).toBe(
      'comma-separated text with a header in line 1 that names time, id, extended, channel, length, data',
    )
  })
})

describe('a table of CAN frames (columns by common practice, no source)', () => {
  const frame = '(0.001000) can0 123#0102FF'

  it('reads one column of bytes, however the bytes are written', () => {
    for (const data of [
      '0102FF',
      '01 02 FF',
      '01-02-ff',
      '0x01 0x02 0xFF',
      '[01, 02, FF]',
      '01:02:ff',
      '0x0102FF',
    ]) {
      expect(read(`time (s);id;data\n0.001000;0x123;${data}\n`).lines).toEqual([frame])
      expect(read(`time (s),id,data\n0.001000,123h,"${data}"\n`).lines).toEqual([frame])
    }
  })

  it('reads data bytes in base64 (RFC 4648)', () => {
    fc.assert(
      fc.property(
        fc.array(fc.uint8Array({ minLength: 1, maxLength: 8 }), { minLength: 1, maxLength: 10 }),
        (list) => {
          // Some cell must be no hex word, or base64 cannot be told from it.
          const all = [Uint8Array.of(0xff), ...list]
          const rows = all.map(
            (data, index) => `0.${index + 1},0x123,${data.length},${Buffer.from(data).toString('base64')}`,
          )
          const mostlyHex = list.filter((data) =>
            /^[0-9a-f]+$/i.test(Buffer.from(data).toString('base64')),
          ).length
          fc.pre(mostlyHex * 2 < all.length)
          const got = read(`time s,id,dlc,data\n${rows.join('\n')}\n`)
          expect(got.lines.map((line) => line.split('#')[1])).toEqual(
            all.map((data) => hex(data).toUpperCase()),
          )
        },
      ),
    )
  })

  it('reads one column per byte from 0 or from 1, and more bytes than the header has names', () => {
    expect(read('time_ms,can id,b0,b1,b2\n1.000,123,01,02,FF\n').lines).toEqual([
      '(0.001000) can0 123#0102FF',
    ])
    expect(read('time_ms,can id,data\n1.000,123,01,02,FF\n').lines).toEqual(['(0.001000) can0 123#0102FF'])
  })

  it('reads units from the header, without losing a digit', () => {
    const time = (head: string, cell: string): string =>
      read(`${head},id,data\n${cell},123,AA\n`).lines[0] ?? ''
    expect(time('Time [s]', '1700000000.123456789')).toContain('(1700000000.123456789)')
    expect(time('timestamp_ns', '1700000000123456789')).toContain('(1700000000.123456789)')
    expect(time('Time (µs)', '1')).toContain('(0.000001)')
    expect(time('ts us', '7254438300')).toContain('(7254.438300)')
    expect(time('Time (ms)', '12.5')).toContain('(0.0125)')
    expect(time('time', '2031-02-03 04:05:06.789')).toContain(`(${Date.UTC(2031, 1, 3, 4, 5, 6) / 1000}.789)`)
    expect(time('time', '2031-02-03T04:05:06Z')).toContain(`(${Date.UTC(2031, 1, 3, 4, 5, 6) / 1000})`)
    expect(time('time', '04:05:06.5')).toContain('(14706.5)')
  })

  it('reads dates as the calendar of the machine does', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date(0), max: new Date('2199-12-31T00:00:00Z'), noInvalidDate: true }),
        (date) => {
          const text = date.toISOString()
          const seconds = (date.getTime() / 1000).toFixed(3)
          expect(read(`time,id,data\n${text},123,AA\n`).lines[0]).toContain(`(${seconds})`)
        },
      ),
      { numRuns: 100 },
    )
  })

  it('guesses the unit of bare numbers from how close frames can be', () => {
    const rows = (step: number, start: number): string =>
      Array.from({ length: 40 }, (_, index) => `${start + index * step},7${(index % 10) * 10 + 10},AA`).join(
        '\n',
      )
    const first = (step: number, start: number) => read(`time,id,data\n${rows(step, start)}\n`)
    expect(first(500, 0).lines[1]).toContain('(0.000500)')
    expect(first(500_000, 1_700_000_000_000_000_000).lines[0]).toContain('(1700000000.000000000)')
    expect(first(3, 1_700_000_000_000).lines[0]).toContain('(1700000000.000)')
    expect(first(3, 0).lines[1]).toContain('(0.003)')
    // 60,000 apart may be microseconds (60 ms) or nanoseconds (60 µs): it says that it guesses.
    const guessed = first(60_000, 0).findings.filter((finding) => finding.code === 'csv-guessed')
    expect(guessed.map((finding) => finding.params?.field)).toContain('time')
  })

  it('tells decimal identifiers from hex ones', () => {
    const ids = (cells: readonly string[], extended = ''): string[] =>
      read(
        `time s,id${extended === '' ? '' : ',ext'},data\n${cells.map((cell, index) => `${index}.1,${cell}${extended},AA`).join('\n')}\n`,
      ).lines.map((line) => line.split(' ')[2]?.slice(0, -3) ?? '')
    expect(ids(['7DF', '123'])).toEqual(['7DF', '123'])
    expect(ids(['007', '123'])).toEqual(['007', '123'])
    expect(ids(['2015', '2024'], ',false')).toEqual(['7DF', '7E8'])
    expect(ids(['417000241', '417000242'])).toEqual(
      ['18DAF331', '18DAF332'].map((_, index) =>
        (417_000_241 + index).toString(16).toUpperCase().padStart(8, '0'),
      ),
    )
    expect(ids(['18DAF110x', '7E8'])).toEqual(['18DAF110', '7E8'])
    expect(read('time s,id (dec),data\n0.1,291,AA\n').lines).toEqual(['(0.1) can0 123#AA'])
  })

  it('takes extended, channel, direction, remote and length columns', () => {
    const got = read(
      'Time[s];Bus;Dir;ID;Ext;RTR;DLC;Data\n0,1;CAN 2;Tx;123;Std;0;2;01 02 03\n0,2;3;Rx;123;Ext;0;2;0102\n0,3;3;Rx;124;Std;1;8;\n0,4;3;Rx;18DAF110;Ext;0;3;0102\n',
    )
    expect(got.lines).toEqual([
      '(0.1) can2 123#0102 transmitted',
      '(0.2) can3 00000123#0102 received',
      '(0.3) can3 124# remote received',
      '(0.4) can3 18DAF110#0102 received',
    ])
    expect(got.findings).toMatchObject([{ code: 'csv-length-differs', where: { line: 5 } }])
  })

  it('takes CAN FD lengths, as a number of bytes or as a length code', () => {
    const data = 'AB'.repeat(12)
    expect(read(`time s,id,len,data\n0.1,123,12,${data}\n`).lines).toEqual([`(0.1) can0 123#${data} fd`])
    expect(read(`time s,id,dlc,data\n0.1,123,9,${data}\n`).lines).toEqual([`(0.1) can0 123#${data} fd`])
  })

  it('passes over remarks, a byte-order mark and a preamble, and a header that comes again', () => {
    const rows = 'time s,id,data\n0.001000,123,0102FF\n'
    expect(read(`\uFEFF${rows}`).lines).toEqual([frame])
    expect(read(`# made by hand\n\n${rows}`).lines).toEqual([frame])
    expect(read(`bus speed: 500000\r\nstarted, by hand\r\n${rows.replaceAll('\n', '\r\n')}`).lines).toEqual([
      frame,
    ])
    const twice = read(rows + rows)
    expect(twice.lines).toEqual([frame, frame])
    expect(twice.places).toEqual([2, 4])
    expect(twice.findings).toEqual([])
  })

  it('reports each bad line with its number and reads the rest', () => {
    const got = read(
      'time s,id,ext,len,data\n0.1,123,0,2,0102\nx,123,0,2,0102\n0.2,12G,0,2,0102\n0.3,123,maybe,2,0102\n0.4,123,0,2,01Q2\n0.5,123,0,99,0102\n0.6,FFF,0,1,01\n0.7,"123,0,2,0102\n0.8\n0.9,123,0,2,0102\n',
    )
    expect(got.places).toEqual([2, 11])
    expect(got.findings.map((finding) => [finding.code, finding.where.line])).toEqual(
      [3, 4, 5, 6, 7, 8, 9, 10].map((line) => ['csv-bad-line', line]),
    )
  })

  it('tells every bad line with its number; the decoder bounds how many are shown', () => {
    const got = read(`time s,id,data\n0.1,123,AA\n${'0.1,zzz,AA\n'.repeat(250)}0.2,123,BB\n`, {
      columns: { id: 'id' },
    })
    expect(got.codes().filter((code) => code === 'csv-bad-line')).toHaveLength(250)
    expect(got.findings.at(-1)?.where.line).toBeGreaterThan(250)
    expect(got.lines).toHaveLength(2)
  })

  it('asks for the columns when the header says nothing, and takes them from a person', () => {
    const text = 'alpha,beta,gamma\n5,291,1 2 255\n'
    const asked = read(text)
    expect(asked.lines).toEqual([])
    expect(asked.findings).toMatchObject([
      { code: 'csv-not-understood', severity: 'error', where: { line: 1 } },
    ])
    expect(CSV_FORMAT.recognise(new TextEncoder().encode(text))).toBe(
      'comma-separated text with a header in line 1 whose columns must be named',
    )
    const columns = {
      time: 'alpha',
      timeUnit: 'ms',
      id: 'beta',
      idBase: 'dec',
      data: 'gamma',
      dataBase: 'dec',
    }
    expect(read(text, { columns }).lines).toEqual(['(0.005) can0 123#0102FF'])
    expect(read(text, { columns: { ...columns, id: '#2' } }).lines).toEqual(['(0.005) can0 123#0102FF'])
    expect(read(text, { columns: { ...columns, id: 'delta' } }).codes()).toEqual(['csv-column-unknown'])
    expect(read(text, { columns: { ...columns, colour: 'alpha' } }).codes()).toContain('csv-column-unknown')
  })

  it('lets a person correct a guess, and gives every guess in the words a person would use', () => {
    const text = 'Time,ID,D0,D1\n0.1,123,01,02\n'
    expect(read(text, { columns: { timeUnit: 'ms' } }).lines).toEqual(['(0.0001) can0 123#0102'])
    expect(read(text, { columns: { data: 'D0..D0' } }).lines[0]).toContain('#01')
    const sample = sampleTable(new TextEncoder().encode(text), true)
    const mapping = sample?.guess.mapping
    if (sample === undefined || mapping === undefined) throw new Error('not understood')
    const columns = columnsOf(mapping, sample.header)
    expect(columns).toMatchObject({ time: 'Time', timeUnit: 's', id: 'ID', data: 'D0..D1', extended: '' })
    expect(read(text, { columns }).lines).toEqual(read(text).lines)
  })

  it('finds identifier and bytes by their contents when the names are in unknown words', () => {
    const rows = ['0000,7E8,03,41,0C,1A', '0001,7E0,02,01,0C,00'].join('\n')
    const got = read(`ora,nomero,uno,due,tre,quattro\n${rows}\n`)
    expect(got.lines.map((line) => line.split(' ')[2])).toEqual(['7E8#03410C1A', '7E0#02010C00'])
    expect(got.codes()).toEqual(expect.arrayContaining(['csv-guessed', 'csv-no-time']))
  })

  it('reads a table longer than the sample line by line, and passes over a line without end', () => {
    const row = '0.1,0x123,0102030405060708\n'
    const many = Math.ceil(SAMPLE_BYTES / row.length) + 500
    const got = read(`time s,id,data\n${row.repeat(many)}${'A'.repeat(3_000_000)}\n0.2,124,AA\n`, {}, 5000)
    expect(got.lines).toHaveLength(many + 1)
    expect(got.places.at(-1)).toBe(many + 3)
    expect(got.codes()).toEqual(['csv-line-too-long'])
  })

  it('is not taken for other text', () => {
    for (const text of [
      '(0.1) can0 123#0102\n(0.2) can0 123#0102\n',
      '{"a": 1,\n"b": 2,\n"c": 3}\n',
      'one line only',
      '',
      '1,2,3\n4,5,6\n',
      'a,b\n1,2\n',
    ]) {
      expect(CSV_FORMAT.recognise(new TextEncoder().encode(text))).toBeUndefined()
    }
    expect(CSV_FORMAT.recognise(Uint8Array.of(0, 1, 2, 3))).toBeUndefined()
  })

  it('gives the same for any cutting, and never throws on any text', () => {
    const cell = fc.oneof(
      fc.constantFrom('time', 'id', 'data', '123', '0.1', 'AA BB', '"', ';', 'true', ''),
      fc.string({ maxLength: 6 }),
    )
    const line = fc.array(cell, { maxLength: 6 }).map((cells) => cells.join(','))
    fc.assert(
      fc.property(
        fc.array(line, { maxLength: 12 }),
        fc.integer({ min: 1, max: 40 }),
        fc.boolean(),
        (lines, size, headed) => {
          const text = `${headed ? 'time s,id,data\n' : ''}${lines.join('\n')}`
          const whole = read(text)
          const cut = read(text, {}, size)
          expect(cut.lines).toEqual(whole.lines)
          expect(cut.findings).toEqual(whole.findings)
        },
      ),
      { numRuns: 300 },
    )
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => void read(bytes)))
  })

  it('reads back any frame written as a row', () => {
    const aFrame = fc.record({
      ticks: fc.nat(2 ** 31 - 1),
      extended: fc.boolean(),
      raw: fc.nat(2 ** 29 - 1),
      bus: fc.integer({ min: 0, max: 9 }),
      data: fc.uint8Array({ maxLength: 8 }),
    })
    fc.assert(
      fc.property(fc.array(aFrame, { minLength: 1, maxLength: 20 }), (frames) => {
        const rows = frames.map(({ ticks, extended, raw, bus, data }) => {
          const id = extended ? raw : raw & 0x7ff
          const bytes = Array.from({ length: 8 }, (_, index) =>
            index < data.length ? hex(data.subarray(index, index + 1)) : '',
          )
          return `${ticks},${id.toString(16).padStart(8, '0')},${extended},${bus},${data.length},${bytes.join(',')}`
        })
        const got = read(`time us,id hex,extended,bus,len,d1 hex,d2,d3,d4,d5,d6,d7,d8\n${rows.join('\n')}\n`)
        expect(got.lines).toEqual(
          frames.map(({ ticks, extended, raw, bus, data }) => {
            const time = `${Math.floor(ticks / 1e6)}.${String(ticks % 1e6).padStart(6, '0')}`
            return `(${time}) can${bus} ${formatId(extended ? raw : raw & 0x7ff, extended)}#${hex(data).toUpperCase()}${data.length > 8 ? ' fd' : ''}`
          }),
        )
        expect(got.findings).toEqual([])
      }),
    )
  })
})
