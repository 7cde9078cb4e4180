/** @module A statement of keys for an insurer: what was seen and tried, and what that cannot say. */
import type { GridCell } from '@shearline/keywork'
import type { Block } from '../handover/document/index.ts'
import { stopped, tally } from '../handover/document/keys.ts'
import { handedText } from '../handover/document/opening.ts'
import { heading, list, type Pen, paragraph } from '../handover/document/pen.ts'
import { listText } from '../words/index.ts'
import type { SheetKind } from './basis.ts'

/** Whether any way of starting was seen to work; `not tried` when none was tried. */
function starts({ say }: Pen, cells: readonly GridCell[]): string {
  const tried = cells.filter((cell) => cell.function.endsWith('start'))
  if (tried.some((cell) => cell.outcome === 'works')) return say('doc.yes')
  if (tried.some((cell) => cell.outcome === 'fails')) return say('doc.no')
  return say('sheet.insurer-not-tried')
}

/** When the work was opened, sealed and handed over: "on that day" needs a day. */
function days(pen: Pen): Extract<Block, { kind: 'facts' }>['rows'] {
  const { say, state, instant } = pen
  const { openedAt, seal } = state
  const sealed =
    seal === null ? say('doc.not-sealed') : say('doc.sealed-by', { at: instant(seal.at), by: seal.by })
  return [
    { label: say('doc.opened-at'), value: openedAt === null ? say('doc.unknown') : instant(openedAt) },
    { label: say('doc.sealed-at'), value: sealed },
    { label: say('doc.handed'), value: handedText(pen) },
  ]
}

const table = ({ say }: Pen, rows: readonly (readonly string[])[]): Block => ({
  kind: 'table',
  columns: [
    { text: say('sheet.insurer-key'), share: 0.1 },
    { text: say('sheet.insurer-about'), share: 0.44 },
    { text: say('sheet.insurer-before'), share: 0.23 },
    { text: say('sheet.insurer-after'), share: 0.23 },
  ],
  rows,
})

const testsPresent = ({ state }: Pen): number =>
  state.grid.rows
    .flatMap((row) => [...row.before, ...row.after])
    .filter((cell) => cell.customerPresent === true).length

export const insurer: SheetKind = {
  offer: ({ state }) =>
    state.keys.length === 0
      ? null
      : { here: state.keys.filter((key) => key.onBench).length, absent: state.absentKeys.length },
  blocks: (pen) => {
    const { say, state, language } = pen
    const rows = state.keys.map((key) => {
      const row = state.grid.rows.find((candidate) => candidate.key === key.id)
      const about = [
        say(`form.${key.form}`),
        say(`origin.${key.origin}`),
        ...(key.onBench ? [] : [say('doc.key-away')]),
        ...(key.cloneOf === null ? [] : [say('doc.key-clone', { key: key.cloneOf })]),
      ]
      const before = key.origin === 'new' ? say('doc.key-new-before') : starts(pen, row?.before ?? [])
      return [key.id, listText(language, about), before, starts(pen, row?.after ?? [])]
    })
    return [
      heading(say('sheet.insurer-what')),
      paragraph(say('sheet.insurer-limit')),
      { kind: 'facts', rows: days(pen) },
      heading(say('sheet.insurer-rows')),
      ...(rows.length === 0 ? [paragraph(say('doc.keys-none'))] : [table(pen, rows)]),
      paragraph(say('sheet.insurer-tests', { count: testsPresent(pen) })),
      heading(say('sheet.insurer-absent')),
      state.absentKeys.length === 0 ? paragraph(say('sheet.insurer-absent-none')) : list(state.absentKeys),
      ...stopped(pen, false),
      ...tally(pen),
    ]
  },
}
