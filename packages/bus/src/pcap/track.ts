/** @module What the packets of one channel have in common, and what is remembered of the last of them. */

import type { KnownIds } from '../capture/known-ids.ts'
import { CONTROL_BYTES, type ScanStore, type TrackStore } from '../capture/scan-store.ts'
import type { Memory } from '../wasm/module.ts'
import { CONTROL, type Shape, writeUsual } from './scan-packets.ts'

/** Bytes of a block's beginning that are compared with the one before. */
export const HEAD_BYTES = 16

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

/** A track's control (`CONTROL`). WebAssembly's numbers are little-endian, and so is every host there is. */
interface Control {
  readonly bytes: Uint8Array
  readonly words: Uint32Array
}

/** Packets of one channel, as far as they are alike. */
export interface Track {
  readonly channel: string
  readonly origin: Origin
  readonly ids: KnownIds
  readonly addresses: TrackStore['addresses']
  /** What the compiled loop and this one tell each other, as bytes and as words; where there is such a loop. */
  readonly control: Control | undefined
  /** The first bytes of the last block, also as numbers, and the cooked header of its packet. */
  readonly head: Uint8Array
  readonly headView: DataView
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

/** A track of a channel of which no packet was read. */
export function openTrack(channel: string, origin: Origin, store: ScanStore): Track {
  const { ids, addresses } = store.openTrack()
  const { memory } = store
  const head = new Uint8Array(HEAD_BYTES)
  return {
    channel,
    origin,
    ids,
    addresses,
    control:
      memory === undefined || addresses === undefined
        ? undefined
        : openControl(memory, addresses.control, origin),
    head,
    headView: new DataView(head.buffer),
    cooked: new Uint8Array(20),
    upper: 0,
    lower: 0,
    mostLower: 0,
    lastCounted: 0,
    count: 0,
  }
}

/** A new track's control, with what is the same for all its packets. */
function openControl(memory: Memory, address: number, { shape, headLimits }: Origin): Control {
  const bytes = new Uint8Array(memory.buffer, address, CONTROL_BYTES)
  bytes.set(headLimits, CONTROL.headLimits)
  writeUsual(bytes, shape)
  return { bytes, words: new Uint32Array(memory.buffer, address, CONTROL_BYTES / 4) }
}

/** Remembers a packet: both words of its time, the first bytes of its block, its bytes. */
export function remember(
  track: Track,
  upper: number,
  lower: number,
  head: Uint8Array,
  packet: Uint8Array,
): void {
  const { control, cooked, origin } = track
  const { cookedBytes } = origin.shape
  track.head.set(head)
  control?.bytes.set(head, CONTROL.headPattern)
  if (cookedBytes > 0) {
    cooked.set(packet.subarray(0, cookedBytes))
    control?.bytes.set(cooked, CONTROL.cooked)
  }
  setTime(track, upper, lower, origin.lastOfSecond(upper, lower))
}

/** Sets both words of the last packet's time, and up to which lower word packets are counted together. */
export function setTime(track: Track, upper: number, lower: number, mostLower: number): void {
  const { control, headView, origin } = track
  const { upperAt, littleEndian } = origin.shape
  if (upper !== track.upper) {
    track.upper = upper
    headView.setUint32(upperAt, upper, littleEndian)
    control?.bytes.set(track.head, CONTROL.headPattern)
  }
  track.lower = lower
  track.mostLower = mostLower
  if (control === undefined) return
  control.words[CONTROL.time >> 2] = lower
  control.words[CONTROL.mostTime >> 2] = mostLower
}
