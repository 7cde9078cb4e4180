/** @module The supply budget of a job as its form holds it, as the engine takes it, and as it goes on record. */
import type { Body, BodyInput, JobState } from '@shearline/jobfile'
import {
  type LoadName,
  type PowerAnswer,
  type PowerInput,
  type PowerRefusal,
  parsePowerFile,
} from '@shearline/keywork'
import { type PlannedStep, plannedSteps } from './steps.ts'

type Setting = Body<'supply-set'>
type Budget = NonNullable<Setting['budget']>

/** One stretch of the work in the form. */
export interface DraftStep {
  readonly name: string
  readonly minutes: number | null
  readonly loads: readonly LoadName[]
  readonly amperes: number | null
}

/** What the form asks; null is "not known". */
export interface PowerDraft {
  readonly kind: Setting['battery']
  readonly capacityAmpereHours: number | null
  readonly coldCrankingAmperes: number | null
  readonly ageYears: number | null
  readonly restVolts: number | null
  readonly hoursAtRest: number | null
  readonly lastUse: 'charged' | 'drained' | 'unknown'
  readonly temperatureCelsius: number | null
  readonly knownBad: boolean
  readonly monitored: 'yes' | 'no' | 'unknown'
  readonly engine: 'petrol' | 'diesel' | 'unknown'
  readonly supplyKind: 'none' | 'supply' | 'charger'
  readonly supplyAmperes: number | null
  readonly supplyVolts: number | null
  readonly floorVolts: number | null
  readonly floorSource: string
  readonly targetVolts: number | null
  readonly targetSource: string
  readonly stopVolts: number | null
  readonly makerSays: boolean
  readonly steps: readonly DraftStep[]
}

/** What the job knows already: the setting on record, the latest reading at rest, and the steps its rule suggests. */
export function draftOf(
  state: Pick<JobState, 'supply' | 'teaching' | 'keys'>,
  words: { readonly usual: string; readonly step: (step: PlannedStep['name']) => string },
): PowerDraft {
  const { setting, readings } = state.supply
  const budget: Partial<Budget> = setting?.budget ?? {}
  const rest = readings.findLast((reading) => reading.during === 'rest')?.volts
  const supplied = setting?.supplyAmperes
  return {
    kind: setting?.battery ?? 'unknown',
    capacityAmpereHours: setting?.capacityAmpereHours ?? null,
    coldCrankingAmperes: budget.coldCrankingAmperes ?? null,
    ageYears: budget.ageYears ?? null,
    restVolts: rest ?? budget.restVolts ?? null,
    hoursAtRest: budget.hoursAtRest ?? null,
    lastUse: budget.lastUse ?? 'unknown',
    temperatureCelsius: budget.temperatureCelsius ?? null,
    knownBad: budget.knownBad ?? false,
    monitored: budget.monitored === undefined ? 'unknown' : budget.monitored ? 'yes' : 'no',
    engine: budget.engine ?? 'unknown',
    supplyKind: supplyKindOf(budget.supplyKind, supplied),
    supplyAmperes: supplied === undefined || supplied === 0 ? null : supplied,
    supplyVolts: budget.supplyVolts ?? null,
    floorVolts: setting?.floorVolts ?? 12,
    floorSource: setting?.floorSource ?? words.usual,
    targetVolts: setting?.targetVolts ?? 13.6,
    targetSource: setting?.targetSource ?? words.usual,
    stopVolts: setting?.stopVolts ?? null,
    makerSays: setting?.makerSays ?? false,
    steps:
      budget.steps?.map((step) => ({ ...step, amperes: step.amperes ?? null })) ??
      plannedSteps(state).map((step) => ({ ...step, name: words.step(step.name) })),
  }
}

function supplyKindOf(said: Budget['supplyKind'], amperes: number | undefined): PowerDraft['supplyKind'] {
  if (said === 'supply' || said === 'charger' || said === 'none') return said
  return amperes === undefined || amperes === 0 ? 'none' : 'supply'
}

/** The engine's input, or where the draft cannot be computed. */
export function inputOf(draft: PowerDraft): PowerInput | PowerRefusal {
  const { floorVolts, targetVolts, makerSays } = draft
  const read = parsePowerFile({
    battery: {
      kind: draft.kind,
      capacityAmpereHours: draft.capacityAmpereHours,
      coldCrankingAmperes: draft.coldCrankingAmperes,
      ageYears: draft.ageYears,
      restVolts: draft.restVolts,
      hoursAtRest: draft.hoursAtRest,
      lastUse: draft.lastUse,
      temperatureCelsius: draft.temperatureCelsius,
      knownBad: draft.knownBad,
      monitored: draft.monitored === 'unknown' ? null : draft.monitored === 'yes',
    },
    steps: draft.steps,
    supply:
      draft.supplyKind === 'none'
        ? null
        : { kind: draft.supplyKind, amperes: draft.supplyAmperes, volts: draft.supplyVolts },
    stopVolts: draft.stopVolts,
    starter: { engine: draft.engine },
    ...(makerSays
      ? { vehicleMaker: { floorVolts, targetVolts, reference: draft.floorSource.trim() || null } }
      : {
          floorVolts,
          targetVolts,
          floorSource: draft.floorSource.trim() || null,
          targetSource: draft.targetSource.trim() || null,
        }),
  })
  return 'input' in read ? read.input : read
}

/** The setting as it goes on record, with what the budget said. Null while the floor has no figure or no source. */
export function settingOf(draft: PowerDraft, answer: PowerAnswer): BodyInput<'supply-set'> | null {
  const { floorVolts } = draft
  const floorSource = draft.floorSource.trim()
  if (floorVolts === null || floorSource === '') return null
  const targetSource = (draft.makerSays ? draft.floorSource : draft.targetSource).trim()
  return {
    floorVolts,
    floorSource,
    battery: draft.kind,
    ...known({
      capacityAmpereHours: draft.capacityAmpereHours,
      supplyAmperes: draft.supplyKind === 'none' ? 0 : draft.supplyAmperes,
      targetVolts: draft.targetVolts,
      targetSource: draft.targetVolts === null || targetSource === '' ? null : targetSource,
      stopVolts: draft.stopVolts,
    }),
    ...(draft.makerSays ? { makerSays: true } : {}),
    budget: {
      ...known({
        coldCrankingAmperes: draft.coldCrankingAmperes,
        ageYears: draft.ageYears,
        restVolts: draft.restVolts,
        hoursAtRest: draft.hoursAtRest,
        temperatureCelsius: draft.temperatureCelsius,
        monitored: draft.monitored === 'unknown' ? null : draft.monitored === 'yes',
        supplyVolts: draft.supplyKind === 'none' ? null : draft.supplyVolts,
        neededAmperes: answer.supplyAmperes,
      }),
      ...(draft.knownBad ? { knownBad: true } : {}),
      lastUse: draft.lastUse,
      engine: draft.engine,
      supplyKind: draft.supplyKind,
      steps: answer.input.steps.map(({ name, minutes, loads }, index) => ({
        name,
        minutes,
        loads: [...loads],
        ...known({ amperes: draft.steps[index]?.amperes ?? null }),
      })),
      verdict: answer.verdict,
      chance: answer.chanceOfCrossing,
    },
  }
}

/** Only the members that are known, so that "not known" is an absent member on record. */
function known<T extends Readonly<Record<string, unknown>>>(
  members: T,
): { [K in keyof T]?: Exclude<T[K], null> } {
  return Object.fromEntries(Object.entries(members).filter(([, value]) => value !== null)) as {
    [K in keyof T]?: Exclude<T[K], null>
  }
}
