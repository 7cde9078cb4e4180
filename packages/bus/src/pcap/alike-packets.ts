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
import { slotAt } from '../capture/known-ids.ts'
import type { ScanStore } from '../capture/scan-store.ts'
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
import {
  HEAD_BYTES,
  type Origin,
  openTrack,
  remember,
  setTime,
  type TimeToFill,
  type Track,
} from './track.ts'

/** More channels than any recorder has at once; the packets of further ones are read one by one. */
const MOST_TRACKS = 8

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
  /** Of the last packet that was taken. */
  #latest: Track | undefined
  readonly #time: TimeToFill = { seconds: 0, nanoseconds: 0, decimals: 0 }

  constructor(sink: CaptureSink, store: ScanStore) {
    this.#sink = sink
    this.#store = store
  }

  /** Whether the sink can do without plain frames. */
  get isWanted(): boolean {
    return this.#sink.isPlain !== undefined && this.#sink.plainFrames !== undefined
  }

  /** The upper word of the time of the last packet that was taken. */
  get lastUpper(): number | undefined {
    return this.#latest?.upper
  }

  /**
   * Reads packets from `start`, the beginning of a block; returns the beginning of the first that is not alike.
   * `offset` is the place of the chunk in the recording.
   */
  read(bytes: Uint8Array, view: DataView, start: number, offset: number): number {
    let at = this.#current === undefined ? start : this.#run(this.#current, bytes, view, start, offset)
    if (at > start) this.#latest = this.#current
    for (let tries = 1; tries < this.#tracks.length && at < bytes.length; ) {
      const next = this.#tracks[(this.#tracks.indexOf(this.#current as Track) + 1) % this.#tracks.length]
      this.#current = next
      const after = this.#run(next as Track, bytes, view, at, offset)
      tries = after === at ? tries + 1 : 1
      if (after > at) this.#latest = next
      at = after
    }
    return at
  }

  /** Tells the sink of the packets that were only counted; call before any frame is told. */
  tell(): void {
    // By number: this runs for every frame, and an iterator is garbage.
    for (let index = 0; index < this.#tracks.length; index++) {
      const track = this.#tracks[index] as Track
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
    remember(track, upper, lower, head, packet)
    this.#current = track
    if (frame.error || frame.remote || frame.fd) return
    const plain = this.#sink.isPlain?.(frame.channel, frame.id, frame.extended) === true
    track.ids.add(wordAt(packet, origin.shape.cookedBytes), KNOWN, frame.id, frame.extended, plain)
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
    const track = openTrack(channel, origin, this.#store)
    this.#tracks.push(track)
    return track
  }

  #run(track: Track, bytes: Uint8Array, view: DataView, start: number, offset: number): number {
    const scan = this.#compiledFor(track, bytes)
    const { origin } = track
    const { upperAt, timeAt, littleEndian } = origin.shape
    let at = this.#scan(scan, track, bytes, view, start, offset)
    while (at <= bytes.length - MOST_BLOCK_BYTES) {
      const upper = view.getUint32(at + upperAt, littleEndian)
      const lower = view.getUint32(at + timeAt, littleEndian)
      if (upper < track.upper || (upper === track.upper && lower <= track.mostLower)) break
      // Perhaps the next packet stands in a later second; what was counted is of the one that was.
      this.tell()
      const before = { upper: track.upper, lower: track.lower, mostLower: track.mostLower }
      setTime(track, upper, lower, origin.lastOfSecond(upper, lower))
      const after = this.#scan(scan, track, bytes, view, at, offset)
      if (after === at) {
        setTime(track, before.upper, before.lower, before.mostLower)
        break
      }
      at = after
    }
    return at
  }

  #scan(
    scan: ScanPackets | undefined,
    track: Track,
    bytes: Uint8Array,
    view: DataView,
    start: number,
    offset: number,
  ): number {
    return scan === undefined
      ? this.#runUncompiled(track, bytes, view, start, offset)
      : this.#runCompiled(scan, track, bytes, start, offset)
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

  #runCompiled(scan: ScanPackets, track: Track, bytes: Uint8Array, start: number, offset: number): number {
    const { addresses, control } = track
    if (addresses === undefined || control === undefined) return start
    const told = control.words
    const base = bytes.byteOffset
    const end = base + bytes.length
    let at = base + start
    while (at < end) {
      at = scan(addresses.control, addresses.table, at, end)
      track.lower = told[CONTROL.time >> 2] as number
      const count = told[CONTROL.count >> 2] as number
      if (count > 0) {
        track.count += count
        track.lastCounted = told[CONTROL.lastCounted >> 2] as number
      }
      const slot = told[CONTROL.slot >> 2] as number
      if (slot === 0) break
      const block = (told[CONTROL.block >> 2] as number) - base
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
