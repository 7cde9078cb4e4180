/**
 * @module Negative response codes of ISO 14229-1 (Annex A).
 *
 * Source: `uds/message/nrc.py` of mdabrowski1990/uds and `udsoncan/ResponseCode.py` of pylessard/python-udsoncan
 * (both MIT). Codes missing here are reserved or belong to the maker.
 */

/** A negative response code: its abbreviation and its name. */
export interface NegativeResponseCode {
  readonly abbreviation: string
  readonly name: string
  /** Edition that brought it, when the first one of 2006 has it not. */
  readonly edition?: '2020'
}

/** The code that says "wait, the answer comes later". */
export const RESPONSE_PENDING: number = 0x78

const ROWS: readonly (readonly [number, string, string])[] = [
  [0x10, 'GR', 'GeneralReject'],
  [0x11, 'SNS', 'ServiceNotSupported'],
  [0x12, 'SFNS', 'SubFunctionNotSupported'],
  [0x13, 'IMLOIF', 'IncorrectMessageLengthOrInvalidFormat'],
  [0x14, 'RTL', 'ResponseTooLong'],
  [0x21, 'BRR', 'BusyRepeatRequest'],
  [0x22, 'CNC', 'ConditionsNotCorrect'],
  [0x24, 'RSE', 'RequestSequenceError'],
  [0x25, 'NRFSC', 'NoResponseFromSubnetComponent'],
  [0x26, 'FPEORA', 'FailurePreventsExecutionOfRequestedAction'],
  [0x31, 'ROOR', 'RequestOutOfRange'],
  [0x33, 'SAD', 'SecurityAccessDenied'],
  [0x34, 'AR', 'AuthenticationRequired'],
  [0x35, 'IK', 'InvalidKey'],
  [0x36, 'ENOA', 'ExceedNumberOfAttempts'],
  [0x37, 'RTDNE', 'RequiredTimeDelayNotExpired'],
  [0x38, 'SDTR', 'SecureDataTransmissionRequired'],
  [0x39, 'SDTNA', 'SecureDataTransmissionNotAllowed'],
  [0x3a, 'SDTF', 'SecureDataVerificationFailed'],
  [0x50, 'CVFITP', 'CertificateVerificationFailed_InvalidTimePeriod'],
  [0x51, 'CVFIS', 'CertificateVerificationFailed_InvalidSignature'],
  [0x52, 'CVFICOT', 'CertificateVerificationFailed_InvalidChainOfTrust'],
  [0x53, 'CVFIT', 'CertificateVerificationFailed_InvalidType'],
  [0x54, 'CVFIF', 'CertificateVerificationFailed_InvalidFormat'],
  [0x55, 'CVFIC', 'CertificateVerificationFailed_InvalidContent'],
  [0x56, 'CVFISD', 'CertificateVerificationFailed_InvalidScope'],
  [0x57, 'CVFICR', 'CertificateVerificationFailed_InvalidCertificate'],
  [0x58, 'OVF', 'OwnershipVerificationFailed'],
  [0x59, 'CCF', 'ChallengeCalculationFailed'],
  [0x5a, 'SARF', 'SettingAccessRightsFailed'],
  [0x5b, 'SKCDF', 'SessionKeyCreationOrDerivationFailed'],
  [0x5c, 'CDUF', 'ConfigurationDataUsageFailed'],
  [0x5d, 'DAF', 'DeAuthenticationFailed'],
  [0x70, 'UDNA', 'UploadDownloadNotAccepted'],
  [0x71, 'TDS', 'TransferDataSuspended'],
  [0x72, 'GPF', 'GeneralProgrammingFailure'],
  [0x73, 'WBSC', 'WrongBlockSequenceCounter'],
  [0x78, 'RCRRP', 'RequestCorrectlyReceived_ResponsePending'],
  [0x7e, 'SFNSIAS', 'SubFunctionNotSupportedInActiveSession'],
  [0x7f, 'SNSIAS', 'ServiceNotSupportedInActiveSession'],
  [0x81, 'RPMTH', 'RpmTooHigh'],
  [0x82, 'RPMTL', 'RpmTooLow'],
  [0x83, 'EIR', 'EngineIsRunning'],
  [0x84, 'EINR', 'EngineIsNotRunning'],
  [0x85, 'ERTTL', 'EngineRunTimeTooLow'],
  [0x86, 'TEMPTH', 'TemperatureTooHigh'],
  [0x87, 'TEMPTL', 'TemperatureTooLow'],
  [0x88, 'VSTH', 'VehicleSpeedTooHigh'],
  [0x89, 'VSTL', 'VehicleSpeedTooLow'],
  [0x8a, 'TPTH', 'ThrottleOrPedalTooHigh'],
  [0x8b, 'TPTL', 'ThrottleOrPedalTooLow'],
  [0x8c, 'TRNIN', 'TransmissionRangeNotInNeutral'],
  [0x8d, 'TRNIG', 'TransmissionRangeNotInGear'],
  [0x8f, 'BSNC', 'BrakeSwitchOrSwitchesNotClosed'],
  [0x90, 'SLNIP', 'ShifterLeverNotInPark'],
  [0x91, 'TCCL', 'TorqueConvertClutchLocked'],
  [0x92, 'VTH', 'VoltageTooHigh'],
  [0x93, 'VTL', 'VoltageTooLow'],
  [0x94, 'RTNA', 'ResourceTemporarilyNotAvailable'],
]

/** Codes by value. */
export const NEGATIVE_RESPONSE_CODES: ReadonlyMap<number, NegativeResponseCode> = new Map(
  ROWS.map(([code, abbreviation, name]) => [
    code,
    since2020(code) ? { abbreviation, name, edition: '2020' } : { abbreviation, name },
  ]),
)

/** The edition of 2020 brought authentication (34, 50 to 5D), secured transmission (38 to 3A) and 94. */
function since2020(code: number): boolean {
  return code === 0x34 || (code >= 0x38 && code <= 0x3a) || (code >= 0x50 && code <= 0x5d) || code === 0x94
}

/** Name of a negative response code; a word for the range when the standard gives it no name. */
export function nameOfNrc(code: number): string {
  const row = NEGATIVE_RESPONSE_CODES.get(code)
  if (row !== undefined) return row.name
  return code >= 0xf0 && code <= 0xfe ? 'VehicleManufacturerSpecificConditionsNotCorrect' : 'ISOSAEReserved'
}
