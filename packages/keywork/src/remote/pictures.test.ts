import { describe, expect, test } from 'vitest'
import { IqReader, type MeasuredRemote, measureRemote, type RemotePictures } from './index.ts'
import { caseRandom } from './testing/devices.ts'
import { type Coding, type Device, pressSeconds, type Receiver, synthesize } from './testing/synthesize.ts'

const receiver: Receiver = {
  sampleRateHz: 250_000,
  centreHz: 433_920_000,
  format: 'cs16',
  snrDb: 30,
  level: 0.5,
  offset: 0,
  spurs: [],
  pumpDb: 0,
  leadSeconds: 0.06,
  foreign: [],
}
const device = (coding: Coding, more: Partial<Device> = {}): Device => ({
  modulation: 'OOK',
  coding,
  carrierHz: 433_930_000,
  deviationHz: 0,
  bits: 64,
  repeats: 3,
  pauseUs: 15_000,
  syncUs: null,
  preambleBits: 8,
  edgeUs: 10,
  chirpHz: 0,
  driftHz: 0,
  ...more,
})

/** One press whose content comes from the seed. */
function measurePress(sent: Device, seed: number): MeasuredRemote {
  const reader = new IqReader(receiver.format)
  reader.push(synthesize(sent, receiver, caseRandom(seed, 1)))
  return measureRemote(reader.finish(), receiver)
}
function pictures(sent: Device, seed: number): RemotePictures {
  const drawn = measurePress(sent, seed).draw()
  if (drawn === null) throw new Error('nothing drawn')
  return drawn
}

const codings: readonly (readonly [string, Device])[] = [
  ['pulse widths', device({ kind: 'pwm', short: 400, long: 1200, period: 1600 })],
  ['pulse positions', device({ kind: 'ppm', pulse: 400, short: 1000, long: 2000 })],
  ['half-bits', device({ kind: 'manchester', half: 500 })],
  ['two tones', device({ kind: 'manchester', half: 250 }, { modulation: '2-FSK', deviationHz: 25_000 })],
]

describe('what leaves a measurement', () => {
  test.each(codings)('RAD-13 holds no list longer than the kinds of length, for %s', (_, sent) => {
    const { measurement } = measurePress(sent, 1)
    const longest = (value: unknown): number => {
      if (typeof value !== 'object' || value === null) return 0
      const inner = Math.max(0, ...Object.values(value).map(longest))
      return Array.isArray(value) ? Math.max(value.length, inner) : inner
    }
    expect(measurement.sender?.bursts.count).toBe(3)
    expect(longest({ ...measurement, findings: [] })).toBeLessThanOrEqual(6)
    for (const { share } of [...(measurement.sender?.pulses ?? []), ...(measurement.sender?.gaps ?? [])])
      expect(Math.abs(20 * share - Math.round(20 * share))).toBeLessThan(1e-9)
  })

  /** Up or down every half symbol, as content would have it. */
  const midBurst = (levelsDb: readonly number[]): readonly number[] =>
    levelsDb.slice(Math.floor(0.15 * levelsDb.length), Math.ceil(0.85 * levelsDb.length))

  test.each(codings)('RAD-14 the outline of a burst is flat whatever the content, for %s', (_, sent) => {
    for (const seed of [1, 2, 3]) {
      const { outline } = pictures(sent, seed)
      const middle = midBurst(outline.levelsDb)
      expect(Math.max(...middle) - Math.min(...middle)).toBeLessThanOrEqual(3)
      // Yet it shows the burst: quiet in front and behind.
      expect(outline.levelsDb[0]).toBeLessThan(-15)
      expect(outline.levelsDb.at(-1)).toBeLessThan(-15)
      const seconds = outline.levelsDb.filter((db) => db > -6).length * outline.secondsPerPoint
      const burst = (pressSeconds(sent) / sent.repeats - sent.pauseUs / 1e6) * 1000
      expect(seconds * 1000).toBeGreaterThan(0.5 * burst)
      expect(seconds * 1000).toBeLessThan(1.2 * burst)
    }
  })

  test.each(codings)('RAD-14 each waterfall column within a burst looks like the next, for %s', (_, sent) => {
    const { measurement, draw } = measurePress(sent, 4)
    const waterfall = draw()?.waterfall
    if (waterfall === undefined) throw new Error('nothing drawn')
    const { columns, rows, levels, secondsPerColumn } = waterfall
    expect(levels).toHaveLength(columns * rows)
    const tones = measurement.sender?.tonesHz ?? [measurement.sender?.carrierOffsetHz ?? 0]
    const symbol = sent.coding.kind === 'manchester' ? sent.coding.half : 400
    expect(secondsPerColumn).toBeGreaterThan((6 * symbol) / 1e6)
    for (const hertz of tones) {
      const row = Math.floor(((hertz - waterfall.lowHz) / (waterfall.highHz - waterfall.lowHz)) * rows)
      const track = Array.from({ length: columns }, (_unused, at) => levels[at * rows + row] ?? 0)
      const inside = track.filter((_level, at) => {
        const from = at * secondsPerColumn - receiver.leadSeconds
        const burst = measurement.sender?.bursts.seconds ?? 0
        return from > 0.001 && from + secondsPerColumn < burst - 0.001
      })
      expect(inside.length).toBeGreaterThan(2)
      // 255 levels over 80 dB: 3 dB are 10 levels.
      expect(Math.max(...inside) - Math.min(...inside)).toBeLessThanOrEqual(10)
    }
  })

  test('RAD-14 the average pulse is the same for two contents of the same statistics', () => {
    const sent = device({ kind: 'manchester', half: 500 }, { bits: 400, repeats: 1 })
    const [one, two] = [pictures(sent, 5).pulse, pictures(sent, 6).pulse]
    if (one === null || two === null) throw new Error('no pulse drawn')
    expect(one.usPerPoint * one.levels.length).toBeLessThan(4.2 * 500)
    for (const [at, level] of one.levels.entries()) {
      expect(Math.abs(level - (two.levels[at] ?? 0))).toBeLessThanOrEqual(0.15)
      expect(Math.abs(20 * level - Math.round(20 * level))).toBeLessThan(1e-9)
    }
    // Down before the edge, up after it.
    expect(one.levels[Math.round((0.5 * one.leadUs) / one.usPerPoint)]).toBeLessThan(0.15)
    expect(one.levels[Math.round((1.5 * one.leadUs) / one.usPerPoint)]).toBeGreaterThan(0.9)
  })

  test('RAD-14 few pulses have no average, and two tones none at all', () => {
    expect(
      pictures(device({ kind: 'pwm', short: 400, long: 1200, period: 1600 }, { bits: 3, repeats: 1 }), 1)
        .pulse,
    ).toBeNull()
    const twoTones = codings.at(-1)?.[1]
    expect(twoTones === undefined ? undefined : pictures(twoTones, 1).pulse).toBeNull()
  })

  test('the spectrum has its peak at the carrier and lies over the quiet one', () => {
    const { spectrum } = pictures(device({ kind: 'pwm', short: 400, long: 1200, period: 1600 }), 1)
    const peak = spectrum.burstDb.indexOf(0)
    expect(Math.abs((spectrum.frequencyHz[peak] ?? 0) - 10_000)).toBeLessThan(4000)
    expect(spectrum.quietDb[peak]).toBeLessThan(-25)
    expect(spectrum.frequencyHz).toHaveLength(spectrum.burstDb.length)
  })

  test('nothing found draws nothing', () => {
    const reader = new IqReader('cu8')
    reader.push(new Uint8Array(20_000).fill(127))
    expect(measureRemote(reader.finish(), receiver).draw()).toBeNull()
  })
})
