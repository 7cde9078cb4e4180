/**
 * @module Our tables against the shared ones, which carry what open implementations of ISO 14229-1 agree on
 * (mdabrowski1990/uds, pylessard/python-udsoncan; cross-checked there with scapy and wireshark).
 */

import { describe, expect, it } from 'vitest'
import { interpret } from '../message/interpret.ts'
import { OBD_SERVICES } from '../obd/index.ts'
import { sharedPresent, sharedTable } from '../testing/shared.ts'
import { nameOfSession } from './diagnostic-session-control.ts'
import { NEGATIVE_RESPONSE_CODES, nameOfDid, nameOfNrc, UDS_SERVICES } from './index.ts'

const number = (hex: string | undefined): number => Number.parseInt(hex ?? '', 16)

describe.skipIf(!sharedPresent)('the tables of ISO 14229-1', () => {
  it('services: identifier, abbreviation, name, sub-function', () => {
    const rows = sharedTable('reference/uds_services.tsv').filter((row) => row.sid_hex !== '7F')
    expect(rows.length).toBe(UDS_SERVICES.size)
    for (const row of rows) {
      expect(UDS_SERVICES.get(number(row.sid_hex))).toMatchObject({
        abbreviation: row.abbreviation,
        name: row.name,
        hasSubFunction: row.has_subfunction === 'yes',
      })
    }
  })

  it('negative response codes', () => {
    const rows = sharedTable('reference/uds_nrc.tsv')
    expect(rows.length).toBe(NEGATIVE_RESPONSE_CODES.size)
    for (const row of rows) expect(nameOfNrc(number(row.code_hex))).toBe(row.name)
  })

  it('sessions', () => {
    for (const row of sharedTable('reference/uds_sessions.tsv')) {
      const [from, to] = (row.session_hex ?? '').split('-')
      expect(nameOfSession(number(from))).toBe(row.name)
      expect(nameOfSession(number(to ?? from))).toBe(row.name)
    }
  })

  it('data identifiers and their ranges', () => {
    for (const row of sharedTable('reference/uds_dids.tsv'))
      expect(nameOfDid(number(row.did_hex))).toBe(row.name)
    for (const row of sharedTable('reference/uds_did_ranges.tsv')) {
      expect(nameOfDid(number(row.to_hex))).toBe(row.name)
    }
  })

  it('report types of service 19', () => {
    const rows = sharedTable('reference/dtc_subfunctions.tsv')
    expect(rows.length).toBe(29)
    for (const row of rows) {
      const type = number(row.subfunction_hex)
      const meaning = interpret(
        'uds',
        'request',
        0x19,
        Uint8Array.of(0x19, type, 0xff, 0xff, 0xff, 0xff, 0xff),
      )
      expect(meaning.subFunction?.name).toBe(row.name)
    }
  })

  it('services of SAE J1979', () => {
    const rows = sharedTable('reference/obd_modes.tsv')
    expect(rows.map((row) => number(row.mode_hex)).sort()).toEqual([...OBD_SERVICES.keys()].sort())
  })
})
