/**
 * @module Small messages with known meaning.
 *
 * Source: the shared table `captures/vectors.tsv`, which names each vector's origin: the test suites of scapy
 * (`uds.uts`, `kwp.uts`, `obd.uts`), python-udsoncan and python-OBD. Where our reading differs, it says so here.
 */

import { describe, expect, it } from 'vitest'
import { dtcText } from '../dtc/index.ts'
import { sharedPresent, sharedTable } from '../testing/shared.ts'
import { interpret, nameOfService } from './interpret.ts'
import type { Meaning, MessageKind, Protocol } from './types.ts'

const bytes = (hex: string): Uint8Array => Uint8Array.from(Buffer.from(hex, 'hex'))

interface Read extends Meaning {
  readonly kind: MessageKind
  readonly service: number
}

function read(protocol: Protocol, hex: string): Read {
  const payload = bytes(hex)
  const first = payload[0] ?? 0
  const kind = first === 0x7f ? 'negative' : first & 0x40 ? 'response' : 'request'
  const service = kind === 'negative' ? (payload[1] ?? 0) : kind === 'response' ? first & ~0x40 : first
  return { kind, service, ...interpret(protocol, kind, service, payload) }
}

describe.skipIf(!sharedPresent)('the shared vectors', () => {
  const rows = sharedPresent ? sharedTable('captures/vectors.tsv') : []
  const protocols: Readonly<Record<string, Protocol>> = { UDS: 'uds', KWP: 'kwp', OBD: 'obd' }
  const services = rows.filter((row) => row.layer !== undefined && row.layer in protocols)

  it('are read as request, response or refusal of the service they state', () => {
    let checked = 0
    for (const row of services) {
      const protocol = protocols[row.layer as string] as Protocol
      const stated = /^service == (\d+)/.exec(row.expected ?? '')?.[1]
      const message = read(protocol, row.hex as string)
      if (stated === undefined) continue
      const first = Number(stated)
      expect(message.service, row.id).toBe(
        first === 0x7f ? (bytes(row.hex as string)[1] ?? 0) : first & ~0x40,
      )
      expect(nameOfService(protocol, message.service), row.id).not.toBe('reserved')
      checked++
    }
    expect(checked).toBeGreaterThan(150)
  })

  it('hold the numbers they state: sub-functions, sessions, identifiers, refusals', () => {
    /** Names of the vector's fields -> what we read. */
    const fields: Readonly<Record<string, (message: Read) => number | undefined>> = {
      diagnosticSessionType: (m) => m.subFunction?.value,
      diagnosticSession: (m) => m.subFunction?.value,
      resetType: (m) => m.subFunction?.value,
      powerDownTime: (m) => m.values?.powerDownTimeSeconds,
      securityAccessType: (m) => m.subFunction?.value,
      accessMode: (m) => m.subFunction?.value,
      controlType: (m) => m.subFunction?.value,
      subFunction: (m) => m.subFunction?.value,
      reportType: (m) => m.subFunction?.value,
      DTCStatusMask: (m) => m.values?.statusMask,
      DTCSeverityMask: (m) => m.values?.severityMask,
      DTCSnapshotRecordNumber: (m) => m.values?.record,
      DTCExtendedDataRecordNumber: (m) => m.values?.record,
      DTCStatusAvailabilityMask: (m) => m.availability,
      DTCFormatIdentifier: (m) => m.values?.formatIdentifier,
      DTCCount: (m) => m.dtcCount,
      routineControlType: (m) => m.subFunction?.value,
      linkControlType: (m) => m.subFunction?.value,
      timingParameterAccessType: (m) => m.subFunction?.value,
      DTCSettingType: (m) => m.subFunction?.value,
      blockSequenceCounter: (m) => m.values?.blockSequenceCounter,
      'identifiers[0]': (m) => Number.parseInt(m.dids?.[0]?.did ?? '', 16),
      'identifiers[1]': (m) => Number.parseInt(m.dids?.[1]?.did ?? '', 16),
      dataIdentifier: (m) => Number.parseInt(m.dids?.[0]?.did ?? '', 16),
      identifier: (m) => Number.parseInt(m.dids?.[0]?.did ?? '', 16),
      routineIdentifier: (m) => Number.parseInt(m.dids?.[0]?.did ?? '', 16),
      negativeResponseCode: (m) => Number.parseInt(m.nrc?.code ?? '', 16),
      response_code: (m) => Number.parseInt(m.nrc?.code ?? '', 16),
      count: (m) => m.dtcCount,
      'pid[0]': (m) => Number.parseInt(m.dids?.[0]?.did ?? '', 16),
      'iid[0]': (m) => Number.parseInt(m.dids?.[0]?.did ?? '', 16),
      'mid[0]': (m) => Number.parseInt(m.dids?.[0]?.did ?? '', 16),
    }
    /** scapy reads a code and a record number after 19 03; ISO 14229-1 has no bytes there. */
    const skipped = new Set(['V084'])
    let checked = 0
    for (const row of services) {
      if (skipped.has(row.id as string)) continue
      const message = read(protocols[row.layer as string] as Protocol, row.hex as string)
      for (const part of (row.expected ?? '').split('; ')) {
        const [, name, value] = /^([\w[\]]+) == (\d+)$/.exec(part) ?? []
        const field = name === undefined ? undefined : fields[name]
        if (field === undefined || value === undefined) continue
        if (row.layer === 'KWP' && name === 'blockSequenceCounter') continue
        expect(field(message), `${row.id} ${row.hex} ${part}`).toBe(Number(value))
        checked++
      }
    }
    expect(checked).toBeGreaterThan(80)
  })

  it('V078 V260 V263 lists of codes with status', () => {
    expect(
      read('uds', '5902ff11071127023212270112107101181227011312270122112706430027065300271631002714031227')
        .dtcs,
    ).toHaveLength(10)
    expect(read('uds', '5902fb1234562012345760')).toMatchObject({
      availability: 0xfb,
      dtcs: [
        { raw: '123456', status: 0x20 },
        { raw: '123457', status: 0x60 },
      ],
    })
    expect(read('uds', '5902fb').dtcs).toEqual([])
  })

  it('V261 V262 V264 a count of codes: trailing bytes are tolerated, a short one is told', () => {
    expect(read('uds', '5901fb011234').dtcCount).toBe(0x1234)
    expect(read('uds', '5901fb011234001122').dtcCount).toBe(0x1234)
    expect(read('uds', '5901fb0112')).toMatchObject({ problems: ['fewer than 6 bytes'] })
  })

  it('V265 snapshot records by code', () => {
    expect(read('uds', '59031234560112345602789abc03').dtcs).toMatchObject([
      { raw: '123456', records: [1, 2] },
      { raw: '789ABC', records: [3] },
    ])
  })

  it('V235 V241 V237 vehicle information as text', () => {
    expect(read('obd', '49020157304c303030303531543231323334353').vin?.length).toBeLessThan(18)
    expect(read('obd', '4904014142434445464748494a4b4c4d4e4f50').texts).toEqual({
      'calibration identification 1': 'ABCDEFGHIJKLMNOP',
    })
    expect(read('obd', '490a0145434d002d456e67696e6520436f6e74726f6c00').texts).toEqual({
      'unit name 1': 'ECM·-Engine Control',
    })
  })

  it('V228 V229 lists of OBD codes', () => {
    const codes = ['P0143', 'P0196', 'P0234', 'P02CD', 'P0357', 'P0A24']
    expect(read('obd', '430601430196023402cd03570a24').dtcs?.map((dtc) => dtc.code)).toEqual(codes)
    expect(read('obd', '470601430196023402cd03570a24')).toMatchObject({ dtcCount: 6 })
  })

  it('V250 to V254 two-byte codes', () => {
    expect(['0104', '4123', '8003'].map((hex) => dtcText(bytes(hex)))).toEqual(['P0104', 'C0123', 'B0003'])
    expect(read('obd', '4301000001040000').dtcs?.map((dtc) => dtc.code)).toEqual(['P0104'])
    expect(read('obd', '43020104800341')).toMatchObject({ problems: ['half a code at the end'] })
  })

  it('V255 V256 monitor status', () => {
    expect(read('obd', '41018307FF00')).toMatchObject({ dtcCount: 3, values: { malfunctionIndicatorOn: 1 } })
    expect(read('obd', '410100790303')).toMatchObject({ dtcCount: 0, values: { malfunctionIndicatorOn: 0 } })
  })
})

describe('the meaning of any bytes', () => {
  it('never throws and never repeats the data of security services', () => {
    for (const protocol of ['uds', 'obd', 'kwp', 'other'] as const) {
      for (let service = 0; service < 256; service++) {
        for (let length = 1; length < 12; length++) {
          const payload = Uint8Array.from({ length }, (_, index) => (index === 0 ? service : 0xf0 + index))
          for (const kind of ['request', 'response', 'negative'] as const) {
            const meaning = interpret(protocol, kind, service & ~0x40, payload)
            expect(meaning).toBeTypeOf('object')
          }
        }
      }
    }
  })
})
