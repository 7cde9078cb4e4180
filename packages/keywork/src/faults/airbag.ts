/** @module Which faults belong to the airbag system: they are treated with most care. */

import { readCode } from './code.ts'
import { roleOf } from './roles.ts'
import type { UnitRole } from './types.ts'

/**
 * True for codes of the restraint range B0001 to B00FF (SAE J2012, memory) and for any code of a unit that is named,
 * or told to be, an airbag or restraint unit. A code of another unit that only complains about the airbag unit is none.
 */
export function isAirbagFault(
  unit: string,
  code: string,
  roles: Readonly<Record<string, UnitRole>> = {},
): boolean {
  const namesRestraints = /air[\s-]?bag|restraint|\bsrs\b/i.test(unit)
  return (
    namesRestraints ||
    roleOf(unit, roles) === 'restraints' ||
    /^B00[0-9A-F]{2}$/.test(readCode(code)?.base ?? '')
  )
}
