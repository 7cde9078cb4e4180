/**
 * @module Snapshots and extended data of service 19, invented codes; layouts of ISO 14229-1 as in the shared table
 * `dtc_subfunctions.tsv`. What must never happen is a cut in the wrong place.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { interpret } from '../message/interpret.ts'
import type { DataRecord } from '../message/types.ts'
import { snapshots } from './dtc-records.ts'

const bytes = (hex: string): Uint8Array => Uint8Array.from(Buffer.from(hex, 'hex'))
const read = (hex: string) => interpret('uds', 'response', 0x19, bytes(hex))

describe('a snapshot', () => {
  it('is divided where standards fix every length: PIDs as F4xx, the VIN', () => {
    const vin = Buffer.from('ZZZZZZZZZ00000001').toString('hex')
    expect(
      read(`5904c1408709 01 02 f442 30d4 f190 ${vin} 02 01 f40d 00`.replaceAll(' ', '')).records,
    ).toEqual([
      { kind: 'snapshot', number: 1, dtc: 'U0140-87', did: 'F442', name: 'OBDDataIdentifier', bytes: '30d4' },
      { kind: 'snapshot', number: 1, dtc: 'U0140-87', did: 'F190', name: 'VINDataIdentifier', bytes: vin },
      { kind: 'snapshot', number: 2, dtc: 'U0140-87', did: 'F40D', name: 'OBDDataIdentifier', bytes: '00' },
    ])
  })

  it('is handed on whole from the first identifier only its maker can measure', () => {
    expect(read('5904c1408709 01 03 f442 30d4 0101 aa 0102 bb'.replaceAll(' ', '')).records).toEqual([
      { kind: 'snapshot', number: 1, dtc: 'U0140-87', did: 'F442', name: 'OBDDataIdentifier', bytes: '30d4' },
      {
        kind: 'snapshot',
        number: 1,
        dtc: 'U0140-87',
        did: '0101',
        name: 'VehicleManufacturerSpecific',
        bytes: 'aa0102bb',
        undivided: true,
      },
    ])
  })

  it('whose number of identifiers is not told is not divided at all', () => {
    expect(read('5904c14087090100f44230d4').records).toEqual([
      { kind: 'snapshot', number: 1, dtc: 'U0140-87', bytes: 'f44230d4', undivided: true },
    ])
  })

  it('is marked where it ends too early', () => {
    expect(read('5904c140870901').records).toEqual([
      { kind: 'snapshot', number: 1, dtc: 'U0140-87', bytes: '' },
    ])
    expect(read('5904c14087090102f44230').records).toMatchObject([
      { did: 'F442', bytes: '30', undivided: true },
    ])
  })

  it('PROPERTY comes back as it was built when the lengths are known, and covers every byte when they are not', () => {
    const lengths = new Map([
      [0x0101, 1],
      [0x0102, 3],
      [0x0103, 0],
    ])
    const identifier = fc.constantFrom(...lengths.keys())
    const record = fc.tuple(
      fc.integer({ min: 1, max: 0xef }),
      fc.array(identifier, { minLength: 1, maxLength: 5 }),
    )
    fc.assert(
      fc.property(fc.array(record, { minLength: 1, maxLength: 4 }), fc.boolean(), (built, known) => {
        const message: number[] = []
        const expected: (readonly [number, string, string])[] = []
        for (const [number, dids] of built) {
          message.push(number, dids.length)
          for (const did of dids) {
            const data = Array.from({ length: lengths.get(did) as number }, (_, index) => 0xa0 + index)
            message.push(did >> 8, did & 255, ...data)
            expected.push([number, did.toString(16).padStart(4, '0'), Buffer.from(data).toString('hex')])
          }
        }
        const payload = Uint8Array.from(message)
        const found = snapshots(payload, 0, 'U0140-87', known ? (did) => lengths.get(did) : () => undefined)
        if (known) {
          expect(found.map((one) => [one.number, one.did?.toLowerCase(), one.bytes])).toEqual(expected)
          expect(found.some((one) => one.undivided)).toBe(false)
        } else {
          // Record number, count and identifier stand before the one undivided record.
          expect(found).toHaveLength(1)
          expect((found[0] as DataRecord).bytes).toBe(Buffer.from(payload.subarray(4)).toString('hex'))
          expect(found[0]?.undivided).toBe(true)
        }
      }),
    )
  })
})

describe('stored data (05)', () => {
  it('has a code per record, and a record number alone where nothing is stored', () => {
    expect(read('590501').records).toEqual([{ kind: 'snapshot', number: 1, bytes: '' }])
    const two = read('5905 01 c1408709 01 f442 30d4 02 05621308 01 f40d 1e'.replaceAll(' ', ''))
    expect(two.dtcs).toEqual([
      { code: 'U0140-87', raw: 'C14087', status: 9 },
      { code: 'P0562-13', raw: '056213', status: 8 },
    ])
    expect(two.records?.map((record) => [record.number, record.dtc, record.bytes])).toEqual([
      [1, 'U0140-87', '30d4'],
      [2, 'P0562-13', '1e'],
    ])
  })
})

describe('extended data (06, 16)', () => {
  it('keeps its first record number and hands the rest on whole', () => {
    expect(read('5906c140870901020304').records).toEqual([
      { kind: 'extended-data', number: 1, dtc: 'U0140-87', bytes: '020304', undivided: true },
    ])
    expect(read('591602c1408709aa05621308bb').records).toEqual([
      { kind: 'extended-data', number: 2, dtc: 'U0140-87', bytes: 'aa05621308bb', undivided: true },
    ])
    expect(read('5906c1408709').records).toBeUndefined()
  })
})

describe('the supported extended data (1A)', () => {
  it('leaves its record number out when no code has such a record', () => {
    expect(read('591aff')).toMatchObject({ availability: 0xff, dtcs: [] })
    expect(read('591aff90c1408709')).toMatchObject({ values: { recordNumber: 0x90 }, dtcs: [{ status: 9 }] })
  })
})
