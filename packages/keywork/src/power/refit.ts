/** @module The live watch: what the readings say about the battery, and how much time is left. */

import type { Finding } from '@shearline/bus'
import { weightedBand } from './band.ts'
import { runThrough, type Trace, traceFor } from './discharge.ts'
import { type Possible, possibleBatteries } from './ensemble.ts'
import { powerLimits } from './limits.ts'
import { posterior } from './posterior.ts'
import { type ReadAt, thinned, type VoltsReading } from './readings.ts'
import { pictureNodes, type Schedule, scheduleOf } from './schedule.ts'
import { finite, type TimeLeft, trendLeft, widest } from './time-left.ts'
import type { Band, CurvePoint, PowerInput } from './types.ts'

/** How the volts stand now: amber is below the floor, stop below the stop volts or a battery that cannot go on. */
export type WatchLevel = 'steady' | 'falling' | 'amber' | 'stop'

export type WatchFindingCode = 'no-readings' | 'readings-left-out' | 'does-not-fit' | 'plan-overrun'

/** What the watch knows after the readings so far. */
export interface Watch {
  readonly level: WatchLevel
  /** The last reading. */
  readonly volts: number | null
  readonly minutes: number | null
  /** Lowest reading so far: kept as a fact. */
  readonly minimumVolts: number | null
  readonly timeLeftMinutes: TimeLeft
  /** Chance that the floor is crossed from now to the end of the plan. */
  readonly chanceOfCrossing: number
  readonly stateOfChargeNow: Band
  /** From the last reading on, as the meter will read it. */
  readonly curve: readonly CurvePoint[]
  /** False when no battery of the band explains the readings; time left then follows the readings alone. */
  readonly fits: boolean
  readonly findings: readonly Finding<WatchFindingCode>[]
}

/** The plan is continued at its last load, so that time left is known beyond its end. */
const BEYOND_MINUTES = 240
const TREND_MINUTES = 15

/**
 * Weighs the possible batteries of a budget by how well each explains the readings, and predicts again from the last
 * one. `prediction` is a budget's answer (or any object with its `input`); times count from the start of its first
 * step. When the work runs behind the plan, give the steps as they really went. `readAt` socket: readings may stand
 * below the posts, and the floor is judged as read. Unusable readings are left out and counted. Throws nothing.
 */
export function refit(
  prediction: { readonly input: PowerInput },
  readings: readonly VoltsReading[],
  readAt: ReadAt = 'battery',
): Watch {
  const { input } = prediction
  const limits = powerLimits(input)
  const planMinutes = input.steps.reduce((sum, step) => sum + step.minutes, 0)
  const { bins, usable, leftOut } = thinned(readings, planMinutes + BEYOND_MINUTES)
  const last = usable.at(-1) ?? null
  const possible = possibleBatteries(input)
  const steps = input.steps.map((step, index) =>
    index === input.steps.length - 1 ? { ...step, minutes: step.minutes + BEYOND_MINUTES } : step,
  )
  const schedule = scheduleOf(steps)
  const runs = foresee(
    input,
    possible,
    schedule,
    bins.map((bin) => bin.minutes),
  )
  const fitted = posterior(
    runs.atReadings,
    bins.map((bin) => bin.volts),
    readAt,
  )
  const from = last?.minutes ?? 0

  const times = new Float64Array(input.runs)
  let crossing = 0
  for (let run = 0; run < input.runs; run += 1) {
    const at = crossingAfter(
      schedule,
      runs.volts[run] as Float64Array,
      fitted.offsets[run] as number,
      from,
      limits.floorVolts,
    )
    times[run] = at - from
    if (at <= planMinutes) crossing += fitted.weights[run] as number
  }
  const left = weightedBand(times, fitted.weights)
  const known = { low: finite(left.low), mid: finite(left.mid), high: finite(left.high) }
  const trend = fitted.fits
    ? null
    : trendLeft(
        usable.filter((each) => each.minutes > from - TREND_MINUTES),
        limits.floorVolts,
      )
  const timeLeftMinutes = trend === null ? known : widest(known, trend)
  const minimumVolts = usable.length === 0 ? null : Math.min(...usable.map((each) => each.volts))
  const volts = last?.volts ?? null
  const chanceOfCrossing = volts !== null && volts < limits.floorVolts ? 1 : crossing
  return {
    level: levelOf(volts, limits.floorVolts, limits.stopVolts, chanceOfCrossing, input.acceptedChance, trend),
    volts,
    minutes: last?.minutes ?? null,
    minimumVolts,
    timeLeftMinutes,
    chanceOfCrossing,
    stateOfChargeNow: weightedBand(chargeAt(schedule, runs.charge, from), fitted.weights),
    curve: curveFrom(schedule, runs.volts, fitted.offsets, fitted.weights, from, planMinutes),
    fits: fitted.fits,
    findings: findingsOf(usable.length, leftOut, fitted.fits, from > planMinutes),
  }
}

interface Foreseen {
  /** Per run, volts at every node. */
  readonly volts: readonly Float64Array[]
  readonly charge: readonly Float64Array[]
  /** Per run, volts at the readings' times. */
  readonly atReadings: readonly Float64Array[]
}

function foresee(
  input: PowerInput,
  possible: readonly Possible[],
  schedule: Schedule,
  minutes: readonly number[],
): Foreseen {
  const trace: Trace = traceFor(schedule)
  const { supply } = input
  const setVolts = supply?.volts ?? powerLimits(input).targetVolts
  const volts: Float64Array[] = []
  const charge: Float64Array[] = []
  for (const battery of possible) {
    const feed = supply === null ? null : { amperes: battery.supplyAmperes, volts: setVolts }
    runThrough(battery, schedule, feed, trace, Number.NEGATIVE_INFINITY)
    volts.push(trace.volts.slice())
    charge.push(trace.charge.slice())
  }
  return {
    volts,
    charge,
    atReadings: volts.map((each) => Float64Array.from(minutes, (at) => valueAt(schedule, each, at))),
  }
}

/** Value at a time, between nodes on a line; where the load changes, the value after the change. */
function valueAt(schedule: Schedule, values: Float64Array, minutes: number): number {
  let low = 0
  let high = schedule.count - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((schedule.minutes[middle] as number) <= minutes) low = middle
    else high = middle
  }
  const from = schedule.minutes[low] as number
  const to = schedule.minutes[high] as number
  const share = to === from ? 1 : Math.min(1, Math.max(0, (minutes - from) / (to - from)))
  return (values[low] as number) + share * ((values[high] as number) - (values[low] as number))
}

/** First minute at or after `from` at which the reading is below the floor; Infinity when it never is. */
function crossingAfter(
  schedule: Schedule,
  volts: Float64Array,
  offset: number,
  from: number,
  floorVolts: number,
): number {
  for (let node = 0; node < schedule.count; node += 1) {
    const at = schedule.minutes[node] as number
    if (at >= from && (volts[node] as number) + offset < floorVolts) return at
  }
  return Number.POSITIVE_INFINITY
}

function levelOf(
  volts: number | null,
  floorVolts: number,
  stopVolts: number,
  chance: number,
  accepted: number,
  trend: TimeLeft | null,
): WatchLevel {
  if (volts !== null && volts < stopVolts) return 'stop'
  if (volts !== null && volts < floorVolts) return 'amber'
  return chance > accepted || trend !== null ? 'falling' : 'steady'
}

function chargeAt(schedule: Schedule, charge: readonly Float64Array[], minutes: number): Float64Array {
  return Float64Array.from(charge, (each) => Math.min(1, Math.max(0, valueAt(schedule, each, minutes))))
}

function curveFrom(
  schedule: Schedule,
  volts: readonly Float64Array[],
  offsets: Float64Array,
  weights: Float64Array,
  from: number,
  until: number,
): readonly CurvePoint[] {
  return pictureNodes(schedule, 60)
    .filter(
      (node) => (schedule.minutes[node] as number) >= from && (schedule.minutes[node] as number) <= until,
    )
    .map((node) => ({
      minutes: schedule.minutes[node] as number,
      step: schedule.step[node] as number,
      ...weightedBand(
        Float64Array.from(volts, (each, run) =>
          Math.max(0, (each[node] as number) + (offsets[run] as number)),
        ),
        weights,
      ),
    }))
}

function findingsOf(
  usable: number,
  leftOut: number,
  fits: boolean,
  overrun: boolean,
): readonly Finding<WatchFindingCode>[] {
  const found: Finding<WatchFindingCode>[] = []
  const add = (code: WatchFindingCode, severity: Finding['severity'], what: string, doNext: string): void => {
    found.push({ code, severity, where: { part: 'readings' }, what, doNext })
  }
  if (usable === 0)
    add('no-readings', 'note', 'no usable reading yet: this is the prediction', 'Read the volts.')
  if (leftOut > 0)
    add(
      'readings-left-out',
      'warning',
      `${leftOut} readings are no usable volts or times`,
      'Check the meter and its unit.',
    )
  if (!fits)
    add(
      'does-not-fit',
      'warning',
      'no battery of the band explains these readings',
      'Something else draws current, or the battery is not as described: look before going on.',
    )
  if (overrun)
    add(
      'plan-overrun',
      'note',
      'the work is past the end of the plan; its last load is taken to go on',
      'Give the steps as they really went.',
    )
  return found
}
