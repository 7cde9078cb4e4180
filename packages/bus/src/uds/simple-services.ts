/** @module Services whose one readable part is their sub-function, and those that are only named. */

import { hexByte, namer, type ServiceReader, subFunctionOf, subFunctionReader, tooShort } from './reader.ts'

/** 3E TesterPresent. */
export const testerPresent: ServiceReader = subFunctionReader(namer({ 0: 'zeroSubFunction' }))

/** 85 ControlDTCSetting. */
export const controlDtcSetting: ServiceReader = subFunctionReader(namer({ 1: 'on', 2: 'off' }))

/** 29 Authentication (2020); tasks from `sub_functions.py` of mdabrowski1990/uds (MIT). Its data is secret. */
export const authentication: ServiceReader = subFunctionReader(
  namer({
    0: 'deAuthenticate',
    1: 'verifyCertificateUnidirectional',
    2: 'verifyCertificateBidirectional',
    3: 'proofOfOwnership',
    4: 'transmitCertificate',
    5: 'requestChallengeForAuthentication',
    6: 'verifyProofOfOwnershipUnidirectional',
    7: 'verifyProofOfOwnershipBidirectional',
    8: 'authenticationConfiguration',
  }),
)

/** 2C DynamicallyDefineDataIdentifier. */
export const dynamicallyDefineDataIdentifier: ServiceReader = subFunctionReader(
  namer({ 1: 'defineByIdentifier', 2: 'defineByMemoryAddress', 3: 'clearDynamicallyDefinedDataIdentifier' }),
)

/** 83 AccessTimingParameter (edition 2013). */
export const accessTimingParameter: ServiceReader = subFunctionReader(
  namer({
    1: 'readExtendedTimingParameterSet',
    2: 'setTimingParametersToDefaultValues',
    3: 'readCurrentlyActiveTimingParameters',
    4: 'setTimingParametersToGivenValues',
  }),
)

/** 87 LinkControl. */
export const linkControl: ServiceReader = subFunctionReader(
  namer({
    1: 'verifyModeTransitionWithFixedParameter',
    2: 'verifyModeTransitionWithSpecificParameter',
    3: 'transitionMode',
  }),
)

/** 86 ResponseOnEvent: bit 6 of the sub-function asks the unit to keep the set-up over a power cycle. */
export const responseOnEvent: ServiceReader = {
  request: (payload) => {
    const subFunction = subFunctionOf(payload, (value) => EVENTS[value & 0x3f] ?? 'reserved')
    return subFunction === undefined ? tooShort(2) : { subFunction }
  },
  response: (payload) => {
    const subFunction = subFunctionOf(payload, (value) => EVENTS[value & 0x3f] ?? 'reserved')
    return subFunction === undefined ? tooShort(2) : { subFunction }
  },
}

const EVENTS: Readonly<Record<number, string>> = {
  0: 'stopResponseOnEvent',
  1: 'onDTCStatusChange',
  2: 'onTimerInterrupt',
  3: 'onChangeOfDataIdentifier',
  4: 'reportActivatedEvents',
  5: 'startResponseOnEvent',
  6: 'clearResponseOnEvent',
  7: 'onComparisonOfValues',
  8: 'reportMostRecentDtcOnStatusChange',
  9: 'reportDTCRecordInformationOnDtcStatusChange',
}

/** 36 TransferData: the block counter is shown, the data is secret. */
export const transferData: ServiceReader = {
  request: (payload) => {
    const counter = payload[1]
    return counter === undefined ? tooShort(2) : { values: { blockSequenceCounter: counter } }
  },
  response: (payload) => {
    const counter = payload[1]
    return counter === undefined ? tooShort(2) : { values: { blockSequenceCounter: counter } }
  },
}

/** 38 RequestFileTransfer: what is to be done with a file. */
export const requestFileTransfer: ServiceReader = {
  request: fileOperation,
  response: fileOperation,
}

const FILE_OPERATIONS: Readonly<Record<number, string>> = {
  1: 'addFile',
  2: 'deleteFile',
  3: 'replaceFile',
  4: 'readFile',
  5: 'readDir',
  6: 'resumeFile',
}

function fileOperation(payload: Uint8Array): ReturnType<NonNullable<ServiceReader['request']>> {
  const operation = payload[1]
  if (operation === undefined) return tooShort(2)
  return { texts: { modeOfOperation: FILE_OPERATIONS[operation] ?? `reserved ${hexByte(operation)}` } }
}
