/** @module Brings several scans of one phase, and several ways to write one code, together. */

import { readCode, tidyCode } from './code.ts'
import type { ReportedFault, Scan, ScanPhase, UnitScan } from './types.ts'

export const PHASES: readonly ScanPhase[] = ['before', 'after', 'cleared', 'cycled']

/** All a unit reported in one phase. */
export interface UnitReading {
  readonly unit: string
  /** Earliest and latest time the unit was read in this phase; null when one reading has none. */
  readonly firstTime: string | null
  readonly lastTime: string | null
  readonly availability: number | null
  readonly faults: readonly ReportedFault[]
}

/** Readings by phase and unit; a phase without any scan is absent. */
export type Readings = ReadonlyMap<ScanPhase, ReadonlyMap<string, UnitReading>>

/**
 * Brings scans together. Before and after the work every fault of any scan counts: what was seen once was there.
 * After clearing and after a cycle the unit's last reading counts: the question is what is left.
 */
export function mergeScans(scans: readonly Scan[]): Readings {
  const readings = new Map<ScanPhase, Map<string, UnitReading>>()
  for (const scan of scans) {
    const units = readings.get(scan.phase) ?? new Map<string, UnitReading>()
    readings.set(scan.phase, units)
    for (const unit of scan.units) {
      const known = units.get(unit.unit)
      const keepAll = scan.phase === 'before' || scan.phase === 'after'
      units.set(unit.unit, known === undefined || !keepAll ? single(unit) : joined(known, unit))
    }
  }
  return readings
}

function single(scan: UnitScan): UnitReading {
  const { unit, time, availability, faults } = scan
  return { unit, firstTime: time, lastTime: time, availability, faults }
}

function joined(known: UnitReading, scan: UnitScan): UnitReading {
  const later = new Map(scan.faults.map((fault) => [keyOf(fault), fault.status]))
  return {
    unit: known.unit,
    firstTime: known.firstTime,
    lastTime: scan.time,
    availability:
      known.availability === null || scan.availability === null
        ? null
        : known.availability | scan.availability,
    // A code reported again takes its later status; one no longer reported stays on record, and so does one that was
    // reported without a status: no later status takes back that it was seen.
    faults: [
      ...known.faults.filter((fault) => {
        const status = later.get(keyOf(fault))
        return status === undefined || (fault.status === null && status !== null)
      }),
      ...scan.faults,
    ],
  }
}

function keyOf({ list, code }: ReportedFault): string {
  return `${list ?? ''} ${tidyCode(code)}`
}

/**
 * The codes of one unit over all phases, each once. A code without failure type is the same fault as the one with it,
 * so the shorter writing gives way to the fuller.
 */
export function codesOfUnit(unit: string, readings: Readings): readonly string[] {
  const codes = new Set<string>()
  for (const phase of PHASES) {
    for (const fault of readings.get(phase)?.get(unit)?.faults ?? []) codes.add(tidyCode(fault.code))
  }
  const full = [...codes].filter((code) => readCode(code)?.failureType != null)
  return [...codes].filter(
    (code) => readCode(code)?.failureType !== null || !full.some((other) => readCode(other)?.base === code),
  )
}

/** The reports of one code in one reading; one without failure type stands for every failure type of its code. */
export function reportsOf(code: string, reading: UnitReading): readonly ReportedFault[] {
  const wanted = readCode(code)
  return reading.faults.filter((fault) => {
    const reported = tidyCode(fault.code)
    return reported === code || (wanted !== null && reported === wanted.base)
  })
}

/** True when the reading holds the same five characters with another failure type. */
export function hasOtherFailureType(code: string, reading: UnitReading | undefined): boolean {
  const wanted = readCode(code)
  if (wanted === null || wanted.failureType === null) return false
  return (reading?.faults ?? []).some((fault) => {
    const reported = readCode(fault.code)
    return (
      reported?.base === wanted.base &&
      reported.failureType !== null &&
      reported.failureType !== wanted.failureType
    )
  })
}
