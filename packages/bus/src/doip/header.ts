/** @module The eight-byte generic header of ISO 13400-2: version, inverse version, payload type, payload length. */

import { lengthAllowed, PAYLOAD_TYPES, PROTOCOL_VERSIONS } from './codes.ts'

/** Bytes of the generic header. */
export const HEADER_LENGTH = 8

/**
 * Longest payload taken as a message, in bytes. The length field could claim 4 GiB; a diagnostic message over
 * 16 MiB is not known in practice (common practice, no source), so a greater claim is read as a broken header.
 */
export const LONGEST_PAYLOAD: number = 16 * 1024 * 1024

/** A generic header as read; nothing of it is judged yet. */
export interface DoipHeader {
  readonly version: number
  readonly type: number
  /** Payload length in bytes as the header claims it. */
  readonly length: number
}

/** Reads the header at `at`. The caller makes sure that eight bytes are there. */
export function readHeader(bytes: Uint8Array, at: number): DoipHeader {
  return {
    version: bytes[at] ?? 0,
    type: word(bytes, at + 2),
    length: word(bytes, at + 4) * 0x1_0000 + word(bytes, at + 6),
  }
}

/** True when version and inverse version belong together: the mark every DoIP message begins with. */
function patternFits(bytes: Uint8Array, at: number): boolean {
  return ((bytes[at] ?? 0) ^ (bytes[at + 1] ?? 0)) === 0xff
}

/**
 * Why the eight bytes cannot begin a message where one is due; `undefined` when they can.
 * A known type with a wrong but small length passes: its framing can be kept and the message reported.
 */
export function headerFault(bytes: Uint8Array, at: number): string | undefined {
  if (!patternFits(bytes, at)) return 'version and inverse version do not belong together'
  const header = readHeader(bytes, at)
  if (header.length > LONGEST_PAYLOAD) return `a payload of ${header.length} bytes is claimed`
  if (header.length > 4096 && !lengthAllowed(header.type, header.length)) {
    return `a payload of ${header.length} bytes is claimed for a type of fixed length`
  }
  return undefined
}

/** True when the eight bytes are beyond reasonable doubt a header: used to find the next message after a loss. */
export function surelyHeader(bytes: Uint8Array, at: number): boolean {
  if (!patternFits(bytes, at) || !PROTOCOL_VERSIONS.has(bytes[at] ?? 0)) return false
  const header = readHeader(bytes, at)
  if (header.length > LONGEST_PAYLOAD) return false
  return PAYLOAD_TYPES.has(header.type) && lengthAllowed(header.type, header.length)
}

function word(bytes: Uint8Array, at: number): number {
  return ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0)
}
