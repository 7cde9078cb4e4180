/** @module Floor, target and stop volts, and who set them. */

import type { PowerInput, PowerLimits } from './types.ts'

/** "Below 12 V is the danger sign in one guide": trade practice 5.2. */
const PRACTICE_FLOOR_VOLTS = 12
/** "Typical 13.5 to 14.2 V steady; one workshop holds 13.6 V": trade practice 5.2. */
const PRACTICE_TARGET_VOLTS = 13.6
/** Own choice. */
const STOP_BELOW_FLOOR_VOLTS = 0.5

/**
 * The limits that count: what the vehicle maker's instruction states wins over the setting, the setting over common
 * practice. A target below the floor is raised to it.
 */
export function powerLimits({
  settings,
  vehicleMaker,
}: Pick<PowerInput, 'settings' | 'vehicleMaker'>): PowerLimits {
  const makerSource = `vehicle maker's instruction${vehicleMaker?.reference ? `: ${vehicleMaker.reference}` : ''}`
  const makerFloor = vehicleMaker?.floorVolts ?? null
  const makerTarget = vehicleMaker?.targetVolts ?? null
  const floorVolts = makerFloor ?? settings.floorVolts ?? PRACTICE_FLOOR_VOLTS
  const targetVolts = makerTarget ?? settings.targetVolts ?? PRACTICE_TARGET_VOLTS
  const stop = settings.stopVolts ?? floorVolts - STOP_BELOW_FLOOR_VOLTS
  const from = (maker: number | null, setting: number | null, source: string | null): string => {
    if (maker !== null) return makerSource
    return setting === null ? 'common practice' : (source ?? 'setting, source not stated')
  }
  return {
    floorVolts,
    floorSource: from(makerFloor, settings.floorVolts, settings.floorSource),
    targetVolts: Math.max(targetVolts, floorVolts),
    targetSource: from(makerTarget, settings.targetVolts, settings.targetSource),
    stopVolts: Math.min(stop, floorVolts),
  }
}
