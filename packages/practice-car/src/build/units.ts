/** @module The control units a practice car is built from, all of an invented make. */

import { LOST_CODES, type UnitChoices, type UnitFor } from '../control-unit/index.ts'
import type { MonitorChoices } from '../fault-memory/index.ts'
import type { Chance } from '../random/index.ts'

/** Always there. */
const CORE: readonly UnitFor[] = [
  'gateway',
  'engine',
  'brakes',
  'steering',
  'body',
  'restraints',
  'instruments',
  'immobiliser',
]
const MORE: readonly UnitFor[] = [
  'transmission',
  'alarm',
  'remote',
  'climate',
  'radio',
  'parking',
  'left door',
  'right door',
  'seats',
  'lamps',
  'trailer',
  'battery monitor',
]

/** Codes of a unit's own parts: SAE J2012 (memory), failure types ISO 15031-6 (memory). */
const PARTS: Readonly<Partial<Record<UnitFor, readonly MonitorChoices[]>>> = {
  engine: [
    { code: 'P0420-00', confirmAfterCycles: 2, lamp: true, permanent: true },
    { code: 'P0113-15', lamp: true },
    { code: 'P0335-29', lamp: true },
  ],
  transmission: [{ code: 'P0715-31', lamp: true }],
  brakes: [
    { code: 'C0035-11', lamp: true },
    { code: 'C0040-31', lamp: true },
  ],
  steering: [{ code: 'C0545-62', lamp: true }],
  restraints: [
    { code: 'B0028-13', lamp: true },
    { code: 'B0051-1A', lamp: true },
  ],
  body: [{ code: 'B1310-13' }, { code: 'B1325-00' }],
  instruments: [{ code: 'B1205-96' }],
  climate: [{ code: 'B1412-15' }],
  'left door': [{ code: 'B1601-12' }],
  lamps: [{ code: 'B1702-13' }],
}

/** The units of one car: the core and some more, 12 to 20 in all. */
export function buildUnits(chance: Chance): UnitChoices[] {
  const more = chance.shuffled(MORE).slice(0, chance.whole(4, MORE.length))
  const names = [...CORE, ...more]
  return names.map((name, index) => buildUnit(name, index, names, chance))
}

function buildUnit(name: UnitFor, index: number, names: readonly UnitFor[], chance: Chance): UnitChoices {
  const talkers = names.filter((other) => other !== name && LOST_CODES[other] !== undefined)
  // ISO 15765-4 sets 7E0 and 7E1 aside for engine and transmission, answers eight above.
  const requestId = name === 'engine' ? 0x7e0 : name === 'transmission' ? 0x7e1 : 0x640 + index * 0x10
  return {
    name,
    requestId,
    answerId: requestId + 8,
    ownId: 0x100 + index * 0x18,
    periodSeconds: chance.oneOf([0.1, 0.1, 0.2, 0.5]),
    bootSeconds: chance.between(0.4, 4),
    listensTo: chance.shuffled(talkers).slice(0, chance.whole(2, 6)),
    lostAfterSeconds: chance.oneOf([0.5, 0.8, 1, 1.5, 2, 2.5]),
    lowSupply: lowSupplyOf(name, chance),
    dropoutVolts: chance.between(6, 8),
    availability: chance.oneOf([0xff, 0xff, 0x7f, 0x2f]),
    parts: PARTS[name] ?? [],
    slow: chance.percent(20),
  }
}

function lowSupplyOf(name: UnitFor, chance: Chance): UnitChoices['lowSupply'] {
  if (name === 'engine') return { code: 'P0562-00', belowVolts: 11, afterSeconds: 5 }
  if (!chance.percent(60)) return null
  return {
    code: chance.oneOf(['U3003-16', 'U3006-16']),
    belowVolts: chance.between(10, 11.2),
    afterSeconds: chance.between(1, 6),
  }
}
