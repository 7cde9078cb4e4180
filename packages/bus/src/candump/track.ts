/** @module What the lines of one channel have in common: the beginning of their time stamp and the channel's name. */

import { KnownIds } from '../capture/known-ids.ts'
import type { ReusedFrame } from '../frame/reused.ts'
import { CLOSE, DOT, HASH, OPEN } from './bytes.ts'

const SPACE = 0x20
/** `(1436509052.249713)`: the places of its parts. Other lengths are read line by line. */
export const FRACTION_AT: number = 12
export const CLOSE_AT: number = 18
/** Names of up to this length are compared; `) ` and a blank stand around them. */
const MOST_NAME_BYTES = 15

/** The lines of one channel, as far as they are alike. */
export class Track {
  readonly channel: string
  readonly ids: KnownIds = new KnownIds()
  /** `(` and the whole seconds with the point, as three words; zero while the last line was of another kind. */
  second0: number = 0
  second1: number = 0
  second2: number = 0
  /** `) can0 `: its first and its last word, those between, and where the identifier starts. */
  readonly name0: number
  readonly name1: number
  readonly between: Int32Array
  readonly idAt: number
  /** The last frame: its whole seconds, and its six decimals as two big-endian numbers of their characters. */
  seconds: number = 0
  high: number = 0
  low: number = 0
  /** Lines that were only counted and are not yet told. */
  count: number = 0

  private constructor(channel: string, bytes: Uint8Array, view: DataView, start: number) {
    this.channel = channel
    this.idAt = CLOSE_AT + 2 + channel.length + 1
    this.name0 = view.getInt32(start + CLOSE_AT, true)
    this.name1 = view.getInt32(start + this.idAt - 4, true)
    const words = Math.max(0, Math.ceil((this.idAt - CLOSE_AT - 8) / 4))
    this.between = Int32Array.from({ length: words }, (_, word) =>
      view.getInt32(start + CLOSE_AT + 4 + word * 4, true),
    )
    this.take(bytes, view, start, undefined)
  }

  /** Learns from a line that held a frame: `undefined` when it is laid out in another way. */
  static from(frame: ReusedFrame, bytes: Uint8Array, view: DataView, start: number): Track | undefined {
    if (!isAlike(frame, bytes, start)) return undefined
    return new Track(frame.channel, bytes, view, start)
  }

  /** Notes the time of a line on this channel; without a frame the line was checked already. */
  take(bytes: Uint8Array, view: DataView, start: number, frame: ReusedFrame | undefined): boolean {
    if (frame !== undefined && !isAlike(frame, bytes, start)) {
      this.second0 = 0
      return false
    }
    this.second0 = view.getInt32(start, true)
    this.second1 = view.getInt32(start + 4, true)
    this.second2 = view.getInt32(start + 8, true)
    this.high = view.getInt32(start + FRACTION_AT)
    this.low = view.getUint16(start + FRACTION_AT + 4)
    return true
  }

  /** Nanoseconds of the last frame. */
  get nanoseconds(): number {
    const { high, low } = this
    const digits =
      ((high >> 24) & 15) * 100_000 +
      ((high >> 16) & 15) * 10_000 +
      ((high >> 8) & 15) * 1000 +
      (high & 15) * 100 +
      ((low >> 8) & 15) * 10 +
      (low & 15)
    return digits * 1000
  }

  /** Remembers the identifier on this line, and whether it is plain. */
  know(frame: ReusedFrame, view: DataView, start: number, plain: boolean): void {
    const at = start + this.idAt
    const second = frame.extended ? view.getInt32(at + 4, true) : 0
    this.ids.add(view.getInt32(at, true), second, frame.id, frame.extended, plain)
  }
}

/** Whether the line that held this frame is `(ssssssssss.dddddd) channel id#...` with nothing more in between. */
function isAlike(frame: ReusedFrame, bytes: Uint8Array, start: number): boolean {
  const name = frame.channel.length
  return (
    bytes[start] === OPEN &&
    bytes[start + 11] === DOT &&
    bytes[start + CLOSE_AT] === CLOSE &&
    frame.time.decimals === 6 &&
    bytes[start + CLOSE_AT + 1] === SPACE &&
    name > 0 &&
    name <= MOST_NAME_BYTES &&
    bytes[start + CLOSE_AT + 2 + name] === SPACE &&
    bytes[start + CLOSE_AT + 3 + name + (frame.extended || frame.error ? 8 : 3)] === HASH
  )
}
