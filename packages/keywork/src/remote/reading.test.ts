import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  bytesPerSample,
  IqReader,
  type IqSamples,
  measureRemote,
  readRecordingName,
  readSigmf,
  resolveSetting,
  type SampleFormat,
  writeSigmf,
} from './index.ts'
import { storeAs } from './testing/synthesize.ts'

const FORMATS: readonly SampleFormat[] = ['cu8', 'cs8', 'cs16', 'cs16be', 'cf32', 'cf32be']

function read(bytes: Uint8Array, format: SampleFormat, cuts: readonly number[] = []): IqSamples {
  const reader = new IqReader(format)
  let from = 0
  for (const cut of [...cuts.toSorted((a, b) => a - b), bytes.length]) {
    reader.push(bytes.slice(from, cut))
    from = cut
  }
  return reader.finish()
}

const values = (iq: IqSamples): number[] => iq.blocks.flatMap((block) => [...block.values])

describe('reading samples', () => {
  test('RAD-01 the samples are the same however the recording is cut', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...FORMATS),
        fc.uint8Array({ minLength: 1, maxLength: 400 }),
        fc.array(fc.nat(400), { maxLength: 12 }),
        (format, bytes, cuts) => {
          const inside = cuts.filter((cut) => cut < bytes.length)
          const once = read(bytes, format)
          expect(values(read(bytes, format, inside))).toEqual(values(once))
          expect(once.samples * bytesPerSample(format) + once.leftoverBytes).toBe(bytes.length)
        },
      ),
    )
  })

  test('RAD-01 every format gives back the value that was stored, to its own step', () => {
    const sent = Float32Array.from({ length: 200 }, (_, at) => 0.9 * Math.sin(at))
    const step: Record<SampleFormat, number> = {
      cu8: 1 / 127,
      cs8: 1 / 127,
      cs16: 1e-4,
      cs16be: 1e-4,
      cf32: 0,
      cf32be: 0,
    }
    const zero: Record<SampleFormat, [number, number]> = {
      cu8: [127.5, 127.5],
      cs8: [0, 128],
      cs16: [0, 32768],
      cs16be: [0, 32768],
      cf32: [0, 1],
      cf32be: [0, 1],
    }
    for (const format of FORMATS) {
      const [middle, full] = zero[format]
      const got = values(read(storeAs(sent, format), format)).map((value) => (value - middle) / full)
      expect(Math.max(...got.map((value, at) => Math.abs(value - (sent[at] ?? 0))))).toBeLessThanOrEqual(
        step[format],
      )
    }
  })

  test('RAD-01 values that are no number are counted and read as zero', () => {
    const bytes = new Uint8Array(Float32Array.from([1, Number.NaN, Number.POSITIVE_INFINITY, -1]).buffer)
    const iq = read(bytes, 'cf32')
    expect([iq.notNumbers, values(iq)]).toEqual([2, [1, 0, 0, -1]])
  })

  test('RAD-01 a header is skipped across chunks', () => {
    const reader = new IqReader('cu8', { headerBytes: 5 })
    for (const byte of [1, 2, 3, 4, 5, 6, 7]) reader.push(Uint8Array.of(byte))
    expect(values(reader.finish())).toEqual([6, 7])
  })

  test('RAD-02 a long recording keeps its loudest parts and says how much went', () => {
    const block = 65_536
    const reader = new IqReader('cu8', { keepSamples: 3 * block })
    for (let at = 0; at < 9; at += 1) reader.push(new Uint8Array(2 * block).fill(at === 6 ? 250 : 128))
    const iq = reader.finish()
    expect([iq.samples, iq.droppedSamples, iq.blocks.length]).toEqual([9 * block, 6 * block, 3])
    expect(iq.blocks.some((kept) => kept.startSample === 6 * block)).toBe(true)
    const { measurement } = measureRemote(iq, { sampleRateHz: 250_000, centreHz: null })
    expect(measurement.findings.map((finding) => finding.code)).toContain('parts-dropped')
  })
})

describe('rate, centre and format', () => {
  test.each([
    ['g001_433.92M_250k.cu8', 433_920_000, 250_000, 'cu8'],
    ['/some/where_2M/press_868.3M_1000k.cs16', 868_300_000, 1_000_000, 'cs16'],
    ['C:\\rec\\a-1_315M_2.4M.cf32', 315_000_000, 2_400_000, 'cf32'],
    ['key_2048ksps_433920000Hz.cs8', 433_920_000, 2_048_000, 'cs8'],
    ['press_2400k_868.625M.CU8', 868_625_000, 2_400_000, 'cu8'],
    ['press-3.cu8', null, null, 'cu8'],
    ['20240101_120000.wav', null, null, null],
  ])('RAD-03 the name %s is read', (name, centreHz, sampleRateHz, format) => {
    expect(readRecordingName(name)).toMatchObject({ centreHz, sampleRateHz, format })
  })

  test('RAD-03 what was given by hand goes before SigMF, and SigMF before the name', () => {
    const sigmf = writeSigmf({ format: 'cs16', sampleRateHz: 1_000_000, centreHz: 868_300_000 })
    const name = 'a_433.92M_250k.cu8'
    expect(resolveSetting({ name, sigmf })).toMatchObject({
      setting: { sampleRateHz: 1_000_000, centreHz: 868_300_000 },
      format: 'cs16',
    })
    expect(resolveSetting({ name, sigmf, given: { sampleRateHz: 2_000_000, format: 'cs8' } })).toMatchObject({
      setting: { sampleRateHz: 2_000_000, centreHz: 868_300_000 },
      format: 'cs8',
    })
    expect(resolveSetting({ name })).toMatchObject({ setting: { sampleRateHz: 250_000 }, format: 'cu8' })
  })

  test('RAD-03 no rate and no format are assumed', () => {
    const { setting, findings } = resolveSetting({ name: 'press.bin' })
    expect([setting, findings.map((finding) => finding.code)]).toEqual([
      null,
      ['rate-unknown', 'format-unknown'],
    ])
  })
})

describe('SigMF', () => {
  test('RAD-04 what is written is read back', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...FORMATS),
        fc.double({ min: 1e4, max: 1e8, noNaN: true }),
        fc.option(fc.double({ min: 1e6, max: 6e9, noNaN: true })),
        (format, sampleRateHz, centreHz) => {
          const { recording } = readSigmf(writeSigmf({ format, sampleRateHz, centreHz }))
          expect(recording).toMatchObject({ format, sampleRateHz, centreHz })
        },
      ),
    )
  })

  test('RAD-04 the required core fields are there, named as the specification names them', () => {
    const meta = JSON.parse(
      writeSigmf({
        format: 'cu8',
        sampleRateHz: 250_000,
        centreHz: 433.92e6,
        startedAt: '2030-01-01T09:00:00Z',
      }),
    )
    // SigMF 1.2: datatype and version are required in global, sample_start in each capture.
    expect(meta).toMatchObject({
      global: { 'core:datatype': 'cu8', 'core:version': '1.2.0', 'core:sample_rate': 250_000 },
      captures: [
        { 'core:sample_start': 0, 'core:frequency': 433.92e6, 'core:datetime': '2030-01-01T09:00:00Z' },
      ],
      annotations: [],
    })
  })

  test.each([
    ['not json', ['sigmf-unreadable']],
    ['[]', ['sigmf-unreadable']],
    ['{"global":{"core:datatype":"rf32_le","core:sample_rate":1}}', ['sigmf-field', 'sigmf-datatype']],
    [
      '{"global":{"core:datatype":"cu8","core:sample_rate":"1"},"captures":[{"core:frequency":1}]}',
      ['sigmf-field'],
    ],
    [
      '{"global":{"core:datatype":"cu8","core:sample_rate":1,"core:num_channels":2},"captures":[{"core:frequency":1},{"core:frequency":2}]}',
      ['sigmf-retuned', 'sigmf-channels'],
    ],
  ])('RAD-04 the metadata %s is reported, not thrown at', (text, codes) => {
    expect(readSigmf(text).findings.map((finding) => finding.code)).toEqual(codes)
  })

  test('RAD-05 any text is read without throwing', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (text) => void readSigmf(text)))
  })
})

describe('any input', () => {
  test('RAD-05 any bytes at any rate are measured without throwing', () => {
    const chunk = fc.oneof(
      fc.uint8Array({ minLength: 0, maxLength: 9000 }),
      fc
        .tuple(fc.uint8Array({ minLength: 1, maxLength: 60 }), fc.integer({ min: 1, max: 400 }))
        .map(([piece, times]) =>
          Uint8Array.from({ length: piece.length * times }, (_, at) => piece[at % piece.length] ?? 0),
        ),
    )
    fc.assert(
      fc.property(
        fc.constantFrom(...FORMATS),
        fc.array(chunk, { maxLength: 6 }),
        fc.constantFrom(0, 8_000, 16_000, 250_000, 2_400_000, 20e6, 1e9, Number.NaN),
        (format, chunks, sampleRateHz) => {
          const reader = new IqReader(format)
          for (const bytes of chunks) reader.push(bytes)
          const { measurement, draw } = measureRemote(reader.finish(), { sampleRateHz, centreHz: null })
          draw()
          expect(measurement.limits.includes('no-sender')).toBe(measurement.sender === null)
        },
      ),
      { numRuns: 150 },
    )
  })
})
