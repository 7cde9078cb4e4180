/**
 * @module Services 05, 06 and 08 of SAE J1979: results of monitors and tests, as bytes with names where known.
 *
 * Layout on CAN: nine bytes per test (monitor, test, unit and scaling, value, lower and upper limit, two bytes each).
 * Names of the monitors from memory of SAE J1979-DA. Values stay bytes: their scaling list is not shipped.
 */

import type { DataIdentifier, DataRecord, Meaning } from '../message/types.ts'
import { hexByte, hexBytes, identifier, tooShort, word } from '../uds/reader.ts'
import { supportedNumbers } from './pid-data.ts'

const RESULT_BYTES = 9

const MONITORS: readonly (readonly [from: number, to: number, name: string])[] = [
  [0x01, 0x10, 'oxygen sensor monitor'],
  [0x21, 0x24, 'catalyst monitor'],
  [0x31, 0x34, 'EGR monitor'],
  [0x35, 0x38, 'VVT monitor'],
  [0x39, 0x3d, 'evaporative system monitor'],
  [0x41, 0x50, 'oxygen sensor heater monitor'],
  [0x61, 0x64, 'heated catalyst monitor'],
  [0x71, 0x74, 'secondary air monitor'],
  [0x81, 0x84, 'fuel system monitor'],
  [0x85, 0x86, 'boost pressure monitor'],
  [0x90, 0x91, 'NOx adsorber monitor'],
  [0x98, 0x99, 'NOx catalyst monitor'],
  [0xa1, 0xa1, 'misfire monitor, general'],
  [0xa2, 0xad, 'misfire monitor, one cylinder'],
  [0xb0, 0xb1, 'particulate filter monitor'],
]

/** Name of a monitor identifier (service 06). */
export function nameOfMonitor(mid: number): string {
  if (mid % 0x20 === 0) return 'supported monitors'
  return MONITORS.find(([from, to]) => mid >= from && mid <= to)?.[2] ?? 'monitor'
}

/** 46: maps of supported monitors, or test results. */
export function testResults(payload: Uint8Array): Meaning {
  if (payload.length < 2) return tooShort(2)
  const dids = new Map<number, DataIdentifier>()
  const texts: Record<string, string> = {}
  const records: DataRecord[] = []
  let at = 1
  while (at < payload.length) {
    const mid = payload[at] as number
    const size = mid % 0x20 === 0 ? 5 : RESULT_BYTES
    if (at + size > payload.length) break
    dids.set(mid, identifier(hexByte(mid), nameOfMonitor(mid)))
    if (size === 5) {
      texts[`supported monitors from ${hexByte(mid + 1)}`] = supportedNumbers(mid, payload.subarray(at + 1))
    } else {
      records.push(resultAt(payload, at))
    }
    at += size
  }
  const left = payload.length - at
  if (dids.size === 0) {
    const mid = payload[1] as number
    dids.set(mid, identifier(hexByte(mid), nameOfMonitor(mid)))
  }
  return {
    dids: [...dids.values()],
    ...(Object.keys(texts).length === 0 ? {} : { texts }),
    ...(records.length === 0 ? {} : { records }),
    ...(left === 0 ? {} : { problems: [`${left} bytes after the last whole record`] }),
  }
}

/** One result; whether it lies within its limits is told where both are plain numbers (scaling below 80). */
function resultAt(payload: Uint8Array, at: number): DataRecord {
  const scaling = payload[at + 2] as number
  const value = word(payload, at + 3)
  const within = value >= word(payload, at + 5) && value <= word(payload, at + 7)
  const verdict = scaling >= 0x80 ? '' : within ? ', within its limits' : ', outside its limits'
  const mid = payload[at] as number
  return {
    kind: 'test-result',
    number: payload[at + 1] as number,
    did: hexByte(mid),
    name: `${nameOfMonitor(mid)}${verdict}`,
    bytes: hexBytes(payload, at + 2, at + RESULT_BYTES),
  }
}

function bytesBehind(name: string): (payload: Uint8Array) => Meaning {
  return (payload) => {
    const id = payload[1]
    if (id === undefined) return tooShort(2)
    const dids = [identifier(hexByte(id), name)]
    if (payload.length === 2) return { dids }
    return {
      dids,
      records: [
        { kind: 'test-result', did: hexByte(id), name, bytes: hexBytes(payload, 2), undivided: true },
      ],
    }
  }
}

/** 05, 45: oxygen sensor tests (not used on CAN, but some cars answer). */
export const oxygenSensorTest: (payload: Uint8Array) => Meaning = bytesBehind('oxygen sensor test')

const testBytes = bytesBehind('test')

/** 08, 48: control of a system or test; test 00 and every 20 further is a map of what is supported. */
export function systemTest(payload: Uint8Array): Meaning {
  const id = payload[1]
  if (id === undefined || id % 0x20 !== 0 || payload.length !== 6) return testBytes(payload)
  return {
    dids: [identifier(hexByte(id), 'supported tests')],
    texts: { [`supported tests from ${hexByte(id + 1)}`]: supportedNumbers(id, payload.subarray(2)) },
  }
}
