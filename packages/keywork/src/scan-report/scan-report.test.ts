import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readScanReport, typedCode, unitsOfReport } from './index.ts'

/** Reports in here are invented; no equipment writes them so. */
const brief = (text: string): readonly (readonly [string | null, string, string])[] =>
  readScanReport(text).codes.map((read) => [read.unit, read.fault.code, read.doubts.join()])

describe('free text', () => {
  it('gives codes to the heading above them, and knows a unit without faults', () => {
    const report = readScanReport(`Scan before work, 12 January
Mileage: 41 020 km

Engine control
  P0513-00  Immobiliser key not known, stored
  P0562     System voltage low
Body control: no faults stored
Airbag
  B0028-13  pending
`)
    expect(report.codes.map((read) => [read.unit, read.fault.code, read.fault.list ?? null])).toEqual([
      ['Engine control', 'P0513-00', 'confirmed'],
      ['Engine control', 'P0562', null],
      ['Airbag', 'B0028-13', 'pending'],
    ])
    expect(report.codes.every((read) => read.doubts.length === 0)).toBe(true)
    expect(report.units.filter((unit) => unit.saidClear).map((unit) => unit.name)).toEqual(['Body control'])
    expect(unitsOfReport(report).map((unit) => [unit.unit, unit.faults.length])).toEqual([
      ['Engine control', 2],
      ['Body control', 0],
      ['Airbag', 1],
    ])
  })

  it('takes the unit that stands beside the code', () => {
    expect(brief('Brakes: C0035-11 wheel speed\n02 | Gateway | U0140:87 | missing')).toEqual([
      ['Brakes', 'C0035-11', ''],
      ['Gateway', 'U0140-87', ''],
    ])
  })

  it('says where each code stands, so that it can be shown beside the source', () => {
    const [read] = readScanReport('Engine\n  fault P0513-00 here').codes
    expect([read?.line, read?.from, read?.to, read?.wording]).toEqual([2, 8, 16, 'here'])
  })

  it('asks where it is not sure: no heading, a letter for a digit, a heading that is only a guess', () => {
    expect(brief('P0513')).toEqual([[null, 'P0513', 'unit-not-named']])
    expect(brief('Engine\nPO5I3-00')).toEqual([['Engine', 'P0513-00', 'code-mended']])
    expect(brief('Quux\nU0140-87')).toEqual([['Quux', 'U0140-87', 'heading-guessed']])
    expect(brief('Engine\npart b0123 fitted')).toEqual([['Engine', 'B0123', 'perhaps-no-code']])
  })

  it('reads a status byte where the report calls it so (ISO 14229-1)', () => {
    expect(readScanReport('Engine\nP0513-00 status 2F').codes[0]?.fault.status).toBe(0x2f)
    expect(readScanReport('Engine\nP0513-00 status: 0x08').codes[0]?.fault.status).toBe(8)
  })

  it('finds no code in part numbers, VINs, dates, and words', () => {
    for (const text of [
      'VIN T6SHVN3A0R0042788',
      'part 5C0035111A',
      'BOBBY',
      'C1234567',
      'U-0140',
      '2026-01-12',
      'PAGE 1 OF 2',
    ])
      expect([text, brief(text)]).toEqual([text, []])
  })

  it('says so when there is nothing in it', () => {
    expect(readScanReport('hello').findings.map((finding) => finding.code)).toEqual(['no-code-found'])
    expect(readScanReport('Engine: no faults').findings).toEqual([])
  })

  it('reads every language of the product', () => {
    expect(
      readScanReport('Motorsteuergerät\nKeine Fehler gespeichert\nBremse\nC0035-11 gespeichert').codes,
    ).toMatchObject([{ unit: 'Bremse', fault: { list: 'confirmed' } }])
  })
})

describe('a table', () => {
  it('is read by its headings, quoted cells and a unit named once', () => {
    const report = readScanReport(`made on;12.01.2026
Control unit;Code;Description;Status
"Engine; main";P0513-00;"Key ""unknown""";2F
;P0562-00;Voltage;08
Brakes;;no faults;
`)
    expect(report.form).toBe('table')
    expect(report.codes.map((read) => [read.unit, read.fault.code, read.fault.status, read.wording])).toEqual(
      [
        ['Engine; main', 'P0513-00', 0x2f, 'Key "unknown"'],
        ['Engine; main', 'P0562-00', 8, 'Voltage'],
      ],
    )
    expect(report.units.map((unit) => [unit.name, unit.saidClear])).toEqual([
      ['Engine; main', false],
      ['Brakes', true],
    ])
  })

  it('asks for the unit when it has no such column', () => {
    expect(brief('code,description\nP0513,key')).toEqual([[null, 'P0513', 'unit-not-named']])
  })
})

describe('fault resources as JSON', () => {
  it('are read with their status bits, by component', () => {
    const report = readScanReport(
      JSON.stringify({
        components: [
          {
            id: 'engine',
            items: [
              {
                code: '051300',
                display_code: 'P0513-00',
                fault_name: 'Key',
                status: { testFailed: '1', confirmedDTC: '1', pendingDTC: '0' },
              },
            ],
          },
          { id: 'brakes', items: [] },
        ],
      }),
    )
    expect(report.form).toBe('json')
    expect(report.codes).toMatchObject([{ unit: 'engine', fault: { code: 'P0513-00', status: 0x09 } }])
    expect(unitsOfReport(report).map((unit) => unit.unit)).toEqual(['engine', 'brakes'])
  })
})

describe('decisions', () => {
  it('name the unit, leave out what is no code, and put another reading in its place', () => {
    const report = readScanReport('P0513\nB0123\nPO562')
    const units = unitsOfReport(report, { unit: 'engine', leaveOut: [1], instead: { 2: 'P0563' } })
    expect(units).toMatchObject([{ unit: 'engine', faults: [{ code: 'P0513' }, { code: 'P0563' }] }])
  })

  it('take a typed code in any case', () => {
    expect([typedCode('u0140-87'), typedCode(' p0513 '), typedCode('hello')]).toEqual([
      'U0140-87',
      'P0513',
      null,
    ])
  })
})

describe('any text', () => {
  it('is read without an exception, and every code stands where it is said to stand', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(
            fc.string(),
            fc.constantFrom('P0513-00', 'Engine', ';', '\n', 'code', '{', '"', 'no faults'),
          ),
          {
            maxLength: 30,
          },
        ),
        (parts) => {
          const text = parts.join(' ')
          const report = readScanReport(text)
          const lines = text.split(/\r\n|\r|\n/)
          for (const read of report.codes) {
            if (report.form !== 'text') continue
            const stands = lines[read.line - 1]?.slice(read.from, read.to) ?? ''
            expect(stands.replace(/[-:]/, '').toUpperCase().replaceAll('O', '0').replaceAll('I', '1')).toBe(
              read.fault.code.replace('-', ''),
            )
          }
          unitsOfReport(report)
        },
      ),
      { numRuns: 500 },
    )
  })
})
