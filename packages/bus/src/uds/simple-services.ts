/** @module Services whose one readable part is their sub-function or counter. */

import { hexByte, type ServiceReader, subFunctionOf, subFunctionReader, tooShort } from './reader.ts'
import { subFunctionNamer } from './sub-functions.ts'

/** 3E TesterPresent. */
export const testerPresent: ServiceReader = subFunctionReader(subFunctionNamer(0x3e))

/** 85 ControlDTCSetting. */
export const controlDtcSetting: ServiceReader = subFunctionReader(subFunctionNamer(0x85))

/** 29 Authentication (2020). Its data is secret. */
export const authentication: ServiceReader = subFunctionReader(subFunctionNamer(0x29))

/** 83 AccessTimingParameter (edition 2013). */
export const accessTimingParameter: ServiceReader = subFunctionReader(subFunctionNamer(0x83))

const nameOfEvent = subFunctionNamer(0x86)

/** 86 ResponseOnEvent: bit 6 of the sub-function asks the unit to keep the set-up over a power cycle. */
export const responseOnEvent: ServiceReader = subFunctionReader((value) => nameOfEvent(value & 0x3f))

const nameOfLink = subFunctionNamer(0x87)

/** Fixed link modes of ISO 14229-1 Annex B (from memory): bits per second. */
const BIT_RATES: ReadonlyMap<number, number> = new Map([
  [0x01, 9600],
  [0x02, 19_200],
  [0x03, 38_400],
  [0x04, 57_600],
  [0x05, 115_200],
  [0x10, 125_000],
  [0x11, 250_000],
  [0x12, 500_000],
  [0x13, 1_000_000],
])

/** 87 LinkControl: the bit rate asked for, fixed or given in three bytes. */
export const linkControl: ServiceReader = {
  request: (payload) => {
    const subFunction = subFunctionOf(payload, nameOfLink)
    if (subFunction === undefined) return tooShort(2)
    const needed = subFunction.value === 0x01 ? 3 : subFunction.value === 0x02 ? 5 : 2
    if (payload.length < needed) return { subFunction, ...tooShort(needed) }
    const [, , first = 0, second = 0, third = 0] = payload
    const rate =
      subFunction.value === 0x01
        ? BIT_RATES.get(first)
        : subFunction.value === 0x02
          ? (first << 16) | (second << 8) | third
          : undefined
    return rate === undefined ? { subFunction } : { subFunction, values: { linkBitsPerSecond: rate } }
  },
  response: (payload) => {
    const subFunction = subFunctionOf(payload, nameOfLink)
    return subFunction === undefined ? tooShort(2) : { subFunction }
  },
}

function blockCounter(payload: Uint8Array): ReturnType<NonNullable<ServiceReader['request']>> {
  const counter = payload[1]
  return counter === undefined ? tooShort(2) : { values: { blockSequenceCounter: counter } }
}

/** 36 TransferData: the block counter is shown, the data is secret. */
export const transferData: ServiceReader = { request: blockCounter, response: blockCounter }

/** Modes of operation (from memory of ISO 14229-1; 06 since 2020). */
const FILE_OPERATIONS: Readonly<Record<number, string>> = {
  1: 'addFile',
  2: 'deleteFile',
  3: 'replaceFile',
  4: 'readFile',
  5: 'readDir',
  6: 'resumeFile',
}

function fileOperation(payload: Uint8Array): ReturnType<NonNullable<ServiceReader['request']>> {
  const operation = payload[1]
  if (operation === undefined) return tooShort(2)
  return { texts: { modeOfOperation: FILE_OPERATIONS[operation] ?? `reserved ${hexByte(operation)}` } }
}

/** 38 RequestFileTransfer: what is to be done with a file. */
export const requestFileTransfer: ServiceReader = { request: fileOperation, response: fileOperation }
