/** @module Volts read during the work. */

/** One reading; minutes from the start of the first step. */
export interface VoltsReading {
  readonly minutes: number
  readonly volts: number
}

/** Where the volts are read: at the posts, or at the diagnostic socket or a control unit, behind the car's wiring. */
export type ReadAt = 'battery' | 'socket'

/** Readings in order of time, the unusable left out, and one middle value for each minute. */
export interface ThinnedReadings {
  readonly usable: readonly VoltsReading[]
  readonly bins: readonly VoltsReading[]
  readonly leftOut: number
}

/** Keeps readings of 1 to 60 V between 0 and `mostMinutes`; readings within a minute tell the same thing once. */
export function thinned(readings: readonly VoltsReading[], mostMinutes: number): ThinnedReadings {
  const usable = readings
    .filter(({ minutes, volts }) => minutes >= 0 && minutes <= mostMinutes && volts >= 1 && volts <= 60)
    .toSorted((left, right) => left.minutes - right.minutes)
  const byMinute = Map.groupBy(usable, ({ minutes }) => Math.floor(minutes))
  const bins = [...byMinute.values()].map((group) => {
    const inOrder = group.toSorted((left, right) => left.volts - right.volts)
    return inOrder[inOrder.length >> 1] ?? { minutes: 0, volts: 0 }
  })
  return { usable, bins, leftOut: readings.length - usable.length }
}

/** Slope of a least-squares line, volts per minute; null with fewer than three readings or no time between them. */
export function trendPerMinute(readings: readonly VoltsReading[]): number | null {
  if (readings.length < 3) return null
  const meanMinutes = readings.reduce((sum, { minutes }) => sum + minutes, 0) / readings.length
  const meanVolts = readings.reduce((sum, { volts }) => sum + volts, 0) / readings.length
  let products = 0
  let squares = 0
  for (const { minutes, volts } of readings) {
    products += (minutes - meanMinutes) * (volts - meanVolts)
    squares += (minutes - meanMinutes) ** 2
  }
  return squares === 0 ? null : products / squares
}
