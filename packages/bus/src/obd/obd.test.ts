/**
 * @module SAE J1979 services: formulas row by row against the shared table `obd_pids.tsv` (facts of scapy, python-OBD
 * and wireshark), messages against the shared vectors of scapy's `obd.uts` and python-OBD's `test_decoders.py`.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { interpret } from '../message/interpret.ts'
import type { Meaning } from '../message/types.ts'
import { sharedPresent, sharedTable } from '../testing/shared.ts'
import { nameOfRequirements } from './choices.ts'
import { monitorsOf } from './monitors.ts'
import { pidValues, supportedNumbers } from './pid-data.ts'
import { PIDS } from './pids.ts'
import { INFO_TYPES } from './vehicle-information.ts'

const bytes = (hex: string): Uint8Array => Uint8Array.from(Buffer.from(hex.replaceAll(' ', ''), 'hex'))
const answer = (hex: string): Meaning => {
  const payload = bytes(hex)
  return interpret('obd', 'response', (payload[0] as number) & ~0x40, payload)
}

/** The value of a formula of the table, `A` being the first data byte. Our own reading of the table, for the test. */
function formula(text: string, data: Uint8Array): number {
  const signed = /^signed\((.*?)\)(.*)$/.exec(text)
  if (signed !== null) {
    const inner = formula(signed[1] as string, data)
    return formula(`${inner >= 32768 ? inner - 65536 : inner}${signed[2]}`, data)
  }
  const numbers = text.replace(/[A-Z]/g, (letter) => String(data[letter.charCodeAt(0) - 65]))
  if (!/^[\d.+\-*/()]+$/.test(numbers)) throw new Error(`not a formula: ${text}`)
  return Number(new Function(`return ${numbers}`)())
}

const UNITS: Readonly<Record<string, string>> = {
  '%': 'Percent',
  degC: 'Celsius',
  kPa: 'Kilopascals',
  Pa: 'Pascals',
  rpm: 'RevolutionsPerMinute',
  'km/h': 'KilometresPerHour',
  deg: 'Degrees',
  'g/s': 'GramsPerSecond',
  V: 'Volts',
  mA: 'Milliamperes',
  ratio: 'Ratio',
  s: 'Seconds',
  sec: 'Seconds',
  min: 'Minutes',
  km: 'Kilometres',
  count: 'Count',
  'L/h': 'LitresPerHour',
  Nm: 'NewtonMetres',
  '': 'Ratio',
}

const plain = (text: string | undefined): string => (text ?? '').toLowerCase().replace(/[^a-z0-9]/g, '')

describe.skipIf(!sharedPresent)('every row of obd_pids.tsv', () => {
  const rows = sharedPresent ? sharedTable('reference/obd_pids.tsv') : []
  const isNumber = (row: Record<string, string>): boolean =>
    /^[\d.+\-*/()A-Y]+$|^signed/.test(row.formula ?? '') && row.max !== ''

  it('has its PID here, with its name and bytes, and no PID more', () => {
    const pids = new Set(rows.map((row) => Number.parseInt(row.pid_hex as string, 16)))
    expect([...PIDS.keys()].sort((a, b) => a - b)).toEqual([...pids].sort((a, b) => a - b))
    for (const row of rows) {
      const pid = PIDS.get(Number.parseInt(row.pid_hex as string, 16))
      expect(plain(pid?.name), row.pid_hex).toBe(plain(row.name))
      expect(pid?.bytes, row.pid_hex).toBe(Number(row.data_bytes))
    }
  })

  it('gives the number of its formula for any bytes, within its limits, under a key that ends in its unit', () => {
    const nth = new Map<string, number>()
    let checked = 0
    for (const row of rows.filter(isNumber)) {
      const hex = row.pid_hex as string
      const index = nth.get(hex) ?? 0
      nth.set(hex, index + 1)
      const pid = PIDS.get(Number.parseInt(hex, 16))
      const field = pid?.fields[index]
      expect(field, `${hex} ${row.field}`).toBeDefined()
      if (pid === undefined || field === undefined) continue
      expect(field.key.endsWith(UNITS[row.unit ?? ''] as string), `${hex} ${field.key} ${row.unit}`).toBe(
        true,
      )
      const size = { minLength: pid.bytes, maxLength: pid.bytes }
      fc.assert(
        fc.property(fc.uint8Array(size), (data) => {
          if (pid.gated) data[0] = 0xff
          const value = pidValues(pid, data)[field.key]
          const theirs = formula(row.formula as string, data)
          if (field.bytes === 8 && value === undefined) {
            expect(theirs).toBeGreaterThan(Number.MAX_SAFE_INTEGER - 1)
            return
          }
          expect(value).toBeCloseTo(theirs, 6)
          expect(value).toBeGreaterThanOrEqual(Number(row.min) - 1e-4)
          expect(value).toBeLessThanOrEqual(Number(row.max) + 1e-3)
        }),
        { numRuns: 25 },
      )
      checked++
    }
    expect(checked).toBeGreaterThan(190)
    for (const [hex, count] of nth)
      expect(PIDS.get(Number.parseInt(hex, 16))?.fields, hex).toHaveLength(count)
  })

  it('has a key of its own', () => {
    const keys = [...PIDS.values()].flatMap((pid) => pid.fields.map((field) => field.key))
    expect(new Set(keys).size).toBe(keys.length)
  })
})

describe.skipIf(!sharedPresent)('the other tables of SAE J1979', () => {
  it('the OBD requirements of PID 1C', () => {
    for (const row of sharedTable('reference/obd_pid1c_values.tsv')) {
      const [from, to] = (row.value ?? '').split('-')
      for (const value of [from, to ?? from]) expect(nameOfRequirements(Number(value))).toBe(row.name)
    }
  })

  it('the bits of PID 01: each monitor is supported and complete by its own bit', () => {
    const words = (text: string | undefined): string =>
      plain((text ?? '').replace(/\(later: |supported|monitor|system|\bor\b/g, ''))
    const rows = sharedTable('reference/obd_pid01_bits.tsv').filter((row) =>
      row.meaning?.endsWith(' supported'),
    )
    expect(rows).toHaveLength(11)
    for (const row of rows) {
      const bit = 1 << Number(row.bit)
      const [b, c] = row.byte === 'B' ? [bit, 0] : [0, bit]
      const monitors = monitorsOf(b, c, 0)
      expect(monitors).toHaveLength(1)
      expect(words(monitors[0]?.monitor)).toBe(words(row.meaning))
      expect(monitors[0]?.complete).toBe(true)
      const open = row.byte === 'B' ? monitorsOf(b | (bit << 4), 0, 0) : monitorsOf(0, c, bit)
      expect(open[0]?.complete).toBe(false)
    }
  })

  it('InfoTypes and the bytes of their items', () => {
    for (const row of sharedTable('reference/obd_infotypes.tsv')) {
      const info = INFO_TYPES.get(Number.parseInt(row.infotype_hex as string, 16))
      expect(info, row.name).toBeDefined()
      const size = /\((\d+)(?: ASCII[^)]*)?\)\}?\*?$|ASCII\((\d+)\)|VIN\((\d+)/.exec(
        row.response_layout ?? '',
      )
      expect(info?.bytes, row.name).toBe(Number(size?.[1] ?? size?.[2] ?? size?.[3]))
    }
  })
})

describe('current data (01)', () => {
  it('V257 V258 V259 temperature and supported bits', () => {
    expect(answer('4105 00').values).toEqual({ engineCoolantCelsius: -40 })
    expect(answer('4105 FF').values).toEqual({ engineCoolantCelsius: 215 })
    const map = bytes('F00AA00F')
    const numbers = supportedNumbers(0, map).split(' ')
    const theirs = '11110000000010101010000000001111'
    const expected = [...theirs].flatMap((bit, index) => (bit === '1' ? [index + 1] : []))
    expect(numbers.map((hex) => Number.parseInt(hex, 16))).toEqual(expected)
  })

  it('the bits of 13, 1D and 1E: sensors by bank, power take-off; those of 7D stay bytes', () => {
    // [A0..A3] bank 1 sensors 1-4, [A4..A7] bank 2; 1D: four banks of two (table of the public encyclopaedia).
    expect(answer('4113 33').texts?.oxygenSensorsPresent).toBe(
      'bank 1 sensor 1, bank 1 sensor 2, bank 2 sensor 1, bank 2 sensor 2',
    )
    expect(answer('411D 84').texts?.oxygenSensorsPresent).toBe('bank 2 sensor 1, bank 4 sensor 2')
    expect(answer('4113 00').texts).toEqual({ oxygenSensorsPresent: 'none' })
    expect([answer('411E 01').texts, answer('411E 00').texts]).toEqual([
      { powerTakeOff: 'active' },
      { powerTakeOff: 'not active' },
    ])
    expect(answer('417D 05').records).toMatchObject([{ did: '7D', bytes: '05' }])
  })

  it('V255 V256 monitor status with readiness', () => {
    const all = answer('4101 8307FF00')
    expect(all).toMatchObject({
      dtcCount: 3,
      values: { malfunctionIndicatorOn: 1 },
      texts: { ignition: 'spark' },
    })
    expect(all.monitors).toHaveLength(11)
    expect(all.monitors?.every((monitor) => monitor.complete)).toBe(true)
    expect(answer('4101 00790303').monitors).toEqual([
      { monitor: 'misfire', complete: false },
      { monitor: 'NMHC catalyst', complete: false },
      { monitor: 'NOx aftertreatment', complete: false },
    ])
  })

  it('V218 two maps in one answer', () => {
    expect(answer('4100bfbfa8912080000000').texts).toEqual({
      'supported PIDs from 01': '01 03 04 05 06 07 08 09 0B 0C 0D 0E 0F 10 11 13 15 19 1C 20',
      'supported PIDs from 21': '21',
    })
  })

  it('V245 and the supply voltage', () => {
    expect(answer('410c0fa0').values).toEqual({ engineRevolutionsPerMinute: 1000 })
    expect(answer('414230d4').values).toEqual({ controlModuleVolts: 12.5 })
  })

  it('V217 V220 V221 only supported numbers of the wide PIDs', () => {
    expect(answer('41750a001122334455').values).toEqual({
      turbochargerACompressorOutletCelsius: 0x11 - 40,
      turbochargerATurbineOutletCelsius: 0x4455 / 10 - 40,
    })
    expect(answer('4178414243444546474849').values).toEqual({ exhaustGasBank1Sensor1Celsius: 1656.3 })
    // 72623859790382856 s cannot be an exact number, and would be two thousand million years.
    expect(answer('417f0affffffffffffffff01020304050607080011223344556677').values).toEqual({})
  })

  it('V222 a PID without a formula is shown as bytes', () => {
    const data = '4142434445'
    expect(answer(`4189${data}`).records).toEqual([
      { kind: 'data', did: '89', name: 'PID', bytes: data, undivided: true },
    ])
  })

  it('several PIDs are divided only when certain lengths fill the answer to its last byte', () => {
    expect(answer('41 0c 0fa0 0d 32 42 30d4')).toMatchObject({
      dids: [{ did: '0C' }, { did: '0D' }, { did: '42' }],
      values: { engineRevolutionsPerMinute: 1000, vehicleKilometresPerHour: 50, controlModuleVolts: 12.5 },
    })
    const unsure = answer('41 0c 0fa0 89 01 42 30d4')
    expect(unsure.dids).toHaveLength(1)
    expect(unsure.values).toEqual({ engineRevolutionsPerMinute: 1000 })
    expect(unsure.records).toEqual([{ kind: 'data', bytes: '89014230d4', undivided: true }])
    expect(answer('41 0d 32 0d 33')).toMatchObject({ values: { vehicleKilometresPerHour: 50 } })
    expect(answer('41 0c 0f').problems).toEqual(['fewer than 4 bytes'])
  })

  it('choices are named', () => {
    expect(answer('411c06').texts).toEqual({ obdRequirements: 'EOBD' })
    expect(answer('415104').texts).toEqual({ fuelType: 'diesel' })
    expect(answer('41030200').texts).toEqual({ fuelSystem1: 'closed loop' })
    expect(answer('41020562').dtcs).toEqual([{ code: 'P0562', raw: '0562' }])
  })
})

describe('freeze frame (02)', () => {
  it('V227 several PIDs, each with its frame', () => {
    const frame = answer('420c002080040080050028')
    expect(frame.values).toEqual({
      frameNumber: 0,
      engineRevolutionsPerMinute: 2080,
      calculatedEngineLoadPercent: expect.closeTo(50.196, 3) as number,
      engineCoolantCelsius: 0,
    })
    expect(frame.records?.map((record) => [record.kind, record.number, record.did, record.bytes])).toEqual([
      ['freeze-frame', 0, '0C', '2080'],
      ['freeze-frame', 0, '04', '80'],
      ['freeze-frame', 0, '05', '28'],
    ])
  })

  it('V224 V226 wide and unknown PIDs', () => {
    expect(answer('427805414243444546474849').values).toEqual({
      frameNumber: 5,
      exhaustGasBank1Sensor1Celsius: 1656.3,
    })
    expect(answer('42890141424344').records).toMatchObject([
      { number: 1, bytes: '41424344', undivided: true },
    ])
  })

  it('names the code it was stored for', () => {
    expect(answer('4202000562')).toMatchObject({ dtcs: [{ code: 'P0562' }], values: { frameNumber: 0 } })
  })
})

describe('monitoring (05, 06, 08)', () => {
  it('V207 V208 V209 maps of supported monitors', () => {
    expect(answer('460000000000').texts).toEqual({ 'supported monitors from 01': 'none' })
    expect(answer('4600010203042001020304').texts).toEqual({
      'supported monitors from 01': '08 0F 17 18 1E',
      'supported monitors from 21': '28 2F 37 38 3E',
    })
  })

  it('V210 V211 results as bytes, told whether they lie within their limits', () => {
    const results = answer('4601010a0bb00bb00bb00105100048000000640185240096004bffff').records
    expect(results?.map((record) => [record.did, record.number, record.name])).toEqual([
      ['01', 0x01, 'oxygen sensor monitor, within its limits'],
      ['01', 0x05, 'oxygen sensor monitor, within its limits'],
      // The scaling 24 (hex) is unsigned; 0x0096 lies between 0x004b and 0xffff.
      ['01', 0x85, 'oxygen sensor monitor, within its limits'],
    ])
    expect(answer('4621872f000000000000').records).toHaveLength(1)
    expect(answer('462187').problems).toEqual(['2 bytes after the last whole record'])
  })

  it('V230 V231 tests', () => {
    expect(answer('480041424344').texts).toEqual({ 'supported tests from 01': '02 08 0A 0F 12 17 18 1A 1E' })
    expect(answer('4801000022ff64').records).toMatchObject([{ did: '01', bytes: '000022ff64' }])
  })
})

describe('vehicle information (09)', () => {
  const name = 'W0L000051T2123456'
  const vin = Buffer.from(name).toString('hex')

  it('V234 V235 V236 V238 V239 V243 VIN, calibrations, verification numbers', () => {
    expect(answer('490041424344').texts).toEqual({ 'supported InfoTypes': '02 08 0A 0F 12 17 18 1A 1E' })
    expect(answer(`490201${vin}`).vin).toBe(name)
    expect(answer(`490202${vin}${vin}`)).toMatchObject({
      vin: name,
      texts: { 'vehicle identification number 2': name },
    })
    const calibration = Buffer.from('ABCDEFGHIJKLMNOP').toString('hex')
    expect(answer(`490402${calibration}${calibration}`).texts).toEqual({
      'calibration identification 1': 'ABCDEFGHIJKLMNOP',
      'calibration identification 2': 'ABCDEFGHIJKLMNOP',
    })
    expect(answer('4906024142434445464748').texts).toEqual({
      'calibration verification number 1': '41424344',
      'calibration verification number 2': '45464748',
    })
    expect(answer(`490201${vin}0401${calibration}`)).toMatchObject({
      dids: [{ did: '02' }, { did: '04' }],
      vin: name,
      texts: { 'calibration identification 1': 'ABCDEFGHIJKLMNOP' },
    })
  })

  it('V240 V242 in-use counters', () => {
    const counters = answer('49080900010002000300040005000600070008ffff').records
    expect(counters?.map((record) => Number.parseInt(record.bytes, 16))).toEqual([
      1, 2, 3, 4, 5, 6, 7, 8, 65535,
    ])
    expect(answer('490b050001000200030004ffff').records).toHaveLength(5)
  })

  it('PROPERTY any bytes give a meaning and never an exception', () => {
    fc.assert(
      fc.property(fc.constantFrom(1, 2, 5, 6, 8, 9), fc.uint8Array({ maxLength: 60 }), (service, rest) => {
        const payload = Uint8Array.of(service | 0x40, ...rest)
        expect(interpret('obd', 'response', service, payload)).toBeTypeOf('object')
        expect(interpret('obd', 'request', service, Uint8Array.of(service, ...rest))).toBeTypeOf('object')
      }),
    )
  })
})
