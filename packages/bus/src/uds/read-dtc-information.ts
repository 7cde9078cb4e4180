/**
 * @module 19 ReadDTCInformation (ISO 14229-1).
 *
 * The report types and their layouts are a table: `uds/utilities/constants/sub_functions.py` and
 * `uds/translator/data_record_definitions/conditional.py` of mdabrowski1990/uds (MIT).
 */

import { dtcText, hexUpper } from '../dtc/index.ts'
import type { DtcRecord, Meaning, SubFunction } from '../message/types.ts'
import { type ServiceReader, subFunctionOf, tooShort } from './reader.ts'

/** How the bytes after `59 xx` are laid out. */
type Layout =
  | 'count'
  | 'list'
  | 'identification'
  | 'detail'
  | 'stored'
  | 'severity'
  | 'counters'
  | 'by-record'
  | 'user-list'
  | 'user-detail'
  | 'extended-list'
  | 'wwh-list'
  | 'wwh-permanent'
  | 'readiness'

interface ReportType {
  readonly name: string
  /** Names of the request's bytes after `19 xx`; `dtc` stands for three bytes. */
  readonly asks: readonly (
    | 'statusMask'
    | 'severityMask'
    | 'dtc'
    | 'record'
    | 'memory'
    | 'group'
    | 'readiness'
  )[]
  readonly layout: Layout
}

const TYPES: Readonly<Record<number, ReportType>> = {
  1: { name: 'reportNumberOfDTCByStatusMask', asks: ['statusMask'], layout: 'count' },
  2: { name: 'reportDTCByStatusMask', asks: ['statusMask'], layout: 'list' },
  3: { name: 'reportDTCSnapshotIdentification', asks: [], layout: 'identification' },
  4: { name: 'reportDTCSnapshotRecordByDTCNumber', asks: ['dtc', 'record'], layout: 'detail' },
  5: { name: 'reportDTCStoredDataByRecordNumber', asks: ['record'], layout: 'stored' },
  6: { name: 'reportDTCExtDataRecordByDTCNumber', asks: ['dtc', 'record'], layout: 'detail' },
  7: { name: 'reportNumberOfDTCBySeverityMaskRecord', asks: ['severityMask', 'statusMask'], layout: 'count' },
  8: { name: 'reportDTCBySeverityMaskRecord', asks: ['severityMask', 'statusMask'], layout: 'severity' },
  9: { name: 'reportSeverityInformationOfDTC', asks: ['dtc'], layout: 'severity' },
  10: { name: 'reportSupportedDTC', asks: [], layout: 'list' },
  11: { name: 'reportFirstTestFailedDTC', asks: [], layout: 'list' },
  12: { name: 'reportFirstConfirmedDTC', asks: [], layout: 'list' },
  13: { name: 'reportMostRecentTestFailedDTC', asks: [], layout: 'list' },
  14: { name: 'reportMostRecentConfirmedDTC', asks: [], layout: 'list' },
  15: { name: 'reportMirrorMemoryDTCByStatusMask', asks: ['statusMask'], layout: 'list' },
  16: { name: 'reportMirrorMemoryDTCExtDataRecordByDTCNumber', asks: ['dtc', 'record'], layout: 'detail' },
  17: { name: 'reportNumberOfMirrorMemoryDTCByStatusMask', asks: ['statusMask'], layout: 'count' },
  18: { name: 'reportNumberOfEmissionsOBDDTCByStatusMask', asks: ['statusMask'], layout: 'count' },
  19: { name: 'reportEmissionsOBDDTCByStatusMask', asks: ['statusMask'], layout: 'list' },
  20: { name: 'reportDTCFaultDetectionCounter', asks: [], layout: 'counters' },
  21: { name: 'reportDTCWithPermanentStatus', asks: [], layout: 'list' },
  22: { name: 'reportDTCExtDataRecordByRecordNumber', asks: ['record'], layout: 'by-record' },
  23: { name: 'reportUserDefMemoryDTCByStatusMask', asks: ['statusMask', 'memory'], layout: 'user-list' },
  24: {
    name: 'reportUserDefMemoryDTCSnapshotRecordByDTCNumber',
    asks: ['dtc', 'record', 'memory'],
    layout: 'user-detail',
  },
  25: {
    name: 'reportUserDefMemoryDTCExtDataRecordByDTCNumber',
    asks: ['dtc', 'record', 'memory'],
    layout: 'user-detail',
  },
  26: { name: 'reportSupportedDTCExtDataRecord', asks: ['record'], layout: 'extended-list' },
  66: {
    name: 'reportWWHOBDDTCByMaskRecord',
    asks: ['group', 'statusMask', 'severityMask'],
    layout: 'wwh-list',
  },
  85: { name: 'reportWWHOBDDTCWithPermanentStatus', asks: ['group'], layout: 'wwh-permanent' },
  86: {
    name: 'reportDTCInformationByDTCReadinessGroupIdentifier',
    asks: ['group', 'readiness'],
    layout: 'readiness',
  },
}

function nameOf(value: number): string {
  return TYPES[value]?.name ?? 'reserved'
}

/** A three-byte code at `at`, with the byte after it as status when asked for. */
function recordAt(payload: Uint8Array, at: number, withStatus: boolean): DtcRecord {
  const bytes = payload.subarray(at, at + 3)
  const record = { code: dtcText(bytes), raw: hexUpper(bytes) }
  const status = payload[at + 3]
  return withStatus && status !== undefined ? { ...record, status } : record
}

function request(payload: Uint8Array): Meaning {
  const subFunction = subFunctionOf(payload, nameOf)
  if (subFunction === undefined) return tooShort(2)
  const type = TYPES[subFunction.value]
  if (type === undefined) return { subFunction }
  const values: Record<string, number> = {}
  let dtcs: readonly DtcRecord[] | undefined
  let at = 2
  for (const ask of type.asks) {
    const size = ask === 'dtc' ? 3 : 1
    if (at + size > payload.length) return { subFunction, values, ...tooShort(at + size) }
    if (ask === 'dtc') dtcs = [recordAt(payload, at, false)]
    else values[ask] = payload[at] as number
    at += size
  }
  return { subFunction, values, ...(dtcs === undefined ? {} : { dtcs }) }
}

/** Records of `size` bytes from `from` on; what is left over at the end is a problem. */
function records(
  payload: Uint8Array,
  from: number,
  size: number,
  read: (at: number) => DtcRecord,
): { dtcs: readonly DtcRecord[]; problems?: readonly string[] } {
  const dtcs: DtcRecord[] = []
  let at = from
  for (; at + size <= payload.length; at += size) dtcs.push(read(at))
  const rest = payload.length - at
  return rest <= 0 ? { dtcs } : { dtcs, problems: [`${rest} bytes after the last whole record`] }
}

function response(payload: Uint8Array): Meaning {
  const subFunction = subFunctionOf(payload, nameOf)
  if (subFunction === undefined) return tooShort(2)
  const type = TYPES[subFunction.value]
  return type === undefined ? { subFunction } : LAYOUTS[type.layout](payload, subFunction)
}

type LayoutReader = (payload: Uint8Array, subFunction: SubFunction) => Meaning

/** A list of records behind a head whose byte at `mask` is the availability mask. */
function list(
  mask: number,
  from: number,
  size: number,
  read: (payload: Uint8Array, at: number) => DtcRecord,
): LayoutReader {
  return (payload, subFunction) => {
    const availability = payload[mask]
    if (availability === undefined || payload.length < from) return { subFunction, ...tooShort(from) }
    return { subFunction, availability, ...records(payload, from, size, (at) => read(payload, at)) }
  }
}

const withStatus = (payload: Uint8Array, at: number): DtcRecord => recordAt(payload, at, true)

/** One code with its status, then records whose lengths the message does not state. */
function detail(from: number): LayoutReader {
  return (payload, subFunction) =>
    payload.length < from + 4
      ? { subFunction, ...tooShort(from + 4) }
      : {
          subFunction,
          dtcs: [recordAt(payload, from, true)],
          ...(payload.length > from + 4 ? { values: { recordNumber: payload[from + 4] as number } } : {}),
        }
}

const LAYOUTS: Readonly<Record<Layout, LayoutReader>> = {
  count: (payload, subFunction) => {
    if (payload.length < 6) return { subFunction, ...tooShort(6) }
    return {
      subFunction,
      availability: payload[2] as number,
      dtcCount: ((payload[4] as number) << 8) | (payload[5] as number),
      values: { formatIdentifier: payload[3] as number },
    }
  },
  list: list(2, 3, 4, withStatus),
  identification: (payload, subFunction) => {
    const byCode = new Map<string, DtcRecord & { records: number[] }>()
    const read = records(payload, 2, 4, (at) => recordAt(payload, at, false))
    read.dtcs.forEach((record, index) => {
      const known = byCode.get(record.raw)
      const number = payload[2 + index * 4 + 3] as number
      if (known === undefined) byCode.set(record.raw, { ...record, records: [number] })
      else known.records.push(number)
    })
    return { subFunction, ...read, dtcs: [...byCode.values()] }
  },
  detail: detail(2),
  stored: (payload, subFunction) => {
    const number = payload[2]
    if (number === undefined) return { subFunction, ...tooShort(3) }
    return {
      subFunction,
      values: { recordNumber: number },
      ...(payload.length >= 7 ? { dtcs: [recordAt(payload, 3, true)] } : {}),
    }
  },
  severity: list(2, 3, 6, (payload, at) => ({
    ...recordAt(payload, at + 2, true),
    severity: payload[at] as number,
  })),
  counters: (payload, subFunction) => ({
    subFunction,
    ...records(payload, 2, 4, (at) => ({
      ...recordAt(payload, at, false),
      counter: ((payload[at + 3] as number) << 24) >> 24,
    })),
  }),
  'by-record': (payload, subFunction) => {
    const number = payload[2]
    if (number === undefined) return { subFunction, ...tooShort(3) }
    return {
      subFunction,
      values: { recordNumber: number },
      ...(payload.length >= 7 ? { dtcs: [recordAt(payload, 3, true)] } : {}),
    }
  },
  'user-list': list(3, 4, 4, withStatus),
  'user-detail': detail(3),
  'extended-list': list(2, 4, 4, withStatus),
  'wwh-list': list(3, 6, 5, (payload, at) => ({
    ...recordAt(payload, at + 1, true),
    severity: payload[at] as number,
  })),
  'wwh-permanent': list(3, 5, 4, withStatus),
  readiness: list(3, 6, 4, withStatus),
}

export const readDtcInformation: ServiceReader = { request, response }
