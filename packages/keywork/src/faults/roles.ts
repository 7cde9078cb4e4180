/** @module What control units are for, and which unit a lost-communication code names. */

import { remembered } from './remembered.ts'
import type { UnitRole } from './types.ts'

/**
 * Lost-communication codes and the unit they name (SAE J2012, memory; U0140 also in general trade practice 4.5).
 * A code that is not here explains nothing.
 */
export const LOST_COMMUNICATION: Readonly<Record<string, UnitRole>> = {
  U0100: 'engine',
  U0101: 'transmission',
  U0121: 'brakes',
  U0131: 'steering',
  U0140: 'body',
  U0146: 'gateway',
  U0151: 'restraints',
  U0155: 'instruments',
  U0167: 'immobiliser',
  U0168: 'alarm',
  U0214: 'remote',
}

/** Words in a unit's name that say what it is for. Common practice, no source. */
const ROLE_WORDS: readonly (readonly [RegExp, UnitRole])[] = [
  [/air[\s-]?bag|restraint|\bsrs\b/i, 'restraints'],
  [/immobili[sz]er/i, 'immobiliser'],
  [/gateway/i, 'gateway'],
  [/engine|powertrain|\becm\b|\bpcm\b/i, 'engine'],
  [/transmission|gearbox|\btcm\b/i, 'transmission'],
  [/brake|\babs\b/i, 'brakes'],
  [/steering/i, 'steering'],
  [/instrument|cluster/i, 'instruments'],
  [/alarm/i, 'alarm'],
  [/remote/i, 'remote'],
  [/\bbody\b|\bbcm\b/i, 'body'],
]

/** What one unmistakable word in a name says; null when unsure. */
const wordedRole: (unit: string) => UnitRole | null = remembered((unit) => {
  const roles = new Set(ROLE_WORDS.filter(([words]) => words.test(unit)).map(([, each]) => each))
  const [only] = roles
  return roles.size === 1 && only !== undefined ? only : null
})

/** What a unit is for: as told, or by one unmistakable word in its name; null when unsure. */
export function roleOf(unit: string, told: Readonly<Record<string, UnitRole>> = {}): UnitRole | null {
  const role = Object.hasOwn(told, unit) ? told[unit] : undefined
  return role ?? wordedRole(unit)
}
