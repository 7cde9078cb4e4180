/** @module A diagnostic message as Shearline shows it: what was said, when, by whom, and what it means. */

import type { Where } from '../finding/index.ts'
import type { Direction, RecordedTime } from '../frame/index.ts'
import type { Incomplete } from '../isotp/incomplete.ts'
import type { ByteRange } from '../redaction/index.ts'

/** The dialect: ISO 14229 (UDS), SAE J1979 / ISO 15031-5 (OBD), ISO 14230-3 (KWP2000), or a maker's own. */
export type Protocol = 'uds' | 'obd' | 'kwp' | 'other'

export type MessageKind = 'request' | 'response' | 'negative'

/** A sub-function, session, test identifier: its value without the suppress bit, and its name. */
export interface SubFunction {
  readonly value: number
  readonly name: string
  /** UDS: bit 7 asked the unit not to answer when all is well. */
  readonly suppressResponse: boolean
}

/** An identifier of data: four hex digits in UDS, two for a PID, InfoType or local identifier. */
export interface DataIdentifier {
  readonly did: string
  readonly name: string
}

/** A trouble code as a message carried it. */
export interface DtcRecord {
  /** SAE J2012 text: `P0513`, `U0140-87`. */
  readonly code: string
  /** The code's bytes, upper-case hex. */
  readonly raw: string
  /** Status byte in the dialect of the message; absent when the message carries none. */
  readonly status?: number
  /** ISO 14229-1 DTCSeverity byte. */
  readonly severity?: number
  /** DTCFunctionalUnit: the part of the vehicle the maker files the code under (19 08, 19 09). */
  readonly functionalUnit?: number
  /** Signed fault detection counter (19 14). */
  readonly counter?: number
  /** Record numbers that belong to it (19 03). */
  readonly records?: readonly number[]
}

/** What bytes in a message belong to. */
export type DataRecordKind = 'data' | 'snapshot' | 'extended-data' | 'freeze-frame' | 'test-result'

/** Bytes of a message that belong together: data of an identifier, a snapshot, an extended data record. */
export interface DataRecord {
  readonly kind: DataRecordKind
  /** Number of the record, frame or test. */
  readonly number?: number
  /** The code it was stored with, as in `dtcs`. */
  readonly dtc?: string
  readonly did?: string
  readonly name?: string
  /** Lower-case hex. */
  readonly bytes: string
  /** The lengths inside are in no message: these bytes may go on into further identifiers, codes or records. */
  readonly undivided?: true
}

/** A self-test of the emission control: whether it has run to its end. Only those the unit supports are listed. */
export interface MonitorReadiness {
  readonly monitor: string
  readonly complete: boolean
}

/** What the bytes of a message mean. Every part is there only when the message has it. */
export interface Meaning {
  readonly subFunction?: SubFunction
  readonly dids?: readonly DataIdentifier[]
  readonly nrc?: { readonly code: string; readonly name: string }
  /** DTCStatusAvailabilityMask: the status bits the unit supports. */
  readonly availability?: number
  readonly dtcs?: readonly DtcRecord[]
  /** Number of codes a message states without listing them. */
  readonly dtcCount?: number
  /** The VIN, as 17 characters or as it stands. */
  readonly vin?: string
  /** Texts in the message by what they are (calibration identifier, unit name, part number). */
  readonly texts?: Readonly<Record<string, string>>
  /** Numbers in the message by what they are, the unit in the name. */
  readonly values?: Readonly<Record<string, number>>
  /** Data shown as bytes: snapshots, extended data, freeze frames, data without a known formula. */
  readonly records?: readonly DataRecord[]
  /** Readiness of the monitors (PID 01 and 41). */
  readonly monitors?: readonly MonitorReadiness[]
  /** What in the message does not fit its service. */
  readonly problems?: readonly string[]
}

/** A diagnostic message. */
export interface Message extends Meaning {
  /** Time of the last frame that belongs to it. */
  readonly time: RecordedTime
  readonly startTime: RecordedTime
  readonly channel: string
  /** Sender: `7E8`, `18DAF110`; over DoIP `0E80>4010`. */
  readonly id: string
  /** The bytes, service first; secret bytes are zero unless `raw` was asked for, see `redacted`. */
  readonly payload: Uint8Array
  readonly redacted: readonly ByteRange[]
  /** Bytes the message has, or should have had when it is incomplete. */
  readonly length: number
  readonly complete: boolean
  readonly incomplete?: Incomplete
  readonly protocol: Protocol
  /** Identifier of the request's service, two upper-case hex digits. */
  readonly service: string
  /** Name of the service in its dialect. */
  readonly name: string
  readonly kind: MessageKind
  /** Whether the recorder received the message or sent it, where the recording says it. */
  readonly direction?: Direction
  readonly where: Where
}
