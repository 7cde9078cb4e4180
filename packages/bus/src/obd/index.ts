/**
 * @module Emission-related diagnostics (SAE J1979 / ISO 15031-5) on CAN: services 01 to 0A.
 *
 * Sources: SAE J1979 for the layouts on CAN (a count before codes and items); names as listed in the public
 * dissectors of wireshark and scapy, which agree.
 */

import { dtcText, hexUpper } from '../dtc/index.ts'
import type { DtcRecord, Meaning } from '../message/types.ts'
import { hexByte, identifier, printable, type ServiceReader, tooShort } from '../uds/reader.ts'

/** Names of the services by request identifier. */
export const OBD_SERVICES: ReadonlyMap<number, string> = new Map([
  [0x01, 'current powertrain data'],
  [0x02, 'freeze-frame data'],
  [0x03, 'confirmed emission-related DTCs'],
  [0x04, 'clear emission-related diagnostic information'],
  [0x05, 'oxygen sensor monitoring'],
  [0x06, 'on-board monitoring test results'],
  [0x07, 'pending emission-related DTCs'],
  [0x08, 'control of on-board system, test or component'],
  [0x09, 'vehicle information'],
  [0x0a, 'permanent emission-related DTCs'],
])

const INFO_TYPES: Readonly<Record<number, string>> = {
  0: 'supported InfoTypes',
  2: 'vehicle identification number',
  4: 'calibration identification',
  6: 'calibration verification number',
  8: 'in-use performance tracking, spark ignition',
  10: 'unit name',
  11: 'in-use performance tracking, compression ignition',
  13: 'engine serial number',
  15: 'exhaust regulation or type approval number',
}

/** Bytes of one item of an InfoType that holds text. */
const TEXT_ITEM_BYTES: Readonly<Record<number, number>> = { 4: 16, 10: 20, 13: 17, 15: 17 }

const VIN_INFO_TYPE = 0x02

/** Asks for identifiers, one byte each: PIDs, monitors or InfoTypes. */
function identifiers(name: (value: number) => string): (payload: Uint8Array) => Meaning {
  return (payload) =>
    payload.length < 2
      ? tooShort(2)
      : { dids: Array.from(payload.subarray(1), (value) => identifier(hexByte(value), name(value))) }
}

function firstIdentifier(name: (value: number) => string): (payload: Uint8Array) => Meaning {
  return (payload) => {
    const value = payload[1]
    return value === undefined ? tooShort(2) : { dids: [identifier(hexByte(value), name(value))] }
  }
}

/** On CAN a count stands before the codes; pairs of zero bytes are padding, not codes. */
function codes(payload: Uint8Array): Meaning {
  const count = payload[1]
  if (count === undefined) return tooShort(2)
  const dtcs: DtcRecord[] = []
  for (let at = 2; at + 2 <= payload.length; at += 2) {
    const bytes = payload.subarray(at, at + 2)
    if (bytes[0] !== 0 || bytes[1] !== 0) dtcs.push({ code: dtcText(bytes), raw: hexUpper(bytes) })
  }
  const problems = [
    ...(dtcs.length === count ? [] : [`${count} codes are stated, ${dtcs.length} are listed`]),
    ...(payload.length % 2 === 0 ? [] : ['half a code at the end']),
  ]
  return { dtcCount: count, dtcs, ...(problems.length > 0 ? { problems } : {}) }
}

function monitorStatus(payload: Uint8Array): Meaning {
  const status = payload[2]
  if (payload[1] !== 0x01 || status === undefined) return {}
  return { dtcCount: status & 0x7f, values: { malfunctionIndicatorOn: status >> 7 } }
}

function vehicleInformation(payload: Uint8Array): Meaning {
  const type = payload[1]
  if (type === undefined) return tooShort(2)
  const dids = [identifier(hexByte(type), INFO_TYPES[type] ?? 'reserved')]
  const size = TEXT_ITEM_BYTES[type]
  if (type === VIN_INFO_TYPE) {
    return payload.length < 4 ? { dids } : { dids, vin: printable(payload.subarray(3, 20)) }
  }
  if (size === undefined) return { dids }
  const texts: Record<string, string> = {}
  for (let at = 3, item = 1; at < payload.length; at += size, item++) {
    texts[`${INFO_TYPES[type]} ${item}`] = printable(payload.subarray(at, at + size))
  }
  return { dids, texts }
}

const pid = (): string => 'PID'
const infoType = (value: number): string => INFO_TYPES[value] ?? 'reserved'

/** How to read each service; a service that is not here is named only. */
export const OBD_READERS: ReadonlyMap<number, ServiceReader> = new Map<number, ServiceReader>([
  [
    0x01,
    {
      request: identifiers(pid),
      response: (payload) => ({ ...firstIdentifier(pid)(payload), ...monitorStatus(payload) }),
    },
  ],
  [0x02, { request: firstIdentifier(pid), response: firstIdentifier(pid) }],
  [0x03, { response: codes }],
  [0x06, { request: identifiers(() => 'monitor'), response: firstIdentifier(() => 'monitor') }],
  [0x07, { response: codes }],
  [0x08, { request: firstIdentifier(() => 'test'), response: firstIdentifier(() => 'test') }],
  [0x09, { request: identifiers(infoType), response: vehicleInformation }],
  [0x0a, { response: codes }],
])
