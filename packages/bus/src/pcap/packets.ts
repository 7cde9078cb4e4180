/**
 * @module What pcap and pcapng have in common: one captured packet, turned into a CAN frame or handed to `ethernet`.
 *
 * Some recorders store the identifier of link type 227 in their own little-endian order, and cooked captures hold
 * it in the order of the machine that made them. The first packets are held until they tell which order it is
 * (they vote, see `byteOrderVote`), so that every frame is read right.
 */

import type { CaptureSink, LinkPacket, PacketReader } from '../capture/contract.ts'
import type { Where } from '../finding/index.ts'
import { keepTime, type RecordedTime } from '../frame/index.ts'
import { ReusedFrame } from '../frame/reused.ts'
import {
  byteOrderVote,
  explainFault,
  LINKTYPE_CAN_SOCKETCAN,
  LINKTYPE_SLL,
  LINKTYPE_SLL2,
  locate,
  readSocketCan,
  sll2Interface,
} from '../socketcan/index.ts'

/** Packets held at most until the byte order of identifiers is settled. */
const MOST_HELD = 64
/** Votes one side must lead by to settle it before that. */
const CLEAR_LEAD = 3

/** Link types whose packets carry IP, and so perhaps DoIP: Ethernet, raw IP (three registered values), cooked. */
const IP_LINK_TYPES: ReadonlySet<number> = new Set([1, 101, 228, 229, LINKTYPE_SLL, LINKTYPE_SLL2])

/** Takes packets in the order of the recording and tells the sink what they hold. */
export class PacketRouter {
  readonly #sink: CaptureSink
  readonly #openPackets: (sink: CaptureSink) => PacketReader
  readonly #frame: ReusedFrame = new ReusedFrame()
  #packets: PacketReader | undefined
  #held: LinkPacket[] = []
  /** Votes for little-endian minus votes against, for link type 227 and for cooked packets. */
  readonly #lead: { socketCan: number; cooked: number } = { socketCan: 0, cooked: 0 }
  #settled = false
  readonly #unread: Set<number> = new Set()
  /** The frame the last packet held, as it was told; `undefined` when it held none or still waits. */
  told: ReusedFrame | undefined

  constructor(sink: CaptureSink, openPackets: (sink: CaptureSink) => PacketReader) {
    this.#sink = sink
    this.#openPackets = openPackets
  }

  /** Takes one packet; its object and bytes may be reused by the caller afterwards. */
  packet(packet: LinkPacket): void {
    this.told = undefined
    if (this.#settled) {
      this.#route(packet)
      return
    }
    const kept = {
      ...packet,
      time: keepTime(packet.time),
      data: new Uint8Array(packet.data),
      where: { ...packet.where },
    }
    this.#held.push(kept)
    const vote = this.#vote(kept)
    if (packet.linkType === LINKTYPE_CAN_SOCKETCAN) this.#lead.socketCan += vote
    else this.#lead.cooked += vote
    const clear = Math.max(Math.abs(this.#lead.socketCan), Math.abs(this.#lead.cooked)) >= CLEAR_LEAD
    if (clear || this.#held.length >= MOST_HELD) this.#settle()
  }

  /** The recording is over. */
  end(): void {
    if (!this.#settled) this.#settle()
    this.#packets?.end()
  }

  #vote(packet: LinkPacket): number {
    if (!isCanLinkType(packet.linkType)) return 0
    const located = locate(packet.linkType, packet.data)
    return typeof located === 'string' ? 0 : byteOrderVote(packet.data, located.start)
  }

  #settle(): void {
    this.#settled = true
    const held = this.#held
    this.#held = []
    const first = held.find((packet) => packet.linkType === LINKTYPE_CAN_SOCKETCAN && this.#vote(packet) > 0)
    if (this.#lead.socketCan > 0 && first !== undefined) {
      this.#sink.finding({
        code: 'identifiers-little-endian',
        severity: 'warning',
        where: first.where,
        what: 'the CAN identifiers are stored in the wrong byte order (little-endian); they were read the right way round',
        doNext: 'Nothing for this reading. Other programs may show wrong identifiers for this file.',
      })
    }
    for (const packet of held) this.#route(packet)
  }

  #route(packet: LinkPacket): void {
    if (isCanLinkType(packet.linkType)) {
      const located = locate(packet.linkType, packet.data)
      if (located !== 'other') {
        if (located === 'short') this.#bad(packet.where, 'the packet is shorter than a CAN frame')
        else if (located === 'canxl') this.#bad(packet.where, 'the frame is CAN XL, which is not read')
        else this.#can(packet, located.start, located.fd)
        return
      }
    }
    if (IP_LINK_TYPES.has(packet.linkType)) {
      this.#packets ??= this.#openPackets(this.#sink)
      this.#sink.networkPacket?.()
      this.#packets.packet(packet)
      return
    }
    if (this.#unread.has(packet.linkType) || this.#unread.size >= 64) return
    this.#unread.add(packet.linkType)
    this.#sink.finding({
      code: 'link-type-unknown',
      severity: 'error',
      where: { ...packet.where },
      what: `packets of link type ${packet.linkType} are not read`,
      doNext: 'Record SocketCAN (link type 227), cooked (113, 276) or Ethernet (1).',
      params: { linkType: packet.linkType },
    })
  }

  #can(packet: LinkPacket, start: number, fd: boolean): void {
    const frame = this.#frame
    // Cooked captures without a vote were most likely made on a little-endian machine.
    const littleEndian = start === 0 ? this.#lead.socketCan > 0 : this.#lead.cooked >= 0
    const fault = readSocketCan(packet.data, start, fd, littleEndian, frame)
    if (fault !== undefined) {
      this.#bad(packet.where, explainFault(fault))
      return
    }
    frame.time.seconds = packet.time.seconds
    frame.time.nanoseconds = packet.time.nanoseconds
    frame.time.decimals = packet.time.decimals
    const index = sll2Interface(packet.linkType, packet.data)
    frame.channel = index === undefined ? packet.channel : `${packet.channel}.${index}`
    if (packet.where.byteOffset !== undefined) frame.where.byteOffset = packet.where.byteOffset
    this.#sink.frame(frame)
    this.told = frame
  }

  #bad(where: Where, what: string): void {
    this.#sink.finding({
      code: 'bad-frame',
      severity: 'error',
      where: { ...where },
      what,
      doNext: 'The packet was left out; the others were read.',
    })
  }
}

function isCanLinkType(linkType: number): boolean {
  return linkType === LINKTYPE_CAN_SOCKETCAN || linkType === LINKTYPE_SLL || linkType === LINKTYPE_SLL2
}

/** A packet that its reader overwrites for the next one. */
export interface ReusedPacket extends LinkPacket {
  time: { seconds: number; nanoseconds: number; decimals: number } & RecordedTime
  channel: string
  linkType: number
  data: Uint8Array
  originalLength: number
  where: { byteOffset: number }
}

/** A packet to fill again and again. */
export function reusedPacket(): ReusedPacket {
  return {
    time: { seconds: 0, nanoseconds: 0, decimals: 6 },
    channel: '',
    linkType: 0,
    data: new Uint8Array(0),
    originalLength: 0,
    where: { byteOffset: 0 },
  }
}
