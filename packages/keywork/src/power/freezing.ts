/** @module When a discharged lead-acid battery is ice. */

/**
 * Acid density and freezing point, degrees Celsius: two army maintenance manuals (TM 5-1185, OD 1002) and an owner's
 * handbook agree. `lead_acid.tsv` gives lower points below 1.200 (-23 at 1.120); the warmer, more careful ones count.
 */
const FREEZING: readonly (readonly [density: number, celsius: number])[] = [
  [1.1, -7.2],
  [1.15, -15],
  [1.2, -26.7],
  [1.25, -52],
  [1.28, -67],
]

/** Freezing point at a charge 0 to 1: density 1.120 empty to 1.265 full (published flooded table). */
export function freezesBelowCelsius(charge: number): number {
  const density = 1.12 + 0.145 * Math.min(1, Math.max(0, charge))
  const above = FREEZING.findIndex(([each]) => each >= density)
  const [highDensity, high] = FREEZING[above] ?? [1.28, -67]
  const [lowDensity, low] = FREEZING[above - 1] ?? [1.1, -7.2]
  return low + ((density - lowDensity) / (highDensity - lowDensity)) * (high - low)
}
