/**
 * @module What a column's name says.
 * The words are common practice (no source): the names of CAN terms and their usual short forms. No tool's format
 * is known here; a name is judged by its words alone.
 */

import type { TimeUnit } from './time.ts'

/** What a column can hold. */
export type CsvField =
  | 'time'
  | 'id'
  | 'extended'
  | 'channel'
  | 'length'
  | 'data'
  | 'direction'
  | 'remote'
  | 'fd'
  | 'error'

export const CSV_FIELDS: readonly CsvField[] = [
  'time',
  'id',
  'extended',
  'channel',
  'length',
  'data',
  'direction',
  'remote',
  'fd',
  'error',
]

/** The words of a name in lower case: `DataByte0` gives data, byte, 0; `time[µs]` gives time, us. */
export function wordsOf(name: string): string[] {
  const spaced = name
    .normalize('NFKD')
    .replace(/[µμ]/g, 'u')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replace(/([A-Za-z])(\d)/g, '$1 $2')
    .replace(/(\d)([A-Za-z])/g, '$1 $2')
  return spaced.toLowerCase().match(/[a-z]+|\d+/g) ?? []
}

/** Words that name a field by themselves, the clearest first. */
const NAMES: Readonly<Record<CsvField, readonly string[]>> = {
  time: [
    'timestamp',
    'timestamps',
    'time',
    'stamp',
    'zeit',
    'temps',
    'tiempo',
    'tempo',
    'ts',
    't',
    'clock',
    'date',
    'datetime',
  ],
  id: [
    'id',
    'identifier',
    'canid',
    'arbid',
    'msgid',
    'arbitration',
    'identificador',
    'kennung',
    'arb',
    'cobid',
  ],
  extended: ['extended', 'ext', 'ide', 'xtd', 'eff', 'isextended', 'format'],
  channel: [
    'bus',
    'channel',
    'chan',
    'chn',
    'ch',
    'interface',
    'iface',
    'network',
    'controller',
    'port',
    'kanal',
    'canal',
  ],
  length: ['dlc', 'length', 'len', 'datalength', 'size', 'laenge', 'longueur', 'longitud'],
  data: ['data', 'payload', 'bytes', 'databytes', 'datos', 'daten', 'donnees', 'hex', 'content'],
  direction: ['dir', 'direction', 'rxtx', 'txrx', 'richtung', 'rx', 'tx'],
  remote: ['remote', 'rtr', 'isremote'],
  fd: ['fd', 'edl', 'fdf', 'canfd', 'isfd'],
  error: ['error', 'err', 'iserror'],
}

/** Words that turn a name into another thing: `bus id`, `data length`, `time delta`. */
const AGAINST: Readonly<Partial<Record<CsvField, readonly string[]>>> = {
  time: ['delta', 'diff', 'difference', 'dt', 'gap', 'period', 'cycle', 'out', 'zone'],
  id: ['bus', 'channel', 'device', 'node', 'interface', 'logger', 'line', 'row', 'session', 'log'],
  data: ['length', 'len', 'size', 'rate', 'type', 'count'],
  length: ['frame', 'total'],
  extended: ['data'],
}

/** How clearly a name names a field: 0 not at all, up to 1. */
export function nameScore(field: CsvField, words: readonly string[]): number {
  if (words.length === 0) return 0
  if (AGAINST[field]?.some((word) => words.includes(word)) === true) return 0
  const rank = NAMES[field].findIndex((word) => words.includes(word))
  if (rank < 0) return 0
  // A name of one word says more than a word among many; an early word more than a late one.
  return 1 - rank * 0.01 - Math.min(words.length - 1, 5) * 0.05
}

/** Words before the number of a column that holds one data byte: `D0`, `byte 3`, `data[7]`. */
const BYTE_WORDS: ReadonlySet<string> = new Set([
  'd',
  'b',
  'db',
  'byte',
  'bytes',
  'data',
  'databyte',
  'payload',
  'octet',
])

/** The number of the data byte a name stands for, or -1. */
export function byteNumber(name: readonly string[]): number {
  const words = name.filter((word) => baseOf([word]) === undefined)
  const last = words[words.length - 1]
  if (last === undefined || !/^\d+$/.test(last) || words.length < 2) return -1
  return words.slice(0, -1).every((word) => BYTE_WORDS.has(word)) ? Number(last) : -1
}

const UNIT_WORDS: Readonly<Record<string, TimeUnit>> = {
  s: 's',
  sec: 's',
  secs: 's',
  second: 's',
  seconds: 's',
  ms: 'ms',
  msec: 'ms',
  millisecond: 'ms',
  milliseconds: 'ms',
  millis: 'ms',
  us: 'us',
  usec: 'us',
  microsecond: 'us',
  microseconds: 'us',
  micros: 'us',
  ns: 'ns',
  nsec: 'ns',
  nanosecond: 'ns',
  nanoseconds: 'ns',
  nanos: 'ns',
}

/** The unit a time column's name states. */
export function unitOf(words: readonly string[]): TimeUnit | undefined {
  for (const word of words) if (Object.hasOwn(UNIT_WORDS, word)) return UNIT_WORDS[word]
  return undefined
}

/** The base a column's name states. */
export function baseOf(words: readonly string[]): 10 | 16 | undefined {
  if (words.some((word) => word === 'hex' || word === 'hexadecimal')) return 16
  return words.some((word) => word === 'dec' || word === 'decimal') ? 10 : undefined
}
