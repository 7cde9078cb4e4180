import { readScanReport } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { type Answers, answeredUnits, noAnswers, onlyCode, questionsOf } from './questions.ts'

const text = [
  'P0562 low supply',
  'Engine control',
  'PO513-00 stored',
  'Comfort box',
  'b1234',
  'Brakes: no faults',
].join('\n')
const report = readScanReport(text)
const open = (answers: Answers) => questionsOf(report, text.split('\n'), answers)

describe('questions about a report', () => {
  it('ask about a guessed heading, a code that looks mistyped, a word like a code, and a code without a unit', () => {
    expect(open(noAnswers)).toEqual([
      { what: 'heading', line: 4, name: 'Comfort box' },
      { what: 'code', line: 3, place: 1, reads: 'PO513-00', code: 'P0513-00', mended: true },
      { what: 'code', line: 5, place: 2, reads: 'b1234', code: 'B1234', mended: false },
      { what: 'unit', line: 1, place: 0, code: 'P0562', more: 0 },
    ])
  })

  it('end when everything is answered, and the scan is as answered', () => {
    const answers: Answers = {
      headings: new Map([['Comfort box', 'Body']]),
      codes: new Map<number, string | null>([
        [1, 'P0513-01'],
        [2, 'B1234'],
      ]),
      units: new Map([[0, 'Gateway']]),
    }
    expect(open(answers)).toEqual([])
    expect(
      answeredUnits(report, answers).map(({ unit, faults }) => [unit, faults.map(({ code }) => code)]),
    ).toEqual([
      ['Engine control', ['P0513-01']],
      ['Body', ['B1234']],
      ['Brakes', []],
      ['Gateway', ['P0562']],
    ])
  })

  it('ask for the unit of codes whose heading was no heading, and not of a code that is left out', () => {
    const headings = new Map([['Comfort box', null]])
    const codes = new Map<number, string | null>([[1, 'P0513-00']])
    expect(open({ ...noAnswers, headings, codes }).map(({ what }) => what)).toEqual(['code', 'unit', 'unit'])
    codes.set(2, null)
    expect(open({ ...noAnswers, headings, codes })).toMatchObject([{ what: 'unit', place: 0 }])
  })

  it('are none for a report that names everything', () => {
    const sure = 'Engine control\nP0513-00 stored'
    expect(questionsOf(readScanReport(sure), sure.split('\n'), noAnswers)).toEqual([])
  })
})

describe('a code typed as an answer', () => {
  it('is taken whole or not at all', () => {
    expect(['p0562', ' U0140:87', 'PO562', 'P0562-0', 'P0562 and P0563', 'hello'].map(onlyCode)).toEqual([
      'P0562',
      'U0140-87',
      'P0562',
      null,
      null,
      null,
    ])
  })
})
