/**
 * @module Emission-related diagnostics (SAE J1979 / ISO 15031-5) on CAN: services 01 to 0A.
 *
 * Sources: SAE J1979 for the layouts on CAN (a count before codes and items); names as listed in the public
 * dissectors of wireshark and scapy, which agree.
 */

import { dtcText, hexUpper } from '../dtc/index.ts'
import type { DtcRecord, Meaning } from '../message/types.ts'
import { hexByte, identifier, type ServiceReader, tooShort } from '../uds/reader.ts'
import { nameOfMonitor, oxygenSensorTest, systemTest, testResults } from './monitoring.ts'
import { nameOfPid } from './pids.ts'
import { askFreezeFrame, currentData, freezeFrame } from './powertrain-data.ts'
import { nameOfInfoType, vehicleInformation } from './vehicle-information.ts'

export { nameOfPid, PIDS, type Pid, type PidField, type PidForm } from './pids.ts'

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

/** Asks for identifiers, one byte each: PIDs, monitors or InfoTypes. */
function identifiers(name: (value: number) => string): (payload: Uint8Array) => Meaning {
  return (payload) =>
    payload.length < 2
      ? tooShort(2)
      : { dids: Array.from(payload.subarray(1), (value) => identifier(hexByte(value), name(value))) }
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

/** How to read each service; a service that is not here is named only. */
export const OBD_READERS: ReadonlyMap<number, ServiceReader> = new Map<number, ServiceReader>([
  [0x01, { request: identifiers(nameOfPid), response: currentData }],
  [0x02, { request: askFreezeFrame, response: freezeFrame }],
  [0x03, { response: codes }],
  [0x05, { request: oxygenSensorTest, response: oxygenSensorTest }],
  [0x06, { request: identifiers(nameOfMonitor), response: testResults }],
  [0x07, { response: codes }],
  [0x08, { request: systemTest, response: systemTest }],
  [0x09, { request: identifiers(nameOfInfoType), response: vehicleInformation }],
  [0x0a, { response: codes }],
])
