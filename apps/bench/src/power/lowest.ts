/** @module Which of a meter's many readings go on record. */

/** A new lowest this much below the last one kept is kept at once. Own choice. */
const STEP_VOLTS = 0.2
/** Below the floor every tenth counts. */
const STEP_BELOW_FLOOR_VOLTS = 0.1
/** A thousandth of slack: binary fractions are not exact. */
const SLACK = 0.0005

/**
 * True when a reading should be on record now, so that a tablet that dies loses at most a step of the minimum. `kept` is
 * the lowest on record from this meter; null before the first.
 */
export function worthKeeping(kept: number | null, volts: number, floorVolts: number): boolean {
  if (kept === null) return true
  const step = volts < floorVolts ? STEP_BELOW_FLOOR_VOLTS : STEP_VOLTS
  return volts <= kept - step + SLACK || (volts < floorVolts && kept >= floorVolts)
}
