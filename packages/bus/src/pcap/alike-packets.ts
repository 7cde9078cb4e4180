/**
 * @module Reads pcapng packets that are alike to the ones before them, a 32-bit word at a time.
 *
 * Taken are only enhanced packets of an interface already read that stand in one piece, are not earlier than the one
 * before, and hold a classic data frame of an identifier read before, with lengths that agree. Those of plain
 * identifiers are counted, the others become frames. Any other block is left to the reader: what is wrong is found
 * and told as ever. Little-endian only.
 */

import type { CaptureSink } from '../capture/contract.ts'
import { KnownIds } from '../capture/known-ids.ts'
import { ReusedFrame } from '../frame/reused.ts'
import { LINKTYPE_CAN_SOCKETCAN } from '../socketcan/index.ts'
import { type Interface, setTime, type Ticks } from './pcapng-blocks.ts'

const ENHANCED_PACKET = 6
/** Where the packet starts in an enhanced packet block, and the bytes around a packet. */
const PACKET_AT = 28
const AROUND_PACKET_BYTES = 32
/** Bytes before the data of a SocketCAN frame, and of a whole classic one. */
const FRAME_HEAD_BYTES = 8
const CLASSIC_BYTES = 16
/** The longest block taken: a whole classic frame and some options. */
const MOST_BLOCK_BYTES = 96
/** Set in the flags byte of a CAN FD frame (`CANFD_FDF` of linux/can.h). */
const FDF_FLAG = 0x04
/** Every known identifier has this as its second word, so that identifier 0 can be told from a free slot. */
const KNOWN = 1

/** Packets of one interface, as far as they are alike. */
interface Track {
  readonly index: number
  readonly from: Interface
  readonly ids: KnownIds
  /** The time of the last packet, in ticks: the upper word signed as it is compared. */
  high: number
  low: number
  count: number
}

/** Reads packets that are alike, and learns from the others what they look like. */
export class AlikePackets {
  readonly #sink: CaptureSink
  readonly #frame: ReusedFrame = new ReusedFrame()
  #tracks: Track[] = []
  /** Channels that several interfaces have; their common order in time is not followed here. */
  readonly #shared: Set<string> = new Set()
  #current: Track | undefined
  readonly #time: { seconds: number; nanoseconds: number; decimals: number } = {
    seconds: 0,
    nanoseconds: 0,
    decimals: 0,
  }
  readonly #ticks: { high: number; low: number } = { high: 0, low: 0 }

  constructor(sink: CaptureSink) {
    this.#sink = sink
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
    for (let tries = 1; tries < this.#tracks.length; ) {
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
      this.#ticks.high = track.high >>> 0
      this.#ticks.low = track.low
      setTime(this.#time, this.#ticks, track.from)
      this.#sink.plainFrames?.(track.from.channel, count, this.#time)
    }
  }

  /** A new section begins: its interfaces are others. */
  clear(): void {
    this.tell()
    this.#tracks = []
    this.#current = undefined
  }

  /** Learns from a packet that was told: its interface, its time, its frame if it held one, its first word. */
  learn(
    index: number,
    from: Interface,
    ticks: Ticks | undefined,
    frame: ReusedFrame | undefined,
    word: number,
  ): void {
    let track = this.#tracks.find((known) => known.index === index)
    if (frame === undefined || ticks === undefined || from.linkType !== LINKTYPE_CAN_SOCKETCAN) {
      // Its time may count for the channel without being known here: begin anew with the next frame.
      if (track !== undefined) this.#forget(track)
      return
    }
    if (track === undefined) {
      const namesake = this.#tracks.find((known) => known.from.channel === from.channel)
      if (namesake !== undefined) {
        this.#shared.add(from.channel)
        this.#forget(namesake)
      }
      if (this.#shared.has(from.channel)) return
      track = { index, from, ids: new KnownIds(), high: 0, low: 0, count: 0 }
      this.#tracks.push(track)
    }
    track.high = ticks.high | 0
    track.low = ticks.low
    this.#current = track
    if (frame.error || frame.remote || frame.fd) return
    const plain = this.#sink.isPlain?.(frame.channel, frame.id, frame.extended) === true
    track.ids.add(word, KNOWN, frame.id, frame.extended, plain)
  }

  #forget(track: Track): void {
    this.#tracks = this.#tracks.filter((known) => known !== track)
    this.#current = this.#tracks[0]
  }

  #run(track: Track, bytes: Uint8Array, view: DataView, start: number, offset: number): number {
    const { index, ids, high } = track
    const limit = bytes.length - MOST_BLOCK_BYTES
    let { low } = track
    let at = start
    let count = 0
    while (at <= limit) {
      if (view.getInt32(at, true) !== ENHANCED_PACKET || view.getInt32(at + 8, true) !== index) break
      const length = view.getInt32(at + 4, true)
      if (length > MOST_BLOCK_BYTES || length < AROUND_PACKET_BYTES + FRAME_HEAD_BYTES || (length & 3) !== 0)
        break
      const thisLow = view.getUint32(at + 16, true)
      if (view.getInt32(at + 12, true) !== high || thisLow < low) break
      const captured = view.getInt32(at + 20, true)
      if (captured < FRAME_HEAD_BYTES || captured > CLASSIC_BYTES || captured > length - AROUND_PACKET_BYTES)
        break
      const dataLength = bytes[at + PACKET_AT + 4] as number
      if (
        dataLength > captured - FRAME_HEAD_BYTES ||
        ((bytes[at + PACKET_AT + 5] as number) & FDF_FLAG) !== 0
      )
        break
      const slot = ids.find(view.getInt32(at + PACKET_AT, true), KNOWN)
      if (slot < 0) break
      if (view.getInt32(at + length - 4, true) !== length) break
      low = thisLow
      if (ids.plain[slot] === 1) count++
      else {
        track.low = low
        track.count += count
        count = 0
        this.#tellFrame(track, slot, bytes, at, dataLength, offset)
      }
      at += length
    }
    track.low = low
    track.count += count
    return at
  }

  #tellFrame(
    track: Track,
    slot: number,
    bytes: Uint8Array,
    at: number,
    length: number,
    offset: number,
  ): void {
    this.tell()
    const frame = this.#frame
    this.#ticks.high = track.high >>> 0
    this.#ticks.low = track.low
    setTime(frame.time, this.#ticks, track.from)
    frame.channel = track.from.channel
    track.ids.set(slot, frame)
    const data = at + PACKET_AT + FRAME_HEAD_BYTES
    for (let index = 0; index < length; index++) frame.bytes[index] = bytes[data + index] as number
    frame.setLength(length)
    frame.where.byteOffset = offset + at
    this.#sink.frame(frame)
    if (this.#sink.isPlain?.(frame.channel, frame.id, frame.extended) === true) track.ids.plain[slot] = 1
  }
}
