import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { diagnostic, doip, joined } from '../doip/testing/build.ts'
import { createPacketReader } from './index.ts'
import { collect } from './testing/collect.ts'
import { type End, ethernet, ip, linkPacket, tcp, udp } from './testing/packets.ts'

const tester: End = { address: [169, 254, 1, 2], port: 13_400 }
const gateway: End = { address: [169, 254, 1, 1], port: 13_400 }
const v6 = (last: number): End => ({ address: [0xfe, 0x80, ...new Array(13).fill(0), last], port: 13_400 })

const VIN = Array.from('INVENTED-00000002', (letter) => letter.charCodeAt(0))
const announcement = doip(0x0004, [...VIN, 0x10, 0x01, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 0])

function read(frames: readonly Uint8Array[], linkType = 1) {
  const collected = collect()
  const reader = createPacketReader(collected.sink)
  for (const [index, frame] of frames.entries()) reader.packet(linkPacket(frame, index, index, linkType))
  reader.end()
  return collected
}

describe('DoIP out of captured packets', () => {
  it('reads an announcement over IPv4 and IPv6, with no, one and two VLAN tags', () => {
    const broadcast: End = { address: [255, 255, 255, 255], port: 13_400 }
    for (const vlans of [[], [5], [100, 5]]) {
      for (const [from, to] of [
        [gateway, broadcast],
        [v6(1), v6(2)],
      ] as const) {
        const got = read([udp(from, to, announcement, vlans)])
        expect(got.findings).toEqual([])
        expect(got.announcements).toMatchObject([
          {
            vin: 'INVENTED-00000002',
            source: '1001',
            eid: '010203040506',
            gid: '0708090A0B0C',
            channel: 'eth0',
          },
        ])
      }
    }
  })

  it('reads the same packet as Ethernet, raw IP, Linux cooked and cooked version 2', () => {
    const whole = udp(gateway, tester, announcement)
    const bare = whole.subarray(14)
    const cooked = joined([Uint8Array.of(0, 0, 0, 1, 0, 6, 2, 0, 0, 0, 0, 1, 0, 0, 8, 0), bare])
    const cooked2 = joined([Uint8Array.of(8, 0, 0, 0, 0, 0, 0, 1, 0, 1, 0, 6, 2, 0, 0, 0, 0, 1, 0, 0), bare])
    for (const [linkType, data] of [
      [1, whole],
      [101, bare],
      [113, cooked],
      [276, cooked2],
    ] as const) {
      expect(read([data], linkType).announcements).toHaveLength(1)
    }
  })

  it('does not take Ethernet padding for data', () => {
    const short = udp(tester, gateway, doip(0x0001, []))
    const got = read([joined([short, new Uint8Array(60 - short.length)])])
    expect(got.findings).toEqual([])
  })

  it('passes over IPv6 extension headers (RFC 8200)', () => {
    const from = v6(1)
    const to = v6(2)
    const inner = udp(from, to, announcement).subarray(14 + 40)
    const extensions = Uint8Array.of(
      60,
      0,
      1,
      4,
      0,
      0,
      0,
      0,
      43,
      1,
      1,
      12,
      ...new Array(12).fill(0),
      17,
      0,
      0,
      0,
      0,
      0,
      0,
      0,
    )
    expect(read([ethernet(ip(from, to, 0, joined([extensions, inner])))]).announcements).toHaveLength(1)
  })

  describe('IP packets sent in pieces (RFC 791, RFC 8200)', () => {
    const datagram = udp(gateway, tester, announcement).subarray(34)
    const cut = (from: number, to: number, more: boolean): Uint8Array =>
      ethernet(ip(gateway, tester, 17, datagram.subarray(from, to), (more ? 0x2000 : 0) + from / 8))
    const end = datagram.length
    const pieces = [cut(0, 24, true), cut(24, 32, true), cut(32, end, false)]
    const [first, second, third] = pieces as [Uint8Array, Uint8Array, Uint8Array]

    it('are joined in any order, and when a piece comes twice', () => {
      for (const order of [
        pieces,
        [third, first, second],
        [first, first, third, second],
        [second, third, first],
      ]) {
        const got = read(order)
        expect([got.announcements.length, got.findings]).toEqual([1, []])
      }
    })

    it('are joined over IPv6 and for TCP', () => {
      const sixth = (port: number): End => ({ address: [0xfe, 0x80, ...new Array(13).fill(0), 1], port })
      const body = udp(sixth(13400), sixth(13400), announcement).subarray(54)
      const six = (from: number, to: number, more: boolean): Uint8Array =>
        ethernet(
          ip(
            sixth(0),
            sixth(0),
            44,
            joined([
              Uint8Array.of(17, 0, from >> 8, (from & 0xf8) | (more ? 1 : 0), 0, 0, 0, 9),
              body.subarray(from, to),
            ]),
          ),
        )
      expect(read([six(16, body.length, false), six(0, 16, true)]).announcements).toHaveLength(1)
      const ask = diagnostic(0x0e80, 0xe400, [0x3e, 0x00])
      const segment = tcp({
        from: { ...tester, port: 50_000 },
        to: gateway,
        sequence: 1,
        flags: 'PA',
        payload: ask,
      })
      const halves = [segment.subarray(34, 58), segment.subarray(58)] as const
      const got = read([
        ethernet(ip(tester, gateway, 6, halves[1], 3)),
        ethernet(ip(tester, gateway, 6, halves[0], 0x2000)),
      ])
      expect(got.lines()).toEqual(['0E80>E400 3e00'])
    })

    it('are told when one is missing, overlaps another, or differs from its double', () => {
      const differs = Uint8Array.from(second)
      differs[differs.length - 1] = 0x99
      for (const order of [
        [first, third],
        [first, cut(16, 32, true), third],
        [first, second, differs, third],
      ]) {
        const got = read(order)
        expect(got.announcements).toEqual([])
        expect(got.findings).toMatchObject([
          { code: 'ip-fragment', severity: 'error', where: { byteOffset: 0 } },
        ])
      }
      expect(read([second, third]).findings).toMatchObject([
        { code: 'ip-fragment', severity: 'note', params: { packets: 2 } },
      ])
    })

    it('are held within bounds, however many begin', () => {
      const many = Array.from({ length: 20_000 }, (_, index) => {
        const packet = Uint8Array.from(first)
        packet[18] = index >> 8
        packet[19] = index & 255
        return packet
      })
      const got = read([...many, second, third])
      expect(got.findings.filter(({ code }) => code === 'ip-fragment')).toHaveLength(20_001)
    })
  })

  it('keeps the channels and the two directions of a connection apart', () => {
    const a: End = { ...tester, port: 50_000 }
    const request = diagnostic(0x0e80, 0xe400, [0x3e, 0x00])
    const collected = collect()
    const reader = createPacketReader(collected.sink)
    const both = [
      tcp({ from: a, to: gateway, sequence: 10, flags: 'PA', payload: request.subarray(0, 9) }),
      tcp({
        from: gateway,
        to: a,
        sequence: 10,
        flags: 'PA',
        payload: diagnostic(0x4011, 0x0e80, [0x7e, 0x00]),
      }),
      tcp({ from: a, to: gateway, sequence: 19, flags: 'PA', payload: request.subarray(9) }),
      tcp({
        from: gateway,
        to: a,
        sequence: 24,
        flags: 'PA',
        payload: diagnostic(0x4012, 0x0e80, [0x7e, 0x00]),
      }),
    ]
    for (const [index, data] of both.entries()) {
      for (const channel of ['eth0', 'eth1']) reader.packet({ ...linkPacket(data, index, index), channel })
    }
    reader.end()
    const one = ['4011>0E80 7e00', '0E80>E400 3e00', '4012>0E80 7e00']
    expect(collected.lines()).toEqual(one.flatMap((line) => [line, line]))
    expect(collected.doip.map((message) => message.channel)).toEqual([
      'eth0',
      'eth1',
      'eth0',
      'eth1',
      'eth0',
      'eth1',
    ])
    // The request began in packet 0 and ended in packet 2.
    expect(collected.doip[2]?.startTime.nanoseconds).toBe(0)
    expect(collected.doip[2]?.time.nanoseconds).toBe(2000)
  })

  it('says once that encrypted DoIP cannot be read, and names a link type it does not know', () => {
    const secured = tcp({
      from: { ...tester, port: 50_000 },
      to: { ...gateway, port: 3496 },
      sequence: 1,
      payload: Uint8Array.of(22, 3, 3),
    })
    expect(read([secured, secured]).codes()).toEqual(['doip-encrypted'])
    expect(read([secured, secured], 147).codes()).toEqual(['link-type-unknown'])
  })

  it('reports what the vehicle refused', () => {
    const got = read([
      udp(gateway, tester, doip(0x0000, [0x01])),
      tcp({
        from: gateway,
        to: tester,
        sequence: 1,
        payload: doip(0x0006, [0x0e, 0x80, 0x40, 0x10, 0x00, 0, 0, 0, 0]),
      }),
      tcp({ from: gateway, to: tester, sequence: 18, payload: doip(0x8003, [0x40, 0x10, 0x0e, 0x80, 0x06]) }),
    ])
    expect(got.codes()).toEqual(['doip-header-refused', 'doip-activation-refused', 'doip-diagnostic-refused'])
  })

  it('reports a packet the recorder cut and the bytes lost by it', () => {
    const a: End = { ...tester, port: 50_000 }
    const payload = diagnostic(0x0e80, 0x4010, new Uint8Array(40).fill(0x36))
    const whole = tcp({ from: a, to: gateway, sequence: 1, flags: 'PA', payload })
    const next = tcp({ from: a, to: gateway, sequence: 1 + payload.length, flags: 'PA', payload })
    const got = read([whole.subarray(0, whole.length - 20), next])
    expect(got.codes()).toEqual(['packet-cut', 'tcp-gap', 'doip-cut-message'])
    expect(got.doip.map((message) => [message.payload.length, message.complete])).toEqual([
      [20, false],
      [40, true],
    ])
  })

  it('never throws, whatever the packet', () => {
    const frame = fc.oneof(
      fc.uint8Array({ maxLength: 100 }),
      fc.constant(udp(gateway, tester, announcement)),
      fc.constant(tcp({ from: tester, to: gateway, sequence: 1, payload: diagnostic(1, 2, [1, 2, 3]) })),
    )
    const damaged = fc
      .tuple(
        frame,
        fc.array(fc.tuple(fc.nat(120), fc.integer({ min: 0, max: 255 })), { maxLength: 6 }),
        fc.nat(120),
      )
      .map(([bytes, changes, cut]) => {
        const copy = bytes.slice(0, Math.max(0, bytes.length - (cut > 60 ? 0 : cut)))
        for (const [at, value] of changes) if (at < copy.length) copy[at] = value
        return copy
      })
    fc.assert(
      fc.property(
        fc.array(damaged, { maxLength: 20 }),
        fc.constantFrom(1, 101, 113, 276, 228, 7),
        (frames, linkType) => {
          read(frames, linkType)
        },
      ),
      { numRuns: 500 },
    )
  })

  it('holds at most its bound of connections', () => {
    const frames = Array.from({ length: 1000 }, (_, index) =>
      tcp({
        from: { ...tester, port: 20_000 + index },
        to: gateway,
        sequence: 1,
        flags: 'PA',
        payload: diagnostic(1, 2, [0x10, 0x01]).subarray(0, 12),
      }),
    )
    const collected = collect()
    const reader = createPacketReader(collected.sink)
    for (const [index, frame] of frames.entries()) reader.packet(linkPacket(frame, index, index))
    expect(collected.doip).toHaveLength(1000 - 256)
    reader.end()
    expect(collected.doip).toHaveLength(1000)
  })
})
