/**
 * @module How many bytes the data of an identifier has where a standard fixes it.
 *
 * Messages carry identifiers and data without lengths. Only where every length before a place is fixed by a standard
 * is that place certain: the VIN (17 characters), the active session (1 byte), and F4xx, which are the PIDs of
 * SAE J1979 whose lengths two sources agree on. Lengths of F186 and F190 are from memory of ISO 14229-1 Annex C.
 */

import { certainPidBytes } from '../obd/pids.ts'

/** Bytes of the data behind an identifier; `undefined` when only its maker knows. */
export type LengthOf = (did: number) => number | undefined

/** The lengths that standards fix. */
export const standardLength: LengthOf = (did) => {
  if (did === 0xf190) return 17
  if (did === 0xf186) return 1
  return did >> 8 === 0xf4 ? certainPidBytes(did & 0xff) : undefined
}
