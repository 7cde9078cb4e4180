import { languageFor, sayEvidence } from '@shearline/jobfile'
import type { Evidence, FaultState } from '@shearline/keywork'
import { listMark, say } from '../../words/engine.ts'
import { language, t } from '../../words/index.ts'
import { clock } from '../../words/instants.ts'
import { instantOf } from './bounds.ts'

/** The strongest first. */
const order = [
  'unit-not-read',
  'failing-now',
  'permanent',
  'confirmed',
  'pending',
  'absent-but-untested',
  'absent',
  'not-tested-since-clear',
  'not-tested-this-cycle',
] as const

/** The strongest thing that may be said of a fault in one scan. */
export function lifeWord(state: FaultState | undefined): string {
  if (state === undefined) return say('claim.unit-not-read')
  const claim = order.find((one) => state.claims.includes(one))
  return say(claim === undefined ? 'claim.none' : `claim.${claim}`)
}

/** A unit's name as a heading, with its other names; a bare number, as a recording knows it, is said to be one. */
export function unitHeading(unit: string, names: readonly string[] = []): string {
  const also = names.filter((name) => name !== unit && !name.startsWith(`${unit} (`))
  const head = /^[0-9A-Fa-f]+$/.test(unit) ? t('faults.unit', { unit }) : unit
  return also.length === 0 ? head : t('faults.unit.also', { unit: head, names: also.join(listMark()) })
}

/** What speaks for a class; instants and seconds since 1970 are said as the time of day. */
export function evidenceWords(evidence: Evidence, zone: string): string {
  return sayEvidence(languageFor(language()), evidence, (time) => {
    if (/^\d{4}-/.test(time)) return clock(time, zone)
    const at = /^\d{10,}(\.\d+)?$/.test(time) ? instantOf(time) : null
    return at === null ? null : clock(at, zone)
  })
}
