/**
 * @module Reads pcapng: sections of blocks, either byte order, several interfaces, each with its own clock resolution.
 *
 * Source: draft-ietf-opsawg-pcapng (block types, options if_name 2, if_tsresol 9, if_tsoffset 14).
 */

import { ByteQueue } from '../capture/byte-queue.ts'
import type { CaptureFormat, CaptureReader, CaptureSink, PacketReader } from '../capture/contract.ts'
import { ScanStore } from '../capture/scan-store.ts'
import { AlikePackets } from './alike-packets.ts'
import { PacketRouter, reusedPacket } from './packets.ts'
import { read32 } from './pcap.ts'
import { type PacketFields, readPacket, readSimplePacket, setTime } from './pcapng-blocks.ts'
import { ENHANCED_PACKET, Section } from './section.ts'

const SECTION_HEADER = 0x0a0d0d0a
const INTERFACE_DESCRIPTION = 1
const OBSOLETE_PACKET = 2
const SIMPLE_PACKET = 3
/** Blocks without packets that are passed over in silence: names, statistics, journal, secrets, custom. */
const SILENT_BLOCKS: ReadonlySet<number> = new Set([4, 5, 9, 0xa, 0xbad, 0x40000bad])

/** A block with a packet is read whole up to this size; longer ones are passed over with a finding. */
const MOST_BLOCK_BYTES = 1 << 20
/** The pcapng format; `openPackets` reads packets that are not CAN. */
export function pcapngFormat(openPackets: (sink: CaptureSink) => PacketReader): CaptureFormat {
  return {
    name: 'pcapng',
    recognise(head) {
      if (head.length < 12 || read32(head, 0, false) !== SECTION_HEADER) return undefined
      const order = byteOrder(head, 8)
      return order === undefined
        ? undefined
        : `it begins with a pcapng section header (${order ? 'little' : 'big'}-endian)`
    },
    open: (sink, _, store) =>
      new PcapngReader(sink, new PacketRouter(sink, openPackets), store ?? new ScanStore()),
  }
}

/** Whether the last of these four bytes may be the first of a section header's type. */
function mayBegin(bytes: number): boolean {
  return (
    (bytes & 0xff) === SECTION_HEADER >>> 24 ||
    (bytes & 0xffff) === SECTION_HEADER >>> 16 ||
    (bytes & 0xffffff) === SECTION_HEADER >>> 8
  )
}

/** True for little-endian, from the byte-order magic of a section header. */
function byteOrder(bytes: Uint8Array, at: number): boolean | undefined {
  if (read32(bytes, at, false) === 0x1a2b3c4d) return false
  if (read32(bytes, at, true) === 0x1a2b3c4d) return true
  return undefined
}

type State =
  | { readonly kind: 'head' }
  | { readonly kind: 'order'; readonly head: Uint8Array }
  | { readonly kind: 'body'; readonly type: number; readonly length: number }
  | { readonly kind: 'skip'; readonly left: number }
  | { readonly kind: 'lost' }

const HEAD: State = { kind: 'head' }

class PcapngReader implements CaptureReader {
  readonly #sink: CaptureSink
  readonly #store: ScanStore
  readonly #router: PacketRouter
  readonly #queue: ByteQueue = new ByteQueue()
  readonly #packet = reusedPacket()
  #state: State = HEAD
  #section = new Section(true)
  #blockOffset = 0
  readonly #saidUnknown: Set<number> = new Set()
  /** The last four bytes seen while looking for the next section header. */
  #lookback = 0
  #lostAt = 0
  readonly #alike: AlikePackets
  readonly #skips: boolean
  #view: DataView = new DataView(new ArrayBuffer(0))

  constructor(sink: CaptureSink, router: PacketRouter, store: ScanStore) {
    this.#sink = sink
    this.#store = store
    this.#alike = new AlikePackets(sink, store)
    this.#skips = this.#alike.isWanted
    this.#router = router
  }

  push(chunk: Uint8Array): void {
    if (this.#skips) for (const piece of this.#store.pieces(chunk)) this.#push(piece)
    else this.#push(chunk)
  }

  #push(chunk: Uint8Array): void {
    this.#queue.push(chunk)
    this.#view = new DataView(chunk.buffer, chunk.byteOffset, chunk.byteLength)
    while (this.#step());
    this.#alike.tell()
  }

  end(): void {
    const rest = this.#queue.available
    if (this.#state.kind === 'lost') this.#tellLost(this.#queue.offset + rest)
    else if (this.#state.kind !== 'head' || rest > 0) {
      this.#tell(
        'record-cut',
        this.#state.kind === 'head' ? this.#queue.offset : this.#blockOffset,
        'the recording ends inside a block: what it held is lost',
        'Use the recording as far as it goes, or copy it again from its source.',
      )
    }
    this.#router.end()
  }

  #step(): boolean {
    const state = this.#state
    if (state.kind === 'head') return this.#readHead()
    if (state.kind === 'order') return this.#readOrder(state.head)
    if (state.kind === 'body') return this.#readBody(state.type, state.length)
    if (state.kind === 'skip') return this.#skip(state.left)
    return this.#search()
  }

  #readHead(): boolean {
    const chunk = this.#skips ? this.#queue.chunk : undefined
    if (chunk !== undefined) {
      const at = this.#queue.at
      this.#queue.skip(this.#alike.read(chunk, this.#view, at, this.#queue.offset - at) - at)
    }
    this.#blockOffset = this.#queue.offset
    const head = this.#queue.take(8)
    if (head === undefined) return false
    if (read32(head, 0, false) === SECTION_HEADER) {
      this.#state = { kind: 'order', head: new Uint8Array(head) }
      return true
    }
    return this.#startBlock(
      read32(head, 0, this.#section.littleEndian),
      read32(head, 4, this.#section.littleEndian),
      8,
    )
  }

  /** A section header states the byte order of everything up to the next one. */
  #readOrder(head: Uint8Array): boolean {
    const magic = this.#queue.take(4)
    if (magic === undefined) return false
    const order = byteOrder(magic, 0)
    if (order === undefined) {
      this.#lose()
      return true
    }
    this.#begin(order)
    return this.#startBlock(SECTION_HEADER, read32(head, 4, order), 12)
  }

  /** A new section begins: its interfaces are others. */
  #begin(littleEndian: boolean): void {
    this.#section = new Section(littleEndian)
    this.#alike.clear()
  }

  #startBlock(type: number, length: number, already: number): boolean {
    if (length < 12 || length % 4 !== 0) {
      this.#lose()
      return true
    }
    const left = length - already
    const wanted =
      type === INTERFACE_DESCRIPTION ||
      type === ENHANCED_PACKET ||
      type === SIMPLE_PACKET ||
      type === OBSOLETE_PACKET
    if (wanted && length <= MOST_BLOCK_BYTES) {
      this.#state = { kind: 'body', type, length: left }
      return true
    }
    if (wanted) {
      this.#tell(
        'block-too-long',
        this.#blockOffset,
        `a block of ${length} bytes is not believed and passed over`,
      )
    } else if (type !== SECTION_HEADER && !SILENT_BLOCKS.has(type) && this.#saidUnknown.size < 64) {
      if (!this.#saidUnknown.has(type)) {
        this.#saidUnknown.add(type)
        this.#sink.finding({
          code: 'block-unknown',
          severity: 'note',
          where: { byteOffset: this.#blockOffset },
          // The type is not quoted: after damage it can be any bytes, secret ones too.
          what: 'a block of an unknown type is passed over',
          doNext: 'Nothing: the format allows them, and they hold no packets.',
        })
      }
    }
    this.#state = { kind: 'skip', left }
    return true
  }

  #skip(left: number): boolean {
    const passed = this.#queue.skip(left)
    this.#state = passed === left ? HEAD : { kind: 'skip', left: left - passed }
    return passed === left
  }

  #lose(): void {
    this.#lostAt = this.#blockOffset
    this.#lookback = 0
    this.#state = { kind: 'lost' }
  }

  /** Looks for the next section header; blocks cannot be found again without one. */
  #search(): boolean {
    const { chunk, at } = this.#queue
    // The section header's type is the same in both byte orders and begins with a line feed.
    if (chunk !== undefined && !mayBegin(this.#lookback)) {
      this.#lookback = 0
      const next = chunk.indexOf(SECTION_HEADER >>> 24, at)
      this.#queue.skip((next === -1 ? chunk.length : next) - at)
    }
    const byte = this.#queue.byte()
    if (byte < 0) return false
    this.#lookback = ((this.#lookback << 8) | byte) >>> 0
    if (this.#lookback !== SECTION_HEADER) return true
    this.#blockOffset = this.#queue.offset - 4
    this.#tellLost(this.#blockOffset)
    // The four type bytes are out of the queue already: its length and byte order come next.
    this.#state = { kind: 'body', type: SECTION_HEADER, length: 8 }
    return true
  }

  #tellLost(until: number): void {
    this.#tell(
      'bytes-lost',
      this.#lostAt,
      `${until - this.#lostAt} bytes are no pcapng block; reading goes on at the next section`,
      'Copy the recording again from its source; what stands here is damaged.',
    )
  }

  #readBody(type: number, length: number): boolean {
    const body = this.#queue.take(length)
    if (body === undefined) return false
    this.#state = HEAD
    if (type === SECTION_HEADER) {
      const order = byteOrder(body, 4)
      if (order === undefined) this.#lose()
      else {
        this.#begin(order)
        const total = read32(body, 0, order)
        if (total < 16 || total % 4 !== 0) this.#lose()
        else this.#state = { kind: 'skip', left: total - 12 }
      }
      return true
    }
    if (read32(body, length - 4, this.#section.littleEndian) !== this.#queue.offset - this.#blockOffset) {
      this.#tell(
        'block-length-differs',
        this.#blockOffset,
        'the two lengths of a block differ; the first was used',
      )
    }
    const inner = body.subarray(0, length - 4)
    if (type === INTERFACE_DESCRIPTION) this.#describe(inner)
    else if (type === SIMPLE_PACKET) {
      this.#emit(
        readSimplePacket(inner, this.#section.littleEndian, this.#section.interface(0)?.snapshotLength ?? 0),
        type,
      )
    } else this.#emit(readPacket(inner, this.#section.littleEndian, type === OBSOLETE_PACKET), type)
    return true
  }

  #describe(body: Uint8Array): void {
    if (body.length < 8) this.#tell('block-cut', this.#blockOffset, 'an interface description is too short')
    this.#section.describe(body)
  }

  #emit(fields: PacketFields | undefined, type: number): void {
    if (fields === undefined || fields.captured > fields.data.length) {
      this.#tell('block-cut', this.#blockOffset, 'a packet is longer than its block')
      return
    }
    const from = this.#section.interface(fields.index)
    if (from === undefined) {
      this.#tell(
        'interface-unknown',
        this.#blockOffset,
        `a packet names interface ${fields.index}, which was not described`,
      )
      return
    }
    const packet = this.#packet
    setTime(packet.time, fields.ticks, from)
    packet.channel = from.channel
    packet.linkType = from.linkType
    packet.data = fields.data.subarray(0, fields.captured)
    packet.originalLength = fields.original
    packet.where.byteOffset = this.#blockOffset
    if (!this.#skips) {
      this.#router.packet(packet)
      return
    }
    this.#alike.tell()
    this.#router.packet(packet)
    const frame = this.#router.told
    if (frame === undefined) return
    if (fields.ticks === undefined) this.#alike.forget(fields.index)
    else if (type === ENHANCED_PACKET) {
      const { high, low } = fields.ticks
      const origin = this.#section.originOf(from, fields.index)
      this.#alike.learn(origin, frame, high, low, this.#section.headOf(fields.index, high), packet.data)
    } else this.#alike.forget(fields.index)
  }

  #tell(
    code: string,
    byteOffset: number,
    what: string,
    doNext = 'The block was left out; the others were read.',
  ): void {
    this.#sink.finding({ code, severity: 'error', where: { byteOffset }, what, doNext })
  }
}
