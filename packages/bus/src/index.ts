/** @module The door of the package: what passed on the wire. */

export { candumpLine } from './candump/write.ts'
export type { CaptureFormatName, DoipAnnouncement, DoipMessage } from './capture/contract.ts'
export { HEAD_BYTES } from './capture/contract.ts'
export { packedDamage } from './capture/gzip.ts'
export { recogniseCapture } from './capture/index.ts'
export type { Recognised } from './capture/recognise.ts'
export {
  CSV_FIELDS,
  type CsvField,
  type CsvMapping,
  guessMapping,
  type MappingGuess,
  mappingFrom,
  sampleTable,
  type TableSample,
  TIME_UNITS,
  type TimeUnit,
} from './csv/index.ts'
export { MESSAGE_FIELDS, type MessageField } from './decode/cells.ts'
export {
  type CaptureDecoding,
  type DecodeOptions,
  type DecodeResult,
  decodeCapture,
} from './decode/decode-capture.ts'
export { decodeMdf } from './decode/decode-mdf.ts'
export { type DecodeChoices, type DecodeListener, Decoder } from './decode/decoder.ts'
export type { DiagnosticId } from './decode/senders.ts'
export type { Summary } from './decode/summary.ts'
export {
  DTC_FORMATS,
  DTC_SEVERITY_BITS,
  DTC_STATUS_BITS,
  DTC_WORDS,
  type DtcArea,
  type DtcControl,
  type DtcMeaning,
  type DtcStatusBit,
  type DtcTopic,
  type DtcWords,
  dtcBytes,
  dtcMeaning,
  dtcSeverityBits,
  dtcStatusBits,
  dtcText,
  FAILURE_TYPES,
  failureTypeWords,
} from './dtc/index.ts'
export * from './finding/index.ts'
export * from './frame/index.ts'
export { explainIncomplete, type Incomplete } from './isotp/incomplete.ts'
export { continueToSend, type SegmentChoices, segment } from './isotp/segment.ts'
export { KWP_SERVICES } from './kwp/index.ts'
export { bytesSource, MOST_KEPT_BYTES, type RandomAccess } from './mdf/index.ts'
export { type MessageLine, messageLine } from './message/json.ts'
export type {
  DataIdentifier,
  DataRecord,
  DataRecordKind,
  DtcRecord,
  Meaning,
  Message,
  MessageKind,
  MonitorReadiness,
  Protocol,
  SubFunction,
} from './message/types.ts'
export { nameOfPid, OBD_SERVICES, PIDS, type Pid, type PidField, type PidForm } from './obd/index.ts'
export { PcapngWriter } from './pcap/write.ts'
export { type ByteRange, redactedHex, secretRanges } from './redaction/index.ts'
export { type ScannedFault, type ScannedUnit, scansOf } from './scan/index.ts'
export {
  resetsAndClears,
  type SpanEnd,
  type StateStep,
  type StateStepKind,
  Timeline,
  type TimelineEntry,
  type TimelineOptions,
  type TimelineResult,
  type TimelineWhat,
} from './timeline/index.ts'
export {
  type Edition,
  type NamedSubFunction,
  NEGATIVE_RESPONSE_CODES,
  nameOfDid,
  nameOfNrc,
  SUB_FUNCTIONS,
  UDS_SERVICES,
  type UdsService,
} from './uds/index.ts'
export { type HeardVin, type VinSource, vinsOf } from './vin/index.ts'
