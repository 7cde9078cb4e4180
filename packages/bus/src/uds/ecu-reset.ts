/** @module 11 ECUReset (ISO 14229-1). */

import { type ServiceReader, subFunctionOf, tooShort } from './reader.ts'
import { subFunctionNamer } from './sub-functions.ts'

const name = subFunctionNamer(0x11)

export const ecuReset: ServiceReader = {
  request: (payload) => {
    const subFunction = subFunctionOf(payload, name)
    return subFunction === undefined ? tooShort(2) : { subFunction }
  },
  response: (payload) => {
    const subFunction = subFunctionOf(payload, name)
    if (subFunction === undefined) return tooShort(2)
    const time = payload[2]
    return subFunction.value === 0x04 && time !== undefined
      ? { subFunction, values: { powerDownTimeSeconds: time } }
      : { subFunction }
  },
}
