/**
 * @module PIDs whose byte is a choice from a list or a set of bits.
 *
 * OBD requirements (1C): SAE J1979-DA as wireshark `packet-obd-ii.c` lists them. Fuel systems (03), secondary air (12)
 * and fuel types (51): from memory of SAE J1979-DA, checked against wireshark's lists.
 */

const FUEL_SYSTEM: Readonly<Record<number, string>> = {
  0: 'off',
  1: 'open loop, not yet warm',
  2: 'closed loop',
  4: 'open loop, engine load or deceleration',
  8: 'open loop, system failure',
  16: 'closed loop, feedback fault',
}

const SECONDARY_AIR: Readonly<Record<number, string>> = {
  1: 'upstream',
  2: 'downstream of the catalyst',
  4: 'outside or off',
  8: 'on for diagnostics',
}

const REQUIREMENTS = [
  undefined,
  'OBD-II (CARB)',
  'OBD (EPA)',
  'OBD and OBD-II',
  'OBD-I',
  'not OBD compliant',
  'EOBD',
  'EOBD and OBD-II',
  'EOBD and OBD',
  'EOBD, OBD and OBD-II',
  'JOBD',
  'JOBD and OBD-II',
  'JOBD and EOBD',
  'JOBD, EOBD and OBD-II',
  undefined,
  undefined,
  undefined,
  'EMD',
  'EMD+',
  'HD OBD-C',
  'HD OBD',
  'WWH OBD',
  undefined,
  'HD EOBD-I',
  'HD EOBD-I N',
  'HD EOBD-II',
  'HD EOBD-II N',
  undefined,
  'OBDBr-1',
  'OBDBr-2',
  'KOBD',
  'IOBD I',
  'IOBD II',
  'HD EOBD-IV',
] as const

const FUELS = [
  'not available',
  'gasoline',
  'methanol',
  'ethanol',
  'diesel',
  'liquefied petroleum gas',
  'compressed natural gas',
  'propane',
  'electric',
  'bifuel running gasoline',
  'bifuel running methanol',
  'bifuel running ethanol',
  'bifuel running liquefied petroleum gas',
  'bifuel running compressed natural gas',
  'bifuel running propane',
  'bifuel running electricity',
  'bifuel running electric and combustion engine',
  'hybrid gasoline',
  'hybrid ethanol',
  'hybrid diesel',
  'hybrid electric',
  'hybrid running electric and combustion engine',
  'hybrid regenerative',
  'bifuel running diesel',
] as const

/** Name of the OBD requirements in PID 1C. */
export function nameOfRequirements(value: number): string {
  if (value >= 251) return 'not available for assignment'
  return REQUIREMENTS[value] ?? 'reserved'
}

/** Texts for the choice of a PID, by what they are; `undefined` for PIDs that are none. */
export function choiceOf(pid: number, first: number, second: number): Record<string, string> | undefined {
  switch (pid) {
    case 0x03: {
      const one = FUEL_SYSTEM[first] ?? 'reserved'
      const two = FUEL_SYSTEM[second] ?? 'reserved'
      return { fuelSystem1: one, ...(second === 0 ? {} : { fuelSystem2: two }) }
    }
    case 0x12:
      return { secondaryAir: SECONDARY_AIR[first] ?? 'reserved' }
    case 0x1c:
      return { obdRequirements: nameOfRequirements(first) }
    case 0x51:
      return { fuelType: FUELS[first] ?? 'reserved' }
    default:
      return undefined
  }
}
