/** @module 2A ReadDataByPeriodicIdentifier and 2C DynamicallyDefineDataIdentifier (ISO 14229-1). */

import type { DataIdentifier, Meaning } from '../message/types.ts'
import { nameOfDid } from './dids.ts'
import { hexByte, hexWord, identifier, type ServiceReader, subFunctionOf, tooShort, word } from './reader.ts'
import { subFunctionNamer } from './sub-functions.ts'

/** Transmission modes of ISO 14229-1 Annex C (from memory). */
const MODES: Readonly<Record<number, string>> = {
  1: 'sendAtSlowRate',
  2: 'sendAtMediumRate',
  3: 'sendAtFastRate',
  4: 'stopSending',
}

/** A periodic identifier is the low byte of a data identifier F2xx. */
export const readDataByPeriodicIdentifier: ServiceReader = {
  request: (payload): Meaning => {
    const mode = payload[1]
    if (mode === undefined) return tooShort(2)
    const dids = Array.from(payload.subarray(2), (low) =>
      identifier(hexWord(0xf200 | low), nameOfDid(0xf200)),
    )
    return { dids, texts: { transmissionMode: MODES[mode] ?? `reserved ${hexByte(mode)}` } }
  },
}

const name = subFunctionNamer(0x2c)

function defined(payload: Uint8Array): Meaning {
  const subFunction = subFunctionOf(payload, name)
  if (subFunction === undefined) return tooShort(2)
  // Without an identifier all of them are cleared.
  if (payload.length < 4) return { subFunction }
  const dids: DataIdentifier[] = [identifier(hexWord(word(payload, 2)), nameOfDid(word(payload, 2)))]
  return { subFunction, dids }
}

export const dynamicallyDefineDataIdentifier: ServiceReader = {
  request: (payload) => {
    const meaning = defined(payload)
    if (meaning.subFunction?.value !== 0x01 || meaning.dids === undefined) return meaning
    // Source identifier, position and size, four bytes each.
    const dids = [...meaning.dids]
    for (let at = 4; at + 4 <= payload.length; at += 4) {
      dids.push(identifier(hexWord(word(payload, at)), nameOfDid(word(payload, at))))
    }
    return { ...meaning, dids }
  },
  response: defined,
}
