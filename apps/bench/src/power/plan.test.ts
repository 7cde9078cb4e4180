import { bodySchemas, foldJob, type JobState } from '@shearline/jobfile'
import { powerBudget } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { draftOf, inputOf, settingOf } from './plan.ts'
import { plannedSteps } from './steps.ts'

const words = { usual: 'common practice', step: (step: string) => step }
const empty = foldJob('job', [])
const withSupply = (supply: Partial<JobState['supply']>): JobState => ({
  ...empty,
  supply: { ...empty.supply, ...supply },
})

describe('the budget form', () => {
  it('begins with what the job knows: the latest reading at rest and the setting on record', () => {
    const draft = draftOf(
      withSupply({
        setting: { floorVolts: 12.2, floorSource: 'manual', battery: 'agm', supplyAmperes: 30 },
        readings: [
          { at: '2026-11-25T08:00:00.000Z', volts: 12.1, during: 'rest' },
          { at: '2026-11-25T08:05:00.000Z', volts: 12.4, during: 'rest' },
          { at: '2026-11-25T08:10:00.000Z', volts: 13.4, during: 'session' },
        ],
      }),
      words,
    )
    expect(draft).toMatchObject({ restVolts: 12.4, kind: 'agm', floorVolts: 12.2, supplyAmperes: 30 })
    expect(draft.supplyKind).toBe('supply')
    expect(draft.capacityAmpereHours).toBeNull()
  })

  it('keeps what it computed from, so that the record gives the same answer again', () => {
    const draft = {
      ...draftOf(empty, words),
      kind: 'flooded' as const,
      capacityAmpereHours: 70,
      restVolts: 12.35,
      temperatureCelsius: -3,
      monitored: 'yes' as const,
      engine: 'diesel' as const,
      supplyKind: 'supply' as const,
      supplyAmperes: 25,
      supplyVolts: 13.4,
      steps: [{ name: 'Wait', minutes: 30, loads: ['ignition-on'] as const, amperes: 4 }],
    }
    const input = inputOf(draft)
    if ('path' in input) throw new Error(input.what)
    const answer = powerBudget(input)
    const body = bodySchemas['supply-set'].parse(settingOf(draft, answer))
    const again = inputOf(draftOf(withSupply({ setting: body }), words))
    expect(again).toEqual(input)
    expect(body.budget).toMatchObject({ verdict: answer.verdict, chance: answer.chanceOfCrossing })
  })

  it("gives the vehicle maker's instruction to the engine as such, so that it wins", () => {
    const input = inputOf({
      ...draftOf(empty, words),
      makerSays: true,
      floorVolts: 12.5,
      floorSource: 'TSB 7',
    })
    if ('path' in input) throw new Error(input.what)
    expect(input.vehicleMaker).toEqual({ floorVolts: 12.5, targetVolts: 13.6, reference: 'TSB 7' })
    expect(powerBudget({ ...input, runs: 100 }).limits.floorSource).toContain('TSB 7')
  })

  it('says where a draft cannot be computed', () => {
    const draft = draftOf(empty, words)
    expect(inputOf({ ...draft, floorVolts: 3 })).toMatchObject({ path: 'floorVolts' })
    expect(inputOf({ ...draft, steps: [] })).toMatchObject({ path: 'steps' })
    const input = inputOf(draft)
    if ('path' in input) throw new Error(input.what)
    expect(settingOf({ ...draft, floorSource: ' ' }, powerBudget({ ...input, runs: 100 }))).toBeNull()
  })
})

describe('the steps suggested', () => {
  it('hold a timed wait only where the rule has one, with its minutes and its current', () => {
    const rule = {
      kind: 'replace-all',
      opensWith: 'timed-wait',
      seconds: { wait: 1200, show: 300 },
      amperes: { wait: 9 },
    } as unknown as NonNullable<JobState['teaching']['rule']>
    const plain = plannedSteps(empty).map((step) => step.name)
    expect(plain).toEqual(['first', 'read', 'teach', 'prove'])
    const waits = plannedSteps({ ...empty, teaching: { ...empty.teaching, rule } })
    expect(waits.find((step) => step.name === 'wait')).toEqual({
      name: 'wait',
      minutes: 20,
      loads: [],
      amperes: 9,
    })
    // Two keys at least: 120 s to open, 2 x 300 s, 60 s to close, up to the next five minutes.
    expect(waits.find((step) => step.name === 'teach')?.minutes).toBe(15)
  })
})
