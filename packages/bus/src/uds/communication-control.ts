/**
 * @module 28 CommunicationControl (ISO 14229-1): which messages a unit may send and receive.
 *
 * The communication type (Annex B) is from memory: bits 0 and 1 say which messages, bits 4 to 7 on which network.
 */

import type { Meaning } from '../message/types.ts'
import { type ServiceReader, subFunctionOf, tooShort, word } from './reader.ts'
import { subFunctionNamer } from './sub-functions.ts'

const name = subFunctionNamer(0x28)

const MESSAGES = [
  'reserved',
  'normalCommunicationMessages',
  'networkManagementCommunicationMessages',
  'networkManagementCommunicationMessages and normalCommunicationMessages',
] as const

function network(type: number): string {
  const subnet = type >> 4
  if (subnet === 0) return 'this unit and its networks'
  return subnet === 0xf ? 'the network of the request' : `network ${subnet}`
}

export const communicationControl: ServiceReader = {
  request: (payload): Meaning => {
    const subFunction = subFunctionOf(payload, name)
    if (subFunction === undefined) return tooShort(2)
    const type = payload[2]
    if (type === undefined) return { subFunction, ...tooShort(3) }
    const texts = { messages: MESSAGES[type & 3] as string, network: network(type) }
    const enhanced = subFunction.value === 0x04 || subFunction.value === 0x05
    if (!enhanced) return { subFunction, values: { communicationType: type }, texts }
    if (payload.length < 5) return { subFunction, values: { communicationType: type }, texts, ...tooShort(5) }
    const nodeIdentification = word(payload, 3)
    return { subFunction, values: { communicationType: type, nodeIdentification }, texts }
  },
  response: (payload) => {
    const subFunction = subFunctionOf(payload, name)
    return subFunction === undefined ? tooShort(2) : { subFunction }
  },
}
