/** @module The lines and areas of the pictures, in the units of their view box. Nothing here knows of React. */

import type { OutlinePicture, PulsePicture, SpectrumPicture, WaterfallPicture } from '@shearline/keywork'

/** A view box that is stretched to the width there is. */
export const wide = 1000
export const high = 100

/** A range of frequencies, hertz, from the centre of the original's recording. */
export interface Window {
  readonly lowHz: number
  readonly highHz: number
}

/** What the window of two recordings is made from. `shiftHz`: its centre less the original's. */
export interface Placed {
  readonly sampleRateHz: number
  readonly shiftHz: number
  readonly carrierOffsetHz: number
  readonly widthHz: number
}

const leastAroundHz = 60_000

/** The range that shows every carrier with room around, never more than was recorded. */
function windowOf(recordings: readonly Placed[]): Window {
  const around = Math.max(leastAroundHz, ...recordings.map(({ widthHz }) => 1.5 * widthHz))
  const ends = recordings.map(({ sampleRateHz, shiftHz, carrierOffsetHz }) => ({
    low: Math.max(shiftHz - sampleRateHz / 2, shiftHz + carrierOffsetHz - around),
    high: Math.min(shiftHz + sampleRateHz / 2, shiftHz + carrierOffsetHz + around),
  }))
  return { lowHz: Math.min(...ends.map(({ low }) => low)), highHz: Math.max(...ends.map(({ high }) => high)) }
}

/**
 * The range of each recording: one for both, so that they can be laid beside each other, unless what they recorded lies
 * apart. Two bands on one scale would leave of each remote no more than a stroke at the edge.
 */
export function windowsOf(recordings: readonly Placed[]): readonly Window[] {
  const lowest = Math.max(...recordings.map(({ shiftHz, sampleRateHz }) => shiftHz - sampleRateHz / 2))
  const highest = Math.min(...recordings.map(({ shiftHz, sampleRateHz }) => shiftHz + sampleRateHz / 2))
  if (lowest >= highest) return recordings.map((one) => windowOf([one]))
  const shared = windowOf(recordings)
  return recordings.map(() => shared)
}

/** Place of a frequency across the picture. */
export function across(hertz: number, window: Window): number {
  return (wide * (hertz - window.lowHz)) / (window.highHz - window.lowHz)
}

const lowestSpectrumDb = -50

/** The spectrum while the remote sends, and while it is silent, as lines. */
export function spectrumLines(
  { frequencyHz, burstDb, quietDb }: SpectrumPicture,
  shiftHz: number,
  window: Window,
): { readonly burst: string; readonly quiet: string } {
  const line = (levels: readonly number[]): string => {
    const points = levels.flatMap((db, at) => {
      const x = across((frequencyHz[at] ?? 0) + shiftHz, window)
      return x < -wide || x > 2 * wide ? [] : [`${round(x)} ${round(down(db, lowestSpectrumDb))}`]
    })
    return points.length === 0 ? '' : `M${points.join('L')}`
  }
  return { burst: line(burstDb), quiet: line(quietDb) }
}

const lowestOutlineDb = -40

/** The level of one burst over time; bursts drawn with the same `leadSeconds` and `seconds` begin at the same place. */
export function outlineArea(outline: OutlinePicture, leadSeconds: number, seconds: number): string {
  const { secondsPerPoint, levelsDb } = outline
  const points = levelsDb.map((db, at) => {
    const time = at * secondsPerPoint - outline.leadSeconds + leadSeconds
    return `${round((wide * time) / seconds)} ${round(down(db, lowestOutlineDb))}`
  })
  const first = round((wide * (leadSeconds - outline.leadSeconds)) / seconds)
  const last = round(
    (wide * (levelsDb.length * secondsPerPoint - outline.leadSeconds + leadSeconds)) / seconds,
  )
  return `M${first} ${high}L${points.join('L')}L${last} ${high}Z`
}

/** The mean level of many pulses over time; pulses drawn with the same `leadUs` and `us` rise at the same place. */
export function pulseLine(pulse: PulsePicture, leadUs: number, us: number): string {
  const points = pulse.levels.map((level, at) => {
    const time = at * pulse.usPerPoint - pulse.leadUs + leadUs
    return `${round((wide * time) / us)} ${round(high - 4 - (high - 10) * level)}`
  })
  return `M${points.join('L')}`
}

/** Cells of a waterfall that are darker than a step, as one path a step: lighter ones first. */
export interface Shade {
  readonly opacity: number
  readonly d: string
}

/** Where each shade begins, between the usual level of the recording (its noise) and its strongest. */
const shadeSteps = [0.12, 0.28, 0.44, 0.6, 0.76, 0.92]
const mostColumns = 120
const mostRows = 64

/** A waterfall as few paths: time to the right, frequency upwards; each cell is the peak of those it is made from. */
export function waterfallShades(
  picture: WaterfallPicture,
  shiftHz: number,
  window: Window,
): readonly Shade[] {
  const columns = Math.min(mostColumns, picture.columns)
  const rows = mostRows
  const cells = new Uint8Array(columns * rows)
  const rowHz = (picture.highHz - picture.lowHz) / picture.rows
  for (let row = 0; row < picture.rows; row += 1) {
    const hertz = picture.lowHz + rowHz * row + shiftHz
    // A coarse row may cover several rows of the picture.
    const from = Math.max(0, Math.floor((rows * (hertz - window.lowHz)) / (window.highHz - window.lowHz)))
    const to = Math.min(
      rows,
      Math.ceil((rows * (hertz + rowHz - window.lowHz)) / (window.highHz - window.lowHz)),
    )
    for (let column = 0; column < picture.columns; column += 1) {
      const level = picture.levels[column * picture.rows + row] ?? 0
      const at = Math.floor((column * columns) / picture.columns)
      for (let into = from; into < to; into += 1)
        if (level > (cells[at * rows + into] ?? 0)) cells[at * rows + into] = level
    }
  }
  const usual = cells.toSorted()[cells.length >> 1] ?? 0
  const level = (step: number): number => usual + step * (255 - usual)
  return shadeSteps.map((step, index) => ({
    opacity: (index + 1) / shadeSteps.length,
    d: runsAbove(cells, columns, rows, level(step), level(shadeSteps[index + 1] ?? 2)),
  }))
}

function runsAbove(cells: Uint8Array, columns: number, rows: number, least: number, below: number): string {
  const [width, height] = [wide / columns, high / rows]
  const inside = (column: number, row: number): boolean => {
    const level = cells[column * rows + row] ?? 0
    return level >= least && level < below
  }
  let d = ''
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1) {
      if (!inside(column, row)) continue
      const start = column
      while (column + 1 < columns && inside(column + 1, row)) column += 1
      const y = round(high - (row + 1) * height)
      d += `M${round(start * width)} ${y}H${round((column + 1) * width)}V${round(y + height)}H${round(start * width)}Z`
    }
  return d
}

/** From the top: 0 dB a little below it, `lowest` at the ground. */
function down(db: number, lowest: number): number {
  return 6 + (high - 6) * Math.min(1, db / lowest)
}

function round(value: number): number {
  return Math.round(10 * value) / 10
}
