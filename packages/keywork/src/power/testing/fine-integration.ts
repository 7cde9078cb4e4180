/**
 * The equations of SPEC.md POW-09 to POW-15 solved a second time, by other means: in ampere-hours, by the classic
 * Runge-Kutta method of fourth order at steps of a second (or as told), with its own reading of the tables. Shares no code with the
 * engine but the drawn quantities and the table of rest volts.
 */

import type { Possible } from '../ensemble.ts'
import { KINDS } from '../kinds.ts'

interface FineStep {
  readonly minutes: number
  readonly amperes: number
}

interface FineSupply {
  readonly amperes: number
  readonly volts: number
}

interface FinePoint {
  readonly minutes: number
  readonly volts: number
}

/** Charge drawn, charge held back (ampere-hours), slow volts. */
type State = readonly [drawn: number, held: number, slow: number]

/** Terminal volts at every step (the first after each load change included) and the rested charge at the end. */
export function integrateFinely(
  battery: Possible,
  steps: readonly FineStep[],
  supply: FineSupply | null,
  stepSeconds = 1,
): { readonly points: readonly FinePoint[]; readonly charge: number } {
  const capacity = battery.capacityAmpereHours
  const atHand = ([drawn, held]: State): number => battery.charge - (drawn + held) / capacity
  const emf = (state: State): number => tableVolts(battery, atHand(state) - battery.shift) - state[2]
  const ohms = (state: State): number =>
    battery.ohms * (1 + (1 - Math.min(1, Math.max(0, atHand(state)))) / 2)
  const fall = (state: State, amperes: number): number =>
    battery.kneeVolts * Math.exp(-atHand(state) / 0.04) * Math.min(1, amperes / battery.ratedAmperes)
  const chargeOhms = (state: State): number => {
    const missing = battery.acceptanceTapers ? Math.min(1, Math.max(0, 1 - atHand(state))) : 1
    return (14.4 - emf(state)) / (battery.freshAmpereHours * (0.01 + battery.acceptancePerHour * missing))
  }
  const alone = (state: State, amperes: number): number =>
    emf(state) - amperes * ohms(state) - fall(state, amperes)
  /** A supply set below the battery: the battery gives what brings it down to the supply's volts, found by halving. */
  const shared = (state: State, load: number, { amperes: most, volts }: FineSupply): number => {
    if (alone(state, load) >= volts) return load
    let low = 0
    let high = load
    for (let turn = 0; turn < 60; turn += 1) {
      const middle = (low + high) / 2
      if (alone(state, middle) > volts) low = middle
      else high = middle
    }
    return Math.max(low, load - most)
  }
  /** Battery amperes and terminal volts. */
  const terminal = (state: State, load: number): readonly [amperes: number, volts: number] => {
    if (supply === null) return [load, alone(state, load)]
    const charging = (supply.volts - emf(state)) / chargeOhms(state)
    if (charging < 0) {
      const amperes = shared(state, load, supply)
      return [amperes, alone(state, amperes)]
    }
    if (load + charging <= supply.amperes) return [-charging, supply.volts]
    const amperes = load - supply.amperes
    if (amperes <= 0) return [amperes, emf(state) - amperes * chargeOhms(state)]
    return [amperes, alone(state, amperes)]
  }
  const slope = (state: State, load: number): State => {
    const [amperes] = terminal(state, load)
    const relax = -state[2] / battery.slowHours
    if (amperes <= 0) {
      return [(0.9 * amperes * capacity) / battery.freshAmpereHours, -state[1] / battery.recoveryHours, relax]
    }
    const rate = amperes / battery.ratedAmperes
    const extra = rate > 1 ? amperes * (rate ** (battery.peukert - 1) - 1) : 0
    const back = (state[1] * Math.max(0, 1 - rate)) / battery.recoveryHours
    return [amperes, extra - back, relax + (amperes * battery.slowOhms) / battery.slowHours]
  }
  const moved = (state: State, by: State, hours: number): State => [
    state[0] + by[0] * hours,
    state[1] + by[1] * hours,
    state[2] + by[2] * hours,
  ]

  let state: State = [0, 0, 0]
  let minutes = 0
  const points: FinePoint[] = []
  for (const { minutes: length, amperes: load } of steps) {
    points.push({ minutes, volts: terminal(state, load)[1] })
    const turns = Math.round((length * 60) / stepSeconds)
    const hours = stepSeconds / 3600
    for (let turn = 0; turn < turns; turn += 1) {
      const a = slope(state, load)
      const b = slope(moved(state, a, hours / 2), load)
      const c = slope(moved(state, b, hours / 2), load)
      const d = slope(moved(state, c, hours), load)
      state = [0, 1, 2].map(
        (part) =>
          (state[part] as number) +
          (hours / 6) *
            ((a[part] as number) + 2 * (b[part] as number) + 2 * (c[part] as number) + (d[part] as number)),
      ) as unknown as State
      minutes += stepSeconds / 60
      points.push({ minutes, volts: terminal(state, load)[1] })
    }
  }
  return { points, charge: battery.charge - state[0] / capacity }
}

/** Rest volts from the table of the kind, straight between its rows and on beyond its ends. */
function tableVolts(battery: Possible, charge: number): number {
  const rows = KINDS[battery.kind].restVolts
  const gaps = rows.length - 1
  const row = Math.min(gaps - 1, Math.max(0, Math.floor(charge * gaps)))
  const from = rows[row] as number
  return from + (charge * gaps - row) * ((rows[row + 1] as number) - from)
}
