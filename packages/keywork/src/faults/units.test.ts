import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compareScans, type Scan, type ScanPhase, type UnitScan } from './index.ts'
import { addressOf } from './units.ts'

const unit = (name: string, codes: readonly string[], ids?: readonly string[]): UnitScan => ({
  unit: name,
  ...(ids === undefined ? {} : { ids }),
  time: null,
  availability: null,
  faults: codes.map((code) => ({ code, raw: '', status: null })),
})
const scan = (phase: ScanPhase, ...units: readonly UnitScan[]): Scan => ({ phase, units })
const lines = (scans: readonly Scan[], ...rest: [Parameters<typeof compareScans>[1]?]) =>
  compareScans(scans, ...rest).faults.map(({ unit: name, code, class: of }) => [name, code, of])
const questions = (scans: readonly Scan[], ...rest: [Parameters<typeof compareScans>[1]?]) =>
  compareScans(scans, ...rest)
    .findings.filter(({ code }) => code === 'units-perhaps-one')
    .map(({ params }) => [params.unit, params.other])

describe('units of several scans', () => {
  test('FLT-18 a recording and a report are one unit by its address, under the name met first', () => {
    const scans = [
      scan('before', unit('Engine control', ['P0420'], ['7E0'])),
      scan('after', unit('7E8', ['P0420'])),
    ]
    expect(lines(scans)).toEqual([['Engine control', 'P0420', 'there-before-still']])
    expect(questions(scans)).toEqual([])
    expect(compareScans(scans).unitNames).toEqual({ 'Engine control': ['Engine control', '7E8'] })
  })

  test('FLT-18 what a recording did to an address explains codes that name the unit by its purpose', () => {
    const body = unit('Body', [], ['740'])
    const found = compareScans(
      [scan('before', body, unit('Brakes', [])), scan('after', body, unit('Brakes', ['U0140']))],
      {
        events: [
          { kind: 'reset', unit: '740', time: null, evidence: { code: 'noted', params: { words: 'x' } } },
        ],
      },
    )
    expect(found.faults.map((line) => [line.class, line.candidates.length])).toEqual([['raised-by-work', 1]])
  })

  test('FLT-18 one name at two addresses is not joined but asked', () => {
    const scans = [
      scan('before', unit('Door', ['B1111'], ['760'])),
      scan('after', unit('Door', ['B1111'], ['768'])),
    ]
    expect(lines(scans)).toEqual([
      ['Door (760)', 'B1111', 'not-comparable'],
      ['Door (768)', 'B1111', 'not-comparable'],
    ])
    expect(questions(scans)).toEqual([['Door (760)', 'Door (768)']])
    const matches = [{ unit: 'Door (760)', other: 'Door (768)', same: true }]
    expect(lines(scans, { matches })).toEqual([['Door (760)', 'B1111', 'there-before-still']])
    expect(questions(scans, { matches })).toEqual([])
  })

  test('FLT-19 two names of one scan stay two units, also at one address', () => {
    const scans = [
      scan('before', unit('Lamps', ['B1000'], ['0x720']), unit('Seats', [], ['720'])),
      scan('after', unit('720', ['B1000'])),
    ]
    expect(compareScans(scans).unitsRead.before).toEqual(['Lamps', 'Seats'])
  })

  test('FLT-20 a spelling variant is asked, and joined only when a person says so', () => {
    const scans = [scan('before', unit('Engine Control Unit', [])), scan('after', unit('ENGINE', ['P0420']))]
    expect(lines(scans)).toEqual([['ENGINE', 'P0420', 'not-comparable']])
    expect(questions(scans)).toEqual([['Engine Control Unit', 'ENGINE']])
    const pair = { unit: 'Engine Control Unit', other: 'ENGINE' }
    expect(lines(scans, { matches: [{ ...pair, same: true }] })).toEqual([
      ['Engine Control Unit', 'P0420', 'new-unexplained'],
    ])
    expect(questions(scans, { matches: [{ ...pair, same: false }] })).toEqual([])
    expect(lines(scans, { matches: [{ ...pair, same: false }] })).toEqual(lines(scans))
  })

  test('FLT-20 names with different numbers do not look alike', () => {
    expect(questions([scan('before', unit('Door 1', [])), scan('after', unit('Door 2', []))])).toEqual([])
  })

  test('FLT-18 request identifiers of ISO 15765-4 stand for their responses, other text for none', () => {
    expect(
      ['7e0', '0x7E7', '7E8', '18da10f1', '18DAF110', '1010>0E80', '$123', 'Engine', '12345', '9FF'].map(
        addressOf,
      ),
    ).toEqual(['7E8', '7EF', '7E8', '18DAF110', '18DAF110', '1010', '123', null, null, null])
  })

  test('FLT-18 every unit goes by exactly one name, and nothing throws', () => {
    const name = fc.constantFrom('A', 'a', 'B', '7E0', '7E8', '__proto__', 'A unit', '')
    const units = fc.array(
      fc.record({ name, ids: fc.array(fc.constantFrom('7E0', '7E8', '740', 'x'), { maxLength: 2 }) }),
      { maxLength: 4 },
    )
    const matches = fc.array(fc.record({ unit: name, other: name, same: fc.boolean() }), { maxLength: 2 })
    fc.assert(
      fc.property(units, units, matches, (before, after, told) => {
        const made = (list: typeof before) => list.map((each) => unit(each.name, ['P0420'], each.ids))
        const compared = compareScans([scan('before', ...made(before)), scan('after', ...made(after))], {
          matches: told,
        })
        const read = new Set([...compared.unitsRead.before, ...compared.unitsRead.after])
        expect(new Set(Object.keys(compared.unitNames))).toEqual(read)
        expect(compared.faults.every((line) => read.has(line.unit))).toBe(true)
      }),
    )
  })
})
