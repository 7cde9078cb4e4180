/**
 * @module IPv4 and IPv6 headers.
 * Sources: RFC 791 (IPv4), RFC 8200 (IPv6 and its extension headers), RFC 4302 (AH), IANA protocol numbers.
 */

import { ETHERTYPE_IPV4, ETHERTYPE_IPV6, longWord, type NetworkStart, word } from './link.ts'

/** What an IP packet carries. Offsets count within the packet's data. */
export interface IpPacket {
  readonly protocol: number
  /** Where the addresses stand, and how long one is: 4 or 16 bytes, the source first. */
  readonly addressesAt: number
  readonly addressLength: number
  readonly payloadFrom: number
  /** End of what was captured of the payload. */
  readonly payloadTo: number
  /** Length of the payload on the wire, in bytes; more than `payloadTo - payloadFrom` when the recorder cut it. */
  readonly payloadLength: number
  /** The packet is a piece of one: where the piece belongs, in bytes, and whether another follows it. */
  readonly fragmented: boolean
  readonly fragmentOffset: number
  readonly moreFragments: boolean
  /** Identification of the fragmented packet; 0 when it is whole. */
  readonly fragmentId: number
}

export const PROTOCOL_TCP = 6
export const PROTOCOL_UDP = 17

/** Extension headers with their own length field, in units of eight bytes beyond the first eight (RFC 8200). */
const LONG_EXTENSIONS: ReadonlySet<number> = new Set([0, 43, 60, 135, 139, 140])
const MOST_EXTENSIONS = 16

/** Reads the IP header at `start`; `undefined` when it is no IP, or too short to be read. */
export function readIp(data: Uint8Array, start: NetworkStart): IpPacket | undefined {
  if (start.etherType === ETHERTYPE_IPV4) return readIpv4(data, start.offset)
  return start.etherType === ETHERTYPE_IPV6 ? readIpv6(data, start.offset) : undefined
}

function readIpv4(data: Uint8Array, at: number): IpPacket | undefined {
  const first = data[at]
  if (first === undefined || first >> 4 !== 4) return undefined
  const headerLength = (first & 0x0f) * 4
  if (headerLength < 20 || at + headerLength > data.length) return undefined
  const stated = word(data, at + 2)
  // A network card that splits packets itself leaves the total length 0: the captured length is the truth then.
  const total = stated === 0 ? data.length - at : stated
  if (total < headerLength) return undefined
  const fragmentField = word(data, at + 6)
  const moreFragments = (fragmentField & 0x2000) !== 0
  const fragmentOffset = (fragmentField & 0x1fff) * 8
  const fragmented = moreFragments || fragmentOffset > 0
  return {
    protocol: data[at + 9] ?? 0,
    addressesAt: at + 12,
    addressLength: 4,
    payloadFrom: at + headerLength,
    payloadTo: Math.min(at + total, data.length),
    payloadLength: total - headerLength,
    fragmented,
    fragmentOffset,
    moreFragments,
    fragmentId: fragmented ? word(data, at + 4) : 0,
  }
}

function readIpv6(data: Uint8Array, at: number): IpPacket | undefined {
  const first = data[at]
  if (first === undefined || first >> 4 !== 6 || at + 40 > data.length) return undefined
  const stated = word(data, at + 4)
  const end = at + 40 + (stated === 0 ? data.length - at - 40 : stated)
  let protocol = data[at + 6] ?? 0
  let offset = at + 40
  let fragmented = false
  let fragmentOffset = 0
  let moreFragments = false
  let fragmentId = 0
  for (let count = 0; count < MOST_EXTENSIONS; count += 1) {
    if (offset + 8 > data.length || offset + 8 > end) break
    const next = data[offset] ?? 0
    if (LONG_EXTENSIONS.has(protocol)) {
      offset += ((data[offset + 1] ?? 0) + 1) * 8
    } else if (protocol === 51) {
      offset += ((data[offset + 1] ?? 0) + 2) * 4
    } else if (protocol === 44) {
      const field = word(data, offset + 2)
      moreFragments = (field & 1) !== 0
      fragmentOffset = field & 0xfff8
      // An "atomic fragment" (RFC 6946) is a whole packet with a fragment header.
      fragmented = moreFragments || fragmentOffset > 0
      if (fragmented) fragmentId = longWord(data, offset + 4)
      offset += 8
      if (fragmented) {
        // What follows is cut anywhere: further headers stand in the first piece only, and are not looked through.
        protocol = next
        break
      }
    } else {
      break
    }
    protocol = next
  }
  if (offset > end || offset > data.length) return undefined
  return {
    protocol,
    addressesAt: at + 8,
    addressLength: 16,
    payloadFrom: offset,
    payloadTo: Math.min(end, data.length),
    payloadLength: end - offset,
    fragmented,
    fragmentOffset,
    moreFragments,
    fragmentId,
  }
}

/** An IP address as text: dotted for IPv4; eight hex groups without shortening for IPv6. */
export function addressText(data: Uint8Array, at: number, length: number): string {
  const parts: string[] = []
  if (length === 4) {
    for (let index = 0; index < 4; index += 1) parts.push(String(data[at + index] ?? 0))
    return parts.join('.')
  }
  for (let index = 0; index < 16; index += 2) parts.push(word(data, at + index).toString(16))
  return parts.join(':')
}
