import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import {
  compareRemotes,
  IqReader,
  type MeasuredRemote,
  measureRemote,
  type RemoteMeasurement,
  type SenderMeasurement,
} from './index.ts'
import { caseRandom } from './testing/devices.ts'
import {
  measureRow,
  type RadioRow,
  radioPresent,
  radioRows,
  referenceLengths,
  titledRows,
  whenRadioAbsent,
} from './testing/radio-folder.ts'
import { type Device, type Receiver, storeAs, synthesize } from './testing/synthesize.ts'

const remote: Device = {
  modulation: 'OOK',
  coding: { kind: 'pwm', short: 400, long: 1200, period: 1600 },
  carrierHz: 433_935_000,
  deviationHz: 0,
  bits: 40,
  repeats: 3,
  pauseUs: 12_000,
  syncUs: null,
  preambleBits: 8,
  edgeUs: 10,
  chirpHz: 0,
  driftHz: 300,
}
const shifting: Device = {
  ...remote,
  modulation: '2-FSK',
  coding: { kind: 'manchester', half: 250 },
  deviationHz: 30_000,
}
const receiver: Receiver = {
  sampleRateHz: 250_000,
  centreHz: 433_920_000,
  format: 'cf32',
  snrDb: 22,
  level: 0.6,
  offset: 0.01,
  spurs: [],
  pumpDb: 0,
  leadSeconds: 0.06,
  foreign: [],
}

function measureValues(values: Float32Array, made: Receiver = receiver): MeasuredRemote {
  const reader = new IqReader('cf32')
  reader.push(storeAs(values, 'cf32'))
  return measureRemote(reader.finish(), made)
}

/** One press as floats. */
function press(device: Device, made: Receiver = receiver, seed = 1): Float32Array {
  const bytes = synthesize(device, { ...made, format: 'cf32' }, caseRandom(seed, 1))
  return new Float32Array(bytes.buffer, bytes.byteOffset, bytes.byteLength / 4)
}

function senderOf(device: Device, made: Receiver = receiver, seed = 1): SenderMeasurement {
  const { sender } = measureValues(press(device, made, seed), made).measurement
  if (sender === null) throw new Error('no sender found')
  return sender
}

const within = (value: number | null | undefined, wanted: number, share: number): void => {
  expect(value).toBeGreaterThanOrEqual(wanted - Math.abs(wanted) * share)
  expect(value).toBeLessThanOrEqual(wanted + Math.abs(wanted) * share)
}
const nearest = (lengths: readonly { us: number }[], us: number): number =>
  lengths.reduce(
    (best, { us: length }) => (Math.abs(length - us) < Math.abs(best - us) ? length : best),
    Infinity,
  )

describe('recordings of real senders', () => {
  /** Values of two independent tools: the pulse analysis of rtl_433 22.11 and a scipy script, in the manifest. */
  const rows = radioRows()

  test.skipIf(!radioPresent).each(titledRows(rows))('RAD-07 the modulation of %s is right', (_, row) => {
    expect(measureRow(row).measurement.sender?.modulation).toBe(row.modulation)
  })

  test.skipIf(!radioPresent).each(titledRows(rows))(
    'RAD-08 the carrier of %s is within 2.5 kHz of the reference',
    (_, row) => {
      const reference = 1000 * Number(row.cells.ref_carrier_off_khz)
      const offset = measureRow(row).measurement.sender?.carrierOffsetHz ?? Infinity
      expect(Math.abs(offset - reference)).toBeLessThan(2500)
    },
  )

  const shifts = rows.filter((row) => row.cells.ref_dev_khz !== undefined && row.cells.ref_dev_khz !== '')
  test.skipIf(!radioPresent).each(titledRows(shifts))(
    'RAD-08 deviation and tones of %s are within 5 % and 2 kHz of the reference',
    (_, row) => {
      const { sender } = measureRow(row).measurement
      within(sender?.deviationHz, 1000 * Number(row.cells.ref_dev_khz), 0.05)
      const tones = /\[(\S+), (\S+)\]/.exec(row.cells.ref_tones_khz ?? '')
      // The reference takes the peaks of a histogram, which clipping and smoothing pull towards each other.
      for (const at of [0, 1] as const)
        expect(Math.abs((sender?.tonesHz?.[at] ?? Infinity) - 1000 * Number(tones?.[at + 1]))).toBeLessThan(
          5000,
        )
      // A clock line may be a harmonic of the symbol rate (five times for the actuator).
      const ratio = Number(row.cells.ref_clock_line_hz) / (sender?.symbolRate ?? Number.NaN)
      expect(Math.abs(ratio / Math.round(ratio) - 1)).toBeLessThan(0.01)
    },
  )

  // rtl_433 lists the largest package it met; where noise or a second sender broke packages up, it has no usual one.
  const broken = new Set(['sensor-j-1-noisy', 'sensor-k-1-weak', 'handheld-f-2-foreign'])
  const keyed = rows.filter((row) => row.modulation === 'OOK' && !broken.has(row.name))
  test.skipIf(!radioPresent).each(titledRows(keyed))(
    'RAD-09 pulse lengths of %s are within 10 % of rtl_433, gap lengths within 16 %',
    (_, row) => {
      const { sender } = measureRow(row).measurement
      const common = (cell: string | undefined): readonly { us: number }[] => {
        const lengths = referenceLengths(cell)
        const all = lengths.reduce((sum, length) => sum + length.count, 0)
        return lengths.filter((length) => length.count >= 0.1 * all)
      }
      for (const { us } of common(row.cells['rtl433_pulses_us(count)']))
        within(nearest(sender?.pulses ?? [], us), us, 0.1)
      // Its threshold lies lower on slow edges: pulses longer, gaps shorter by the same time.
      for (const { us } of common(row.cells['rtl433_gaps_us(count)']))
        within(nearest(sender?.gaps ?? [], us), us, 0.16)
    },
  )

  const levelled = rows.filter(
    (row) => (row.cells.rtl433_snr_db ?? '') !== '' && row.name !== 'handheld-f-2-foreign',
  )
  test.skipIf(!radioPresent).each(titledRows(levelled))(
    'RAD-12 the SNR of %s is within 3.5 dB of rtl_433',
    (_, row) => {
      const snr = measureRow(row).measurement.sender?.snrDb ?? Infinity
      expect(Math.abs(snr - Number(row.cells.rtl433_snr_db))).toBeLessThan(3.5)
    },
  )

  test.skipIf(!radioPresent)(`RAD-11 the sender over another one is found and said${whenRadioAbsent}`, () => {
    const row = rows.find((candidate) => candidate.name === 'handheld-f-2-foreign')
    if (row === undefined) throw new Error('handheld-f-2-foreign is not in the manifest')
    const { measurement } = measureRow(row)
    expect(measurement.limits).toContain('foreign-on-top')
    expect(measurement.others.map((other) => other.modulation)).toEqual(['OOK'])
  })
})

describe('invented senders', () => {
  test('RAD-06 a steady line, a constant part and turned-up noise are no senders', () => {
    const loud: Receiver = {
      ...receiver,
      spurs: [
        [40_000, 0],
        [-90_000, 6],
      ],
      offset: 0.3,
      pumpDb: 10,
    }
    const silent = press({ ...remote, repeats: 1, bits: 0, preambleBits: 0 }, loud)
    expect(measureValues(silent, loud).measurement.limits).toEqual(['no-sender'])
    // As strong as the remote itself they leave it no SNR, and that is said.
    expect(measureValues(press(remote, loud), loud).measurement.limits).toContain('weak')
    const made: Receiver = {
      ...loud,
      spurs: [
        [40_000, 10],
        [-90_000, 12],
      ],
      snrDb: 25,
    }
    const { sender, limits } = measureValues(press(remote, made), made).measurement
    expect([sender?.modulation, limits]).toEqual(['OOK', []])
    expect(Math.abs((sender?.carrierOffsetHz ?? 0) - 15_000)).toBeLessThan(1500)
    for (const us of [400, 1200]) within(nearest(sender?.pulses ?? [], us), us, 0.03)
  })

  test.each([
    ['a steady carrier', { ...shifting, deviationHz: 0 }],
    [
      'a shift that only alternates',
      { ...shifting, coding: { kind: 'nrz', symbol: 100 }, bits: 0, preambleBits: 200 },
    ],
    ['three pulses', { ...remote, bits: 3, preambleBits: 0, repeats: 1 }],
  ] as const)('RAD-07 %s is unsure', (_, device) => {
    const { measurement } = measureValues(press(device))
    expect(measurement.sender?.modulation ?? 'unsure').toBe('unsure')
  })

  test.each([
    ['a carrier 10 dB down in the gaps', { ...remote, extinctionDb: 10 }, receiver],
    ['a carrier that chirps at each pulse', { ...remote, chirpHz: 40_000, edgeUs: 60 }, receiver],
    [
      'a carrier at the very centre, over a constant part',
      { ...remote, carrierHz: 433_920_000 },
      { ...receiver, offset: 0.2 },
    ],
    ['pulses of 50 us', { ...remote, coding: { kind: 'manchester', half: 50 }, edgeUs: 5 }, receiver],
    ['pulses of 3 ms', { ...remote, coding: { kind: 'manchester', half: 3000 }, repeats: 1 }, receiver],
    [
      'a clipped slow carrier, whose phase runs in steps',
      { ...remote, carrierHz: 433_914_350 },
      { ...receiver, level: 2.2, snrDb: 29 },
    ],
  ] as const)('RAD-07 %s is on-off keying', (_, device, made) => {
    // Clipping is done by the stored format.
    const values = press(device as Device, made).map((value) => Math.max(-1, Math.min(1, value)))
    expect(measureValues(values, made).measurement.sender?.modulation).toBe('OOK')
  })

  test.each([
    [
      'wide tones in slow symbols, each like an on-off sender',
      { ...shifting, coding: { kind: 'nrz', symbol: 2000 }, deviationHz: 60_000 },
      receiver,
    ],
    [
      'one tone 13 dB below the other',
      { ...shifting, deviationHz: 40_000 },
      { ...receiver, tiltDb: 20, level: 0.3 },
    ],
    [
      'minimum shift at 50 kBd',
      { ...shifting, coding: { kind: 'nrz', symbol: 20 }, deviationHz: 12_500, bits: 300, edgeUs: 4 },
      receiver,
    ],
    [
      'a smoothed shift',
      { ...shifting, coding: { kind: 'nrz', symbol: 80 }, deviationHz: 20_000, edgeUs: 40, bits: 100 },
      receiver,
    ],
    [
      'narrow tones at 12 dB',
      { ...shifting, coding: { kind: 'nrz', symbol: 400 }, deviationHz: 2500 },
      { ...receiver, snrDb: 12 },
    ],
    [
      'pulse widths on no common grid',
      { ...shifting, coding: { kind: 'pwm', short: 100, long: 237, period: 337 } },
      receiver,
    ],
    ['a long steady tone in front', { ...shifting, syncUs: [30_000, 100], deviationHz: 40_000 }, receiver],
  ] as const)('RAD-07 %s is two-tone keying', (_, device, made) => {
    const sender = senderOf(device as Device, made)
    expect(sender.modulation).toBe('2-FSK')
    within(sender.deviationHz, device.deviationHz, 0.1)
  })

  test('RAD-08 carrier, tones, lengths, symbol rate and SNR are those that were sent', () => {
    const ook = senderOf(remote)
    expect(Math.abs(ook.carrierOffsetHz - 15_000)).toBeLessThan(200)
    for (const us of [400, 1200]) within(nearest(ook.pulses, us), us, 0.02)
    for (const us of [400, 1200]) within(nearest(ook.gaps, us), us, 0.02)
    within(ook.symbolRate, 2500, 0.01)
    expect(Math.abs(ook.snrDb - 22)).toBeLessThan(1)
    expect(ook.bursts).toMatchObject({ count: 3, repeats: 3 })
    within(ook.bursts.seconds, 48 * 1600e-6, 0.03)
    const fsk = senderOf(shifting)
    expect(Math.abs(fsk.carrierOffsetHz - 15_000)).toBeLessThan(300)
    within(fsk.deviationHz, 30_000, 0.02)
    within(fsk.symbolRate, 4000, 0.005)
  })

  test('RAD-02 a press late in a recording of which only a sixth is kept is measured as ever', () => {
    const random = caseRandom(11, 0)
    const block = 65_536
    const late = press(remote)
    const reader = new IqReader('cf32', { keepSamples: 8 * block })
    const sigma = (receiver.level * 10 ** (-receiver.snrDb / 20)) / Math.SQRT2
    for (let at = 0; at < 48; at += 1) {
      const values = Float32Array.from({ length: 2 * block }, () => sigma * random.normal())
      if (at === 40) for (const [index, value] of late.entries()) values[index] = value
      reader.push(storeAs(values, 'cf32'))
    }
    const iq = reader.finish()
    expect(iq.droppedSamples).toBe(40 * block)
    const { sender, limits } = measureRemote(iq, receiver).measurement
    expect([sender?.modulation, limits]).toEqual(['OOK', []])
    for (const us of [400, 1200]) within(nearest(sender?.pulses ?? [], us), us, 0.02)
    expect(Math.abs((sender?.snrDb ?? 0) - receiver.snrDb)).toBeLessThan(1)
  })

  test('RAD-08 a carrier that drifts is said by how much', () => {
    within(senderOf({ ...remote, driftHz: 4000 }).driftHz, 4000, 0.15)
    within(senderOf({ ...remote, driftHz: -4000 }).driftHz, -4000, 0.15)
  })

  test('RAD-09 lengths on no common grid have no symbol rate', () => {
    expect(
      senderOf({ ...remote, coding: { kind: 'ppm', pulse: 440, short: 2150, long: 3700 } }).symbolRate,
    ).toBeNull()
  })

  test('RAD-11 a weaker sender elsewhere in the band is named and does not disturb', () => {
    const other: Device = { ...remote, carrierHz: 433_870_000, coding: { kind: 'manchester', half: 500 } }
    const made: Receiver = { ...receiver, foreign: [{ device: other, delaySeconds: 0.1, relativeDb: -9 }] }
    const { measurement } = measureValues(press(remote, made), made)
    expect(measurement.limits).toEqual([])
    expect(measurement.others).toHaveLength(1)
    expect(Math.abs((measurement.others[0]?.carrierOffsetHz ?? 0) + 50_000)).toBeLessThan(500)
    within(nearest(measurement.others[0]?.pulses ?? [], 500), 500, 0.03)
  })

  test.each([6, 10, 14, 20, 30])('RAD-12 an SNR of %i dB is measured within 1.2 dB', (snrDb) => {
    expect(Math.abs(senderOf(remote, { ...receiver, snrDb }).snrDb - snrDb)).toBeLessThan(1.2)
    expect(Math.abs(senderOf(shifting, { ...receiver, snrDb }).snrDb - snrDb)).toBeLessThan(1.2)
  })
})

describe('what does not change a measurement', () => {
  /** All that is measured but the carrier. */
  const form = ({ carrierHz, carrierOffsetHz, tonesHz, ...rest }: SenderMeasurement) => rest
  const likeness = (a: SenderMeasurement, b: SenderMeasurement): void => {
    expect(b.modulation).toBe(a.modulation)
    expect(b.pulses.map((cluster) => cluster.share)).toEqual(a.pulses.map((cluster) => cluster.share))
    for (const [at, cluster] of a.pulses.entries()) within(b.pulses[at]?.us, cluster.us, 0.01)
    for (const [at, cluster] of a.gaps.entries()) within(b.gaps[at]?.us, cluster.us, 0.01)
    if (a.symbolRate !== null) within(b.symbolRate, a.symbolRate, 0.002)
    if (a.deviationHz !== null) within(b.deviationHz, a.deviationHz, 0.01)
    expect(Math.abs(a.snrDb - b.snrDb)).toBeLessThan(0.5)
    expect(Math.abs(a.driftHz - b.driftHz)).toBeLessThan(60)
    expect(b.bursts.count).toBe(a.bursts.count)
  }

  test.each([
    ['OOK', remote],
    ['2-FSK', shifting],
  ] as const)('RAD-10 a shift in frequency moves the carrier of %s and nothing else', (_, device) => {
    const values = press(device)
    const before = measureValues(values).measurement.sender
    for (const shiftHz of [-43_210, -9_000, 7_777, 31_000]) {
      const shifted = new Float32Array(values.length)
      for (let at = 0; at < values.length / 2; at += 1) {
        const turn = (2 * Math.PI * shiftHz * at) / receiver.sampleRateHz
        const i = values[2 * at] ?? 0
        const q = values[2 * at + 1] ?? 0
        shifted[2 * at] = i * Math.cos(turn) - q * Math.sin(turn)
        shifted[2 * at + 1] = i * Math.sin(turn) + q * Math.cos(turn)
      }
      const after = measureValues(shifted).measurement.sender
      if (before === null || after === null) throw new Error('no sender found')
      expect(Math.abs(after.carrierOffsetHz - before.carrierOffsetHz - shiftHz)).toBeLessThan(80)
      likeness(before, after)
    }
  })

  test.each([
    ['OOK', remote],
    ['2-FSK', shifting],
  ] as const)('RAD-10 the scale of a recording changes the level of %s only', (_, device) => {
    const values = press(device)
    const before = measureValues(values).measurement.sender
    for (const scale of [2 ** -20, 0.01, 0.37, 8, 1000]) {
      const after = measureValues(values.map((value) => value * scale)).measurement.sender
      if (before === null || after === null) throw new Error('no sender found')
      const gainDb = 20 * Math.log10(scale)
      expect(Math.abs(after.levelDbfs - before.levelDbfs - gainDb)).toBeLessThan(0.2)
      expect({ ...form(after), levelDbfs: 0 }).toEqual({ ...form(before), levelDbfs: 0 })
      expect(after.carrierOffsetHz).toBe(before.carrierOffsetHz)
    }
  })

  test('RAD-10 the mirror image mirrors the carrier and swaps the tones', () => {
    const conjugate = (values: Float32Array): Float32Array =>
      values.map((value, at) => (at % 2 === 1 ? -value : value))
    const ook = press(remote)
    const before = measureValues(ook).measurement.sender
    const after = measureValues(conjugate(ook)).measurement.sender
    if (before === null || after === null) throw new Error('no sender found')
    expect(Math.abs(after.carrierOffsetHz + before.carrierOffsetHz)).toBeLessThan(20)
    likeness({ ...before, driftHz: -before.driftHz }, after)
    const fsk = press(shifting)
    const tones = measureValues(fsk).measurement.sender
    const mirrored = measureValues(conjugate(fsk)).measurement.sender
    expect(Math.abs((mirrored?.tonesHz?.[0] ?? 0) + (tones?.tonesHz?.[1] ?? 0))).toBeLessThan(60)
    expect(mirrored?.pulses.map((cluster) => cluster.share)).toEqual(
      tones?.gaps.map((cluster) => cluster.share),
    )
  })

  test.each([250_000, 1_000_000, 1_024_000, 2_400_000])(
    'RAD-10 a sample rate of %i gives the same parameters',
    (sampleRateHz) => {
      const made = { ...receiver, sampleRateHz }
      const ook = senderOf(remote, made)
      expect(Math.abs(ook.carrierOffsetHz - 15_000)).toBeLessThan(250)
      for (const us of [400, 1200]) within(nearest(ook.pulses, us), us, 0.02)
      const fsk = senderOf(shifting, made)
      within(fsk.deviationHz, 30_000, 0.02)
      within(fsk.symbolRate, 4000, 0.005)
    },
  )

  test.each(['cu8', 'cs8', 'cs16', 'cs16be', 'cf32', 'cf32be'] as const)(
    'RAD-10 the format %s gives the same parameters',
    (format) => {
      const reader = new IqReader(format)
      reader.push(storeAs(press(remote), format))
      const { sender } = measureRemote(reader.finish(), receiver).measurement
      expect(Math.abs((sender?.carrierOffsetHz ?? 0) - 15_000)).toBeLessThan(200)
      for (const us of [400, 1200]) within(nearest(sender?.pulses ?? [], us), us, 0.02)
      expect(Math.abs((sender?.snrDb ?? 0) - 22)).toBeLessThan(1)
    },
  )
})

describe('real recordings changed by a known amount', () => {
  const clean = radioRows().filter((row) => radioPresent && measureRow(row).measurement.limits.length === 0)

  /** The recording as floats, and its measurement. */
  const load = (row: RadioRow): { values: Float32Array; before: RemoteMeasurement } => {
    const bytes = readFileSync(row.path)
    const values = row.path.endsWith('.cu8')
      ? Float32Array.from(bytes, (value) => (value - 127.5) / 127.5)
      : Float32Array.from(
          new Int16Array(bytes.buffer, bytes.byteOffset, bytes.byteLength >> 1),
          (v) => v / 32_768,
        )
    return { values, before: measureRow(row).measurement }
  }
  const remeasure = (
    values: Float32Array,
    { sampleRateHz, centreHz }: RemoteMeasurement,
    movedHz = 0,
  ): RemoteMeasurement =>
    measureValues(values, {
      ...receiver,
      sampleRateHz,
      centreHz: (centreHz ?? 0) - movedHz,
    }).measurement

  test.skipIf(!radioPresent).each(titledRows(clean))(
    'RAD-10 %s shifted towards the centre, or with noise added down to 13 dB, is the same family',
    (_, row) => {
      const { values, before } = load(row)
      const rate = before.sampleRateHz
      const movedHz = ((before.sender?.carrierOffsetHz ?? 0) > 0 ? -0.1 : 0.1) * rate
      const shifted = new Float32Array(values.length)
      for (let at = 0; at < values.length / 2; at += 1) {
        const turn = (2 * Math.PI * movedHz * at) / rate
        const i = values[2 * at] ?? 0
        const q = values[2 * at + 1] ?? 0
        shifted[2 * at] = 0.7 * (i * Math.cos(turn) - q * Math.sin(turn))
        shifted[2 * at + 1] = 0.7 * (i * Math.sin(turn) + q * Math.cos(turn))
      }
      expect(compareRemotes(before, remeasure(shifted, before, movedHz)).verdict).toBe('same')
      // Recordings that are nearer to the noise already cannot bear more of it.
      if ((before.sender?.snrDb ?? 0) < 9) return
      const random = caseRandom(3, 3)
      const sigma = Math.sqrt(10 ** ((before.sender?.levelDbfs ?? 0) / 10) * 10 ** -1.3 * 0.5)
      const noisy = values.map((value) => value + sigma * random.normal())
      expect(compareRemotes(before, remeasure(noisy, before)).verdict).toBe('same')
    },
  )
})
