/**
 * @module Puts IP packets that were sent in pieces together again.
 *
 * Sources: RFC 791 (IPv4 reassembly by source, target, protocol and identification), RFC 8200 section 4.5 and RFC 5722
 * (IPv6; pieces may not overlap). Where pieces overlap the packet is given up: no sound sender makes such. Memory: at
 * most `MOST_PACKETS` packets of 64 KiB, and `MOST_HELD_BYTES` of pieces.
 */

import type { LinkPacket } from '../capture/contract.ts'
import { type RecordedTime, secondsBetween } from '../frame/index.ts'
import type { IpPacket } from './ip.ts'

const MOST_PACKETS = 64
const MOST_HELD_BYTES = 1024 * 1024
/** Longest payload of an IP packet, in bytes. */
const LONGEST = 65_535
/** How long the pieces of a packet may be apart (RFC 8200; RFC 791 recommends less). */
const PATIENCE_SECONDS = 60

/** A packet whose pieces could not all be had. `head` is what its first piece begins with, where that came. */
export interface GivenUp {
  readonly where: LinkPacket['where']
  readonly pieces: number
  readonly head: { readonly packet: LinkPacket; readonly ip: IpPacket } | undefined
}

interface Piece {
  readonly from: number
  readonly bytes: Uint8Array
}

interface Unjoined {
  readonly since: RecordedTime
  readonly where: LinkPacket['where']
  /** Sorted by place, without overlap. */
  readonly pieces: Piece[]
  /** Length of the whole, once its last piece came. */
  length: number | undefined
  received: number
  damaged: boolean
  head: GivenUp['head']
}

/** Joins pieces. `givenUp` is told of packets that stay incomplete. */
export class Fragments {
  readonly #givenUp: (packet: GivenUp) => void
  /** In the order of their first piece. */
  readonly #partial: Map<string, Unjoined> = new Map()
  #held = 0

  constructor(givenUp: (packet: GivenUp) => void) {
    this.#givenUp = givenUp
  }

  /** Takes a piece; the whole packet once its last missing piece came, as if it had been sent in one. */
  piece(
    packet: LinkPacket,
    ip: IpPacket,
  ): { readonly packet: LinkPacket; readonly ip: IpPacket } | undefined {
    this.#expire(packet.time)
    const addresses = packet.data.subarray(ip.addressesAt, ip.addressesAt + 2 * ip.addressLength)
    const key = `${packet.channel}|${String.fromCharCode(...addresses)}|${ip.protocol}|${ip.fragmentId}`
    let partial = this.#partial.get(key)
    if (partial === undefined) {
      partial = newUnjoined(packet)
      this.#partial.set(key, partial)
    }
    this.#add(partial, packet, ip)
    if (partial.received !== partial.length) {
      this.#makeRoom()
      return undefined
    }
    this.#forget(key, partial)
    return partial.damaged ? this.#lose(partial) : joined(packet, ip, addresses, partial)
  }

  /** Nothing more will come. */
  end(): void {
    for (const [key, partial] of this.#partial) {
      this.#forget(key, partial)
      this.#lose(partial)
    }
  }

  #add(partial: Unjoined, packet: LinkPacket, ip: IpPacket): void {
    const from = ip.fragmentOffset
    const bytes = new Uint8Array(packet.data.subarray(ip.payloadFrom, ip.payloadTo))
    const to = from + bytes.length
    if (from === 0)
      partial.head ??= {
        packet: { ...packet, data: new Uint8Array(packet.data), where: { ...packet.where } },
        ip,
      }
    // The recorder cut the piece, or it cannot be part of any packet.
    if (bytes.length < ip.payloadLength || to > LONGEST) partial.damaged = true
    if (!ip.moreFragments) partial.length = to
    const index = partial.pieces.findIndex((piece) => piece.from >= from)
    const at = index === -1 ? partial.pieces.length : index
    const before = partial.pieces[at - 1]
    const after = partial.pieces[at]
    if (after?.from === from && after.bytes.length === bytes.length) {
      // Sent or recorded twice.
      if (!after.bytes.every((byte, place) => byte === bytes[place])) partial.damaged = true
      return
    }
    if (
      (before !== undefined && before.from + before.bytes.length > from) ||
      (after !== undefined && to > after.from)
    ) {
      partial.damaged = true
      return
    }
    partial.pieces.splice(at, 0, { from, bytes })
    partial.received += bytes.length
    this.#held += bytes.length
  }

  #expire(now: RecordedTime): void {
    for (const [key, partial] of this.#partial) {
      if (secondsBetween(partial.since, now) < PATIENCE_SECONDS) return
      this.#forget(key, partial)
      this.#lose(partial)
    }
  }

  #makeRoom(): void {
    for (const [key, partial] of this.#partial) {
      if (this.#partial.size <= MOST_PACKETS && this.#held <= MOST_HELD_BYTES) return
      this.#forget(key, partial)
      this.#lose(partial)
    }
  }

  #forget(key: string, partial: Unjoined): void {
    this.#partial.delete(key)
    this.#held -= partial.received
  }

  #lose(partial: Unjoined): undefined {
    this.#givenUp({ where: partial.where, pieces: partial.pieces.length, head: partial.head })
  }
}

function newUnjoined(packet: LinkPacket): Unjoined {
  return {
    since: { ...packet.time },
    where: { ...packet.where },
    pieces: [],
    length: undefined,
    received: 0,
    damaged: false,
    head: undefined,
  }
}

/** The packet as one: its addresses, then its payload. Time and place are those of the piece that completed it. */
function joined(
  packet: LinkPacket,
  ip: IpPacket,
  addresses: Uint8Array,
  { pieces, received }: Unjoined,
): { packet: LinkPacket; ip: IpPacket } {
  const payloadFrom = addresses.length
  const data = new Uint8Array(payloadFrom + received)
  data.set(addresses)
  for (const { from, bytes } of pieces) data.set(bytes, payloadFrom + from)
  return {
    packet: { ...packet, data, originalLength: data.length },
    ip: {
      ...ip,
      addressesAt: 0,
      payloadFrom,
      payloadTo: data.length,
      payloadLength: received,
      fragmented: false,
      fragmentOffset: 0,
      moreFragments: false,
    },
  }
}
