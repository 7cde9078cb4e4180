/**
 * @module 23 ReadMemoryByAddress (ISO 14229-1): where in the memory and how much.
 *
 * The address and length format: low half the bytes of the address, high half the bytes of the size.
 */

import type { Meaning } from '../message/types.ts'
import { type ServiceReader, tooShort } from './reader.ts'

/** Longest number that is exact as a JavaScript number, in bytes. */
const EXACT_BYTES = 6

function number(payload: Uint8Array, from: number, bytes: number): number {
  let value = 0
  for (let at = from; at < from + bytes; at++) value = value * 256 + (payload[at] as number)
  return value
}

export const readMemoryByAddress: ServiceReader = {
  request: (payload): Meaning => {
    const format = payload[1]
    if (format === undefined) return tooShort(2)
    const address = format & 15
    const size = format >> 4
    if (payload.length < 2 + address + size) return tooShort(2 + address + size)
    const values: Record<string, number> = {}
    if (address > 0 && address <= EXACT_BYTES) values.memoryAddress = number(payload, 2, address)
    if (size > 0 && size <= EXACT_BYTES) values.memorySizeBytes = number(payload, 2 + address, size)
    return { values }
  },
}
