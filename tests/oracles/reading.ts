/** @module What we read, in the words the outside readers' answers are brought to. */

import { readFileSync } from 'node:fs'
import {
  type CanFrame,
  type DecodeChoices,
  decodeCapture,
  formatId,
  formatTime,
  type Message,
} from '@shearline/bus'
import { openRecognising } from '../../packages/bus/src/capture/head-first.ts'
import { READERS } from '../../packages/bus/src/capture/readers.ts'

/** Seconds with six decimals: what every oracle keeps of a time. */
function stamp(text: string): string {
  const [whole = '0', fraction = ''] = text.split('.')
  return `${whole}.${fraction.padEnd(6, '0').slice(0, 6)}`
}

const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex')

/** A frame as a line: time, identifier (`x` when 29-bit), marks F R E or `-`, data. */
export function frameLine(frame: CanFrame): string {
  const name = `${formatId(frame.id, frame.extended)}${frame.extended ? 'x' : ''}`
  const marks = `${frame.fd ? 'F' : ''}${frame.remote ? 'R' : ''}${frame.error ? 'E' : ''}`
  return `${stamp(formatTime(frame.time))} ${name} ${marks || '-'} ${hex(frame.data)}`
}

/** Every frame of a file, by the readers behind `decodeCapture`. */
export function framesOf(file: string): string[] {
  const lines: string[] = []
  const reader = openRecognising(
    READERS,
    {
      frame: (frame) => void lines.push(frameLine(frame)),
      doip: () => {},
      announcement: () => {},
      finding: () => {},
    },
    {},
  )
  reader.push(readFileSync(file))
  reader.end()
  return lines
}

/** A message as a line: time of its last frame, identifier, payload. */
function messageLine(message: Message): string {
  return `${stamp(formatTime(message.time))} ${message.id} ${hex(message.payload)}`
}

/** Every complete message of a file and how many are not complete. `ids` forces what carries diagnostics. */
export function messagesOf(file: string, ids?: readonly number[]): { lines: string[]; incomplete: number } {
  const lines: string[] = []
  const choices: DecodeChoices =
    ids === undefined ? {} : { ids: ids.map((id) => ({ id, extended: id > 0x7ff })) }
  const decoding = decodeCapture({
    raw: true,
    ...choices,
    message: (message) => {
      if (message.complete) lines.push(messageLine(message))
    },
  })
  decoding.push(readFileSync(file))
  return { lines, incomplete: decoding.end().summary.incomplete }
}

/** The lines of `from` that `other` has not, each counted as often as it stands there. */
export function missing(from: readonly string[], other: readonly string[]): string[] {
  const counts = new Map<string, number>()
  for (const line of other) counts.set(line, (counts.get(line) ?? 0) + 1)
  return from.filter((line) => {
    const left = counts.get(line) ?? 0
    counts.set(line, left - 1)
    return left <= 0
  })
}
