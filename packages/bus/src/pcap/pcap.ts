/**
 * @module Reads classic pcap: a 24-byte header, then records of a 16-byte header and a packet.
 *
 * Source: the format as described at tcpdump.org (pcap-savefile) and in draft-ietf-opsawg-pcap.
 */

import { ByteQueue } from '../capture/byte-queue.ts'
import type { CaptureFormat, CaptureReader, CaptureSink, PacketReader } from '../capture/contract.ts'
import { ScanStore } from '../capture/scan-store.ts'
import { cookedBytes } from '../socketcan/index.ts'
import { AlikePackets } from './alike-packets.ts'
import { PacketRouter, reusedPacket } from './packets.ts'
import type { Origin } from './track.ts'

const HEADER_BYTES = 24
const RECORD_HEADER_BYTES = 16
/** Longer packets are not believed, whatever the header's snapshot length says (libpcap's MAXIMUM_SNAPLEN). */
const MOST_PACKET_BYTES = 262_144
/** A record is believed after lost bytes only when its time is this close to the last good one. */
const MOST_SECONDS_APART = 86_400

interface Flavour {
  readonly littleEndian: boolean
  readonly nanoseconds: boolean
}

/** The four magic numbers: byte order and resolution of the time stamps. */
function flavourOf(head: Uint8Array): Flavour | undefined {
  const magic = head.length < 4 ? 0 : read32(head, 0, false)
  if (magic === 0xa1b2c3d4) return { littleEndian: false, nanoseconds: false }
  if (magic === 0xd4c3b2a1) return { littleEndian: true, nanoseconds: false }
  if (magic === 0xa1b23c4d) return { littleEndian: false, nanoseconds: true }
  if (magic === 0x4d3cb2a1) return { littleEndian: true, nanoseconds: true }
  return undefined
}

/** The first sixteen bytes of a record: seconds; fraction, captured and original length (any). */
const RECORD_LIMITS: readonly number[] = [0, 0, 0, 0, ...new Array<number>(12).fill(255)]

/** What the records of one file have in common. */
function recordsOf({ littleEndian, nanoseconds }: Flavour, linkType: number): Origin {
  return {
    index: 0,
    shape: {
      littleEndian,
      upperAt: 0,
      timeAt: 4,
      capturedAt: 8,
      packetAt: RECORD_HEADER_BYTES,
      lengthAt: undefined,
      cookedBytes: cookedBytes(linkType),
    },
    headLimits: RECORD_LIMITS,
    lastOfSecond: () => (nanoseconds ? 999_999_999 : 999_999),
    setTime(time, seconds, fraction) {
      time.seconds = seconds
      time.nanoseconds = nanoseconds ? fraction : fraction * 1000
      time.decimals = nanoseconds ? 9 : 6
    },
  }
}

/** Reads four bytes as an unsigned number. */
export function read32(bytes: Uint8Array, at: number, littleEndian: boolean): number {
  const a = bytes[at] as number
  const b = bytes[at + 1] as number
  const c = bytes[at + 2] as number
  const d = bytes[at + 3] as number
  return (littleEndian ? (d << 24) | (c << 16) | (b << 8) | a : (a << 24) | (b << 16) | (c << 8) | d) >>> 0
}

/** The classic pcap format; `openPackets` reads packets that are not CAN. */
export function pcapFormat(openPackets: (sink: CaptureSink) => PacketReader): CaptureFormat {
  return {
    name: 'pcap',
    recognise(head) {
      const flavour = flavourOf(head)
      if (flavour === undefined) return undefined
      return `it begins with the magic number of pcap (${flavour.littleEndian ? 'little' : 'big'}-endian, ${
        flavour.nanoseconds ? 'nano' : 'micro'
      }second stamps)`
    },
    open: (sink, _, store) =>
      new PcapReader(sink, new PacketRouter(sink, openPackets), store ?? new ScanStore()),
  }
}

class PcapReader implements CaptureReader {
  readonly #sink: CaptureSink
  readonly #router: PacketRouter
  readonly #queue: ByteQueue = new ByteQueue()
  readonly #packet = reusedPacket()
  readonly #header: Uint8Array = new Uint8Array(RECORD_HEADER_BYTES)
  #flavour: Flavour | undefined
  #most = MOST_PACKET_BYTES
  #linkType = 0
  /** Bytes of the packet whose record header was read; `undefined` while a header comes next. */
  #body: number | undefined
  #recordOffset = 0
  #lastSeconds: number | undefined
  /** Offset of the first of some lost bytes, while looking for the next record. */
  #lostAt: number | undefined
  #window = 0
  readonly #store: ScanStore
  readonly #alike: AlikePackets
  readonly #skips: boolean
  #origin: Origin | undefined
  #view: DataView = new DataView(new ArrayBuffer(0))

  constructor(sink: CaptureSink, router: PacketRouter, store: ScanStore) {
    this.#sink = sink
    this.#router = router
    this.#store = store
    this.#alike = new AlikePackets(sink, store)
    this.#skips = this.#alike.isWanted
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
    if (this.#lostAt !== undefined) {
      this.#tellLost(this.#queue.offset + rest)
    } else if (this.#flavour === undefined || this.#body !== undefined || rest > 0) {
      const at =
        this.#flavour === undefined ? 0 : this.#body === undefined ? this.#queue.offset : this.#recordOffset
      this.#sink.finding({
        code: 'record-cut',
        severity: 'error',
        where: { byteOffset: at },
        what:
          this.#flavour === undefined
            ? 'the recording ends inside the file header'
            : 'the recording ends inside a record: the last packet is lost',
        doNext: 'Use the recording as far as it goes, or copy it again from its source.',
      })
    }
    this.#router.end()
  }

  #step(): boolean {
    if (this.#flavour === undefined) return this.#readFileHeader()
    if (this.#lostAt !== undefined) return this.#search()
    if (this.#body === undefined) return this.#readRecordHeader()
    return this.#readPacket(this.#body)
  }

  #readFileHeader(): boolean {
    const header = this.#queue.take(HEADER_BYTES)
    if (header === undefined) return false
    const flavour = flavourOf(header) ?? { littleEndian: true, nanoseconds: false }
    this.#flavour = flavour
    const snapshot = read32(header, 16, flavour.littleEndian)
    if (snapshot > 0 && snapshot < MOST_PACKET_BYTES) this.#most = Math.max(snapshot, 65_535)
    // The upper bits of this field tell of a frame check sequence; the link type is in the lower 16.
    this.#linkType = read32(header, 20, flavour.littleEndian) & 0xffff
    this.#packet.channel = 'if0'
    this.#packet.linkType = this.#linkType
    this.#packet.time.decimals = flavour.nanoseconds ? 9 : 6
    return true
  }

  #readRecordHeader(): boolean {
    const chunk = this.#skips ? this.#queue.chunk : undefined
    if (chunk !== undefined) {
      const at = this.#queue.at
      const taken = this.#alike.read(chunk, this.#view, at, this.#queue.offset - at) - at
      this.#queue.skip(taken)
      if (taken > 0) this.#lastSeconds = this.#alike.lastUpper
    }
    this.#recordOffset = this.#queue.offset
    const header = this.#queue.take(RECORD_HEADER_BYTES)
    if (header === undefined) return false
    this.#header.set(header)
    if (this.#believable(false)) this.#begin()
    else {
      this.#lostAt = this.#recordOffset
      this.#window = RECORD_HEADER_BYTES
    }
    return true
  }

  #begin(): void {
    const flavour = this.#flavour as Flavour
    const seconds = read32(this.#header, 0, flavour.littleEndian)
    const fraction = read32(this.#header, 4, flavour.littleEndian)
    this.#body = read32(this.#header, 8, flavour.littleEndian)
    this.#packet.originalLength = read32(this.#header, 12, flavour.littleEndian)
    this.#packet.time.seconds = seconds
    this.#packet.time.nanoseconds = flavour.nanoseconds ? fraction : fraction * 1000
    this.#lastSeconds = seconds
  }

  /** Whether the header may be one; after lost bytes `strictly`, since any sixteen bytes could pass for one. */
  #believable(strictly: boolean): boolean {
    const flavour = this.#flavour as Flavour
    const length = read32(this.#header, 8, flavour.littleEndian)
    const original = read32(this.#header, 12, flavour.littleEndian)
    const fraction = read32(this.#header, 4, flavour.littleEndian)
    if (length > this.#most || (length === 0 && original === 0)) return false
    if (fraction >= (flavour.nanoseconds ? 1e9 : 1e6)) return false
    if (!strictly) return true
    const seconds = read32(this.#header, 0, flavour.littleEndian)
    const last = this.#lastSeconds ?? seconds
    return (
      length > 0 &&
      original >= length &&
      original <= this.#most &&
      Math.abs(seconds - last) <= MOST_SECONDS_APART
    )
  }

  /** Slides a window of sixteen bytes along until it holds a believable record header. */
  #search(): boolean {
    if (this.#window >= RECORD_HEADER_BYTES) {
      this.#header.copyWithin(0, 1)
      this.#window = RECORD_HEADER_BYTES - 1
    }
    const byte = this.#queue.byte()
    if (byte < 0) return false
    this.#header[this.#window++] = byte
    if (this.#window === RECORD_HEADER_BYTES && this.#believable(true)) {
      this.#recordOffset = this.#queue.offset - RECORD_HEADER_BYTES
      this.#tellLost(this.#recordOffset)
      this.#lostAt = undefined
      this.#begin()
    }
    return true
  }

  #tellLost(until: number): void {
    const from = this.#lostAt ?? until
    this.#sink.finding({
      code: 'bytes-lost',
      severity: 'error',
      where: { byteOffset: from },
      what: `${until - from} bytes are no pcap record; reading goes on after them`,
      doNext: 'Copy the recording again from its source; what stands here is damaged.',
      params: { bytes: until - from },
    })
  }

  #readPacket(length: number): boolean {
    const data = this.#queue.take(length)
    if (data === undefined) return false
    this.#body = undefined
    this.#packet.data = data
    this.#packet.where.byteOffset = this.#recordOffset
    if (!this.#skips) {
      this.#router.packet(this.#packet)
      return true
    }
    this.#alike.tell()
    this.#router.packet(this.#packet)
    const frame = this.#router.told
    if (frame !== undefined) {
      const { littleEndian } = this.#flavour as Flavour
      const seconds = read32(this.#header, 0, littleEndian)
      const fraction = read32(this.#header, 4, littleEndian)
      this.#origin ??= recordsOf(this.#flavour as Flavour, this.#linkType)
      this.#alike.learn(this.#origin, frame, seconds, fraction, this.#header, data)
    }
    return true
  }
}
