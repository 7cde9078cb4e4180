import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { referencePresent, referenceRows, whenAbsent } from '../testing/reference.ts'
import { runThrough, traceFor } from './discharge.ts'
import { type Possible, possibleBatteries, possibleBattery } from './ensemble.ts'
import { capacityFromRate, effectiveAmperes, peukertExponent, peukertHours } from './peukert.ts'
import { scheduleOf } from './schedule.ts'
import { steady } from './testing/plans.ts'

const rows = () => (referencePresent ? referenceRows('peukert_examples.tsv') : [])

describe.skipIf(!referencePresent)(`Peukert against peukert_examples.tsv${whenAbsent}`, () => {
  test('POW-06 every computed row: hours and ampere-hours by t = H (C / (I H))^k', () => {
    const computed = rows().filter((row) => row.verdict === 'computed' || row.verdict === 'matches')
    expect(computed.length).toBe(11)
    for (const row of computed) {
      const current = Number(row.current_A)
      const hours = peukertHours(
        current,
        Number(row.capacity_Ah),
        Number(row.hour_rate),
        Number(row.exponent),
      )
      expect(hours, row.where_published).toBeCloseTo(Number(row.time_h_by_formula), 4)
      expect(hours * current).toBeCloseTo(Number(row.capacity_Ah_by_formula), 2)
    }
  })

  test('POW-06 the published examples that contradict their own formula are those said to', () => {
    const contradicting = rows().filter((row) => row.verdict?.startsWith('PUBLISHED VALUE'))
    expect(contradicting.map((row) => row.current_A)).toEqual(['10', '20', '50', '100'])
    for (const row of contradicting) {
      const current = Number(row.current_A)
      const byFormula = current * peukertHours(current, 100, 20, Number(row.exponent))
      expect(byFormula).toBeCloseTo(Number(row.capacity_Ah_by_formula), 2)
      expect(Math.abs(byFormula - Number.parseFloat(row.published ?? ''))).toBeGreaterThan(4)
    }
    const shortForm = rows().find((row) => row.hour_rate === '')
    // 100 Ah at 5 A, 14.5 h: t = C / I^k, which at a 20 h rating would promise less than the rating itself.
    expect(100 / 5 ** 1.2).toBeCloseTo(Number.parseFloat(shortForm?.published ?? ''), 1)
    expect(peukertHours(5, 100, 20, 1.2)).toBeCloseTo(20, 9)
  })

  test('POW-06 two rates give back the exponent that two published examples imply', () => {
    const rated = { amperes: 5, hours: 20 }
    expect(peukertExponent(rated, { amperes: 10, hours: 7.5 })).toBeCloseTo(1.415, 3)
    expect(peukertExponent(rated, { amperes: 20, hours: 3 })).toBeCloseTo(1.3685, 4)
  })

  test('POW-06 the exponents drawn for a kind lie within or below what is published for it', () => {
    const published = referenceRows('lead_acid.tsv').filter((row) => row.group === 'peukert_exponent')
    const most = (kind: string): number =>
      Math.max(
        ...published
          .filter((row) => row.condition?.toLowerCase().startsWith(kind))
          .flatMap((row) => (row.value ?? '').split('-').map(Number)),
      )
    for (const kind of ['flooded', 'agm', 'gel'] as const) {
      const drawn = possibleBatteries(steady(5, 60, { kind })).map((each) => each.peukert)
      expect(Math.max(...drawn), kind).toBeLessThanOrEqual(most(kind))
      expect(Math.min(...drawn), kind).toBeGreaterThan(1.04)
    }
  })
})

describe('Peukert', () => {
  test('POW-06 two rates and back: exponent, hours and capacity agree for any battery', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 200, noNaN: true }),
        fc.double({ min: 1, max: 1.6, noNaN: true }),
        fc.double({ min: 1.5, max: 30, noNaN: true }),
        (capacity, k, times) => {
          const rated = { amperes: capacity / 20, hours: 20 }
          const amperes = rated.amperes * times
          const second = { amperes, hours: peukertHours(amperes, capacity, 20, k) }
          expect(peukertExponent(rated, second)).toBeCloseTo(k, 9)
          expect(capacityFromRate(second, 20, k)).toBeCloseTo(capacity, 6)
          // The current that empties it: hours times the effective current is the rated capacity.
          expect(effectiveAmperes(amperes, rated.amperes, k) * second.hours).toBeCloseTo(capacity, 6)
        },
      ),
      { seed: 7, numRuns: 200 },
    )
  })

  test('POW-06 rates that are equal, senseless or better than the rating give none', () => {
    expect(peukertExponent({ amperes: 5, hours: 20 }, { amperes: 5, hours: 20 })).toBeNull()
    expect(peukertExponent({ amperes: 5, hours: 20 }, { amperes: 10, hours: 11 })).toBeNull()
    expect(peukertExponent({ amperes: 5, hours: 20 }, { amperes: 0, hours: 2 })).toBeNull()
    expect(peukertExponent({ amperes: 5, hours: 20 }, { amperes: Number.NaN, hours: 2 })).toBeNull()
  })

  // Rule printed by a conversion page ("How to Calculate Amp Hours from Reserve Capacity"): Ah = RC x 0.55 to 0.60.
  test('POW-06 the flooded range holds the exponents that the reserve-capacity rule implies', () => {
    const drawn = possibleBatteries(steady(5, 60)).map((each) => each.peukert)
    for (const minutes of [80, 100, 120, 160]) {
      for (const share of [0.57, 0.6]) {
        const capacity = minutes * share
        const k =
          peukertExponent({ amperes: capacity / 20, hours: 20 }, { amperes: 25, hours: minutes / 60 }) ?? 0
        expect(k).toBeGreaterThan(Math.min(...drawn))
        expect(k).toBeLessThan(Math.max(...drawn))
      }
    }
  })

  test('POW-09 the engine empties a full battery in the hours Peukert says, a little before', () => {
    for (const [capacity, amperes, k] of [
      [100, 20, 1.2],
      [100, 25, 1.3],
      [70, 15, 1.2],
      [70, 30, 1.15],
      [60, 10, 1.25],
    ] as const) {
      const input = steady(amperes, 24 * 60, {
        capacityAmpereHours: capacity,
        ageYears: 0,
        temperatureCelsius: 30,
        restVolts: 13,
      })
      const battery: Possible = {
        ...possibleBattery(input, () => 0.5),
        charge: 1,
        shift: 0,
        peukert: k,
        kneeVolts: 1.2,
        loads: [amperes],
      }
      const schedule = scheduleOf(input.steps)
      const trace = traceFor(schedule)
      runThrough(battery, schedule, null, trace, Number.NEGATIVE_INFINITY)
      const node = trace.volts.findIndex((volts) => volts < 10.5)
      const share = (schedule.minutes[node] ?? 0) / 60 / peukertHours(amperes, capacity, 20, k)
      expect(share).toBeGreaterThan(0.96)
      expect(share).toBeLessThan(1.02)
    }
  })
})
