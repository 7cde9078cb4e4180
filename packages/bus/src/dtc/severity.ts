/**
 * @module The severity byte of a trouble code (ISO 14229-1, DTCSeverity): three bits of what to do, five of class.
 *
 * Source: `docs/source/pages/knowledge_base/dtc.rst` of mdabrowski1990/uds (MIT).
 */

/** The bits from bit 0 to bit 7. The classes are those of the global technical regulation on WWH-OBD. */
export const DTC_SEVERITY_BITS: readonly string[] = [
  'DTCClass_0',
  'DTCClass_1',
  'DTCClass_2',
  'DTCClass_3',
  'DTCClass_4',
  'maintenanceOnly',
  'checkAtNextHalt',
  'checkImmediately',
]

/** Names of the bits set in a severity byte, from bit 0 on. */
export function dtcSeverityBits(severity: number): readonly string[] {
  return DTC_SEVERITY_BITS.filter((_, bit) => (severity >> bit) & 1)
}
