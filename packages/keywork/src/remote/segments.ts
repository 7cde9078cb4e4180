/** @module Stretches of time with activity, and the lobes of the spectrum that are up in each. */

import { type LevelMap, levelSteps, POWER_OF_LEVEL } from './level-map.ts'

/** Activity closer together than this is one stretch. */
const JOIN_SECONDS = 0.03
/** A frame with a single active cell counts only if that cell is this much clearer. */
const LONE_CELL = levelSteps(4)
const LEAST_ACTIVE_FRAMES = 2
/** Lobes weaker than the strongest of their stretch by more than this are left out. */
const LOBE_RANGE = 10 ** (-25 / 10)
/** A lobe's width is taken where it has fallen by this much. */
const LOBE_EDGE = 10 ** (-12 / 10)
const MOST_LOBES = 12
/** While a lobe is up, its frames lie within this of its usual level. */
const LOBE_UP = levelSteps(15)

/** Frames from `first` up to, not including, `end`. */
export interface Stretch {
  readonly first: number
  readonly end: number
}

/** A peak of a stretch's spectrum. Bins count from the lowest frequency: centre frequency is `bins / 2`. */
export interface Lobe {
  readonly peak: number
  readonly low: number
  readonly high: number
  /** Sum of power over active frames. */
  readonly energy: number
  /** Usual level of its strong frames. */
  readonly level: number
  readonly first: number
  readonly end: number
}

/** Which frames hold a signal: 1 or 0 each. */
export function activeFrames(map: LevelMap): Uint8Array {
  const { bins, frames, levels, binThreshold, frameThreshold } = map
  const active = new Uint8Array(frames)
  for (let frame = 0; frame < frames; frame += 1) {
    const least = frameThreshold[frame] as number
    const from = frame * bins
    let cells = 0
    let clear = false
    for (let bin = 0; bin < bins; bin += 1) {
      const level = levels[from + bin] as number
      if (level < least) continue
      const threshold = Math.max(least, binThreshold[bin] as number)
      if (level < threshold) continue
      cells += 1
      if (level >= threshold + LONE_CELL) clear = true
    }
    if (clear || cells >= 2) active[frame] = 1
  }
  return active
}

/** Joins active frames to stretches. */
export function findStretches(map: LevelMap, active: Uint8Array, sampleRateHz: number): readonly Stretch[] {
  const found: Stretch[] = []
  const gap = JOIN_SECONDS * sampleRateHz + map.bins
  let first = -1
  let last = -1
  let count = 0
  const close = (): void => {
    if (count >= LEAST_ACTIVE_FRAMES) found.push({ first, end: last + 1 })
    count = 0
    first = -1
  }
  for (let frame = 0; frame < map.frames; frame += 1) {
    if (active[frame] !== 1) continue
    if (first >= 0 && (map.frameStart[frame] as number) - (map.frameStart[last] as number) > gap) close()
    if (first < 0) first = frame
    last = frame
    count += 1
  }
  if (first >= 0) close()
  return found
}

/** Lobes of one stretch, strongest first. */
export function findLobes(map: LevelMap, active: Uint8Array, stretch: Stretch): readonly Lobe[] {
  const energy = stretchSpectrum(map, active, stretch)
  const bins = map.bins
  const smooth = energy.map(
    (value, at) => (2 * value + (energy[at - 1] ?? value) + (energy[at + 1] ?? value)) / 4,
  )
  const strongest = smooth.reduce((most, value) => Math.max(most, value), 0)
  if (strongest <= 0) return []
  const peaks: number[] = []
  for (let at = 0; at < bins; at += 1) {
    const value = smooth[at] as number
    if (value < strongest * LOBE_RANGE) continue
    if (value >= (smooth[at - 1] ?? 0) && value > (smooth[at + 1] ?? 0)) peaks.push(at)
  }
  peaks.sort((a, b) => (smooth[b] as number) - (smooth[a] as number))
  const lobes: Lobe[] = []
  for (const peak of peaks) {
    if (lobes.length === MOST_LOBES) break
    if (lobes.some((lobe) => peak >= lobe.low && peak <= lobe.high)) continue
    lobes.push(measureLobe(map, stretch, smooth, peak))
  }
  return lobes
}

/** Power per bin summed over the cells of a stretch that are up, lowest frequency first. */
function stretchSpectrum(map: LevelMap, active: Uint8Array, stretch: Stretch): Float64Array {
  const { bins, levels, binThreshold, frameThreshold } = map
  const energy = new Float64Array(bins)
  const half = bins / 2
  for (let frame = stretch.first; frame < stretch.end; frame += 1) {
    if (active[frame] !== 1) continue
    const least = frameThreshold[frame] as number
    const from = frame * bins
    for (let bin = 0; bin < bins; bin += 1) {
      const level = levels[from + bin] as number
      if (level < least || level < (binThreshold[bin] as number)) continue
      const at = bin < half ? bin + half : bin - half
      energy[at] = (energy[at] as number) + (POWER_OF_LEVEL[level] as number)
    }
  }
  return energy
}

function measureLobe(map: LevelMap, stretch: Stretch, smooth: Float64Array, peak: number): Lobe {
  const top = smooth[peak] as number
  const edge = (step: 1 | -1): number => {
    let at = peak
    for (let next = peak + step; next >= 0 && next < smooth.length; next += step) {
      if ((smooth[next] as number) < top * LOBE_EDGE) break
      at = next
    }
    return at
  }
  const track = lobeTrack(map, stretch, peak)
  const sorted = track.filter((level) => level > 0).sort()
  const level = sorted[Math.floor(0.9 * sorted.length)] ?? 0
  const up = Math.max(1, level - LOBE_UP)
  // A lone frame far from the rest is noise.
  const holds = (at: number, step: 1 | -1): boolean =>
    [1, 2, 3].some((away) => (track[at + step * away] ?? 0) >= up)
  let first = track.findIndex((value, at) => value >= up && holds(at, 1))
  let end = track.findLastIndex((value, at) => value >= up && holds(at, -1)) + 1
  if (first < 0 || end <= first) {
    first = 0
    end = track.length
  }
  return {
    peak,
    low: edge(-1),
    high: edge(1),
    energy: top,
    level,
    first: stretch.first + first,
    end: stretch.first + end,
  }
}

/** Per frame of the stretch: the highest active level within one bin of the peak, 0 when none is up. */
function lobeTrack(map: LevelMap, stretch: Stretch, peak: number): Uint8Array {
  const { bins, levels, binThreshold, frameThreshold } = map
  const track = new Uint8Array(stretch.end - stretch.first)
  for (let frame = stretch.first; frame < stretch.end; frame += 1) {
    const least = frameThreshold[frame] as number
    let most = 0
    for (let near = peak - 1; near <= peak + 1; near += 1) {
      const bin = (near + bins / 2) % bins
      if (near < 0 || near >= bins) continue
      const level = levels[frame * bins + bin] as number
      if (level > most && level >= least && level >= (binThreshold[bin] as number)) most = level
    }
    track[frame - stretch.first] = most
  }
  return track
}
