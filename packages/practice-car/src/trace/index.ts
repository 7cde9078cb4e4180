/** @module What passes on the practice car's bus, frame by frame, with ISO-TP both ways (ISO 15765-2). */

import { type CanFrame, continueToSend, segment } from '@shearline/bus'

const PADDING = 0x55
/** A frame of eight bytes at 500 kbit/s with its gap. */
const FRAME_SECONDS = 0.00027

/** Gathers frames; `startSeconds` is the instant of its zero in seconds since 1970 (or 0). */
export class Trace {
  readonly frames: CanFrame[] = []
  readonly #startSeconds: number
  readonly #channel: string
  #last = 0

  constructor(startSeconds: number, channel: string = 'can0') {
    this.#startSeconds = startSeconds
    this.#channel = channel
  }

  /** One frame at an instant, or right behind the frame before it when the bus was busy. Returns when it was sent. */
  send(seconds: number, id: number, data: Uint8Array): number {
    const at = Math.max(seconds, this.#last + FRAME_SECONDS)
    this.#last = at
    const whole = Math.floor(at)
    const microseconds = Math.min(999_999, Math.round((at - whole) * 1e6))
    this.frames.push({
      time: { seconds: this.#startSeconds + whole, nanoseconds: microseconds * 1000, decimals: 6 },
      channel: this.#channel,
      id,
      extended: false,
      fd: false,
      remote: false,
      error: false,
      data,
      where: {},
    })
    return at
  }

  /** A message from `from` with the receiver's flow control on `back`. Returns when its last frame was sent. */
  message(seconds: number, from: number, back: number, payload: Uint8Array): number {
    let at = seconds
    for (const [index, data] of segment(payload, { padding: PADDING }).entries()) {
      at = this.send(at, from, data)
      if (index === 0 && (data[0] ?? 0) >> 4 === 1)
        at = this.send(at + 0.001, back, continueToSend(0, 0, { padding: PADDING }))
    }
    return at
  }
}
