/** @module What was agreed and signed: authority, consent, cautions, price, warranty, what is kept. */
import { commonPractice } from '../../policy/retention-pack.ts'
import { dateAfterText, isCode, listText, moneyText } from '../../words/index.ts'
import type { Block } from './blocks.ts'
import { heading, list, type Pen, paragraph, quiet } from './pen.ts'
import { isSigned } from './signatures.ts'

/** Documents seen, decision, consents. */
export function authority(pen: Pen): readonly Block[] {
  const { say, state, facts, language } = pen
  const { seen, decision, consents } = state.authority
  const blocks: Block[] = [heading(say('doc.authority'))]
  if (seen.length === 0) blocks.push(paragraph(say('doc.authority-none')))
  else
    blocks.push(
      {
        kind: 'table',
        columns: [
          { text: say('doc.authority-role'), share: 0.15 },
          { text: say('doc.authority-document'), share: 0.24 },
          { text: say('doc.authority-issuer'), share: 0.2 },
          { text: say('doc.authority-ends'), share: 0.13, mono: true },
          { text: say('doc.authority-seen'), share: 0.28 },
        ],
        rows: seen.map((document) => [
          say(`role.${document.role}`),
          document.document,
          document.issuer,
          document.lastCharacters,
          listText(language, [
            say('doc.authority-original', { original: document.original ? 'yes' : 'no' }),
            say('doc.authority-matched', { matched: document.matched ? 'yes' : 'no' }),
            say('doc.authority-by', { name: document.checkedBy }),
          ]),
        ]),
      },
      quiet(say('doc.authority-kept')),
    )
  if (decision !== null)
    blocks.push(
      paragraph(
        say('doc.authority-decision', {
          decision: say(`decision.${decision.decision}`),
          reason: decision.reason,
        }),
      ),
    )
  if (consents.length === 0) return [...blocks, paragraph(say('doc.consent-none'))]
  const items = facts.all('consent-given').map((entry) => {
    const { about, absentKeys, signer } = entry.body
    const unsigned = pen.edition >= 2 && !isSigned(pen, entry)
    const words = { about: say(`consent.${about}`), signer }
    if (absentKeys.length === 0) return say(unsigned ? 'doc.consent-unsigned' : 'doc.consent', words)
    const names = listText(language, absentKeys)
    return say(unsigned ? 'doc.consent-keys-unsigned' : 'doc.consent-keys', { ...words, names })
  })
  return [...blocks, list(items)]
}

/** Each caution that was read, with its usual sentence. */
export function cautions({ say, state }: Pen): readonly Block[] {
  const blocks: Block[] = [heading(say('doc.cautions'))]
  if (state.cautionsRead.length === 0) return [...blocks, paragraph(say('doc.cautions-none'))]
  const items = state.cautionsRead.map((caution) => {
    const name = `caution.${caution}`
    const means = `caution-means.${caution}`
    if (!isCode(name) || !isCode(means)) return caution
    return say('doc.caution', { name: say(name), sentence: say(means) })
  })
  return [...blocks, list(items), quiet(say('caution.defers'))]
}

/** Price lines and their sum. */
export function price({ say, state, language, edition }: Pen): readonly Block[] {
  const agreed = state.price
  if (agreed === null) return [heading(say('doc.price')), paragraph(say('doc.price-none'))]
  const money = (amount: number) => moneyText(language, agreed.currency, amount)
  const total = agreed.lines.reduce((sum, line) => sum + line.amountMinor, 0)
  return [
    heading(say('doc.price')),
    {
      kind: 'table',
      columns: [
        { text: say('doc.price-line'), share: 0.74 },
        { text: say('doc.price-amount'), share: 0.26, align: 'right' },
      ],
      rows: [
        ...agreed.lines.map((line) => [line.text, money(line.amountMinor)]),
        [say('doc.price-total'), money(total)],
      ],
      lastIsTotal: true,
    },
    ...(edition < 2 || state.invoice !== null ? [] : [quiet(say('doc.price-tax'))]),
  ]
}

/** Months, and what is not covered. */
export function warranty({ say, state, language }: Pen): readonly Block[] {
  const given = state.warranty
  if (given === null) return [heading(say('doc.warranty')), paragraph(say('doc.warranty-none'))]
  const things = listText(language, given.excludes)
  return [
    heading(say('doc.warranty')),
    paragraph(say('doc.warranty-months', { months: given.months })),
    ...(given.excludes.length === 0 ? [] : [paragraph(say('doc.warranty-excludes', { things }))]),
  ]
}

/** What is kept and when each class is deleted. */
export function retention(pen: Pen): readonly Block[] {
  const { say, state, language, zone } = pen
  const set = state.retention
  if (set === null) return [heading(say('doc.retention')), paragraph(say('doc.retention-none'))]
  const { seal } = state
  return [
    heading(say('doc.retention')),
    {
      kind: 'table',
      columns: [
        { text: say('doc.retention-class'), share: 0.36 },
        { text: say('doc.retention-until'), share: 0.24 },
        { text: say('doc.retention-source'), share: 0.4 },
      ],
      rows: set.classes.map((kept) => [
        say(`retention.${kept.class}`),
        // Only a clock that the sealing starts has a date when the document is made.
        kept.trigger !== 'sealed'
          ? say(`trigger.${kept.trigger}`, { count: kept.days })
          : seal === null
            ? say('doc.retention-days', { count: kept.days })
            : dateAfterText(language, seal.at, kept.days, zone),
        pen.edition >= 2 && kept.source === commonPractice ? say('doc.retention-common') : kept.source,
      ]),
    },
    quiet(say('doc.retention-pack', { pack: set.pack })),
  ]
}
