/**
 * @module The supply voltage of one unit as it passed by, as few spans of nearly equal voltage as a picture needs.
 *
 * A span holds voltages within a tolerance. When there are too many spans, neighbours join in pairs and every later span
 * lasts as long as the joined ones: the picture gets coarser in time, and lowest and highest stay exact.
 */

import { type RecordedTime, secondsBetween } from '../frame/index.ts'

const TOLERANCE_VOLTS = 0.05

/** A stretch of voltages that belong together. */
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
  /** Seconds a span lasts at least, whatever the voltage does. */
  #leastSeconds = 0

  /** `most`: spans to keep at most. */
  constructor(most: number) {
    this.#most = most
  }

  add(time: RecordedTime, volts: number): void {
    const last = this.spans.at(-1)
    const one = { from: time, to: time, low: volts, high: volts, times: 1 }
    if (last !== undefined && this.#belongs(last, one)) join(last, one)
    else this.spans.push(one)
    if (this.spans.length > this.#most) this.#thin()
  }

  #belongs(span: SupplySpan, next: SupplySpan): boolean {
    if (secondsBetween(span.from, next.to) < this.#leastSeconds) return true
    // A thousandth of slack: the resolution of PID 42 is 1 mV, and binary fractions are not exact.
    return Math.max(span.high, next.high) - Math.min(span.low, next.low) <= TOLERANCE_VOLTS + 0.0005
  }

  #thin(): void {
    const [first] = this.spans
    const last = this.spans.at(-1)
    if (first !== undefined && last !== undefined) {
      this.#leastSeconds = (2 * secondsBetween(first.from, last.to)) / this.#most
    }
    const kept: SupplySpan[] = []
    this.spans.forEach((span, index) => {
      const before = kept.at(-1)
      if (before !== undefined && index % 2 === 1) join(before, span)
      else kept.push(span)
    })
    this.spans = kept
  }
}

function join(into: SupplySpan, next: SupplySpan): void {
  into.low = Math.min(into.low, next.low)
  into.high = Math.max(into.high, next.high)
  into.to = next.to
  into.times += next.times
}
