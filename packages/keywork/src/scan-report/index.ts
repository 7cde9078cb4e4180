/** @module A fault report that came as text, table or JSON: what it was understood to say, and where to ask. */

import type { ReportedFault } from '../faults/index.ts'
import { codesIn } from './code-pattern.ts'
import { readResource } from './resource.ts'
import { readTable } from './table.ts'
import { readText, reportedFault } from './text.ts'
import type { ReportDecisions, ReportUnits, ScanReport } from './types.ts'
import { NO_FAULT } from './words.ts'

export { linesOfPieces, type TextPiece } from './pieces.ts'
export { redactReport } from './redact.ts'
export type {
  Doubt,
  ReadCode,
  ReadUnit,
  ReportDecisions,
  ReportFinding,
  ScanReport,
  ScanReportFindingCode,
} from './types.ts'

const LONGEST_REPORT = 2_000_000

/**
 * Reads a report of any origin by general rules: the form of trouble codes (SAE J2012), headings, plain words. No
 * maker's and no product's report is special. Never throws; what is not sure carries its doubts.
 */
export function readScanReport(text: string): ScanReport {
  const read = text.slice(0, LONGEST_REPORT)
  const report = readResource(read) ?? readTable(read) ?? readText(read)
  if (text.length <= LONGEST_REPORT) return report
  return {
    ...report,
    findings: [
      ...report.findings,
      {
        code: 'report-too-long',
        severity: 'warning',
        where: {},
        params: { length: text.length, read: LONGEST_REPORT },
      },
    ],
  }
}

/**
 * The units of a scan as the comparison takes them. Codes without a unit go to `decisions.unit`, or to one unit named
 * `''`; a unit that the report names without a code is kept only when it says that it holds none.
 */
export function unitsOfReport(report: ScanReport, decisions: ReportDecisions = {}): ReportUnits {
  const units = new Map<string, ReportedFault[]>()
  const coded = new Set(report.codes.map((read) => read.unit))
  for (const unit of report.units) if (unit.saidClear || coded.has(unit.name)) units.set(unit.name, [])
  for (const [place, read] of report.codes.entries()) {
    if (decisions.leaveOut?.includes(place) === true) continue
    const name = read.unit ?? decisions.unit ?? ''
    const faults = units.get(name) ?? []
    units.set(name, faults)
    const instead = decisions.instead?.[place]
    const fault = instead === undefined ? read.fault : { ...read.fault, ...reportedFault(instead, '') }
    if (!faults.some((each) => each.code === fault.code && each.list === fault.list)) faults.push(fault)
  }
  const left = new Set(report.units.filter((unit) => unit.saidClear).map((unit) => unit.name))
  // A unit whose every code was left out is not one that was found without faults.
  const kept = [...units].filter(([unit, faults]) => faults.length > 0 || left.has(unit))
  return kept.map(([unit, faults]) => {
    const ids = report.units.find(({ name }) => name === unit)?.ids
    return { unit, ...(ids === undefined ? {} : { ids }), time: null, availability: null, faults }
  })
}

/** The first trouble code in what a person typed, with its failure type if it has one; null when there is none. */
export function typedCode(text: string): string | null {
  return codesIn(text.toUpperCase())[0]?.code ?? null
}

/** Where a line says that there is no fault, as places in the line; null when it does not. */
export function noFaultIn(line: string): { readonly from: number; readonly to: number } | null {
  const match = NO_FAULT.exec(line)
  return match === null ? null : { from: match.index, to: match.index + match[0].length }
}
