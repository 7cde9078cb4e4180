/**
 * @module Reads packets that are alike to the ones before them, without making anything of most.
 *
 * Taken are only packets of a channel already read that stand in one piece, are not earlier than the one before, and
 * hold a classic data frame of an identifier read before, with lengths that agree. Those of plain identifiers are
 * counted, the others become frames. Any other record or block is left to the reader: what is wrong is found and told
 * as ever.
 *
 * The loop runs compiled (`scan-packets.ts`); `#runUncompiled` does the same where the host has no WebAssembly.
 */

import type { CaptureSink } from '../capture/contract.ts'
import { type KnownIds, slotAt } from '../capture/known-ids.ts'
import type { ScanStore, TrackStore } from '../capture/scan-store.ts'
import { ReusedFrame } from '../frame/reused.ts'
import {
  CLASSIC_BYTES,
  CONTROL,
  FDF_FLAG,
  FRAME_HEAD_BYTES,
  KNOWN,
  MOST_BLOCK_BYTES,
  type ScanPackets,
  type Shape,
  startScanPackets,
} from './scan-packets.ts'

/** More channels than any recorder has at once; the packets of further ones are read one by one. */
const MOST_TRACKS = 8
const HEAD_BYTES = 16

/** A time to fill. */
export interface TimeToFill {
  seconds: number
  nanoseconds: number
  decimals: number
}

/** What the packets of one interface have in common. */
export interface Origin {
  /** Number of the interface. */
  readonly index: number
  readonly shape: Shape
  /** Which of a block's first sixteen bytes are the same in all packets (0) and which are not (FF). */
  readonly headLimits: readonly number[]
  /** The greatest lower word, at most FFFFFFFF, of the whole second a time stands in. */
  lastOfSecond(upper: number, lower: number): number
  /** Sets a time from its two words, unsigned. */
  setTime(time: TimeToFill, upper: number, lower: number): void
}

/** Packets of one channel, as far as they are alike. */
interface Track {
  readonly channel: string
  readonly origin: Origin
  readonly ids: KnownIds
  readonly addresses: TrackStore['addresses']
  readonly control: DataView | undefined
  /** The first bytes of the last block, and the cooked header of its packet. */
  readonly head: Uint8Array
  readonly cooked: Uint8Array
  upper: number
  /** Of the last packet. */
  lower: number
  /** Up to here packets stand in the same second: those of different ones are not counted together. */
  mostLower: number
  /** Of the last one that was only counted. */
  lastCounted: number
  count: number
}

/** Reads packets that are alike, and learns from the others what they look like. */
export class AlikePackets {
  readonly #sink: CaptureSink
  readonly #store: ScanStore
  readonly #frame: ReusedFrame = new ReusedFrame()
  readonly #scans: Map<Shape, ScanPackets | undefined> = new Map()
  #tracks: Track[] = []
  /** Channels that several interfaces have; their common order in time is not followed here. */
  readonly #shared: Set<string> = new Set()
  #current: Track | undefined
  readonly #time: TimeToFill = { seconds: 0, nanoseconds: 0, decimals: 0 }

  constructor(sink: CaptureSink, store: ScanStore) {
    this.#sink = sink
    this.#store = store
  }

  /** Whether the sink can do without plain frames. */
  get isWanted(): boolean {
    return this.#sink.isPlain !== undefined && this.#sink.plainFrames !== undefined
  }

  /**
   * Reads packets from `start`, the beginning of a block; returns the beginning of the first that is not alike.
   * `offset` is the place of the chunk in the recording.
   */
  read(bytes: Uint8Array, view: DataView, start: number, offset: number): number {
    let at = this.#current === undefined ? start : this.#run(this.#current, bytes, view, start, offset)
    for (let tries = 1; tries < this.#tracks.length && at < bytes.length; ) {
      const next = this.#tracks[(this.#tracks.indexOf(this.#current as Track) + 1) % this.#tracks.length]
      this.#current = next
      const after = this.#run(next as Track, bytes, view, at, offset)
      tries = after === at ? tries + 1 : 1
      at = after
    }
    return at
  }

  /** Tells the sink of the packets that were only counted; call before any frame is told. */
  tell(): void {
    for (const track of this.#tracks) {
      if (track.count === 0) continue
      const count = track.count
      track.count = 0
      track.origin.setTime(this.#time, track.upper, track.lastCounted)
      this.#sink.plainFrames?.(track.channel, count, this.#time)
    }
  }

  /** A new section begins: its interfaces are others. */
  clear(): void {
    this.tell()
    this.#tracks = []
    this.#current = undefined
    this.#store.closeTracks()
  }

  /** An interface whose packets state no time told a frame: what is known of its channels' times no longer holds. */
  forget(index: number): void {
    this.#tracks = this.#tracks.filter((known) => known.origin.index !== index)
    this.#current = this.#tracks[0]
  }

  /**
   * Learns from a packet that was told as `frame`: from its interface, the first bytes of its block, its bytes, and the
   * lower word of its time.
   */
  learn(
    origin: Origin,
    frame: ReusedFrame,
    upper: number,
    lower: number,
    head: Uint8Array,
    packet: Uint8Array,
  ): void {
    const track = this.#trackOf(origin, frame.channel)
    if (track === undefined) return
    const { cookedBytes } = origin.shape
    track.upper = upper
    track.lower = lower
    track.mostLower = origin.lastOfSecond(upper, lower)
    track.head.set(head)
    if (cookedBytes > 0) track.cooked.set(packet.subarray(0, cookedBytes))
    this.#write(track)
    this.#current = track
    if (frame.error || frame.remote || frame.fd) return
    const plain = this.#sink.isPlain?.(frame.channel, frame.id, frame.extended) === true
    track.ids.add(wordAt(packet, cookedBytes), KNOWN, frame.id, frame.extended, plain)
  }

  #trackOf(origin: Origin, channel: string): Track | undefined {
    const known = this.#tracks.find((track) => track.channel === channel)
    if (known !== undefined && known.origin === origin) return known
    if (known !== undefined) {
      this.#shared.add(channel)
      this.#tracks = this.#tracks.filter((track) => track !== known)
      this.#current = this.#tracks[0]
    }
    if (this.#shared.has(channel) || this.#tracks.length >= MOST_TRACKS) return undefined
    const { ids, addresses } = this.#store.openTrack()
    const { memory } = this.#store
    const track: Track = {
      channel,
      origin,
      ids,
      addresses,
      control:
        memory === undefined || addresses === undefined
          ? undefined
          : new DataView(memory.buffer, addresses.control),
      head: new Uint8Array(HEAD_BYTES),
      cooked: new Uint8Array(20),
      upper: 0,
      lower: 0,
      mostLower: 0,
      lastCounted: 0,
      count: 0,
    }
    this.#tracks.push(track)
    return track
  }

  /** Tells the compiled loop what packets look like. */
  #write({ control, head, cooked, origin, lower, mostLower }: Track): void {
    if (control === undefined) return
    for (let index = 0; index < HEAD_BYTES; index++) {
      control.setUint8(CONTROL.headPattern + index, head[index] as number)
      control.setUint8(CONTROL.headLimits + index, origin.headLimits[index] as number)
    }
    for (let index = 0; index < origin.shape.cookedBytes; index++)
      control.setUint8(CONTROL.cooked + index, cooked[index] as number)
    control.setUint32(CONTROL.time, lower, true)
    control.setUint32(CONTROL.mostTime, mostLower, true)
  }

  #run(track: Track, bytes: Uint8Array, view: DataView, start: number, offset: number): number {
    const scan = this.#compiledFor(track, bytes)
    const { timeAt, littleEndian } = track.origin.shape
    const run = (from: number) =>
      scan === undefined
        ? this.#runUncompiled(track, bytes, view, from, offset)
        : this.#runCompiled(scan, track, bytes, view, from, offset)
    let at = run(start)
    while (at <= bytes.length - MOST_BLOCK_BYTES) {
      const { mostLower } = track
      const lower = view.getUint32(at + timeAt, littleEndian)
      if (lower <= mostLower) break
      // Perhaps the next packet stands in a later second; what was counted is of the one that was.
      this.tell()
      this.#setMost(track, track.origin.lastOfSecond(track.upper, lower))
      const after = run(at)
      if (after === at) {
        this.#setMost(track, mostLower)
        break
      }
      at = after
    }
    return at
  }

  #setMost(track: Track, mostLower: number): void {
    track.mostLower = mostLower
    track.control?.setUint32(CONTROL.mostTime, mostLower, true)
  }

  /** The compiled loop, where there can be one and these bytes lie in its memory. */
  #compiledFor(track: Track, bytes: Uint8Array): ScanPackets | undefined {
    const { memory } = this.#store
    if (memory === undefined || track.addresses === undefined || bytes.buffer !== memory.buffer)
      return undefined
    const { shape } = track.origin
    if (!this.#scans.has(shape)) this.#scans.set(shape, startScanPackets(shape, memory))
    return this.#scans.get(shape)
  }

  #runCompiled(
    scan: ScanPackets,
    track: Track,
    bytes: Uint8Array,
    view: DataView,
    start: number,
    offset: number,
  ): number {
    const { addresses, control, origin } = track
    if (addresses === undefined || control === undefined) return start
    const base = bytes.byteOffset
    const end = base + bytes.length
    let at = base + start
    while (at < end) {
      at = scan(addresses.control, addresses.table, at, end)
      const count = control.getUint32(CONTROL.count, true)
      if (count > 0) {
        track.count += count
        track.lastCounted = control.getUint32(CONTROL.lastCounted, true)
      }
      const slot = control.getUint32(CONTROL.slot, true)
      track.lower = control.getUint32(CONTROL.time, true)
      if (slot === 0) break
      const block = control.getUint32(CONTROL.block, true) - base
      track.lower = view.getUint32(block + origin.shape.timeAt, origin.shape.littleEndian)
      this.#tellFrame(track, slotAt(slot, addresses.table), bytes, block, offset)
    }
    return at - base
  }

  #runUncompiled(track: Track, bytes: Uint8Array, view: DataView, start: number, offset: number): number {
    const { ids, head, cooked, origin } = track
    const { littleEndian, timeAt, capturedAt, packetAt, lengthAt, cookedBytes } = origin.shape
    const limit = bytes.length - MOST_BLOCK_BYTES
    const frameAt = packetAt + cookedBytes
    let at = start
    while (at <= limit) {
      let same = 0
      while (
        same < HEAD_BYTES &&
        ((bytes[at + same] as number) ^ (head[same] as number)) <= (origin.headLimits[same] as number)
      )
        same++
      if (same < HEAD_BYTES) break
      const lower = view.getUint32(at + timeAt, littleEndian)
      if (lower < track.lower || lower > track.mostLower) break
      const captured = view.getUint32(at + capturedAt, littleEndian)
      const room = captured - cookedBytes - FRAME_HEAD_BYTES
      if (room < 0 || room > CLASSIC_BYTES - FRAME_HEAD_BYTES) break
      let length = captured + packetAt
      if (lengthAt !== undefined) {
        length = view.getUint32(at + lengthAt, littleEndian)
        if (length > MOST_BLOCK_BYTES || length < captured + packetAt + 4 || (length & 3) !== 0) break
        if (view.getUint32(at + length - 4, littleEndian) !== length) break
      }
      let alike = 0
      while (alike < cookedBytes && bytes[at + packetAt + alike] === cooked[alike]) alike++
      if (alike < cookedBytes) break
      if ((bytes[at + frameAt + 4] as number) > room) break
      if (((bytes[at + frameAt + 5] as number) & FDF_FLAG) !== 0) break
      const slot = ids.find(view.getInt32(at + frameAt, true), KNOWN)
      if (slot < 0) break
      track.lower = lower
      if (ids.isPlain(slot)) {
        track.count++
        track.lastCounted = lower
      } else this.#tellFrame(track, slot, bytes, at, offset)
      at += length
    }
    return at
  }

  #tellFrame(track: Track, slot: number, bytes: Uint8Array, at: number, offset: number): void {
    this.tell()
    const frame = this.#frame
    const { shape } = track.origin
    track.origin.setTime(frame.time, track.upper, track.lower)
    frame.channel = track.channel
    track.ids.set(slot, frame)
    const frameAt = at + shape.packetAt + shape.cookedBytes
    const length = bytes[frameAt + 4] as number
    const data = frameAt + FRAME_HEAD_BYTES
    for (let index = 0; index < length; index++) frame.bytes[index] = bytes[data + index] as number
    frame.setLength(length)
    frame.where.byteOffset = offset + at
    this.#sink.frame(frame)
    if (this.#sink.isPlain?.(frame.channel, frame.id, frame.extended) === true) track.ids.makePlain(slot)
  }
}

/** The four bytes an identifier is found by, whatever their order means; 0 when they are not there. */
function wordAt(bytes: Uint8Array, at: number): number {
  const [a = 0, b = 0, c = 0, d = 0] = bytes.subarray(at, at + 4)
  return a | (b << 8) | (c << 16) | (d << 24)
}
