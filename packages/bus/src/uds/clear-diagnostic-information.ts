/** @module 14 ClearDiagnosticInformation (ISO 14229-1): the group of codes to clear, and since 2020 the memory. */

import { hexUpper, nameOfDtcGroup } from '../dtc/index.ts'
import { type ServiceReader, tooShort } from './reader.ts'

export const clearDiagnosticInformation: ServiceReader = {
  request: (payload) => {
    if (payload.length < 4) return tooShort(4)
    const group = payload.subarray(1, 4)
    const memory = payload[4]
    return {
      texts: { groupOfDTC: hexUpper(group), groupName: nameOfDtcGroup(group) },
      ...(memory === undefined ? {} : { values: { memorySelection: memory } }),
    }
  },
  response: () => ({}),
}
