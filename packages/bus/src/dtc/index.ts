/** @module Diagnostic trouble codes: text, bytes, status, severity, groups, and what they mean. */

export { dtcBytes, dtcText, dtcTextAt, hexUpper } from './code.ts'
export { FAILURE_TYPES, failureTypeWords } from './failure-type.ts'
export { DTC_FORMATS, FUNCTIONAL_GROUPS, nameOfDtcGroup, nameOfFunctionalGroup } from './groups.ts'
export { type DtcArea, type DtcControl, type DtcMeaning, dtcMeaning } from './meaning.ts'
export { DTC_SEVERITY_BITS, dtcSeverityBits } from './severity.ts'
export { DTC_STATUS_BITS, type DtcStatusBit, dtcStatusBits } from './status.ts'
export { DTC_WORDS, type DtcTopic, type DtcWords } from './words.ts'
