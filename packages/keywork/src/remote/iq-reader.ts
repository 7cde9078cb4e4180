/** @module Takes a recording's bytes as they come and keeps its samples, the liveliest parts when there are many. */

import {
  bytesPerSample,
  type RawValues,
  SAMPLE_LAYOUTS,
  type SampleFormat,
  viewValues,
} from './sample-format.ts'

/** Samples in one block: a multiple of every transform length used on it. */
export const BLOCK_SAMPLES = 65_536

/** Kept samples by default: 8 seconds at 4 MS/s, two minutes at 250 kS/s. */
export const KEPT_SAMPLES = 32_000_000

/** Consecutive samples as they were stored. Only the last block is shorter than `BLOCK_SAMPLES`. */
export interface IqBlock {
  readonly startSample: number
  readonly samples: number
  readonly values: RawValues
  /** Highest mean square of 64 consecutive samples, in squared full scale: what decides which block goes first. */
  readonly peakPower: number
}

/** The samples of one recording. */
export interface IqSamples {
  readonly format: SampleFormat
  /** All samples that came in, kept or not. */
  readonly samples: number
  readonly droppedSamples: number
  /** Bytes at the end that make no whole sample. */
  readonly leftoverBytes: number
  /** Values that were no number (cf32 only), read as zero. */
  readonly notNumbers: number
  /** In order of time. */
  readonly blocks: readonly IqBlock[]
}

/**
 * A streaming reader: `push` chunks cut at any byte, then `finish`. Memory stays bounded: beyond `keepSamples` the
 * quietest block goes first, so that a press anywhere in a long recording is kept. Chunks may be reused after `push`.
 */
export class IqReader {
  readonly #format: SampleFormat
  readonly #keepSamples: number
  readonly #bytesPerSample: number
  #blocks: IqBlock[] = []
  #bytes: Uint8Array<ArrayBuffer>
  #filled = 0
  #skip: number
  #samples = 0
  #kept = 0
  #notNumbers = 0

  /** `headerBytes` are skipped first (SigMF `core:header_bytes`). */
  constructor(format: SampleFormat, options: { keepSamples?: number; headerBytes?: number } = {}) {
    this.#format = format
    this.#keepSamples = Math.max(BLOCK_SAMPLES, options.keepSamples ?? KEPT_SAMPLES)
    this.#bytesPerSample = bytesPerSample(format)
    this.#bytes = new Uint8Array(BLOCK_SAMPLES * this.#bytesPerSample)
    this.#skip = options.headerBytes ?? 0
  }

  /** Takes the next bytes of the recording. */
  push(chunk: Uint8Array): void {
    let at = Math.min(this.#skip, chunk.length)
    this.#skip -= at
    while (at < chunk.length) {
      const take = Math.min(chunk.length - at, this.#bytes.length - this.#filled)
      this.#bytes.set(chunk.subarray(at, at + take), this.#filled)
      this.#filled += take
      at += take
      if (this.#filled === this.#bytes.length) this.#close()
    }
  }

  /** Ends the recording. The reader is empty afterwards. */
  finish(): IqSamples {
    const leftoverBytes = this.#filled % this.#bytesPerSample
    this.#filled -= leftoverBytes
    if (this.#filled > 0) this.#close()
    const done: IqSamples = {
      format: this.#format,
      samples: this.#samples,
      droppedSamples: this.#samples - this.#kept,
      leftoverBytes,
      notNumbers: this.#notNumbers,
      blocks: this.#blocks,
    }
    this.#blocks = []
    this.#filled = 0
    this.#samples = 0
    this.#kept = 0
    this.#notNumbers = 0
    return done
  }

  #close(): void {
    const samples = this.#filled / this.#bytesPerSample
    const full = this.#filled === this.#bytes.length
    const values = viewValues(full ? this.#bytes : this.#bytes.slice(0, this.#filled), this.#format)
    this.#notNumbers += values instanceof Float32Array ? zeroNotNumbers(values) : 0
    const peakPower = peakPowerOf(values, this.#format)
    this.#blocks.push({ startSample: this.#samples, samples, values, peakPower })
    this.#samples += samples
    this.#kept += samples
    this.#filled = 0
    if (full) this.#bytes = new Uint8Array(BLOCK_SAMPLES * this.#bytesPerSample)
    while (this.#kept > this.#keepSamples) this.#dropQuietest()
  }

  #dropQuietest(): void {
    let quietest = 0
    for (const [index, block] of this.#blocks.entries()) {
      if (block.peakPower < (this.#blocks[quietest]?.peakPower ?? Infinity)) quietest = index
    }
    this.#kept -= this.#blocks[quietest]?.samples ?? 0
    this.#blocks.splice(quietest, 1)
  }
}

/** Largest magnitude that is still squared safely in 32-bit floats over a block. */
const LARGEST = 1e15

function zeroNotNumbers(values: Float32Array): number {
  let found = 0
  for (let at = 0; at < values.length; at += 1) {
    const value = values[at] as number
    if (value <= LARGEST && value >= -LARGEST) continue
    values[at] = 0
    found += 1
  }
  return found
}

function peakPowerOf(values: RawValues, format: SampleFormat): number {
  const { zero, fullScale } = SAMPLE_LAYOUTS[format]
  let peak = 0
  for (let from = 0; from < values.length; from += 128) {
    const to = Math.min(values.length, from + 128)
    let sum = 0
    for (let at = from; at < to; at += 1) {
      const value = (values[at] as number) - zero
      sum += value * value
    }
    if (sum > peak * (to - from)) peak = sum / (to - from)
  }
  return (2 * peak) / (fullScale * fullScale)
}
