/**
 * @module The sub-functions of ISO 14229-1 by service; those an edition dropped stay, marked with it.
 *
 * Source: `uds/utilities/constants/sub_functions.py` of mdabrowski1990/uds (MIT), which lists the editions of 2013 and
 * 2020 apart. SecurityAccess (27) counts levels instead, see `security-access.ts`.
 */

/** Edition that has a row, when not both 2013 and 2020 have it. */
export type Edition = '2013 only' | '2020'

/** A sub-function without the bit that suppresses the answer. */
export interface NamedSubFunction {
  readonly value: number
  readonly name: string
  readonly edition?: Edition
}

type Row = readonly [value: number, name: string, edition?: Edition]

const ROWS: readonly (readonly [service: number, rows: readonly Row[]])[] = [
  [
    0x10,
    [
      [0x01, 'defaultSession'],
      [0x02, 'programmingSession'],
      [0x03, 'extendedDiagnosticSession'],
      [0x04, 'safetySystemDiagnosticSession'],
    ],
  ],
  [
    0x11,
    [
      [0x01, 'hardReset'],
      [0x02, 'keyOffOnReset'],
      [0x03, 'softReset'],
      [0x04, 'enableRapidPowerShutDown'],
      [0x05, 'disableRapidPowerShutDown'],
    ],
  ],
  [
    0x19,
    [
      [0x01, 'reportNumberOfDTCByStatusMask'],
      [0x02, 'reportDTCByStatusMask'],
      [0x03, 'reportDTCSnapshotIdentification'],
      [0x04, 'reportDTCSnapshotRecordByDTCNumber'],
      [0x05, 'reportDTCStoredDataByRecordNumber'],
      [0x06, 'reportDTCExtDataRecordByDTCNumber'],
      [0x07, 'reportNumberOfDTCBySeverityMaskRecord'],
      [0x08, 'reportDTCBySeverityMaskRecord'],
      [0x09, 'reportSeverityInformationOfDTC'],
      [0x0a, 'reportSupportedDTC'],
      [0x0b, 'reportFirstTestFailedDTC'],
      [0x0c, 'reportFirstConfirmedDTC'],
      [0x0d, 'reportMostRecentTestFailedDTC'],
      [0x0e, 'reportMostRecentConfirmedDTC'],
      [0x0f, 'reportMirrorMemoryDTCByStatusMask', '2013 only'],
      [0x10, 'reportMirrorMemoryDTCExtDataRecordByDTCNumber', '2013 only'],
      [0x11, 'reportNumberOfMirrorMemoryDTCByStatusMask', '2013 only'],
      [0x12, 'reportNumberOfEmissionsOBDDTCByStatusMask', '2013 only'],
      [0x13, 'reportEmissionsOBDDTCByStatusMask', '2013 only'],
      [0x14, 'reportDTCFaultDetectionCounter'],
      [0x15, 'reportDTCWithPermanentStatus'],
      [0x16, 'reportDTCExtDataRecordByRecordNumber'],
      [0x17, 'reportUserDefMemoryDTCByStatusMask'],
      [0x18, 'reportUserDefMemoryDTCSnapshotRecordByDTCNumber'],
      [0x19, 'reportUserDefMemoryDTCExtDataRecordByDTCNumber'],
      [0x1a, 'reportSupportedDTCExtDataRecord', '2020'],
      [0x42, 'reportWWHOBDDTCByMaskRecord'],
      [0x55, 'reportWWHOBDDTCWithPermanentStatus'],
      [0x56, 'reportDTCInformationByDTCReadinessGroupIdentifier', '2020'],
    ],
  ],
  [
    0x28,
    [
      [0x00, 'enableRxAndTx'],
      [0x01, 'enableRxAndDisableTx'],
      [0x02, 'disableRxAndEnableTx'],
      [0x03, 'disableRxAndTx'],
      [0x04, 'enableRxAndDisableTxWithEnhancedAddressInformation'],
      [0x05, 'enableRxAndTxWithEnhancedAddressInformation'],
    ],
  ],
  [
    0x29,
    [
      [0x00, 'deAuthenticate', '2020'],
      [0x01, 'verifyCertificateUnidirectional', '2020'],
      [0x02, 'verifyCertificateBidirectional', '2020'],
      [0x03, 'proofOfOwnership', '2020'],
      [0x04, 'transmitCertificate', '2020'],
      [0x05, 'requestChallengeForAuthentication', '2020'],
      [0x06, 'verifyProofOfOwnershipUnidirectional', '2020'],
      [0x07, 'verifyProofOfOwnershipBidirectional', '2020'],
      [0x08, 'authenticationConfiguration', '2020'],
    ],
  ],
  [
    0x2c,
    [
      [0x01, 'defineByIdentifier'],
      [0x02, 'defineByMemoryAddress'],
      [0x03, 'clearDynamicallyDefinedDataIdentifier'],
    ],
  ],
  [
    0x31,
    [
      [0x01, 'startRoutine'],
      [0x02, 'stopRoutine'],
      [0x03, 'requestRoutineResults'],
    ],
  ],
  [0x3e, [[0x00, 'zeroSubFunction']]],
  [
    0x83,
    [
      [0x01, 'readExtendedTimingParameterSet', '2013 only'],
      [0x02, 'setTimingParametersToDefaultValues', '2013 only'],
      [0x03, 'readCurrentlyActiveTimingParameters', '2013 only'],
      [0x04, 'setTimingParametersToGivenValues', '2013 only'],
    ],
  ],
  [
    0x85,
    [
      [0x01, 'on'],
      [0x02, 'off'],
    ],
  ],
  [
    0x86,
    [
      [0x00, 'stopResponseOnEvent'],
      [0x01, 'onDTCStatusChange'],
      [0x02, 'onTimerInterrupt', '2013 only'],
      [0x03, 'onChangeOfDataIdentifier'],
      [0x04, 'reportActivatedEvents'],
      [0x05, 'startResponseOnEvent'],
      [0x06, 'clearResponseOnEvent'],
      [0x07, 'onComparisonOfValues'],
      [0x08, 'reportMostRecentDtcOnStatusChange', '2020'],
      [0x09, 'reportDTCRecordInformationOnDtcStatusChange', '2020'],
    ],
  ],
  [
    0x87,
    [
      [0x01, 'verifyModeTransitionWithFixedParameter'],
      [0x02, 'verifyModeTransitionWithSpecificParameter'],
      [0x03, 'transitionMode'],
    ],
  ],
]

/** Sub-functions by request identifier of their service, then by value. */
export const SUB_FUNCTIONS: ReadonlyMap<number, ReadonlyMap<number, NamedSubFunction>> = new Map(
  ROWS.map(([service, rows]) => [
    service,
    new Map(
      rows.map(([value, name, edition]) => [
        value,
        edition === undefined ? { value, name } : { value, name, edition },
      ]),
    ),
  ]),
)

/** How the sub-functions of a service are called; `reserved` for those no edition names. */
export function subFunctionNamer(service: number): (value: number) => string {
  const rows = SUB_FUNCTIONS.get(service)
  return (value) => rows?.get(value)?.name ?? 'reserved'
}
