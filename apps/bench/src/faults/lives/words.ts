import type { FaultState } from '@shearline/keywork'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
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

/** A unit's name as a heading; a bare number, as a recording knows it, is said to be one. */
export function unitHeading(unit: string): string {
  return /^[0-9A-Fa-f]+$/.test(unit) ? t('faults.unit', { unit }) : unit
}

/** The engine's evidence with seconds since 1970 said as the time of day. */
export function evidenceWords(evidence: string, zone: string): string {
  return evidence.replace(/\b(\d{10,}(?:\.\d+)?) s\b/g, (whole, seconds: string) => {
    const at = instantOf(seconds)
    return at === null ? whole : clock(at, zone)
  })
}
