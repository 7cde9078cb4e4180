/**
 * @module 19 ReadDTCInformation (ISO 14229-1).
 *
 * The layouts of the report types are a table: `uds/translator/data_record_definitions/conditional.py` of
 * mdabrowski1990/uds (MIT); their names and editions stand in `sub-functions.ts`.
 */

import { DTC_FORMATS, dtcTextAt, nameOfFunctionalGroup } from '../dtc/index.ts'
import type { DtcRecord, Meaning, SubFunction } from '../message/types.ts'
import { extendedData, extendedDataByRecord, snapshots, storedData } from './dtc-records.ts'
import { standardLength } from './known-length.ts'
import { hexByte, type ServiceReader, subFunctionOf, tooShort } from './reader.ts'
import { subFunctionNamer } from './sub-functions.ts'

/** How the bytes after `59 xx` are laid out. */
type Layout =
  | 'count'
  | 'list'
  | 'identification'
  | 'snapshot'
  | 'extended'
  | 'stored'
  | 'severity'
  | 'counters'
  | 'by-record'
  | 'user-list'
  | 'user-snapshot'
  | 'user-extended'
  | 'extended-list'
  | 'wwh-list'
  | 'wwh-permanent'
  | 'readiness'

/** Bytes of the request after `19 xx`; `dtc` stands for three. */
type Asked = 'statusMask' | 'severityMask' | 'dtc' | 'record' | 'memory' | 'group' | 'readiness'

type ReportType = readonly [layout: Layout, ...asked: readonly Asked[]]

const TYPES: ReadonlyMap<number, ReportType> = new Map<number, ReportType>([
  [0x01, ['count', 'statusMask']],
  [0x02, ['list', 'statusMask']],
  [0x03, ['identification']],
  [0x04, ['snapshot', 'dtc', 'record']],
  [0x05, ['stored', 'record']],
  [0x06, ['extended', 'dtc', 'record']],
  [0x07, ['count', 'severityMask', 'statusMask']],
  [0x08, ['severity', 'severityMask', 'statusMask']],
  [0x09, ['severity', 'dtc']],
  [0x0a, ['list']],
  [0x0b, ['list']],
  [0x0c, ['list']],
  [0x0d, ['list']],
  [0x0e, ['list']],
  [0x0f, ['list', 'statusMask']],
  [0x10, ['extended', 'dtc', 'record']],
  [0x11, ['count', 'statusMask']],
  [0x12, ['count', 'statusMask']],
  [0x13, ['list', 'statusMask']],
  [0x14, ['counters']],
  [0x15, ['list']],
  [0x16, ['by-record', 'record']],
  [0x17, ['user-list', 'statusMask', 'memory']],
  [0x18, ['user-snapshot', 'dtc', 'record', 'memory']],
  [0x19, ['user-extended', 'dtc', 'record', 'memory']],
  [0x1a, ['extended-list', 'record']],
  [0x42, ['wwh-list', 'group', 'statusMask', 'severityMask']],
  [0x55, ['wwh-permanent', 'group']],
  [0x56, ['readiness', 'group', 'readiness']],
])

const nameOf = subFunctionNamer(0x19)

/** Upper-case hex of the byte at `at`; nothing where there is none. */
function hexAt(payload: Uint8Array, at: number): string {
  const byte = payload[at]
  return byte === undefined ? '' : hexByte(byte)
}

/** A three-byte code at `at`, with the byte after it as status when asked for. */
function recordAt(payload: Uint8Array, at: number, withStatus: boolean): DtcRecord {
  const code = dtcTextAt(payload, at)
  const raw = hexAt(payload, at) + hexAt(payload, at + 1) + hexAt(payload, at + 2)
  const status = payload[at + 3]
  return withStatus && status !== undefined ? { code, raw, status } : { code, raw }
}

function request(payload: Uint8Array): Meaning {
  const subFunction = subFunctionOf(payload, nameOf)
  if (subFunction === undefined) return tooShort(2)
  const type = TYPES.get(subFunction.value)
  if (type === undefined) return { subFunction }
  const [, ...asked] = type
  const values: Record<string, number> = {}
  let dtcs: readonly DtcRecord[] | undefined
  let at = 2
  for (const ask of asked) {
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
  const type = TYPES.get(subFunction.value)
  return type === undefined ? { subFunction } : LAYOUTS[type[0]](payload, subFunction)
}

type LayoutReader = (payload: Uint8Array, subFunction: SubFunction) => Meaning

/** What stands between `59 xx` and the records, byte by byte. */
type Head =
  | 'availability'
  | 'memory'
  | 'group'
  | 'severityAvailability'
  | 'format'
  | 'readinessGroup'
  | 'record'

const HEAD_VALUES: Readonly<Record<Exclude<Head, 'availability'>, string>> = {
  memory: 'memorySelection',
  group: 'functionalGroup',
  severityAvailability: 'severityAvailability',
  format: 'formatIdentifier',
  readinessGroup: 'readinessGroup',
  record: 'recordNumber',
}

function headOf(payload: Uint8Array, head: readonly Head[]): Meaning {
  // The common head, and the one that must be fast.
  if (head.length === 1 && head[0] === 'availability') return { availability: payload[2] as number }
  const values: Record<string, number> = {}
  const texts: Record<string, string> = {}
  let availability: number | undefined
  head.forEach((what, index) => {
    const byte = payload[2 + index] as number
    if (what === 'availability') availability = byte
    else values[HEAD_VALUES[what]] = byte
    if (what === 'group') texts.functionalGroup = nameOfFunctionalGroup(byte)
    if (what === 'format') texts.format = DTC_FORMATS.get(byte) ?? 'ISOSAEReserved'
  })
  return {
    ...(availability === undefined ? {} : { availability }),
    ...(Object.keys(values).length === 0 ? {} : { values }),
    ...(Object.keys(texts).length === 0 ? {} : { texts }),
  }
}

/** A list of records of `size` bytes behind a head. */
function list(
  head: readonly Head[],
  size: number,
  read: (payload: Uint8Array, at: number) => DtcRecord,
): LayoutReader {
  const from = 2 + head.length
  return (payload, subFunction) => {
    if (payload.length < from) return { subFunction, ...tooShort(from) }
    return {
      subFunction,
      ...headOf(payload, head),
      ...records(payload, from, size, (at) => read(payload, at)),
    }
  }
}

const withStatus = (payload: Uint8Array, at: number): DtcRecord => recordAt(payload, at, true)

/** One code with its status behind a head, then its records. */
function detail(head: readonly Head[], kind: 'snapshot' | 'extended'): LayoutReader {
  const from = 2 + head.length
  return (payload, subFunction) => {
    if (payload.length < from + 4) return { subFunction, ...tooShort(from + 4) }
    const dtc = recordAt(payload, from, true)
    const number = payload[from + 4]
    const { values, ...rest } = headOf(payload, head)
    const meaning = { subFunction, ...rest, dtcs: [dtc] }
    if (number === undefined) return values === undefined ? meaning : { ...meaning, values }
    return {
      ...meaning,
      values: { ...values, recordNumber: number },
      records:
        kind === 'snapshot'
          ? snapshots(payload, from + 4, dtc.code, standardLength)
          : extendedData(payload, from + 4, dtc.code),
    }
  }
}

const LAYOUTS: Readonly<Record<Layout, LayoutReader>> = {
  count: (payload, subFunction) => {
    if (payload.length < 6) return { subFunction, ...tooShort(6) }
    return {
      subFunction,
      ...headOf(payload, ['availability', 'format']),
      dtcCount: ((payload[4] as number) << 8) | (payload[5] as number),
    }
  },
  list: list(['availability'], 4, withStatus),
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
  snapshot: detail([], 'snapshot'),
  extended: detail([], 'extended'),
  stored: (payload, subFunction) => {
    const number = payload[2]
    if (number === undefined) return { subFunction, ...tooShort(3) }
    const stored = storedData(payload, standardLength)
    return {
      subFunction,
      values: { recordNumber: number },
      ...(stored.codesAt.length === 0
        ? {}
        : { dtcs: stored.codesAt.map((at) => recordAt(payload, at, true)) }),
      records: stored.records,
    }
  },
  severity: list(['availability'], 6, (payload, at) => ({
    ...recordAt(payload, at + 2, true),
    severity: payload[at] as number,
    functionalUnit: payload[at + 1] as number,
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
    const meaning = { subFunction, values: { recordNumber: number } }
    if (payload.length < 7) return meaning
    return { ...meaning, dtcs: [recordAt(payload, 3, true)], records: extendedDataByRecord(payload) }
  },
  'user-list': list(['memory', 'availability'], 4, withStatus),
  'user-snapshot': detail(['memory'], 'snapshot'),
  'user-extended': detail(['memory'], 'extended'),
  'extended-list': (payload, subFunction) =>
    // The record number is left out when no code has such a record.
    payload.length === 3
      ? { subFunction, ...headOf(payload, ['availability']), dtcs: [] }
      : list(['availability', 'record'], 4, withStatus)(payload, subFunction),
  'wwh-list': list(['group', 'availability', 'severityAvailability', 'format'], 5, (payload, at) => ({
    ...recordAt(payload, at + 1, true),
    severity: payload[at] as number,
  })),
  'wwh-permanent': list(['group', 'availability', 'format'], 4, withStatus),
  readiness: list(['group', 'availability', 'format', 'readinessGroup'], 4, withStatus),
}

export const readDtcInformation: ServiceReader = { request, response }
