/** @module Builds Ethernet packets and pcap files for tests: RFC 791, 8200, 9293, 768; pcap as in tcpdump.org's description. */

import type { LinkPacket } from '../../capture/contract.ts'
import { joined } from '../../doip/testing/build.ts'

/** One end of a connection: `address` is 4 or 16 bytes. */
export interface End {
  readonly address: readonly number[]
  readonly port: number
}

export interface TcpParts {
  readonly from: End
  readonly to: End
  readonly sequence: number
  readonly acknowledgment?: number
  readonly flags?: string
  readonly payload?: Uint8Array
  readonly vlans?: readonly number[]
}

function checksum(parts: readonly Uint8Array[]): number {
  const bytes = joined(parts)
  let sum = 0
  for (let at = 0; at < bytes.length; at += 2) sum += ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0)
  while (sum > 0xffff) sum = (sum & 0xffff) + (sum >> 16)
  return ~sum & 0xffff
}

/** An Ethernet II frame round an IP packet; VLAN tags outermost first. */
export function ethernet(ip: Uint8Array, vlans: readonly number[] = []): Uint8Array {
  const type = (ip[0] ?? 0) >> 4 === 6 ? [0x86, 0xdd] : [0x08, 0x00]
  const tags = vlans.flatMap((id, index) => [
    index === 0 && vlans.length > 1 ? 0x88 : 0x81,
    index === 0 && vlans.length > 1 ? 0xa8 : 0,
    id >> 8,
    id & 0xff,
  ])
  return joined([Uint8Array.of(2, 0, 0, 0, 0, 1, 2, 0, 0, 0, 0, 2, ...tags, ...type), ip])
}

/** An IP packet. `fragment` (IPv4 only) is the flags and offset field. */
export function ip(from: End, to: End, protocol: number, body: Uint8Array, fragment = 0): Uint8Array {
  if (from.address.length === 16) {
    const header = Uint8Array.of(
      0x60,
      0,
      0,
      0,
      body.length >> 8,
      body.length & 0xff,
      protocol,
      64,
      ...from.address,
      ...to.address,
    )
    return joined([header, body])
  }
  const total = 20 + body.length
  const header = Uint8Array.of(
    0x45,
    0,
    total >> 8,
    total & 0xff,
    0,
    7,
    fragment >> 8,
    fragment & 0xff,
    64,
    protocol,
    0,
    0,
    ...from.address,
    ...to.address,
  )
  const sum = checksum([header])
  header[10] = sum >> 8
  header[11] = sum & 0xff
  return joined([header, body])
}

function withChecksum(from: End, to: End, protocol: number, body: Uint8Array, at: number): Uint8Array {
  const pseudo = Uint8Array.of(
    ...from.address,
    ...to.address,
    0,
    protocol,
    body.length >> 8,
    body.length & 0xff,
  )
  const sum = checksum([pseudo, body])
  body[at] = sum >> 8
  body[at + 1] = sum & 0xff
  return body
}

const FLAG_BITS: Readonly<Record<string, number>> = { F: 1, S: 2, R: 4, P: 8, A: 16 }

/** A whole frame with a TCP segment. `flags` are letters of FSRPA. */
export function tcp(parts: TcpParts): Uint8Array {
  const flags = [...(parts.flags ?? 'A')].reduce((bits, letter) => bits | (FLAG_BITS[letter] ?? 0), 0)
  const header = new Uint8Array(20)
  const view = new DataView(header.buffer)
  view.setUint16(0, parts.from.port)
  view.setUint16(2, parts.to.port)
  view.setUint32(4, parts.sequence)
  view.setUint32(8, parts.acknowledgment ?? 0)
  header[12] = 0x50
  header[13] = flags
  view.setUint16(14, 0xffff)
  const body = withChecksum(parts.from, parts.to, 6, joined([header, parts.payload ?? new Uint8Array(0)]), 16)
  return ethernet(ip(parts.from, parts.to, 6, body), parts.vlans)
}

/** A whole frame with a UDP datagram. */
export function udp(from: End, to: End, payload: Uint8Array, vlans: readonly number[] = []): Uint8Array {
  const length = 8 + payload.length
  const header = Uint8Array.of(
    from.port >> 8,
    from.port & 0xff,
    to.port >> 8,
    to.port & 0xff,
    length >> 8,
    length & 0xff,
    0,
    0,
  )
  return ethernet(ip(from, to, 17, withChecksum(from, to, 17, joined([header, payload]), 6)), vlans)
}

/** A packet as a capture reader hands it on. `atMicroseconds` is its time since 1970. */
export function linkPacket(data: Uint8Array, atMicroseconds = 0, index = 0, linkType = 1): LinkPacket {
  return {
    time: {
      seconds: Math.floor(atMicroseconds / 1e6),
      nanoseconds: (atMicroseconds % 1e6) * 1000,
      decimals: 6,
    },
    channel: 'eth0',
    linkType,
    data,
    originalLength: data.length,
    where: { byteOffset: index },
  }
}

/** A classic little-endian pcap file with microseconds, link type Ethernet. */
export function pcapFile(
  packets: readonly { readonly data: Uint8Array; readonly atMicroseconds: number }[],
): Uint8Array {
  const words = (...values: number[]): Uint8Array => new Uint8Array(Uint32Array.from(values).buffer)
  const head = words(0xa1b2c3d4, 0x0004_0002, 0, 0, 0x40000, 1)
  const records = packets.flatMap(({ data, atMicroseconds }) => [
    words(Math.floor(atMicroseconds / 1e6), atMicroseconds % 1e6, data.length, data.length),
    data,
  ])
  return joined([head, ...records])
}
