/**
 * @module The diagnostic services a practice unit answers (ISO 14229-1, SAE J1979).
 *
 * Teaching goes by a routine (31) with identifiers of our own in the maker's range; there is no security access and
 * no code: this is a classroom, not a lock.
 */

import type { FaultMemory, StoredFault } from '../fault-memory/index.ts'
import type { ControlUnit } from './control-unit.ts'

/** Routine identifiers of our own, in the range ISO 14229-1 leaves to makers (0200 to DFFF). */
export const TEACH_OPEN = 0x0310
export const TEACH_SHOW = 0x0311
export const TEACH_CLOSE = 0x0312

/** Data identifiers of our own: keys stored, and keys taught in this session. */
export const DID_KEYS_STORED = 0x2310
export const DID_KEYS_TAUGHT = 0x2311

/** What a unit must ask of the car to answer. */
export interface CarSide {
  readonly seconds: number
  readonly volts: number
  readonly vin: string
  readonly keysStored: number
  readonly keysTaught: number
  /** Runs a teaching routine: a byte of outcome, or a negative response code. */
  teach(routine: number): { readonly outcome: number } | { readonly refused: number }
}

const NOT_SUPPORTED = 0x11
const SUB_FUNCTION_NOT_SUPPORTED = 0x12
const BAD_LENGTH = 0x13
const OUT_OF_RANGE = 0x31
const WRONG_SESSION = 0x7f
const SUB_WRONG_SESSION = 0x7e

/**
 * The answer of a unit to a request, or null when it gives none (suppressed, or a refusal to a request to all that
 * ISO 14229-1 says is not sent).
 */
export function answer(
  unit: ControlUnit,
  request: Uint8Array,
  functional: boolean,
  car: CarSide,
): Uint8Array | null {
  const [service = 0, second = 0] = request
  if (unit.session !== 1) unit.keepSession(car.seconds)
  const given = service < 0x10 ? obd(unit, request, car) : uds(unit, request, car)
  const silentRefusal = [
    NOT_SUPPORTED,
    SUB_FUNCTION_NOT_SUPPORTED,
    OUT_OF_RANGE,
    WRONG_SESSION,
    SUB_WRONG_SESSION,
  ]
  if (typeof given === 'number') {
    if (functional && silentRefusal.includes(given)) return null
    return Uint8Array.of(0x7f, service, given)
  }
  const suppressible = [0x10, 0x11, 0x28, 0x3e, 0x85].includes(service)
  return suppressible && (second & 0x80) !== 0 ? null : Uint8Array.from(given)
}

type Given = readonly number[] | number

function uds(unit: ControlUnit, request: Uint8Array, car: CarSide): Given {
  const [service = 0, second] = request
  if (second === undefined && service !== 0x14)
    return [0x19, 0x22].includes(service) ? BAD_LENGTH : known(service)
  const sub = (second ?? 0) & 0x7f
  switch (service) {
    case 0x10:
      return changeSession(unit, sub, car)
    case 0x11:
      if (sub !== 1 && sub !== 3) return SUB_FUNCTION_NOT_SUPPORTED
      unit.restart(car.seconds, 'work', 'reset')
      return [0x51, sub]
    case 0x14:
      if (request.length !== 4) return BAD_LENGTH
      if (request[1] !== 0xff || request[2] !== 0xff || request[3] !== 0xff) return OUT_OF_RANGE
      unit.memory.clear()
      return [0x54]
    case 0x19:
      return readFaults(unit, request)
    case 0x22:
      return readData(request, car, unit)
    case 0x28:
      if (unit.session === 1) return WRONG_SESSION
      if (sub > 3) return SUB_FUNCTION_NOT_SUPPORTED
      if (request.length !== 3) return BAD_LENGTH
      // 00 enables both ways; 01 and 03 forbid the unit to send (ISO 14229-1 communication control).
      unit.mute(sub === 1 || sub === 3)
      return [0x68, sub]
    case 0x31:
      return routine(unit, request, car)
    case 0x3e:
      return sub === 0 ? [0x7e, 0] : SUB_FUNCTION_NOT_SUPPORTED
    case 0x85:
      if (unit.session === 1) return WRONG_SESSION
      if (sub !== 1 && sub !== 2) return SUB_FUNCTION_NOT_SUPPORTED
      unit.faultsOff = sub === 2
      return [0xc5, sub]
    default:
      return NOT_SUPPORTED
  }
}

function known(service: number): number {
  return [0x10, 0x11, 0x28, 0x31, 0x3e, 0x85].includes(service) ? BAD_LENGTH : NOT_SUPPORTED
}

function changeSession(unit: ControlUnit, session: number, car: CarSide): Given {
  if (session !== 1 && session !== 3) return SUB_FUNCTION_NOT_SUPPORTED
  if (session === 1) unit.endSession()
  unit.session = session
  unit.keepSession(car.seconds)
  // P2 50 ms, P2* 5,000 ms in steps of 10 ms (ISO 14229-2).
  return [0x50, session, 0x00, 0x32, 0x01, 0xf4]
}

function readFaults(unit: ControlUnit, request: Uint8Array): Given {
  const { memory } = unit
  const { availability } = unit.choices
  const report = (request[1] ?? 0) & 0x7f
  const record = (fault: StoredFault): number[] => [...fault.bytes, fault.status & availability]
  switch (report) {
    case 0x01: {
      if (request.length !== 3) return BAD_LENGTH
      const count = memory.byMask((request[2] ?? 0) & availability).length
      return [0x59, 0x01, availability, 0x01, count >> 8, count & 255]
    }
    case 0x02:
      if (request.length !== 3) return BAD_LENGTH
      return [0x59, 0x02, availability, ...memory.byMask((request[2] ?? 0) & availability).flatMap(record)]
    case 0x0a:
      return [0x59, 0x0a, availability, ...memory.all().flatMap(record)]
    case 0x04:
    case 0x06:
      return oneFault(memory, report, request, availability)
    default:
      return SUB_FUNCTION_NOT_SUPPORTED
  }
}

/** 04: the snapshot (supply volts as F442). 06: occurrence and aging counters as record 01. */
function oneFault(memory: FaultMemory, report: number, request: Uint8Array, availability: number): Given {
  if (request.length !== 6) return BAD_LENGTH
  const fault = memory.find(request.subarray(2, 5))
  if (fault === undefined) return OUT_OF_RANGE
  const head = [0x59, report, ...fault.bytes, fault.status & availability]
  if (report === 0x06) return [...head, 0x01, fault.occurrences, fault.agingCycles]
  if (fault.snapshot === null) return head
  const millivolts = Math.round(fault.snapshot.volts * 1000)
  return [...head, 0x01, 0x01, 0xf4, 0x42, millivolts >> 8, millivolts & 255]
}

function readData(request: Uint8Array, car: CarSide, unit: ControlUnit): Given {
  if (request.length % 2 === 0) return BAD_LENGTH
  const data: number[] = [0x62]
  for (let at = 1; at + 1 < request.length; at += 2) {
    const did = ((request[at] ?? 0) << 8) | (request[at + 1] ?? 0)
    const value = dataOf(did, car, unit)
    if (value !== undefined) data.push(did >> 8, did & 255, ...value)
  }
  return data.length === 1 ? OUT_OF_RANGE : data
}

function dataOf(did: number, car: CarSide, unit: ControlUnit): readonly number[] | undefined {
  const millivolts = Math.round(car.volts * 1000)
  switch (did) {
    case 0xf190:
      return [...car.vin].map((letter) => letter.charCodeAt(0))
    case 0xf442:
      return [millivolts >> 8, millivolts & 255]
    case 0xf186:
      return [unit.session]
    case DID_KEYS_STORED:
      return unit.name === 'immobiliser' ? [car.keysStored] : undefined
    case DID_KEYS_TAUGHT:
      return unit.name === 'immobiliser' ? [car.keysTaught] : undefined
    default:
      return undefined
  }
}

function routine(unit: ControlUnit, request: Uint8Array, car: CarSide): Given {
  if (request.length < 4) return BAD_LENGTH
  if ((request[1] ?? 0) !== 1) return SUB_FUNCTION_NOT_SUPPORTED
  if (unit.name !== 'immobiliser') return OUT_OF_RANGE
  const identifier = ((request[2] ?? 0) << 8) | (request[3] ?? 0)
  if (![TEACH_OPEN, TEACH_SHOW, TEACH_CLOSE].includes(identifier)) return OUT_OF_RANGE
  if (unit.session === 1) return SUB_WRONG_SESSION
  const result = car.teach(identifier)
  if ('refused' in result) return result.refused
  return [0x71, 0x01, identifier >> 8, identifier & 255, result.outcome]
}

function obd(unit: ControlUnit, request: Uint8Array, car: CarSide): Given {
  // Only the units of the drive train answer emission services.
  if (unit.name !== 'engine' && unit.name !== 'transmission') return NOT_SUPPORTED
  const [service = 0, pid = 0] = request
  const millivolts = Math.round(car.volts * 1000)
  const listed = (faults: readonly StoredFault[]): readonly number[] => [
    service + 0x40,
    faults.length,
    ...faults.flatMap((fault) => [fault.bytes[0] ?? 0, fault.bytes[1] ?? 0]),
  ]
  switch (service) {
    case 0x01:
      // PID 42 only for the engine; 00, 20, 40 say which there are.
      if (unit.name !== 'engine') return NOT_SUPPORTED
      if (pid === 0x00) return [0x41, pid, 0, 0, 0, 1]
      if (pid === 0x20) return [0x41, pid, 0, 0, 0, 1]
      if (pid === 0x40) return [0x41, pid, 0x40, 0, 0, 0]
      return pid === 0x42 ? [0x41, pid, millivolts >> 8, millivolts & 255] : SUB_FUNCTION_NOT_SUPPORTED
    case 0x03:
      return listed(unit.memory.byMask(0x08))
    case 0x07:
      return listed(unit.memory.byMask(0x04))
    case 0x0a:
      return listed(unit.memory.permanentFaults())
    case 0x09:
      if (pid !== 0x02 || unit.name !== 'engine') return SUB_FUNCTION_NOT_SUPPORTED
      return [0x49, 0x02, 0x01, ...[...car.vin].map((letter) => letter.charCodeAt(0))]
    default:
      return NOT_SUPPORTED
  }
}
