/** @module The least supply with which the plan holds. */

import { runThrough, type Trace } from './discharge.ts'
import type { Possible } from './ensemble.ts'
import type { Schedule } from './schedule.ts'

/** Larger supplies are not carried in a van. Own choice. */
const MOST_AMPERES = 200

/** What a search needs; `crossing` are the runs that cross the floor without any supply. */
export interface LeastSupplyQuestion {
  readonly possible: readonly Possible[]
  readonly schedule: Schedule
  readonly trace: Trace
  readonly floorVolts: number
  readonly supplyVolts: number
  readonly allowedCrossings: number
  readonly crossing: readonly number[]
}

/**
 * Least whole amperes at which no more runs than allowed cross the floor; null when none up to 200 A is enough. More
 * supply never makes a run cross, so only the runs that still cross are tried again.
 */
export function leastSupply(question: LeastSupplyQuestion): number | null {
  if (question.crossing.length <= question.allowedCrossings) return 0
  let tooLittle = 0
  let crossing = question.crossing
  let enough = MOST_AMPERES
  if (stillCrossing(question, crossing, MOST_AMPERES, true).length > question.allowedCrossings) return null
  while (enough - tooLittle > 1) {
    const middle = Math.min(Math.floor((tooLittle + enough) / 2), tooLittle === 0 ? 24 : MOST_AMPERES)
    const left = stillCrossing(question, crossing, middle, false)
    if (left.length > question.allowedCrossings) {
      tooLittle = middle
      crossing = left
    } else {
      enough = middle
    }
  }
  return enough
}

/** Runs of `among` that cross with a supply of `amperes`; with `stop`, gives up once more than allowed do. */
function stillCrossing(
  question: LeastSupplyQuestion,
  among: readonly number[],
  amperes: number,
  stop: boolean,
): readonly number[] {
  const { possible, schedule, trace, floorVolts, supplyVolts, allowedCrossings } = question
  const left: number[] = []
  for (const run of among) {
    const battery = possible[run]
    if (battery === undefined) continue
    runThrough(
      battery,
      schedule,
      { amperes: amperes * battery.supplyShare, volts: supplyVolts },
      trace,
      floorVolts,
    )
    if (trace.lowestVolts < floorVolts) left.push(run)
    if (stop && left.length > allowedCrossings) return left
  }
  return left
}
