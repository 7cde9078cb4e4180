/** @module Reads a report that is free text: headings that name control units, and codes below or beside them. */

import { dtcBytes } from '@shearline/bus'
import type { ReportedFault } from '../faults/index.ts'
import { codesIn, type FoundCode } from './code-pattern.ts'
import { idsIn, withoutIds } from './ids.ts'
import type { Doubt, ReadCode, ReadUnit, ReportFinding, ScanReport } from './types.ts'
import { LIST_WORDS, NO_FAULT, UNIT_WORDS } from './words.ts'

const LONGEST_LINE = 2000
const LONGEST_HEADING = 70
const STATUS_BYTE = /\bstatus(?:[ -]?byte)?\W{0,3}(?:0x|\$)?([0-9a-f]{2})\b/i

/** Reads free text. Never throws. */
export function readText(text: string): ScanReport {
  const lines = text.split(/\r\n|\r|\n/)
  const units: ReadUnit[] = []
  const codes: ReadCode[] = []
  const findings: ReportFinding[] = []
  let unit: ReadUnit | null = null
  for (const [index, line] of lines.entries()) {
    const number = index + 1
    if (line.length > LONGEST_LINE) {
      findings.push({
        code: 'line-too-long',
        severity: 'warning',
        where: { line: number },
        params: { length: line.length, read: LONGEST_LINE },
      })
    }
    const read = line.slice(0, LONGEST_LINE)
    const found = codesIn(read)
    if (found.length === 0) {
      if (NO_FAULT.test(read)) unit = saidClear(units, unit, read, number)
      else unit = headingOf(read, number, lines, index, units) ?? unit
      continue
    }
    const beside = unitBeside(read, found[0] as FoundCode)
    if (beside !== null)
      unit = known(units, {
        name: beside,
        ...idsIn(read.slice(0, found[0]?.from)),
        line: number,
        saidClear: false,
        doubts: [],
      })
    for (const [place, each] of found.entries()) {
      codes.push(codeOf(each, read.slice(each.to, found[place + 1]?.from), number, unit))
    }
  }
  if (codes.length === 0 && !units.some((each) => each.saidClear)) findings.push(nothingFound())
  return { form: 'text', units, codes, findings }
}

function nothingFound(): ReportFinding {
  return {
    code: 'no-code-found',
    severity: 'warning',
    where: {},
    params: {},
  }
}

/** Adds a unit, or takes the one that has this name already. */
function known(units: ReadUnit[], unit: ReadUnit): ReadUnit {
  const same = units.find((each) => each.name.toLowerCase() === unit.name.toLowerCase())
  if (same !== undefined) return same
  units.push(unit)
  return unit
}

/** A line that says "no fault": of the unit it names itself, else of the one above. */
function saidClear(units: ReadUnit[], unit: ReadUnit | null, line: string, number: number): ReadUnit | null {
  const match = NO_FAULT.exec(line)
  const name = tidyName(line.slice(0, match?.index ?? 0))
  const of =
    name === '' ? unit : known(units, { name, ...idsIn(line), line: number, saidClear: true, doubts: [] })
  if (of === null) return null
  const place = units.indexOf(of)
  const clear = { ...of, saidClear: true }
  if (place >= 0) units[place] = clear
  return clear
}

/** A line without codes that names a unit: by its form, by its words, or because codes follow it. */
function headingOf(
  line: string,
  number: number,
  lines: readonly string[],
  index: number,
  units: ReadUnit[],
): ReadUnit | null {
  const name = tidyName(line)
  if (name === '' || name.length > LONGEST_HEADING || /[.!?]$/.test(line.trim()) || /^\d+$/.test(name))
    return null
  // "Mileage: 41 020 km" is a heading by its form and none by what it says.
  const value = /:\s*\S/.test(line)
  const named = UNIT_WORDS.test(name) && !value
  const followed = codesIn(lines.slice(index + 1).find((each) => each.trim() !== '') ?? '').length > 0
  if (!named && !(followed && !value)) return null
  const doubts: Doubt[] = named ? [] : ['heading-guessed']
  return known(units, { name, ...idsIn(line), line: number, saidClear: false, doubts })
}

/** "Engine: P0513-00" or "Engine | P0513": the unit stands before the code in the same line. */
function unitBeside(line: string, first: FoundCode): string | null {
  const before = line.slice(0, first.from)
  const parts = before.split(/[|;\t]|:\s|\s[-–]\s|\s{3,}/).map(tidyName)
  return parts.find((part) => part.length <= LONGEST_HEADING && UNIT_WORDS.test(part)) ?? null
}

function tidyName(text: string): string {
  return withoutIds(text)
    .replace(/^[\s\-–*#=>•.|_~]+|[\s\-–*#=:|_~<]+$/g, '')
    .replace(/^\(?\d{1,3}[).:]\s+/, '')
    .replace(/\s*\(\s*\d+\s*\)$/, '')
    .replace(/\s+/g, ' ')
    .trim()
}

function codeOf(found: FoundCode, rest: string, line: number, unit: ReadUnit | null): ReadCode {
  const doubts: Doubt[] = [...found.doubts]
  if (unit === null) doubts.push('unit-not-named')
  else if (unit.doubts.includes('heading-guessed')) doubts.push('heading-guessed')
  return {
    unit: unit?.name ?? null,
    fault: reportedFault(found.code, rest),
    wording: tidyName(rest).slice(0, 200),
    line,
    from: found.from,
    to: found.to,
    doubts,
  }
}

/** A code with what the words beside it say of its state. */
export function reportedFault(code: string, beside: string): ReportedFault {
  const bytes = dtcBytes(code) ?? new Uint8Array(0)
  const raw = [...bytes].map((byte) => byte.toString(16).toUpperCase().padStart(2, '0')).join('')
  const status = STATUS_BYTE.exec(beside)?.[1]
  const list = LIST_WORDS.find(([, words]) => words.test(beside))?.[0]
  return {
    code,
    raw,
    status: status === undefined ? null : Number.parseInt(status, 16),
    ...(list === undefined || status !== undefined ? {} : { list }),
  }
}
