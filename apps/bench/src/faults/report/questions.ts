/** @module What a report leaves open, asked one thing at a time, and the report as the answers make it. */

import type { ReadCode, ScanReport, UnitScan } from '@shearline/keywork'
import { typedCode, unitsOfReport } from '@shearline/keywork'

/** One thing a person has to say before the report can be kept. `place` is a place in `report.codes`. */
export type Question =
  | { readonly what: 'heading'; readonly line: number; readonly name: string }
  | {
      readonly what: 'code'
      readonly line: number
      readonly place: number
      /** As it stands in the source, and as it was read. */
      readonly reads: string
      readonly code: string
      readonly mended: boolean
    }
  | {
      readonly what: 'unit'
      readonly line: number
      readonly place: number
      readonly code: string
      /** Further codes without a unit. */
      readonly more: number
    }

/** What was answered so far. */
export interface Answers {
  /** By the guessed heading: the unit's name, or null when it names none. */
  readonly headings: ReadonlyMap<string, string | null>
  /** By place: the code it is, or null when it is to be left out. */
  readonly codes: ReadonlyMap<number, string | null>
  /** By place: the unit the code belongs to. */
  readonly units: ReadonlyMap<number, string>
}

export const noAnswers: Answers = { headings: new Map(), codes: new Map(), units: new Map() }

/** Every question still open, in the order of the report: headings first, because they answer others. */
export function questionsOf(report: ScanReport, lines: readonly string[], answers: Answers): Question[] {
  const questions: Question[] = []
  for (const { name, line, doubts } of report.units) {
    const matters = doubts.includes('heading-guessed') && report.codes.some((read) => read.unit === name)
    if (matters && !answers.headings.has(name)) questions.push({ what: 'heading', line, name })
  }
  for (const [place, read] of report.codes.entries()) {
    const mended = read.doubts.includes('code-mended')
    if (answers.codes.has(place) || !(mended || read.doubts.includes('perhaps-no-code'))) continue
    const reads = lines[read.line - 1]?.slice(read.from, read.to) || read.fault.code
    questions.push({ what: 'code', line: read.line, place, reads, code: read.fault.code, mended })
  }
  const nameless = namelessPlaces(report, answers)
  for (const [index, place] of nameless.entries()) {
    const read = report.codes[place] as ReadCode
    const code = answers.codes.get(place) ?? read.fault.code
    questions.push({ what: 'unit', line: read.line, place, code, more: nameless.length - index - 1 })
  }
  return questions
}

/** Places of codes that no heading, no line and no answer gives a unit. */
export function namelessPlaces(report: ScanReport, answers: Answers): number[] {
  return report.codes.flatMap((read, place) => {
    if (answers.codes.get(place) === null) return []
    return unitOf(read, place, answers) === null ? [place] : []
  })
}

/** The unit of a code as answered: its own answer first, then that to its heading. */
export function unitOf(read: ReadCode, place: number, answers: Answers): string | null {
  const own = answers.units.get(place)
  if (own !== undefined) return own
  if (read.unit === null) return null
  return answers.headings.has(read.unit) ? (answers.headings.get(read.unit) ?? null) : read.unit
}

/** The units of the scan as answered, ready to be kept. Only meaningful once no question is open. */
export function answeredUnits(report: ScanReport, answers: Answers): readonly UnitScan[] {
  const named: ScanReport = {
    ...report,
    units: report.units.flatMap((unit) => {
      const name = answers.headings.has(unit.name) ? answers.headings.get(unit.name) : unit.name
      return name === null || name === undefined ? [] : [{ ...unit, name }]
    }),
    codes: report.codes.map((read, place) => ({ ...read, unit: unitOf(read, place, answers) })),
  }
  const leaveOut = [...answers.codes].flatMap(([place, code]) => (code === null ? [place] : []))
  const instead = Object.fromEntries(
    [...answers.codes].flatMap(([place, code]) =>
      code === null || code === report.codes[place]?.fault.code ? [] : [[place, code]],
    ),
  )
  return unitsOfReport(named, { leaveOut, instead })
}

/** The code a person typed, when it is one and nothing else; null for a part of one. */
export function onlyCode(words: string): string | null {
  const code = typedCode(words)
  const plain = (text: string) => text.trim().toUpperCase().replace(/[-:]/, '')
  const typed = plain(words).replaceAll('O', '0').replaceAll('I', '1')
  return code !== null && plain(code) === typed ? code : null
}
