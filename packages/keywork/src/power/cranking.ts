/** @module Will the car start afterwards? */

import { bandOf } from './band.ts'
import { kneeAt, ohmsAt } from './discharge.ts'
import { type Possible, possibleBatteries } from './ensemble.ts'
import { voltsAtCharge } from './open-circuit.ts'
import type { Battery, Starter, StartOutlook } from './types.ts'

/** Common workshop floor while cranking (from memory). */
const STRONG_CRANK_VOLTS = 9.6
/** Below this many cars no longer start (from memory). */
const WEAK_CRANK_VOLTS = 8

/** Starter current with a warm engine, amperes. Explanatory page "How many amps should a starter draw". */
const WARM_AMPERES = {
  petrol: { low: 100, high: 250 },
  diesel: { low: 200, high: 400 },
  unknown: { low: 100, high: 350 },
} as const
/** The same page: a starter at 150 A in summer may draw 300 A in winter, here 25 and -20 degrees Celsius. */
const TWICE_AT_KELVIN = 45

/** Terminal volts of one battery in the first seconds of cranking, with `atHand` charge. */
export function crankVolts(battery: Possible, atHand: number, starter: Starter): number {
  const { low, high } = WARM_AMPERES[starter.engine]
  const warm = starter.amperes ?? low + (high - low) * battery.starterDraw
  const amperes = warm * (1 + battery.coldKelvin / TWICE_AT_KELVIN)
  const charge = Math.min(1, Math.max(0, atHand))
  // Three seconds of the slow share, at the middle of its range of times.
  const ohms = ohmsAt(battery, charge) + battery.slowOhms * 0.01
  // In steps of hours the knee stops growing at the rated current, because Peukert takes over; in seconds it goes on.
  const knee = kneeAt(battery, charge) * Math.max(1, amperes / battery.ratedAmperes)
  return Math.max(0, voltsAtCharge(battery.curve, charge - battery.shift) - amperes * ohms - knee)
}

/** Sums crank volts over the runs. */
export function startOutlook(volts: Float64Array): StartOutlook {
  const share = (least: number): number => volts.filter((each) => each >= least).length / volts.length
  return {
    crankVolts: bandOf(volts),
    chanceStrong: share(STRONG_CRANK_VOLTS),
    chanceStarts: share(WEAK_CRANK_VOLTS),
  }
}

/** What `crankingReserve` answers: the outlook and one word. */
export interface CrankingReserve extends StartOutlook {
  readonly verdict: 'starts' | 'doubtful' | 'does-not-start' | 'unknown'
}

/**
 * Estimates whether the car can be started with the battery as it stands now (rest volts after the work, supply
 * removed). `starts` needs 9 runs in 10 at 9.6 V or more, `does-not-start` 9 in 10 below 8 V; without rest volts the
 * answer is `unknown`, whatever the runs say. The floors are from memory.
 */
export function crankingReserve(
  battery: Battery,
  starter: Starter,
  draws: { readonly runs: number; readonly seed: number },
): CrankingReserve {
  const none = { floorVolts: null, floorSource: null, targetVolts: null, targetSource: null, stopVolts: null }
  const possible = possibleBatteries({
    battery,
    starter,
    steps: [],
    supply: null,
    settings: none,
    vehicleMaker: null,
    acceptedChance: 0.05,
    ...draws,
  })
  const outlook = startOutlook(Float64Array.from(possible, (each) => crankVolts(each, each.charge, starter)))
  return { ...outlook, verdict: verdictOf(battery, outlook) }
}

function verdictOf(battery: Battery, outlook: StartOutlook): CrankingReserve['verdict'] {
  if (battery.restVolts === null) return 'unknown'
  if (battery.knownBad) return 'doubtful'
  if (outlook.chanceStrong >= 0.9) return 'starts'
  return outlook.chanceStarts <= 0.1 ? 'does-not-start' : 'doubtful'
}
