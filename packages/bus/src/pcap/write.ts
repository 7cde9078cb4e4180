/**
 * @module Writes frames as pcapng with link type 227, for exports, demo recordings and tests.
 *
 * Source: draft-ietf-opsawg-pcapng; LINKTYPE_CAN_SOCKETCAN of tcpdump.org. Times are written in nanoseconds.
 */

import type { CanFrame } from '../frame/index.ts'
import { LINKTYPE_CAN_SOCKETCAN } from '../socketcan/index.ts'

const NANOSECONDS_PER_SECOND = 1_000_000_000n

/** Writes one recording: take `header` first, then each frame in order. */
export class PcapngWriter {
  readonly #interfaces: Map<string, number> = new Map()

  /** The section header; comes first. */
  header(): Uint8Array {
    const body = new DataView(new ArrayBuffer(16))
    body.setUint32(0, 0x1a2b3c4d, true)
    body.setUint16(4, 1, true)
    // The length of the section is not known: -1 says so.
    body.setBigInt64(8, -1n, true)
    return block(0x0a0d0d0a, new Uint8Array(body.buffer))
  }

  /** The blocks of one frame: before the first of a channel, the description of its interface. */
  frame(frame: CanFrame): Uint8Array {
    const known = this.#interfaces.get(frame.channel)
    const index = known ?? this.#interfaces.size
    const packet = block(6, packetBody(index, frame))
    if (known !== undefined) return packet
    this.#interfaces.set(frame.channel, index)
    const description = block(1, interfaceBody(frame.channel))
    const both = new Uint8Array(description.length + packet.length)
    both.set(description)
    both.set(packet, description.length)
    return both
  }
}

function interfaceBody(channel: string): Uint8Array {
  const name = Uint8Array.from(channel, (letter) => letter.charCodeAt(0) & 0x7f)
  const nameSize = Math.ceil(name.length / 4) * 4
  const body = new DataView(new ArrayBuffer(8 + 4 + nameSize + 8 + 4))
  body.setUint16(0, LINKTYPE_CAN_SOCKETCAN, true)
  body.setUint16(8, 2, true)
  body.setUint16(10, name.length, true)
  new Uint8Array(body.buffer).set(name, 12)
  body.setUint16(12 + nameSize, 9, true)
  body.setUint16(14 + nameSize, 1, true)
  body.setUint8(16 + nameSize, 9)
  return new Uint8Array(body.buffer)
}

function packetBody(index: number, frame: CanFrame): Uint8Array {
  const captured = 8 + frame.data.length
  const body = new DataView(new ArrayBuffer(20 + Math.ceil(captured / 4) * 4))
  const ticks = BigInt(frame.time.seconds) * NANOSECONDS_PER_SECOND + BigInt(frame.time.nanoseconds)
  body.setUint32(0, index, true)
  body.setUint32(4, Number(ticks >> 32n), true)
  body.setUint32(8, Number(ticks & 0xffff_ffffn), true)
  body.setUint32(12, captured, true)
  body.setUint32(16, captured, true)
  const flags =
    (frame.extended ? 0x8000_0000 : 0) | (frame.remote ? 0x4000_0000 : 0) | (frame.error ? 0x2000_0000 : 0)
  body.setUint32(20, (frame.id | flags) >>> 0)
  body.setUint8(24, frame.data.length)
  body.setUint8(25, frame.fd ? 0x04 : 0)
  new Uint8Array(body.buffer).set(frame.data, 28)
  return new Uint8Array(body.buffer)
}

/** A block: type, length, body, length again. The body's length is a multiple of four. */
function block(type: number, body: Uint8Array): Uint8Array {
  const view = new DataView(new ArrayBuffer(12 + body.length))
  view.setUint32(0, type, true)
  view.setUint32(4, 12 + body.length, true)
  new Uint8Array(view.buffer).set(body, 8)
  view.setUint32(8 + body.length, 12 + body.length, true)
  return new Uint8Array(view.buffer)
}
