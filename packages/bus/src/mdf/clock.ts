/**
 * @module The time of a record: start of the recording plus the master channel, without losing digits.
 *
 * The master channel counts ticks; when a tick is a power of ten of a second (microseconds, nanoseconds) the sum is
 * exact, and the time is written with as many decimals as the tick has. Else the product is rounded to nanoseconds.
 */

import { convert } from './conversion.ts'
import { type Field, fieldBytes, rawValue, wideInteger } from './field.ts'

/** A time to be filled. */
export interface TimeParts {
  seconds: number
  nanoseconds: number
  decimals: number
}

/** Makes the times of one channel group. */
export class Clock {
  readonly #master: Field | undefined
  readonly #startSeconds: number
  readonly #startNanoseconds: number
  /** Nanoseconds of one tick when ticks are exact, else 0. */
  readonly #tick: number
  readonly #decimals: number

  constructor(master: Field | undefined, start: { readonly seconds: number; readonly nanoseconds: number }) {
    this.#master = master
    this.#startSeconds = start.seconds
    this.#startNanoseconds = start.nanoseconds
    const exponent = master === undefined ? 9 : decimalsOf(master)
    this.#tick = exponent < 0 ? 0 : 10 ** (9 - exponent)
    const ofStart = decimalDigits(start.nanoseconds)
    this.#decimals = exponent < 0 ? 9 : Math.max(exponent, ofStart)
  }

  /** Fills `into` with the time of the record at `record` in `bytes`. */
  read(bytes: Uint8Array, record: number, into: TimeParts): void {
    into.decimals = this.#decimals
    const master = this.#master
    if (master === undefined) {
      this.#sum(0, 0, into)
      return
    }
    const count = fieldBytes(master)
    if (this.#tick > 0 && master.kind !== 'float' && count > 6) {
      const nanoseconds = wideInteger(master, bytes, record + master.byteOffset, count) * BigInt(this.#tick)
      const seconds = nanoseconds / 1_000_000_000n
      this.#sum(Number(seconds), Number(nanoseconds - seconds * 1_000_000_000n), into)
      return
    }
    const raw = rawValue(master, bytes, record)
    if (this.#tick > 0 && Number.isSafeInteger(raw)) {
      const perSecond = 1e9 / this.#tick
      const seconds = Math.floor(raw / perSecond)
      this.#sum(seconds, (raw - seconds * perSecond) * this.#tick, into)
      return
    }
    const value = convert(master.conversion, raw)
    const known = Number.isFinite(value) ? value : 0
    const seconds = Math.floor(known)
    this.#sum(seconds, Math.round((known - seconds) * 1e9), into)
  }

  #sum(seconds: number, nanoseconds: number, into: TimeParts): void {
    const total = this.#startNanoseconds + nanoseconds
    const carry = Math.floor(total / 1e9)
    into.seconds = this.#startSeconds + seconds + carry
    into.nanoseconds = total - carry * 1e9
  }
}

/** n when the master's unit is 10^-n seconds without an offset (n from 0 to 9, integer ticks), else -1. */
function decimalsOf(master: Field): number {
  const { factor, offset, table } = master.conversion
  if (table !== undefined || offset !== 0 || master.constant !== undefined) return -1
  // A floating-point master in whole seconds carries fractions of its own.
  if (master.kind === 'float' && factor === 1) return -1
  for (let exponent = 0; exponent <= 9; exponent += 1) {
    if (Math.abs(factor * 10 ** exponent - 1) < 1e-9) return exponent
  }
  return -1
}

/** How many decimals a fraction of a second needs. */
function decimalDigits(nanoseconds: number): number {
  let digits = 9
  for (let rest = nanoseconds; digits > 0 && rest % 10 === 0; rest /= 10) digits -= 1
  return digits
}
