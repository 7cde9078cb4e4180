/** @module 28 CommunicationControl (ISO 14229-1); control types from `sub_functions.py` of mdabrowski1990/uds (MIT). */

import { namer, type ServiceReader, subFunctionOf, tooShort } from './reader.ts'

const name = namer({
  0: 'enableRxAndTx',
  1: 'enableRxAndDisableTx',
  2: 'disableRxAndEnableTx',
  3: 'disableRxAndTx',
  4: 'enableRxAndDisableTxWithEnhancedAddressInformation',
  5: 'enableRxAndTxWithEnhancedAddressInformation',
})

export const communicationControl: ServiceReader = {
  request: (payload) => {
    const subFunction = subFunctionOf(payload, name)
    if (subFunction === undefined) return tooShort(2)
    const type = payload[2]
    return type === undefined
      ? { subFunction, ...tooShort(3) }
      : { subFunction, values: { communicationType: type } }
  },
  response: (payload) => {
    const subFunction = subFunctionOf(payload, name)
    return subFunction === undefined ? tooShort(2) : { subFunction }
  },
}
