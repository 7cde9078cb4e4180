/** @module What every sheet is made from, and the parts all of them share. */
import { sha256OfBytes } from '../chain/index.ts'
import type { Body } from '../facts/index.ts'
import { Collected } from '../fold/collect.ts'
import { foldJob } from '../fold/index.ts'
import { type Block, latestEdition } from '../handover/document/index.ts'
import { makePen, type Pen, paragraph, quiet, strong } from '../handover/document/pen.ts'
import { howSigned, signatureFor } from '../handover/document/signatures.ts'
import { type JobRecord, recordText } from '../record/index.ts'
import { addEveryLanguage, languageFor } from '../words/index.ts'

/** The sheets there are. */
export const sheetNames = [
  'bring-this',
  'absent-keys',
  'no-check',
  'refusal',
  'insurer',
  'return-visit',
] as const
export type SheetName = (typeof sheetNames)[number]

/** What, beside its name, a sheet depends on. */
export interface SheetBasis {
  readonly record: JobRecord
  /** BCP 47: that of whoever reads the sheet; a language without a catalogue is written in English. */
  readonly language: string
  /** UTC instant, `2026-11-25T09:12:00.000Z`. */
  readonly madeAt: string
  /** What the firm calls itself in a message; no name when left out. */
  readonly firm?: string
}

/** Whether the record holds what a sheet is about, and one line that says so. */
export interface SheetOffer {
  readonly sheet: SheetName
  readonly title: string
  readonly ready: boolean
  readonly preview: string
}

/** One kind of sheet. */
export interface SheetKind {
  /** The parameters of its preview line; null when the record does not hold what it is about. */
  readonly offer: (pen: Pen) => Readonly<Record<string, string | number>> | null
  readonly blocks: (pen: Pen) => readonly Block[]
}

/** A pen for a record in a language. Throws nothing; an unknown language is English. */
export function penOf({ record, language }: Pick<SheetBasis, 'record' | 'language'>): Pen {
  addEveryLanguage()
  return makePen({
    state: foldJob(record.job, record.facts),
    facts: new Collected(record.facts),
    edition: latestEdition,
    language: languageFor(language),
  })
}

/** Title, car and job: the head of every sheet. */
export function head(pen: Pen, sheet: SheetName): readonly Block[] {
  const { say, state } = pen
  const { opened } = state
  const unknown = say('doc.unknown')
  const demo: readonly Block[] = opened?.demo === true ? [{ kind: 'notice', text: say('doc.invented') }] : []
  return [
    ...demo,
    {
      kind: 'title',
      over: opened?.title ?? unknown,
      title: say(`sheet.${sheet}`),
      under: opened?.vehicle ?? unknown,
    },
    {
      kind: 'facts',
      rows: [
        { label: say('doc.vin'), value: state.vin ?? say('doc.vin-none'), mono: state.vin !== null },
        // The place to come to is that of the appointment, which this sheet states below.
        ...(sheet === 'bring-this' ? [] : [{ label: say('doc.place'), value: opened?.place ?? unknown }]),
        { label: say('sheet.job'), value: state.job },
      ],
    },
  ]
}

/** What the sheet was made from, and what it is not. */
export function foot(pen: Pen, { record, madeAt }: SheetBasis): readonly Block[] {
  const { say, instant } = pen
  return [
    quiet(say('sheet.law')),
    quiet(say('sheet.not-a-seal')),
    {
      kind: 'facts',
      rows: [
        { label: say('doc.verify-made'), value: say('sheet.made', { at: instant(madeAt) }) },
        { label: say('sheet.record'), value: sha256OfBytes(recordText(record)), mono: true },
      ],
    },
  ]
}

/** Who signed, when the record ties a signature to the consent; else who it is recorded for, and lines to sign on. */
export function signing(pen: Pen, about: Body<'consent-given'>['about']): readonly Block[] {
  const { say, facts } = pen
  const head: Block = { kind: 'heading', text: say('sheet.sign') }
  const given = facts.all('consent-given').findLast(({ body }) => body.about === about)
  const signature = given === undefined ? null : signatureFor(pen, given)
  if (signature !== null) {
    const signed = say('sheet.signed', { signer: signature.body.signer, how: howSigned(pen, signature) })
    return [head, strong(signed)]
  }
  const labels = [say('sheet.sign-name'), say('sheet.sign-date'), say('sheet.sign-by')]
  const named: readonly Block[] =
    given === undefined ? [] : [paragraph(say('sheet.agreed', { signer: given.body.signer }))]
  return [head, ...named, { kind: 'signature', labels }]
}
