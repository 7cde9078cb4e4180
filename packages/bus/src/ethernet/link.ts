/**
 * @module Link-layer headers of a captured packet, down to where IP begins.
 *
 * Sources: IEEE 802.3 / Ethernet II type field, IEEE 802.1Q and 802.1ad tags; the LINKTYPE registry of
 * tcpdump.org for 1, 101, 113 (SLL), 228, 229 and 276 (SLL2).
 */

/** Where the network layer begins in a packet. */
export interface NetworkStart {
  /** EtherType: 0x0800 IPv4, 0x86DD IPv6. */
  readonly etherType: number
  /** Byte offset of the network header. */
  readonly offset: number
}

export const ETHERTYPE_IPV4 = 0x0800
export const ETHERTYPE_IPV6 = 0x86dd

/** Link types this folder reads. */
export const LINK_TYPES: ReadonlySet<number> = new Set([1, 101, 113, 228, 229, 276])

/** More tags than this on one frame are taken for damage (two are common practice, no source). */
const MOST_TAGS = 8

/**
 * Finds the network header of a packet. `undefined` when the packet is too short or of no Ethernet II kind
 * (IEEE 802.3 length frames carry no IP here).
 */
export function networkStart(linkType: number, data: Uint8Array): NetworkStart | undefined {
  switch (linkType) {
    case 1:
      return afterTags(data, 12)
    case 113:
      return afterTags(data, 14)
    case 276:
      // SLL2: the protocol type stands first, the network header after 20 bytes.
      return data.length < 20 ? undefined : tagged(data, word(data, 0), 20)
    case 101:
    case 228:
    case 229: {
      const version = (data[0] ?? 0) >> 4
      if (version === 4) return { etherType: ETHERTYPE_IPV4, offset: 0 }
      return version === 6 ? { etherType: ETHERTYPE_IPV6, offset: 0 } : undefined
    }
    default:
      return undefined
  }
}

function afterTags(data: Uint8Array, typeAt: number): NetworkStart | undefined {
  return data.length < typeAt + 2 ? undefined : tagged(data, word(data, typeAt), typeAt + 2)
}

function tagged(data: Uint8Array, firstType: number, firstOffset: number): NetworkStart | undefined {
  let etherType = firstType
  let offset = firstOffset
  for (let tags = 0; isTag(etherType); tags += 1) {
    if (tags === MOST_TAGS || data.length < offset + 4) return undefined
    etherType = word(data, offset + 2)
    offset += 4
  }
  return { etherType, offset }
}

function isTag(etherType: number): boolean {
  return etherType === 0x8100 || etherType === 0x88a8 || etherType === 0x9100
}

/** A big-endian 16-bit number; bytes beyond the end read as 0. */
export function word(data: Uint8Array, at: number): number {
  return ((data[at] ?? 0) << 8) | (data[at + 1] ?? 0)
}

/** A big-endian 32-bit number, unsigned; bytes beyond the end read as 0. */
export function longWord(data: Uint8Array, at: number): number {
  return ((word(data, at) << 16) | word(data, at + 2)) >>> 0
}
