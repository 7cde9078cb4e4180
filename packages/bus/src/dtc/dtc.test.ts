/**
 * @module Codes as text and bytes. Examples: `docs/source/pages/knowledge_base/dtc.rst` of mdabrowski1990/uds (three
 * bytes) and the structure of SAE J2012 / ISO 15031-6 (two bytes), in the shared table `dtc_structure.tsv`.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sharedPresent, sharedTable } from '../testing/shared.ts'
import { DTC_STATUS_BITS, dtcBytes, dtcStatusBits, dtcText, hexUpper } from './index.ts'

const bytes = (hex: string): Uint8Array => Uint8Array.from(Buffer.from(hex, 'hex'))

describe('a trouble code', () => {
  it.each([
    ['0143', 'P0143'],
    ['4034', 'C0034'],
    ['9234', 'B1234'],
    ['C100', 'U0100'],
    ['56789A', 'C1678-9A'],
    ['FFFFFF', 'U3FFF-FF'],
  ])('%s is written %s', (hex, text) => {
    expect(dtcText(bytes(hex))).toBe(text)
    expect(hexUpper(dtcBytes(text) as Uint8Array)).toBe(hex)
  })

  it('PROPERTY survives the way there and back, with two bytes and with three', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 2, maxLength: 3 }), (raw) => {
        expect(dtcBytes(dtcText(raw))).toEqual(raw)
      }),
    )
  })

  it('needs two bytes, and text of the right form', () => {
    expect(dtcText(bytes('01'))).toBe('')
    for (const text of ['P4000', 'X0100', 'P010', 'P0100-1', 'P0100-123', ''])
      expect(dtcBytes(text)).toBeUndefined()
    expect(dtcBytes('u0140-87')).toEqual(bytes('C14087'))
  })

  it('has a status byte of eight bits', () => {
    expect(dtcStatusBits(0x09)).toEqual(['testFailed', 'confirmedDTC'])
    expect(dtcStatusBits(0xff)).toEqual(DTC_STATUS_BITS)
    expect(dtcStatusBits(0)).toEqual([])
  })
})

describe.skipIf(!sharedPresent)('the shared tables', () => {
  it('agree on every example of a code', () => {
    const examples = sharedTable('reference/dtc_structure.tsv').filter((row) =>
      row.kind?.startsWith('example'),
    )
    expect(examples.length).toBeGreaterThan(10)
    for (const row of examples) expect(dtcText(bytes(row.where_or_input as string))).toBe(row.value_or_output)
  })

  it('agree on the names of the status bits', () => {
    const names = sharedTable('reference/dtc_status_bits.tsv').map((row) => row.name)
    expect(names).toEqual(DTC_STATUS_BITS)
  })
})
