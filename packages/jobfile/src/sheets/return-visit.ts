/** @module The sheet for coming back: what was done, what is open, which keys start the car now. */
import type { FaultClass } from '@shearline/keywork'
import type { Block } from '../handover/document/index.ts'
import { heading, list, type Pen, paragraph } from '../handover/document/pen.ts'
import { warranty } from '../handover/document/terms.ts'
import { listText, sayNeed } from '../words/index.ts'
import type { SheetKind } from './basis.ts'

/** Sealing and its own after-effects are nothing a customer comes back for. */
const ours = new Set(['not-sealed', 'changed-since-seal', 'chain-broken', 'retention-not-set'])

function open({ state, language }: Pen): readonly string[] {
  const needs = state.tumblers.flatMap((tumbler) => tumbler.needs).filter(({ code }) => !ours.has(code))
  return [...new Set(needs.map((need) => sayNeed(language, need)))]
}

const toLookAt = new Set<FaultClass>(['new-unexplained', 'raised-by-work', 'there-before-still', 'permanent'])

function faults({ say, state }: Pen): Block {
  const left = state.faults.faults.filter((line) => toLookAt.has(line.class))
  if (left.length === 0) return paragraph(say('sheet.return-faults-none'))
  return list(
    left.map((line) =>
      say('sheet.return-fault', {
        code: line.code,
        unit: line.unit,
        class: say(`fault-class.${line.class}`),
      }),
    ),
  )
}

function starting({ say, state, language }: Pen): Block {
  const keys = state.grid.rows
    .filter((row) => row.after.some((cell) => cell.function.endsWith('start') && cell.outcome === 'works'))
    .map((row) => row.key)
  if (keys.length === 0) return paragraph(say('sheet.return-starts-none'))
  return paragraph(say('sheet.return-starts', { count: keys.length, keys: listText(language, keys) }))
}

export const returnVisit: SheetKind = {
  offer: (pen) => {
    const { state } = pen
    const worked = state.seal !== null || state.teaching.openedAt !== null
    return worked ? { count: open(pen).length } : null
  },
  blocks: (pen) => {
    const { say, state, instant } = pen
    const { seal, teaching } = state
    const points = open(pen)
    const broke =
      teaching.breakOff === null
        ? []
        : [
            paragraph(
              say('sheet.return-broke', {
                after: teaching.breakOff.after,
                why: say(`break.${teaching.breakOff.why}`),
              }),
            ),
          ]
    return [
      heading(say('sheet.return-done')),
      paragraph(
        seal === null
          ? say('sheet.return-not-sealed')
          : say('sheet.return-sealed', { at: instant(seal.at), by: seal.by }),
      ),
      ...broke,
      heading(say('sheet.return-keys')),
      starting(pen),
      heading(say('sheet.return-open')),
      points.length === 0 ? paragraph(say('sheet.return-open-none')) : list(points),
      heading(say('sheet.return-faults')),
      faults(pen),
      ...warranty(pen),
      heading(say('sheet.return-bring')),
      list([
        say('sheet.return-bring-all'),
        say('sheet.return-bring-file'),
        say('sheet.return-bring-changes'),
      ]),
    ]
  },
}
