/** @module 10 DiagnosticSessionControl (ISO 14229-1). */

import { type ServiceReader, subFunctionOf, tooShort, word } from './reader.ts'
import { subFunctionNamer } from './sub-functions.ts'

const standardName = subFunctionNamer(0x10)

/** Name of a session; the ranges of makers and suppliers by what they are (ranges from memory of ISO 14229-1). */
export function nameOfSession(value: number): string {
  if (value >= 0x40 && value <= 0x5f) return 'vehicleManufacturerSpecific'
  if (value >= 0x60 && value <= 0x7e) return 'systemSupplierSpecific'
  const name = standardName(value)
  return name === 'reserved' ? 'ISOSAEReserved' : name
}

export const diagnosticSessionControl: ServiceReader = {
  request: (payload) => {
    const subFunction = subFunctionOf(payload, nameOfSession)
    return subFunction === undefined ? tooShort(2) : { subFunction }
  },
  response: (payload) => {
    const subFunction = subFunctionOf(payload, nameOfSession)
    if (subFunction === undefined) return tooShort(2)
    if (payload.length < 6) return { subFunction }
    return {
      subFunction,
      values: {
        p2ServerMaxMilliseconds: word(payload, 2),
        p2StarServerMaxMilliseconds: word(payload, 4) * 10,
      },
    }
  },
}
