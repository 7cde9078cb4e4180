/** @module Diagnostic trouble codes: text, bytes and status. */

export { dtcBytes, dtcText, hexUpper } from './code.ts'
export { DTC_STATUS_BITS, type DtcStatusBit, dtcStatusBits } from './status.ts'
