/** @module What a report from somebody's equipment was understood to say, and where it says it. */

import type { Finding } from '@shearline/bus'
import type { ReportedFault, UnitScan } from '../faults/index.ts'

/** Why a reading is not sure and a person should look. */
export type Doubt =
  /** The code looks mistyped; `code` is the likely reading. */
  | 'code-mended'
  /** No heading says which control unit the code belongs to. */
  | 'unit-not-named'
  /** A line was taken for a heading only because codes follow it. */
  | 'heading-guessed'
  /** The letters may be a part number or a word. */
  | 'perhaps-no-code'

/** One code as it stands in the report. */
export interface ReadCode {
  /** Name of the control unit as the report has it; null when it names none. */
  readonly unit: string | null
  readonly fault: ReportedFault
  /** The rest of the line: what the report calls the fault. */
  readonly wording: string
  /** Counted from 1; `from` and `to` are places in that line. */
  readonly line: number
  readonly from: number
  readonly to: number
  /** Empty when sure. */
  readonly doubts: readonly Doubt[]
}

/** A control unit that the report names. */
export interface ReadUnit {
  readonly name: string
  /** Identifiers or addresses that stand beside the name. */
  readonly ids?: readonly string[]
  readonly line: number
  /** The report says that it was read and holds no fault. */
  readonly saidClear: boolean
  readonly doubts: readonly Doubt[]
}

export type ScanReportFindingCode = 'no-code-found' | 'line-too-long' | 'report-too-long'

/** One finding about a report. A catalogue says what it is and what to do next, by code and `params`. */
export interface ReportFinding extends Pick<Finding<ScanReportFindingCode>, 'code' | 'severity' | 'where'> {
  readonly params: Readonly<Record<string, number>>
}

/** A report taken apart. */
export interface ScanReport {
  readonly form: 'text' | 'table' | 'json'
  readonly units: readonly ReadUnit[]
  readonly codes: readonly ReadCode[]
  readonly findings: readonly ReportFinding[]
}

/** What a person decided about a report: who each nameless code belongs to, what to leave out. */
export interface ReportDecisions {
  /** Name for codes and units the report does not name. */
  readonly unit?: string
  /** Places in `codes` to leave out. */
  readonly leaveOut?: readonly number[]
  /** Other readings of codes, by place in `codes`. */
  readonly instead?: Readonly<Record<number, string>>
}

/** The units of a scan, ready for the comparison. */
export type ReportUnits = readonly UnitScan[]
