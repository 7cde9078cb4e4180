/** @module One battery through one plan: charge and terminal volts over time. Equations in SPEC.md, POW-09 to POW-15. */

import type { Possible } from './ensemble.ts'
import { voltsAtCharge } from './open-circuit.ts'
import { effectiveAmperes } from './peukert.ts'
import type { Schedule } from './schedule.ts'

/** What feeds the car: current limit and set volts at the clamps. */
export interface Feed {
  readonly amperes: number
  readonly volts: number
}

/** Values at every node of a schedule; currents hold until the next node. Reused between runs. */
export interface Trace {
  readonly volts: Float64Array
  /** Rested charge, 0 to 1 of the capacity. */
  readonly charge: Float64Array
  /** Out of the battery; negative when it charges. */
  readonly batteryAmperes: Float64Array
  readonly supplyAmperes: Float64Array
  lowestVolts: number
  /** Charge a load can draw at once at the end, without waiting for what is held back to come forward. */
  atHandAtEnd: number
}

/** Charge held in the knee: the fall at the end of a discharge lives in the last few hundredths. */
const KNEE_CHARGE = 0.04
/** Beyond this the battery gives nothing more. */
const FLAT_CHARGE = -0.1
/** Share of charging current that stays. Own choice, on the low side of lead-acid (from memory 0.85 to 0.95). */
export const CHARGE_EFFICIENCY = 0.9
/** A battery charging at all it can accept stands at this voltage. */
const ACCEPTANCE_VOLTS = 14.4
/** Least charging current, in capacities per hour. */
const TRICKLE_PER_HOUR = 0.01

/** An empty trace for a schedule. */
export function traceFor(schedule: Schedule): Trace {
  const { count } = schedule
  return {
    volts: new Float64Array(count),
    charge: new Float64Array(count),
    batteryAmperes: new Float64Array(count),
    supplyAmperes: new Float64Array(count),
    lowestVolts: Number.POSITIVE_INFINITY,
    atHandAtEnd: 0,
  }
}

/**
 * Runs one battery through the schedule into `trace`. `feed` null: no supply. Stops early below `untilVolts` (give
 * -Infinity to run to the end); the rest of the trace is then left over from before.
 */
export function runThrough(
  battery: Possible,
  schedule: Schedule,
  feed: Feed | null,
  trace: Trace,
  untilVolts: number,
): void {
  const { curve, shift, capacityAmpereHours, freshAmpereHours, ratedAmperes, peukert, slowOhms } = battery
  const { minutes, step, hours, span, spans, supplied } = schedule
  const fades = spans.map((each) => Math.exp(-each / battery.slowHours))
  let charge = battery.charge
  let heldBack = 0
  let slowVolts = 0
  let knownAmperes = 0
  let knownEffective = 0
  let lowest = Number.POSITIVE_INFINITY
  for (let node = 0; node < minutes.length; node += 1) {
    const load = battery.loads[step[node] as number] as number
    const atHand = charge - heldBack
    const emf = voltsAtCharge(curve, atHand - shift) - slowVolts
    const ohms = ohmsAt(battery, atHand)
    const knee = kneeAt(battery, atHand)
    const fade = fades[span[node] as number] as number
    const length = hours[node] as number

    let amperes = load
    let supply = 0
    let volts = 0
    if (feed === null || supplied[node] === 0) {
      volts = emf - load * ohms - kneeFall(knee, load, ratedAmperes)
    } else if (feed.volts > emf) {
      const chargeOhms = chargeOhmsAt(battery, atHand, emf)
      const wanted = load + (feed.volts - emf) / chargeOhms
      supply = Math.min(feed.amperes, wanted)
      amperes = load - supply
      if (amperes > 0) volts = emf - amperes * ohms - kneeFall(knee, amperes, ratedAmperes)
      else volts = Math.min(feed.volts, emf - amperes * chargeOhms)
    } else {
      volts = emf - load * ohms - kneeFall(knee, load, ratedAmperes)
      if (volts < feed.volts) {
        // The share at which the battery itself stands at the supply's volts when this span ends.
        const stiff = ohms + slowOhms * (1 - fade)
        const over = emf + slowVolts * (1 - fade) - feed.volts
        const plain = (over - knee) / stiff
        const shared = plain >= ratedAmperes ? plain : over / (stiff + knee / ratedAmperes)
        supply = Math.min(feed.amperes, Math.max(0, load - Math.max(0, shared)))
        amperes = load - supply
        volts = Math.min(feed.volts, emf - amperes * ohms - kneeFall(knee, amperes, ratedAmperes))
        if (supply < feed.amperes) volts = feed.volts
      }
    }
    if (atHand <= FLAT_CHARGE && amperes > 0) {
      amperes = 0
      volts = 0
    }
    if (volts < 0) volts = 0
    if (volts < lowest) lowest = volts
    trace.volts[node] = volts
    trace.charge[node] = charge
    trace.batteryAmperes[node] = amperes
    trace.supplyAmperes[node] = supply
    if (volts < untilVolts) break
    if (length === 0) continue

    if (amperes > 0) {
      if (amperes !== knownAmperes) {
        knownAmperes = amperes
        knownEffective = effectiveAmperes(amperes, ratedAmperes, peukert)
      }
      charge -= (amperes * length) / capacityAmpereHours
      heldBack += ((knownEffective - amperes) * length) / capacityAmpereHours
      slowVolts = slowVolts * fade + amperes * slowOhms * (1 - fade)
      if (amperes < ratedAmperes)
        heldBack /= 1 + ((1 - amperes / ratedAmperes) * length) / battery.recoveryHours
    } else {
      charge = Math.min(1, charge - (amperes * length * CHARGE_EFFICIENCY) / freshAmpereHours)
      slowVolts *= fade
      heldBack /= 1 + length / battery.recoveryHours
    }
  }
  trace.lowestVolts = lowest
  trace.atHandAtEnd = charge - heldBack
}

/** Ohms at once at a charge: half as much again when empty, as the acid thins. From memory. */
export function ohmsAt(battery: Possible, atHand: number): number {
  return battery.ohms * (atHand >= 1 ? 1 : atHand <= 0 ? 1.5 : 1.5 - 0.5 * atHand)
}

/**
 * Ohms the battery shows a supply that charges it, so that at all the current it can accept it stands at 14.4 V.
 * Counted from the new, warm capacity: cold and age only make a battery accept less and hold the supply up better.
 */
function chargeOhmsAt(battery: Possible, atHand: number, emf: number): number {
  const left = battery.acceptanceTapers ? Math.min(1, Math.max(0, 1 - atHand)) : 1
  const accepts = battery.freshAmpereHours * (battery.acceptancePerHour * left + TRICKLE_PER_HOUR)
  return (ACCEPTANCE_VOLTS - emf) / accepts
}

/** Charging current at the start that a supply at `volts` must give beside the load. */
export function acceptedAmperes(battery: Possible, volts: number): number {
  const emf = voltsAtCharge(battery.curve, battery.charge - battery.shift)
  return emf >= volts ? 0 : (volts - emf) / chargeOhmsAt(battery, battery.charge, emf)
}

/** Fall near empty at the rated current and above. */
export function kneeAt(battery: Possible, atHand: number): number {
  return atHand < 0.4 ? battery.kneeVolts * Math.exp(-atHand / KNEE_CHARGE) : 0
}

/** Fall near empty: in step with the current up to the rated current, the same above it. */
function kneeFall(knee: number, amperes: number, ratedAmperes: number): number {
  return amperes >= ratedAmperes ? knee : (knee * amperes) / ratedAmperes
}
