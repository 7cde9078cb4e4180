/** @module Whose faults are they: compares the scans of one job (rules in SPEC.md). */

import { isAirbagFault } from './airbag.ts'
import { readCode, tidyCode } from './code.ts'
import { type ExplainOptions, type Explanation, explanationsOf, WHOLE_CAR_SILENCE } from './explanations.ts'
import { comparisonFindings } from './findings.ts'
import {
  codesOfUnit,
  hasOtherFailureType,
  mergeScans,
  PHASES,
  type Readings,
  reportsOf,
  type UnitReading,
} from './merge.ts'
import { isProvenAbsent, stateOfReports, stateOfSilence, stateOfUnread, wasRead } from './status.ts'
import type {
  CompareOptions,
  Evidence,
  FaultClass,
  FaultComparison,
  FaultLine,
  FaultState,
  Scan,
  ScanPhase,
  WorkEvent,
} from './types.ts'
import { addressOf, joinUnits, rolesOf } from './units.ts'

/** A line before it is told scan by scan. */
type Draft = Omit<FaultLine, 'byScan'>

/** How sure each class is by itself. Ours, stated, not measured; an explanation brings its own. */
const SURE = 0.95
const TEST_NOT_RUN = 0.5
const NO_STATUS = 0.85

/**
 * Compares scans of before, after, after clearing and after an ignition cycle. Scans may come in any number per phase.
 *
 * Precision first: a fault is `raised-by-work` only when its unit was read before without it, its test had run, and
 * something the work did explains it; and it never is when it comes back after clearing. Never throws.
 */
export function compareScans(scans: readonly Scan[], told: CompareOptions = {}): FaultComparison {
  const joined = joinUnits(scans, told.matches)
  const readings = mergeScans(joined.scans)
  const options = asJoined(joined.names, told)
  const single = joined.scans.map((scan) => ({ phase: scan.phase, readings: mergeScans([scan]) }))
  const units = [...new Set(PHASES.flatMap((phase) => [...(readings.get(phase)?.keys() ?? [])]))]
  const linesWith = (choices: ExplainOptions): readonly Draft[] =>
    units.flatMap((unit) =>
      codesOfUnit(unit, readings).flatMap((code) => lineOf(unit, code, readings, choices) ?? []),
    )
  const drafted = linesWith(options)
  const lines = pointsToOneUnit(drafted) ? linesWith({ ...options, wholeCarSilence: false }) : drafted
  const original = new Map(options.events.map((event, at) => [event, told.events?.[at] ?? event]))
  const faults = lines.map((line) => ({
    ...line,
    byScan: single.map(({ phase, readings: one }) => stateIn(phase, line.unit, line.code, one, options)),
    candidates: line.candidates.map((event) => original.get(event) ?? event),
  }))
  const read = (phase: ScanPhase): readonly string[] => [...(readings.get(phase)?.keys() ?? [])]
  const unitsRead = {
    before: read('before'),
    after: read('after'),
    cleared: read('cleared'),
    cycled: read('cycled'),
  }
  const findings = [...joined.questions, ...comparisonFindings(readings, faults)]
  return { faults, unitsRead, unitNames: joined.names, findings }
}

/** Events and purposes under the names the units go by here. */
function asJoined(
  names: FaultComparison['unitNames'],
  told: CompareOptions,
): CompareOptions & { readonly events: readonly WorkEvent[] } {
  const nameOf = new Map<string, string>()
  if (told.events?.some(({ unit }) => unit !== null))
    for (const [name, all] of Object.entries(names)) for (const each of all) nameOf.set(each, name)
  const events = (told.events ?? []).map((event) => {
    const { unit } = event
    if (unit === null) return { ...event }
    return { ...event, unit: nameOf.get(unit) ?? nameOf.get(addressOf(unit) ?? '') ?? unit }
  })
  return { ...told, events, roles: rolesOf(names, told.roles) }
}

/**
 * A supply that gives way silences several units, one after another. When all complaints name one and the same unit,
 * its own wire or connector fits as well, so the supply explains nothing (FLT-16).
 */
function pointsToOneUnit(faults: readonly Draft[]): boolean {
  const silenced = faults.filter((line) => line.explanation?.rule === WHOLE_CAR_SILENCE)
  return new Set(silenced.map((line) => readCode(line.code)?.base)).size === 1
}

function lineOf(unit: string, code: string, readings: Readings, options: ExplainOptions): Draft | null {
  const life = PHASES.filter((phase) => readings.has(phase)).map((phase) =>
    stateIn(phase, unit, code, readings, options),
  )
  // A unit that lists a code only to say that its test has not run reports no fault.
  if (!life.some((state) => state.present)) return null
  const airbag = isAirbagFault(unit, code, options.roles)
  const permanent = life.some((state) => state.claims.includes('permanent'))
  const explanations = isNew(life) ? explanationsFor(unit, code, life, readings, options) : []
  const [explanation = null] = explanations
  const faultClass = permanent ? 'permanent' : classOf(life, explanation)
  const raised = faultClass === 'raised-by-work' ? explanation : null
  return {
    unit,
    code,
    class: faultClass,
    explanation: raised === null ? null : { rule: raised.rule.id },
    confidence: confidenceOf(faultClass, life, raised),
    evidence: evidenceOf(unit, code, readings, raised),
    candidates: raised === null ? [] : [...new Set(explanations.map(({ event }) => event))],
    life,
    airbag,
    needsAttention: needsAttention(faultClass, life, airbag),
  }
}

function stateIn(
  phase: ScanPhase,
  unit: string,
  code: string,
  readings: Readings,
  options: CompareOptions,
): FaultState {
  const reading = readings.get(phase)?.get(unit)
  if (reading === undefined) return stateOfUnread(phase)
  const reports = reportsOf(code, reading)
  if (reports.length > 0) return stateOfReports(phase, reports, reading.availability)
  return stateOfSilence(phase, phase === 'cleared' || clearedBefore(phase, reading, options))
}

/** A clear request in the recording makes silence in the after-scan as empty as in a scan right after clearing. */
function clearedBefore(phase: ScanPhase, reading: UnitReading, options: CompareOptions): boolean {
  if (phase !== 'after') return false
  return (options.events ?? []).some(
    (event) =>
      event.kind === 'cleared' &&
      (event.unit === null || event.unit === reading.unit) &&
      !(event.time !== null && reading.lastTime !== null && Number(event.time) > Number(reading.lastTime)),
  )
}

function isNew(life: readonly FaultState[]): boolean {
  const before = stateAt(life, 'before')
  return before !== undefined && wasRead(before) && !before.present
}

function classOf(life: readonly FaultState[], explanation: Explanation | null): FaultClass {
  const before = stateAt(life, 'before')
  const later = life.filter((state) => state.phase !== 'before' && wasRead(state))
  const last = later.at(-1)
  if (before === undefined || !wasRead(before) || last === undefined) return 'not-comparable'
  if (before.present) {
    if (!last.present) return 'there-before-gone'
    return later.some((state) => !state.present) ? 'there-before-back' : 'there-before-still'
  }
  return explanation === null ? 'new-unexplained' : 'raised-by-work'
}

function explanationsFor(
  unit: string,
  code: string,
  life: readonly FaultState[],
  readings: Readings,
  options: ExplainOptions,
): readonly Explanation[] {
  const before = stateAt(life, 'before')
  const last = life.filter((state) => state.phase !== 'before' && wasRead(state)).at(-1)
  if (before === undefined || last === undefined) return []
  // Its test had not run before the work: it may have been there and been cleared by someone.
  if (before.claims.includes('not-tested-since-clear')) return []
  if (hasOtherFailureType(code, readings.get('before')?.get(unit))) return []
  // What the work raised stays away once cleared.
  const wentAway = life.findIndex((state) => state.phase !== 'before' && wasRead(state) && !state.present)
  const appeared = life.findIndex((state) => state.present)
  if (wentAway > appeared && life.slice(wentAway).some((state) => state.present)) return []
  const firstWith = life.find((state) => state.present)?.phase
  return explanationsOf(
    {
      unit,
      code,
      lastWithout: readings.get('before')?.get(unit)?.lastTime ?? null,
      firstWith: firstWith === undefined ? null : (readings.get(firstWith)?.get(unit)?.lastTime ?? null),
      provenAway: last.phase === 'cycled' && isProvenAbsent(last),
      failingNow: last.claims.includes('failing-now'),
    },
    options,
  )
}

function confidenceOf(
  faultClass: FaultClass,
  life: readonly FaultState[],
  raised: Explanation | null,
): number {
  if (raised !== null) return raised.confidence
  if (faultClass === 'not-comparable') return 0
  const before = stateAt(life, 'before')
  const last = life.filter(wasRead).at(-1)
  if (faultClass === 'there-before-gone' && last !== undefined && !isProvenAbsent(last)) return TEST_NOT_RUN
  if (faultClass === 'new-unexplained' && before !== undefined && !isProvenAbsent(before)) return TEST_NOT_RUN
  return life.some((state) => state.present && state.status === null) ? NO_STATUS : SURE
}

function evidenceOf(
  unit: string,
  code: string,
  readings: Readings,
  raised: Explanation | null,
): readonly Evidence[] {
  const evidence: Evidence[] = []
  if (raised !== null) evidence.push(raised.event.evidence)
  if (hasOtherFailureType(code, readings.get('before')?.get(unit))) {
    evidence.push({ code: 'other-failure-type', params: { phase: 'before' } })
  }
  for (const phase of PHASES) {
    const raw = [
      ...new Set(
        (readings.get(phase)?.get(unit)?.faults ?? [])
          .filter((fault) => tidyCode(fault.code) === code && fault.raw !== '')
          .map((fault) => fault.raw),
      ),
    ]
    if (raw.length > 0) evidence.push({ code: 'reported-as', params: { phase, raw: raw.join(', ') } })
  }
  return evidence
}

function needsAttention(faultClass: FaultClass, life: readonly FaultState[], airbag: boolean): boolean {
  const last = life.filter(wasRead).at(-1)
  if (airbag || faultClass === 'new-unexplained' || faultClass === 'not-comparable') return true
  if (faultClass === 'permanent') return stateAt(life, 'before')?.present !== true
  return faultClass === 'raised-by-work' && last?.present === true
}

function stateAt(life: readonly FaultState[], phase: ScanPhase): FaultState | undefined {
  return life.find((state) => state.phase === phase)
}
