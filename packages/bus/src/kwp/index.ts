/**
 * @module Keyword Protocol 2000 (ISO 14230-3) as older cars answer it, here carried over CAN.
 *
 * Source: service identifiers and layouts of ISO 14230-3, checked against the byte vectors of the public scapy
 * test suite `test/contrib/automotive/kwp.uts`. Names as in the standard.
 */

import { dtcText, hexUpper } from '../dtc/index.ts'
import type { DtcRecord, Meaning } from '../message/types.ts'
import { nameOfDid } from '../uds/dids.ts'
import { hexByte, hexWord, identifier, printable, type ServiceReader, tooShort, word } from '../uds/reader.ts'

/** Names of the services by request identifier. */
export const KWP_SERVICES: ReadonlyMap<number, string> = new Map([
  [0x10, 'StartDiagnosticSession'],
  [0x11, 'ECUReset'],
  [0x12, 'ReadFreezeFrameData'],
  [0x13, 'ReadDiagnosticTroubleCodes'],
  [0x14, 'ClearDiagnosticInformation'],
  [0x17, 'ReadStatusOfDiagnosticTroubleCodes'],
  [0x18, 'ReadDiagnosticTroubleCodesByStatus'],
  [0x1a, 'ReadECUIdentification'],
  [0x20, 'StopDiagnosticSession'],
  [0x21, 'ReadDataByLocalIdentifier'],
  [0x22, 'ReadDataByCommonIdentifier'],
  [0x23, 'ReadMemoryByAddress'],
  [0x26, 'SetDataRates'],
  [0x27, 'SecurityAccess'],
  [0x28, 'DisableNormalMessageTransmission'],
  [0x29, 'EnableNormalMessageTransmission'],
  [0x2c, 'DynamicallyDefineLocalIdentifier'],
  [0x2e, 'WriteDataByCommonIdentifier'],
  [0x2f, 'InputOutputControlByCommonIdentifier'],
  [0x30, 'InputOutputControlByLocalIdentifier'],
  [0x31, 'StartRoutineByLocalIdentifier'],
  [0x32, 'StopRoutineByLocalIdentifier'],
  [0x33, 'RequestRoutineResultsByLocalIdentifier'],
  [0x34, 'RequestDownload'],
  [0x35, 'RequestUpload'],
  [0x36, 'TransferData'],
  [0x37, 'RequestTransferExit'],
  [0x38, 'StartRoutineByAddress'],
  [0x39, 'StopRoutineByAddress'],
  [0x3a, 'RequestRoutineResultsByAddress'],
  [0x3b, 'WriteDataByLocalIdentifier'],
  [0x3d, 'WriteMemoryByAddress'],
  [0x3e, 'TesterPresent'],
  [0x80, 'EscapeCode'],
  [0x81, 'StartCommunication'],
  [0x82, 'StopCommunication'],
  [0x83, 'AccessTimingParameters'],
  [0x85, 'ControlDTCSetting'],
  [0x86, 'ResponseOnEvent'],
])

/** Sessions of ISO 14230-3 (names from memory; the range above is the maker's). */
const SESSIONS: Readonly<Record<number, string>> = {
  129: 'standardSession',
  133: 'ECUProgrammingMode',
  134: 'ECUDevelopmentMode',
  135: 'ECUAdjustmentMode',
}

/** Identification options of ReadECUIdentification that are the same as the data identifiers F180-F19F. */
const VIN_OPTION = 0x90

function session(payload: Uint8Array): Meaning {
  const value = payload[1]
  if (value === undefined) return tooShort(2)
  const name = SESSIONS[value] ?? (value >= 0x89 ? 'manufacturerSpecific' : 'reserved')
  return { subFunction: { value, name, suppressResponse: false } }
}

function group(payload: Uint8Array): Meaning {
  if (payload.length < 3) return payload.length === 1 ? {} : tooShort(3)
  const value = hexUpper(payload.subarray(1, 3))
  return { texts: { groupOfDTC: value, groupName: value === 'FF00' ? 'all groups' : 'one code or group' } }
}

/** Count, then two bytes of code and one of status (the status bits are those of ISO 14230-3, not of UDS). */
function codesByStatus(payload: Uint8Array): Meaning {
  const count = payload[1]
  if (count === undefined) return tooShort(2)
  const dtcs: DtcRecord[] = []
  let at = 2
  for (; at + 3 <= payload.length; at += 3) {
    const bytes = payload.subarray(at, at + 2)
    dtcs.push({ code: dtcText(bytes), raw: hexUpper(bytes), status: payload[at + 2] as number })
  }
  const problems = [
    ...(dtcs.length === count ? [] : [`${count} codes are stated, ${dtcs.length} are listed`]),
    ...(at === payload.length ? [] : [`${payload.length - at} bytes after the last whole record`]),
  ]
  return { dtcCount: count, dtcs, ...(problems.length > 0 ? { problems } : {}) }
}

function askByStatus(payload: Uint8Array): Meaning {
  const status = payload[1]
  if (status === undefined) return tooShort(2)
  return {
    values: { statusOfDTCRequest: status },
    ...(payload.length >= 4 ? { texts: { groupOfDTC: hexUpper(payload.subarray(2, 4)) } } : {}),
  }
}

function localIdentifier(payload: Uint8Array): Meaning {
  const value = payload[1]
  return value === undefined ? tooShort(2) : { dids: [identifier(hexByte(value), 'local identifier')] }
}

function identification(payload: Uint8Array): Meaning {
  const option = payload[1]
  if (option === undefined) return tooShort(2)
  const name = option >= 0x86 && option <= 0x9f ? nameOfDid(0xf100 | option) : 'identification of the maker'
  return { dids: [identifier(hexByte(option), name)] }
}

function identified(payload: Uint8Array): Meaning {
  const meaning = identification(payload)
  if (payload.length < 4) return meaning
  const text = printable(payload.subarray(2))
  if (payload[1] === VIN_OPTION) return { ...meaning, vin: text }
  return text === '' || text.includes('·') ? meaning : { ...meaning, texts: { identification: text } }
}

function commonIdentifier(payload: Uint8Array): Meaning {
  if (payload.length < 3) return tooShort(3)
  const value = word(payload, 1)
  return { dids: [identifier(hexWord(value), nameOfDid(value))] }
}

function accessMode(payload: Uint8Array): Meaning {
  const value = payload[1]
  if (value === undefined) return tooShort(2)
  return {
    subFunction: { value, name: value % 2 === 1 ? 'requestSeed' : 'sendKey', suppressResponse: false },
  }
}

function both(read: (payload: Uint8Array) => Meaning): ServiceReader {
  return { request: read, response: read }
}

/** How to read each service; a service that is not here is named only. */
export const KWP_READERS: ReadonlyMap<number, ServiceReader> = new Map<number, ServiceReader>([
  [0x10, both(session)],
  [0x14, both(group)],
  [0x17, { request: group, response: codesByStatus }],
  [0x18, { request: askByStatus, response: codesByStatus }],
  [0x1a, { request: identification, response: identified }],
  [0x21, both(localIdentifier)],
  [0x22, both(commonIdentifier)],
  [0x27, both(accessMode)],
  [0x2c, both(localIdentifier)],
  [0x2e, both(commonIdentifier)],
  [0x2f, both(commonIdentifier)],
  [0x30, both(localIdentifier)],
  [0x31, both(localIdentifier)],
  [0x32, both(localIdentifier)],
  [0x33, both(localIdentifier)],
  [0x3b, both(localIdentifier)],
])
