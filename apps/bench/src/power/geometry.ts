/** @module Where things stand in the picture of the supply: volts upwards, minutes to the right. */
import type { Band, PowerLimits } from '@shearline/keywork'

export const width = 300
export const height = 232
export const plot = { left: 34, right: 293, top: 14, bottom: 172 } as const
/** The steps lie in a row below the time axis. */
export const stepRow = { top: 194, height: 26 } as const

/** Volts below the stop line that are still drawn; a battery run flat would squeeze all else together. */
const BELOW_STOP = 0.8
const ABOVE = 0.4

export interface Scale {
  readonly lowVolts: number
  readonly highVolts: number
  readonly minutes: number
  readonly x: (minutes: number) => number
  readonly y: (volts: number) => number
  readonly voltMarks: readonly number[]
  readonly minuteMarks: readonly number[]
}

/** Fits volts and minutes into the plot. Everything below the lowest volts is drawn at the lower edge. */
export function scaleFor(
  limits: PowerLimits,
  bands: readonly Band[],
  readings: readonly { readonly volts: number }[],
  minutes: number,
): Scale {
  const floorOfPicture = limits.stopVolts - BELOW_STOP
  const seen = [
    limits.stopVolts,
    limits.targetVolts,
    ...bands.flatMap((band) => [band.low, band.high]),
    ...readings.map((reading) => reading.volts),
  ]
  const lowVolts = Math.floor(2 * Math.max(floorOfPicture, Math.min(...seen) - 0.2)) / 2
  const highVolts = Math.ceil(2 * (Math.max(...seen) + ABOVE)) / 2
  const span = Math.max(1, minutes)
  const x = (at: number) => plot.left + ((plot.right - plot.left) * Math.min(span, Math.max(0, at))) / span
  const y = (volts: number) =>
    plot.top +
    ((plot.bottom - plot.top) * (highVolts - Math.min(highVolts, Math.max(lowVolts, volts)))) /
      (highVolts - lowVolts)
  const apart = [5, 10, 15, 30, 60, 120, 240, 480].find((each) => span / each <= 6) ?? 960
  return {
    lowVolts,
    highVolts,
    minutes: span,
    x,
    y,
    voltMarks: marks(Math.ceil(lowVolts), highVolts, 1),
    minuteMarks: marks(0, span, apart),
  }
}

function marks(from: number, to: number, apart: number): readonly number[] {
  return Array.from({ length: Math.floor((to - from) / apart) + 1 }, (_, index) => from + index * apart)
}

/** The outline of a band: along its high side and back along its low one. */
export function outline(scale: Scale, curve: readonly ({ readonly minutes: number } & Band)[]): string {
  const there = curve.map((point) => `${scale.x(point.minutes)},${scale.y(point.high)}`)
  const back = curve.toReversed().map((point) => `${scale.x(point.minutes)},${scale.y(point.low)}`)
  return [...there, ...back].join(' ')
}

/** A line through the middles. */
export function middle(scale: Scale, curve: readonly ({ readonly minutes: number } & Band)[]): string {
  return curve.map((point) => `${scale.x(point.minutes)},${scale.y(point.mid)}`).join(' ')
}
