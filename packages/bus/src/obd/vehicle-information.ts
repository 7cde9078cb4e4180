/**
 * @module Service 09 of SAE J1979 on CAN: VIN, calibrations, names, in-use counters.
 *
 * InfoTypes and layouts: scapy `obd/iid/iids.py` and wireshark `packet-obd-ii.c`; 0D and 0F from memory.
 */

import type { DataRecord, Meaning } from '../message/types.ts'
import { hexByte, hexBytes, identifier, printable, tooShort } from '../uds/reader.ts'
import { joined, supportedNumbers } from './pid-data.ts'

type InfoForm = 'supported' | 'count' | 'vin' | 'text' | 'hex' | 'counters'

interface InfoType {
  readonly name: string
  readonly form: InfoForm
  /** Bytes of one item. */
  readonly bytes: number
}

/** InfoTypes by number. */
export const INFO_TYPES: ReadonlyMap<number, InfoType> = new Map<number, InfoType>([
  [0x00, { name: 'supported InfoTypes', form: 'supported', bytes: 4 }],
  [0x01, { name: 'VIN message count', form: 'count', bytes: 1 }],
  [0x02, { name: 'vehicle identification number', form: 'vin', bytes: 17 }],
  [0x03, { name: 'calibration ID message count', form: 'count', bytes: 1 }],
  [0x04, { name: 'calibration identification', form: 'text', bytes: 16 }],
  [0x05, { name: 'CVN message count', form: 'count', bytes: 1 }],
  [0x06, { name: 'calibration verification number', form: 'hex', bytes: 4 }],
  [0x07, { name: 'in-use performance tracking message count', form: 'count', bytes: 1 }],
  [0x08, { name: 'in-use performance tracking, spark ignition', form: 'counters', bytes: 2 }],
  [0x09, { name: 'unit name message count', form: 'count', bytes: 1 }],
  [0x0a, { name: 'unit name', form: 'text', bytes: 20 }],
  [0x0b, { name: 'in-use performance tracking, compression ignition', form: 'counters', bytes: 2 }],
  [0x0d, { name: 'engine serial number', form: 'text', bytes: 17 }],
  [0x0f, { name: 'exhaust regulation or type approval number', form: 'text', bytes: 17 }],
])

/** Name of an InfoType. */
export function nameOfInfoType(type: number): string {
  return INFO_TYPES.get(type)?.name ?? 'reserved'
}

function named(type: number): Meaning {
  return { dids: [identifier(hexByte(type), nameOfInfoType(type))] }
}

/** The items of one InfoType in `payload` from `from` to `to`. */
function items(info: InfoType, payload: Uint8Array, from: number, to: number): Meaning {
  const texts: Record<string, string> = {}
  const records: DataRecord[] = []
  let vin: Meaning = {}
  for (let at = from, item = 1; at < to; at += info.bytes, item++) {
    const end = Math.min(at + info.bytes, to)
    if (info.form === 'vin' && item === 1) vin = { vin: printable(payload.subarray(at, end)) }
    else if (info.form === 'text' || info.form === 'vin')
      texts[`${info.name} ${item}`] = printable(payload.subarray(at, end))
    else if (info.form === 'hex') texts[`${info.name} ${item}`] = hexBytes(payload, at, end).toUpperCase()
    else records.push({ kind: 'data', number: item, name: info.name, bytes: hexBytes(payload, at, end) })
  }
  return {
    ...vin,
    ...(Object.keys(texts).length === 0 ? {} : { texts }),
    ...(records.length === 0 ? {} : { records }),
  }
}

/** Bytes of an InfoType's data at `at` (its count with it), when they are there in full. */
function sizeAt(payload: Uint8Array, info: InfoType, at: number): number | undefined {
  const count = payload[at]
  if (count === undefined) return undefined
  const size = info.form === 'supported' ? 4 : info.form === 'count' ? 1 : 1 + count * info.bytes
  return at + size <= payload.length ? size : undefined
}

function dataMeaning(type: number, info: InfoType, payload: Uint8Array, at: number, to: number): Meaning {
  if (info.form === 'supported') {
    return { texts: { 'supported InfoTypes': supportedNumbers(type, payload.subarray(at)) } }
  }
  if (info.form === 'count') return { values: { messageCount: payload[at] as number } }
  return items(info, payload, at + 1, to)
}

/** Cuts an answer into InfoTypes by their counts; `undefined` when they do not fill it to the last byte. */
function divided(payload: Uint8Array): Meaning | undefined {
  let meaning: Meaning = {}
  for (let at = 1; at < payload.length; ) {
    const type = payload[at] as number
    const info = INFO_TYPES.get(type)
    const size = info === undefined ? undefined : sizeAt(payload, info, at + 1)
    if (info === undefined || size === undefined) return undefined
    const end = at + 1 + size
    meaning = joined(meaning, { ...named(type), ...dataMeaning(type, info, payload, at + 1, end) })
    at = end
  }
  return meaning
}

/** 49: InfoTypes with a count and that many items each. */
export function vehicleInformation(payload: Uint8Array): Meaning {
  const type = payload[1]
  if (type === undefined) return tooShort(2)
  if (payload.length === 2) return named(type)
  const whole = divided(payload)
  if (whole !== undefined) return whole
  const info = INFO_TYPES.get(type)
  if (info === undefined) {
    return {
      ...named(type),
      records: [{ kind: 'data', did: hexByte(type), name: 'reserved', bytes: hexBytes(payload, 2) }],
    }
  }
  // The count does not fit the bytes: what is there is shown, the VIN no longer than it may be.
  if (info.form === 'supported' || info.form === 'count') return named(type)
  const end = info.form === 'vin' ? Math.min(payload.length, 3 + info.bytes) : payload.length
  return { ...named(type), ...items(info, payload, 3, end) }
}
