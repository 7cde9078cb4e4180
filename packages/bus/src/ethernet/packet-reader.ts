/**
 * @module DoIP out of captured packets: UDP and TCP port 13400 (ISO 13400-2), everything else is passed over.
 *
 * Memory: at most `MOST_CONNECTIONS` connections and `MOST_HELD_BYTES` of unfinished bytes; beyond that the
 * connection idle longest is ended and says what it lost.
 */

import type { CaptureSink, LinkPacket, PacketReader } from '../capture/contract.ts'
import { type DoipObserver, type DoipPath, DoipReporter, type Mark } from '../doip/index.ts'
import type { Finding, Severity } from '../finding/index.ts'
import { keepTime } from '../frame/index.ts'
import { DoipConnection, type TcpFindingCode } from './connection.ts'
import { Fragments, type GivenUp } from './fragments.ts'
import { addressText, type IpPacket, PROTOCOL_TCP, PROTOCOL_UDP, readIp } from './ip.ts'
import { LINK_TYPES, longWord, networkStart, word } from './link.ts'

/** Every finding this folder makes. */
export type EthernetFindingCode =
  | TcpFindingCode
  | 'link-type-unknown'
  | 'packet-unreadable'
  | 'packet-cut'
  | 'ip-fragment'
  | 'doip-encrypted'

/** UDP and TCP port of DoIP. */
const DOIP_PORT = 13400
/** TCP port of DoIP over TLS. */
const DOIP_TLS_PORT = 3496

const MOST_CONNECTIONS = 256
const MOST_HELD_BYTES = 32 * 1024 * 1024

/** What a caller may want beside the sink. */
export interface PacketReaderOptions {
  /** Told of every DoIP message of every payload type. */
  readonly observe?: DoipObserver
}

/** Makes a reader of captured packets. It never throws; what it cannot read it tells the sink. */
export function createPacketReader(sink: CaptureSink, options: PacketReaderOptions = {}): PacketReader {
  return new EthernetReader(sink, options)
}

class EthernetReader implements PacketReader {
  readonly #sink: CaptureSink
  readonly #reporter: DoipReporter
  /** In the order of their last packet. */
  readonly #connections = new Map<string, { connection: DoipConnection; forwardKey: string }>()
  readonly #said = new Set<string>()
  #held = 0
  #unreadable = 0
  #firstUnreadable: LinkPacket['where'] | undefined
  readonly #fragments: Fragments = new Fragments((packet) => this.#giveUp(packet))
  #lostPieces = 0
  #firstLostPiece: LinkPacket['where'] | undefined

  constructor(sink: CaptureSink, options: PacketReaderOptions) {
    this.#sink = sink
    this.#reporter = new DoipReporter(sink, options.observe)
  }

  packet(packet: LinkPacket): void {
    if (!LINK_TYPES.has(packet.linkType)) {
      this.#sayLinkType(packet)
      return
    }
    const start = networkStart(packet.linkType, packet.data)
    if (start === undefined) {
      this.#countUnreadable(packet)
      return
    }
    if (start.etherType !== 0x0800 && start.etherType !== 0x86dd) return
    const ip = readIp(packet.data, start)
    if (ip === undefined) {
      this.#countUnreadable(packet)
      return
    }
    if (ip.protocol !== PROTOCOL_TCP && ip.protocol !== PROTOCOL_UDP) return
    const whole = ip.fragmented ? this.#fragments.piece(packet, ip) : { packet, ip }
    if (whole !== undefined) this.#transport(whole.packet, whole.ip)
  }

  #transport(packet: LinkPacket, ip: IpPacket): void {
    if (ip.payloadTo - ip.payloadFrom < 4) {
      this.#countUnreadable(packet)
      return
    }
    const sourcePort = word(packet.data, ip.payloadFrom)
    const targetPort = word(packet.data, ip.payloadFrom + 2)
    if (sourcePort === DOIP_PORT || targetPort === DOIP_PORT) this.#doip(packet, ip, sourcePort, targetPort)
    else if (ip.protocol === PROTOCOL_TCP && (sourcePort === DOIP_TLS_PORT || targetPort === DOIP_TLS_PORT)) {
      this.#sayOnce('tls', 'doip-encrypted', 'warning', packet.where, {
        what: 'traffic on TCP port 3496 is DoIP under TLS: it cannot be read from a recording',
        doNext: 'Only what passed unencrypted on port 13400 is shown.',
      })
    }
  }

  end(): void {
    this.#fragments.end()
    for (const { connection } of this.#connections.values()) connection.end()
    this.#connections.clear()
    if (this.#firstUnreadable !== undefined) {
      this.#find('packet-unreadable', 'warning', this.#firstUnreadable, {
        what: `${this.#unreadable} packets are too short or damaged to be read; this is the first`,
        doNext: 'Nothing to do when they are no DoIP; otherwise record whole packets.',
        params: { packets: this.#unreadable },
      })
    }
    if (this.#firstLostPiece !== undefined) {
      this.#find('ip-fragment', 'note', this.#firstLostPiece, {
        what: `${this.#lostPieces} pieces of IP packets could not be joined, because others are missing or damaged; this is the first`,
        doNext: 'Nothing to do unless a packet on the DoIP port was reported too.',
        params: { packets: this.#lostPieces },
      })
    }
  }

  /** Only the first piece names the ports: without it nobody knows whether the packet was DoIP. */
  #giveUp({ where, pieces, head }: GivenUp): void {
    const ports =
      head === undefined ? [] : [0, 2].map((at) => word(head.packet.data, head.ip.payloadFrom + at))
    if (head === undefined || !ports.includes(DOIP_PORT)) {
      this.#lostPieces += pieces
      this.#firstLostPiece ??= where
      return
    }
    const [from, to] = this.#ends(head.packet, head.ip, ports[0] ?? 0, ports[1] ?? 0)
    this.#find('ip-fragment', 'error', where, {
      what: `a DoIP packet from ${from} to ${to} was sent in pieces, and not all of them are in the recording; it is left out`,
      doNext: 'Its message is missing; record again with a larger buffer or closer to the vehicle.',
      params: { from, to, identification: head.ip.fragmentId },
    })
  }

  #ends(packet: LinkPacket, ip: IpPacket, sourcePort: number, targetPort: number): [string, string] {
    const { addressesAt: at, addressLength: length } = ip
    return [
      `${addressText(packet.data, at, length)} ${sourcePort}`,
      `${addressText(packet.data, at + length, length)} ${targetPort}`,
    ]
  }

  #doip(packet: LinkPacket, ip: IpPacket, sourcePort: number, targetPort: number): void {
    const [from, to] = this.#ends(packet, ip, sourcePort, targetPort)
    const transport = ip.protocol === PROTOCOL_TCP ? 'tcp' : 'udp'
    const path: DoipPath = { channel: packet.channel, transport, from, to }
    const mark: Mark = { time: keepTime(packet.time), where: { ...packet.where } }
    if (ip.payloadTo - ip.payloadFrom < ip.payloadLength) {
      this.#find('packet-cut', 'warning', packet.where, {
        what: `the recorder kept ${ip.payloadTo - ip.payloadFrom} of ${ip.payloadLength} bytes of a DoIP packet`,
        doNext: 'Record whole packets (no length limit).',
        params: { bytes: ip.payloadTo - ip.payloadFrom, length: ip.payloadLength },
      })
    }
    if (transport === 'udp') this.#udp(packet, ip, path, mark)
    else this.#tcp(packet, ip, path, mark)
  }

  #udp(packet: LinkPacket, ip: IpPacket, path: DoipPath, mark: Mark): void {
    const from = ip.payloadFrom + 8
    if (from > ip.payloadTo) {
      this.#countUnreadable(packet)
      return
    }
    const stated = word(packet.data, ip.payloadFrom + 4)
    const to = stated >= 8 ? Math.min(ip.payloadTo, ip.payloadFrom + stated) : ip.payloadTo
    this.#reporter.datagram(packet.data, from, to, mark, path)
  }

  #tcp(packet: LinkPacket, ip: IpPacket, path: DoipPath, mark: Mark): void {
    const { data } = packet
    const at = ip.payloadFrom
    const headerLength = ((data[at + 12] ?? 0) >> 4) * 4
    if (headerLength < 20 || at + headerLength > ip.payloadTo) {
      this.#countUnreadable(packet)
      return
    }
    const flags = data[at + 13] ?? 0
    const key = `${path.channel}|${path.from}|${path.to}`
    const backKey = `${path.channel}|${path.to}|${path.from}`
    const mapKey = key < backKey ? key : backKey
    let entry = this.#connections.get(mapKey)
    if (entry === undefined) {
      entry = { connection: new DoipConnection(path, this.#reporter, this.#sink), forwardKey: key }
    } else {
      this.#connections.delete(mapKey)
    }
    this.#connections.set(mapKey, entry)
    const heldBefore = entry.connection.held
    entry.connection.packet(
      {
        sequence: longWord(data, at + 4),
        acknowledgment: longWord(data, at + 8),
        fin: (flags & 0x01) !== 0,
        syn: (flags & 0x02) !== 0,
        rst: (flags & 0x04) !== 0,
        ack: (flags & 0x10) !== 0,
        data,
        from: at + headerLength,
        to: ip.payloadTo,
        length: ip.payloadLength - headerLength,
        mark,
      },
      entry.forwardKey === key,
    )
    this.#held += entry.connection.held - heldBefore
    this.#makeRoom()
  }

  #makeRoom(): void {
    while (this.#connections.size > MOST_CONNECTIONS || this.#held > MOST_HELD_BYTES) {
      const oldest = this.#connections.entries().next().value
      if (oldest === undefined) return
      const [key, { connection }] = oldest
      this.#held -= connection.held
      connection.end()
      this.#connections.delete(key)
    }
  }

  #sayLinkType(packet: LinkPacket): void {
    this.#sayOnce(`link ${packet.linkType}`, 'link-type-unknown', 'error', packet.where, {
      what: `packets of link type ${packet.linkType} are not read`,
      doNext: 'Record on an Ethernet interface, or convert the recording to link type 1.',
      params: { linkType: packet.linkType },
    })
  }

  #countUnreadable(packet: LinkPacket): void {
    this.#unreadable += 1
    this.#firstUnreadable ??= { ...packet.where }
  }

  #sayOnce(
    key: string,
    code: EthernetFindingCode,
    severity: Severity,
    where: LinkPacket['where'],
    rest: Pick<Finding, 'what' | 'doNext' | 'params'>,
  ): void {
    if (this.#said.has(key)) return
    this.#said.add(key)
    this.#find(code, severity, where, rest)
  }

  #find(
    code: EthernetFindingCode,
    severity: Severity,
    where: LinkPacket['where'],
    rest: Pick<Finding, 'what' | 'doNext' | 'params'>,
  ): void {
    const finding: Finding<EthernetFindingCode> = { code, severity, where: { ...where }, ...rest }
    this.#sink.finding(finding)
  }
}
