/**
 * @module Reads lines that are laid out as the ones before them, several characters at a time.
 *
 * Taken are only lines laid out as the last ones of their channel, not earlier than the one before, whose identifier
 * was read before and whose data are hex digits of a length a classic frame can have. Those of plain identifiers are
 * counted, the others become frames. Any other line is left to `LineParser`: what is wrong is found and told as ever.
 */

import type { CaptureSink } from '../capture/contract.ts'
import { ReusedFrame } from '../frame/reused.ts'
import { HASH, hex } from './bytes.ts'
import { notDecimal, notHex } from './digits.ts'
import { CLOSE_AT, FRACTION_AT, Track } from './track.ts'

/** The longest line that can be taken: the time, a name of 15, an identifier of 8, 16 digits, the line end. */
const MOST_BYTES = 64
/** More channels than any recorder has at once; the lines of further ones are read one by one. */
const MOST_TRACKS = 8

const NEWLINE = 0x0a
/** `#` as the last of the four characters of a word. */
const HASH_LAST = 0x23

/** Reads lines that are alike, and learns from the others what they look like. */
export class AlikeLines {
  readonly #sink: CaptureSink
  /** Its own: the parser of lines keeps the channel in its frame from one line to the next. */
  readonly #frame: ReusedFrame = new ReusedFrame()
  readonly #tracks: Track[] = []
  readonly #time: { seconds: number; nanoseconds: number; decimals: number } = {
    seconds: 0,
    nanoseconds: 0,
    decimals: 6,
  }
  #current: Track | undefined
  /** Number of the next line. */
  line: number = 1

  constructor(sink: CaptureSink) {
    this.#sink = sink
  }

  /** Whether the sink can do without plain frames. */
  get isWanted(): boolean {
    return this.#sink.isPlain !== undefined && this.#sink.plainFrames !== undefined
  }

  /** Reads lines from `start`, the beginning of one; returns the beginning of the first that is not alike. */
  read(bytes: Uint8Array, view: DataView, start: number): number {
    let at = this.#current === undefined ? start : this.#run(this.#current, bytes, view, start)
    for (let tries = 1; tries < this.#tracks.length; ) {
      const next = this.#tracks[(this.#tracks.indexOf(this.#current as Track) + 1) % this.#tracks.length]
      this.#current = next
      const after = this.#run(next as Track, bytes, view, at)
      tries = after === at ? tries + 1 : 1
      at = after
    }
    return at
  }

  /** Tells the sink of the lines that were only counted; call before any frame is told. */
  tell(): void {
    for (const track of this.#tracks) {
      if (track.count === 0) continue
      const count = track.count
      track.count = 0
      this.#time.seconds = track.seconds
      this.#time.nanoseconds = track.nanoseconds
      this.#sink.plainFrames?.(track.channel, count, this.#time)
    }
  }

  /** Learns from a line from which a frame was read and told. */
  learn(frame: ReusedFrame, bytes: Uint8Array, view: DataView, start: number): void {
    let track = this.#tracks.find((known) => known.channel === frame.channel)
    if (track === undefined) {
      if (this.#tracks.length >= MOST_TRACKS || view.byteLength - start < MOST_BYTES) return
      track = Track.from(frame, bytes, view, start)
      if (track === undefined) return
      this.#tracks.push(track)
    } else if (!track.take(bytes, view, start, frame)) return
    track.seconds = frame.time.seconds
    this.#current = track
    if (frame.error || frame.remote || frame.fd) return
    const plain = this.#sink.isPlain?.(frame.channel, frame.id, frame.extended) === true
    track.know(frame, view, start, plain)
  }

  #run(track: Track, bytes: Uint8Array, view: DataView, start: number): number {
    const { second0, second1, second2, name0, name1, between, idAt, ids } = track
    const limit = bytes.length - MOST_BYTES
    let { high, low } = track
    let at = start
    let count = 0
    while (at <= limit) {
      if (view.getInt32(at, true) !== second0 || view.getInt32(at + 4, true) !== second1) break
      if (view.getInt32(at + 8, true) !== second2) break
      const thisHigh = view.getInt32(at + FRACTION_AT)
      const thisLow = view.getUint16(at + FRACTION_AT + 4)
      if (thisHigh < high || (thisHigh === high && thisLow < low)) break
      if ((notDecimal(thisHigh) | notDecimal(thisLow | 0x30300000)) !== 0) break
      if (view.getInt32(at + CLOSE_AT, true) !== name0 || view.getInt32(at + idAt - 4, true) !== name1) break
      let word = 0
      while (word < between.length && view.getInt32(at + CLOSE_AT + 4 + word * 4, true) === between[word])
        word++
      if (word < between.length) break
      const first = view.getInt32(at + idAt, true)
      let data = at + idAt + 4
      let second = 0
      if (first >>> 24 !== HASH_LAST) {
        if (bytes[data + 4] !== HASH) break
        second = view.getInt32(data, true)
        data += 5
      }
      const slot = ids.find(first, second)
      if (slot < 0) break
      let length = ids.digits[slot] as number
      if (bytes[data + length] !== NEWLINE) {
        length = 0
        while (length <= 16 && bytes[data + length] !== NEWLINE) length += 2
        if (length > 16) break
        ids.digits[slot] = length
      }
      if (notHex(view, data, length) !== 0) break
      high = thisHigh
      low = thisLow
      at = data + length + 1
      if (ids.plain[slot] === 1) {
        count++
        continue
      }
      track.high = high
      track.low = low
      track.count += count
      this.line += count
      count = 0
      this.#tellFrame(track, slot, bytes, data, length)
    }
    track.high = high
    track.low = low
    track.count += count
    this.line += count
    return at
  }

  #tellFrame(track: Track, slot: number, bytes: Uint8Array, data: number, digits: number): void {
    this.tell()
    const frame = this.#frame
    frame.time.seconds = track.seconds
    frame.time.nanoseconds = track.nanoseconds
    frame.time.decimals = 6
    frame.channel = track.channel
    track.ids.set(slot, frame)
    for (let index = 0, at = data; at < data + digits; index++, at += 2)
      frame.bytes[index] = hex(bytes[at]) * 16 + hex(bytes[at + 1])
    frame.setLength(digits / 2)
    frame.where.line = this.line++
    this.#sink.frame(frame)
    if (this.#sink.isPlain?.(track.channel, frame.id, frame.extended) === true) track.ids.plain[slot] = 1
  }
}
