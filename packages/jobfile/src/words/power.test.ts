import { readFileSync } from 'node:fs'
import { parsePowerFile, powerBudget } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { codes, isCode, say } from './index.ts'

/** The members of a union of string literals, read from the source that declares it. */
function union(file: string, name: string): readonly string[] {
  const source = readFileSync(new URL(`../../../keywork/src/power/${file}`, import.meta.url), 'utf8')
  const body = new RegExp(`export type ${name} =([^;]*?)\\n\\n`).exec(`${source}\n\n`)?.[1] ?? ''
  return [...body.matchAll(/'([^']+)'/g)].map((match) => match[1] ?? '')
}

describe('the words of power', () => {
  it.each([
    ['power-verdict', union('types.ts', 'PowerVerdict')],
    ['power-reason', union('types.ts', 'PowerReasonCode')],
    ['power-warning', union('types.ts', 'PowerWarningCode')],
    ['power-level', union('refit.ts', 'WatchLevel')],
    ['power-watch', union('refit.ts', 'WatchFindingCode')],
    ['power-drain', union('drain.ts', 'DrainState')],
    ['power-cell', union('fob-cell.ts', 'FobCellVerdict')],
    ['power-meter', union('meter-line.ts', 'MeterRefusal')],
    ['power-start', ['starts', 'doubtful', 'does-not-start', 'unknown']],
  ])('have a text for every code of "%s" and none without', (prefix, members) => {
    expect(members.length).toBeGreaterThan(2)
    const told = codes.filter((code) => code.startsWith(`${prefix}.`))
    expect(told.map((code) => code.slice(prefix.length + 1)).sort()).toEqual([...members].sort())
  })

  it('fill every place from what the engine gives along', () => {
    const batteries = [
      { restVolts: 12.9, hoursAtRest: 20 },
      { restVolts: 9.9 },
      { restVolts: 24.6 },
      { restVolts: 13.4 },
      { restVolts: 11.2, temperatureCelsius: -30, kind: 'flooded' },
      { knownBad: true },
      {},
    ]
    for (const battery of batteries) {
      const read = parsePowerFile({ battery, steps: [{ minutes: 40 }], runs: 100 })
      if ('path' in read) throw new Error(read.what)
      const answer = powerBudget(read.input)
      const found = [
        ...answer.reasons.map((one) => [`power-reason.${one.code}`, one.params] as const),
        ...answer.warnings.map((one) => [`power-warning.${one.code}`, one.params] as const),
      ]
      for (const [code, params] of found) {
        if (!isCode(code)) throw new Error(code)
        // A place without a value would leave "below :" or "only %" behind.
        expect(say('en', code, params ?? {}), code).not.toMatch(/(?:below|least|only|At) [:%.°A]|""|^ is/)
      }
    }
  })
})
