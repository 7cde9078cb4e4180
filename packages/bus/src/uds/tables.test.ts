/**
 * @module Our tables against the shared ones, which carry what open implementations of ISO 14229-1 agree on
 * (mdabrowski1990/uds, pylessard/python-udsoncan; cross-checked there with scapy and wireshark), and against the
 * value lists of the wireshark that is installed (`tshark -G values`).
 */

import { spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { DTC_FORMATS, DTC_SEVERITY_BITS, FUNCTIONAL_GROUPS, nameOfDtcGroup } from '../dtc/index.ts'
import { interpret } from '../message/interpret.ts'
import { OBD_SERVICES } from '../obd/index.ts'
import { sharedPresent, sharedTable } from '../testing/shared.ts'
import { nameOfSession } from './diagnostic-session-control.ts'
import { NEGATIVE_RESPONSE_CODES, nameOfDid, nameOfNrc, SUB_FUNCTIONS, UDS_SERVICES } from './index.ts'

const number = (hex: string | undefined): number => Number.parseInt(hex ?? '', 16)
const hexBytes = (hex: string): Uint8Array => Uint8Array.from(Buffer.from(hex, 'hex'))

describe.skipIf(!sharedPresent)('the tables of ISO 14229-1', () => {
  it('services: identifier, answer, abbreviation, name, sub-function, edition', () => {
    const rows = sharedTable('reference/uds_services.tsv').filter((row) => row.sid_hex !== '7F')
    expect(rows.length).toBe(UDS_SERVICES.size)
    for (const row of rows) {
      const service = UDS_SERVICES.get(number(row.sid_hex))
      expect(service).toMatchObject({
        abbreviation: row.abbreviation,
        name: row.name,
        hasSubFunction: row.has_subfunction === 'yes',
      })
      expect(service?.edition ?? 'all', row.name).toBe(row.edition)
      expect(number(row.positive_response_sid_hex)).toBe(number(row.sid_hex) | 0x40)
    }
  })

  it('every service with a sub-function has a table of them, SecurityAccess its levels', () => {
    for (const { sid, hasSubFunction } of UDS_SERVICES.values())
      expect(SUB_FUNCTIONS.has(sid), sid.toString(16)).toBe(hasSubFunction && sid !== 0x27)
  })

  it('negative response codes: abbreviation, name, edition', () => {
    const rows = sharedTable('reference/uds_nrc.tsv')
    expect(rows.length).toBe(NEGATIVE_RESPONSE_CODES.size)
    for (const row of rows) {
      const code = NEGATIVE_RESPONSE_CODES.get(number(row.code_hex))
      expect(code).toMatchObject({ abbreviation: row.abbreviation, name: row.name })
      expect(code?.edition ?? '2006', row.name).toBe(row.first_edition)
      expect(nameOfNrc(number(row.code_hex))).toBe(row.name)
    }
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
      expect(nameOfDid(number(row.from_hex))).toBe(row.name)
      expect(nameOfDid(number(row.to_hex))).toBe(row.name)
    }
  })

  it('formats, groups and severity of codes', () => {
    for (const row of sharedTable('reference/dtc_format_ids.tsv')) {
      const value = row.value_hex as string
      if (row.kind === 'group') expect(nameOfDtcGroup(hexBytes(value))).toBe(row.name)
      else if (row.kind === 'functional_group') expect(FUNCTIONAL_GROUPS.get(number(value))).toBe(row.name)
      else expect(row.name).toContain(DTC_FORMATS.get(number(value)))
    }
    const severities = sharedTable('reference/dtc_severity_bits.tsv')
    expect(severities.map((row) => row.name?.split(' ')[0])).toEqual(DTC_SEVERITY_BITS)
  })

  it('services of SAE J1979', () => {
    const rows = sharedTable('reference/obd_modes.tsv')
    expect(rows.map((row) => number(row.mode_hex)).sort()).toEqual([...OBD_SERVICES.keys()].sort())
  })
})

describe.skipIf(!sharedPresent)('report types of service 19, by the layouts of the shared table', () => {
  const rows = sharedPresent ? sharedTable('reference/dtc_subfunctions.tsv') : []

  it('are all there, with the edition that has them', () => {
    expect(rows.length).toBe(SUB_FUNCTIONS.get(0x19)?.size)
    for (const row of rows) {
      const known = SUB_FUNCTIONS.get(0x19)?.get(number(row.subfunction_hex))
      expect(known?.name).toBe(row.name)
      const edition = { '2013': '2013 only', '2020': '2020', '2013+2020': undefined }[row.edition as string]
      expect(known?.edition, row.name).toBe(edition)
    }
  })

  it.each(rows.map((row) => [row.subfunction_hex as string, row.name as string, row] as const))(
    '%s %s: its request holds what the layout says',
    (hex, _, row) => {
      const asks = (row.request_after_19_xx ?? '').split(' ').filter((word) => word !== '')
      const bytes = asks.map((word, index) => (word === 'DTC(3)' ? 'c14087' : `5${index}`)).join('')
      const meaning = interpret('uds', 'request', 0x19, hexBytes(`19${hex}${bytes}`))
      expect(meaning.problems).toBeUndefined()
      expect(meaning.dtcs?.map((dtc) => dtc.code)).toEqual(asks.includes('DTC(3)') ? ['U0140-87'] : undefined)
      const numbers = asks.flatMap((word, index) => (word === 'DTC(3)' ? [] : [0x50 + index]))
      expect(Object.values(meaning.values ?? {})).toEqual(numbers)
      for (let size = 2; size < 2 + bytes.length / 2; size++) {
        const short = interpret('uds', 'request', 0x19, hexBytes(`19${hex}${bytes}`).subarray(0, size))
        expect(short.problems?.length).toBe(1)
      }
    },
  )

  /** The words of the layouts: their bytes here, and where our reading puts them. */
  const WORDS: Readonly<Record<string, string>> = {
    availMask: 'fb',
    formatId: '04',
    'count(2)': '0102',
    'DTC(3)': 'c14087',
    status: '2f',
    severity: '40',
    funcUnit: '11',
    memSel: '18',
    FGID: '33',
    severityAvailMask: 'ff',
    RGID: '02',
    snapRecNo: '01',
    storedRecNo: '01',
    extRecNo: '90',
    nDID: '01',
    'DID(2)': 'f442',
    data: '30d4',
    'faultDetectionCounter(signed)': '81',
  }

  it.each(rows.map((row) => [row.subfunction_hex as string, row.name as string, row] as const))(
    '%s %s: its answer is read as the layout says',
    (hex, _, row) => {
      const layout = row.response_after_59_xx as string
      const words = layout.split(/[ {}[\]*?]+/).filter((word) => word !== '')
      const bytes = words.map((word) => WORDS[word] as string).join('')
      expect(bytes).not.toContain('undefined')
      const meaning = interpret('uds', 'response', 0x19, hexBytes(`59${hex}${bytes}`))
      const has = (word: string, value: number): number | undefined =>
        words.includes(word) ? value : undefined
      expect(meaning.problems).toBeUndefined()
      expect(meaning.availability).toBe(has('availMask', 0xfb))
      expect(meaning.dtcCount).toBe(has('count(2)', 0x0102))
      expect(meaning.values?.formatIdentifier).toBe(has('formatId', 0x04))
      expect(meaning.values?.memorySelection).toBe(has('memSel', 0x18))
      expect(meaning.values?.functionalGroup).toBe(has('FGID', 0x33))
      expect(meaning.values?.severityAvailability).toBe(has('severityAvailMask', 0xff))
      expect(meaning.values?.readinessGroup).toBe(has('RGID', 0x02))
      const [dtc] = meaning.dtcs ?? []
      expect(dtc?.code).toBe(words.includes('DTC(3)') ? 'U0140-87' : undefined)
      expect(dtc?.status).toBe(has('status', 0x2f))
      expect(dtc?.severity).toBe(has('severity', 0x40))
      expect(dtc?.functionalUnit).toBe(has('funcUnit', 0x11))
      expect(dtc?.counter).toBe(has('faultDetectionCounter(signed)', -127))
      const record = meaning.records?.[0]
      expect(record?.bytes).toBe(words.includes('data') ? '30d4' : undefined)
      if (words.includes('data')) {
        const extended = words.includes('extRecNo')
        expect(record).toMatchObject({ dtc: 'U0140-87', number: extended ? 0x90 : 1 })
        expect(record?.kind).toBe(extended ? 'extended-data' : 'snapshot')
        // F442 has a length a standard fixes; extended data has none.
        expect(record?.undivided).toBe(extended ? true : undefined)
      }
    },
  )
})

const listed = spawnSync('tshark', ['-G', 'values'], { encoding: 'utf8', maxBuffer: 256 * 1024 * 1024 })
if (listed.error !== undefined) console.warn('skipped: tshark is not here, its lists are not compared')

describe.skipIf(listed.error !== undefined)('the lists of wireshark (packet-uds.c)', () => {
  const rows = (listed.stdout ?? '').split('\n').map((line) => line.split('\t'))
  const list = (field: string): (readonly [number, string])[] =>
    rows
      .filter(([kind, name]) => kind === 'V' && name === field)
      .map(([, , value, text]) => [Number(value), text ?? ''])

  it.each([
    [0x10, 'uds.dsc.type'],
    [0x11, 'uds.er.type'],
    [0x19, 'uds.rdtci.type'],
    [0x31, 'uds.rc.type'],
    [0x85, 'uds.cdtcs.type'],
  ] as const)('service %i has the sub-functions of %s', (service, field) => {
    const theirs = list(field).filter(([, text]) => text !== 'Reserved')
    expect(theirs.length).toBeGreaterThan(1)
    const ours = [...(SUB_FUNCTIONS.get(service)?.values() ?? [])].filter(
      (row) => row.edition !== '2013 only',
    )
    expect(ours.map((row) => row.value)).toEqual(theirs.map(([value]) => value))
  })

  it('negative response codes: the same numbers', () => {
    expect([...NEGATIVE_RESPONSE_CODES.keys()]).toEqual(list('uds.err.code').map(([value]) => value))
  })

  it('services: the same numbers, less 83 which the edition of 2020 dropped', () => {
    const ours = [...UDS_SERVICES.values()].filter((row) => row.edition !== '2013 only').map((row) => row.sid)
    const theirs = list('uds.sid').map(([value]) => value)
    // 3F is how wireshark counts the refusal 7F.
    expect(ours).toEqual(theirs.filter((sid) => sid !== 0x3f))
  })
})
