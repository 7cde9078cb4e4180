/** Inputs for the power tests. All invented. */

import { type Battery, type PowerInput, parsePowerFile } from '../index.ts'

/** A battery about which everything is known. */
export const knownBattery = {
  kind: 'flooded',
  capacityAmpereHours: 70,
  ageYears: 4,
  restVolts: 12.45,
  hoursAtRest: 24,
  lastUse: 'charged',
  temperatureCelsius: 20,
} as const

/** Reads a plan as the command would; a refused plan fails the test. */
export function plan(json: Readonly<Record<string, unknown>>): PowerInput {
  const read = parsePowerFile(json)
  if ('input' in read) return read.input
  throw new Error(`${read.path}: ${read.what}`)
}

/** The known battery under one steady load. */
export function steady(
  amperes: number,
  minutes: number,
  battery: Partial<Battery> = {},
  more: Readonly<Record<string, unknown>> = {},
): PowerInput {
  return plan({ battery: { ...knownBattery, ...battery }, steps: [{ minutes, amperes }], runs: 400, ...more })
}
