/** @module Is the car asleep after the work? */

import type { Finding } from '@shearline/bus'

/** A current at the battery, so many minutes after the car was locked and left alone. */
export interface DrainReading {
  readonly minutes: number
  readonly amperes: number
}

/** `waiting`: not asleep yet, and still within the time cars take. */
export type DrainState = 'asleep' | 'waiting' | 'awake' | 'not-measured'

export type DrainFindingCode = 'drain-not-measured' | 'drain-wait' | 'kept-awake' | 'drain-unreadable'

/** What the readings say. */
export interface DrainAnswer {
  readonly state: DrainState
  /** The last usable reading. */
  readonly amperes: number | null
  /** Days until half of the capacity is gone at that current; null without capacity or drain. */
  readonly daysToHalf: number | null
  readonly findings: readonly Finding<DrainFindingCode>[]
}

/** Trade practice 2, "Car kept awake": asleep about 50 mA or less, after 30 to 60 minutes. */
const ASLEEP_AMPERES = 0.05
const LONGEST_MINUTES = 60

/**
 * Judges readings taken after locking. At 50 mA or less the car is asleep, whenever that is read; above it the car may
 * take up to 60 minutes before it counts as kept awake. The last reading counts. `capacityAmpereHours` null: no days.
 */
export function drainAfter(
  readings: readonly DrainReading[],
  capacityAmpereHours: number | null,
): DrainAnswer {
  const usable = readings.filter(
    ({ minutes, amperes }) => minutes >= 0 && Number.isFinite(minutes) && Number.isFinite(amperes),
  )
  const findings: Finding<DrainFindingCode>[] = []
  if (usable.length < readings.length) {
    findings.push(
      finding(
        'drain-unreadable',
        'warning',
        'some readings are no numbers or lie before locking; they are left out',
        'Read again.',
      ),
    )
  }
  const last = usable.reduce<DrainReading | null>(
    (latest, each) => (latest === null || each.minutes >= latest.minutes ? each : latest),
    null,
  )
  if (last === null) {
    findings.push(
      finding(
        'drain-not-measured',
        'note',
        'nobody measured whether the car went to sleep',
        'Lock it, wait 30 to 60 minutes, read the current.',
      ),
    )
    return { state: 'not-measured', amperes: null, daysToHalf: null, findings }
  }
  // A clamp put on the other way round reads negative.
  const amperes = Math.abs(last.amperes)
  const state = amperes <= ASLEEP_AMPERES ? 'asleep' : last.minutes < LONGEST_MINUTES ? 'waiting' : 'awake'
  const milliamperes = Math.round(amperes * 1000)
  if (state === 'waiting') {
    findings.push(
      finding(
        'drain-wait',
        'note',
        `${milliamperes} mA after ${last.minutes} min: not asleep yet`,
        'Read again up to 60 minutes after locking.',
        { milliamperes },
      ),
    )
  }
  if (state === 'awake') {
    findings.push(
      finding(
        'kept-awake',
        'warning',
        `${milliamperes} mA after ${last.minutes} min: something keeps the car awake`,
        'Unplug from the diagnostic socket, take keys away from the car, close everything, and read again.',
        { milliamperes },
      ),
    )
  }
  const days = capacityAmpereHours !== null && amperes > 0 ? capacityAmpereHours / 2 / amperes / 24 : null
  return { state, amperes, daysToHalf: days, findings }
}

function finding(
  code: DrainFindingCode,
  severity: Finding['severity'],
  what: string,
  doNext: string,
  params?: Readonly<Record<string, number>>,
): Finding<DrainFindingCode> {
  return {
    code,
    severity,
    where: { part: 'drain' },
    what,
    doNext,
    ...(params === undefined ? {} : { params }),
  }
}
