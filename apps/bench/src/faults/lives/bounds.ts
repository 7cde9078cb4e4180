/** @module Between which two moments a fault can have been set. */

import { bodyOf, type Fact } from '@shearline/jobfile'
import type { FaultLine, ScanPhase } from '@shearline/keywork'

/** Recordings whose clock counts from 1970; others count from power-up and tell no time of day. Seconds. */
const EPOCH_SECONDS = 1_000_000_000

/** What the scans bound: the last reading without the fault and the first with it, as UTC instants. */
export interface Bounds {
  readonly without: { readonly phase: ScanPhase; readonly at: string | null } | null
  readonly with: { readonly phase: ScanPhase; readonly at: string | null } | null
  /** The reading without it had not run its test, so it proves less. */
  readonly untested: boolean
}

/** Bounds of one fault from its life and the scans on record. `names`: every name its unit has in the scans. */
export function boundsOf(
  line: FaultLine,
  facts: readonly Fact[],
  names: readonly string[] = [line.unit],
): Bounds {
  const first = line.life.findIndex((state) => state.present)
  const before = line.life
    .slice(0, Math.max(0, first))
    .findLast((state) => !state.claims.includes('unit-not-read'))
  const withIt = line.life[first]
  return {
    without:
      before === undefined
        ? null
        : { phase: before.phase, at: readAt(line, before.phase, facts, names, 'last') },
    with:
      withIt === undefined
        ? null
        : { phase: withIt.phase, at: readAt(line, withIt.phase, facts, names, 'first') },
    untested: before?.claims.includes('absent-but-untested') === true,
  }
}

/**
 * When a unit was read in a phase: by the recording's clock, else when the scan was kept. Of several scans of a phase
 * the first that lists the fault counts, or, when none does, the last.
 */
function readAt(
  line: FaultLine,
  phase: ScanPhase,
  facts: readonly Fact[],
  names: readonly string[],
  which: 'first' | 'last',
): string | null {
  const withdrawn = new Set(
    facts.flatMap((fact) => {
      const read = fact.kind === 'corrected' ? bodyOf(fact, 'corrected') : null
      return read?.ok === true && read.body.action === 'withdrawn' ? [read.body.fact] : []
    }),
  )
  const times = facts.flatMap((fact): string[] => {
    if (fact.kind !== 'scan-attached' || withdrawn.has(fact.id)) return []
    const read = bodyOf(fact, 'scan-attached')
    if (!read.ok || read.body.phase !== phase) return []
    return read.body.units.flatMap((each) => {
      if (!names.includes(each.unit)) return []
      const lists = each.faults.some((fault) => sameFault(fault.code, line.code))
      return which === 'last' || lists ? [instantOf(each.time) ?? fact.at] : []
    })
  })
  return times.sort().at(which === 'first' ? 0 : -1) ?? null
}

/** A code without failure type is the same fault as that code with one (FLT-01). */
function sameFault(one: string, other: string): boolean {
  const [base, type] = one.toUpperCase().split('-')
  const [otherBase, otherType] = other.toUpperCase().split('-')
  return base === otherBase && (type === otherType || type === undefined || otherType === undefined)
}

/** A UTC instant from seconds as a recording wrote them; null when its clock is not a clock of day. */
export function instantOf(seconds: string | null): string | null {
  if (seconds === null || !(Number(seconds) >= EPOCH_SECONDS)) return null
  const milliseconds = Number(seconds) * 1000
  return milliseconds < 8.64e15 ? new Date(milliseconds).toISOString() : null
}
