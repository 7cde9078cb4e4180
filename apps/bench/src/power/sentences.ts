/** @module Facts about the supply and coin cells in a sentence. */
import type { Body } from '@shearline/jobfile'
import { number, volts } from '../words/amounts.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'

/** The setting, and what the budget said when it was kept. */
export function supplySetSentence(body: Body<'supply-set'>): string {
  const words = t('fact.supply-set', {
    volts: volts(body.floorVolts),
    battery: say(`battery.${body.battery}`),
    source: body.floorSource,
  })
  if (body.budget === undefined) return words
  const verdict = say(`power-verdict.${body.budget.verdict}`, { amperes: body.budget.neededAmperes ?? 0 })
  return t('fact.supply-set.budget', { words, verdict, percent: number(body.budget.chance * 100, 1) })
}

/** A reading: of how many it is the lowest, and the current measured with it. */
export function supplyReadSentence(body: Body<'supply-read'>): string {
  const words = t('fact.supply-read', { volts: volts(body.volts), during: say(`during.${body.during}`) })
  return [
    words,
    ...(body.lowestOf === undefined || body.lowestOf === 1
      ? []
      : [t('fact.supply-read.lowest', { count: body.lowestOf })]),
    ...(body.drain === undefined
      ? []
      : [
          t('fact.supply-read.drain', {
            milliamperes: number(body.drain.amperes * 1000),
            minutes: number(body.drain.minutes),
          }),
        ]),
  ].join('; ')
}

/** A coin cell measured with the label of its key; empty when none was. */
export function cellSentence(cell: Body<'key-labelled'>['cell']): string {
  if (cell === undefined) return ''
  const told = (value: number | undefined) => (value === undefined ? '-' : number(value, 2, 2))
  return t('fact.cell', { rest: told(cell.restVolts), loaded: told(cell.loadedVolts) })
}
