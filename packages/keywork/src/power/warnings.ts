/** @module What the person should know beside the verdict. */

import type { Finding, Severity } from '@shearline/bus'
import { CURVES } from './ensemble.ts'
import { peukertExponent } from './peukert.ts'
import type {
  Band,
  Battery,
  PowerInput,
  PowerLimits,
  PowerVerdict,
  PowerWarningCode,
  StartOutlook,
} from './types.ts'
import { isFrozen } from './verdict.ts'

type Warning = Finding<PowerWarningCode>

/** Hours after which a reading counts as rested: pages name 4 to 12, handbooks 6 to 8, better 24. */
const RESTED_HOURS = 8
const DOUBTFUL_START = 0.75

/** Warnings in the order: what is missing, what the battery shows, what the supply needs, limits, what comes after. */
export function warningsFor(
  input: PowerInput,
  limits: PowerLimits,
  stateOfCharge: Band,
  verdict: PowerVerdict,
  startAfter: StartOutlook,
): readonly Warning[] {
  return [
    ...missing(input.battery),
    ...input.steps.flatMap((step, index) =>
      step.amperes === null && step.loads.length === 0
        ? [
            warn(
              'step-load-missing',
              'warning',
              `steps[${index}]`,
              `the load of "${step.name}" is not known: 5 to 40 A are drawn`,
              'Read the current with a clamp, or name the loads.',
              { step: step.name },
            ),
          ]
        : [],
    ),
    ...shown(input.battery, stateOfCharge),
    ...supplied(input, verdict),
    ...limited(input, limits),
    ...(startAfter.chanceStarts < DOUBTFUL_START && verdict !== 'stop'
      ? [
          warn(
            'start-doubtful',
            'warning',
            'battery',
            `after the work the car starts in only ${Math.round(startAfter.chanceStarts * 100)} % of the runs`,
            'Charge before leaving, or have a start pack at hand.',
            { chancePercent: Math.round(startAfter.chanceStarts * 100) },
          ),
        ]
      : []),
  ]
}

function missing(battery: Battery): readonly Warning[] {
  const found: Warning[] = []
  const gap = (code: PowerWarningCode, field: string, what: string, doNext: string): void => {
    found.push(warn(code, 'warning', `battery.${field}`, what, doNext))
  }
  if (battery.restVolts === null)
    gap(
      'rest-volts-missing',
      'restVolts',
      'without rest volts the charge may be anything from empty to full',
      'Read the volts at the posts before anything is switched on.',
    )
  else if (battery.hoursAtRest === null)
    gap(
      'hours-at-rest-missing',
      'hoursAtRest',
      'how long the battery rested is not known; the reading may stand too high',
      'Ask when the car was last driven.',
    )
  else if (battery.hoursAtRest < RESTED_HOURS && battery.lastUse !== 'drained')
    gap(
      'rested-too-short',
      'hoursAtRest',
      `after ${battery.hoursAtRest} h of rest surface charge may still lift the reading`,
      'Burn it off (side lamps for a few minutes, then wait), or trust the low end of the band.',
    )
  if (battery.kind === 'unknown')
    gap(
      'kind-missing',
      'kind',
      'the kind of battery is not known: every kind is in the band',
      'Read its label.',
    )
  if (battery.capacityAmpereHours === null)
    gap(
      'capacity-missing',
      'capacityAmpereHours',
      'the capacity is not known and is drawn wide',
      'Read its label.',
    )
  if (battery.ageYears === null)
    gap('age-missing', 'ageYears', 'the age is not known: 0 to 9 years are drawn', 'Read the date code.')
  if (battery.temperatureCelsius === null)
    gap(
      'temperature-missing',
      'temperatureCelsius',
      'the temperature is not known: -10 to 30 C are drawn',
      'Read or estimate it.',
    )
  const { secondRate, capacityAmpereHours, hourRate } = battery
  if (secondRate !== null && capacityAmpereHours !== null) {
    const rated = { amperes: capacityAmpereHours / hourRate, hours: hourRate }
    if (peukertExponent(rated, secondRate) === null)
      gap(
        'second-rate-unusable',
        'secondRate',
        'the two rates give no Peukert exponent of 1 or more; it is left out',
        'Check both figures on the label.',
      )
  }
  return found
}

function shown(battery: Battery, stateOfCharge: Band): readonly Warning[] {
  const { kind, restVolts, temperatureCelsius } = battery
  const found: Warning[] = []
  const curve = CURVES[kind === 'unknown' ? 'flooded' : kind]
  if (restVolts !== null && restVolts > curve.fullVolts + (kind === 'agm' ? 0.35 : 0.15))
    found.push(
      warn(
        'above-full',
        'warning',
        'battery.restVolts',
        `${restVolts} V is more than this battery shows at rest: surface charge, a charger, or another kind`,
        'Make sure nothing charges it, and read the label.',
        { restVolts },
      ),
    )
  if (restVolts !== null && restVolts < curve.emptyVolts)
    found.push(
      warn(
        'deeply-discharged',
        'warning',
        'battery.restVolts',
        `${restVolts} V is below every table: the battery is empty and may be damaged`,
        'Test it before trusting it; a bad one needs a donor battery.',
        { restVolts },
      ),
    )
  const charge = restVolts === null ? 0 : stateOfCharge.low
  if (
    isFrozen(kind, temperatureCelsius, charge) &&
    !isFrozen(kind, temperatureCelsius, restVolts === null ? null : stateOfCharge.mid)
  )
    found.push(
      warn(
        'may-be-frozen',
        'warning',
        'battery',
        'at the low end of the band the acid may be frozen',
        'Feel and look at the case; connect nothing to a frozen battery.',
        { celsius: temperatureCelsius ?? 0 },
      ),
    )
  if (kind === 'lithium' && temperatureCelsius !== null && temperatureCelsius < 0)
    found.push(
      warn(
        'lithium-below-zero',
        'warning',
        'battery',
        'below 0 C a lithium battery may refuse charge or disconnect',
        'Warm it, or let the supply carry the whole load and watch the volts.',
      ),
    )
  return found
}

function supplied({ supply, battery }: PowerInput, verdict: PowerVerdict): readonly Warning[] {
  const found: Warning[] = []
  if (supply?.kind === 'charger')
    found.push(
      warn(
        'charger-not-supply',
        'warning',
        'supply',
        'a charger drops to float and lets the voltage sag; its current is not counted on',
        'Use a stable supply for the work.',
      ),
    )
  if (supply !== null && supply.amperes === null)
    found.push(
      warn(
        'supply-amperes-missing',
        'warning',
        'supply.amperes',
        'the current of the supply is not known: 5 to 30 A are drawn',
        'Read its label.',
      ),
    )
  if (supply === null && verdict === 'go')
    found.push(
      warn(
        'support-writes',
        'note',
        'supply',
        'common practice connects a supply before the first write even when the battery would hold',
        'Connect one if it is at hand.',
      ),
    )
  if ((supply !== null || verdict === 'connect-supply') && battery.monitored !== false)
    found.push(
      warn(
        'clamp-to-chassis',
        'note',
        'supply',
        'with battery monitoring the negative clamp belongs on chassis or engine earth, not on the post',
        'Otherwise the monitor needs about 8 h asleep to find its way again.',
      ),
    )
  return found
}

function limited({ settings, vehicleMaker }: PowerInput, limits: PowerLimits): readonly Warning[] {
  const found: Warning[] = []
  const overruled = (maker: number | null | undefined, setting: number | null): boolean =>
    maker !== null && maker !== undefined && setting !== null && setting !== maker
  if (overruled(vehicleMaker?.floorVolts, settings.floorVolts))
    found.push(
      warn(
        'setting-overruled',
        'note',
        'floorVolts',
        `the vehicle maker's instruction (${limits.floorVolts} V) wins over the setting (${settings.floorVolts} V)`,
        'Nothing.',
      ),
    )
  if (overruled(vehicleMaker?.targetVolts, settings.targetVolts))
    found.push(
      warn(
        'setting-overruled',
        'note',
        'targetVolts',
        `the vehicle maker's instruction (${limits.targetVolts} V) wins over the setting (${settings.targetVolts} V)`,
        'Nothing.',
      ),
    )
  const stated = vehicleMaker?.targetVolts ?? settings.targetVolts
  if (stated !== null && stated < limits.floorVolts)
    found.push(
      warn(
        'floor-above-target',
        'warning',
        'targetVolts',
        `the target (${stated} V) lies below the floor (${limits.floorVolts} V); the floor is the target`,
        'Check both.',
      ),
    )
  return found
}

function warn(
  code: PowerWarningCode,
  severity: Severity,
  part: string,
  what: string,
  doNext: string,
  params?: Readonly<Record<string, string | number>>,
): Warning {
  return { code, severity, where: { part }, what, doNext, ...(params === undefined ? {} : { params }) }
}
