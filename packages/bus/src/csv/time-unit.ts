/**
 * @module The unit of a time column whose name states none.
 *
 * Two facts decide. A frame without data takes 47 bits (ISO 11898-1), so frames of one bus are hardly ever closer
 * than about 40 microseconds; and a bus worth recording is seldom silent for more than some seconds (common practice,
 * no source). A number that is a date of our time in one unit is nothing of the kind in another.
 */

import type { Confidence } from './columns.ts'
import type { TimeUnit } from './time.ts'

type NumberUnit = 's' | 'ms' | 'us' | 'ns'

const SECONDS: Readonly<Record<NumberUnit, number>> = { s: 1, ms: 1e-3, us: 1e-6, ns: 1e-9 }
const CLOSEST_SECONDS = 40e-6
const LONGEST_MEDIAN_SECONDS = 5
/** 2000-01-01 and 2100-01-01 in seconds since 1970. */
const EPOCH: readonly [number, number] = [946_684_800, 4_102_444_800]

/** The unit and how sure it is. `stated` is what the column's name says. */
export function guessTimeUnit(
  rows: readonly (readonly string[])[],
  column: number,
  channel: number | undefined,
  stated: TimeUnit | undefined,
): { unit: TimeUnit; confidence: Confidence } {
  const cells = rows.map((row) => row[column] ?? '').filter((cell) => cell !== '')
  if (mostly(cells, /^\d{4}[-/.]\d{1,2}[-/.]\d{1,2}/)) return { unit: 'date', confidence: 'certain' }
  if (mostly(cells, /^\d{1,2}:\d{2}:\d{2}/)) return { unit: 'clock', confidence: 'certain' }
  if (stated !== undefined) return { unit: stated, confidence: 'certain' }
  const spacings = spacingsOf(rows, column, channel)
  const possible = (['us', 'ms', 'ns', 's'] as const).filter((unit) => plausible(spacings, unit))
  const first = numberOf(cells[0])
  const dated = possible.find((unit) => first * SECONDS[unit] > EPOCH[0] && first * SECONDS[unit] < EPOCH[1])
  if (dated !== undefined) return { unit: dated, confidence: 'likely' }
  const fractional = cells.some((cell) => /[.,]\d/.test(cell))
  if (fractional && (possible.includes('s') || spacings.length === 0))
    return { unit: 's', confidence: spacings.length === 0 ? 'guessed' : 'likely' }
  const best = fractional ? (possible.find((unit) => unit === 'ms') ?? possible[0]) : possible[0]
  if (best === undefined) return { unit: fractional ? 's' : 'us', confidence: 'guessed' }
  return { unit: best, confidence: possible.length === 1 ? 'likely' : 'guessed' }
}

/** Positive spacings between rows of one channel, in rising order. */
function spacingsOf(
  rows: readonly (readonly string[])[],
  column: number,
  channel: number | undefined,
): number[] {
  const last = new Map<string, number>()
  const spacings: number[] = []
  for (const row of rows) {
    const time = numberOf(row[column])
    if (Number.isNaN(time)) continue
    const key = channel === undefined ? '' : (row[channel] ?? '')
    const before = last.get(key)
    if (before !== undefined && time > before) spacings.push(time - before)
    last.set(key, time)
  }
  return spacings.sort((a, b) => a - b)
}

function plausible(spacings: readonly number[], unit: NumberUnit): boolean {
  if (spacings.length < 3) return false
  const close = (spacings[Math.floor(spacings.length / 20)] ?? 0) * SECONDS[unit]
  const middle = (spacings[Math.floor(spacings.length / 2)] ?? 0) * SECONDS[unit]
  return close >= CLOSEST_SECONDS && middle <= LONGEST_MEDIAN_SECONDS
}

function numberOf(cell: string | undefined): number {
  return cell === undefined || cell === '' ? Number.NaN : Number(cell.replace(',', '.'))
}

function mostly(cells: readonly string[], pattern: RegExp): boolean {
  return cells.length > 0 && cells.filter((cell) => pattern.test(cell)).length >= cells.length * 0.9
}
