/** @module What services change in a unit: what begins, ends, happened or was written. */

import type { Message } from '../message/types.ts'
import type { Lines } from './lines.ts'
import { close, closeAll, type State, type Unit } from './unit.ts'

/** Control types of 28 that silence a unit (ISO 14229-1). */
const SILENCING: ReadonlySet<number> = new Set([1, 2, 3, 4])

/** Turns services into lines. */
export class Changes {
  readonly #lines: Lines
  readonly #opened: (unit: Unit) => void

  /** `opened` is told of each unit in which a state begins that lasts. */
  constructor(lines: Lines, opened: (unit: Unit) => void) {
    this.#lines = lines
    this.#opened = opened
  }

  /** What a suppressed request ends in a unit that had confirmed it before. */
  ending(unit: Unit, message: Message): void {
    const value = message.subFunction?.value
    if (message.service === '10' && value === 1) closeAll(unit, message.time, 'asked')
    if (message.service === '11') closeAll(unit, message.time, 'reset')
    if (message.service === '28' && value === 0) close(unit, 'muted', message.time, 'asked')
    if (message.service === '85' && value === 1) close(unit, 'codes-off', message.time, 'asked')
  }

  /** A state that lasts begins, or goes on when it is the same. */
  #open(unit: Unit, message: Message, state: State, detail: string): void {
    if (unit.open.get(state)?.detail === detail) return
    close(unit, state, message.time, 'replaced')
    unit.open.set(state, this.#lines.point(unit, message, state, detail))
    this.#opened(unit)
  }

  /** What a unit confirmed, or was asked for without wanting an answer. */
  change(unit: Unit, message: Message): void {
    const { service, protocol, time } = message
    const value = message.subFunction?.value ?? 0
    const detail = message.subFunction?.name ?? message.dids?.[0]?.did ?? ''
    if (protocol === 'obd') {
      if (service === '04') this.#lines.point(unit, message, 'cleared', 'emission-related codes')
      return
    }
    switch (service) {
      case '10':
        this.#session(unit, message, value)
        return
      case '20':
        if (protocol === 'kwp') closeAll(unit, time, 'asked')
        return
      case '11':
        this.#lines.point(unit, message, 'reset', detail)
        // Rapid power shut-down (4, 5) is prepared here, it happens when the key is turned off.
        if (protocol === 'kwp' || value < 4) closeAll(unit, time, 'reset')
        return
      case '14':
        this.#lines.point(unit, message, 'cleared', '')
        return
      case '27':
        if (value % 2 === 0) this.#open(unit, message, 'security-opened', `level ${value - 1}`)
        return
      case '28':
        if (protocol === 'kwp' || SILENCING.has(value)) this.#open(unit, message, 'muted', detail)
        else close(unit, 'muted', time, 'asked')
        return
      case '29':
        if (protocol === 'kwp') close(unit, 'muted', time, 'asked')
        else this.#lines.point(unit, message, 'authentication', detail)
        return
      case '85':
        if (protocol === 'kwp') return
        if (value === 2 || detail === 'off') this.#open(unit, message, 'codes-off', detail)
        else close(unit, 'codes-off', time, 'asked')
        return
      case '31':
        this.#lines.point(unit, message, 'routine', routineOf(message))
        return
      default:
        this.#written(unit, message)
    }
  }

  #session(unit: Unit, message: Message, value: number): void {
    const standard = message.protocol === 'kwp' ? 0x81 : 0x01
    if (value === standard) {
      closeAll(unit, message.time, 'asked')
      return
    }
    const number = value.toString(16).toUpperCase().padStart(2, '0')
    const detail = `${message.subFunction?.name ?? 'session'} ${number}`
    // Another session locks security again (ISO 14229-1); the same one asked for again does too.
    close(unit, 'security-opened', message.time, 'session-end')
    this.#open(unit, message, 'session', detail)
  }

  #written(unit: Unit, message: Message): void {
    const { service, time } = message
    const did = message.dids?.[0]
    if (service === '2E' || service === '3B') {
      this.#lines.point(unit, message, 'written', did === undefined ? '' : `${did.did} ${did.name}`)
    } else if (service === '3D') {
      this.#lines.point(unit, message, 'written', 'memory')
    } else if (service === '34' || service === '35') {
      const what = service === '34' ? 'written' : 'read-out'
      unit.transfer = this.#lines.point(unit, message, what, message.name)
      unit.transfer.times = 0
    } else if (service === '36') {
      unit.transfer ??= this.#lines.point(unit, message, 'written', message.name)
      unit.transfer.to = time
      unit.transfer.times = (unit.transfer.times ?? 0) + 1
    } else if (service === '37' && unit.transfer !== undefined) {
      unit.transfer.to = time
      unit.transfer.endedBy = 'asked'
      unit.transfer = undefined
    }
  }
}

function routineOf(message: Message): string {
  const words = [message.subFunction?.name, message.dids?.[0]?.did].filter((word) => word !== undefined)
  return words.join(' ')
}
