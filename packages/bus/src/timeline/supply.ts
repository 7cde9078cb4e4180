/**
 * @module The supply voltage of one unit as it passed by, as few spans of nearly equal voltage as a picture needs.
 *
 * A span holds voltages within a tolerance; when there are too many spans the tolerance doubles and neighbours join.
 * Lowest and highest are always exact.
 */

import type { RecordedTime } from '../frame/index.ts'

const FIRST_TOLERANCE_VOLTS = 0.05

/** A stretch of nearly equal voltage. */
export interface SupplySpan {
  readonly from: RecordedTime
  to: RecordedTime
  low: number
  high: number
  times: number
}

/** Gathers voltages in bounded memory. */
export class Supply {
  spans: SupplySpan[] = []
  readonly #most: number
  #tolerance = FIRST_TOLERANCE_VOLTS

  /** `most`: spans to keep at most. */
  constructor(most: number) {
    this.#most = most
  }

  add(time: RecordedTime, volts: number): void {
    const last = this.spans.at(-1)
    const one = { from: time, to: time, low: volts, high: volts, times: 1 }
    if (last === undefined || !this.#join(last, one)) this.spans.push(one)
    while (this.spans.length > this.#most) {
      this.#tolerance *= 2
      this.#thin()
    }
  }

  #join(into: SupplySpan, next: SupplySpan): boolean {
    const low = Math.min(into.low, next.low)
    const high = Math.max(into.high, next.high)
    // A thousandth of slack: the resolution of PID 42 is 1 mV, and binary fractions are not exact.
    if (high - low > this.#tolerance + 0.0005) return false
    into.low = low
    into.high = high
    into.to = next.to
    into.times += next.times
    return true
  }

  #thin(): void {
    const kept: SupplySpan[] = []
    for (const span of this.spans) {
      const last = kept.at(-1)
      if (last === undefined || !this.#join(last, span)) kept.push(span)
    }
    this.spans = kept
  }
}
