/**
 * @module Reads bytes the way the project does and checks what must hold whatever they are: nothing throws, findings
 * have a place, counts fit what was told, no secret byte is shown, and the size of the chunks changes nothing.
 */

import {
  bytesSource,
  type DecodeOptions,
  type DecodeResult,
  decodeCapture,
  decodeMdf,
  type Finding,
  guessMapping,
  type Message,
  messageLine,
  recogniseCapture,
  resetsAndClears,
  sampleTable,
  scansOf,
  vinsOf,
} from '@shearline/bus'
import { SECRET } from './recordings.ts'

/** What reading came to. */
export interface Read extends DecodeResult {
  readonly messages: readonly Message[]
  readonly findings: readonly Finding[]
  readonly announcements: readonly unknown[]
}

/** A property that does not hold; the message says which. */
export class Broken extends Error {}

function hold(what: string, holds: boolean, shown?: unknown): void {
  if (!holds) throw new Broken(`${what}: ${JSON.stringify(shown)?.slice(0, 600)}`)
}

/** Decodes bytes in chunks of `size`, each spoilt after use: the caller may reuse a chunk. */
export function readBytes(bytes: Uint8Array, size: number, options: DecodeOptions = {}): Read {
  const kept = listening()
  const decoding = decodeCapture({ ...options, ...kept.listener })
  for (let at = 0; at < bytes.length; at += size) {
    const chunk = bytes.slice(at, at + size)
    decoding.push(chunk)
    chunk.fill(0xee)
  }
  return { ...decoding.end(), ...kept.told }
}

/** Reads an MDF out of order, as from a disk. */
function readMdfBytes(bytes: Uint8Array, options: DecodeOptions): Read {
  const kept = listening()
  const reading = decodeMdf(bytesSource(bytes), { ...options, ...kept.listener })
  let step = reading.next()
  while (!step.done) step = reading.next()
  return { ...step.value, ...kept.told }
}

function listening() {
  const told = { messages: [] as Message[], findings: [] as Finding[], announcements: [] as unknown[] }
  const listener = {
    message: (message: Message) => void told.messages.push(message),
    finding: (finding: Finding) => void told.findings.push(finding),
    announcement: (announcement: unknown) => void told.announcements.push(announcement),
  }
  return { told, listener }
}

/** How many bytes of a message may be shown, by its first byte; the rule of packages/bus/README.md, written again. */
function shownBytes(payload: Uint8Array): number {
  const first = payload[0] ?? 0
  const all = payload.length
  switch (first) {
    case 0x27:
    case 0x67:
    case 0x29:
    case 0x69:
    case 0x36:
    case 0x76:
    case 0x3b:
    case 0x7b:
    case 0x3d:
    case 0x7d:
      return Math.min(all, 2)
    case 0x2e:
    case 0x6e:
      return Math.min(all, 3)
    case 0x34:
    case 0x74:
    case 0x35:
    case 0x75:
    case 0x37:
    case 0x77:
    case 0x84:
    case 0xc4:
      return Math.min(all, 1)
    default:
      return all
  }
}

/** Three bytes of the secret in a row, as hex with or without spaces, as decimals, or as characters. */
const SECRET_SHOWN = new RegExp(
  SECRET.map((_, at) => [0, 1, 2].map((step) => SECRET[(at + step) & 3] as number))
    .flatMap((three) => [
      three.map((byte) => byte.toString(16)).join('[ :;,-]?'),
      three.join(',\\s*'),
      three.map((byte) => `\\u${byte.toString(16).padStart(4, '0')}`).join(''),
    ])
    .join('|'),
  'i',
)

/** Whether a text holds secret bytes in any of the usual ways to write them. */
export function showsSecret(text: string): boolean {
  return SECRET_SHOWN.test(text)
}

function checkFindings(read: Read, bytes: Uint8Array): void {
  const counts: Record<string, number> = {}
  const { format } = read.recognised
  // Unpacked places lie beyond the packed file; an MDF may point beyond its end, which is what the finding says.
  const direct = format !== 'gzip' && format !== 'mdf'
  for (const finding of read.findings) {
    counts[finding.code] = (counts[finding.code] ?? 0) + 1
    const { line, byteOffset } = finding.where
    hold('a finding has a line or a byte offset', line !== undefined || byteOffset !== undefined, finding)
    if (line !== undefined)
      hold(
        'a line is a line of the file',
        Number.isInteger(line) && line >= 1 && (!direct || line <= bytes.length + 1),
        finding,
      )
    if (byteOffset !== undefined)
      hold(
        'an offset lies in the file',
        Number.isInteger(byteOffset) && byteOffset >= 0 && (!direct || byteOffset <= bytes.length),
        finding,
      )
    hold('a finding says what and what next', finding.what !== '' && finding.doNext !== '', finding)
    hold(
      'a finding says it in one short line',
      finding.what.length < 1000 && !/[\r\n\0]/.test(finding.what),
      [finding.what.length, finding],
    )
    hold('no finding shows a secret', !showsSecret(JSON.stringify(finding)), finding)
  }
  hold('the summary counts every finding', same(counts, read.summary.findings), [
    counts,
    read.summary.findings,
  ])
}

/** The same counts by the same names, in whatever order they came. */
function same(one: Readonly<Record<string, number>>, two: Readonly<Record<string, number>>): boolean {
  const sorted = (counts: Readonly<Record<string, number>>): string =>
    JSON.stringify(Object.entries(counts).sort(([a], [b]) => (a < b ? -1 : 1)))
  return sorted(one) === sorted(two)
}

function checkMessages(read: Read): void {
  const { summary, messages } = read
  const complete = messages.filter((message) => message.complete)
  hold('summary.messages counts the complete ones', summary.messages === complete.length, summary)
  hold('summary.incomplete counts the others', summary.incomplete === messages.length - complete.length, [
    summary,
    messages.length,
  ])
  const refused = complete.filter((message) => message.kind === 'negative')
  hold('summary.negative counts refusals', summary.negative === refused.length, summary)
  hold(
    'summary.pending counts NRC 78',
    summary.pending === refused.filter((message) => message.nrc?.code === '78').length,
    summary,
  )
  for (const message of messages) {
    const { payload, length } = message
    hold('an incomplete message says why', message.complete === (message.incomplete === undefined), message)
    if (message.complete)
      hold('a complete message has its length', payload.length === length, [message, length])
    const line = JSON.stringify(messageLine(message))
    hold('a number in a line is finite', !/:(null|NaN)\b/.test(line), line)
  }
}

/** The redacted reading shows the same messages as the raw one, and of each only what the rule allows. */
function checkRedaction(read: Read, raw: Read): void {
  hold('raw changes no message', raw.messages.length === read.messages.length, [
    raw.messages.length,
    read.messages.length,
  ])
  let plain = false
  const lines: string[] = []
  for (const [index, message] of read.messages.entries()) {
    const all = (raw.messages[index] as Message).payload
    const shown = shownBytes(all)
    const hex = Buffer.from(all).toString('hex')
    const line = messageLine(message)
    const expected = hex.slice(0, shown * 2) + 'xx'.repeat(all.length - shown)
    hold('only what the rule allows is shown', line.payload === expected, [line.payload, expected])
    hold(
      'secret bytes are zero',
      message.payload.subarray(shown).every((byte) => byte === 0),
      line,
    )
    plain ||= showsSecret(hex.slice(0, shown * 2))
    lines.push(JSON.stringify(line))
  }
  // Damage may put the marker where nothing is secret; only without that must it be absent everywhere.
  if (plain) return
  const said = `${lines.join('\n')}${JSON.stringify([read.summary, scansOf(read.messages), vinsOf(read.messages), resetsAndClears(read.messages)])}`
  hold('no secret byte is shown', !showsSecret(said), said.match(SECRET_SHOWN))
}

/** All of an answer as text. */
function plainData(read: Read): string {
  return JSON.stringify([
    read.recognised,
    read.summary,
    read.findings,
    read.announcements,
    read.messages.map(messageLine),
  ])
}

/**
 * Reads `bytes` whole, raw and in chunks of `size`, and an MDF out of order too. Throws `Broken` where a property
 * does not hold, and whatever the package throws.
 */
export function examine(bytes: Uint8Array, size: number): Read {
  const options = { findingsPerCode: Number.POSITIVE_INFINITY }
  const read = readBytes(bytes, Math.max(1, bytes.length), options)
  checkFindings(read, bytes)
  checkMessages(read)
  checkRedaction(read, readBytes(bytes, Math.max(1, bytes.length), { ...options, raw: true }))
  const pieces = readBytes(bytes, size, options)
  const [one, two] = [plainData(read), plainData(pieces)]
  if (one !== two) {
    const at = [...one].findIndex((letter, index) => letter !== two[index])
    const around = (text: string): string => text.slice(Math.max(0, at - 150), at + 250)
    throw new Broken(`chunks of ${size} change the answer: ${around(one)} | ${around(two)}`)
  }
  const head = bytes.subarray(0, 4096)
  hold('the recogniser gives a reason', recogniseCapture(head).reason.length > 5)
  const table = sampleTable(head, bytes.length <= 4096)
  if (table !== undefined) guessMapping([table.header, ...table.rows])
  if (read.recognised.format === 'mdf') {
    const disk = readMdfBytes(bytes, options)
    checkFindings(disk, bytes)
    checkMessages(disk)
  }
  return read
}
