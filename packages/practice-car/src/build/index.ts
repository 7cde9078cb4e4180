/** @module Builds a practice car from a seed. */

import type { PracticeKey } from '../key-list/index.ts'
import { Chance } from '../random/index.ts'
import type { CarChoices } from '../vehicle/index.ts'
import { PRACTICE_RULES } from './rules.ts'
import { buildUnits } from './units.ts'

export { PRACTICE_RULES } from './rules.ts'

/** An invented number: right check digit, maker prefix from a range no maker is registered in (ISO 3780 tables). */
export const PRACTICE_VIN = 'T6SHPC2A8R0000417'

/** A car with a fairly usual visit ahead; the same seed gives the same car. */
export function buildCar(seed: number, choices: Partial<CarChoices> = {}): CarChoices {
  const chance = new Chance(seed)
  const rules = Object.values(PRACTICE_RULES)
  return {
    vin: PRACTICE_VIN,
    units: buildUnits(chance),
    battery: {
      ampereHours: chance.oneOf([44, 60, 70, 95]),
      stateOfCharge: chance.percent(70) ? chance.between(0.7, 1) : chance.between(0.15, 0.6),
      resistanceOhms: chance.between(0.005, 0.02),
      celsius: chance.between(-12, 28),
    },
    rule: chance.oneOf(rules),
    stored: ['A', 'B', 'X'],
    keys: buildKeys(chance),
    startSeconds: 1_800_000_000 + chance.whole(0, 1_000_000),
    ownFrames: false,
    ...choices,
  }
}

function buildKeys(chance: Chance): PracticeKey[] {
  const cellVolts = (): number => (chance.percent(20) ? 2.1 : 3)
  return [
    { label: 'A', identity: 'A', state: 'known', onBench: true, cellVolts: cellVolts() },
    { label: 'B', identity: 'B', state: 'known', onBench: chance.percent(70), cellVolts: cellVolts() },
    { label: 'C', identity: 'A', state: 'known', onBench: chance.percent(30), cellVolts: 3 },
    { label: 'N', identity: 'N', state: 'prepared', onBench: true, cellVolts: 3 },
    {
      label: 'M',
      identity: 'M',
      state: chance.percent(15) ? 'locked-elsewhere' : 'blank',
      onBench: true,
      cellVolts: 3,
    },
  ]
}
