/** @module The note that says why work was not done, without accusing anybody. */
import type { Block } from '../handover/document/index.ts'
import { heading, list, type Pen, paragraph, quiet } from '../handover/document/pen.ts'
import { listText, sayNeed } from '../words/index.ts'
import type { SheetKind } from './basis.ts'

/** What the authority tumbler still wants, but for the decision itself. */
function wanted({ state, language }: Pen): readonly string[] {
  const needs = state.tumblers.find(({ name }) => name === 'authority')?.needs ?? []
  return needs
    .filter(({ code }) => code !== 'work-refused' && code !== 'work-held')
    .map((need) => sayNeed(language, need))
}

function seen({ say, state, language }: Pen): Block {
  const documents = state.authority.seen
  if (documents.length === 0) return paragraph(say('sheet.refusal-seen-none'))
  return list(
    documents.map((document) =>
      listText(language, [
        say(`role.${document.role}`),
        document.document,
        say('doc.authority-original', { original: document.original ? 'yes' : 'no' }),
        say('doc.authority-matched', { matched: document.matched ? 'yes' : 'no' }),
      ]),
    ),
  )
}

export const refusal: SheetKind = {
  offer: ({ state, say }) => {
    const { decision } = state.authority
    if (decision === null || decision.decision === 'released') return null
    return { decision: say(`decision.${decision.decision}`), reason: decision.reason }
  },
  blocks: (pen) => {
    const { say, state, facts, instant } = pen
    const { decision } = state.authority
    const last = facts.last('authority-decided')
    const missing = wanted(pen)
    const touched = state.teaching.openedAt !== null
    const decided =
      decision === null || decision.decision === 'released'
        ? []
        : [
            paragraph(say(`sheet.refusal-${decision.decision}`, { reason: decision.reason })),
            ...(last === null
              ? []
              : [paragraph(say('sheet.refusal-by', { at: instant(last.at), by: last.by }))]),
          ]
    return [
      heading(say('sheet.refusal-what')),
      ...decided,
      paragraph(say('sheet.refusal-no-blame')),
      heading(say('sheet.refusal-seen')),
      seen(pen),
      quiet(say('doc.authority-kept')),
      heading(say('sheet.refusal-missing')),
      missing.length === 0 ? paragraph(say('sheet.refusal-missing-none')) : list(missing),
      heading(say('sheet.refusal-car')),
      paragraph(say(touched ? 'sheet.refusal-touched' : 'sheet.refusal-untouched')),
      paragraph(say('sheet.refusal-scans', { count: state.scans.length })),
    ]
  },
}
