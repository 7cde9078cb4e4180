/** @module 11 ECUReset (ISO 14229-1); reset types from `sub_functions.py` of mdabrowski1990/uds (MIT). */

import { namer, type ServiceReader, subFunctionOf, tooShort } from './reader.ts'

const name = namer({
  1: 'hardReset',
  2: 'keyOffOnReset',
  3: 'softReset',
  4: 'enableRapidPowerShutDown',
  5: 'disableRapidPowerShutDown',
})

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
