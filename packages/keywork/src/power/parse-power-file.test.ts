import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type PowerAnswer, parsePowerFile, powerBudget } from './index.ts'

const steps = [{ minutes: 10 }]

/** Values of every sort, and field names the reader knows, so that the deeper parts are reached. */
const names = [
  'battery',
  'steps',
  'supply',
  'floorVolts',
  'targetVolts',
  'vehicleMaker',
  'starter',
  'runs',
  'seed',
  'kind',
  'capacityAmpereHours',
  'hourRate',
  'secondRate',
  'ageYears',
  'restVolts',
  'minutes',
  'amperes',
  'loads',
  'low',
  'high',
]
const anyValue = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 4 },
    fc.constantFrom(
      null,
      true,
      'unknown',
      'agm',
      'ignition-on',
      '__proto__',
      '',
      0,
      -1,
      12.4,
      20,
      1e308,
      Number.NaN,
      [],
      {},
    ),
    fc.jsonValue({ maxDepth: 2 }),
    fc.array(tie('value'), { maxLength: 3 }),
    fc.dictionary(fc.constantFrom(...names), tie('value'), { maxKeys: 6 }),
  ),
})).value

/** Mostly sound plans with odd but allowed values. */
const oddPlan = fc.record(
  {
    battery: fc.record(
      {
        kind: fc.constantFrom('flooded', 'efb', 'agm', 'gel', 'lithium', 'unknown'),
        capacityAmpereHours: fc.double({ min: 1, max: 400, noNaN: true }),
        hourRate: fc.double({ min: 1, max: 100, noNaN: true }),
        secondRate: fc.record({
          amperes: fc.double({ min: 0.01, max: 2000, noNaN: true }),
          hours: fc.double({ min: 0.01, max: 1000, noNaN: true }),
        }),
        coldCrankingAmperes: fc.double({ min: 50, max: 3000, noNaN: true }),
        ageYears: fc.double({ min: 0, max: 50, noNaN: true }),
        restVolts: fc.double({ min: 0, max: 60, noNaN: true }),
        hoursAtRest: fc.double({ min: 0, max: 1e5, noNaN: true }),
        temperatureCelsius: fc.double({ min: -60, max: 80, noNaN: true }),
      },
      { requiredKeys: [] },
    ),
    steps: fc.array(
      fc.record(
        {
          minutes: fc.double({ min: 0.1, max: 400, noNaN: true }),
          amperes: fc.double({ min: 0, max: 2000, noNaN: true }),
          supplied: fc.boolean(),
        },
        { requiredKeys: ['minutes'] },
      ),
      { minLength: 1, maxLength: 3 },
    ),
    supply: fc.record(
      {
        amperes: fc.double({ min: 0, max: 2000, noNaN: true }),
        volts: fc.double({ min: 10, max: 16, noNaN: true }),
      },
      { requiredKeys: [] },
    ),
    vehicleMaker: fc.record(
      {
        floorVolts: fc.double({ min: 6, max: 16, noNaN: true }),
        targetVolts: fc.double({ min: 10, max: 16, noNaN: true }),
      },
      { requiredKeys: [] },
    ),
    runs: fc.constant(100),
  },
  { requiredKeys: ['steps', 'runs'] },
)

/** Paths of numbers that are not finite. */
function notFinite(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, each]) => notFinite(each, `${path}.${name}`))
}

function expectSound(answer: PowerAnswer): void {
  expect(notFinite(answer)).toEqual([])
  for (const band of [answer.stateOfCharge, answer.stateOfChargeAtEnd]) {
    expect(band.low).toBeGreaterThanOrEqual(0)
    expect(band.high).toBeLessThanOrEqual(1)
  }
  expect(answer.minimumVolts.low).toBeGreaterThanOrEqual(0)
  expect(answer.chanceOfCrossing).toBeGreaterThanOrEqual(0)
  expect(answer.chanceOfCrossing).toBeLessThanOrEqual(1)
  expect(JSON.parse(JSON.stringify(answer))).toEqual(answer)
}

describe('reading the file', () => {
  test('POW-31 any value at all is read or refused with a path, and never throws', () => {
    let read = 0
    fc.assert(
      fc.property(anyValue, (json) => {
        const result = parsePowerFile(json)
        if ('input' in result) read += 1
        else {
          expect(typeof result.path).toBe('string')
          expect(result.what).not.toBe('')
        }
      }),
      { seed: 41, numRuns: 2000 },
    )
    for (const odd of [undefined, 5n, Symbol('x'), () => 1, new Map(), Number.NaN]) {
      expect(parsePowerFile(odd)).toHaveProperty('path')
      expect(parsePowerFile({ steps: odd })).toHaveProperty('path', 'steps')
      expect(parsePowerFile({ steps, seed: odd ?? {} })).toHaveProperty('path', 'seed')
    }
    expect(read).toBeLessThan(2000)
  })

  test('POW-31 every plan that is read gets a finite answer that survives JSON', () => {
    fc.assert(
      fc.property(oddPlan, (json) => {
        const result = parsePowerFile(json)
        if (!('input' in result)) throw new Error(`${result.path} ${result.what}`)
        expectSound(powerBudget(result.input))
      }),
      { seed: 42, numRuns: 80 },
    )
  })

  test('POW-31 what is wrong is said with its path', () => {
    const path = (json: unknown): string => {
      const result = parsePowerFile(json)
      return 'path' in result ? result.path : 'read'
    }
    expect(path([])).toBe('')
    expect(path({})).toBe('steps')
    expect(path({ steps: [] })).toBe('steps')
    expect(path({ steps: [{ minutes: 10 }, {}] })).toBe('steps[1].minutes')
    expect(path({ steps: [{ minutes: 10, loads: ['radio'] }] })).toBe('steps[0].loads[0]')
    expect(path({ steps: [{ minutes: 10, amperes: { low: 9, high: 5 } }] })).toBe('steps[0].amperes.high')
    expect(path({ steps: [{ minutes: 5000 }] })).toBe('steps[0].minutes')
    expect(path({ steps: [{ minutes: 3000 }, { minutes: 3000 }] })).toBe('steps')
    expect(path({ steps, battery: { kind: 'nickel' } })).toBe('battery.kind')
    expect(path({ steps, battery: { restVolts: '12.4' } })).toBe('battery.restVolts')
    expect(path({ steps, supply: { volts: 24 } })).toBe('supply.volts')
    expect(path({ steps, runs: 1e9 })).toBe('runs')
    expect(path({ steps, battery: 'unknown', supply: 'unknown', starter: null })).toBe('read')
  })

  test('POW-31 unknown fields are ignored and named, absent values are unknown', () => {
    const result = parsePowerFile({
      steps: [{ minutes: 10, colour: 'red' }],
      battery: { volts: 12 },
      job: 'x',
    })
    if (!('input' in result)) throw new Error(result.what)
    expect(result.ignored).toEqual(['job', 'battery.volts', 'steps[0].colour'])
    expect(result.input.battery).toMatchObject({
      kind: 'unknown',
      capacityAmpereHours: null,
      hourRate: 20,
      restVolts: null,
    })
    expect(result.input.steps[0]).toEqual({
      name: 'step 1',
      minutes: 10,
      amperes: null,
      loads: [],
      supplied: true,
    })
  })

  test('POW-31 the example of the manual is read whole and gives the answer printed beside it', () => {
    const manual = readFileSync(new URL('./README.md', import.meta.url), 'utf8')
    const [example, printed] = [...manual.matchAll(/```json\n([\s\S]*?)```/g)].map(([, json]) =>
      JSON.parse(json ?? ''),
    )
    const result = parsePowerFile(example)
    if (!('input' in result)) throw new Error(`${result.path} ${result.what}`)
    expect(result.ignored).toEqual([])
    const { verdict, stateOfCharge, minimumVolts, crossesFloorAt, supplyAmperes } = powerBudget(result.input)
    const rounded = JSON.parse(
      JSON.stringify({ verdict, stateOfCharge, minimumVolts, crossesFloorAt, supplyAmperes }, (_, value) =>
        typeof value === 'number' ? Math.round(value * 100) / 100 : value,
      ),
    )
    expect(rounded).toEqual(printed)
  })
})
