/** @module A channel is what its definition says: mixed, three moving averages one after another, every so many samples. */

import { describe, expect, test } from 'vitest'
import { openChannel } from './channel.ts'
import { IqReader } from './iq-reader.ts'
import { SampleSource } from './sample-source.ts'
import { Random } from './testing/random.ts'

const sampleRateHz = 1_000_000
const random = new Random(11)
const values = Float32Array.from({ length: 24_000 }, () => random.normal())

function sourceOf(samples: Float32Array): SampleSource {
  const reader = new IqReader('cf32')
  reader.push(new Uint8Array(samples.buffer))
  return new SampleSource(reader.finish())
}

/** Moving average over the last `length` values, from its definition; what is before the first is zero. */
function average(input: readonly number[], length: number): number[] {
  return input.map((_, at) => {
    let sum = 0
    for (let back = 0; back < length && back <= at; back += 1) sum += input[at - back] ?? 0
    return sum / length
  })
}

describe('a channel of noise', () => {
  test.each([
    [300_000, 1],
    [100_000, 2],
    [80_000, 3],
    [60_000, 4],
    [20_000, 12],
    [10_000, 24],
  ])('RAD-06 of %i Hz to either side is three averages of %i samples', (halfWidthHz, boxSamples) => {
    const source = sourceOf(values)
    const offsetHz = 123_456
    const channel = openChannel(source, sampleRateHz, 1000, 9000, offsetHz, halfWidthHz)
    expect(channel.boxSamples).toBe(boxSamples)
    const raw = new Float32Array(values.length)
    source.read(0, values.length / 2, raw)
    const mixed = (part: 'cos' | 'sin'): number[] =>
      Array.from({ length: raw.length / 2 }, (_, at) => {
        const turn = (-2 * Math.PI * offsetHz * at) / sampleRateHz
        const [i = 0, q = 0] = [raw[2 * at], raw[2 * at + 1]]
        return part === 'cos'
          ? i * Math.cos(turn) - q * Math.sin(turn)
          : i * Math.sin(turn) + q * Math.cos(turn)
      })
    const thrice = (all: number[]): number[] =>
      average(average(average(all, boxSamples), boxSamples), boxSamples)
    const [i, q] = [thrice(mixed('cos')), thrice(mixed('sin'))]
    const delay = (3 * (boxSamples - 1)) / 2
    const at = (index: number): readonly [number, number, number, number] => {
      const sample = channel.startSample + delay + index * channel.step
      return [channel.z[2 * index] ?? 0, channel.z[2 * index + 1] ?? 0, i[sample] ?? 0, q[sample] ?? 0]
    }
    // Where the rotation begins is free, but it is the same for all.
    let cos = 0
    let sin = 0
    for (let index = 0; index < channel.samples; index += 1) {
      const [zi, zq, pi, pq] = at(index)
      cos += zi * pi + zq * pq
      sin += zq * pi - zi * pq
    }
    const size = Math.hypot(cos, sin)
    let most = 0
    for (let index = 0; index < channel.samples; index += 1) {
      const [zi, zq, pi, pq] = at(index)
      const away = Math.hypot(zi - (pi * cos - pq * sin) / size, zq - (pi * sin + pq * cos) / size)
      most = Math.max(most, away)
    }
    expect(channel.samples).toBe(Math.floor(9000 / channel.step))
    expect(most).toBeLessThan(1e-5)
  })
})
