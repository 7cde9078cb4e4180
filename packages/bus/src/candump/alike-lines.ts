/**
 * @module Reads lines that are laid out as the ones before them, many characters at a time.
 *
 * Taken are only lines laid out as the last ones of their channel, not earlier than the one before, whose identifier
 * was read before and whose data are hex digits of a length a classic frame can have. Those of plain identifiers are
 * counted, the others become frames. Any other line is left to `LineParser`: what is wrong is found and told as ever.
 *
 * The loop runs compiled (`scan-lines.ts`); `#runUncompiled` does the same where the host has no WebAssembly.
 */

import type { CaptureSink } from '../capture/contract.ts'
import { slotAt } from '../capture/known-ids.ts'
import type { ScanStore } from '../capture/scan-store.ts'
import { ReusedFrame } from '../frame/reused.ts'
import { HASH, hex, isDigit } from './bytes.ts'
import { notHex } from './digits.ts'
import { CONTROL, MANY_DECIMALS, type ScanLines, startScanLines } from './scan-lines.ts'
import { type Layout, Track } from './track.ts'

/** The longest line that can be taken: 32 to the identifier, 9 of that, 16 digits, two for the line end; rounded up. */
const MOST_BYTES = 64
/** More channels than any recorder has at once; the lines of further ones are read one by one. */
const MOST_TRACKS = 8

const NEWLINE = 0x0a
const RETURN = 0x0d
/** `#` as the last of the four characters of a word. */
const HASH_LAST = 0x23

/** Reads lines that are alike, and learns from the others what they look like. */
export class AlikeLines {
  readonly #sink: CaptureSink
  readonly #store: ScanStore
  /** Its own: the parser of lines keeps the channel in its frame from one line to the next. */
  readonly #frame: ReusedFrame = new ReusedFrame()
  readonly #tracks: Track[] = []
  readonly #time: { seconds: number; nanoseconds: number; decimals: number } = {
    seconds: 0,
    nanoseconds: 0,
    decimals: 6,
  }
  #current: Track | undefined
  /** The compiled loops, for times with few decimals and with many. */
  readonly #scans: (ScanLines | 'none' | undefined)[] = [undefined, undefined]
  /** Number of the next line. */
  line: number = 1

  constructor(sink: CaptureSink, store: ScanStore) {
    this.#sink = sink
    this.#store = store
  }

  /** Whether the sink can do without plain frames. */
  get isWanted(): boolean {
    return this.#sink.isPlain !== undefined && this.#sink.plainFrames !== undefined
  }

  /** Reads lines from `start`, the beginning of one; returns the beginning of the first that is not alike. */
  read(bytes: Uint8Array, view: DataView, start: number): number {
    let at = this.#current === undefined ? start : this.#run(this.#current, bytes, view, start)
    for (let tries = 1; tries < this.#tracks.length && at < bytes.length; ) {
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
    // By number: this runs for every frame, and an iterator is garbage.
    for (let index = 0; index < this.#tracks.length; index++) {
      const track = this.#tracks[index] as Track
      if (track.count === 0) continue
      const count = track.count
      track.count = 0
      this.#time.seconds = track.seconds
      this.#time.nanoseconds = track.nanoseconds
      this.#time.decimals = track.layout?.decimals ?? 0
      this.#sink.plainFrames?.(track.channel, count, this.#time)
    }
  }

  /** Learns from a line from which a frame was read and told. */
  learn(frame: ReusedFrame, bytes: Uint8Array, view: DataView, start: number, crlf: boolean): void {
    let track = this.#tracks.find((known) => known.channel === frame.channel)
    if (track === undefined) {
      if (this.#tracks.length >= MOST_TRACKS) return
      track = new Track(frame.channel, this.#store)
      this.#tracks.push(track)
    }
    track.learn(frame, bytes, start, crlf)
    if (track.layout === undefined) return
    this.#current = track
    if (frame.error || frame.remote || frame.fd || view.byteLength - start < MOST_BYTES) return
    const plain = this.#sink.isPlain?.(frame.channel, frame.id, frame.extended) === true
    track.know(frame, view, start, plain)
  }

  #run(track: Track, bytes: Uint8Array, view: DataView, start: number): number {
    const { layout } = track
    if (layout === undefined) return start
    const scan =
      track.addresses === undefined ? undefined : this.#compiledFor(bytes, layout.decimals >= MANY_DECIMALS)
    let at = start
    while (at < bytes.length) {
      const before = at
      at =
        scan === undefined
          ? this.#runUncompiled(track, layout, bytes, view, at)
          : this.#runCompiled(scan, track, layout, bytes, at)
      if (at > bytes.length - MOST_BYTES) break
      if (at > before) continue
      // What was counted has the second that was.
      this.tell()
      if (!track.nextSecond(bytes, at)) break
    }
    return at
  }

  /** The compiled loop, where there can be one and these bytes lie in its memory. */
  #compiledFor(bytes: Uint8Array, isLong: boolean): ScanLines | undefined {
    const { memory } = this.#store
    if (memory === undefined || bytes.buffer !== memory.buffer) return undefined
    const kind = isLong ? 1 : 0
    const scan = this.#scans[kind] ?? startScanLines(memory, isLong) ?? 'none'
    this.#scans[kind] = scan
    return scan === 'none' ? undefined : scan
  }

  #runCompiled(scan: ScanLines, track: Track, layout: Layout, bytes: Uint8Array, start: number): number {
    const { addresses } = track
    if (addresses === undefined) return start
    const offset = bytes.byteOffset
    const end = offset + bytes.length
    let at = offset + start
    while (at < end) {
      at = scan(addresses.control, addresses.table, at, end)
      const count = track.told(CONTROL.count)
      if (count > 0) {
        track.count += count
        this.line += count
        track.setTime(bytes, track.told(CONTROL.lastCounted) - offset)
      }
      const slot = track.told(CONTROL.slot)
      if (slot === 0) break
      const digits = track.told(CONTROL.digits)
      for (let index = 0; index < digits >> 1; index++) this.#frame.bytes[index] = track.toldByte(index)
      const line = track.told(CONTROL.line) - offset
      this.#tellFrame(track, layout, slotAt(slot, addresses.table), bytes, line, digits)
    }
    return at - offset
  }

  #runUncompiled(track: Track, layout: Layout, bytes: Uint8Array, view: DataView, start: number): number {
    const { head, ids } = track
    const { secondsDigits, closeAt, idAt, decimals, lineEndBytes } = layout
    const limit = bytes.length - MOST_BYTES
    const endsAt = (at: number) =>
      bytes[at + lineEndBytes - 1] === NEWLINE && (lineEndBytes === 1 || bytes[at] === RETURN)
    let at = start
    while (at <= limit) {
      let same = 0
      while (same < secondsDigits + 2 && bytes[at + same] === head[same]) same++
      if (same < secondsDigits + 2) break
      let fraction = 0
      for (; same < closeAt && isDigit(bytes[at + same]); same++)
        fraction = fraction * 10 + (bytes[at + same] as number) - 0x30
      if (same < closeAt) break
      const nanoseconds = fraction * 10 ** (9 - decimals)
      if (nanoseconds < track.nanoseconds) break
      while (same < idAt && bytes[at + same] === head[same]) same++
      if (same < idAt) break
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
      let length = ids.digits(slot)
      if (!endsAt(data + length)) {
        length = 0
        while (length <= 16 && !endsAt(data + length)) length += 2
        if (length > 16) break
        ids.setDigits(slot, length)
      }
      if (notHex(view, data, length) !== 0) break
      if (ids.isPlain(slot)) {
        track.count++
        this.line++
        track.nanoseconds = nanoseconds
      } else {
        for (let index = 0, digit = data; index < length >> 1; index++, digit += 2)
          this.#frame.bytes[index] = hex(bytes[digit]) * 16 + hex(bytes[digit + 1])
        this.#tellFrame(track, layout, slot, bytes, at, length)
      }
      at = data + length + lineEndBytes
    }
    return at
  }

  /** Tells the line at `line`, whose data bytes stand in the frame already. */
  #tellFrame(
    track: Track,
    layout: Layout,
    slot: number,
    bytes: Uint8Array,
    line: number,
    digits: number,
  ): void {
    this.tell()
    track.setTime(bytes, line)
    const frame = this.#frame
    frame.time.seconds = track.seconds
    frame.time.nanoseconds = track.nanoseconds
    frame.time.decimals = layout.decimals
    frame.channel = track.channel
    track.ids.set(slot, frame)
    frame.setLength(digits >> 1)
    frame.where.line = this.line++
    this.#sink.frame(frame)
    if (this.#sink.isPlain?.(track.channel, frame.id, frame.extended) === true) track.ids.makePlain(slot)
  }
}
