import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Battery, crankingReserve, drainAfter, fobCell } from './index.ts'
import { plan } from './testing/plans.ts'

const battery = (more: Partial<Battery>): Battery => ({
  ...plan({
    battery: {
      kind: 'flooded',
      capacityAmpereHours: 70,
      ageYears: 3,
      restVolts: 12.6,
      hoursAtRest: 12,
      temperatureCelsius: 15,
    },
    steps: [{ minutes: 1 }],
  }).battery,
  ...more,
})
const petrol = { engine: 'petrol', amperes: null } as const
const draws = { runs: 500, seed: 5 }

describe('left able to start', () => {
  test('POW-28 a charged battery starts, a flat one does not, one between is doubtful', () => {
    const verdict = (more: Partial<Battery>) => crankingReserve(battery(more), petrol, draws).verdict
    expect(verdict({})).toBe('starts')
    expect(verdict({ restVolts: 11.4 })).toBe('does-not-start')
    expect(verdict({ restVolts: 12.1, temperatureCelsius: -5 })).toBe('doubtful')
    expect(verdict({ knownBad: true })).toBe('doubtful')
    expect(verdict({ restVolts: null })).toBe('unknown')
  })

  test('POW-28 colder, older, less charged or a larger starter never make it likelier', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 11.6, max: 12.8, noNaN: true }),
        fc.integer({ min: -20, max: 30 }),
        fc.integer({ min: 0, max: 10 }),
        fc.integer({ min: 80, max: 400 }),
        (restVolts, temperatureCelsius, ageYears, amperes) => {
          const at = (more: Partial<Battery>, starter: number) =>
            crankingReserve(
              battery({ restVolts, temperatureCelsius, ageYears, ...more }),
              { ...petrol, amperes: starter },
              { runs: 100, seed: 1 },
            )
          const here = at({}, amperes)
          for (const worse of [
            at({ temperatureCelsius: temperatureCelsius - 10 }, amperes),
            at({ ageYears: ageYears + 3 }, amperes),
            at({ restVolts: restVolts - 0.2 }, amperes),
            at({}, amperes + 50),
          ]) {
            expect(worse.chanceStarts).toBeLessThanOrEqual(here.chanceStarts)
            expect(worse.crankVolts.mid).toBeLessThanOrEqual(here.crankVolts.mid + 1e-9)
          }
        },
      ),
      { seed: 51, numRuns: 40 },
    )
  })
})

describe('asleep', () => {
  // Trade practice 2, "Car kept awake": 30 to 60 minutes, asleep about 50 mA or less.
  test('POW-29 50 mA or less is asleep, more is waiting until an hour has passed, then kept awake', () => {
    const state = (minutes: number, amperes: number) => drainAfter([{ minutes, amperes }], 70).state
    expect(state(10, 0.05)).toBe('asleep')
    expect(state(45, 0.051)).toBe('waiting')
    expect(state(60, 0.051)).toBe('awake')
    expect(state(90, 0.035)).toBe('asleep')
    expect(state(60, -0.3)).toBe('awake')
    expect(drainAfter([], 70).state).toBe('not-measured')
  })

  test('POW-29 the last reading counts, in whatever order they come, and what is no number is left out and named', () => {
    const readings = [
      { minutes: 70, amperes: 0.02 },
      { minutes: 5, amperes: 4 },
      { minutes: Number.NaN, amperes: 1 },
      { minutes: -3, amperes: 1 },
    ]
    const answer = drainAfter(readings, 70)
    expect([answer.state, answer.amperes]).toEqual(['asleep', 0.02])
    expect(answer.findings.map((each) => each.code)).toEqual(['drain-unreadable'])
  })

  test('POW-29 days to half: 70 Ah at 0.5 A last 2.9 days', () => {
    expect(drainAfter([{ minutes: 65, amperes: 0.5 }], 70).daysToHalf).toBeCloseTo(35 / 0.5 / 24, 9)
    expect(drainAfter([{ minutes: 65, amperes: 0.5 }], null).daysToHalf).toBeNull()
  })
})

describe('fob cells', () => {
  // Trade practice 2, "Fob cell bad although it reads 3 V": a good cell sags about 0.1 V, a bad one collapses.
  test('POW-30 a good cell sags about 0.1 V, a bad one collapses though it reads 3 V', () => {
    expect(fobCell(3.2, 3.1).verdict).toBe('good')
    expect(fobCell(3.0, 2.9).verdict).toBe('good')
    expect(fobCell(3.0, 2.8).verdict).toBe('replace-soon')
    expect(fobCell(3.0, 1.9).verdict).toBe('replace')
    expect(fobCell(3.01, 2.6)).toMatchObject({ verdict: 'replace', sagVolts: 0.41 })
    expect(fobCell(2.75, 2.66).verdict).toBe('replace-soon')
  })

  test('POW-30 a rest reading can condemn a cell and never clears it', () => {
    expect(fobCell(3.2, null).verdict).toBe('test-loaded')
    expect(fobCell(null, null).verdict).toBe('test-loaded')
    expect(fobCell(2.5, null).verdict).toBe('replace')
    fc.assert(
      fc.property(fc.double({ min: -1, max: 7 }), (rest) => {
        expect(['good', 'replace-soon']).not.toContain(fobCell(rest, null).verdict)
      }),
      { seed: 52 },
    )
  })

  test('POW-30 readings that cannot both be right ask for new ones; cells in series share the volts', () => {
    expect(fobCell(2.9, 3.1).verdict).toBe('read-again')
    expect(fobCell(6.4, 6.2).verdict).toBe('read-again')
    expect(fobCell(6.4, 6.2, 2)).toMatchObject({ verdict: 'good', sagVolts: 0.1 })
    expect(fobCell(-3, null).verdict).toBe('read-again')
  })

  test('POW-30 more sag at the same rest volts is never better', () => {
    const order = ['good', 'replace-soon', 'replace']
    fc.assert(
      fc.property(
        fc.double({ min: 2.4, max: 3.4, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        (rest, sag, more) => {
          const [less, greater] = [fobCell(rest, rest - sag), fobCell(rest, rest - sag - more)]
          if (rest - sag - more >= 0) {
            expect(order.indexOf(greater.verdict)).toBeGreaterThanOrEqual(order.indexOf(less.verdict))
          }
        },
      ),
      { seed: 53, numRuns: 300 },
    )
  })
})
