/** @module One section of a pcapng recording: its byte order, its interfaces, and what their packets have in common. */

import { cookedBytes } from '../socketcan/index.ts'
import { type Interface, lastOfSecond, readInterface, setTime } from './pcapng-blocks.ts'
import type { Shape } from './scan-packets.ts'
import { HEAD_BYTES, type Origin } from './track.ts'

/** Type of an enhanced packet block. */
export const ENHANCED_PACKET = 6

/** More interfaces than any recorder has; further ones are not kept. */
const MOST_INTERFACES = 4096

/** The first sixteen bytes of an enhanced packet block: type, length (any), interface, upper word of the time. */
const HEAD_LIMITS: readonly number[] = [0, 0, 0, 0, 255, 255, 255, 255, 0, 0, 0, 0, 0, 0, 0, 0]

/** Where things stand in an enhanced packet block. */
function enhancedPackets(littleEndian: boolean, cooked: number): Shape {
  return {
    littleEndian,
    upperAt: 12,
    timeAt: 16,
    capturedAt: 20,
    packetAt: 28,
    lengthAt: 4,
    cookedBytes: cooked,
  }
}

/** Everything that a section header makes new. */
export class Section {
  readonly littleEndian: boolean
  readonly #interfaces: Interface[] = []
  readonly #origins: (Origin | undefined)[] = []
  readonly #head: Uint8Array = new Uint8Array(HEAD_BYTES)
  readonly #headView = new DataView(this.#head.buffer)

  constructor(littleEndian: boolean) {
    this.littleEndian = littleEndian
  }

  /** Takes an interface description, body without the trailing length. */
  describe(body: Uint8Array): void {
    if (this.#interfaces.length < MOST_INTERFACES)
      this.#interfaces.push(readInterface(body, this.littleEndian, this.#interfaces.length))
  }

  /** The interface of a number, once it was described. */
  interface(index: number): Interface | undefined {
    return this.#interfaces[index]
  }

  /** What the packets of an interface have in common. */
  originOf(from: Interface, index: number): Origin {
    const known = this.#origins[index]
    if (known !== undefined) return known
    const ticks = { high: 0, low: 0 }
    const origin: Origin = {
      index,
      shape: enhancedPackets(this.littleEndian, cookedBytes(from.linkType)),
      headLimits: HEAD_LIMITS,
      lastOfSecond: (upper, lower) => lastOfSecond(upper, lower, from),
      setTime(time, upper, lower) {
        ticks.high = upper
        ticks.low = lower
        setTime(time, ticks, from)
      },
    }
    this.#origins[index] = origin
    return origin
  }

  /** The first sixteen bytes of an enhanced packet block, valid until asked for again; its length is left out. */
  headOf(index: number, high: number): Uint8Array {
    this.#headView.setUint32(0, ENHANCED_PACKET, this.littleEndian)
    this.#headView.setUint32(8, index, this.littleEndian)
    this.#headView.setUint32(12, high, this.littleEndian)
    return this.#head
  }
}
