/** @module What the data of one PID means (SAE J1979 services 01 and 02, and ISO 14229-1 data identifiers F4xx). */

import { dtcText, hexUpper } from '../dtc/code.ts'
import type { Meaning } from '../message/types.ts'
import { hexByte } from '../uds/reader.ts'
import { bitsOf } from './bits.ts'
import { choiceOf } from './choices.ts'
import { isCompressionIgnition, monitorsOf } from './monitors.ts'
import type { Pid, PidField } from './pids.ts'

function raw(data: Uint8Array, field: PidField): number {
  let value = 0
  for (let at = field.at; at < field.at + field.bytes; at++) value = value * 256 + (data[at] as number)
  const half = 2 ** (8 * field.bytes - 1)
  return field.signed && value >= half ? value - 2 * half : value
}

/** The scaled numbers of a PID that the unit supports. Numbers no JavaScript number holds exactly are left out. */
export function pidValues(pid: Pid, data: Uint8Array): Record<string, number> {
  const values: Record<string, number> = {}
  const supported = pid.gated ? (data[0] as number) : 0xff
  pid.fields.forEach((field, index) => {
    if (((supported >> index) & 1) === 0) return
    const value = raw(data, field)
    if (Number.isSafeInteger(value)) values[field.key] = (value * field.multiply) / field.divide + field.add
  })
  return values
}

/** Numbers, in hex, of what a map of 32 bits says is supported: `01 03 1F`; `none` when nothing is. */
export function supportedNumbers(from: number, map: Uint8Array): string {
  const numbers: string[] = []
  for (let bit = 0; bit < 32; bit++) {
    if (((map[bit >> 3] as number) >> (7 - (bit & 7))) & 1) numbers.push(hexByte(from + 1 + bit))
  }
  return numbers.length === 0 ? 'none' : numbers.join(' ')
}

/** A code in two bytes; none when both are zero. */
function storedCode(data: Uint8Array): Meaning {
  if (data[0] === 0 && data[1] === 0) return { dtcs: [] }
  return { dtcs: [{ code: dtcText(data), raw: hexUpper(data) }] }
}

function monitorStatus(pid: Pid, data: Uint8Array): Meaning {
  const [a = 0, b = 0, c = 0, d = 0] = data
  const ignition = isCompressionIgnition(b) ? 'compression' : 'spark'
  const rest: Meaning = { texts: { ignition }, monitors: monitorsOf(b, c, d) }
  // Byte A is reserved in PID 41.
  return pid.pid === 0x01 ? { dtcCount: a & 0x7f, values: { malfunctionIndicatorOn: a >> 7 }, ...rest } : rest
}

/** The meaning of a PID's data; `data` has the bytes the PID has. Empty where nothing but bytes is known. */
export function pidMeaning(pid: Pid, data: Uint8Array): Meaning {
  switch (pid.form) {
    case 'numbers':
      return { values: pidValues(pid, data) }
    case 'supported':
      return { texts: { [`supported PIDs from ${hexByte(pid.pid + 1)}`]: supportedNumbers(pid.pid, data) } }
    case 'monitors':
      return monitorStatus(pid, data)
    case 'code':
      return storedCode(data)
    case 'choice': {
      const texts = choiceOf(pid.pid, data[0] as number, data[1] ?? 0)
      return texts === undefined ? {} : { texts }
    }
    case 'bits': {
      const texts = bitsOf(pid.pid, data[0] as number)
      return texts === undefined ? {} : { texts }
    }
  }
}

/** One meaning out of two: lists are joined, of equal names the first stays. */
export function joined(first: Meaning, second: Meaning): Meaning {
  const both: Record<string, unknown> = { ...second, ...first }
  for (const list of ['dids', 'dtcs', 'records', 'monitors', 'problems'] as const) {
    const one = first[list]
    const two = second[list]
    if (one !== undefined && two !== undefined) both[list] = [...one, ...two]
  }
  for (const map of ['values', 'texts'] as const) {
    const one = first[map]
    const two = second[map]
    if (one !== undefined && two !== undefined) both[map] = { ...two, ...one }
  }
  return both as Meaning
}
