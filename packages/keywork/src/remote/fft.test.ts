import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Fft } from './fft.ts'
import { Random } from './testing/random.ts'

/** The definition, term by term. */
function slowTransform(input: Float64Array): Float64Array {
  const size = input.length / 2
  const output = new Float64Array(2 * size)
  for (let k = 0; k < size; k += 1) {
    for (let n = 0; n < size; n += 1) {
      const turn = (-2 * Math.PI * k * n) / size
      const re = input[2 * n] ?? 0
      const im = input[2 * n + 1] ?? 0
      output[2 * k] = (output[2 * k] ?? 0) + re * Math.cos(turn) - im * Math.sin(turn)
      output[2 * k + 1] = (output[2 * k + 1] ?? 0) + re * Math.sin(turn) + im * Math.cos(turn)
    }
  }
  return output
}

const noise = (size: number, seed: number): Float64Array => {
  const random = new Random(seed)
  return Float64Array.from({ length: 2 * size }, () => random.normal())
}

const furthest = (a: Float64Array, b: Float64Array): number =>
  a.reduce((most, value, at) => Math.max(most, Math.abs(value - (b[at] ?? Number.NaN))), 0)

describe('the Fourier transform', () => {
  test.each([4, 8, 16, 32, 64, 256, 512, 1024])('RAD-06 equals its definition at %i values', (size) => {
    const input = noise(size, size)
    const output = new Float64Array(2 * size)
    new Fft(size).forward(input, output)
    expect(furthest(output, slowTransform(input))).toBeLessThan(1e-9 * size)
  })

  test('RAD-06 keeps the energy (Parseval) and the input', () => {
    fc.assert(
      fc.property(fc.constantFrom(16, 512, 4096, 16_384), fc.nat(1000), (size, seed) => {
        const input = noise(size, seed)
        const before = input.slice()
        const output = new Float64Array(2 * size)
        new Fft(size).forward(input, output)
        const energy = (values: Float64Array): number => values.reduce((sum, value) => sum + value * value, 0)
        expect(energy(output) / size / energy(input)).toBeCloseTo(1, 9)
        expect(input).toEqual(before)
      }),
      { numRuns: 20 },
    )
  })

  test.each([0, 2, 6, 12, 1000, 8_388_608])('RAD-06 refuses the length %i', (size) => {
    expect(() => new Fft(size)).toThrow(RangeError)
  })
})
