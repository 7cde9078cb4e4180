/** @module The time stamp of a candump line: seconds with decimals, or a date (`candump -t A`). */

import { CLOSE, DASH, DOT, isBlank, isDigit } from './bytes.ts'
import type { LineFault } from './faults.ts'

/** More digits of whole seconds no clock has, and no number holds exactly. */
const MOST_SECONDS_DIGITS = 15

/** A time to fill. */
export interface TimeToFill {
  seconds: number
  nanoseconds: number
  decimals: number
}

/** Reads the time that begins after `(`; returns the position after `)`, or why it is none. */
export function readTime(
  bytes: Uint8Array,
  start: number,
  end: number,
  time: TimeToFill,
): number | LineFault {
  let at = start
  while (at < end && isBlank(bytes[at])) at++
  let seconds = 0
  const whole = at
  while (at < end && isDigit(bytes[at])) {
    seconds = seconds * 10 + (bytes[at] as number) - 0x30
    at++
  }
  const wholeDigits = at - whole
  if (wholeDigits === 0) return at >= end ? 'cut' : 'time'
  let nanoseconds = 0
  let decimals = 0
  if (at < end && bytes[at] === DOT) {
    at++
    while (at < end && isDigit(bytes[at])) {
      if (decimals < 9) {
        nanoseconds = nanoseconds * 10 + (bytes[at] as number) - 0x30
        decimals++
      }
      at++
    }
  }
  if (at >= end) return 'cut'
  if (bytes[at] === DASH && decimals === 0) return readDate(bytes, whole, end, time)
  if (bytes[at] !== CLOSE || wholeDigits > MOST_SECONDS_DIGITS) return 'time'
  time.seconds = seconds
  time.decimals = decimals
  for (let digit = decimals; digit < 9; digit++) nanoseconds *= 10
  time.nanoseconds = nanoseconds
  return at + 1
}

/** `2024-03-05 12:34:56.123456`, read as UTC because the text states no zone. */
function readDate(bytes: Uint8Array, start: number, end: number, time: TimeToFill): number | LineFault {
  let close = start
  while (close < end && bytes[close] !== CLOSE) close++
  if (close >= end) return 'cut'
  if (close - start > 32) return 'time'
  const text = String.fromCharCode(...bytes.subarray(start, close))
  const parts = /^(\d{4})-(\d\d)-(\d\d) (\d\d):(\d\d):(\d\d)(?:\.(\d{1,9}))?$/.exec(text)
  if (parts === null) return 'time'
  const [year, month, day, hour, minute, second] = parts.slice(1, 7).map(Number) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ]
  const fraction = parts[7] ?? ''
  time.seconds = daysFromCivil(year, month, day) * 86400 + hour * 3600 + minute * 60 + second
  time.nanoseconds = Number(fraction.padEnd(9, '0'))
  time.decimals = fraction.length
  return close + 1
}

/** Days from 1970-01-01 to a date of the proleptic Gregorian calendar. */
function daysFromCivil(year: number, month: number, day: number): number {
  const shifted = month <= 2 ? year - 1 : year
  const era = Math.floor(shifted / 400)
  const yearOfEra = shifted - era * 400
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear
  return era * 146097 + dayOfEra - 719468
}
