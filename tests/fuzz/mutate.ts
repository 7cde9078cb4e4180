/** @module Damages a recording the way disks, cut transfers and evil hands do. */

import { type Draw, oneOf } from './draw.ts'

/** Values that sit on the edges of counters and lengths. */
const EDGES = [0, 1, 2, 3, 7, 8, 9, 0x0f, 0x10, 0x7f, 0x80, 0xff, 0x0a, 0x20, 0x23, 0x28, 0x29, 0x2c, 0x2d]
const EDGE_WORDS = [0, 1, 7, 8, 0x7f, 0xff, 0x100, 0xfff, 0x1000, 0xffff, 0x10000, 0x7fffffff, 0x80000000]

type Change = (bytes: Uint8Array, draw: Draw, other: Uint8Array) => Uint8Array

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}

/** A stretch of a recording: half of the time one that begins and ends at a line or a multiple of four. */
function stretch(bytes: Uint8Array, draw: Draw): readonly [from: number, to: number] {
  const length = 1 + draw(oneOf(draw, [4, 16, 64, 256, Math.max(1, bytes.length)]))
  const from = draw(bytes.length)
  if (draw(2) === 0) return [from, Math.min(bytes.length, from + length)]
  const line = bytes.indexOf(0x0a, from)
  if (line >= 0 && line - from < 300) {
    const next = bytes.indexOf(0x0a, line + 1)
    return [line + 1, next < 0 ? bytes.length : next + 1]
  }
  const even = from & ~3
  return [even, Math.min(bytes.length, even + ((length + 3) & ~3))]
}

/** Every way of damage; each returns new bytes. */
const CHANGES: readonly Change[] = [
  function flipBit(bytes, draw) {
    const at = draw(bytes.length)
    bytes[at] = (bytes[at] as number) ^ (1 << draw(8))
    return bytes
  },
  function setEdge(bytes, draw) {
    bytes[draw(bytes.length)] = oneOf(draw, EDGES)
    return bytes
  },
  function setAny(bytes, draw) {
    bytes[draw(bytes.length)] = draw(256)
    return bytes
  },
  function editNumber(bytes, draw) {
    // A field of 2, 4 or 8 bytes of either order: the edges of its range, or a little more or less than it was.
    const size = oneOf(draw, [2, 4, 8])
    if (bytes.length < size) return bytes
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length)
    const at = draw(2) === 0 ? draw(bytes.length - size + 1) : draw((bytes.length - size + 4) >> 2) * 4
    if (at + size > bytes.length) return bytes
    const little = draw(2) === 0
    if (size === 2) {
      const was = view.getUint16(at, little)
      view.setUint16(at, draw(2) === 0 ? oneOf(draw, EDGE_WORDS) : was + draw(17) - 8, little)
      return bytes
    }
    const low = size === 8 && !little ? at + 4 : at
    const was = view.getUint32(low, little)
    view.setUint32(low, draw(2) === 0 ? oneOf(draw, EDGE_WORDS) : was + draw(17) - 8, little)
    if (size === 8 && draw(4) === 0) view.setUint32(low === at ? at + 4 : at, oneOf(draw, EDGE_WORDS), little)
    return bytes
  },
  function editDigit(bytes, draw) {
    // Text: a digit or a delimiter near a random place becomes another one.
    const start = draw(bytes.length)
    for (let at = start; at < Math.min(bytes.length, start + 40); at++) {
      const byte = bytes[at] as number
      if (byte >= 0x30 && byte <= 0x66) {
        bytes[at] = '0123456789ABCDEFabcdef.,#()R- xX'.charCodeAt(draw(32))
        break
      }
    }
    return bytes
  },
  function truncate(bytes, draw) {
    return bytes.subarray(0, draw(bytes.length))
  },
  function loseStretch(bytes, draw) {
    const [from, to] = stretch(bytes, draw)
    return joined(bytes.subarray(0, from), bytes.subarray(to))
  },
  function repeatStretch(bytes, draw) {
    const [from, to] = stretch(bytes, draw)
    const copies = 1 + draw(3)
    const parts = Array.from({ length: copies }, () => bytes.subarray(from, to))
    return joined(bytes.subarray(0, to), ...parts, bytes.subarray(to))
  },
  function swapStretches(bytes, draw) {
    const [one, two] = [stretch(bytes, draw), stretch(bytes, draw)].sort((a, b) => a[0] - b[0])
    if (one === undefined || two === undefined || one[1] > two[0]) return bytes
    return joined(
      bytes.subarray(0, one[0]),
      bytes.subarray(...two),
      bytes.subarray(one[1], two[0]),
      bytes.subarray(...one),
      bytes.subarray(two[1]),
    )
  },
  function fillStretch(bytes, draw) {
    const [from, to] = stretch(bytes, draw)
    bytes.fill(oneOf(draw, [0, 0xff, 0x0a, 0x30, 0x20, 0x2c]), from, to)
    return bytes
  },
  function insertNoise(bytes, draw) {
    const at = draw(bytes.length)
    const noise = Uint8Array.from({ length: 1 + draw(40) }, () => draw(256))
    return joined(bytes.subarray(0, at), noise, bytes.subarray(at))
  },
  function spliceOther(bytes, draw, other) {
    if (other.length === 0) return bytes
    const [from, to] = stretch(other, draw)
    const at = draw(bytes.length)
    return joined(bytes.subarray(0, at), other.subarray(from, to), bytes.subarray(at + draw(2) * (to - from)))
  },
  function joinOther(bytes, draw, other) {
    return joined(bytes.subarray(0, draw(bytes.length)), other.subarray(draw(other.length + 1)))
  },
]

/** A damaged copy of `bytes`: one to eight changes; `other` lends parts. No longer than `most` bytes. */
export function mutate(bytes: Uint8Array, other: Uint8Array, draw: Draw, most: number = 20_000): Uint8Array {
  let changed = bytes.slice()
  const times = 1 + draw(oneOf(draw, [1, 3, 8]))
  for (let time = 0; time < times && changed.length > 0; time++) {
    changed = oneOf(draw, CHANGES)(changed, draw, other).slice(0, most)
  }
  return changed
}
