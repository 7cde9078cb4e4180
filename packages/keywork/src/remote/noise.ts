/** @module The quiet of a recording: its constant part and its noise power near a stretch of time. */

import { type LevelMap, POWER_OF_LEVEL } from './level-map.ts'

/** Quiet within this of a stretch is what it stands against. */
const NEAR_SECONDS = 0.15
const LEAST_FRAMES = 8

/** Frames without a signal, and what is in them. Powers in the source's scale. */
export interface Quiet {
  /** 1 for a quiet frame. */
  readonly frames: Uint8Array
  /** Constant part (a cheap receiver's own): mean I and Q. */
  readonly offsetI: number
  readonly offsetQ: number
  /** Noise power over all quiet frames; null when there are too few. */
  readonly power: number | null
  /** Noise power judged from the bins' floors: needs no quiet frame. */
  readonly floorPower: number
}

/** Finds the quiet frames: inactive, as are their neighbours. */
export function findQuiet(map: LevelMap, active: Uint8Array): Quiet {
  const frames = new Uint8Array(map.frames)
  let count = 0
  let sumI = 0
  let sumQ = 0
  for (let frame = 0; frame < map.frames; frame += 1) {
    if (active[frame] === 1 || active[frame - 1] === 1 || active[frame + 1] === 1) continue
    frames[frame] = 1
    count += 1
    sumI += map.frameI[frame] as number
    sumQ += map.frameQ[frame] as number
  }
  const offsetI = count < LEAST_FRAMES ? 0 : sumI / count
  const offsetQ = count < LEAST_FRAMES ? 0 : sumQ / count
  const quiet = { frames, offsetI, offsetQ, power: null, floorPower: floorPower(map) }
  return { ...quiet, power: noiseBetween(map, quiet, 0, map.frames) }
}

/** Noise power near the samples from `from` to `to`; the whole recording's where there is no quiet near. */
export function noiseNear(
  map: LevelMap,
  quiet: Quiet,
  sampleRateHz: number,
  from: number,
  to: number,
): number | null {
  const reach = NEAR_SECONDS * sampleRateHz
  const first = frameAt(map, from - reach)
  const end = frameAt(map, to + reach) + 1
  return noiseBetween(map, quiet, first, Math.min(end, map.frames)) ?? quiet.power
}

function noiseBetween(map: LevelMap, quiet: Quiet, first: number, end: number): number | null {
  const offset = quiet.offsetI ** 2 + quiet.offsetQ ** 2
  let sum = 0
  let count = 0
  for (let frame = first; frame < end; frame += 1) {
    if (quiet.frames[frame] !== 1) continue
    sum += map.framePower[frame] as number
    count += 1
  }
  return count < LEAST_FRAMES ? null : Math.max(1e-12, sum / count - offset)
}

/** Index of the frame that holds a sample, or the nearest one. */
export function frameAt(map: LevelMap, sample: number): number {
  let low = 0
  let high = map.frames
  while (low < high) {
    const middle = (low + high) >> 1
    if ((map.frameStart[middle] as number) + map.bins <= sample) low = middle + 1
    else high = middle
  }
  return Math.min(low, Math.max(0, map.frames - 1))
}

/** Sum over the bins; the window counts each bin's noise one and a half times. */
function floorPower(map: LevelMap): number {
  let sum = 0
  for (const level of map.binFloor) sum += POWER_OF_LEVEL[level] as number
  return Math.max(1e-12, sum / 1.5)
}
