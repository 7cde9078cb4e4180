import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { runThrough, traceFor } from './discharge.ts'
import { possibleBatteries } from './ensemble.ts'
import { type PowerAnswer, type PowerInput, powerBudget } from './index.ts'
import { scheduleOf } from './schedule.ts'
import { plan } from './testing/plans.ts'

const anyBattery = fc.record({
  kind: fc.constantFrom('flooded', 'efb', 'agm', 'gel', 'lithium', 'unknown'),
  capacityAmpereHours: fc.option(fc.integer({ min: 30, max: 120 })),
  coldCrankingAmperes: fc.option(fc.integer({ min: 300, max: 900 })),
  ageYears: fc.integer({ min: 0, max: 10 }),
  restVolts: fc.option(fc.double({ min: 11.6, max: 13.3, noNaN: true })),
  hoursAtRest: fc.option(fc.integer({ min: 0, max: 48 })),
  temperatureCelsius: fc.integer({ min: -20, max: 35 }),
})
const anySteps = fc.array(
  fc.record({
    minutes: fc.integer({ min: 1, max: 90 }),
    amperes: fc.double({ min: 0, max: 50, noNaN: true }),
    supplied: fc.boolean(),
  }),
  { minLength: 1, maxLength: 4 },
)
const anySupply = fc.option(
  fc.record({
    amperes: fc.double({ min: 0, max: 60, noNaN: true }),
    volts: fc.constantFrom(13.2, 13.6, 14.2),
  }),
)
const anyPlan = fc.record({
  battery: anyBattery,
  steps: anySteps,
  supply: anySupply,
  floorVolts: fc.constantFrom(11, 12, 12.4, 13),
  seed: fc.nat(1e6),
  runs: fc.constant(100),
})
type AnyPlan = typeof anyPlan extends fc.Arbitrary<infer T> ? T : never

/** Volts at most this far the wrong way: rounding, nothing else. */
const ROUNDING = 1e-9

/** Lowest volts and charge at the end of every single run. */
function everyRun(input: PowerInput): readonly { readonly lowest: number; readonly charge: number }[] {
  const schedule = scheduleOf(input.steps)
  const trace = traceFor(schedule)
  return possibleBatteries(input).map((battery) => {
    const volts = input.supply?.volts ?? 13.6
    const feed = input.supply === null ? null : { amperes: battery.supplyAmperes, volts }
    runThrough(battery, schedule, feed, trace, Number.NEGATIVE_INFINITY)
    return { lowest: trace.lowestVolts, charge: trace.charge.at(-1) ?? Number.NaN }
  })
}

/** The second is nowhere better than the first: not in any single run, and so not in the answer. */
function expectNoBetter(first: PowerInput, second: PowerInput, leastSupplyToo = true): void {
  const worse = everyRun(second)
  for (const [run, before] of everyRun(first).entries()) {
    const after = worse[run] ?? { lowest: Number.NaN, charge: Number.NaN }
    expect(after.lowest).toBeLessThanOrEqual(before.lowest + ROUNDING)
    // A battery run flat by a greater load keeps more of the charge it could not bring forward.
    if (after.lowest > 0) expect(after.charge).toBeLessThanOrEqual(before.charge + ROUNDING)
  }
  const [good, bad] = [powerBudget(first), powerBudget(second)]
  expect(bad.chanceOfCrossing).toBeGreaterThanOrEqual(good.chanceOfCrossing)
  for (const end of ['low', 'mid', 'high'] as const) {
    expect(bad.minimumVolts[end]).toBeLessThanOrEqual(good.minimumVolts[end] + ROUNDING)
  }
  if (leastSupplyToo) expect(bad.supplyAmperes ?? 1000).toBeGreaterThanOrEqual(good.supplyAmperes ?? 1000)
}

const check = (worsen: (given: AnyPlan, by: number) => AnyPlan, seed: number): void =>
  fc.assert(
    fc.property(anyPlan, fc.integer({ min: 1, max: 20 }), (given, by) => {
      expectNoBetter(plan(given), plan(worsen(given, by)))
    }),
    { seed, numRuns: 40 },
  )

describe('never better for it', () => {
  test('POW-16 colder', () => {
    check((given, by) => {
      const temperatureCelsius = given.battery.temperatureCelsius - by
      return { ...given, battery: { ...given.battery, temperatureCelsius } }
    }, 21)
  })

  test('POW-16 older', () => {
    check(
      (given, by) => ({ ...given, battery: { ...given.battery, ageYears: given.battery.ageYears + by } }),
      22,
    )
  })

  test('POW-16 more load', () => {
    check(
      (given, by) => ({
        ...given,
        steps: given.steps.map((step) => ({ ...step, amperes: step.amperes + by })),
      }),
      23,
    )
  })

  test('POW-16 one more lamp', () => {
    check(
      (given) => ({ ...given, steps: given.steps.map((step) => ({ ...step, loads: ['side-lamps'] })) }),
      24,
    )
  })

  test('POW-16 less volts at rest', () => {
    fc.assert(
      fc.property(anyPlan, fc.double({ min: 0.01, max: 0.4, noNaN: true }), (given, by) => {
        const at = (restVolts: number) =>
          powerBudget(plan({ ...given, battery: { ...given.battery, restVolts } }))
        const restVolts = given.battery.restVolts ?? 12.4
        // For a kind not known, the share of runs that are lithium reads the same volts quite differently.
        if (given.battery.kind !== 'unknown') {
          expect(at(restVolts - by).stateOfCharge.mid).toBeLessThanOrEqual(at(restVolts).stateOfCharge.mid)
        }
      }),
      { seed: 25, numRuns: 40 },
    )
  })

  test('POW-16 longer without supply at the end: the lowest volts, and the end of the last step', () => {
    check((given, by) => {
      const { steps } = given
      const last = steps.at(-1)
      if (last === undefined) return given
      // A supply that charges makes a longer wait better, which is no fault: the added time is without it.
      return { ...given, steps: [...steps, { ...last, minutes: by, supplied: false }] }
    }, 26)
  })

  test('POW-16 longer in any step, where loads only rise and nothing recovers', () => {
    fc.assert(
      fc.property(anyPlan, fc.nat(3), fc.integer({ min: 1, max: 60 }), (given, place, by) => {
        const loads = given.steps.map((step) => step.amperes).toSorted((left, right) => left - right)
        const steps = given.steps.map((step, index) => ({ ...step, amperes: loads[index] ?? 0 }))
        const at = place % steps.length
        const longer = steps.map((step, index) =>
          index === at ? { ...step, minutes: step.minutes + by } : step,
        )
        const bare = { ...given, supply: null }
        // With a supply a longer wait charges, so the least supply may well be smaller.
        expectNoBetter(plan({ ...bare, steps }), plan({ ...bare, steps: longer }), false)
      }),
      { seed: 27, numRuns: 40 },
    )
  })

  test('POW-17 no supply, or a smaller one', () => {
    fc.assert(
      fc.property(
        anyPlan,
        fc.double({ min: 0, max: 80, noNaN: true }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (given, amperes, more) => {
          const at = (supply: { amperes: number; volts: number } | null) => plan({ ...given, supply })
          const none = at(null)
          const some = at({ amperes, volts: 13.6 })
          const larger = at({ amperes: amperes + more, volts: 13.6 })
          expectNoBetter(some, none)
          expectNoBetter(larger, some)
        },
      ),
      { seed: 28, numRuns: 40 },
    )
  })
})

describe('what is not known', () => {
  const known = {
    kind: 'flooded',
    capacityAmpereHours: 70,
    ageYears: 4,
    restVolts: 12.4,
    hoursAtRest: 24,
    temperatureCelsius: 10,
  }
  const ask = (battery: Readonly<Record<string, unknown>>) =>
    powerBudget(plan({ battery, steps: [{ minutes: 40, amperes: 12 }] }))

  test('POW-01 each missing value widens a band and is named', () => {
    const all = ask(known)
    const named = {
      kind: 'kind-missing',
      capacityAmpereHours: 'capacity-missing',
      ageYears: 'age-missing',
      restVolts: 'rest-volts-missing',
      hoursAtRest: 'hours-at-rest-missing',
      temperatureCelsius: 'temperature-missing',
    }
    for (const [field, code] of Object.entries(named)) {
      const { [field as keyof typeof known]: _left, ...rest } = known
      const less = ask(rest)
      const width = ({ minimumVolts, stateOfCharge, stateOfChargeAtEnd }: PowerAnswer): number =>
        minimumVolts.high -
        minimumVolts.low +
        stateOfCharge.high -
        stateOfCharge.low +
        stateOfChargeAtEnd.high -
        stateOfChargeAtEnd.low
      expect(width(less), field).toBeGreaterThan(width(all))
      expect(all.warnings.map((each) => each.code)).not.toContain(code)
      expect(less.warnings.map((each) => each.code)).toContain(code)
    }
  })

  test('POW-01 a load nobody knows is drawn wide and named', () => {
    const step = (load: Readonly<Record<string, unknown>>) =>
      powerBudget(plan({ battery: known, steps: [{ minutes: 20, ...load }] }))
    const unknown = step({})
    expect(unknown.warnings.map((each) => each.code)).toContain('step-load-missing')
    expect(unknown.steps[0]?.loadAmperes.high).toBeGreaterThan(30)
    const named = step({ loads: ['ignition-on'] }).steps[0]?.loadAmperes
    const stated = step({ amperes: 11 }).steps[0]?.loadAmperes
    expect((named?.high ?? 0) - (named?.low ?? 0)).toBeGreaterThan((stated?.high ?? 0) - (stated?.low ?? 0))
    expect(step({ amperes: { low: 8, high: 15 } }).steps[0]?.loadAmperes.low).toBeCloseTo(8.35, 1)
  })

  test('POW-03 the same input gives the same answer, another seed nearly the same', () => {
    expect(ask(known)).toEqual(ask(known))
    const other = powerBudget({ ...ask(known).input, seed: 99 })
    for (const end of ['low', 'mid', 'high'] as const) {
      expect(Math.abs(other.minimumVolts[end] - ask(known).minimumVolts[end])).toBeLessThan(0.04)
      expect(Math.abs(other.stateOfCharge[end] - ask(known).stateOfCharge[end])).toBeLessThan(0.01)
    }
  })

  test('POW-12 volts come back when the load goes, and later the charge held back', () => {
    const answer = powerBudget(
      plan({
        battery: { ...known, kind: 'agm' },
        steps: [
          { minutes: 30, amperes: 30 },
          { minutes: 240, amperes: 0 },
        ],
      }),
    )
    const during = answer.curve.filter((point) => point.step === 0)
    const after = answer.curve.filter((point) => point.step === 1)
    for (const [index, point] of during.slice(1).entries())
      expect(point.mid).toBeLessThan(during[index]?.mid ?? 0)
    for (const [index, point] of after.slice(1).entries()) {
      expect(point.mid).toBeGreaterThanOrEqual(during.at(-1)?.mid ?? 99)
      expect(point.mid).toBeGreaterThanOrEqual((after[index]?.mid ?? 99) - ROUNDING)
    }
    expect(after.at(-1)?.mid).toBeLessThan(12.4)
  })
})
