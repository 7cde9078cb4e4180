/** @module Will it hold? The budget of one plan. */

import { bandOf, quantile } from './band.ts'
import { crankVolts, startOutlook } from './cranking.ts'
import { acceptedAmperes, runThrough, type Trace, traceFor } from './discharge.ts'
import { type Possible, possibleBatteries } from './ensemble.ts'
import { leastSupply } from './least-supply.ts'
import { powerLimits } from './limits.ts'
import { pictureNodes, type Schedule, scheduleOf } from './schedule.ts'
import type { Crossing, CurvePoint, PowerAnswer, PowerInput, StepOutlook, WithSupply } from './types.ts'
import { judge } from './verdict.ts'
import { warningsFor } from './warnings.ts'

const PICTURE_POINTS = 60

/**
 * Computes charge and terminal volts over a plan for many batteries that fit what is known, and says whether the work
 * may go ahead, needs a supply of so many amperes, or must stop. The same input always gives the same answer. `input`
 * is what `parsePowerFile` accepts; a plan has at least one step. Throws nothing.
 */
export function powerBudget(input: PowerInput): PowerAnswer {
  const limits = powerLimits(input)
  const possible = possibleBatteries(input)
  const schedule = scheduleOf(input.steps)
  const trace = traceFor(schedule)
  const told = runAll(input, possible, schedule, trace, limits.floorVolts)
  const chance = told.crossings.length / input.runs
  const minimumVolts = bandOf(told.lowest)

  const bare =
    input.supply === null ? told.crossings : crossingWithout(possible, schedule, trace, limits.floorVolts)
  const question = {
    possible,
    schedule,
    trace,
    floorVolts: limits.floorVolts,
    supplyVolts: limits.targetVolts,
    allowedCrossings: Math.floor(input.acceptedChance * input.runs),
    crossing: bare.map((crossing) => crossing.run),
  }
  const least = leastSupply(question)
  const withSupply = least === null || least === 0 ? null : planWith(least, question)
  const stateOfCharge = bandOf(Float64Array.from(possible, (each) => each.charge))
  const startAfter = startOutlook(told.crank)
  const judged = judge({ input, limits, chance, minimumVolts, stateOfCharge, least })
  return {
    verdict: judged.verdict,
    stateOfCharge,
    minimumVolts,
    crossesFloorAt: crossedBy(told.crossings, input.runs, 0.5),
    supplyAmperes: least,
    chanceOfCrossing: chance,
    crossing: crossingOf(input, told),
    supplyForTargetAmperes: targetAmperes(possible, limits.targetVolts),
    withSupply,
    stateOfChargeAtEnd: bandOf(told.chargeAtEnd),
    startAfter,
    steps: outlooks(input, possible, told),
    curve: curveOf(schedule, told),
    limits,
    reasons: judged.reasons,
    warnings: warningsFor(input, limits, stateOfCharge, judged.verdict, startAfter),
    input,
  }
}

/** What all runs of the plan as described gave. */
interface Told {
  readonly lowest: Float64Array
  readonly chargeAtEnd: Float64Array
  readonly crank: Float64Array
  /** First crossings, in minutes, of the runs that cross, with the step and run. */
  readonly crossings: readonly FloorCrossing[]
  /** Lowest volts per step, per run. */
  readonly lowestByStep: readonly Float64Array[]
  readonly pictured: readonly number[]
  readonly picture: readonly Float64Array[]
}

interface FloorCrossing {
  readonly run: number
  readonly minutes: number
  readonly step: number
}

function runAll(
  input: PowerInput,
  possible: readonly Possible[],
  schedule: Schedule,
  trace: Trace,
  floorVolts: number,
): Told {
  const { runs, steps, supply } = input
  const pictured = pictureNodes(schedule, PICTURE_POINTS)
  const picture = pictured.map(() => new Float64Array(runs))
  const lowestByStep = steps.map(() => new Float64Array(runs).fill(Number.POSITIVE_INFINITY))
  const lowest = new Float64Array(runs)
  const chargeAtEnd = new Float64Array(runs)
  const crank = new Float64Array(runs)
  const crossings: FloorCrossing[] = []
  const volts = supply?.volts ?? powerLimits(input).targetVolts
  for (const [run, battery] of possible.entries()) {
    const feed = supply === null ? null : { amperes: battery.supplyAmperes, volts }
    runThrough(battery, schedule, feed, trace, Number.NEGATIVE_INFINITY)
    lowest[run] = trace.lowestVolts
    chargeAtEnd[run] = Math.min(1, Math.max(0, trace.charge[schedule.count - 1] ?? 0))
    crank[run] = crankVolts(battery, trace.atHandAtEnd, input.starter)
    for (const [place, node] of pictured.entries())
      (picture[place] as Float64Array)[run] = trace.volts[node] ?? 0
    for (let node = 0; node < schedule.count; node += 1) {
      const ofStep = lowestByStep[schedule.step[node] as number] as Float64Array
      const at = trace.volts[node] as number
      if (at < (ofStep[run] as number)) ofStep[run] = at
    }
    if (trace.lowestVolts < floorVolts) crossings.push(firstCrossing(run, schedule, trace, floorVolts))
  }
  return { lowest, chargeAtEnd, crank, crossings, lowestByStep, pictured, picture }
}

function firstCrossing(run: number, schedule: Schedule, trace: Trace, floorVolts: number): FloorCrossing {
  const node = trace.volts.findIndex((volts) => volts < floorVolts)
  const step = schedule.step[node] ?? 0
  const minutes = schedule.minutes[node] ?? 0
  if (node === 0 || schedule.step[node - 1] !== step) return { run, minutes, step }
  const before = trace.volts[node - 1] ?? floorVolts
  const fall = before - (trace.volts[node] ?? floorVolts)
  const from = schedule.minutes[node - 1] ?? minutes
  return { run, minutes: from + ((before - floorVolts) / fall) * (minutes - from), step }
}

function crossingWithout(
  possible: readonly Possible[],
  schedule: Schedule,
  trace: Trace,
  floorVolts: number,
): readonly FloorCrossing[] {
  const crossings: FloorCrossing[] = []
  for (const [run, battery] of possible.entries()) {
    runThrough(battery, schedule, null, trace, floorVolts)
    if (trace.lowestVolts < floorVolts) crossings.push({ run, minutes: 0, step: 0 })
  }
  return crossings
}

/** Minutes by which a share of all runs has crossed; null when fewer cross. */
function crossedBy(crossings: readonly FloorCrossing[], runs: number, share: number): number | null {
  const needed = Math.max(1, Math.ceil(share * runs))
  if (crossings.length < needed) return null
  const sorted = Float64Array.from(crossings, (crossing) => crossing.minutes).sort()
  return sorted[needed - 1] ?? null
}

function crossingOf({ runs, steps }: PowerInput, { crossings }: Told): Crossing | null {
  if (crossings.length === 0) return null
  const counts = steps.map((_, index) => crossings.filter((crossing) => crossing.step === index).length)
  return {
    earliestMinutes: crossedBy(crossings, runs, 0.05),
    medianMinutes: crossedBy(crossings, runs, 0.5),
    step: steps[counts.indexOf(Math.max(...counts))]?.name ?? '',
  }
}

function outlooks(
  { runs, steps }: PowerInput,
  possible: readonly Possible[],
  told: Told,
): readonly StepOutlook[] {
  let from = 0
  return steps.map(({ name, minutes }, index) => {
    const fromMinutes = from
    from += minutes
    return {
      name,
      fromMinutes,
      toMinutes: from,
      loadAmperes: bandOf(Float64Array.from(possible, (each) => each.loads[index] ?? 0)),
      minimumVolts: bandOf(told.lowestByStep[index] ?? new Float64Array()),
      chanceOfCrossing: told.crossings.filter((crossing) => crossing.step === index).length / runs,
    }
  })
}

function curveOf(schedule: Schedule, { pictured, picture }: Told): readonly CurvePoint[] {
  return pictured.map((node, place) => ({
    minutes: schedule.minutes[node] ?? 0,
    step: schedule.step[node] ?? 0,
    ...bandOf(picture[place] ?? new Float64Array()),
  }))
}

function planWith(
  amperes: number,
  { possible, schedule, trace, floorVolts, supplyVolts }: Parameters<typeof leastSupply>[0],
): WithSupply {
  const lowest = new Float64Array(possible.length)
  for (const [run, battery] of possible.entries()) {
    const feed = { amperes: amperes * battery.supplyShare, volts: supplyVolts }
    runThrough(battery, schedule, feed, trace, Number.NEGATIVE_INFINITY)
    lowest[run] = trace.lowestVolts
  }
  const chanceOfCrossing = lowest.filter((volts) => volts < floorVolts).length / possible.length
  return { amperes, volts: supplyVolts, minimumVolts: bandOf(lowest), chanceOfCrossing }
}

function targetAmperes(possible: readonly Possible[], targetVolts: number): number {
  const wanted = Float64Array.from(
    possible,
    (each) => Math.max(...each.loads) + acceptedAmperes(each, targetVolts),
  )
  return Math.ceil(quantile(wanted.sort(), 0.95))
}
