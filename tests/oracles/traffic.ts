/** @module Invented traffic for the outside readers: classic and FD, 11 and 29 bits, transfers one inside the other. */

import { type CanFrame, continueToSend, segment } from '@shearline/bus'
import { type Draw, drawing, oneOf } from '../fuzz/draw.ts'

/** Identifiers that speak ISO-TP in `traffic`. */
export const CLASSIC_IDS: readonly number[] = [0x7e0, 0x7e1, 0x7e8, 0x7e9, 0x18da10f1, 0x18daf110]

/** Builds frames one after another in time; microseconds, because candump text keeps no more. */
class Bus {
  readonly frames: CanFrame[] = []
  #microseconds = 1_700_000_000_000_000
  readonly #draw: Draw

  constructor(draw: Draw) {
    this.#draw = draw
  }

  put(id: number, data: Uint8Array, more: Partial<CanFrame> = {}): void {
    this.#microseconds += 130 + this.#draw(300)
    this.frames.push({
      time: {
        seconds: Math.floor(this.#microseconds / 1e6),
        nanoseconds: (this.#microseconds % 1e6) * 1000,
        decimals: 6,
      },
      channel: 'can0',
      id,
      extended: id > 0x7ff,
      fd: false,
      remote: false,
      error: false,
      data,
      where: {},
      ...more,
    })
  }
}

const anyBytes = (draw: Draw, count: number): Uint8Array =>
  Uint8Array.from({ length: count }, () => draw(256))

/** What may be written. */
export interface TrafficChoices {
  /** CAN FD frames between the classic ones, and ISO-TP on 7E2 and 7EA with frames of 64 bytes. */
  readonly fd?: boolean
  /** Remote frames, which not every reader knows. */
  readonly remote?: boolean
}

/** A few hundred frames, the same for the same seed. */
export function traffic(seed: number, choices: TrafficChoices = {}): CanFrame[] {
  const draw = drawing(seed)
  const bus = new Bus(draw)
  for (let round = 0; round < 25; round++) {
    for (let plain = 0; plain < 4; plain++) bus.put(0x80 + draw(0x200), anyBytes(draw, draw(9)))
    bus.put(0x0cf00400, anyBytes(draw, 8))
    if (choices.remote === true && round % 5 === 0) bus.put(0x321, new Uint8Array(0), { remote: true })
    const answers = [
      { ask: 0x7e0, id: 0x7e8 },
      { ask: 0x7e1, id: 0x7e9 },
      { ask: 0x18da10f1, id: 0x18daf110 },
    ].map(({ ask, id }) => {
      const did = draw(256)
      bus.put(ask, segment(Uint8Array.of(0x22, 0x12, did), { padding: 0x55 })[0] as Uint8Array)
      const payload = Uint8Array.of(0x62, 0x12, did, ...anyBytes(draw, draw(90)))
      return { ask, id, queue: segment(payload, { padding: 0xaa }) }
    })
    for (;;) {
      const open = answers.filter(({ queue }) => queue.length > 0)
      if (open.length === 0) break
      const { ask, id, queue } = oneOf(draw, open)
      const data = queue.shift() as Uint8Array
      bus.put(id, data)
      if ((data[0] as number) >> 4 === 1) bus.put(ask, continueToSend(0, 0, { padding: 0x55 }))
    }
    if (choices.fd !== true) continue
    bus.put(0x111, anyBytes(draw, oneOf(draw, [1, 8, 12, 16, 20, 24, 32, 48, 64])), { fd: true })
    bus.put(
      0x7e2,
      segment(Uint8Array.of(0x22, 0x12, 0x34), { frameBytes: 64, padding: 0xcc })[0] as Uint8Array,
      { fd: true },
    )
    const long = Uint8Array.of(0x62, 0x12, 0x34, ...anyBytes(draw, 10 + draw(300)))
    for (const [at, data] of segment(long, { frameBytes: 64, padding: 0xcc }).entries()) {
      bus.put(0x7ea, data, { fd: true })
      if ((data[0] as number) >> 4 === 1 && at === 0)
        bus.put(0x7e2, continueToSend(0, 0, { padding: 0xcc }), { fd: true })
    }
  }
  return bus.frames
}
