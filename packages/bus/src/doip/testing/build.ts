/** @module Builds DoIP messages for tests, from the header layout of ISO 13400-2. */

/** A DoIP message: version 2 unless told otherwise. */
export function doip(type: number, payload: readonly number[] | Uint8Array, version = 2): Uint8Array {
  const message = new Uint8Array(8 + payload.length)
  const view = new DataView(message.buffer)
  view.setUint8(0, version)
  view.setUint8(1, version ^ 0xff)
  view.setUint16(2, type)
  view.setUint32(4, payload.length)
  message.set(payload, 8)
  return message
}

/** A diagnostic message (8001) from one logical address to another. */
export function diagnostic(
  source: number,
  target: number,
  userData: readonly number[] | Uint8Array,
): Uint8Array {
  return doip(0x8001, [source >> 8, source & 0xff, target >> 8, target & 0xff, ...userData])
}

export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}

export function hex(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')
}

export function bytesOf(text: string): Uint8Array {
  return Uint8Array.from(text.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16))
}
