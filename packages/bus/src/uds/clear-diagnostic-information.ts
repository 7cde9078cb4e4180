/** @module 14 ClearDiagnosticInformation (ISO 14229-1): the group of codes to clear, three bytes. */

import { hexUpper } from '../dtc/index.ts'
import { type ServiceReader, tooShort } from './reader.ts'

/** Groups of ISO 14229-1 Annex D, from `uds/utilities/constants/dtc.py` of mdabrowski1990/uds (MIT). */
const GROUPS: Readonly<Record<string, string>> = {
  FFFFFF: 'all groups',
  FFFF33: 'emissions-system group',
  FFFFD0: 'safety-system group',
  FFFFFE: 'VOBD system',
}

export const clearDiagnosticInformation: ServiceReader = {
  request: (payload) => {
    if (payload.length < 4) return tooShort(4)
    const group = hexUpper(payload.subarray(1, 4))
    return { texts: { groupOfDTC: group, groupName: GROUPS[group] ?? 'one code or group' } }
  },
  response: () => ({}),
}
