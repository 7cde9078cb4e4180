import type { Finding } from '@shearline/bus'
import { type Code, isCode } from '@shearline/jobfile'
import type { PowerAnswer, PowerRefusal } from '@shearline/keywork'
import { number, volts } from '../words/amounts.ts'
import { say } from '../words/engine.ts'
import { t, type WordKey } from '../words/index.ts'

type Params = NonNullable<Finding['params']>

/** A finding of the power engine in the bench's language; a code without words is told in the engine's own. */
export function findingWords(
  family: 'power-reason' | 'power-warning' | 'power-watch',
  finding: Finding,
): string {
  const code = `${family}.${finding.code}`
  if (!isCode(code)) return `${finding.what}. ${finding.doNext}`
  return say(code satisfies Code, spoken(finding.params ?? {}))
}

/** The verdict as one sentence. */
export function verdictWords({ verdict, supplyAmperes }: PowerAnswer): string {
  return say(`power-verdict.${verdict}`, { amperes: supplyAmperes ?? 0 })
}

/** The fold and the label of every figure of the budget the engine may refuse, by its path in the engine's input. */
const fields: Readonly<Record<string, readonly [fold: WordKey, label: WordKey]>> = {
  'battery.restVolts': ['power.battery', 'power.rest'],
  'battery.hoursAtRest': ['power.battery', 'power.hours'],
  'battery.capacityAmpereHours': ['power.battery', 'power.capacity'],
  'battery.ageYears': ['power.battery', 'power.age'],
  'battery.temperatureCelsius': ['power.battery', 'power.temperature'],
  'battery.coldCrankingAmperes': ['power.battery', 'power.cranking'],
  'supply.amperes': ['power.supply', 'power.supply.amperes'],
  'supply.volts': ['power.supply', 'power.supply.volts'],
  floorVolts: ['power.limits', 'plan.floor'],
  targetVolts: ['power.limits', 'power.target'],
  stopVolts: ['power.limits', 'power.stop'],
  'vehicleMaker.floorVolts': ['power.limits', 'plan.floor'],
  'vehicleMaker.targetVolts': ['power.limits', 'power.target'],
}

/** Why a budget cannot be computed, by the labels its form has. */
export function refusalWords({ path }: PowerRefusal): string {
  const step = /^steps\[(\d+)\]/.exec(path)?.[1]
  const [fold, label] = fields[path] ?? ['power.steps', 'power.steps']
  const field = step === undefined ? t(label) : t('power.step.name', { number: Number(step) + 1 })
  return t('power.cannot', { field, fold: t(fold) })
}

/** Volts are told with their unit, other figures as the language writes them. */
function spoken(params: Params): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(params).map(([name, value]) => [
      name,
      typeof value === 'string' ? value : name.endsWith('Volts') ? volts(value) : number(value, 1),
    ]),
  )
}
