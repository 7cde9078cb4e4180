/** @module 27 SecurityAccess (ISO 14229-1). Only the level is read; seed and key are nobody's business. */

import { type ServiceReader, subFunctionReader } from './reader.ts'

export const securityAccess: ServiceReader = subFunctionReader((value) => {
  if (value === 0 || value === 0x7f || (value >= 0x43 && value <= 0x5e)) return 'ISOSAEReserved'
  return value % 2 === 1 ? 'requestSeed' : 'sendKey'
})
