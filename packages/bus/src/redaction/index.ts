/**
 * @module Which bytes of a diagnostic message are secret, and how a message is shown without them.
 *
 * A recording of a key session holds seeds, keys, certificates and written data. What may be shown is the service,
 * its sub-function, identifier or counter, and the length. The decision hangs on the first byte alone, so that it
 * holds for broken-off messages, for units that speak another dialect, and whichever side sent it.
 *
 * Source of what is secret: our own rule (see README.md); service identifiers from ISO 14229-1 and ISO 14230-3.
 */

import { LOWER_HEX } from '../frame/hex.ts'

/** Bytes from `from` up to but not including `to`. */
export interface ByteRange {
  readonly from: number
  readonly to: number
}

/** Request identifier of a service whose data is secret -> how many bytes of a message may be shown. */
const SHOWN: ReadonlyMap<number, { readonly request: number; readonly response: number }> = new Map([
  /** SecurityAccess: the level. */
  [0x27, { request: 2, response: 2 }],
  /** Authentication: the task. */
  [0x29, { request: 2, response: 2 }],
  /** WriteDataByIdentifier: the identifier (two bytes in both dialects). */
  [0x2e, { request: 3, response: 3 }],
  /** RequestDownload, RequestUpload, RequestTransferExit: nothing but the service. */
  [0x34, { request: 1, response: 1 }],
  [0x35, { request: 1, response: 1 }],
  [0x37, { request: 1, response: 1 }],
  /** TransferData: the block counter. */
  [0x36, { request: 2, response: 2 }],
  /** KWP2000 WriteDataByLocalIdentifier: the local identifier. */
  [0x3b, { request: 2, response: 2 }],
  /** WriteMemoryByAddress: the address and length format. */
  [0x3d, { request: 2, response: 2 }],
  /** SecuredDataTransmission: nothing but the service. */
  [0x84, { request: 1, response: 1 }],
])

/** The secret part of a message that begins with the service byte; empty when nothing in it is secret. */
export function secretRanges(payload: Uint8Array): readonly ByteRange[] {
  const first = payload[0]
  if (first === undefined) return []
  const asRequest = SHOWN.get(first)?.request
  const asResponse = first & 0x40 ? SHOWN.get(first & ~0x40)?.response : undefined
  const shown = asRequest ?? asResponse
  return shown === undefined || payload.length <= shown ? [] : [{ from: shown, to: payload.length }]
}

/** A copy of the payload with the bytes of the ranges set to zero. */
export function withoutSecrets(payload: Uint8Array, ranges: readonly ByteRange[]): Uint8Array {
  const copy = new Uint8Array(payload)
  for (const range of ranges) copy.fill(0, range.from, range.to)
  return copy
}

/** Bytes whose hex digits are put together at once: short texts are copied, longer ones become trees. */
const AT_ONCE = 6

/** Lower-case hex of a payload; bytes inside the ranges are shown as `xx`. */
export function redactedHex(payload: Uint8Array, ranges: readonly ByteRange[]): string {
  let text = ''
  for (let at = 0; at < payload.length; ) {
    let part = ''
    for (const end = Math.min(at + AT_ONCE, payload.length); at < end; at++)
      part += ranges.length > 0 && isInside(ranges, at) ? 'xx' : LOWER_HEX[payload[at] as number]
    text += part
  }
  return text
}

function isInside(ranges: readonly ByteRange[], index: number): boolean {
  return ranges.some((range) => index >= range.from && index < range.to)
}
