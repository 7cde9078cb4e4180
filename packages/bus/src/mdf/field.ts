/**
 * @module One value inside a record: where its bits stand and how they become a number.
 * Source: ASAM MDF 4.1 channel data types 0 to 5 (unsigned, signed, floating point; little- and big-endian).
 */

import { type Conversion, convert } from './conversion.ts'

/** Where a channel's value stands in a record. */
export interface Field {
  readonly byteOffset: number
  readonly bitOffset: number
  readonly bitCount: number
  readonly kind: 'unsigned' | 'signed' | 'float'
  readonly bigEndian: boolean
  readonly conversion: Conversion
  /** The value of a virtual channel: it stands in no record. */
  readonly constant?: number
}

/** How many bytes of the record the field touches. */
export function fieldBytes(field: Field): number {
  return field.constant === undefined ? Math.ceil((field.bitOffset + field.bitCount) / 8) : 0
}

/** The field's value after conversion. `record` is the offset of the record's first byte in `bytes`. */
export function fieldValue(field: Field, bytes: Uint8Array, record: number): number {
  return field.constant ?? convert(field.conversion, rawValue(field, bytes, record))
}

/** The raw value; exact up to 2^53, beyond that as near as a number can be. */
export function rawValue(field: Field, bytes: Uint8Array, record: number): number {
  const at = record + field.byteOffset
  if (field.kind === 'float') return floatAt(field, bytes, at)
  const count = (field.bitOffset + field.bitCount + 7) >> 3
  if (count <= 4) return smallInteger(field, bytes, at, count)
  if (count <= 6 && field.kind === 'unsigned' && field.bitOffset === 0) {
    let value = 0
    for (let index = count - 1; index >= 0; index -= 1)
      value = value * 256 + byteAt(field, bytes, at, count, index)
    return field.bitCount === count * 8 ? value : value % 2 ** field.bitCount
  }
  return Number(wideInteger(field, bytes, at, count))
}

/** The raw value of an integer field as a big integer: for time stamps of 64 bits. */
export function wideInteger(field: Field, bytes: Uint8Array, at: number, count: number): bigint {
  let value = 0n
  for (let index = count - 1; index >= 0; index -= 1)
    value = (value << 8n) | BigInt(byteAt(field, bytes, at, count, index))
  value >>= BigInt(field.bitOffset)
  return field.kind === 'signed'
    ? BigInt.asIntN(field.bitCount, value)
    : BigInt.asUintN(field.bitCount, value)
}

function smallInteger(field: Field, bytes: Uint8Array, at: number, count: number): number {
  let value = 0
  for (let index = count - 1; index >= 0; index -= 1)
    value = (value << 8) | byteAt(field, bytes, at, count, index)
  const unused = 32 - field.bitCount
  const shifted = (value >>> field.bitOffset) << unused
  return field.kind === 'signed' ? shifted >> unused : shifted >>> unused
}

/** Byte `index` of a number counted from its least significant end. */
function byteAt(field: Field, bytes: Uint8Array, at: number, count: number, index: number): number {
  return bytes[field.bigEndian ? at + count - 1 - index : at + index] ?? 0
}

const scratch: DataView = new DataView(new ArrayBuffer(8))

function floatAt(field: Field, bytes: Uint8Array, at: number): number {
  const count = field.bitCount >> 3
  for (let index = 0; index < count; index += 1) scratch.setUint8(index, bytes[at + index] ?? 0)
  return count === 8 ? scratch.getFloat64(0, !field.bigEndian) : scratch.getFloat32(0, !field.bigEndian)
}
