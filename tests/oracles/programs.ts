/** @module The outside readers: which are here, and how they are run. */

import { execFileSync, spawnSync } from 'node:child_process'
import { join } from 'node:path'

/** Debian's tshark. */
export const tsharkPresent: boolean = spawnSync('tshark', ['--version']).status === 0

/** Debian installs its packages for this Python; another one may come first in PATH. */
const python = ['/usr/bin/python3', 'python3'].find(
  (one) => spawnSync(one, ['-c', 'import can, scapy'], { stdio: 'ignore' }).status === 0,
)

/** Debian's python3-scapy and python3-can. */
export const pythonPresent: boolean = python !== undefined

if (!tsharkPresent)
  console.warn('skipped: tshark (Debian: tshark) is not here, so nothing is compared with it')
if (!pythonPresent)
  console.warn(
    'skipped: scapy and python-can (Debian: python3-scapy python3-can) are not here, so nothing is compared with them',
  )

/** Rows of fields that tshark prints for a file. At a record it cannot read it stops with status 2; rows stay. */
function tsharkFields(file: string, args: readonly string[], names: readonly string[]): string[][] {
  const ran = spawnSync(
    'tshark',
    ['-r', file, ...args, '-T', 'fields', ...names.flatMap((name) => ['-e', name])],
    { encoding: 'utf8', maxBuffer: 1 << 28 },
  )
  if (ran.status !== 0 && !/cut short|damaged or corrupt/.test(ran.stderr))
    throw new Error(`tshark answers ${ran.status}: ${ran.stderr}`)
  return ran.stdout
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => line.split('\t'))
}

/** An identifier as `formatId` of the package shows it. */
function nameOf(id: number, extended: boolean): string {
  return id
    .toString(16)
    .toUpperCase()
    .padStart(extended ? 8 : 3, '0')
}

/**
 * The CAN frames of a file in the words of `reading.ts`. What tshark prints here does not tell a CAN FD frame of up
 * to eight bytes from a classic one. `swap`: the identifiers stand in the wrong byte order.
 */
export function tsharkFrames(file: string, swap: boolean = false): string[] {
  const names = ['frame.time_epoch', 'can.id', 'can.flags.xtd', 'can.flags.rtr', 'can.flags.err', 'data.data']
  const args = ['-d', 'can.subdissector,data', ...(swap ? ['-o', 'can.byte_swap:TRUE'] : [])]
  return tsharkFields(file, args, names).map(([time = '', id, extended, remote, error, data = '']) => {
    const marks = `${data.length > 16 ? 'F' : ''}${remote === '1' ? 'R' : ''}${error === '1' ? 'E' : ''}`
    const name = `${nameOf(Number(id), extended === '1')}${extended === '1' ? 'x' : ''}`
    return `${time.slice(0, -3)} ${name} ${marks || '-'} ${data}`
  })
}

/**
 * The ISO-TP messages of a file, one run of tshark for each group of identifiers: version 4.0 loses messages when
 * several identifiers are in transfer at once, so those that segment stand in groups of their own.
 */
export function tsharkMessages(file: string, groups: readonly (readonly number[])[]): string[] {
  const messages: string[] = []
  for (const ids of groups) {
    const hex = (list: readonly number[]): string => list.map((id) => `0x${id.toString(16)}`).join(',')
    const rows = tsharkFields(
      file,
      [
        ...['-o', `iso15765.can.ids:${hex(ids.filter((id) => id <= 0x7ff))}`],
        ...['-o', `iso15765.can.extended_ids:${hex(ids.filter((id) => id > 0x7ff))}`],
        ...['-d', 'iso15765.subdissector,data', '-Y', 'iso15765', '-E', 'occurrence=l'],
      ],
      ['frame.time_epoch', 'can.id', 'iso15765.message_type', 'iso15765.reassembled.length', 'data.data'],
    )
    for (const [time = '', id, type, length, data] of rows) {
      if (type === '0x00' || (type === '0x02' && length !== ''))
        messages.push(`${time.slice(0, -3)} ${nameOf(Number(id), Number(id) > 0x7ff)} ${data}`)
    }
  }
  return messages
}

/** One thing to be read by a Python library. */
export interface Job {
  readonly file: string
  readonly by: 'python-can' | 'scapy log' | 'scapy capture'
  /** Identifiers whose ISO-TP messages scapy shall put together. */
  readonly ids?: readonly number[]
}

/** What it read: frames and messages in the words of `reading.ts`, and the exception that ended it. */
export interface Answer {
  readonly frames: readonly string[]
  readonly messages: readonly string[]
  readonly error: string | null
}

/** Reads files with the Python libraries, all in one process because importing them takes a second. */
export function readWithPython(jobs: readonly Job[]): Answer[] {
  if (python === undefined) return []
  const out = execFileSync(python, [join(import.meta.dirname, 'read_frames.py')], {
    input: JSON.stringify(jobs),
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    stdio: ['pipe', 'pipe', 'ignore'],
  })
  return JSON.parse(out) as Answer[]
}

/** Writes frames (lines of candump log text) with python-can into files of its own; the suffix says the format. */
export function writeWithPython(log: string, files: readonly string[]): void {
  if (python === undefined) return
  execFileSync(python, [join(import.meta.dirname, 'write_frames.py'), log, ...files], { stdio: 'ignore' })
}
