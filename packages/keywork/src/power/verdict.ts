/** @module Go, connect a supply, or stop; and why. */

import type { Finding } from '@shearline/bus'
import { freezesBelowCelsius } from './freezing.ts'
import { KINDS } from './kinds.ts'
import type { Band, PowerInput, PowerLimits, PowerReasonCode, PowerVerdict } from './types.ts'

/** Rest volts no 12 V battery shows: a 24 V vehicle, or the engine runs. */
const TOO_HIGH_VOLTS = 15.5
/** Where the kind is not known, the lowest of the dead-cell limits. */
const DEAD_UNKNOWN_VOLTS = 10

/** What the verdict is made of. */
export interface JudgeInput {
  readonly input: PowerInput
  readonly limits: PowerLimits
  readonly chance: number
  readonly minimumVolts: Band
  readonly stateOfCharge: Band
  /** Least supply in amperes; 0 none needed, null none is enough. */
  readonly least: number | null
}

interface Judged {
  readonly verdict: PowerVerdict
  readonly reasons: readonly Finding<PowerReasonCode>[]
}

/**
 * A battery that must not be worked on stops the job whatever the numbers say. Otherwise the plan as described goes
 * when its chance of crossing the floor is accepted; else the least supply decides.
 */
export function judge(question: JudgeInput): Judged {
  const unfit = unfitBattery(question)
  if (unfit.length > 0) return { verdict: 'stop', reasons: unfit }
  const { input, limits, chance, minimumVolts, least } = question
  const params = {
    chancePercent: percent(chance),
    acceptedPercent: percent(input.acceptedChance),
    floorVolts: limits.floorVolts,
    lowestVolts: Math.round(minimumVolts.low * 100) / 100,
  }
  const odds = `${params.chancePercent} % chance of falling below ${params.floorVolts} V (${params.acceptedPercent} % accepted)`
  if (chance <= input.acceptedChance) {
    const code = input.supply === null ? 'holds' : 'holds-with-supply'
    const what = `the plan holds: ${odds}, lowest about ${params.lowestVolts} V`
    return { verdict: 'go', reasons: [reason(code, 'note', what, 'Read the volts all the same.', params)] }
  }
  const reasons = [
    reason(
      'crosses-floor',
      'warning',
      `the plan as described does not hold: ${odds}`,
      'Do not begin like this.',
      params,
    ),
  ]
  if (least === null) {
    const what = 'no supply up to 200 A holds the floor'
    const doNext = 'Check the floor and the steps without supply; change or charge the battery first.'
    return { verdict: 'stop', reasons: [...reasons, reason('no-supply-enough', 'error', what, doNext)] }
  }
  return { verdict: 'connect-supply', reasons: [...reasons, ...supplyReasons(question, least)] }
}

function supplyReasons({ input, limits }: JudgeInput, least: number): readonly Finding<PowerReasonCode>[] {
  const { supply } = input
  const params = { amperes: least, volts: limits.targetVolts }
  const doNext = `Connect a stable supply of at least ${least} A set to ${limits.targetVolts} V.`
  if (supply === null) return []
  if (supply.volts !== null && supply.volts < limits.floorVolts) {
    const what = `the supply is set to ${supply.volts} V, below the floor`
    return [reason('supply-volts-too-low', 'warning', what, doNext, params)]
  }
  return [reason('supply-too-small', 'warning', 'the supply as described is not enough', doNext, params)]
}

function unfitBattery({ input, stateOfCharge }: JudgeInput): readonly Finding<PowerReasonCode>[] {
  const { battery } = input
  const { kind, restVolts, temperatureCelsius } = battery
  const found: Finding<PowerReasonCode>[] = []
  if (battery.knownBad) {
    found.push(
      reason(
        'known-bad',
        'error',
        'the battery is known to be bad',
        'Work from a donor battery or fit a new one.',
      ),
    )
  }
  if (restVolts !== null && restVolts > TOO_HIGH_VOLTS) {
    const doNext = 'Make sure it is a 12 V vehicle, engine and charger off, then read again.'
    found.push(
      reason('not-twelve-volts', 'error', `${restVolts} V is no 12 V battery at rest`, doNext, { restVolts }),
    )
  }
  const deadVolts = kind === 'unknown' ? DEAD_UNKNOWN_VOLTS : KINDS[kind].deadVolts
  if (restVolts !== null && restVolts < deadVolts) {
    const what =
      kind === 'lithium'
        ? `${restVolts} V: the battery has cut itself off or a cell is dead`
        : `${restVolts} V is what is left when a cell is dead or the battery is empty to the end`
    const doNext = 'Do not work on it: test it under load, charge it alone, or use a donor battery.'
    found.push(reason('dead-cell', 'error', what, doNext, { restVolts, deadVolts }))
  }
  if (isFrozen(kind, temperatureCelsius, restVolts === null ? null : stateOfCharge.mid)) {
    const what = `at ${temperatureCelsius} C and this charge the acid is frozen`
    const doNext = 'Do not charge, jump or load it: let it thaw in a warm room and look for cracks.'
    found.push(reason('frozen', 'error', what, doNext, { celsius: temperatureCelsius ?? 0 }))
  }
  return found
}

/** True when a lead-acid battery at this charge (null not known) is below its freezing point. */
export function isFrozen(kind: string, celsius: number | null, charge: number | null): boolean {
  if (kind === 'lithium' || celsius === null || charge === null) return false
  return celsius <= freezesBelowCelsius(charge)
}

function percent(share: number): number {
  return Math.round(share * 1000) / 10
}

function reason(
  code: PowerReasonCode,
  severity: Finding['severity'],
  what: string,
  doNext: string,
  params?: Readonly<Record<string, string | number>>,
): Finding<PowerReasonCode> {
  return { code, severity, where: {}, what, doNext, ...(params === undefined ? {} : { params }) }
}
