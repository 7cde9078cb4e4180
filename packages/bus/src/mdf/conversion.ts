/**
 * @module Conversion rules (CC blocks) of MDF 4 that bus logging uses: raw value to physical value.
 * Source: ASAM MDF 4.1 conversion types 0 to 2 and 4 to 6, as public implementations compute them.
 */

import type { Block } from './blocks.ts'

/** Raw value to physical value. */
export interface Conversion {
  readonly offset: number
  readonly factor: number
  /** Set for the rules that are no straight line. */
  readonly table?: (raw: number) => number
}

export const UNCHANGED: Conversion = { offset: 0, factor: 1 }

/** Reads a CC block. Rules that give text, and unknown ones, leave the raw value as it is. */
export function readConversion(block: Block | undefined): Conversion {
  if (block === undefined || block.data.byteLength < 24) return UNCHANGED
  const { data } = block
  const kind = data.getUint8(0)
  const valueCount = data.getUint16(6, true)
  const values: number[] = []
  for (let at = 24; at + 8 <= data.byteLength && values.length < valueCount; at += 8)
    values.push(data.getFloat64(at, true))
  const value = (index: number): number => values[index] ?? 0
  switch (kind) {
    case 1:
      return values.length < 2 ? UNCHANGED : { offset: value(0), factor: value(1) }
    case 2:
      return {
        ...UNCHANGED,
        table: (x) =>
          (value(0) * x * x + value(1) * x + value(2)) / (value(3) * x * x + value(4) * x + value(5)),
      }
    case 4:
    case 5:
      return values.length < 2 ? UNCHANGED : { ...UNCHANGED, table: (x) => lookUp(values, x, kind === 4) }
    case 6:
      return { ...UNCHANGED, table: (x) => rangeLookUp(values, x) }
    default:
      return UNCHANGED
  }
}

/** The physical value. */
export function convert(conversion: Conversion, raw: number): number {
  return conversion.table === undefined ? raw * conversion.factor + conversion.offset : conversion.table(raw)
}

/** Pairs of key and value in rising order of keys; between two keys the nearer one counts, or the line between. */
function lookUp(pairs: readonly number[], x: number, interpolated: boolean): number {
  const count = Math.floor(pairs.length / 2)
  const key = (index: number): number => pairs[index * 2] ?? 0
  const value = (index: number): number => pairs[index * 2 + 1] ?? 0
  if (x <= key(0)) return value(0)
  for (let index = 1; index < count; index += 1) {
    if (x > key(index)) continue
    const share = (x - key(index - 1)) / (key(index) - key(index - 1))
    if (interpolated) return value(index - 1) + share * (value(index) - value(index - 1))
    return share > 0.5 ? value(index) : value(index - 1)
  }
  return value(count - 1)
}

/** Triples of lower key, upper key and value, then a default. */
function rangeLookUp(values: readonly number[], x: number): number {
  for (let at = 0; at + 2 < values.length; at += 3) {
    if (x >= (values[at] ?? 0) && x <= (values[at + 1] ?? 0)) return values[at + 2] ?? 0
  }
  return values[values.length - 1] ?? x
}

/** The start of the recording from an HD block, as whole seconds and nanoseconds since 1970 UTC. */
export function startTime(header: Block): { seconds: number; nanoseconds: number } {
  const low = header.data.getUint32(0, true)
  const high = header.data.getUint32(4, true)
  const total = (BigInt(high) << 32n) | BigInt(low)
  return { seconds: Number(total / 1_000_000_000n), nanoseconds: Number(total % 1_000_000_000n) }
}
