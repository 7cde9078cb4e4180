/** @module The fields of a message as names and values, in the order a technician asks for them. */

import type { DataRecord, MessageLine } from '@shearline/bus'
import { number } from '../../words/amounts.ts'
import { listMark } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { elapsed } from '../elapsed.ts'
import { secondsAfter } from '../kept-message.ts'
import { type Directory, whoWhom } from './directory.ts'
import { pairs, refusalWords, whoWords } from './row-words.ts'

type Row = readonly [name: string, value: string]

/** Everything a kept line says, as rows; what it does not say has none. */
export function detailRows(line: MessageLine, directory: Directory, start: string): Row[] {
  const { nrc, subFunction, incomplete } = line
  return [
    [
      t('details.time'),
      t('details.time.both', { elapsed: elapsed(secondsAfter(start, line.time), 6), recorded: line.time }),
    ],
    [t('details.who'), whoWords(whoWhom(line, directory))],
    [t('details.service'), `${line.service} ${line.name} (${t(`protocol.${line.protocol}`)})`],
    ...when(
      nrc,
      (told): Row => [
        t('details.refusal'),
        t('details.refusal.both', { words: refusalWords(told), code: told.code, name: told.name }),
      ],
    ),
    ...when(
      subFunction,
      (told): Row => [
        t('details.sub-function'),
        told.suppressResponse ? t('details.silent', { name: told.name }) : told.name,
      ],
    ),
    ...when(incomplete, (told): Row => [t('details.incomplete'), t(`incomplete.${told}`)]),
    ...(line.dids ?? []).map(({ did, name }): Row => [t('details.did', { did }), name === '' ? '-' : name]),
    ...when(line.vin, (told): Row => [t('details.vin'), told]),
    ...Object.entries(line.values ?? {}).map(([name, value]): Row => [spaced(name), number(value, 4)]),
    ...Object.entries(line.texts ?? {}).map(([name, value]): Row => [spaced(name), value]),
    ...when(line.dtcCount, (told): Row => [t('details.fault-count'), number(told)]),
    ...(line.dtcs ?? []).map(
      ({ code, raw, status }): Row => [
        t('details.fault', { code }),
        status === undefined ? raw : t('details.fault.status', { raw, status: hexByte(status) }),
      ],
    ),
    ...(line.records ?? []).map((record): Row => [recordName(record), pairs(record.bytes)]),
    ...(line.monitors ?? []).map(
      ({ monitor, complete }): Row => [
        spaced(monitor),
        complete ? t('details.monitor.complete') : t('details.monitor.open'),
      ],
    ),
    ...(line.problems ?? []).map((problem): Row => [t('details.problem'), problem]),
    [t('details.channel'), line.channel],
    [t('details.length'), t('details.length.of', { there: line.payload.length / 2, whole: line.length })],
    [t('details.where'), placeOf(line)],
  ]
}

function when<T>(value: T | undefined, row: (value: T) => Row): Row[] {
  return value === undefined ? [] : [row(value)]
}

function recordName({ kind, number: index, dtc, did }: DataRecord): string {
  return [t(`record.${kind}`), index === undefined ? '' : String(index), did ?? '', dtc ?? '']
    .filter((part) => part !== '')
    .join(' ')
}

function placeOf({ where: { line, byteOffset } }: MessageLine): string {
  const words = [
    ...(line === undefined ? [] : [t('where.line', { line })]),
    ...(byteOffset === undefined ? [] : [t('where.byte', { byte: byteOffset })]),
  ]
  return words.length === 0 ? '-' : words.join(listMark())
}

function hexByte(value: number): string {
  return value.toString(16).toUpperCase().padStart(2, '0')
}

/** `controlModuleVolts` as words: the engine names values so that their unit stands last. */
function spaced(name: string): string {
  const words = name.replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLowerCase()
  return words.charAt(0).toUpperCase() + words.slice(1)
}
