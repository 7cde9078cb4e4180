import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { CHARGE_EFFICIENCY, type Feed, runThrough, type Trace, traceFor } from './discharge.ts'
import { type Possible, possibleBatteries } from './ensemble.ts'
import { voltsAtCharge } from './open-circuit.ts'
import { type Schedule, scheduleOf } from './schedule.ts'
import { integrateFinely } from './testing/fine-integration.ts'
import { plan } from './testing/plans.ts'
import type { PowerInput } from './types.ts'

interface Run {
  readonly battery: Possible
  readonly schedule: Schedule
  readonly trace: Trace
}

/** Plans of one to four steps on any battery, one of its runs picked. */
const anyRun: fc.Arbitrary<{ readonly input: PowerInput; readonly run: number }> = fc
  .record({
    battery: fc.record({
      kind: fc.constantFrom('flooded', 'efb', 'agm', 'gel', 'lithium', 'unknown'),
      capacityAmpereHours: fc.option(fc.integer({ min: 30, max: 120 })),
      ageYears: fc.option(fc.integer({ min: 0, max: 12 })),
      restVolts: fc.option(fc.double({ min: 11.5, max: 13.4, noNaN: true })),
      hoursAtRest: fc.option(fc.integer({ min: 0, max: 48 })),
      temperatureCelsius: fc.option(fc.integer({ min: -25, max: 45 })),
    }),
    steps: fc.array(
      fc.record({
        minutes: fc.integer({ min: 1, max: 150 }),
        amperes: fc.double({ min: 0, max: 60, noNaN: true }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    seed: fc.integer({ min: 0, max: 1e6 }),
  })
  .map((json) => ({ input: plan({ ...json, runs: 100 }), run: json.seed % 100 }))

function traced(
  { input, run }: { readonly input: PowerInput; readonly run: number },
  feed: Feed | null,
): Run {
  const battery = possibleBatteries(input)[run] as Possible
  const schedule = scheduleOf(input.steps)
  const trace = traceFor(schedule)
  runThrough(battery, schedule, feed, trace, Number.NEGATIVE_INFINITY)
  return { battery, schedule, trace }
}

const nodesOf = ({ schedule }: Run): readonly number[] =>
  Array.from({ length: schedule.count }, (_, node) => node)
const at = (values: ArrayLike<number>, node: number): number => values[node] ?? Number.NaN

describe('balance', () => {
  test('POW-15 what flows to the load comes from battery and supply, at every time', () => {
    fc.assert(
      fc.property(anyRun, fc.double({ min: 0, max: 60, noNaN: true }), (picked, amperes) => {
        for (const feed of [null, { amperes, volts: 13.6 }]) {
          const run = traced(picked, feed)
          for (const node of nodesOf(run)) {
            const load = at(run.battery.loads, at(run.schedule.step, node))
            const given = at(run.trace.batteryAmperes, node) + at(run.trace.supplyAmperes, node)
            const flat = at(run.trace.volts, node) === 0
            if (flat) expect(given).toBeLessThanOrEqual(load + 1e-9)
            else expect(given).toBeCloseTo(load, 9)
            expect(at(run.trace.supplyAmperes, node)).toBeLessThanOrEqual((feed?.amperes ?? 0) + 1e-9)
            expect(at(run.trace.supplyAmperes, node)).toBeGreaterThanOrEqual(0)
          }
        }
      }),
      { seed: 11, numRuns: 60 },
    )
  })

  test('POW-11 a battery run flat gives nothing more, stands at 0 V, and its load goes unserved', () => {
    const input = plan({
      battery: { kind: 'flooded', capacityAmpereHours: 45, restVolts: 12, hoursAtRest: 24 },
      steps: [{ minutes: 600, amperes: 20 }],
      runs: 100,
    })
    const run = traced({ input, run: 7 }, null)
    const flat = run.trace.volts.indexOf(0)
    expect(flat).toBeGreaterThan(0)
    const served = run.trace.batteryAmperes.reduce(
      (sum, each, node) => sum + each * at(run.schedule.hours, node),
      0,
    )
    expect(served).toBeLessThan(run.battery.capacityAmpereHours)
    expect(served).toBeLessThan(at(run.battery.loads, 0) * 10)
    for (const node of nodesOf(run).slice(0, flat)) expect(at(run.trace.volts, node)).toBeGreaterThan(0)
    expect(Math.max(...run.trace.volts.slice(flat))).toBeLessThan(6)
  })

  test('POW-15 charge lost is the current drawn, charge won the current accepted, over the whole plan', () => {
    fc.assert(
      fc.property(anyRun, fc.option(fc.double({ min: 1, max: 60, noNaN: true })), (picked, amperes) => {
        const run = traced(picked, amperes === null ? null : { amperes, volts: 13.6 })
        let drawn = 0
        let won = 0
        for (const node of nodesOf(run)) {
          const ampereHours = at(run.trace.batteryAmperes, node) * at(run.schedule.hours, node)
          if (ampereHours > 0) drawn += ampereHours
          else won -= ampereHours
        }
        const { battery, trace } = run
        const expected =
          battery.charge -
          drawn / battery.capacityAmpereHours +
          (won * CHARGE_EFFICIENCY) / battery.freshAmpereHours
        const end = trace.charge.at(-1) ?? Number.NaN
        // A full battery turns what it is still given into gas and warmth.
        if (trace.charge.some((charge) => charge >= 1 - 1e-12))
          expect(end).toBeLessThanOrEqual(expected + 1e-9)
        else expect(end).toBeCloseTo(expected, 9)
      }),
      { seed: 12, numRuns: 80 },
    )
  })

  test('POW-15 no energy from nothing: the terminals give less than the rested battery would', () => {
    fc.assert(
      fc.property(anyRun, (picked) => {
        const run = traced(picked, null)
        const { battery, schedule, trace } = run
        let given = 0
        let stored = 0
        for (const node of nodesOf(run)) {
          const ampereHours = at(trace.batteryAmperes, node) * at(schedule.hours, node)
          given += at(trace.volts, node) * ampereHours
          stored += voltsAtCharge(battery.curve, at(trace.charge, node) - battery.shift) * ampereHours
        }
        expect(given).toBeLessThanOrEqual(stored + 1e-9)
        if (stored > 0 && at(battery.loads, 0) > 1) expect(given).toBeGreaterThan(0)
      }),
      { seed: 13, numRuns: 80 },
    )
  })

  test('POW-13 a supply that is large enough holds its volts, carries the whole load and charges', () => {
    fc.assert(
      fc.property(anyRun, (picked) => {
        const run = traced(picked, { amperes: 200, volts: 14.2 })
        for (const node of nodesOf(run)) {
          expect(at(run.trace.batteryAmperes, node)).toBeLessThanOrEqual(0)
          expect(at(run.trace.volts, node)).toBeCloseTo(14.2, 9)
          const load = at(run.battery.loads, at(run.schedule.step, node))
          expect(at(run.trace.supplyAmperes, node)).toBeGreaterThanOrEqual(load - 1e-9)
        }
        expect(run.trace.charge.at(-1)).toBeGreaterThanOrEqual(run.battery.charge - 1e-12)
      }),
      { seed: 14, numRuns: 40 },
    )
  })
})

describe('an independent numerical integration (Runge-Kutta, one second)', () => {
  const steps = [
    { minutes: 5, amperes: 28 },
    { minutes: 20, amperes: 11 },
    { minutes: 30, amperes: 3 },
    { minutes: 25, amperes: 22 },
  ] as const
  /** Largest difference of volts at nodes above 9 V, and difference of charge at the end. */
  function differences(
    battery: Possible,
    feed: Feed | null,
  ): { readonly volts: number; readonly charge: number } {
    const input = plan({ steps })
    const schedule = scheduleOf(input.steps)
    const trace = traceFor(schedule)
    const loads = steps.map((step) => step.amperes)
    runThrough({ ...battery, loads }, schedule, feed, trace, Number.NEGATIVE_INFINITY)
    const fine = integrateFinely(battery, steps, feed)
    let volts = 0
    for (let node = 0; node < schedule.count; node += 1) {
      // Where the load changes the fine points have the time twice: before and after.
      const minutes = at(schedule.minutes, node)
      const begins = node === 0 || at(schedule.step, node) !== at(schedule.step, node - 1)
      const same = fine.points.filter((point) => Math.abs(point.minutes - minutes) < 1e-3)
      const point = begins ? same.at(-1) : same[0]
      if (point === undefined) throw new Error('a node lies on no second')
      if (point.volts > 9) volts = Math.max(volts, Math.abs(point.volts - at(trace.volts, node)))
    }
    return { volts, charge: Math.abs(fine.charge - (trace.charge.at(-1) ?? Number.NaN)) }
  }

  test('POW-14 POW-10 without supply the volts agree within 0.001 V until the knee, the charge within 0.01 points', () => {
    for (const kind of ['flooded', 'agm', 'gel', 'lithium'] as const) {
      const input = plan({
        battery: {
          kind,
          capacityAmpereHours: 70,
          restVolts: kind === 'lithium' ? 13.2 : 12.6,
          hoursAtRest: 24,
          ageYears: 2,
          temperatureCelsius: 10,
        },
        steps,
        runs: 100,
      })
      for (const battery of possibleBatteries(input).slice(0, 4)) {
        const { volts, charge } = differences(battery, null)
        expect(volts, kind).toBeLessThan(0.001)
        expect(charge, kind).toBeLessThan(0.0001)
      }
    }
  })

  test('POW-14 with a supply that is at times too small they agree within 0.001 V and 0.1 points', () => {
    const input = plan({
      battery: {
        kind: 'flooded',
        capacityAmpereHours: 60,
        restVolts: 12.3,
        hoursAtRest: 24,
        ageYears: 5,
        temperatureCelsius: 0,
      },
      steps,
      runs: 100,
    })
    for (const battery of possibleBatteries(input).slice(0, 5)) {
      for (const amperes of [8, 16, 40]) {
        const { volts, charge } = differences(battery, { amperes, volts: 13.6 })
        expect(volts, `${amperes} A`).toBeLessThan(0.001)
        expect(charge, `${amperes} A`).toBeLessThan(0.001)
      }
    }
  })

  test('POW-14 with a supply set below the battery they agree within 0.02 V and 0.2 points', () => {
    const input = plan({
      battery: {
        kind: 'agm',
        capacityAmpereHours: 80,
        restVolts: 12.8,
        hoursAtRest: 24,
        ageYears: 3,
        temperatureCelsius: 10,
      },
      steps,
      runs: 100,
    })
    for (const battery of possibleBatteries(input).slice(0, 5)) {
      const { volts, charge } = differences(battery, { amperes: 15, volts: 12.4 })
      expect(volts).toBeLessThan(0.02)
      expect(charge).toBeLessThan(0.002)
    }
  })
})
