/**
 * @module Times as tables write them: numbers of some unit, dates with a time (ISO 8601), times of day.
 * No digit is lost: the number is taken apart as text, not as a floating-point value.
 */

import { hexDigit } from './cells.ts'

/** Unit of a time column. `date` is a date with a time of day, `clock` a time of day alone. */
export type TimeUnit = 's' | 'ms' | 'us' | 'ns' | 'date' | 'clock'

export const TIME_UNITS: readonly TimeUnit[] = ['s', 'ms', 'us', 'ns', 'date', 'clock']

/** Seconds of one unit as a power of ten. */
const EXPONENT: Readonly<Record<'s' | 'ms' | 'us' | 'ns', number>> = { s: 0, ms: 3, us: 6, ns: 9 }

/** A time to be filled. */
export interface TimeParts {
  seconds: number
  nanoseconds: number
  decimals: number
}

/** Reads the time in `bytes[from..to)`; false when it is none (`into` is then undefined in content). */
export function readTime(
  bytes: Uint8Array,
  from: number,
  to: number,
  unit: TimeUnit,
  into: TimeParts,
): boolean {
  if (unit === 'date' || unit === 'clock') return readCalendar(bytes, from, to, unit, into)
  return readNumber(bytes, from, to, EXPONENT[unit], into)
}

/** A decimal number of units of 10^-exponent seconds. The decimal mark may be a point or a comma. */
function readNumber(bytes: Uint8Array, from: number, to: number, exponent: number, into: TimeParts): boolean {
  let mark = to
  for (let at = from; at < to; at += 1) {
    const byte = bytes[at] ?? 0
    if (byte >= 0x30 && byte <= 0x39) continue
    if ((byte !== 0x2e && byte !== 0x2c) || mark !== to)
      return readScientific(bytes, from, to, exponent, into)
    mark = at
  }
  const whole = mark - from
  if (whole + (mark === to ? 0 : to - mark - 1) === 0) return false
  const wholeSeconds = Math.max(whole - exponent, 0)
  if (wholeSeconds > 15) return false
  let seconds = 0
  for (let at = from; at < from + wholeSeconds; at += 1) seconds = seconds * 10 + (bytes[at] ?? 0) - 0x30
  // Digits after the seconds: those of the whole number below one second (with zeros it leaves out), then the fraction.
  let nanoseconds = 0
  let digits = 0
  const add = (digit: number): void => {
    if (digits < 9) nanoseconds = nanoseconds * 10 + digit
    digits += 1
  }
  for (let missing = exponent - whole; missing > 0; missing -= 1) add(0)
  for (let at = from + wholeSeconds; at < mark; at += 1) add((bytes[at] ?? 0) - 0x30)
  for (let at = mark + 1; at < to; at += 1) add((bytes[at] ?? 0) - 0x30)
  into.seconds = seconds
  into.nanoseconds = digits < 9 ? nanoseconds * 10 ** (9 - digits) : nanoseconds
  into.decimals = Math.min(digits, 9)
  return true
}

/** Numbers like `1.5e+03`, as spreadsheets write long ones: digits are already lost, so the value is enough. */
function readScientific(
  bytes: Uint8Array,
  from: number,
  to: number,
  exponent: number,
  into: TimeParts,
): boolean {
  if (to - from > 32) return false
  const text = String.fromCharCode(...bytes.subarray(from, to))
  if (!/^\d+([.,]\d*)?[eE][+-]?\d{1,3}$/.test(text)) return false
  const value = Number(text.replace(',', '.')) / 10 ** exponent
  if (!(value < 1e15)) return false
  into.seconds = Math.floor(value)
  into.nanoseconds = Math.min(Math.round((value - into.seconds) * 1e9), 999_999_999)
  into.decimals = 9
  return true
}

/** `2031-02-03T04:05:06.789Z`, `2031/02/03 04:05:06`, `04:05:06.789`. A zone other than Z is not taken. */
function readCalendar(
  bytes: Uint8Array,
  from: number,
  to: number,
  unit: 'date' | 'clock',
  into: TimeParts,
): boolean {
  const numbers: number[] = []
  let at = from
  const wanted = unit === 'date' ? 6 : 3
  while (numbers.length < wanted) {
    let value = 0
    const start = at
    for (; at < to; at += 1) {
      const digit = hexDigit(bytes[at])
      if (digit < 0 || digit > 9) break
      value = value * 10 + digit
    }
    if (at === start || at - start > 4) return false
    numbers.push(value)
    // One separator between two numbers: dash, slash, dot, blank, T, colon.
    if (numbers.length < wanted) {
      const separator = bytes[at] ?? 0
      if (![0x2d, 0x2f, 0x2e, 0x20, 0x54, 0x3a].includes(separator)) return false
      at += 1
    }
  }
  const end = bytes[to - 1] === 0x5a ? to - 1 : to
  const fraction = { seconds: 0, nanoseconds: 0, decimals: 0 }
  if (at < end && !readNumber(bytes, at, end, 0, fraction)) return false
  const [year = 0, month = 1, day = 1] = unit === 'date' ? numbers : [1970, 1, 1]
  const [hour = 0, minute = 0, second = 0] = numbers.slice(wanted - 3)
  if (
    year < 1970 ||
    month < 1 ||
    month > 12 ||
    day < 1 ||
    day > 31 ||
    hour > 23 ||
    minute > 59 ||
    second > 60
  )
    return false
  into.seconds = daysSince1970(year, month, day) * 86_400 + hour * 3600 + minute * 60 + second
  into.nanoseconds = fraction.nanoseconds
  into.decimals = fraction.decimals
  return true
}

/** Days from 1970-01-01 to a date of the Gregorian calendar. */
function daysSince1970(year: number, month: number, day: number): number {
  // The year is taken to begin in March, so that the day added every four years is its last.
  const shifted = month > 2 ? year : year - 1
  const monthFromMarch = (month + 9) % 12
  const inYear = Math.floor((153 * monthFromMarch + 2) / 5) + day - 1
  const leapDays = Math.floor(shifted / 4) - Math.floor(shifted / 100) + Math.floor(shifted / 400)
  return shifted * 365 + leapDays + inYear - 719_468
}
