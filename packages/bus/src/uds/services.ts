/**
 * @module The services of ISO 14229-1 by their request identifier.
 *
 * Source: `uds/message/service_identifiers.py` of mdabrowski1990/uds (MIT), names as in ISO 14229-1.
 */

import type { Edition } from './sub-functions.ts'

/** A service of ISO 14229-1. */
export interface UdsService {
  readonly sid: number
  readonly abbreviation: string
  readonly name: string
  /** The byte after the service is a sub-function whose bit 7 suppresses the positive response. */
  readonly hasSubFunction: boolean
  /** Edition that has it, when not all have. */
  readonly edition?: Edition
}

const ROWS: readonly UdsService[] = [
  { sid: 0x10, abbreviation: 'DSC', name: 'DiagnosticSessionControl', hasSubFunction: true },
  { sid: 0x11, abbreviation: 'ER', name: 'ECUReset', hasSubFunction: true },
  { sid: 0x14, abbreviation: 'CDTCI', name: 'ClearDiagnosticInformation', hasSubFunction: false },
  { sid: 0x19, abbreviation: 'RDTCI', name: 'ReadDTCInformation', hasSubFunction: true },
  { sid: 0x22, abbreviation: 'RDBI', name: 'ReadDataByIdentifier', hasSubFunction: false },
  { sid: 0x23, abbreviation: 'RMBA', name: 'ReadMemoryByAddress', hasSubFunction: false },
  { sid: 0x24, abbreviation: 'RSDBI', name: 'ReadScalingDataByIdentifier', hasSubFunction: false },
  { sid: 0x27, abbreviation: 'SA', name: 'SecurityAccess', hasSubFunction: true },
  { sid: 0x28, abbreviation: 'CC', name: 'CommunicationControl', hasSubFunction: true },
  { sid: 0x29, abbreviation: 'ARS', name: 'Authentication', hasSubFunction: true, edition: '2020' },
  { sid: 0x2a, abbreviation: 'RDBPI', name: 'ReadDataByPeriodicIdentifier', hasSubFunction: false },
  { sid: 0x2c, abbreviation: 'DDDI', name: 'DynamicallyDefineDataIdentifier', hasSubFunction: true },
  { sid: 0x2e, abbreviation: 'WDBI', name: 'WriteDataByIdentifier', hasSubFunction: false },
  { sid: 0x2f, abbreviation: 'IOCBI', name: 'InputOutputControlByIdentifier', hasSubFunction: false },
  { sid: 0x31, abbreviation: 'RC', name: 'RoutineControl', hasSubFunction: true },
  { sid: 0x34, abbreviation: 'RD', name: 'RequestDownload', hasSubFunction: false },
  { sid: 0x35, abbreviation: 'RU', name: 'RequestUpload', hasSubFunction: false },
  { sid: 0x36, abbreviation: 'TD', name: 'TransferData', hasSubFunction: false },
  { sid: 0x37, abbreviation: 'RTE', name: 'RequestTransferExit', hasSubFunction: false },
  { sid: 0x38, abbreviation: 'RFT', name: 'RequestFileTransfer', hasSubFunction: false },
  { sid: 0x3d, abbreviation: 'WMBA', name: 'WriteMemoryByAddress', hasSubFunction: false },
  { sid: 0x3e, abbreviation: 'TP', name: 'TesterPresent', hasSubFunction: true },
  {
    sid: 0x83,
    abbreviation: 'ATP',
    name: 'AccessTimingParameter',
    hasSubFunction: true,
    edition: '2013 only',
  },
  { sid: 0x84, abbreviation: 'SDT', name: 'SecuredDataTransmission', hasSubFunction: false },
  { sid: 0x85, abbreviation: 'CDTCS', name: 'ControlDTCSetting', hasSubFunction: true },
  { sid: 0x86, abbreviation: 'ROE', name: 'ResponseOnEvent', hasSubFunction: true },
  { sid: 0x87, abbreviation: 'LC', name: 'LinkControl', hasSubFunction: true },
]

/** Services by request identifier. */
export const UDS_SERVICES: ReadonlyMap<number, UdsService> = new Map(ROWS.map((row) => [row.sid, row]))
