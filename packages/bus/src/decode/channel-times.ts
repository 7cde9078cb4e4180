/** @module The time of a channel's frames: in order or not, and without a pause since when. */

import { type CanFrame, keepTime, type RecordedTime } from '../frame/index.ts'

/** Who is told of a channel's times. */
export interface TimesListener {
  /** A frame is earlier than the one before it. */
  backwards(frame: CanFrame, before: RecordedTime): void
  /** Frames came from one time to the other without a pause of two seconds. */
  recorded(from: RecordedTime, to: RecordedTime): void
}

/** Follows the times of one channel. */
export class ChannelTimes {
  readonly #listener: TimesListener
  #seconds: number = Number.NEGATIVE_INFINITY
  #nanoseconds = 0
  /** Since when frames came without a long pause. */
  #since: RecordedTime | undefined

  constructor(listener: TimesListener) {
    this.#listener = listener
  }

  /** A frame came. */
  frame(frame: CanFrame): void {
    const { seconds, nanoseconds, decimals } = frame.time
    if (seconds < this.#seconds || (seconds === this.#seconds && nanoseconds < this.#nanoseconds))
      this.#listener.backwards(frame, { seconds: this.#seconds, nanoseconds: this.#nanoseconds, decimals })
    if (this.#isPause(frame.time)) this.#tellPause(frame.time)
    this.#seconds = seconds
    this.#nanoseconds = nanoseconds
  }

  /** Frames were counted of which this is the time of the last. */
  counted(count: number, last: RecordedTime): void {
    // Readers tell what they count at least once a second, so the first of these frames stood in the same one.
    if (this.#isPause(last)) this.#tellPause(count === 1 ? last : { ...last, nanoseconds: 0 })
    this.#seconds = last.seconds
    this.#nanoseconds = last.nanoseconds
  }

  /** No more frames will come. */
  end(): void {
    if (this.#since !== undefined) this.#tellPause(this.#since)
  }

  /** Whether more than a second passed since the last frame, or time went back as far. */
  #isPause(time: RecordedTime): boolean {
    return Math.abs(time.seconds - this.#seconds) > 1
  }

  #tellPause(time: RecordedTime): void {
    const from = this.#since
    if (from !== undefined) {
      const { decimals } = from
      this.#listener.recorded(from, { seconds: this.#seconds, nanoseconds: this.#nanoseconds, decimals })
    }
    this.#since = keepTime(time)
  }
}
