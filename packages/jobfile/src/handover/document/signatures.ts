/** @module The signatures on record: who, what for, by hand or typed, when. */
import type { Entry } from '../../fold/collect.ts'
import type { Block } from './blocks.ts'
import { heading, type Pen, paragraph, quiet } from './pen.ts'

/** The signature that the record ties to a consent; null when it ties none. */
export function signatureFor(
  { facts }: Pick<Pen, 'facts'>,
  consent: Entry<'consent-given'>,
): Entry<'signature-drawn'> | null {
  const { signature, signer } = consent.body
  const own = facts.all('signature-drawn').filter(({ body }) => {
    if (body.fact !== undefined) return body.fact === consent.id
    // Before signatures named their fact, the same name under a consent was all that tied them.
    return body.blob === signature || (body.for === 'consent' && body.signer === signer)
  })
  return own.at(-1) ?? null
}

/** Whether a consent was signed, and not only recorded in somebody's name. */
export function isSigned(pen: Pick<Pen, 'facts'>, consent: Entry<'consent-given'>): boolean {
  return consent.body.signature !== undefined || signatureFor(pen, consent) !== null
}

/** How a name got under a text. Facts of before there was a choice were drawn. */
export function howSigned({ say }: Pick<Pen, 'say'>, { body }: Entry<'signature-drawn'>): string {
  return say(body.how === 'typed' ? 'doc.signature-typed' : 'doc.signature-drawn')
}

/** Every signature, oldest first, and what none of them shows. */
export function signatures(pen: Pen): readonly Block[] {
  const { say, facts, instant, edition } = pen
  if (edition < 2) return []
  const taken = facts.all('signature-drawn')
  if (taken.length === 0) return [heading(say('doc.signatures')), paragraph(say('doc.signatures-none'))]
  return [
    heading(say('doc.signatures')),
    {
      kind: 'table',
      columns: [
        { text: say('doc.signature-signer'), share: 0.2 },
        { text: say('doc.signature-for'), share: 0.2 },
        { text: say('doc.signature-how'), share: 0.17 },
        { text: say('doc.signature-when'), share: 0.22 },
        { text: say('doc.signature-kept'), share: 0.21, mono: true },
      ],
      rows: taken.map((entry) => [
        entry.body.signer,
        say(`doc.signature-for.${entry.body.for}`),
        howSigned(pen, entry),
        instant(entry.at),
        entry.body.blob.slice(0, 16),
      ]),
    },
    quiet(say('doc.signatures-limit')),
  ]
}
