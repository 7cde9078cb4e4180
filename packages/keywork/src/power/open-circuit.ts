/** @module Rest voltage and charge: a curve per kind, read both ways. */

const FINE = 200

/** A rest-voltage curve resampled so that reading it costs the same everywhere. */
export interface RestCurve {
  /** Volts at charge 0, 1/200, ... 1. */
  readonly volts: Float64Array
  readonly emptyVolts: number
  readonly fullVolts: number
  readonly belowVoltsPerCharge: number
  readonly aboveVoltsPerCharge: number
}

/** Resamples evenly spaced table volts (empty to full, at least two, rising). */
export function restCurve(table: readonly number[]): RestCurve {
  const last = table.length - 1
  const volts = new Float64Array(FINE + 1)
  for (let index = 0; index <= FINE; index += 1) {
    const place = (index / FINE) * last
    const left = Math.min(Math.floor(place), last - 1)
    const low = table[left] ?? 0
    volts[index] = low + (place - left) * ((table[left + 1] ?? low) - low)
  }
  const emptyVolts = table[0] ?? 0
  const fullVolts = table[last] ?? 0
  return {
    volts,
    emptyVolts,
    fullVolts,
    belowVoltsPerCharge: ((table[1] ?? 0) - emptyVolts) * last,
    aboveVoltsPerCharge: (fullVolts - (table[last - 1] ?? 0)) * last,
  }
}

/** Rest volts at a charge; beyond 0 and 1 the end slopes go on. */
export function voltsAtCharge(curve: RestCurve, charge: number): number {
  if (charge <= 0) return curve.emptyVolts + charge * curve.belowVoltsPerCharge
  if (charge >= 1) return curve.fullVolts + (charge - 1) * curve.aboveVoltsPerCharge
  const place = charge * FINE
  const left = place | 0
  const low = curve.volts[left] as number
  return low + (place - left) * ((curve.volts[left + 1] as number) - low)
}

/**
 * Charge at a rest voltage. At most 1: what stands above full is surface charge. Below empty it goes on down the end
 * slope to a negative charge, so that a deeply discharged battery keeps the voltage it was found with.
 */
export function chargeAtVolts(curve: RestCurve, volts: number): number {
  if (volts <= curve.emptyVolts) return (volts - curve.emptyVolts) / curve.belowVoltsPerCharge
  if (volts >= curve.fullVolts) return 1
  let low = 0
  let high = FINE
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((curve.volts[middle] as number) <= volts) low = middle
    else high = middle
  }
  const lowVolts = curve.volts[low] as number
  return (low + (volts - lowVolts) / ((curve.volts[high] as number) - lowVolts)) / FINE
}
