/** @module What is worth saying of a comparison as a whole. */

import { readCode } from './code.ts'
import { PHASES, type Readings } from './merge.ts'
import { isProvenAbsent } from './status.ts'
import type { FaultFinding, FaultLine } from './types.ts'

/** Gaps between the scans, codes that cannot be read, and what must be scanned again. */
export function comparisonFindings(
  readings: Readings,
  faults: readonly FaultLine[],
): readonly FaultFinding[] {
  return [...gapFindings(readings), ...retestFindings(readings, faults), ...unreadableFindings(readings)]
}

function gapFindings(readings: Readings): FaultFinding[] {
  const before = readings.get('before')
  const laterPhases = PHASES.filter((phase) => phase !== 'before' && readings.has(phase))
  const later = new Set(laterPhases.flatMap((phase) => [...(readings.get(phase)?.keys() ?? [])]))
  const findings: FaultFinding[] = []
  if (before === undefined) {
    findings.push({
      code: 'no-before-scan',
      severity: 'warning',
      where: {},
      params: {},
    })
  }
  if (before !== undefined) {
    for (const unit of later) {
      if (before.has(unit)) continue
      findings.push({
        code: 'unit-not-read-before',
        severity: 'warning',
        where: { part: unit },
        params: { unit },
      })
    }
  }
  if (laterPhases.length > 0) {
    for (const unit of before?.keys() ?? []) {
      if (later.has(unit)) continue
      findings.push({
        code: 'unit-not-read-again',
        severity: 'warning',
        where: { part: unit },
        params: { unit },
      })
    }
  }
  return findings
}

/** "No code" right after clearing proves nothing until the tests have run (ISO 14229-1 status bits 4 and 6). */
function retestFindings(readings: Readings, faults: readonly FaultLine[]): FaultFinding[] {
  const waiting = faults.filter((fault) => {
    const last = fault.life.filter((state) => !state.claims.includes('unit-not-read')).at(-1)
    return last !== undefined && !last.present && !isProvenAbsent(last)
  })
  const units = [...new Set(waiting.map((fault) => fault.unit))]
  return units.map((unit) => {
    const codes = waiting.filter((fault) => fault.unit === unit).map((fault) => fault.code)
    return {
      code: 'cleared-not-retested',
      severity: 'warning',
      where: { part: unit },
      params: { unit, codes: codes.join(', '), since: readings.has('cycled') ? 'cycled' : 'cleared' },
    }
  })
}

function unreadableFindings(readings: Readings): FaultFinding[] {
  const findings: FaultFinding[] = []
  for (const [phase, units] of readings) {
    for (const [unit, reading] of units) {
      for (const fault of reading.faults) {
        if (readCode(fault.code) !== null) continue
        findings.push({
          code: 'fault-code-unreadable',
          severity: 'warning',
          where: { part: `${phase}, ${unit}` },
          params: { unit, phase, code: fault.code },
        })
      }
    }
  }
  return findings
}
