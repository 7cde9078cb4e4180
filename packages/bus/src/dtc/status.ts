/**
 * @module The status byte of a trouble code (ISO 14229-1, statusOfDTC).
 *
 * Source: `docs/source/pages/knowledge_base/dtc.rst` of mdabrowski1990/uds and `udsoncan/common/dtc.py` of
 * pylessard/python-udsoncan (both MIT).
 */

/** One bit of the status byte. */
export type DtcStatusBit =
  | 'testFailed'
  | 'testFailedThisOperationCycle'
  | 'pendingDTC'
  | 'confirmedDTC'
  | 'testNotCompletedSinceLastClear'
  | 'testFailedSinceLastClear'
  | 'testNotCompletedThisOperationCycle'
  | 'warningIndicatorRequested'

/** The bits from bit 0 to bit 7. */
export const DTC_STATUS_BITS: readonly DtcStatusBit[] = [
  'testFailed',
  'testFailedThisOperationCycle',
  'pendingDTC',
  'confirmedDTC',
  'testNotCompletedSinceLastClear',
  'testFailedSinceLastClear',
  'testNotCompletedThisOperationCycle',
  'warningIndicatorRequested',
]

/** Names of the bits set in a status byte, from bit 0 on. */
export function dtcStatusBits(status: number): readonly DtcStatusBit[] {
  return DTC_STATUS_BITS.filter((_, bit) => (status >> bit) & 1)
}
