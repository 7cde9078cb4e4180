/** @module Many batteries that all fit what is known: the uncertainty, drawn. */

import { KIND_SHARES, KINDS, type KnownKind, METER_ERROR_VOLTS, type Range, TABLE_ERROR } from './kinds.ts'
import { LOAD_NAMES, type LoadName, NAMED_LOADS, UNKNOWN_LOAD } from './named-loads.ts'
import { chargeAtVolts, type RestCurve, restCurve, voltsAtCharge } from './open-circuit.ts'
import { capacityFromRate, peukertExponent } from './peukert.ts'
import { latinHypercube } from './seeded.ts'
import type { Battery, PowerInput, PowerStep } from './types.ts'

/** One possible battery with its car and supply. Charge counts 0 to 1 of `capacityAmpereHours`. */
export interface Possible {
  readonly kind: KnownKind
  readonly curve: RestCurve
  /** Charge at the start. */
  readonly charge: number
  /** The run's rest volts at charge s are those of the table at s - shift. */
  readonly shift: number
  /** At this age and temperature. */
  readonly capacityAmpereHours: number
  /** As new and warm. */
  readonly freshAmpereHours: number
  readonly ratedAmperes: number
  readonly peukert: number
  /** At once, full, at this age and temperature. */
  readonly ohms: number
  /** Coming on over `slowHours`. */
  readonly slowOhms: number
  readonly slowHours: number
  /** How fast charge held back at high current comes forward again. */
  readonly recoveryHours: number
  /** Extra fall at zero charge and rated current: what makes a rated discharge end at its rated volts. */
  readonly kneeVolts: number
  readonly acceptancePerHour: number
  readonly acceptanceTapers: boolean
  /** Current limit of the supply as given; 0 without one. */
  readonly supplyAmperes: number
  /** Share of its rating a good supply really gives. */
  readonly supplyShare: number
  readonly coldKelvin: number
  /** 0 to 1, for the starter. */
  readonly starterDraw: number
  /** Amperes of each step. */
  readonly loads: readonly number[]
}

const CAR_CAPACITY = { low: 35, high: 110 } as const
const UNKNOWN_CELSIUS = { low: -10, high: 30 } as const
const UNKNOWN_AGE_YEARS = 9
const UNKNOWN_SUPPLY_AMPERES = { low: 5, high: 30 } as const
const NEVER_BELOW = 0.15

/** Order of the draws: a new one goes to the end, so that old answers stay. */
const OWN_DRAWS = [
  'meter',
  'table',
  'kind',
  'surface',
  'surfaceHours',
  'hours',
  'capacity',
  'age',
  'fade',
  'growth',
  'celsius',
  'coldLoss',
  'coldGrowth',
  'peukert',
  'ohms',
  'slowOhms',
  'slowHours',
  'recovery',
  'acceptance',
  'supply',
  'stated',
  'unknownLoad',
  'noReading',
  'starter',
] as const
type DrawName = (typeof OWN_DRAWS)[number] | LoadName
const DRAWS: readonly DrawName[] = [...OWN_DRAWS, ...LOAD_NAMES]
type Draw = (name: DrawName) => number
const PLACES = Object.fromEntries(DRAWS.map((name, place) => [name, place])) as Readonly<
  Record<DrawName, number>
>

/** Volts-to-charge curves by kind. */
export const CURVES: Readonly<Record<KnownKind, RestCurve>> = {
  flooded: restCurve(KINDS.flooded.restVolts),
  efb: restCurve(KINDS.efb.restVolts),
  agm: restCurve(KINDS.agm.restVolts),
  gel: restCurve(KINDS.gel.restVolts),
  lithium: restCurve(KINDS.lithium.restVolts),
}

/**
 * Draws `input.runs` possible batteries. The draws depend only on runs and seed, never on the other input, and every
 * quantity moves one way with each input; so of two inputs the worse one is worse in every single run.
 */
export function possibleBatteries(input: PowerInput): readonly Possible[] {
  const columns = latinHypercube(input.runs, DRAWS.length, input.seed)
  return Array.from({ length: input.runs }, (_, run) =>
    possibleBattery(input, (name) => columns[PLACES[name]]?.[run] ?? 0),
  )
}

/** One possible battery from its draws (each 0 up to 1). */
export function possibleBattery(input: PowerInput, draw: Draw): Possible {
  const { battery } = input
  const kind = battery.kind === 'unknown' ? kindAt(draw('kind')) : battery.kind
  const facts = KINDS[kind]
  const curve = CURVES[kind]
  const age = battery.ageYears ?? UNKNOWN_AGE_YEARS * draw('age')
  const celsius =
    battery.temperatureCelsius === null
      ? between(UNKNOWN_CELSIUS.low, UNKNOWN_CELSIUS.high, draw('celsius'))
      : battery.temperatureCelsius + between(-2, 2, draw('celsius'))
  const coldKelvin = Math.max(0, 25 - celsius)
  const peukert = exponentOf(battery, drawn(facts.peukertExponent, draw('peukert')), draw('peukert'))
  const freshAmpereHours = capacityOf(battery, peukert, draw('capacity'))
  const aged = Math.max(NEVER_BELOW, 1 - age * drawn(facts.fadePerYear, draw('fade')))
  const cold = Math.max(NEVER_BELOW, 1 - coldKelvin * drawn(facts.coldLossPerKelvin, draw('coldLoss')))
  const capacityAmpereHours = freshAmpereHours * aged * cold
  const coldGrowth = drawn(facts.coldGrowthPerKelvin, draw('coldGrowth'))
  const newOhms = newResistance(battery, freshAmpereHours, drawn(facts.ohmAmpereHours, draw('ohms')), {
    growth: coldGrowth,
    draw: draw('ohms'),
  })
  const ohms =
    newOhms * (1 + age * drawn(facts.growthPerYear, draw('growth'))) * (1 + coldKelvin * coldGrowth)
  const onTable = chargeOnTable(battery, curve, facts.surfaceVolts, draw)
  const charge = Math.min(1, Math.max(0, onTable + between(-TABLE_ERROR, TABLE_ERROR, draw('table'))))
  const shift = charge - onTable
  return {
    kind,
    curve,
    charge,
    shift,
    capacityAmpereHours,
    freshAmpereHours,
    ratedAmperes: capacityAmpereHours / battery.hourRate,
    peukert,
    ohms,
    slowOhms: ohms * between(1, 4, draw('slowOhms')),
    slowHours: between(3, 10, draw('slowHours')) / 60,
    recoveryHours: between(1, 4, draw('recovery')),
    kneeVolts: Math.max(0.3, voltsAtCharge(curve, -shift) - facts.ratedEndVolts - 0.05),
    acceptancePerHour: drawn(facts.acceptancePerHour, draw('acceptance')),
    acceptanceTapers: facts.acceptanceTapers,
    supplyAmperes: supplyOf(input, draw('supply')),
    supplyShare: supplyShare(draw('supply')),
    coldKelvin,
    starterDraw: draw('starter'),
    loads: input.steps.map((step) => loadOf(step, draw)),
  }
}

function kindAt(draw: number): KnownKind {
  let sum = 0
  for (const { kind, share } of KIND_SHARES) {
    sum += share
    if (draw < sum) return kind
  }
  return 'flooded'
}

/** Charge the table gives for the reading, less surface charge; without a reading anything from empty to full. */
function chargeOnTable(battery: Battery, curve: RestCurve, surfaceVolts: number, draw: Draw): number {
  // Higher than any surface charge: it was being charged, and the reading says nothing of the charge.
  const unreadable = curve.fullVolts + surfaceVolts + METER_ERROR_VOLTS
  if (battery.restVolts === null || battery.restVolts > unreadable) return draw('noReading')
  const hours = battery.hoursAtRest ?? 12 * draw('hours')
  const left = Math.exp(-hours / between(1.5, 5, draw('surfaceHours')))
  const above = surfaceVolts * left * surfaceShare(battery.lastUse, draw('surface'))
  const volts = battery.restVolts + between(-METER_ERROR_VOLTS, METER_ERROR_VOLTS, draw('meter')) - above
  return Math.max(-1.5, chargeAtVolts(curve, volts))
}

/** How much of the most surface charge is there. A drained battery has none; its reading still creeps up instead. */
function surfaceShare(lastUse: Battery['lastUse'], draw: number): number {
  if (lastUse === 'charged') return draw
  if (lastUse === 'drained') return -0.2 * draw
  return Math.max(0, 2 * draw - 1)
}

function exponentOf(battery: Battery, ofKind: number, draw: number): number {
  if (battery.secondRate === null || battery.capacityAmpereHours === null) return ofKind
  const rated = { amperes: battery.capacityAmpereHours / battery.hourRate, hours: battery.hourRate }
  const stated = peukertExponent(rated, battery.secondRate)
  return stated === null ? ofKind : Math.max(1, stated + between(-0.03, 0.03, draw))
}

function capacityOf(battery: Battery, peukert: number, draw: number): number {
  if (battery.capacityAmpereHours !== null) return battery.capacityAmpereHours
  if (battery.secondRate !== null) {
    return Math.min(400, Math.max(1, capacityFromRate(battery.secondRate, battery.hourRate, peukert)))
  }
  // Cold-cranking amperes are some 6.5 to 11 per ampere-hour (from memory).
  if (battery.coldCrankingAmperes !== null) return battery.coldCrankingAmperes / between(6.5, 11, draw)
  return CAR_CAPACITY.low * (CAR_CAPACITY.high / CAR_CAPACITY.low) ** draw
}

/**
 * Ohms when new, full and at 25 degrees Celsius. Rated cold-cranking amperes hold 7.2 V for 30 s at -18 degrees: the
 * fall from 12.65 V is shared by the cold resistance and about a fifth more that comes on within 30 s. Batteries meet
 * their rating or better it.
 */
function newResistance(
  battery: Battery,
  ampereHours: number,
  ohmAmpereHours: number,
  cold: { readonly growth: number; readonly draw: number },
): number {
  if (battery.coldCrankingAmperes === null) return ohmAmpereHours / ampereHours
  const atRating = (12.65 - 7.2) / battery.coldCrankingAmperes
  return (atRating * between(0.75, 1, cold.draw)) / (1.2 * (1 + 43 * cold.growth))
}

/** A charger may drop to float at any time, so anything from none to all of its current is drawn. */
function supplyOf({ supply }: PowerInput, draw: number): number {
  if (supply === null) return 0
  const amperes = supply.amperes ?? between(UNKNOWN_SUPPLY_AMPERES.low, UNKNOWN_SUPPLY_AMPERES.high, draw)
  return supply.kind === 'charger' ? amperes * draw : amperes * supplyShare(draw)
}

function supplyShare(draw: number): number {
  return between(0.9, 1, draw)
}

function loadOf(step: PowerStep, draw: Draw): number {
  const named = step.loads.reduce((sum, name) => sum + drawn(NAMED_LOADS[name], draw(name)), 0)
  if (step.amperes !== null) return named + between(step.amperes.low, step.amperes.high, draw('stated'))
  return step.loads.length > 0 ? named : drawn(UNKNOWN_LOAD, draw('unknownLoad'))
}

function between(low: number, high: number, draw: number): number {
  return low + (high - low) * draw
}

/** Triangular between low and high, most often near mid. */
function drawn({ low, mid, high }: Range, draw: number): number {
  const whole = high - low
  if (whole <= 0) return low
  const below = (mid - low) / whole
  return draw < below
    ? low + Math.sqrt(draw * whole * (mid - low))
    : high - Math.sqrt((1 - draw) * whole * (high - mid))
}
