/** @module Packet captures with CAN. Layouts: tcpdump.org (pcap-savefile, link types 227, 113, 276) and draft-ietf-opsawg-pcapng. */

import { describe, expect, it } from 'vitest'
import type { CaptureSink } from '../capture/contract.ts'
import { openRecognising } from '../capture/head-first.ts'
import { READERS } from '../capture/readers.ts'
import type { Finding } from '../finding/index.ts'
import { type CanFrame, formatTime, keepFrame } from '../frame/index.ts'
import {
  block,
  enhancedPacket,
  interfaceDescription,
  joined,
  pcap,
  sectionHeader,
  sll,
  sll2,
  socketCan,
} from './testing/build.ts'

function read(bytes: Uint8Array, chunk = bytes.length) {
  const frames: CanFrame[] = []
  const findings: Finding[] = []
  const sink: CaptureSink = {
    frame: (frame) => frames.push(keepFrame(frame)),
    doip: () => {},
    announcement: () => {},
    finding: (finding) => findings.push(finding),
  }
  const reader = openRecognising(READERS, sink, {})
  for (let at = 0; at < bytes.length; at += chunk) reader.push(new Uint8Array(bytes.subarray(at, at + chunk)))
  reader.end()
  return {
    format: reader.recognised?.format,
    lines: frames.map(
      (f) =>
        `${formatTime(f.time)} ${f.channel} ${f.id.toString(16)}${f.extended ? 'x' : ''}${f.fd ? 'f' : ''}${f.error ? 'e' : ''} ${Buffer.from(f.data).toString('hex')}`,
    ),
    findings: findings.map((finding) => `${finding.code} ${finding.where.byteOffset}`),
  }
}

const BOTH = [{ littleEndian: true }, { littleEndian: false }]
const packets = [
  { seconds: 10, fraction: 250, data: socketCan(0x7e0, [2, 0x3e, 0]) },
  { seconds: 11, fraction: 999_999, data: socketCan(0x18daf110, [2, 0x7e, 0]) },
]

describe('pcap', () => {
  it.each(BOTH)('is read in either byte order, with micro- and nanoseconds: %o', (order) => {
    expect(read(pcap(packets, { ...order, linkType: 227 }))).toEqual({
      format: 'pcap',
      lines: ['10.000250 if0 7e0 023e00', '11.999999 if0 18daf110x 027e00'],
      findings: [],
    })
    expect(read(pcap(packets, { ...order, linkType: 227, nanoseconds: true })).lines[0]).toBe(
      '10.000000250 if0 7e0 023e00',
    )
  })

  it('identifiers in the wrong byte order are recognised over the whole file and told once', () => {
    const swapped = [0x00a, 0x7e0, 0x7e8, 0x18daf110].map((id, index) => ({
      seconds: index,
      fraction: 0,
      data: socketCan(id, [index], { swapped: true }),
    }))
    expect(read(pcap(swapped, { littleEndian: true, linkType: 227 }))).toMatchObject({
      lines: ['0.000000 if0 a 00', '1.000000 if0 7e0 01', '2.000000 if0 7e8 02', '3.000000 if0 18daf110x 03'],
      findings: ['identifiers-little-endian 24'],
    })
  })

  it('a single error frame does not turn the byte order', () => {
    const error = joined([0x20, 0, 0, 0x80, 8, 0, 0, 0], new Array<number>(8).fill(0))
    expect(
      read(pcap([{ seconds: 1, fraction: 0, data: error }], { littleEndian: true, linkType: 227 })).lines,
    ).toEqual(['1.000000 if0 80e 0000000000000000'])
  })

  it('cooked captures hold CAN and CAN FD, identifiers in the order of the machine, and SLL2 the interface', () => {
    const fd = Array.from({ length: 12 }, (_, index) => index)
    const inside = [socketCan(0x123, [1, 2], { swapped: true }), socketCan(0x123, fd, { swapped: true })]
    const cooked = [
      { seconds: 1, fraction: 0, data: sll(0x000c, inside[0] as Uint8Array) },
      { seconds: 2, fraction: 0, data: sll(0x000d, inside[1] as Uint8Array) },
    ]
    expect(read(pcap(cooked, { littleEndian: true, linkType: 113 }))).toMatchObject({
      lines: ['1.000000 if0 123 0102', '2.000000 if0 123f 000102030405060708090a0b'],
      findings: [],
    })
    const two = [1, 2].map((index) => ({
      seconds: index,
      fraction: 0,
      data: sll2(0x000c, index, socketCan(0x123, [index])),
    }))
    expect(read(pcap(two, { littleEndian: true, linkType: 276 })).lines).toEqual([
      '1.000000 if0.1 123 01',
      '2.000000 if0.2 123 02',
    ])
  })

  it('a frame that states more than it holds, or more than its kind can, is told and left out', () => {
    const bad = [
      { seconds: 1, fraction: 0, data: joined([0, 0, 7, 0xe0, 8, 0, 0, 0], [1, 2]) },
      { seconds: 2, fraction: 0, data: joined([0, 0, 7], []) },
      ...packets,
    ]
    expect(read(pcap(bad, { littleEndian: true, linkType: 227 }))).toMatchObject({
      lines: ['10.000250 if0 7e0 023e00', '11.999999 if0 18daf110x 027e00'],
      findings: ['bad-frame 24', 'bad-frame 50'],
    })
  })

  it('a damaged record header is passed over and reading goes on at the next believable one', () => {
    const good = pcap([...packets, ...packets], { littleEndian: true, linkType: 227 })
    good.fill(0xff, 24, 40)
    const { lines, findings } = read(good)
    expect(lines).toHaveLength(3)
    expect(findings).toEqual(['bytes-lost 24'])
  })

  it('bytes of zeros after the records are told once', () => {
    const bytes = joined(pcap(packets, { littleEndian: true, linkType: 227 }), new Uint8Array(5000))
    expect(read(bytes)).toMatchObject({ findings: ['bytes-lost 78'] })
    expect(read(bytes).lines).toHaveLength(2)
  })

  it('cut at every byte, it tells the cut and keeps every whole record', () => {
    const whole = pcap(packets, { littleEndian: true, linkType: 227 })
    for (let length = 4; length < whole.length; length++) {
      const { lines, findings } = read(whole.subarray(0, length), 5)
      expect(lines).toHaveLength(length < 51 ? 0 : 1)
      const atRecordEnd = length === 24 || length === 51
      expect(findings).toEqual(atRecordEnd ? [] : [`record-cut ${length < 24 ? 0 : length < 51 ? 24 : 51}`])
    }
  })

  it('a link type that carries neither CAN nor IP is told once', () => {
    expect(read(pcap(packets, { littleEndian: true, linkType: 147 })).findings).toEqual([
      'link-type-unknown 24',
    ])
  })
})

describe('pcapng', () => {
  const frame = socketCan(0x7e0, [2, 0x3e, 0])

  it.each(BOTH)('several interfaces, each with its name, resolution and offset: %o', (order) => {
    const bytes = joined(
      sectionHeader(order),
      interfaceDescription(227, { ...order, name: 'can0' }),
      interfaceDescription(227, { ...order, name: 'can1', resolution: 9 }),
      interfaceDescription(227, { ...order, resolution: 0x8a, offset: 1000 }),
      interfaceDescription(227, { ...order, name: 'slow', resolution: 3, offset: -2 }),
      enhancedPacket(0, 1_700_000_000_000_001n, frame, order),
      enhancedPacket(1, 1_700_000_000_000_000_001n, frame, order),
      enhancedPacket(2, 1024n + 512n, frame, order),
      enhancedPacket(3, 5_250n, frame, order),
    )
    for (const chunk of [bytes.length, 1, 13]) {
      expect(read(bytes, chunk)).toEqual({
        format: 'pcapng',
        lines: [
          '1700000000.000001 can0 7e0 023e00',
          '1700000000.000000001 can1 7e0 023e00',
          '1001.5000 if2 7e0 023e00',
          '3.250 slow 7e0 023e00',
        ],
        findings: [],
      })
    }
  })

  it('a new section may turn the byte order and describes its own interfaces', () => {
    const [little, big] = BOTH as [{ littleEndian: boolean }, { littleEndian: boolean }]
    const section = (order: { littleEndian: boolean }, name: string): Uint8Array =>
      joined(
        sectionHeader(order),
        interfaceDescription(227, { ...order, name }),
        enhancedPacket(0, 1_000_000n, frame, order),
      )
    expect(read(joined(section(little, 'a'), section(big, 'b'))).lines).toEqual([
      '1.000000 a 7e0 023e00',
      '1.000000 b 7e0 023e00',
    ])
  })

  it('simple and obsolete packet blocks are read; unknown blocks are noted once and passed over', () => {
    const order = { littleEndian: true }
    const simple = block(3, joined([frame.length, 0, 0, 0], frame), order)
    const obsolete = block(
      2,
      joined([0, 0, 0, 0, 0, 0, 0, 0, 64, 66, 15, 0, frame.length, 0, 0, 0, frame.length, 0, 0, 0], frame),
      order,
    )
    const unknown = block(0x7777, new Uint8Array(100), order)
    const names = block(4, new Uint8Array(8), order)
    const bytes = joined(
      sectionHeader(order),
      interfaceDescription(227, order),
      obsolete,
      unknown,
      unknown,
      names,
      simple,
    )
    expect(read(bytes)).toMatchObject({
      lines: ['1.000000 if0 7e0 023e00', '1.000000 if0 7e0 023e00'],
      findings: [`block-unknown ${28 + 20 + obsolete.length}`],
    })
  })

  it('damage is told; reading goes on at the next section', () => {
    const order = { littleEndian: true }
    const section = joined(
      sectionHeader(order),
      interfaceDescription(227, order),
      enhancedPacket(0, 1_000_000n, frame, order),
    )
    const { lines, findings } = read(joined(section, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10], section), 7)
    expect(lines).toHaveLength(2)
    expect(findings).toEqual([`bytes-lost ${section.length}`])
  })

  it('a packet of an interface that was not described, and a block whose lengths differ, are told', () => {
    const order = { littleEndian: true }
    const start = joined(sectionHeader(order), interfaceDescription(227, order))
    expect(read(joined(start, enhancedPacket(5, 1n, frame, order))).findings).toEqual([
      `interface-unknown ${start.length}`,
    ])
    const differs = enhancedPacket(0, 1n, frame, order)
    differs[differs.length - 4] = 0
    expect(read(joined(start, differs))).toMatchObject({
      lines: ['0.000001 if0 7e0 023e00'],
      findings: [`block-length-differs ${start.length}`],
    })
  })

  it('cut at every byte, it tells the cut', () => {
    const order = { littleEndian: false }
    const start = joined(sectionHeader(order), interfaceDescription(227, order))
    const whole = joined(start, enhancedPacket(0, 1n, frame, order))
    for (let length = 12; length < whole.length; length++) {
      const { findings } = read(whole.subarray(0, length), 3)
      const atBlockEnd = length === 28 || length === start.length
      expect(findings).toEqual(
        atBlockEnd ? [] : [`record-cut ${length < 28 ? 0 : length < start.length ? 28 : start.length}`],
      )
    }
  })
})
