/** @module Says what the fault comparison and the reader of reports answer by code. */
import type { Evidence, FaultFinding, ReportFinding } from '@shearline/keywork'
import { isCode, type Language } from './catalogues.ts'
import { voltsText } from './numbers.ts'
import { say } from './say.ts'

/**
 * What speaks for a class, in words: `work.log, 12.5 s, hardReset`. `clock` writes an instant (UTC text) or a
 * recording's seconds as the reader's time of day, or gives null where it cannot.
 */
export function sayEvidence(
  language: Language,
  { code, params }: Evidence,
  clock: (time: string) => string | null = () => null,
): string {
  const time = clock(String(params.at ?? params.seconds ?? ''))
  const told = Object.fromEntries(
    Object.entries(params).map(([name, value]) => [name, spoken(language, name, value)]),
  )
  if (code === 'recorded' || code === 'recorded-detail')
    return time === null
      ? say(language, `evidence.${code}`, told)
      : say(language, `evidence.${code}.at`, { ...told, time })
  return say(language, `evidence.${code}`, time === null ? told : { ...told, at: time })
}

function spoken(language: Language, name: string, value: string | number): string | number {
  if (typeof value === 'number') return voltsText(language, value)
  const phase = `phase.${value}`
  return name === 'phase' && isCode(phase) ? say(language, phase) : value
}

/** One finding of a comparison: what it is, and what to do next. */
export function sayFaultFinding(
  language: Language,
  { code, params }: FaultFinding,
): { readonly what: string; readonly doNext: string } {
  const next =
    code === 'cleared-not-retested' && params.since === 'cycled' ? (`${code}.cycled` as const) : code
  return {
    what: say(language, `fault-finding.${code}`, params),
    doNext: say(language, `fault-finding-do.${next}`, params),
  }
}

/** One finding about a report: what it is, and what to do next. */
export function sayReportFinding(
  language: Language,
  { code, params }: ReportFinding,
): { readonly what: string; readonly doNext: string } {
  return {
    what: say(language, `report-finding.${code}`, params),
    doNext: say(language, `report-finding-do.${code}`, params),
  }
}
