/**
 * @module PIDs whose byte is a set of bits: oxygen sensors present (13, 1D) and auxiliary input (1E).
 *
 * Source: the table of the public encyclopaedia's article on OBD-II PIDs. The bits of 65, 7D and 7E stand in no source
 * at hand: they stay bytes.
 */

/** Bits 0 to 7, as bank and sensor: two banks of four in PID 13, four of two in PID 1D. */
function sensorsPresent(byte: number, sensorsPerBank: 2 | 4): string {
  const present: string[] = []
  for (let bit = 0; bit < 8; bit++) {
    if ((byte >> bit) & 1)
      present.push(`bank ${Math.floor(bit / sensorsPerBank) + 1} sensor ${(bit % sensorsPerBank) + 1}`)
  }
  return present.length === 0 ? 'none' : present.join(', ')
}

/** Texts for the bits of a PID, by what they are; `undefined` where no source tells them. */
export function bitsOf(pid: number, byte: number): Record<string, string> | undefined {
  if (pid === 0x13) return { oxygenSensorsPresent: sensorsPresent(byte, 4) }
  if (pid === 0x1d) return { oxygenSensorsPresent: sensorsPresent(byte, 2) }
  if (pid === 0x1e) return { powerTakeOff: byte & 1 ? 'active' : 'not active' }
  return undefined
}
