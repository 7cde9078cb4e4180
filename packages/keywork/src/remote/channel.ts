/** @module One sender's channel: mixed to zero frequency, filtered, and at a rate that fits its width. */

import type { SampleSource } from './sample-source.ts'

/** Samples converted at a time, about. */
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

/** Moving averages of so many samples that pass `halfWidthHz` with at most 3 dB loss, as many blocks of a length. */
function boxFor(sampleRateHz: number, halfWidthHz: number): { block: number; blocks: 1 | 2 | 3 } {
  const longest = Math.floor((HALF_POWER * sampleRateHz) / halfWidthHz)
  if (longest < 2) return { block: 1, blocks: 1 }
  return longest === 3 ? { block: 1, blocks: 3 } : { block: longest >> 1, blocks: 2 }
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

/**
 * Takes `count` samples from `start` through a channel at `offsetHz` that passes `halfWidthHz` to either side.
 *
 * The three moving averages are some blocks of `step` samples long each. Averages of one block, three times, are taken
 * at the end of each block only; those of several blocks follow from them. Mixing to zero frequency is in the weights.
 */
export function openChannel(
  source: SampleSource,
  sampleRateHz: number,
  start: number,
  count: number,
  offsetHz: number,
  halfWidthHz: number,
): Channel {
  const { block: step, blocks } = boxFor(sampleRateHz, halfWidthHz)
  const boxSamples = step * blocks
  const samples = Math.max(0, Math.floor(count / step))
  const delay = (3 * (boxSamples - 1)) / 2
  const last = start + Math.ceil(delay) - 1
  const kernel = boxKernel(blocks)
  const early = kernel.length - 1
  const short = mixedBlocks(
    source,
    last - early * step,
    samples + early,
    step,
    (-2 * Math.PI * offsetHz) / sampleRateHz,
  )
  return {
    z: averaged(short, blocks, samples),
    samples,
    rateHz: sampleRateHz / step,
    offsetHz,
    startSample: last - delay,
    step,
    boxSamples,
  }
}

/**
 * One value per block of `step` samples: mixed, averaged three times over a block. The first block ends with the
 * sample `lastOfFirst`.
 */
function mixedBlocks(
  source: SampleSource,
  lastOfFirst: number,
  count: number,
  step: number,
  radiansPerSample: number,
): Float32Array {
  const mixer = new BlockMixer(step, radiansPerSample)
  const out = new Float32Array(2 * count)
  const atOnce = Math.max(1, Math.floor(CHUNK / step))
  const overlap = mixer.taps - step
  const raw = new Float32Array(2 * (atOnce * step + overlap))
  for (let done = 0; done < count; done += atOnce) {
    const some = Math.min(atOnce, count - done)
    source.read(lastOfFirst - mixer.taps + 1 + done * step, some * step + overlap, raw)
    if (step === 1) mixer.mixSingles(raw, out, 2 * done, 2 * (done + some))
    else if (step === 2) mixer.mixPairs(raw, out, 2 * done, 2 * (done + some))
    else mixer.mix(raw, out, 2 * done, 2 * (done + some))
  }
  return out
}

/**
 * Weighs samples (I, Q ...) to one value every `step` samples and turns it by a rotation that goes on from call to
 * call: within a block the rotation is in the weights.
 */
class BlockMixer {
  readonly taps: number
  readonly #step: number
  readonly #weightCos: Float64Array
  readonly #weightSin: Float64Array
  readonly #stepCos: number
  readonly #stepSin: number
  #cos = 1
  #sin = 0

  constructor(step: number, radiansPerSample: number) {
    const weights = boxKernel(step)
    this.taps = weights.length
    this.#step = step
    this.#weightCos = Float64Array.from(weights, (tap, at) => tap * Math.cos(at * radiansPerSample))
    this.#weightSin = Float64Array.from(weights, (tap, at) => tap * Math.sin(at * radiansPerSample))
    this.#stepCos = Math.cos(radiansPerSample * step)
    this.#stepSin = Math.sin(radiansPerSample * step)
  }

  mix(raw: Float32Array, out: Float32Array, begin: number, end: number): void {
    const weightCos = this.#weightCos
    const weightSin = this.#weightSin
    const stepCos = this.#stepCos
    const stepSin = this.#stepSin
    const stride = 2 * this.#step
    let cos = this.#cos
    let sin = this.#sin
    for (let to = begin, from = 0; to < end; to += 2, from += stride) {
      let sumI = 0
      let sumQ = 0
      for (let tap = 0, at = from; tap < weightCos.length; tap += 1, at += 2) {
        const i = raw[at] as number
        const q = raw[at + 1] as number
        const c = weightCos[tap] as number
        const s = weightSin[tap] as number
        sumI += i * c - q * s
        sumQ += i * s + q * c
      }
      out[to] = sumI * cos - sumQ * sin
      out[to + 1] = sumI * sin + sumQ * cos
      const next = cos * stepCos - sin * stepSin
      sin = cos * stepSin + sin * stepCos
      cos = next
    }
    this.#goOn(cos, sin)
  }

  /** The same for blocks of one sample, which have one weight: written out, it takes half as long. */
  mixSingles(raw: Float32Array, out: Float32Array, begin: number, end: number): void {
    const stepCos = this.#stepCos
    const stepSin = this.#stepSin
    let cos = this.#cos
    let sin = this.#sin
    for (let to = begin, at = 0; to < end; to += 2, at += 2) {
      const i = raw[at] as number
      const q = raw[at + 1] as number
      out[to] = i * cos - q * sin
      out[to + 1] = i * sin + q * cos
      const next = cos * stepCos - sin * stepSin
      sin = cos * stepSin + sin * stepCos
      cos = next
    }
    this.#goOn(cos, sin)
  }

  /** The same for blocks of two samples, which are the usual ones: four weights, written out. */
  mixPairs(raw: Float32Array, out: Float32Array, begin: number, end: number): void {
    const [c0 = 0, c1 = 0, c2 = 0, c3 = 0] = this.#weightCos
    const [s0 = 0, s1 = 0, s2 = 0, s3 = 0] = this.#weightSin
    const stepCos = this.#stepCos
    const stepSin = this.#stepSin
    let cos = this.#cos
    let sin = this.#sin
    let i0 = raw[0] as number
    let q0 = raw[1] as number
    let i1 = raw[2] as number
    let q1 = raw[3] as number
    for (let to = begin, at = 4; to < end; to += 2, at += 4) {
      const i2 = raw[at] as number
      const q2 = raw[at + 1] as number
      const i3 = raw[at + 2] as number
      const q3 = raw[at + 3] as number
      const sumI = i0 * c0 - q0 * s0 + (i1 * c1 - q1 * s1) + (i2 * c2 - q2 * s2 + (i3 * c3 - q3 * s3))
      const sumQ = i0 * s0 + q0 * c0 + (i1 * s1 + q1 * c1) + (i2 * s2 + q2 * c2 + (i3 * s3 + q3 * c3))
      out[to] = sumI * cos - sumQ * sin
      out[to + 1] = sumI * sin + sumQ * cos
      const next = cos * stepCos - sin * stepSin
      sin = cos * stepSin + sin * stepCos
      cos = next
      i0 = i2
      q0 = q2
      i1 = i3
      q1 = q3
    }
    this.#goOn(cos, sin)
  }

  #goOn(cos: number, sin: number): void {
    const size = Math.hypot(cos, sin)
    this.#cos = cos / size
    this.#sin = sin / size
  }
}

/** Averages of one block, made into those of `blocks` blocks, three times: `count` values. */
function averaged(values: Float32Array, blocks: 1 | 2 | 3, count: number): Float32Array {
  if (blocks === 1) return values
  const out = new Float32Array(2 * count)
  const all = 1 / blocks ** 3
  for (let at = 0; at < out.length; at += 1) {
    const v0 = values[at] as number
    const v1 = values[at + 2] as number
    const v2 = values[at + 4] as number
    const v3 = values[at + 6] as number
    if (blocks === 2) {
      out[at] = (v0 + v3 + 3 * (v1 + v2)) * all
      continue
    }
    const v4 = values[at + 8] as number
    const v5 = values[at + 10] as number
    const v6 = values[at + 12] as number
    out[at] = (v0 + v6 + 3 * (v1 + v5) + 6 * (v2 + v4) + 7 * v3) * all
  }
  return out
}
