/** @module Levels over time and frequency: one transform per frame, one byte per cell, and each cell's noise floor. */

import { Fft } from './fft.ts'
import type { SampleSource } from './sample-source.ts'

/**
 * A level is a byte in eighths of a doubling of power (0.38 dB). It is the top of the number's binary form: exponent
 * and three bits of fraction, so that no logarithm is needed. 0 stands for 87 dB below the strongest part or less.
 */
const LEVEL_ZERO = 784
const LEVELS_PER_DB: number = 8 / (10 * Math.log10(2))

/** Mean power that a level stands for. */
export const POWER_OF_LEVEL: Float64Array = Float64Array.from({ length: 256 }, (_, level) => {
  const code = level + LEVEL_ZERO
  return 2 ** ((code >> 3) - 127) * (1 + ((code & 7) + 0.5) / 8)
})

/** Decibels as level steps, rounded. */
export function levelSteps(db: number): number {
  return Math.round(db * LEVELS_PER_DB)
}

/** Noise in one cell is exponentially distributed: a low quantile q lies -ln(1-q) of the mean. */
const FLOOR_QUANTILE = 0.1
const MIDDLE_QUANTILE = 0.5
const FRAME_QUANTILE = 0.25
const FLOOR_TO_MEAN = levelSteps(-10 * Math.log10(-Math.log(1 - FLOOR_QUANTILE)))
const MIDDLE_TO_MEAN = levelSteps(-10 * Math.log10(-Math.log(1 - MIDDLE_QUANTILE)))
const FRAME_TO_MEAN = levelSteps(-10 * Math.log10(-Math.log(1 - FRAME_QUANTILE)))

/** A cell is active this far above its bin's floor over time (a false cell in 10^8)... */
const ABOVE_FLOOR = levelSteps(13)
/** ... and this far above the lower bins of its own frame, so that noise the receiver turned up is not a signal. */
const ABOVE_FRAME = levelSteps(10)

/** Bins are about this wide: narrow enough for a weak sender, frames short enough for a burst of a millisecond. */
const BIN_HZ = 4000

/** A steady line has no such spread; a cell in its bin is active this far above it. */
const ABOVE_LINE = levelSteps(10)
const OFFSET_SPOTS = 256

/** Samples converted at a time: few enough to stay in the processor's nearest memory. */
const READ_SAMPLES = 2048

/** Frames used for the floor; more add nothing. */
const FLOOR_FRAMES = 4096

/** Levels of all kept frames. Bins are in the transform's order: frequency zero first, negative ones last. */
export interface LevelMap {
  readonly bins: number
  readonly binHz: number
  /** A frame is `bins` samples long; frames follow each other unless blocks in between were not kept. */
  readonly frames: number
  readonly frameStart: Float64Array
  /** `frames` rows of `bins` levels. */
  readonly levels: Uint8Array
  /** Per frame: the level that a cell must reach besides its bin's. */
  readonly frameThreshold: Uint8Array
  /** Per bin. */
  readonly binThreshold: Uint8Array
  readonly binFloor: Uint8Array
  /** Mean square and sums per frame in the source's scale. */
  readonly framePower: Float32Array
  readonly frameI: Float32Array
  readonly frameQ: Float32Array
}

/** Transform length for a sample rate: a power of two from 16 to 4096 with bins of about 4 kHz. */
function binsFor(sampleRateHz: number): number {
  return 2 ** Math.min(12, Math.max(4, Math.round(Math.log2(sampleRateHz / BIN_HZ))))
}

/** Measures all kept frames of a recording. */
export function mapLevels(source: SampleSource, sampleRateHz: number): LevelMap {
  const bins = binsFor(sampleRateHz)
  let frames = 0
  for (const block of source.blocks) frames += Math.floor(block.samples / bins)
  const map = {
    bins,
    binHz: sampleRateHz / bins,
    frames,
    frameStart: new Float64Array(frames),
    levels: new Uint8Array(frames * bins),
    frameThreshold: new Uint8Array(frames),
    binThreshold: new Uint8Array(bins),
    binFloor: new Uint8Array(bins),
    framePower: new Float32Array(frames),
    frameI: new Float32Array(frames),
    frameQ: new Float32Array(frames),
  }
  const fft = new Fft(bins)
  const window = hann(bins)
  const framesRead = Math.max(1, READ_SAMPLES / bins)
  const raw = new Float32Array(2 * framesRead * bins)
  const time = new Float32Array(2 * bins)
  const spectrum = new Float64Array(2 * bins)
  const power = new Float32Array(bins)
  source.settleOffset(bins, OFFSET_SPOTS)
  let frame = 0
  for (const block of source.blocks) {
    const inBlock = Math.floor(block.samples / bins)
    for (let at = 0; at < inBlock; at += 1, frame += 1) {
      const start = block.startSample + at * bins
      const read = at % framesRead
      if (read === 0) source.read(start, Math.min(framesRead, inBlock - at) * bins, raw)
      map.frameStart[frame] = start
      windowed(raw, 2 * read * bins, window, time, map, frame)
      fft.forward(time, spectrum)
      storeLevels(spectrum, power, map.levels, frame * bins)
    }
  }
  for (let at = 0; at < frames; at += 1) {
    const quantile = lowQuantile(map.levels, at * bins, bins, FRAME_QUANTILE)
    map.frameThreshold[at] = Math.min(255, quantile + FRAME_TO_MEAN + ABOVE_FRAME)
  }
  floorOfBins(map)
  return map
}

/** Von Hann's window, scaled so that a steady tone of amplitude one reads a power of one. */
function hann(length: number): Float32Array {
  return Float32Array.from(
    { length },
    (_, at) => (1 - Math.cos((2 * Math.PI * (at + 0.5)) / length)) / length,
  )
}

type Sums = Pick<LevelMap, 'framePower' | 'frameI' | 'frameQ'>

function windowed(
  raw: Float32Array,
  from: number,
  window: Float32Array,
  time: Float32Array,
  sums: Sums,
  frame: number,
): void {
  const length = window.length
  let sumI = 0
  let sumQ = 0
  let square = 0
  for (let at = 0; at < length; at += 1) {
    const i = raw[from + 2 * at] as number
    const q = raw[from + 2 * at + 1] as number
    const w = window[at] as number
    sumI += i
    sumQ += q
    square += i * i + q * q
    time[2 * at] = i * w
    time[2 * at + 1] = q * w
  }
  sums.frameI[frame] = sumI / length
  sums.frameQ[frame] = sumQ / length
  sums.framePower[frame] = square / length
}

function storeLevels(spectrum: Float64Array, power: Float32Array, levels: Uint8Array, to: number): void {
  const bins = power.length
  const bits = new Uint32Array(power.buffer, 0, bins)
  for (let bin = 0; bin < bins; bin += 1) {
    const re = spectrum[2 * bin] as number
    const im = spectrum[2 * bin + 1] as number
    power[bin] = re * re + im * im
  }
  for (let bin = 0; bin < bins; bin += 1) {
    levels[to + bin] = Math.min(255, Math.max(0, ((bits[bin] as number) >>> 20) - LEVEL_ZERO))
  }
}

const counts = new Uint32Array(256)

function lowQuantile(levels: Uint8Array, from: number, length: number, share: number): number {
  counts.fill(0)
  let least = 255
  for (let at = from; at < from + length; at += 1) {
    const level = levels[at] as number
    counts[level] = (counts[level] as number) + 1
    if (level < least) least = level
  }
  return least + quantileOfCounts(counts, least, share * length)
}

function quantileOfCounts(histogram: Uint32Array, from: number, wanted: number): number {
  let seen = 0
  for (let level = 0; level < 256; level += 1) {
    seen += histogram[from + level] as number
    if (seen > wanted) return level
  }
  return 255
}

function floorOfBins(map: LevelMap): void {
  const { bins, frames, levels } = map
  const step = Math.max(1, Math.ceil(frames / FLOOR_FRAMES))
  const histogram = new Uint32Array(256 * bins)
  let used = 0
  for (let frame = 0; frame < frames; frame += step, used += 1) {
    for (let bin = 0; bin < bins; bin += 1) {
      const at = 256 * bin + (levels[frame * bins + bin] as number)
      histogram[at] = (histogram[at] as number) + 1
    }
  }
  for (let bin = 0; bin < bins; bin += 1) {
    const low = quantileOfCounts(histogram, 256 * bin, FLOOR_QUANTILE * used)
    const middle = quantileOfCounts(histogram, 256 * bin, MIDDLE_QUANTILE * used)
    const floor = Math.min(low + FLOOR_TO_MEAN, middle + MIDDLE_TO_MEAN)
    const spread = Math.min(1, (middle - low) / (FLOOR_TO_MEAN - MIDDLE_TO_MEAN))
    const above = ABOVE_LINE + spread * (MIDDLE_TO_MEAN + ABOVE_FLOOR - ABOVE_LINE)
    map.binFloor[bin] = Math.min(255, floor)
    map.binThreshold[bin] = Math.min(255, low + FLOOR_TO_MEAN + ABOVE_FLOOR, Math.round(middle + above))
  }
}
