/**
 * @module Discrete Fourier transform of complex values, lengths that are powers of two.
 *
 * Decimation in time, radix 2 with pairs of stages joined (Cooley and Tukey 1965, Math. Comp. 19:297).
 */

/** Tables for one length. Make one and use it many times. */
export class Fft {
  readonly size: number
  readonly #order: Uint16Array | Uint32Array
  readonly #cos: Float64Array
  readonly #sin: Float64Array

  /** Throws RangeError unless `size` is a power of two from 4 to 4,194,304. */
  constructor(size: number) {
    if (!Number.isInteger(Math.log2(size)) || size < 4 || size > 4_194_304)
      throw new RangeError(`a transform needs a power of two from 4 to 4194304 values, not ${size}`)
    this.size = size
    this.#order = size <= 65_536 ? new Uint16Array(size) : new Uint32Array(size)
    const bits = Math.log2(size)
    for (let at = 0; at < size; at += 1) {
      let turned = 0
      for (let bit = 0; bit < bits; bit += 1) turned |= ((at >> bit) & 1) << (bits - 1 - bit)
      this.#order[at] = turned
    }
    this.#cos = Float64Array.from({ length: size / 2 }, (_, k) => Math.cos((2 * Math.PI * k) / size))
    this.#sin = Float64Array.from({ length: size / 2 }, (_, k) => -Math.sin((2 * Math.PI * k) / size))
  }

  /**
   * X[k] = sum of x[n] exp(-2 pi i k n / size), not scaled. `input` holds I, Q, I, Q ... and stays as it is;
   * `output` (same shape, another array) receives the result, frequency zero first.
   */
  forward(input: Float32Array | Float64Array, output: Float64Array): void {
    const size = this.size
    const order = this.#order
    for (let at = 0; at < size; at += 4) {
      const a = 2 * (order[at] as number)
      const b = 2 * (order[at + 1] as number)
      const c = 2 * (order[at + 2] as number)
      const d = 2 * (order[at + 3] as number)
      const sumRe = (input[a] as number) + (input[b] as number)
      const sumIm = (input[a + 1] as number) + (input[b + 1] as number)
      const difRe = (input[a] as number) - (input[b] as number)
      const difIm = (input[a + 1] as number) - (input[b + 1] as number)
      const sum2Re = (input[c] as number) + (input[d] as number)
      const sum2Im = (input[c + 1] as number) + (input[d + 1] as number)
      const dif2Re = (input[c] as number) - (input[d] as number)
      const dif2Im = (input[c + 1] as number) - (input[d + 1] as number)
      const to = 2 * at
      output[to] = sumRe + sum2Re
      output[to + 1] = sumIm + sum2Im
      output[to + 2] = difRe + dif2Im
      output[to + 3] = difIm - dif2Re
      output[to + 4] = sumRe - sum2Re
      output[to + 5] = sumIm - sum2Im
      output[to + 6] = difRe - dif2Im
      output[to + 7] = difIm + dif2Re
    }
    let half = 4
    for (; half * 2 < size; half *= 4) this.#twoStages(output, half)
    if (half < size) this.#stage(output, half)
  }

  /** Two stages at once: every value is fetched and put back once instead of twice. */
  #twoStages(output: Float64Array, half: number): void {
    const cos = this.#cos
    const sin = this.#sin
    const size = this.size
    const length = 2 * half
    const step = size / (4 * half)
    for (let from = 0; from < size; from += 4 * half) {
      for (let k = 0, turn = 0; k < half; k += 1, turn += step) {
        const a = 2 * (from + k)
        const b = a + length
        const c = b + length
        const d = c + length
        const firstCos = cos[2 * turn] as number
        const firstSin = sin[2 * turn] as number
        const bRe = (output[b] as number) * firstCos - (output[b + 1] as number) * firstSin
        const bIm = (output[b] as number) * firstSin + (output[b + 1] as number) * firstCos
        const dRe = (output[d] as number) * firstCos - (output[d + 1] as number) * firstSin
        const dIm = (output[d] as number) * firstSin + (output[d + 1] as number) * firstCos
        const sumRe = (output[a] as number) + bRe
        const sumIm = (output[a + 1] as number) + bIm
        const difRe = (output[a] as number) - bRe
        const difIm = (output[a + 1] as number) - bIm
        const sum2Re = (output[c] as number) + dRe
        const sum2Im = (output[c + 1] as number) + dIm
        const dif2Re = (output[c] as number) - dRe
        const dif2Im = (output[c + 1] as number) - dIm
        const nextCos = cos[turn] as number
        const nextSin = sin[turn] as number
        const evenRe = sum2Re * nextCos - sum2Im * nextSin
        const evenIm = sum2Re * nextSin + sum2Im * nextCos
        // A quarter turn further than the one before: multiplied by -i.
        const oddRe = dif2Re * nextSin + dif2Im * nextCos
        const oddIm = dif2Im * nextSin - dif2Re * nextCos
        output[a] = sumRe + evenRe
        output[a + 1] = sumIm + evenIm
        output[b] = difRe + oddRe
        output[b + 1] = difIm + oddIm
        output[c] = sumRe - evenRe
        output[c + 1] = sumIm - evenIm
        output[d] = difRe - oddRe
        output[d + 1] = difIm - oddIm
      }
    }
  }

  #stage(output: Float64Array, half: number): void {
    const size = this.size
    const cos = this.#cos
    const sin = this.#sin
    const step = size / (2 * half)
    for (let from = 0; from < size; from += 2 * half) {
      for (let k = 0, turn = 0; k < half; k += 1, turn += step) {
        const low = 2 * (from + k)
        const high = low + 2 * half
        const c = cos[turn] as number
        const s = sin[turn] as number
        const hRe = output[high] as number
        const hIm = output[high + 1] as number
        const re = hRe * c - hIm * s
        const im = hRe * s + hIm * c
        const lRe = output[low] as number
        const lIm = output[low + 1] as number
        output[low] = lRe + re
        output[low + 1] = lIm + im
        output[high] = lRe - re
        output[high + 1] = lIm - im
      }
    }
  }
}
