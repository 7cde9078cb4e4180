/** @module Reads the input of `shearline power` from JSON and says where it is wrong. */

import { LOAD_NAMES, type LoadName } from './named-loads.ts'
import type {
  Battery,
  BatteryKind,
  DischargeRate,
  LimitSettings,
  MakerInstruction,
  PowerInput,
  PowerStep,
  PowerSupply,
  Starter,
} from './types.ts'

/** An input that was read; `ignored` are the paths of fields this model does not know. */
export interface ParsedPower {
  readonly input: PowerInput
  readonly ignored: readonly string[]
}

/** What is wrong and where: `battery.restVolts`, `steps[1].minutes`; an empty path is the whole. */
export interface PowerRefusal {
  readonly path: string
  readonly what: string
}

const KINDS: readonly BatteryKind[] = ['flooded', 'efb', 'agm', 'gel', 'lithium', 'unknown']
const MOST_STEPS = 100
const MOST_MINUTES = 3 * 24 * 60
const DEFAULT_RUNS = 2000

/**
 * Reads the input. Only `steps` with at least one step is required; `null`, `"unknown"` and absence all mean "not
 * known". Fields of other names are ignored and named. Never throws.
 */
export function parsePowerFile(json: unknown): ParsedPower | PowerRefusal {
  const reader = new Reader()
  try {
    return { input: reader.input(json), ignored: reader.ignored }
  } catch (refusal) {
    if (refusal instanceof Refused) return { path: refusal.path, what: refusal.message }
    throw refusal
  }
}

class Refused extends Error {
  readonly path: string
  constructor(path: string, what: string) {
    super(what)
    this.path = path
  }
}

type Fields = Readonly<Record<string, unknown>>

class Reader {
  readonly ignored: string[] = []

  input(json: unknown): PowerInput {
    const fields = this.fields(json, '', [
      'battery',
      'steps',
      'supply',
      'floorVolts',
      'floorSource',
      'targetVolts',
      'targetSource',
      'stopVolts',
      'vehicleMaker',
      'starter',
      'acceptedChance',
      'runs',
      'seed',
    ])
    const settings: LimitSettings = {
      floorVolts: number(fields.floorVolts, 'floorVolts', 6, 16),
      floorSource: text(fields.floorSource, 'floorSource'),
      targetVolts: number(fields.targetVolts, 'targetVolts', 10, 16),
      targetSource: text(fields.targetSource, 'targetSource'),
      stopVolts: number(fields.stopVolts, 'stopVolts', 5, 16),
    }
    return {
      battery: this.battery(unknownValue(fields.battery) ? {} : fields.battery),
      steps: this.steps(fields.steps),
      supply: unknownValue(fields.supply) ? null : this.supply(fields.supply),
      settings,
      vehicleMaker: unknownValue(fields.vehicleMaker) ? null : this.maker(fields.vehicleMaker),
      starter: this.starter(unknownValue(fields.starter) ? {} : fields.starter),
      acceptedChance: number(fields.acceptedChance, 'acceptedChance', 0, 0.5) ?? 0.05,
      runs: whole(fields.runs, 'runs', 100, 20_000) ?? DEFAULT_RUNS,
      seed: whole(fields.seed, 'seed', 0, 0xffffffff) ?? 1,
    }
  }

  private battery(json: unknown): Battery {
    const fields = this.fields(json, 'battery', [
      'kind',
      'capacityAmpereHours',
      'hourRate',
      'secondRate',
      'coldCrankingAmperes',
      'ageYears',
      'restVolts',
      'hoursAtRest',
      'lastUse',
      'temperatureCelsius',
      'knownBad',
      'monitored',
    ])
    const at = (name: string, least: number, most: number): number | null =>
      number(fields[name], `battery.${name}`, least, most)
    return {
      kind: choice(fields.kind, KINDS, 'battery.kind', 'unknown'),
      capacityAmpereHours: at('capacityAmpereHours', 1, 400),
      hourRate: at('hourRate', 1, 100) ?? 20,
      secondRate: unknownValue(fields.secondRate) ? null : this.rate(fields.secondRate),
      coldCrankingAmperes: at('coldCrankingAmperes', 50, 3000),
      ageYears: at('ageYears', 0, 50),
      restVolts: at('restVolts', 0, 60),
      hoursAtRest: at('hoursAtRest', 0, 100_000),
      lastUse: choice(fields.lastUse, ['charged', 'drained', 'unknown'], 'battery.lastUse', 'unknown'),
      temperatureCelsius: at('temperatureCelsius', -60, 80),
      knownBad: yesOrNo(fields.knownBad, 'battery.knownBad') ?? false,
      monitored: yesOrNo(fields.monitored, 'battery.monitored'),
    }
  }

  private rate(json: unknown): DischargeRate {
    const path = 'battery.secondRate'
    const fields = this.fields(json, path, ['amperes', 'hours'])
    return {
      amperes: needed(number(fields.amperes, `${path}.amperes`, 0.01, 2000), `${path}.amperes`),
      hours: needed(number(fields.hours, `${path}.hours`, 0.01, 1000), `${path}.hours`),
    }
  }

  private steps(json: unknown): readonly PowerStep[] {
    if (!Array.isArray(json)) throw new Refused('steps', `must be a list of steps; found ${quoted(json)}`)
    if (json.length === 0) throw new Refused('steps', 'must hold at least one step')
    if (json.length > MOST_STEPS) throw new Refused('steps', `must hold at most ${MOST_STEPS} steps`)
    const steps = json.map((each, index) => this.step(each, `steps[${index}]`, index))
    const minutes = steps.reduce((sum, step) => sum + step.minutes, 0)
    if (minutes > MOST_MINUTES) throw new Refused('steps', `must last at most ${MOST_MINUTES} minutes in all`)
    return steps
  }

  private step(json: unknown, path: string, index: number): PowerStep {
    const fields = this.fields(json, path, ['name', 'minutes', 'amperes', 'loads', 'supplied'])
    return {
      name: text(fields.name, `${path}.name`) ?? `step ${index + 1}`,
      minutes: needed(number(fields.minutes, `${path}.minutes`, 0.1, MOST_MINUTES), `${path}.minutes`),
      amperes: this.amperes(fields.amperes, `${path}.amperes`),
      loads: this.loads(fields.loads, `${path}.loads`),
      supplied: yesOrNo(fields.supplied, `${path}.supplied`) ?? true,
    }
  }

  /** A single number is taken as read to a tenth. */
  private amperes(json: unknown, path: string): PowerStep['amperes'] {
    if (unknownValue(json)) return null
    if (typeof json === 'number') {
      const stated = needed(number(json, path, 0, 2000), path)
      return { low: stated * 0.9, high: stated * 1.1 }
    }
    const fields = this.fields(json, path, ['low', 'high'])
    const low = needed(number(fields.low, `${path}.low`, 0, 2000), `${path}.low`)
    return { low, high: needed(number(fields.high, `${path}.high`, low, 2000), `${path}.high`) }
  }

  private loads(json: unknown, path: string): readonly LoadName[] {
    if (unknownValue(json)) return []
    if (!Array.isArray(json)) throw new Refused(path, `must be a list of load names; found ${quoted(json)}`)
    const names = json.map((each, index) => {
      const name = LOAD_NAMES.find((known) => known === each)
      if (name !== undefined) return name
      throw new Refused(`${path}[${index}]`, `must be one of ${LOAD_NAMES.join(', ')}; found ${quoted(each)}`)
    })
    return [...new Set(names)]
  }

  private supply(json: unknown): PowerSupply {
    const fields = this.fields(json, 'supply', ['kind', 'amperes', 'volts'])
    return {
      kind: choice(fields.kind, ['supply', 'charger'], 'supply.kind', 'supply'),
      amperes: number(fields.amperes, 'supply.amperes', 0, 2000),
      volts: number(fields.volts, 'supply.volts', 10, 16),
    }
  }

  private maker(json: unknown): MakerInstruction {
    const fields = this.fields(json, 'vehicleMaker', ['floorVolts', 'targetVolts', 'reference'])
    return {
      floorVolts: number(fields.floorVolts, 'vehicleMaker.floorVolts', 6, 16),
      targetVolts: number(fields.targetVolts, 'vehicleMaker.targetVolts', 10, 16),
      reference: text(fields.reference, 'vehicleMaker.reference'),
    }
  }

  private starter(json: unknown): Starter {
    const fields = this.fields(json, 'starter', ['engine', 'amperes'])
    return {
      engine: choice(fields.engine, ['petrol', 'diesel', 'unknown'], 'starter.engine', 'unknown'),
      amperes: number(fields.amperes, 'starter.amperes', 10, 2000),
    }
  }

  private fields(json: unknown, path: string, known: readonly string[]): Fields {
    if (typeof json !== 'object' || json === null || Array.isArray(json)) {
      throw new Refused(path, `must be an object; found ${quoted(json)}`)
    }
    for (const name of Object.keys(json)) {
      if (!known.includes(name)) this.ignored.push(path === '' ? name : `${path}.${name}`)
    }
    const fields = json as Fields
    return Object.fromEntries(
      known.map((name) => [name, Object.hasOwn(fields, name) ? fields[name] : undefined]),
    )
  }
}

function unknownValue(json: unknown): boolean {
  return json === undefined || json === null || json === 'unknown'
}

function number(json: unknown, path: string, least: number, most: number): number | null {
  if (unknownValue(json)) return null
  if (typeof json === 'number' && json >= least && json <= most) return json
  throw new Refused(path, `must be a number from ${least} to ${most}, or unknown; found ${quoted(json)}`)
}

function whole(json: unknown, path: string, least: number, most: number): number | null {
  const value = number(json, path, least, most)
  if (value === null || Number.isSafeInteger(value)) return value
  throw new Refused(path, `must be a whole number; found ${quoted(json)}`)
}

function needed<T>(value: T | null, path: string): T {
  if (value !== null) return value
  throw new Refused(path, 'must be given')
}

function text(json: unknown, path: string): string | null {
  if (unknownValue(json)) return null
  if (typeof json === 'string' && json.trim() !== '') return json
  throw new Refused(path, `must be a text that is not empty; found ${quoted(json)}`)
}

function yesOrNo(json: unknown, path: string): boolean | null {
  if (unknownValue(json)) return null
  if (typeof json === 'boolean') return json
  throw new Refused(path, `must be true, false or unknown; found ${quoted(json)}`)
}

function choice<T extends string>(json: unknown, values: readonly T[], path: string, absent: T): T {
  if (unknownValue(json)) return absent
  const value = values.find((each) => each === json)
  if (value !== undefined) return value
  throw new Refused(path, `must be one of ${values.join(', ')}; found ${quoted(json)}`)
}

function quoted(json: unknown): string {
  if (json === undefined) return 'nothing'
  if (Array.isArray(json)) return 'a list'
  if (typeof json === 'object' && json !== null) return 'an object'
  const written = typeof json === 'string' ? JSON.stringify(json) : String(json)
  return written.length > 60 ? `${written.slice(0, 60)}...` : written
}
