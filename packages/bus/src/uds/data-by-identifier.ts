/** @module 22 ReadDataByIdentifier, 24 ReadScalingDataByIdentifier, 2E WriteDataByIdentifier, 2F InputOutputControlByIdentifier. */

import type { DataIdentifier, Meaning } from '../message/types.ts'
import { joined, pidMeaning } from '../obd/pid-data.ts'
import { PIDS } from '../obd/pids.ts'
import { nameOfSession } from './diagnostic-session-control.ts'
import { nameOfDid, VIN_DID } from './dids.ts'
import { standardLength } from './known-length.ts'
import { hexByte, hexWord, identifier, printable, type ServiceReader, tooShort, word } from './reader.ts'

const SESSION_DID = 0xf186

function didAt(payload: Uint8Array, at: number): DataIdentifier {
  const did = word(payload, at)
  return identifier(hexWord(did), nameOfDid(did))
}

function firstDid(payload: Uint8Array): Meaning {
  return payload.length < 3 ? tooShort(3) : { dids: [didAt(payload, 1)] }
}

/**
 * What the data of an identifier says where a standard tells: the VIN, the active session, the PIDs in F4xx.
 * Identification (F180-F19F) is text more often than not: it is shown as text when it reads as text.
 */
function dataMeaning(did: number, data: Uint8Array): Meaning {
  if (did === VIN_DID) return { vin: printable(data) }
  if (did === SESSION_DID && data.length === 1) {
    return { texts: { activeSession: nameOfSession(data[0] as number) } }
  }
  if (did >> 8 === 0xf4) {
    const pid = PIDS.get(did & 0xff)
    return pid !== undefined && pid.bytes === data.length ? pidMeaning(pid, data) : {}
  }
  if (did < 0xf180 || did > 0xf19f || data.length < 2) return {}
  const text = printable(data)
  return text === '' || text.includes('·') ? {} : { texts: { [nameOfDid(did)]: text } }
}

/**
 * Where the data behind the identifier at `at` ends: at the end of the message, or where a length of a standard ends
 * and an identifier that exists begins.
 */
function endOf(payload: Uint8Array, at: number): number {
  const length = standardLength(word(payload, at))
  const end = length === undefined ? payload.length : at + 2 + length
  return end + 2 < payload.length && nameOfDid(word(payload, end)) !== 'ISOSAEReserved' ? end : payload.length
}

/** 62: the lengths of the data are in no message, so identifiers are certain only behind lengths a standard fixes. */
function answer(payload: Uint8Array): Meaning {
  if (payload.length < 3) return tooShort(3)
  let meaning: Meaning = {}
  for (let at = 1; at + 2 <= payload.length; ) {
    const end = endOf(payload, at)
    const found = dataMeaning(word(payload, at), payload.subarray(at + 2, end))
    const one: Meaning = { dids: [didAt(payload, at)], ...found }
    if (at === 1 && end === payload.length) return one
    meaning = joined(meaning, one)
    at = end
  }
  return meaning
}

export const readDataByIdentifier: ServiceReader = {
  request: (payload) => {
    if (payload.length < 3) return tooShort(3)
    const dids: DataIdentifier[] = []
    for (let at = 1; at + 2 <= payload.length; at += 2) dids.push(didAt(payload, at))
    return payload.length % 2 === 1 ? { dids } : { dids, problems: ['half a data identifier at the end'] }
  },
  response: answer,
}

/** Parameters of 2F (ISO 14229-1 Annex E, from memory; wireshark lists the same). */
const CONTROLS: Readonly<Record<number, string>> = {
  0: 'returnControlToECU',
  1: 'resetToDefault',
  2: 'freezeCurrentState',
  3: 'shortTermAdjustment',
}

function control(payload: Uint8Array): Meaning {
  const parameter = payload[3]
  if (parameter === undefined) return firstDid(payload)
  return {
    dids: [didAt(payload, 1)],
    texts: { control: CONTROLS[parameter] ?? `reserved ${hexByte(parameter)}` },
  }
}

export const readScalingDataByIdentifier: ServiceReader = { request: firstDid, response: firstDid }
export const writeDataByIdentifier: ServiceReader = { request: firstDid, response: firstDid }
export const inputOutputControlByIdentifier: ServiceReader = { request: control, response: control }
