/** @module The times at which the voltage is computed. */

import type { PowerStep } from './types.ts'

/** Computed times in order. The load of a node holds until the next; a step's last node has no time after it. */
export interface Schedule {
  readonly count: number
  readonly minutes: Float64Array
  readonly step: Int32Array
  /** Hours to the next node; 0 at the last node of a step. */
  readonly hours: Float64Array
  /** Index into `spans`, the different lengths that occur. */
  readonly span: Int32Array
  readonly spans: readonly number[]
  readonly supplied: Uint8Array
}

/** Seconds between nodes, until so many seconds into the step: fine after a load changes, coarser later. */
const FINENESS: readonly { readonly until: number; readonly every: number }[] = [
  { until: 120, every: 15 },
  { until: 600, every: 30 },
  { until: 7200, every: 60 },
  { until: Number.POSITIVE_INFINITY, every: 300 },
]

/**
 * Lays nodes over the steps. The grid of a step depends only on the time since it began, so a longer step has the same
 * first nodes as a shorter one and comparing the two compares the batteries, not the grids.
 */
export function scheduleOf(steps: readonly PowerStep[]): Schedule {
  const minutes: number[] = []
  const step: number[] = []
  const hours: number[] = []
  const span: number[] = []
  const supplied: number[] = []
  const spans: number[] = []
  const add = (atMinutes: number, index: number, seconds: number): void => {
    let place = spans.indexOf(seconds)
    if (place < 0) place = spans.push(seconds) - 1
    minutes.push(atMinutes)
    step.push(index)
    hours.push(seconds / 3600)
    span.push(place)
    supplied.push(steps[index]?.supplied === true ? 1 : 0)
  }
  let began = 0
  for (const [index, { minutes: length }] of steps.entries()) {
    const total = length * 60
    let since = 0
    for (const { until, every } of FINENESS) {
      while (since < until && since < total) {
        const seconds = Math.min(every, until - since, total - since)
        add(began + since / 60, index, seconds)
        since += seconds
      }
    }
    began += length
    add(began, index, 0)
  }
  return {
    count: minutes.length,
    minutes: Float64Array.from(minutes),
    step: Int32Array.from(step),
    hours: Float64Array.from(hours),
    span: Int32Array.from(span),
    spans: spans.map((seconds) => seconds / 3600),
    supplied: Uint8Array.from(supplied),
  }
}

/** Places of at most about `points` nodes for a picture: every step's first and last, and some between. */
export function pictureNodes(schedule: Schedule, points: number): readonly number[] {
  const chosen: number[] = []
  const total = schedule.minutes[schedule.count - 1] ?? 0
  const apart = total / points
  let last = Number.NEGATIVE_INFINITY
  for (let node = 0; node < schedule.count; node += 1) {
    const at = schedule.minutes[node] as number
    const begins = node === 0 || schedule.step[node] !== schedule.step[node - 1]
    const ends = schedule.hours[node] === 0
    if (!begins && !ends && at - last < apart) continue
    chosen.push(node)
    last = at
  }
  return chosen
}
