/** @module Decodes whole recordings for tests. */

import type { DoipAnnouncement } from '../../capture/contract.ts'
import type { Finding } from '../../finding/index.ts'
import { type CanFrame, formatTime, type RecordedTime } from '../../frame/index.ts'
import type { Message } from '../../message/types.ts'
import { redactedHex } from '../../redaction/index.ts'
import { type DecodeOptions, type DecodeResult, decodeCapture } from '../decode-capture.ts'
import { type DecodeChoices, Decoder } from '../decoder.ts'
import type { Summary } from '../summary.ts'

export interface Decoded extends DecodeResult {
  readonly messages: Message[]
  readonly findings: Finding[]
  readonly announcements: DoipAnnouncement[]
}

/** Decodes bytes given in chunks of the sizes in turn (one chunk when there are none). */
export function decodeBytes(
  bytes: Uint8Array,
  options: DecodeOptions = {},
  chunks: readonly number[] = [],
): Decoded {
  const messages: Message[] = []
  const findings: Finding[] = []
  const announcements: DoipAnnouncement[] = []
  const decoding = decodeCapture({
    ...options,
    message: (message) => messages.push(message),
    finding: (finding) => findings.push(finding),
    announcement: (announcement) => announcements.push(announcement),
  })
  let at = 0
  for (let turn = 0; at < bytes.length; turn++) {
    const size = chunks.length === 0 ? bytes.length : Math.max(1, chunks[turn % chunks.length] as number)
    // A buffer of its own, spoilt afterwards: the caller may reuse a chunk.
    const chunk = new Uint8Array(bytes.subarray(at, at + size))
    decoding.push(chunk)
    chunk.fill(0xee)
    at += size
  }
  return { ...decoding.end(), messages, findings, announcements }
}

/** Decodes text, joined by line ends. */
export function decodeLines(lines: readonly string[], options: DecodeOptions = {}): Decoded {
  return decodeBytes(new TextEncoder().encode(`${lines.join('\n')}\n`), options)
}

/** Decodes frames. */
export function decodeFrames(
  frames: readonly CanFrame[],
  choices: DecodeChoices = {},
): { messages: Message[]; findings: Finding[]; summary: Summary } {
  const messages: Message[] = []
  const findings: Finding[] = []
  const decoder = new Decoder(
    { message: (message) => messages.push(message), finding: (finding) => findings.push(finding) },
    choices,
  )
  for (const frame of frames) decoder.frame(frame)
  decoder.end()
  return { messages, findings, summary: decoder.summary }
}

/** A time from milliseconds. */
export function at(milliseconds: number): RecordedTime {
  return {
    seconds: Math.floor(milliseconds / 1000),
    nanoseconds: Math.round((milliseconds % 1000) * 1e6),
    decimals: 6,
  }
}

/** A classic frame: `0x7E0`, data as hex. 29-bit when the identifier is written with more than 11 bits. */
export function frame(milliseconds: number, id: number, hex: string, line = 0): CanFrame {
  return {
    time: at(milliseconds),
    channel: 'can0',
    id,
    extended: id > 0x7ff,
    fd: hex.length > 16,
    remote: false,
    error: false,
    data: Uint8Array.from(hex.match(/../g) ?? [], (digits) => Number.parseInt(digits, 16)),
    where: { line },
  }
}

/** A message in one line: time, id, payload with `xx` for secrets, `!reason` when incomplete. */
export function short(message: Message): string {
  const end = message.incomplete === undefined ? '' : ` !${message.incomplete}`
  return `${formatTime(message.time)} ${message.id} ${redactedHex(message.payload, message.redacted)}${end}`
}
