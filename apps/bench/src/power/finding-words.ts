import type { Finding } from '@shearline/bus'
import { type Code, isCode } from '@shearline/jobfile'
import type { PowerAnswer } from '@shearline/keywork'
import { number, volts } from '../words/amounts.ts'
import { say } from '../words/engine.ts'

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

/** Volts are told with their unit, other figures as the language writes them. */
function spoken(params: Params): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(params).map(([name, value]) => [
      name,
      typeof value === 'string' ? value : name.endsWith('Volts') ? volts(value) : number(value, 1),
    ]),
  )
}
