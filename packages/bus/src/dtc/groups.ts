/**
 * @module How codes are written and grouped (ISO 14229-1 Annex D): format identifiers, groups, functional groups.
 *
 * Source: `uds/utilities/constants/dtc.py` of mdabrowski1990/uds (MIT).
 */

import { hexUpper } from './code.ts'

/** DTCFormatIdentifier: what standard the three bytes of a code follow. */
export const DTC_FORMATS: ReadonlyMap<number, string> = new Map([
  [0x00, 'SAE J2012-DA DTC Format 00'],
  [0x01, 'ISO 14229-1 DTC Format'],
  [0x02, 'SAE J1939-73 DTC Format'],
  [0x03, 'ISO 11992-4 DTC Format'],
  [0x04, 'SAE J2012-DA DTC Format 04'],
])

/** FunctionalGroupIdentifier; a group of codes FFFFxx names the same groups. */
export const FUNCTIONAL_GROUPS: ReadonlyMap<number, string> = new Map([
  [0x33, 'emissions-system group'],
  [0xd0, 'safety-system group'],
  [0xfe, 'VOBD system'],
])

/** Name of a functional group; what the standard does not name is reserved by it. */
export function nameOfFunctionalGroup(group: number): string {
  return FUNCTIONAL_GROUPS.get(group) ?? 'ISOSAEReserved'
}

/** Name of the group of codes in three bytes; `one code or group` for what is none of the standard's groups. */
export function nameOfDtcGroup(bytes: Uint8Array): string {
  const group = hexUpper(bytes)
  if (group === 'FFFFFF') return 'all groups'
  const named = group.startsWith('FFFF') ? FUNCTIONAL_GROUPS.get(bytes[2] as number) : undefined
  return named ?? 'one code or group'
}
