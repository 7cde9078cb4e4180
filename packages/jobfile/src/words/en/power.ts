/** Whether the car's supply holds: verdict, why, warnings, the watch, and what is left after the work. */
export const powerWords = {
  'power-verdict.go': 'Go: the battery holds the plan.',
  'power-verdict.connect-supply': 'Connect a supply of at least {amperes} A first.',
  'power-verdict.stop': 'Stop: do not begin.',

  'power-reason.holds':
    'Chance of falling below {floorVolts}: {chancePercent} %. The lowest to expect is about {lowestVolts}.',
  'power-reason.holds-with-supply':
    'With the supply, the chance of falling below {floorVolts} is {chancePercent} %. The lowest to expect is about {lowestVolts}.',
  'power-reason.crosses-floor':
    'As described, the chance of falling below {floorVolts} is {chancePercent} %; {acceptedPercent} % is accepted.',
  'power-reason.supply-too-small': 'The supply as described is not enough.',
  'power-reason.supply-volts-too-low': 'The supply is set below the floor.',
  'power-reason.no-supply-enough':
    'No supply up to 200 A holds the floor. Check the floor, or change or charge the battery first.',
  'power-reason.known-bad':
    'The battery is known to be bad. Work from a donor battery, or have a new one fitted.',
  'power-reason.dead-cell':
    '{restVolts} is what is left when a cell is dead. Test the battery under load, charge it alone, or use a donor battery.',
  'power-reason.not-twelve-volts':
    '{restVolts} is no 12 V battery at rest. Engine and chargers off, then read again.',
  'power-reason.frozen':
    'At {celsius} °C and this charge the acid is frozen. Do not charge, jump or load it: let it thaw first.',

  'power-warning.rest-volts-missing':
    'Without the volts at rest the charge may be anything. Read them at the posts before anything is switched on.',
  'power-warning.rested-too-short':
    'It has not rested long: the reading may stand too high. Trust the low end of the band.',
  'power-warning.hours-at-rest-missing':
    'How long it rested is not known: the reading may stand too high. Ask when the car was last driven.',
  'power-warning.above-full':
    '{restVolts} is more than this battery shows at rest. Make sure nothing charges it, and read its label.',
  'power-warning.deeply-discharged':
    '{restVolts} is below every table: empty, and perhaps damaged. Test it before you trust it.',
  'power-warning.kind-missing':
    'The kind of battery is not known: every kind is in the band. Read its label.',
  'power-warning.capacity-missing': 'The capacity is not known and taken wide. Read its label.',
  'power-warning.age-missing': 'The age is not known: new to nine years are in the band.',
  'power-warning.temperature-missing': 'The temperature is not known: -10 to 30 °C are in the band.',
  'power-warning.second-rate-unusable': 'The two rates on the label contradict each other; one is left out.',
  'power-warning.step-load-missing':
    'The load of "{step}" is not known: 5 to 40 A are taken. Name what is switched on.',
  'power-warning.may-be-frozen':
    'At the low end of the band the acid may be frozen. Look at the case; connect nothing to a frozen battery.',
  'power-warning.lithium-below-zero':
    'Below 0 °C a lithium battery may refuse charge or cut itself off. Warm it, or let the supply carry all.',
  'power-warning.charger-not-supply':
    'A charger is not a supply: it drops to float and lets the voltage sag. Its current is not counted on.',
  'power-warning.supply-amperes-missing':
    'The current of the supply is not known: 5 to 30 A are taken. Read its label.',
  'power-warning.support-writes':
    'It holds without; common practice still connects a supply before the first write.',
  'power-warning.clamp-to-chassis':
    'With battery monitoring the negative clamp goes to chassis or engine earth, not to the post.',
  'power-warning.setting-overruled': "The vehicle maker's instruction wins over the setting.",
  'power-warning.floor-above-target': 'The target lies below the floor: the floor is taken as the target.',
  'power-warning.start-doubtful':
    'After the work the car starts in only {chancePercent} % of what is possible. Charge before leaving, or have a start pack at hand.',

  'power-level.steady': 'Steady',
  'power-level.falling': 'Falling: it will not last to the end of the plan',
  'power-level.amber': 'Below the floor',
  'power-level.stop': 'Stop now',

  'power-watch.no-readings': 'No reading yet: this is the prediction.',
  'power-watch.readings-left-out':
    'Some readings are no usable volts or times and are left out. Check the meter.',
  'power-watch.does-not-fit':
    'No battery as described explains these readings. Something else draws current: look before going on.',
  'power-watch.plan-overrun': 'The work is past the end of the plan; its last load is taken to go on.',

  'power-start.starts': 'It will start',
  'power-start.doubtful': 'It may not start: charge it, or have a start pack at hand',
  'power-start.does-not-start': 'It will not start as it is',
  'power-start.unknown': 'Not known: read the volts with the supply taken off',

  'power-drain.asleep': 'Asleep',
  'power-drain.waiting': 'Not asleep yet. Read again up to 60 minutes after locking',
  'power-drain.awake': 'Kept awake. Unplug from the socket, take keys away, close everything, read again',
  'power-drain.not-measured': 'Not measured',

  'power-cell.good': 'Good',
  'power-cell.replace-soon': 'Replace soon',
  'power-cell.replace': 'Replace',
  'power-cell.test-loaded': 'Not proven: read it while the fob transmits',
  'power-cell.read-again': 'Cannot be: check range, polarity and number of cells',

  'power-meter.empty': 'an empty line',
  'power-meter.no-number': 'a line without a number',
  'power-meter.several-numbers': 'a line with several numbers',
  'power-meter.overload': 'beyond its range',
  'power-meter.alternating': 'alternating current: switch it to direct',
  'power-meter.other-unit': 'another quantity than volts',
} as const
