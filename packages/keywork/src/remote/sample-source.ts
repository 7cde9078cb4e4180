/** @module Random access to a recording's kept samples as floats, scaled to its strongest part. */

import type { IqBlock, IqSamples } from './iq-reader.ts'
import { SAMPLE_LAYOUTS } from './sample-format.ts'

/**
 * Samples as I, Q floats. The strongest 64 samples of the recording have a mean square of one, so that nothing
 * measured depends on the receiver's scale; `fullScaleDb` says what one is in decibels below full scale.
 */
export class SampleSource {
  readonly samples: number
  readonly blocks: readonly IqBlock[]
  readonly fullScaleDb: number
  /** Constant part of a cheap receiver's output, in scaled units; taken off when set. */
  offsetI = 0
  offsetQ = 0
  readonly #zero: number
  readonly #scale: number

  constructor(iq: IqSamples) {
    this.samples = iq.samples
    this.blocks = iq.blocks
    const layout = SAMPLE_LAYOUTS[iq.format]
    let peak = 0
    for (const block of iq.blocks) peak = Math.max(peak, block.peakPower)
    const amplitude = peak > 0 ? Math.sqrt(peak) : 1
    this.#zero = layout.zero
    this.#scale = 1 / (layout.fullScale * amplitude)
    this.fullScaleDb = 20 * Math.log10(amplitude)
  }

  /** Fills `out` with `count` samples from `start`; what is before, behind or was not kept reads as zero. */
  read(start: number, count: number, out: Float32Array): void {
    let filled = 0
    let index = this.#blockAt(start)
    while (filled < count) {
      const block = this.blocks[index]
      const at = start + filled
      if (block === undefined || block.startSample >= start + count) {
        out.fill(0, 2 * filled, 2 * count)
        return
      }
      if (at < block.startSample) {
        out.fill(0, 2 * filled, 2 * (block.startSample - start))
        filled = block.startSample - start
        continue
      }
      const from = at - block.startSample
      const take = Math.min(count - filled, block.samples - from)
      if (take > 0) this.#convert(block, from, take, out, filled)
      filled += Math.max(0, take)
      index += 1
    }
  }

  /**
   * Takes off the constant part that most of the recording has: the median over `spots` short pieces of their means,
   * so that a carrier near zero frequency, which comes and goes, is not taken for it.
   */
  settleOffset(pieceSamples: number, spots: number): void {
    const piece = new Float32Array(2 * pieceSamples)
    const meansI: number[] = []
    const meansQ: number[] = []
    for (const block of this.blocks) {
      const here = Math.max(1, Math.ceil(spots / this.blocks.length))
      for (let spot = 0; spot < here; spot += 1) {
        const room = block.samples - pieceSamples
        if (room < 0) continue
        this.read(block.startSample + Math.floor((room * spot) / here), pieceSamples, piece)
        let sumI = 0
        let sumQ = 0
        for (let at = 0; at < piece.length; at += 2) {
          sumI += piece[at] as number
          sumQ += piece[at + 1] as number
        }
        meansI.push(sumI / pieceSamples)
        meansQ.push(sumQ / pieceSamples)
      }
    }
    this.offsetI += median(meansI)
    this.offsetQ += median(meansQ)
  }

  #convert(block: IqBlock, from: number, take: number, out: Float32Array, to: number): void {
    const values = block.values
    const scale = this.#scale
    const zeroI = this.#zero * scale + this.offsetI
    const zeroQ = this.#zero * scale + this.offsetQ
    for (let at = 2 * from, into = 2 * to, end = 2 * (from + take); at < end; at += 2, into += 2) {
      out[into] = (values[at] as number) * scale - zeroI
      out[into + 1] = (values[at + 1] as number) * scale - zeroQ
    }
  }

  /** Index of the first block that ends behind `sample`. */
  #blockAt(sample: number): number {
    let low = 0
    let high = this.blocks.length
    while (low < high) {
      const middle = (low + high) >> 1
      const block = this.blocks[middle] as IqBlock
      if (block.startSample + block.samples <= sample) low = middle + 1
      else high = middle
    }
    return low
  }
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0
}
