/**
 * @module The timeline of invented recordings. Services of ISO 14229-1, S3 of ISO 14229-2 (5 s), PID 42 of SAE J1979.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { candumpLine } from '../candump/write.ts'
import { decodeBytes, decodeFrames, frame } from '../decode/testing/decode.ts'
import type { CanFrame } from '../frame/index.ts'
import type { Message } from '../message/types.ts'
import { PcapngWriter } from '../pcap/write.ts'
import { sharedBytes, sharedPresent } from '../testing/shared.ts'
import { Supply } from './supply.ts'
import { Timeline, type TimelineOptions } from './timeline.ts'

/** `seconds id hex` lines of single frames, as messages. */
function messages(...lines: readonly string[]): Message[] {
  const frames = lines.map((line) => {
    const [time, id, data] = line.split(' ') as [string, string, string]
    const length = (data.length / 2).toString(16).padStart(2, '0')
    return frame(Number(time) * 1000, Number.parseInt(id, 16), `${length}${data}`)
  })
  return decodeFrames(frames).messages
}

function timeline(lines: readonly string[], options: TimelineOptions = {}) {
  const gatherer = new Timeline(options)
  for (const message of messages(...lines)) gatherer.message(message)
  return gatherer.end()
}

/** One line each: `from-to unit what detail [end]`, without what is not asked about. */
function short(lines: readonly string[], ...without: readonly string[]): string[] {
  return timeline(lines)
    .entries.filter((entry) => !without.includes(entry.what))
    .map((entry) => {
      const span =
        entry.from === entry.to ? String(Number(entry.from)) : `${Number(entry.from)}-${Number(entry.to)}`
      const proof = entry.proof === 'asked' ? ' (asked)' : ''
      const end = entry.endedBy === undefined ? '' : ` [${entry.endedBy}]`
      return `${span} ${entry.unit} ${entry.what} ${entry.detail}${proof}${end}`.replace(/ {2,}/g, ' ')
    })
}

describe('a session', () => {
  it('runs from the answer to 10 01', () => {
    const lines = [
      '1 7E0 1003',
      '1.1 7E8 5003003201F4',
      '2 7E0 3E00',
      '2.1 7E8 7E00',
      '3 7E0 1001',
      '3.1 7E8 5001003201F4',
    ]
    expect(short(lines, 'addressed')).toEqual(['1.1-3.1 7E8 session extendedDiagnosticSession 03 [asked]'])
  })

  it('ends by itself 5 s after the last request, which the entry says', () => {
    const lines = [
      '1 7E0 1003',
      '1.1 7E8 5003003201F4',
      '3 7E0 22F190',
      '3.1 7E8 7F2231',
      '20 7E0 22F190',
      '20.1 7E8 7F2231',
    ]
    expect(short(lines, 'addressed', 'refused', 'gap')).toEqual([
      '1.1-8.1 7E8 session extendedDiagnosticSession 03 [time-out]',
    ])
  })

  it('is kept alive by tester present to the group, and still open at the end of the recording', () => {
    const kept = ['1 7E0 1003', '1.1 7E8 5003003201F4', ...[4, 8, 12, 16].map((time) => `${time} 7DF 3E80`)]
    expect(short(kept, 'addressed')).toEqual([
      '1.1-16 7E8 session extendedDiagnosticSession 03 [recording-end]',
    ])
    // A request to another unit keeps nothing alive here.
    const other = [
      '1 7E0 1003',
      '1.1 7E8 5003003201F4',
      '2 7E1 22F190',
      '2.1 7E9 7F2231',
      '7 7E1 22F190',
      '7.1 7E9 7F2231',
    ]
    expect(short(other, 'addressed', 'refused')).toEqual([
      '1.1-6.1 7E8 session extendedDiagnosticSession 03 [time-out]',
    ])
  })

  it('is replaced by another, and a reset ends it with all it allowed', () => {
    const lines = [
      '1 7E0 1003',
      '1.1 7E8 5003003201F4',
      '2 7E0 2701',
      '2.1 7E8 6701AABB',
      '2.2 7E0 2702CCDD',
      '2.3 7E8 6702',
      '3 7E0 1002',
      '3.1 7E8 5002003201F4',
      '4 7E0 1101',
      '4.1 7E8 5101',
    ]
    expect(short(lines, 'addressed')).toEqual([
      '1.1-3.1 7E8 session extendedDiagnosticSession 03 [replaced]',
      '2.3-3.1 7E8 security-opened level 1 [session-end]',
      '3.1-4.1 7E8 session programmingSession 02 [reset]',
      '4.1 7E8 reset hardReset',
    ])
  })

  it('of KWP2000 ends by 20', () => {
    const lines = ['1 7A0 1090', '1.1 7A8 5090', '2 7A0 20', '2.1 7A8 60']
    expect(short(lines, 'addressed')).toEqual(['1.1-2.1 7A8 session manufacturerSpecific 90 [asked]'])
  })
})

describe('what is done to a unit', () => {
  it('refusals are one line each kind, with their number; waiting is no refusal', () => {
    const lines = [
      '1 7E0 22F190',
      '1.1 7E8 7F2278',
      '1.2 7E8 7F2231',
      '2 7E0 22F190',
      '2.1 7E8 7F2231',
      '3 7E0 2701',
      '3.1 7E8 7F2737',
    ]
    const refused = timeline(lines).entries.filter((entry) => entry.what.endsWith('refused'))
    expect(
      refused.map(({ from, to, what, detail, times }) => [Number(from), Number(to), what, detail, times]),
    ).toEqual([
      [1.2, 2.1, 'refused', '22 ReadDataByIdentifier: RequestOutOfRange', 2],
      [3.1, 3.1, 'security-refused', '27 SecurityAccess: RequiredTimeDelayNotExpired', 1],
    ])
  })

  it('writing is told by its identifier and never by its content', () => {
    const lines = [
      '1 7E0 2E0123A1B2',
      '1.1 7E8 6E0123',
      '2 7E0 3400440000',
      '2.1 7E8 742010',
      '2.2 7E0 3601C0FFEE',
      '2.3 7E8 7601',
      '2.4 7E0 3602C0FFEE',
      '2.5 7E8 7602',
      '2.6 7E0 37',
      '2.7 7E8 77',
      '3 7E0 3101FF00',
      '3.1 7E8 7101FF00',
    ]
    expect(short(lines, 'addressed')).toEqual([
      '1.1 7E8 written 0123 VehicleManufacturerSpecific',
      '2.1-2.7 7E8 written RequestDownload [asked]',
      '3.1 7E8 routine startRoutine FF00',
    ])
    const text = JSON.stringify(timeline(lines)).toUpperCase()
    for (const secret of ['A1B2', 'C0FFEE']) expect(text).not.toContain(secret)
    expect(timeline(lines).entries.find((entry) => entry.detail === 'RequestDownload')?.times).toBe(2)
  })

  it('clears count when the unit confirms them, in UDS and OBD', () => {
    const lines = [
      '1 7E0 14FFFFFF',
      '1.1 7E8 54',
      '2 7DF 04',
      '2.1 7E8 44',
      '3 7E0 14FFFFFF',
      '3.1 7E8 7F1422',
    ]
    expect(short(lines, 'addressed', 'refused')).toEqual(
      ['1.1 7E8 cleared', '2.1 7E8 cleared emission-related codes'].map((line) =>
        line.endsWith('cleared') ? `${line} ` : line,
      ),
    )
  })

  it('silence and closed code memory last until they are taken back', () => {
    const lines = [
      '1 7E0 1003',
      '1.1 7E8 5003003201F4',
      '2 7E0 8502',
      '2.1 7E8 C502',
      '3 7E0 280301',
      '3.1 7E8 6803',
      '4 7E0 280001',
      '4.1 7E8 6800',
      '5 7E0 1001',
      '5.1 7E8 5001003201F4',
    ]
    expect(short(lines, 'addressed')).toEqual([
      '1.1-5.1 7E8 session extendedDiagnosticSession 03 [asked]',
      '2.1-5.1 7E8 codes-off off [session-end]',
      '3.1-4.1 7E8 muted disableRxAndTx [asked]',
    ])
  })

  it('what was asked of a group without an answer is told as asked, and taken back the same way', () => {
    const lines = ['1 7E0 22F190', '1.1 7E8 7F2231', '2 7DF 288301', '4 7DF 288001']
    expect(short(lines, 'addressed', 'refused')).toEqual(['2-4 7DF muted disableRxAndTx (asked) [asked]'])
  })
})

describe('the recording', () => {
  it('shows who was addressed, by whom, and who did not answer', () => {
    const lines = [
      '1 7DF 0100',
      '1.1 7E8 4100BE1FA813',
      '1.2 7E9 4100BE1FA813',
      '2 7E5 1003',
      '3 7E0 2101',
      '3.1 7E8 7F2111',
    ]
    const addressed = timeline(lines).entries.filter((entry) => entry.what === 'addressed')
    expect(addressed.map((entry) => [entry.unit, entry.detail, entry.proof, entry.counts])).toEqual([
      ['7E8', '7DF 7E0', 'answered', { requests: 0, answers: 2, refusals: 1 }],
      ['7E9', '7DF', 'answered', { requests: 0, answers: 1, refusals: 0 }],
      ['7E5', '', 'asked', { requests: 1, answers: 0, refusals: 0 }],
    ])
  })

  it('has gaps where no message passed for ten seconds, or nothing was recorded when that is known', () => {
    const lines = ['1 7E0 22F190', '1.1 7E8 7F2231', '30 7E0 22F190', '30.1 7E8 7F2231']
    expect(short(lines, 'addressed', 'refused')).toEqual(['1.1-30 gap no diagnostic message'])
    const fed = new Timeline()
    const all = messages(...lines)
    const at = (seconds: number) => ({ seconds, nanoseconds: 0, decimals: 6 })
    fed.recorded('can0', at(1), at(10))
    for (const message of all) fed.message(message)
    fed.recorded('can0', at(22), at(40))
    const gaps = fed.end().entries.filter((entry) => entry.what === 'gap')
    expect(gaps.map(({ from, to, detail }) => [from, to, detail])).toEqual([
      ['10.000000', '22.000000', 'nothing recorded'],
    ])
  })

  it('tells real silence in any recording, although plain frames are only counted', () => {
    const plain = (from: number, to: number): CanFrame[] =>
      Array.from({ length: (to - from) * 50 }, (_, index) => ({
        ...frame(1_700_000_000_000 + from * 1000 + index * 20, 0x123, `FF${index % 2}1FFFFFFFFFFFFF`),
        channel: 'can0',
      }))
    // Twelve seconds of nothing, and nine, which are no gap.
    const frames = [...plain(0, 60), ...plain(72, 100), ...plain(109, 120)]
    const writer = new PcapngWriter()
    const recordings = {
      text: new TextEncoder().encode(frames.map((one) => `${candumpLine(one)}\n`).join('')),
      pcapng: Uint8Array.from(
        [writer.header(), ...frames.map((one) => writer.frame(one))].flatMap((part) => [...part]),
      ),
    }
    for (const [name, bytes] of Object.entries(recordings)) {
      const timeline = new Timeline()
      decodeBytes(bytes, { recorded: (channel, from, to) => timeline.recorded(channel, from, to) })
      const gaps = timeline
        .end()
        .entries.map(({ from, to, what }) => [
          what,
          Math.round(Number(from) - 1.7e9),
          Math.round(Number(to) - 1.7e9),
        ])
      expect([name, gaps]).toEqual([name, [['gap', 60, 72]]])
    }
  })

  it('is bounded in time and memory by 200,000 gaps and 65,536 units', () => {
    const timeline = new Timeline()
    const [one] = messages('1 7E0 22F190')
    if (one === undefined) throw new Error('no message')
    for (let index = 0; index < 200_000; index++) {
      const time = { seconds: index * 20, nanoseconds: 0, decimals: 0 }
      timeline.message({ ...one, time, id: `${(index & 0xffff).toString(16)}>1` })
    }
    const result = timeline.end()
    expect(result.entries.length).toBeLessThanOrEqual(20_000)
    expect(result.leftOut).toBeGreaterThan(180_000)
  })

  it('shows the supply voltage whenever it passed, by OBD and by UDS, but not that of a freeze frame', () => {
    const lines = [
      '1 7DF 0142',
      '1.1 7E8 41422FA8',
      '2 7E0 22F442',
      '2.1 7E8 62F4422FB2',
      '3 7DF 0142',
      '3.1 7E8 41422CEC',
      '4 7DF 024200',
      '4.1 7E8 42420030D4',
    ]
    const volts = timeline(lines).entries.filter((entry) => entry.what === 'supply-voltage')
    expect(volts.map(({ from, to, volts: span, times }) => [Number(from), Number(to), span, times])).toEqual([
      [1.1, 2.1, { low: 12.2, high: 12.21 }, 2],
      [3.1, 3.1, { low: 11.5, high: 11.5 }, 1],
    ])
  })

  it('holds no more lines than it may, and counts the others', () => {
    const lines = Array.from({ length: 50 }, (_, index) => [
      `${index} 7E0 14FFFFFF`,
      `${index}.1 7E8 54`,
    ]).flat()
    const result = timeline(lines, { mostEntries: 20 })
    expect(result.entries).toHaveLength(20)
    expect(result.leftOut).toBe(31)
  })
})

describe('the supply', () => {
  it('stays fine in time when the voltage never rests', () => {
    const supply = new Supply(64)
    for (let second = 0; second < 10_000; second++)
      supply.add({ seconds: second, nanoseconds: 0, decimals: 0 }, second % 2 === 0 ? 12 : 14)
    expect(supply.spans.length).toBeGreaterThan(16)
    const longest = Math.max(...supply.spans.map((span) => span.to.seconds - span.from.seconds))
    expect(longest).toBeLessThan(10_000 / 8)
  })

  it('PROPERTY keeps the lowest and the highest voltage and every reading, in as few spans as it may have', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 6000, max: 16000 }), { minLength: 1, maxLength: 400 }),
        (millivolts) => {
          const supply = new Supply(16)
          millivolts.forEach((value, index) => {
            supply.add({ seconds: index, nanoseconds: 0, decimals: 3 }, value / 1000)
          })
          expect(supply.spans.length).toBeLessThanOrEqual(16)
          expect(Math.min(...supply.spans.map((span) => span.low))).toBe(Math.min(...millivolts) / 1000)
          expect(Math.max(...supply.spans.map((span) => span.high))).toBe(Math.max(...millivolts) / 1000)
          expect(supply.spans.reduce((sum, span) => sum + span.times, 0)).toBe(millivolts.length)
          for (const [index, span] of supply.spans.entries()) {
            const next = supply.spans[index + 1]
            if (next !== undefined) expect(next.from.seconds).toBe(span.to.seconds + 1)
          }
        },
      ),
    )
  })
})

describe.skipIf(!sharedPresent)('recordings of the shared set', () => {
  it('12: the DoIP recording opens sessions 02 and 03 in one entity', () => {
    const gatherer = new Timeline()
    for (const message of decodeBytes(sharedBytes('captures/files/12_doip_session.pcap')).messages)
      gatherer.message(message)
    const sessions = gatherer.end().entries.filter((entry) => entry.what === 'session')
    expect(sessions.map((entry) => entry.detail.slice(-2))).toContain('02')
    expect(sessions.every((entry) => Number(entry.to) >= Number(entry.from))).toBe(true)
  })

  it('01: every refusal but waiting is counted, as the manifest of the recording lists them', () => {
    const gatherer = new Timeline()
    const { messages: all } = decodeBytes(sharedBytes('captures/files/01_can11_obd_uds_kwp_scan.log'))
    for (const message of all) gatherer.message(message)
    const refused = gatherer.end().entries.filter((entry) => entry.what.endsWith('refused'))
    const times = refused.reduce((sum, entry) => sum + (entry.times ?? 0), 0)
    // MANIFEST.tsv: 7F/1012:10 1811:41 1812:9 1821:3 1911:12 1912:7 1922:2 1931:6 197F:1 2000:2 2011:5 207F:1.
    expect(times).toBe(10 + 41 + 9 + 3 + 12 + 7 + 2 + 6 + 1 + 2 + 5 + 1)
  })
})

describe('any messages', () => {
  it('PROPERTY give a timeline in order, whose spans do not run backwards, and never an exception', () => {
    const service = fc.constantFrom(
      '10',
      '11',
      '14',
      '22',
      '27',
      '28',
      '2E',
      '31',
      '34',
      '36',
      '37',
      '3E',
      '85',
    )
    const line = fc.tuple(
      service,
      fc.constantFrom(0, 0x40, 0x7f),
      fc.integer({ min: 0, max: 255 }),
      fc.nat(9),
    )
    fc.assert(
      fc.property(fc.array(line, { maxLength: 60 }), (built) => {
        const lines = built.map(([hex, kind, second, pause], index) => {
          const value = second.toString(16).padStart(2, '0')
          const first = (Number.parseInt(hex, 16) | 0x40).toString(16)
          const data =
            kind === 0 ? `${hex}${value}` : kind === 0x40 ? `${first}${value}00` : `7f${hex}${value}`
          return `${index * 3 + pause * 0.1} ${kind === 0 ? '7E0' : '7E8'} ${data}`
        })
        const { entries } = timeline(lines)
        for (const [index, entry] of entries.entries()) {
          expect(Number(entry.to)).toBeGreaterThanOrEqual(Number(entry.from))
          const next = entries[index + 1]
          if (next !== undefined) expect(Number(next.from)).toBeGreaterThanOrEqual(Number(entry.from))
        }
      }),
      { numRuns: 60 },
    )
  })
})
