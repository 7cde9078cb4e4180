/** @module Unified diagnostic services (ISO 14229-1): names, codes, and how each service is read. */

import { clearDiagnosticInformation } from './clear-diagnostic-information.ts'
import { communicationControl } from './communication-control.ts'
import {
  inputOutputControlByIdentifier,
  readDataByIdentifier,
  readScalingDataByIdentifier,
  writeDataByIdentifier,
} from './data-by-identifier.ts'
import { diagnosticSessionControl } from './diagnostic-session-control.ts'
import { ecuReset } from './ecu-reset.ts'
import { readMemoryByAddress } from './memory.ts'
import { dynamicallyDefineDataIdentifier, readDataByPeriodicIdentifier } from './periodic-identifier.ts'
import { readDtcInformation } from './read-dtc-information.ts'
import type { ServiceReader } from './reader.ts'
import { routineControl } from './routine-control.ts'
import { securityAccess } from './security-access.ts'
import {
  accessTimingParameter,
  authentication,
  controlDtcSetting,
  linkControl,
  requestFileTransfer,
  responseOnEvent,
  testerPresent,
  transferData,
} from './simple-services.ts'

export { nameOfDid } from './dids.ts'
export { NEGATIVE_RESPONSE_CODES, nameOfNrc, RESPONSE_PENDING } from './nrc.ts'
export { UDS_SERVICES, type UdsService } from './services.ts'
export { type Edition, type NamedSubFunction, SUB_FUNCTIONS } from './sub-functions.ts'

/** How to read each service; a service that is not here is named only. */
export const UDS_READERS: ReadonlyMap<number, ServiceReader> = new Map([
  [0x10, diagnosticSessionControl],
  [0x11, ecuReset],
  [0x14, clearDiagnosticInformation],
  [0x19, readDtcInformation],
  [0x22, readDataByIdentifier],
  [0x23, readMemoryByAddress],
  [0x24, readScalingDataByIdentifier],
  [0x27, securityAccess],
  [0x28, communicationControl],
  [0x29, authentication],
  [0x2a, readDataByPeriodicIdentifier],
  [0x2c, dynamicallyDefineDataIdentifier],
  [0x2e, writeDataByIdentifier],
  [0x2f, inputOutputControlByIdentifier],
  [0x31, routineControl],
  [0x36, transferData],
  [0x38, requestFileTransfer],
  [0x3e, testerPresent],
  [0x83, accessTimingParameter],
  [0x85, controlDtcSetting],
  [0x86, responseOnEvent],
  [0x87, linkControl],
])
