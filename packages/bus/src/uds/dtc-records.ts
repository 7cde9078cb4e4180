/**
 * @module Snapshots and extended data in the answers of service 19 (ISO 14229-1), as bytes.
 *
 * The lengths inside stand in no message. What is divided here is certain; what is not is handed on whole and marked
 * `undivided`: its first record number, code and identifier are certain, what lies behind them is not.
 */

import { dtcText } from '../dtc/index.ts'
import type { DataRecord, DataRecordKind } from '../message/types.ts'
import { nameOfDid } from './dids.ts'
import type { LengthOf } from './known-length.ts'
import { hexBytes, hexWord, word } from './reader.ts'

type Named = Pick<DataRecord, 'number' | 'dtc'>

/** The rest of a message from `at` on, as one record that may hold more. */
function rest(
  kind: DataRecordKind,
  payload: Uint8Array,
  at: number,
  named: Omit<DataRecord, 'kind' | 'bytes'>,
): DataRecord {
  return { kind, ...named, bytes: hexBytes(payload, at), undivided: true }
}

/**
 * Reads `{nDID {DID data}*}` at `at`; pushes one record per identifier, and returns where the next record begins,
 * or `undefined` when that cannot be known.
 */
function identifiers(
  payload: Uint8Array,
  at: number,
  named: Named,
  lengthOf: LengthOf,
  into: DataRecord[],
): number | undefined {
  const count = payload[at]
  if (count === undefined) {
    into.push({ kind: 'snapshot', ...named, bytes: '' })
    return undefined
  }
  let place = at + 1
  if (count === 0) {
    // ISO 14229-1: zero means more than 255 identifiers, or that their number is not told.
    if (place < payload.length) into.push(rest('snapshot', payload, place, named))
    return undefined
  }
  for (let index = 0; index < count; index++) {
    if (place + 2 > payload.length) {
      if (place < payload.length) into.push(rest('snapshot', payload, place, named))
      return undefined
    }
    const did = word(payload, place)
    const label = { ...named, did: hexWord(did), name: nameOfDid(did) }
    place += 2
    const length = lengthOf(did)
    if (length === undefined || place + length > payload.length) {
      into.push(rest('snapshot', payload, place, label))
      return undefined
    }
    into.push({ kind: 'snapshot', ...label, bytes: hexBytes(payload, place, place + length) })
    place += length
  }
  return place
}

/** 59 04, 59 18: `{record number, identifiers}*` from `at` on. */
export function snapshots(
  payload: Uint8Array,
  at: number,
  dtc: string,
  lengthOf: LengthOf,
): readonly DataRecord[] {
  const records: DataRecord[] = []
  let place: number | undefined = at
  while (place !== undefined && place < payload.length) {
    place = identifiers(payload, place + 1, { number: payload[place] as number, dtc }, lengthOf, records)
  }
  return records
}

/** 59 05: `{record number, code, status, identifiers}*` from byte 2 on; a record number alone has nothing stored. */
export function storedData(
  payload: Uint8Array,
  lengthOf: LengthOf,
): { readonly records: readonly DataRecord[]; readonly codesAt: readonly number[] } {
  const records: DataRecord[] = []
  const codesAt: number[] = []
  let place: number | undefined = 2
  while (place !== undefined && place < payload.length) {
    const number = payload[place] as number
    const left: number = payload.length - place
    if (left === 1) {
      records.push({ kind: 'snapshot', number, bytes: '' })
      break
    }
    if (left < 5) {
      records.push(rest('snapshot', payload, place + 1, { number }))
      break
    }
    codesAt.push(place + 1)
    const dtc = dtcText(payload.subarray(place + 1, place + 4))
    place = identifiers(payload, place + 5, { number, dtc }, lengthOf, records)
  }
  return { records, codesAt }
}

/** 59 06, 59 10, 59 19: `{record number, data}*` from `at` on; the data has no length in any standard. */
export function extendedData(payload: Uint8Array, at: number, dtc: string): readonly DataRecord[] {
  const number = payload[at]
  if (number === undefined) return []
  // A record number alone says that the record is there and empty.
  if (at + 1 === payload.length) return [{ kind: 'extended-data', number, dtc, bytes: '' }]
  return [rest('extended-data', payload, at + 1, { number, dtc })]
}

/** 59 16: `record number {code, status, data}*`; the data behind the first code may go on into further codes. */
export function extendedDataByRecord(payload: Uint8Array): readonly DataRecord[] {
  const number = payload[2]
  if (number === undefined || payload.length < 7) return []
  const dtc = dtcText(payload.subarray(3, 6))
  if (payload.length === 7) return [{ kind: 'extended-data', number, dtc, bytes: '' }]
  return [rest('extended-data', payload, 7, { number, dtc })]
}
