/** @module Writes frames as candump log text and as pcapng, through one large buffer each. */

import { closeSync, openSync, writeSync } from 'node:fs'

const BUFFER_BYTES = 1 << 22
const HEX = Array.from('0123456789ABCDEF', (letter) => letter.charCodeAt(0))

class Output {
  bytes = Buffer.allocUnsafe(BUFFER_BYTES + 4096)
  at = 0
  #file

  constructor(path) {
    this.#file = openSync(path, 'w')
  }

  /** Empties the buffer when it is full. */
  pass() {
    if (this.at >= BUFFER_BYTES) this.#flush()
  }

  close() {
    this.#flush()
    closeSync(this.#file)
  }

  #flush() {
    writeSync(this.#file, this.bytes, 0, this.at)
    this.at = 0
  }
}

/** The layout of `candump -L` (can-utils, lib.c). */
export class TextWriter {
  #output
  #second = -1
  #head = Buffer.alloc(0)

  constructor(path) {
    this.#output = new Output(path)
  }

  frame(seconds, microseconds, id, extended, data, length) {
    const output = this.#output
    const { bytes } = output
    if (seconds !== this.#second) {
      this.#second = seconds
      this.#head = Buffer.from(`(${String(seconds).padStart(10, '0')}.`)
    }
    let at = output.at
    this.#head.copy(bytes, at)
    at += this.#head.length
    for (let rest = microseconds, digit = 5; digit >= 0; digit--, rest = Math.floor(rest / 10))
      bytes[at + digit] = 0x30 + (rest % 10)
    at += 6
    at += bytes.write(') can0 ', at, 'latin1')
    for (let shift = extended ? 28 : 8; shift >= 0; shift -= 4) bytes[at++] = HEX[(id >>> shift) & 15]
    bytes[at++] = 0x23
    for (let index = 0; index < length; index++) {
      bytes[at++] = HEX[data[index] >> 4]
      bytes[at++] = HEX[data[index] & 15]
    }
    bytes[at++] = 0x0a
    output.at = at
    output.pass()
  }

  close() {
    this.#output.close()
  }
}

/** pcapng as a recorder writes it: link type 227, nanoseconds, whole 16-byte frames (draft-ietf-opsawg-pcapng). */
export class PcapngFile {
  #output
  #second = -1
  #nanoseconds = 0n

  constructor(path) {
    this.#output = new Output(path)
    const { bytes } = this.#output
    const words = [
      [0x0a0d0d0a, 28, 0x1a2b3c4d, 1, 0xffffffff, 0xffffffff, 28],
      // Interface: link type 227, name `can0`, nanoseconds (options 2 and 9).
      [1, 44, 227, 0, 2 | (4 << 16), 0x306e6163, 9 | (1 << 16), 9, 0, 0, 44],
    ].flat()
    for (const word of words) this.#output.at = bytes.writeUInt32LE(word, this.#output.at)
  }

  frame(seconds, microseconds, id, extended, data, length) {
    const output = this.#output
    const { bytes } = output
    if (seconds !== this.#second) {
      this.#second = seconds
      this.#nanoseconds = BigInt(seconds) * 1_000_000_000n
    }
    const ticks = this.#nanoseconds + BigInt(microseconds * 1000)
    let at = output.at
    at = bytes.writeUInt32LE(6, at)
    at = bytes.writeUInt32LE(48, at)
    at = bytes.writeUInt32LE(0, at)
    at = bytes.writeUInt32LE(Number(ticks >> 32n), at)
    at = bytes.writeUInt32LE(Number(ticks & 0xffffffffn), at)
    at = bytes.writeUInt32LE(16, at)
    at = bytes.writeUInt32LE(16, at)
    at = bytes.writeUInt32BE((extended ? id + 0x80000000 : id) >>> 0, at)
    at = bytes.writeUInt32LE(length, at)
    for (let index = 0; index < 8; index++) bytes[at++] = index < length ? data[index] : 0
    output.at = bytes.writeUInt32LE(48, at)
    output.pass()
  }

  close() {
    this.#output.close()
  }
}
