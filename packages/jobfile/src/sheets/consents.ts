/** @module Sheets a customer signs before the work: keys that are not here, and work that cannot be checked before. */
import { heading, list, type Pen, paragraph, strong } from '../handover/document/pen.ts'
import { listText } from '../words/index.ts'
import { type SheetKind, signing } from './basis.ts'

const effects = {
  'replace-all': 'sheet.absent-replace-all',
  append: 'sheet.absent-append',
  'append-drop-oldest': 'sheet.absent-oldest',
  'numbered-slots': 'sheet.absent-slots',
  unknown: 'sheet.absent-unknown',
} as const

/** Consent that keys which are not here may stop starting the car, by the customer's own names for them. */
export const absentKeys: SheetKind = {
  offer: ({ state, language }) =>
    state.absentKeys.length === 0
      ? null
      : { count: state.absentKeys.length, names: listText(language, state.absentKeys) },
  blocks: (pen) => {
    const { say, state } = pen
    const effect = effects[state.teaching.rule?.kind ?? 'unknown']
    return [
      heading(say('sheet.absent-what')),
      paragraph(say(effect)),
      ...(state.absentKeys.length === 0
        ? []
        : [paragraph(say('sheet.absent-named')), list(state.absentKeys)]),
      paragraph(say('sheet.absent-others')),
      paragraph(say('doc.stopped-blade')),
      paragraph(say('doc.stopped-button-away')),
      paragraph(say('sheet.absent-back')),
      strong(say('sheet.absent-agree')),
      ...signing(pen, 'absent-keys-stop'),
    ]
  },
}

/** True when a key that is here was seen to start the car before the work. */
function couldBeChecked({ state }: Pen): boolean {
  const here = new Set(state.keys.filter((key) => key.onBench).map((key) => key.id))
  return state.grid.rows.some(
    (row) =>
      here.has(row.key) &&
      row.before.some((cell) => cell.function.endsWith('start') && cell.outcome === 'works'),
  )
}

/** Consent to work that nobody could check before, because no key works. */
export const noCheck: SheetKind = {
  offer: (pen) => (couldBeChecked(pen) ? null : {}),
  blocks: (pen) => {
    const { say } = pen
    return [
      heading(say('sheet.nocheck-what')),
      paragraph(say('sheet.nocheck-why')),
      list([say('sheet.nocheck-functions'), say('sheet.nocheck-faults'), say('sheet.nocheck-damage')]),
      strong(say('sheet.nocheck-agree')),
      ...signing(pen, 'no-check-before'),
    ]
  },
}
