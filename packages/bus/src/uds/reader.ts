/** @module What every service of every dialect provides: how to read its request and its positive response. */

import { LOWER_HEX, UPPER_HEX } from '../frame/hex.ts'
import type { DataIdentifier, Meaning, SubFunction } from '../message/types.ts'

/** Reads the meaning of one service. `payload` begins with the service byte and may be of any length. */
export interface ServiceReader {
  readonly request?: (payload: Uint8Array) => Meaning
  readonly response?: (payload: Uint8Array) => Meaning
}

/** Two upper-case hex digits. */
export function hexByte(value: number): string {
  return UPPER_HEX[value] ?? value.toString(16).toUpperCase()
}

/** Four upper-case hex digits. */
export function hexWord(value: number): string {
  return hexByte(value >> 8) + hexByte(value & 0xff)
}

/** Lower-case hex of the bytes from `from` up to but not including `to`. */
export function hexBytes(payload: Uint8Array, from: number, to: number = payload.length): string {
  let text = ''
  for (let at = from; at < to; at++) text += LOWER_HEX[payload[at] as number]
  return text
}

/** The big-endian 16-bit number at `at`; the caller has checked the length. */
export function word(payload: Uint8Array, at: number): number {
  return ((payload[at] as number) << 8) | (payload[at + 1] as number)
}

/** Characters as they stand; bytes that are no printable ASCII are shown as `·`, zero bytes at the ends are dropped. */
export function printable(bytes: Uint8Array): string {
  let text = ''
  for (const byte of bytes)
    text += byte >= 0x20 && byte < 0x7f ? String.fromCharCode(byte) : byte === 0 ? '\0' : '·'
  return text.replace(/^\0+|\0+$/g, '').replaceAll('\0', '·')
}

/** The meaning of a message that is too short for its service. */
export function tooShort(needed: number): Meaning {
  return { problems: [`fewer than ${needed} bytes`] }
}

/** Reads the sub-function in byte 1 of a UDS request; its bit 7 suppresses the positive response. */
export function subFunctionOf(payload: Uint8Array, name: (value: number) => string): SubFunction | undefined {
  const byte = payload[1]
  if (byte === undefined) return undefined
  const value = byte & 0x7f
  return { value, name: name(value), suppressResponse: (byte & 0x80) !== 0 }
}

/** A reader whose request and response hold a sub-function in byte 1 and nothing else that is read. */
export function subFunctionReader(name: (value: number) => string): ServiceReader {
  const read = (payload: Uint8Array): Meaning => {
    const subFunction = subFunctionOf(payload, name)
    return subFunction === undefined ? tooShort(2) : { subFunction }
  }
  return { request: read, response: read }
}

/** An identifier with its name. */
export function identifier(did: string, name: string): DataIdentifier {
  return { did, name }
}
