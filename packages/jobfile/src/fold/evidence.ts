import {
  compareScans,
  type FaultComparison,
  isWellFormedVin,
  type Scan,
  tidyVin,
  type WorkEvent,
} from '@shearline/keywork'
import { workEventsOf } from '../intake/work-events.ts'
import type { Collected } from './collect.ts'
import type { JobState, SupplyReading, VinOnRecord } from './state.ts'

/** VIN readings and the one VIN they agree on, if they do. */
export function foldVins(facts: Collected): { vins: readonly VinOnRecord[]; vin: string | null } {
  const vins = facts.all('vin-read').map(({ body }): VinOnRecord => {
    const { source, unit = null, picture = null } = body
    const vin = tidyVin(body.vin)
    return { source, vin, wellFormed: isWellFormedVin(vin), unit, picture }
  })
  const distinct = new Set(vins.map((reading) => reading.vin))
  const [only] = distinct
  return { vins, vin: distinct.size === 1 && only !== undefined ? only : null }
}

/** Every scan on record in order, and the life line of every fault over them. */
export function foldScans(
  facts: Collected,
  supply: JobState['supply'],
): { scans: readonly Scan[]; faults: FaultComparison } {
  const scans = facts.all('scan-attached').map(({ body }): Scan => ({ phase: body.phase, units: body.units }))
  const roles = Object.fromEntries(facts.all('unit-named').map(({ body }) => [body.unit, body.role]))
  const matches = facts.all('unit-matched').map(({ body }) => body)
  return { scans, faults: compareScans(scans, { events: workEvents(facts, supply), roles, matches }) }
}

/** What the work did to the car: seen in recordings made after the first scan, or recorded as facts. */
function workEvents(facts: Collected, { setting, minimumVolts }: JobState['supply']): readonly WorkEvent[] {
  const events: WorkEvent[] = []
  const phasesOf = (blob: string) => facts.all('scan-attached').filter(({ body }) => body.blob === blob)
  for (const { body } of facts.all('recording-attached')) {
    const scans = phasesOf(body.blob)
    // A recording that only holds the scan before is not the work.
    if (scans.length > 0 && scans.every((entry) => entry.body.phase === 'before')) continue
    events.push(...workEventsOf(body))
  }
  const opened = facts.last('session-opened')
  if (opened !== null)
    events.push({
      kind: 'teaching',
      unit: null,
      time: null,
      evidence: { code: 'session-opened', params: { at: opened.at } },
    })
  for (const { at, body } of facts.all('broke-off')) {
    if (body.why === 'key-refused')
      events.push({
        kind: 'key-refused',
        unit: null,
        time: null,
        evidence: { code: 'key-refused', params: { at } },
      })
  }
  if (setting !== null && minimumVolts !== null && minimumVolts < setting.floorVolts) {
    events.push({
      kind: 'supply-low',
      unit: null,
      time: null,
      evidence: { code: 'supply-fell', params: { minimum: minimumVolts, floor: setting.floorVolts } },
    })
  }
  return events
}

/** Supply setting, readings in order (typed ones and those taken with each taught key), and the session's minimum. */
export function foldSupply(facts: Collected): JobState['supply'] {
  const readings: SupplyReading[] = facts
    .all('supply-read')
    .map(({ at, body }) => ({ at, volts: body.volts, during: body.during }))
  for (const { at, body } of facts.all('key-taught')) {
    if (body.volts !== undefined) readings.push({ at, volts: body.volts, during: 'session' })
  }
  for (const { at, body } of facts.all('broke-off')) {
    if (body.volts !== undefined) readings.push({ at, volts: body.volts, during: 'session' })
  }
  readings.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
  const during = readings.filter((reading) => reading.during === 'session').map((reading) => reading.volts)
  return {
    setting: facts.last('supply-set')?.body ?? null,
    readings,
    minimumVolts: during.length === 0 ? null : Math.min(...during),
  }
}
