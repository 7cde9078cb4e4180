/**
 * @module A CAN frame as SocketCAN stores it inside a packet capture.
 *
 * Sources: the link-layer header types LINKTYPE_CAN_SOCKETCAN (227), LINKTYPE_LINUX_SLL (113) and
 * LINKTYPE_LINUX_SLL2 (276) as described at tcpdump.org, and `linux/can.h`.
 *
 * 227: identifier with flags (4 bytes, big-endian), data length, FD flags, two reserved bytes, data.
 * 113 and 276 put a cooked header before it; its protocol field says CAN (000C) or CAN FD (000D).
 */

import type { ReusedFrame } from '../frame/reused.ts'

export const LINKTYPE_SLL: number = 113
export const LINKTYPE_CAN_SOCKETCAN: number = 227
export const LINKTYPE_SLL2: number = 276

const SLL_HEADER_BYTES = 16
const SLL2_HEADER_BYTES = 20
const PROTOCOL_CAN = 0x000c
const PROTOCOL_CANFD = 0x000d
const PROTOCOL_CANXL = 0x000e

const EFF_FLAG = 0x80000000
const RTR_FLAG = 0x40000000
const ERR_FLAG = 0x20000000
const EFF_MASK = 0x1fffffff
const SFF_MASK = 0x7ff
/** All error classes of `linux/can/error.h` (bit 9 says that the frame holds error counters). */
const ERR_CLASSES = 0x3ff
/** Set in the flags byte of a CAN FD frame (`CANFD_FDF` of linux/can.h). */
const FDF_FLAG = 0x04
/** Set in the same byte of a CAN XL frame (`CANXL_XLF`). */
const XLF_FLAG = 0x80

/** Bytes before a SocketCAN frame in packets of a link type. */
export function cookedBytes(linkType: number): number {
  if (linkType === LINKTYPE_SLL) return SLL_HEADER_BYTES
  return linkType === LINKTYPE_SLL2 ? SLL2_HEADER_BYTES : 0
}

/** What a packet's link layer holds: where a CAN frame starts, or that it is another protocol, or why it cannot be read. */
export type Located = { readonly start: number; readonly fd: boolean } | 'other' | 'canxl' | 'short'

/** Finds the SocketCAN frame inside a packet of link type 227, 113 or 276. */
export function locate(linkType: number, packet: Uint8Array): Located {
  if (linkType === LINKTYPE_CAN_SOCKETCAN) {
    if (packet.length < 8) return 'short'
    const flags = packet[5] as number
    if (flags & XLF_FLAG && packet.length > 72) return 'canxl'
    return { start: 0, fd: packet.length > 16 || (flags & FDF_FLAG) !== 0 || (packet[4] as number) > 8 }
  }
  const sll2 = linkType === LINKTYPE_SLL2
  const start = sll2 ? SLL2_HEADER_BYTES : SLL_HEADER_BYTES
  if (packet.length < start) return 'short'
  const at = sll2 ? 0 : 14
  const protocol = ((packet[at] as number) << 8) | (packet[at + 1] as number)
  if (protocol === PROTOCOL_CANXL) return 'canxl'
  if (protocol !== PROTOCOL_CAN && protocol !== PROTOCOL_CANFD) return 'other'
  return packet.length < start + 8 ? 'short' : { start, fd: protocol === PROTOCOL_CANFD }
}

/** Index of the network interface an SLL2 packet came from; `undefined` for other link types. */
export function sll2Interface(linkType: number, packet: Uint8Array): number | undefined {
  if (linkType !== LINKTYPE_SLL2 || packet.length < 8) return undefined
  return read32(packet, 4, false)
}

function read32(bytes: Uint8Array, at: number, littleEndian: boolean): number {
  const a = bytes[at] as number
  const b = bytes[at + 1] as number
  const c = bytes[at + 2] as number
  const d = bytes[at + 3] as number
  return (littleEndian ? (d << 24) | (c << 16) | (b << 8) | a : (a << 24) | (b << 16) | (c << 8) | d) >>> 0
}

/** Why the bytes at a SocketCAN frame are not one; words in `explainFault`. */
export type FrameFault = 'length' | 'cut' | 'id'

/**
 * Fills `frame` (identifier, flags, data) from the SocketCAN frame at `start`.
 * `littleEndian` reads the identifier in the wrong byte order that some recorders write.
 */
export function readSocketCan(
  packet: Uint8Array,
  start: number,
  fd: boolean,
  littleEndian: boolean,
  frame: ReusedFrame,
): FrameFault | undefined {
  const word = read32(packet, start, littleEndian)
  const length = packet[start + 4] as number
  if (length > (fd ? 64 : 8)) return 'length'
  frame.error = (word & ERR_FLAG) !== 0
  frame.extended = word >= EFF_FLAG
  frame.remote = !fd && (word & RTR_FLAG) !== 0
  frame.fd = fd
  frame.id = word & EFF_MASK
  if (!frame.extended && !frame.error && frame.id > SFF_MASK) return 'id'
  const shown = frame.remote ? 0 : length
  if (packet.length - start - 8 < shown) return 'cut'
  for (let index = 0; index < shown; index++) frame.bytes[index] = packet[start + 8 + index] as number
  frame.setLength(shown)
  return undefined
}

/** Says in words what is wrong with a SocketCAN frame. */
export function explainFault(fault: FrameFault): string {
  if (fault === 'length') return 'the frame states more data bytes than its kind can hold'
  if (fault === 'cut') return 'the frame states more data bytes than were captured'
  return 'an 11-bit identifier has bits set above bit 10'
}

/**
 * One frame's vote on the byte order of identifiers: -1 big-endian (as link type 227 demands), 1 little-endian,
 * 0 when both orders make sense. An identifier makes sense when an 11-bit one has no bits above bit 10, an error
 * frame names only error classes that exist, and no frame is error, remote and extended at once.
 */
export function byteOrderVote(packet: Uint8Array, start: number): -1 | 0 | 1 {
  const big = sensible(read32(packet, start, false))
  const little = sensible(read32(packet, start, true))
  if (big === little) return 0
  return big ? -1 : 1
}

function sensible(word: number): boolean {
  const extended = word >= EFF_FLAG
  const error = (word & ERR_FLAG) !== 0
  if (error) return !extended && (word & RTR_FLAG) === 0 && (word & EFF_MASK) <= ERR_CLASSES
  return extended ? (word & RTR_FLAG) === 0 : (word & EFF_MASK) <= SFF_MASK
}
