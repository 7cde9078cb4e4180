/** @module Cells that are words: yes and no, identifier kinds, directions, channels. Common practice, no source. */

const YES: ReadonlySet<string> = new Set([
  'true',
  '1',
  'yes',
  'y',
  't',
  'x',
  'ext',
  'extended',
  'xtd',
  'eff',
  'e',
  '29',
  '29bit',
  '29-bit',
])
const NO: ReadonlySet<string> = new Set([
  'false',
  '0',
  'no',
  'n',
  'f',
  '',
  '-',
  'std',
  'standard',
  'sff',
  's',
  '11',
  '11bit',
  '11-bit',
])

/** Yes, no, or `undefined` for anything else. */
export function readFlag(text: string): boolean | undefined {
  const word = text.toLowerCase()
  if (YES.has(word)) return true
  return NO.has(word) ? false : undefined
}

const RECEIVED: ReadonlySet<string> = new Set(['rx', 'r', 'receive', 'received', 'in', 'recv', '<', '<-'])
const TRANSMITTED: ReadonlySet<string> = new Set([
  'tx',
  't',
  'transmit',
  'transmitted',
  'out',
  'send',
  'sent',
  '>',
  '->',
])

/** A direction seen from the recorder, or `undefined` for anything else. */
export function readDirection(text: string): 'received' | 'transmitted' | undefined {
  const word = text.toLowerCase()
  if (RECEIVED.has(word)) return 'received'
  return TRANSMITTED.has(word) ? 'transmitted' : undefined
}

const LONGEST_CHANNEL = 32

/**
 * The channel a cell names: a bare number n is `cann`; words are kept, in lower case without blanks. `undefined` for
 * what is no name: too long, or with other signs than names have (a damaged line may put data bytes there).
 */
export function channelName(text: string): string | undefined {
  if (text === '') return 'can0'
  if (text.length > LONGEST_CHANNEL || !/^[\p{L}\p{Nd}\s._:/()#+-]+$/u.test(text)) return undefined
  return /^\d+$/.test(text) ? `can${Number(text)}` : text.toLowerCase().replace(/\s+/g, '')
}
