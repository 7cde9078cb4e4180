import type { Finding } from '@shearline/bus'
import type { LoadName } from './named-loads.ts'

/** Construction of a 12 V starter battery. `lithium` is iron phosphate, four cells. */
export type BatteryKind = 'flooded' | 'efb' | 'agm' | 'gel' | 'lithium' | 'unknown'

/** A current and how long a new battery holds it to its rated end: reserve capacity 120 min is 25 A for 2 h. */
export interface DischargeRate {
  readonly amperes: number
  readonly hours: number
}

/** The battery as found. Null is "not known": it widens the band and is never guessed in silence. */
export interface Battery {
  readonly kind: BatteryKind
  /** Rated capacity when new, at `hourRate`. */
  readonly capacityAmpereHours: number | null
  /** Hours of the rating: 20 for starter batteries. */
  readonly hourRate: number
  /** A second published rate; with the rating it gives the Peukert exponent. */
  readonly secondRate: DischargeRate | null
  readonly coldCrankingAmperes: number | null
  readonly ageYears: number | null
  /** Volts at the posts, everything asleep. */
  readonly restVolts: number | null
  readonly hoursAtRest: number | null
  /** What went before the rest: driven or charged, or drained (lamps left on). */
  readonly lastUse: 'charged' | 'drained' | 'unknown'
  readonly temperatureCelsius: number | null
  /** Failed a load test, leaks, swollen: nothing is computed that could say "go". */
  readonly knownBad: boolean
  /** The car measures battery current at the negative post; null is not known. */
  readonly monitored: boolean | null
}

/** One stretch of the work with one load. */
export interface PowerStep {
  readonly name: string
  readonly minutes: number
  /** Measured or stated current; null when only named loads are given, or nothing is known. */
  readonly amperes: { readonly low: number; readonly high: number } | null
  readonly loads: readonly LoadName[]
  /** False while the supply is disconnected. */
  readonly supplied: boolean
}

/** What feeds the car beside its battery. A charger is not a supply: its current is not counted on. */
export interface PowerSupply {
  readonly kind: 'supply' | 'charger'
  /** Current limit; null is not known. */
  readonly amperes: number | null
  /** Set voltage at the clamps; null is the target. */
  readonly volts: number | null
}

/** A floor and target with where they come from. */
export interface LimitSettings {
  readonly floorVolts: number | null
  readonly floorSource: string | null
  readonly targetVolts: number | null
  readonly targetSource: string | null
  /** Below this the work stops at once; null is half a volt under the floor. */
  readonly stopVolts: number | null
}

/** The vehicle maker's instruction. What it states wins over any setting. */
export interface MakerInstruction {
  readonly floorVolts: number | null
  readonly targetVolts: number | null
  /** Title or clause of the instruction. */
  readonly reference: string | null
}

/** The engine to be started afterwards. */
export interface Starter {
  readonly engine: 'petrol' | 'diesel' | 'unknown'
  /** Measured starter current with a warm engine, when known. */
  readonly amperes: number | null
}

/** All that `powerBudget` computes from. */
export interface PowerInput {
  readonly battery: Battery
  readonly steps: readonly PowerStep[]
  readonly supply: PowerSupply | null
  readonly settings: LimitSettings
  readonly vehicleMaker: MakerInstruction | null
  readonly starter: Starter
  /** Chance of crossing the floor that is still "go", 0 to 1. */
  readonly acceptedChance: number
  readonly runs: number
  readonly seed: number
}

/** Nine in ten: 5th, 50th and 95th hundredth of the runs. */
export interface Band {
  readonly low: number
  readonly mid: number
  readonly high: number
}

/** The limits that count, after the maker's instruction has won. */
export interface PowerLimits {
  readonly floorVolts: number
  readonly floorSource: string
  readonly targetVolts: number
  readonly targetSource: string
  readonly stopVolts: number
}

export type PowerVerdict = 'go' | 'connect-supply' | 'stop'

/** Why the verdict is what it is. */
export type PowerReasonCode =
  | 'holds'
  | 'holds-with-supply'
  | 'crosses-floor'
  | 'supply-too-small'
  | 'supply-volts-too-low'
  | 'no-supply-enough'
  | 'known-bad'
  | 'dead-cell'
  | 'not-twelve-volts'
  | 'frozen'

/** What the person should know beside the verdict. */
export type PowerWarningCode =
  | 'rest-volts-missing'
  | 'rested-too-short'
  | 'hours-at-rest-missing'
  | 'above-full'
  | 'deeply-discharged'
  | 'kind-missing'
  | 'capacity-missing'
  | 'age-missing'
  | 'temperature-missing'
  | 'second-rate-unusable'
  | 'step-load-missing'
  | 'may-be-frozen'
  | 'lithium-below-zero'
  | 'charger-not-supply'
  | 'supply-amperes-missing'
  | 'support-writes'
  | 'clamp-to-chassis'
  | 'setting-overruled'
  | 'floor-above-target'
  | 'start-doubtful'

/** One point of the picture. Two points share a time where the load changes. */
export interface CurvePoint extends Band {
  readonly minutes: number
  /** Index into the steps. */
  readonly step: number
}

/** What one step does to the voltage. */
export interface StepOutlook {
  readonly name: string
  readonly fromMinutes: number
  readonly toMinutes: number
  readonly loadAmperes: Band
  readonly minimumVolts: Band
  /** Chance that the floor is crossed here for the first time. */
  readonly chanceOfCrossing: number
}

/** When the floor is crossed, over the runs; null where fewer runs than that cross within the plan. */
export interface Crossing {
  /** One run in twenty has crossed by then. */
  readonly earliestMinutes: number | null
  /** Half of the runs have crossed by then. */
  readonly medianMinutes: number | null
  /** The step in which most runs cross. */
  readonly step: string
}

/** The plan again with the least supply that holds it. */
export interface WithSupply {
  readonly amperes: number
  readonly volts: number
  readonly minimumVolts: Band
  readonly chanceOfCrossing: number
}

/** Will it start afterwards? */
export interface StartOutlook {
  readonly crankVolts: Band
  /** Share of the runs that stay at 9.6 V or more while cranking. */
  readonly chanceStrong: number
  /** Share of the runs that stay at 8 V or more. */
  readonly chanceStarts: number
}

/** The answer of `shearline power`. Bands are nine in ten of the runs. */
export interface PowerAnswer {
  readonly verdict: PowerVerdict
  /** At the start, 0 to 1, of the charge the battery can still hold. */
  readonly stateOfCharge: Band
  /** Lowest terminal volts over the plan as described (with the supply, if one is given). */
  readonly minimumVolts: Band
  /** Minutes from the start at which half of the runs have crossed the floor; null when fewer do. */
  readonly crossesFloorAt: number | null
  /** Least supply (whole amperes at the target volts) that holds the plan; 0 none needed, null none is enough. */
  readonly supplyAmperes: number | null
  readonly chanceOfCrossing: number
  readonly crossing: Crossing | null
  /** Current to hold the target volts throughout: 95th hundredth of load plus charge. */
  readonly supplyForTargetAmperes: number
  readonly withSupply: WithSupply | null
  readonly stateOfChargeAtEnd: Band
  readonly startAfter: StartOutlook
  readonly steps: readonly StepOutlook[]
  readonly curve: readonly CurvePoint[]
  readonly limits: PowerLimits
  readonly reasons: readonly Finding<PowerReasonCode>[]
  readonly warnings: readonly Finding<PowerWarningCode>[]
  readonly input: PowerInput
}
