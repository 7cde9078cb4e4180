/** @module What a DoIP payload holds (ISO 13400-2), by payload type. */

import {
  activationMeaning,
  diagnosticNackMeaning,
  headerNackMeaning,
  hexWord,
  lengthAllowed,
} from './codes.ts'

/** A payload taken apart. Logical addresses are four upper-case hex digits, EID and GID twelve. */
export type DoipBody =
  | { readonly kind: 'header-nack'; readonly code: number; readonly meaning: string }
  | { readonly kind: 'identification-request' }
  | { readonly kind: 'identification-request-by-eid'; readonly eid: string }
  | { readonly kind: 'identification-request-by-vin'; readonly vin: string }
  | {
      readonly kind: 'announcement'
      readonly vin: string
      readonly source: string
      readonly eid: string
      readonly gid: string
      readonly furtherAction: number
      /** VIN/GID synchronisation status; absent before the 2012 edition. */
      readonly syncStatus: number | undefined
    }
  | { readonly kind: 'activation-request'; readonly source: string; readonly activationType: number }
  | {
      readonly kind: 'activation-response'
      readonly tester: string
      readonly source: string
      readonly code: number
      readonly meaning: string
    }
  | { readonly kind: 'alive-check-request' }
  | { readonly kind: 'alive-check-response'; readonly source: string }
  | { readonly kind: 'entity-status-request' }
  | {
      readonly kind: 'entity-status-response'
      /** 0 gateway, 1 node. */
      readonly nodeType: number
      readonly mostConnections: number
      readonly openConnections: number
      /** Greatest request the entity takes, in bytes; the field is optional. */
      readonly largestRequestBytes: number | undefined
    }
  | { readonly kind: 'power-mode-request' }
  /** 0 not ready, 1 ready, 2 not supported. */
  | { readonly kind: 'power-mode-response'; readonly mode: number }
  | {
      readonly kind: 'diagnostic'
      readonly source: string
      readonly target: string
      readonly userData: Uint8Array
    }
  | {
      readonly kind: 'diagnostic-ack'
      readonly source: string
      readonly target: string
      readonly code: number
      /** The beginning of the message acknowledged, when the entity repeats it. */
      readonly previous: Uint8Array
    }
  | {
      readonly kind: 'diagnostic-nack'
      readonly source: string
      readonly target: string
      readonly code: number
      readonly meaning: string
      readonly previous: Uint8Array
    }
  /** A payload type the standard reserves or leaves to the maker. */
  | { readonly kind: 'unknown' }
  /** The length does not fit the payload type: nothing of it is trusted. */
  | { readonly kind: 'malformed' }

/**
 * Takes a payload apart. `bytes[from..to)` is the payload without its header; nothing is copied, byte fields are
 * views. Never throws: a length the type does not allow gives `malformed`.
 * Source: ISO 13400-2:2019, payload tables of the types.
 */
export function readBody(type: number, bytes: Uint8Array, from: number, to: number): DoipBody {
  if (!lengthAllowed(type, to - from)) return { kind: 'malformed' }
  const byte = (at: number): number => bytes[from + at] ?? 0
  const address = (at: number): string => hexWord((byte(at) << 8) | byte(at + 1))
  const hex = (at: number, count: number): string => {
    let text = ''
    for (let index = 0; index < count; index += 2) text += address(at + index)
    return text
  }
  switch (type) {
    case 0x0000:
      return { kind: 'header-nack', code: byte(0), meaning: headerNackMeaning(byte(0)) }
    case 0x0001:
      return { kind: 'identification-request' }
    case 0x0002:
      return { kind: 'identification-request-by-eid', eid: hex(0, 6) }
    case 0x0003:
      return { kind: 'identification-request-by-vin', vin: vinText(bytes, from) }
    case 0x0004:
      return {
        kind: 'announcement',
        vin: vinText(bytes, from),
        source: address(17),
        eid: hex(19, 6),
        gid: hex(25, 6),
        furtherAction: byte(31),
        syncStatus: to - from > 32 ? byte(32) : undefined,
      }
    case 0x0005:
      return { kind: 'activation-request', source: address(0), activationType: byte(2) }
    case 0x0006:
      return {
        kind: 'activation-response',
        tester: address(0),
        source: address(2),
        code: byte(4),
        meaning: activationMeaning(byte(4)),
      }
    case 0x0007:
      return { kind: 'alive-check-request' }
    case 0x0008:
      return { kind: 'alive-check-response', source: address(0) }
    case 0x4001:
      return { kind: 'entity-status-request' }
    case 0x4002:
      return {
        kind: 'entity-status-response',
        nodeType: byte(0),
        mostConnections: byte(1),
        openConnections: byte(2),
        largestRequestBytes:
          to - from > 3 ? byte(3) * 0x100_0000 + ((byte(4) << 16) | (byte(5) << 8) | byte(6)) : undefined,
      }
    case 0x4003:
      return { kind: 'power-mode-request' }
    case 0x4004:
      return { kind: 'power-mode-response', mode: byte(0) }
    case 0x8001:
      return {
        kind: 'diagnostic',
        source: address(0),
        target: address(2),
        userData: bytes.subarray(from + 4, to),
      }
    case 0x8002:
    case 0x8003: {
      const common = {
        source: address(0),
        target: address(2),
        code: byte(4),
        previous: bytes.subarray(from + 5, to),
      }
      return type === 0x8002
        ? { kind: 'diagnostic-ack', ...common }
        : { kind: 'diagnostic-nack', ...common, meaning: diagnosticNackMeaning(common.code) }
    }
    default:
      return { kind: 'unknown' }
  }
}

/**
 * The VIN field as text: 17 characters as sent, empty when the field is unset (all 00 or all FF).
 * A byte that is no printable ASCII character is written as U+FFFD, so that the length stays 17.
 */
function vinText(bytes: Uint8Array, from: number): string {
  const field = bytes.subarray(from, from + 17)
  if (field.every((byte) => byte === 0x00) || field.every((byte) => byte === 0xff)) return ''
  let text = ''
  for (const byte of field) text += byte >= 0x20 && byte < 0x7f ? String.fromCharCode(byte) : '\uFFFD'
  return text
}
