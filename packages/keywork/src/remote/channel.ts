/** @module One sender's channel: mixed to zero frequency, filtered, and at a rate that fits its width. */

import type { SampleSource } from './sample-source.ts'

/** Samples converted at a time. */
const CHUNK = 2048

/** A stretch of one channel. */
export interface Channel {
  /** I, Q, I, Q ... */
  readonly z: Float32Array
  readonly samples: number
  readonly rateHz: number
  /** Frequency that is zero here, from the recording's centre. */
  readonly offsetHz: number
  /** Sample of the recording at the middle of the first filtered value, and recording samples per value. */
  readonly startSample: number
  readonly step: number
  /** Length of each of the three moving averages, in recording samples. */
  readonly boxSamples: number
}

/** Three moving averages fall by 3 dB at this share of (sample rate / length). */
const HALF_POWER = 0.2566

/** Largest moving-average length that still passes `halfWidthHz` with at most 3 dB loss. */
function boxLength(sampleRateHz: number, halfWidthHz: number): number {
  return Math.max(1, Math.floor((HALF_POWER * sampleRateHz) / halfWidthHz))
}

/** Power gain of a channel's filter at a frequency from its middle. */
export function channelGain(channel: Channel, frequencyHz: number): number {
  const length = channel.boxSamples
  const turn = (Math.PI * frequencyHz) / (channel.rateHz * channel.step)
  if (length === 1 || Math.abs(turn) < 1e-9) return 1
  return (Math.sin(length * turn) / (length * Math.sin(turn))) ** 6
}

/** Noise power that a channel's filter passes, as a share of the noise in the recorded band. */
export function noiseShare(channel: Channel): number {
  const kernel = boxKernel(channel.boxSamples)
  return kernel.reduce((sum, tap) => sum + tap * tap, 0)
}

function boxKernel(length: number): number[] {
  let kernel = [1]
  for (let pass = 0; pass < 3; pass += 1) {
    const next = new Array<number>(kernel.length + length - 1).fill(0)
    for (const [at, tap] of kernel.entries())
      for (let k = 0; k < length; k += 1) next[at + k] = (next[at + k] as number) + tap / length
    kernel = next
  }
  return kernel
}

/** Takes `count` samples from `start` through a channel at `offsetHz` that passes `halfWidthHz` to either side. */
export function openChannel(
  source: SampleSource,
  sampleRateHz: number,
  start: number,
  count: number,
  offsetHz: number,
  halfWidthHz: number,
): Channel {
  const boxSamples = boxLength(sampleRateHz, halfWidthHz)
  const step = Math.max(1, boxSamples >> 1)
  const delay = (3 * (boxSamples - 1)) / 2
  const samples = Math.max(0, Math.floor(count / step))
  const z = new Float32Array(2 * samples)
  const raw = new Float32Array(2 * CHUNK)
  const boxes = [new Box(boxSamples), new Box(boxSamples), new Box(boxSamples)]
  const mixer = new Mixer((-2 * Math.PI * offsetHz) / sampleRateHz)
  // Reading starts early by the filter's delay and length, so that the first value is already settled.
  const lead = 3 * boxSamples
  const from = start - lead + Math.ceil(delay)
  let skip = lead - 1
  let written = 0
  for (let done = 0; written < samples; done += CHUNK) {
    source.read(from + done, CHUNK, raw)
    mixer.mix(raw)
    if (boxSamples > 1) for (const box of boxes) box.average(raw)
    for (; skip < CHUNK && written < samples; skip += step, written += 1) {
      z[2 * written] = raw[2 * skip] as number
      z[2 * written + 1] = raw[2 * skip + 1] as number
    }
    skip -= CHUNK
  }
  return {
    z,
    samples,
    rateHz: sampleRateHz / step,
    offsetHz,
    startSample: from + lead - 1 - delay,
    step,
    boxSamples,
  }
}

/** Turns samples by a steady rotation. */
class Mixer {
  readonly #stepCos: number
  readonly #stepSin: number
  #cos = 1
  #sin = 0

  constructor(radiansPerSample: number) {
    this.#stepCos = Math.cos(radiansPerSample)
    this.#stepSin = Math.sin(radiansPerSample)
  }

  mix(values: Float32Array): void {
    const stepCos = this.#stepCos
    const stepSin = this.#stepSin
    let cos = this.#cos
    let sin = this.#sin
    for (let at = 0; at < values.length; at += 2) {
      const i = values[at] as number
      const q = values[at + 1] as number
      values[at] = i * cos - q * sin
      values[at + 1] = i * sin + q * cos
      const next = cos * stepCos - sin * stepSin
      sin = cos * stepSin + sin * stepCos
      cos = next
    }
    const size = Math.hypot(cos, sin)
    this.#cos = cos / size
    this.#sin = sin / size
  }
}

/** Moving average over `length` samples, running on from chunk to chunk. */
class Box {
  readonly #past: Float64Array
  readonly #length: number
  #at = 0
  #sumI = 0
  #sumQ = 0

  constructor(length: number) {
    this.#length = length
    this.#past = new Float64Array(2 * length)
  }

  average(values: Float32Array): void {
    const past = this.#past
    const length = 2 * this.#length
    const scale = 1 / this.#length
    let at = this.#at
    let sumI = this.#sumI
    let sumQ = this.#sumQ
    for (let index = 0; index < values.length; index += 2) {
      const i = values[index] as number
      const q = values[index + 1] as number
      sumI += i - (past[at] as number)
      sumQ += q - (past[at + 1] as number)
      past[at] = i
      past[at + 1] = q
      at += 2
      if (at === length) at = 0
      values[index] = sumI * scale
      values[index + 1] = sumQ * scale
    }
    this.#at = at
    this.#sumI = sumI
    this.#sumQ = sumQ
  }
}
