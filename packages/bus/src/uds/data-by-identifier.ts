/** @module 22 ReadDataByIdentifier, 24 ReadScalingDataByIdentifier, 2E WriteDataByIdentifier, 2F InputOutputControlByIdentifier. */

import type { DataIdentifier, Meaning } from '../message/types.ts'
import { nameOfDid, VIN_DID } from './dids.ts'
import { hexWord, identifier, printable, type ServiceReader, tooShort, word } from './reader.ts'

function didAt(payload: Uint8Array, at: number): DataIdentifier {
  const did = word(payload, at)
  return identifier(hexWord(did), nameOfDid(did))
}

function firstDid(payload: Uint8Array): Meaning {
  return payload.length < 3 ? tooShort(3) : { dids: [didAt(payload, 1)] }
}

/** Identification (F180-F19F) is text more often than not: it is shown as text when it reads as text. */
function textOf(did: number, data: Uint8Array): Meaning {
  if (did === VIN_DID) return { vin: printable(data) }
  if (did < 0xf180 || did > 0xf19f || data.length < 2) return {}
  const text = printable(data)
  return text === '' || text.includes('·') ? {} : { texts: { [nameOfDid(did)]: text } }
}

export const readDataByIdentifier: ServiceReader = {
  request: (payload) => {
    if (payload.length < 3) return tooShort(3)
    const dids: DataIdentifier[] = []
    for (let at = 1; at + 2 <= payload.length; at += 2) dids.push(didAt(payload, at))
    return payload.length % 2 === 1 ? { dids } : { dids, problems: ['half a data identifier at the end'] }
  },
  // The lengths of the data are not in the message, so only the first identifier is certain.
  response: (payload) =>
    payload.length < 3
      ? tooShort(3)
      : { dids: [didAt(payload, 1)], ...textOf(word(payload, 1), payload.subarray(3)) },
}

export const readScalingDataByIdentifier: ServiceReader = { request: firstDid, response: firstDid }
export const writeDataByIdentifier: ServiceReader = { request: firstDid, response: firstDid }
export const inputOutputControlByIdentifier: ServiceReader = { request: firstDid, response: firstDid }
