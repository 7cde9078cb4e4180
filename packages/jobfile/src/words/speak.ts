/** @module Says the engine's own values: needs, next steps, differences and statements. */
import type { DifferenceCode, StatementCode } from '@shearline/keywork'
import type { Need, NextStep } from '../fold/state.ts'
import { isCode, type Language } from './catalogues.ts'
import { voltsText } from './numbers.ts'
import { type Params, say } from './say.ts'

/** Parameters that are codes themselves, and where their words are. */
const spokenBy: Readonly<Record<string, (value: string) => string>> = {
  source: (value) => `vin-source.${value}`,
  function: (value) => `function.${value}`,
  caution: (value) => `caution.${value}`,
  difference: (value) => `difference.${value}`,
  what: (value) => `policy-asks.${value}`,
}

const inVolts = new Set(['minimum', 'floor'])

/** Replaces coded parameters by their words; what the catalogue does not know stays as it is. */
function spoken(language: Language, params: Params): Params {
  return Object.fromEntries(
    Object.entries(params).map(([name, value]) => {
      if (typeof value === 'number') return [name, inVolts.has(name) ? voltsText(language, value) : value]
      const code = spokenBy[name]?.(value)
      return [name, code !== undefined && isCode(code) ? say(language, code, params) : value]
    }),
  )
}

/** What a tumbler still wants: `Second VIN source is missing`. */
export function sayNeed(language: Language, need: Pick<Need, 'code' | 'params'>): string {
  return say(language, `need.${need.code}`, spoken(language, need.params))
}

/** The next step as a verb sentence: `Read the VIN from a second source: ...`. */
export function sayNext(language: Language, step: Pick<NextStep, 'code' | 'params'>): string {
  return say(language, `next.${step.code}`, spoken(language, step.params))
}

/** A disagreement between the tally's numbers in a few words. */
export function sayDifference(
  language: Language,
  difference: { readonly code: DifferenceCode; readonly count: number },
): string {
  return say(language, `difference.${difference.code}`, { count: difference.count })
}

/** What the tally means, one plain sentence. */
export function sayStatement(
  language: Language,
  statement: { readonly code: StatementCode; readonly count: number; readonly keys: readonly string[] },
): string {
  return say(language, `statement.${statement.code}`, {
    count: statement.count,
    keys: listText(language, statement.keys),
  })
}

/** Names one after another, with the list mark of the language. */
export function listText(language: Language, names: readonly string[]): string {
  return names.join(say(language, 'format.list-mark'))
}
