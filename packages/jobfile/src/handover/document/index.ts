/** @module What the handover document says, derived from the record alone. */

import { fromBase64Url, sha256OfBytes } from '../../chain/index.ts'
import { Collected } from '../../fold/collect.ts'
import { foldJob } from '../../fold/index.ts'
import { type JobRecord, recordText } from '../../record/index.ts'
import { addEveryLanguage, directionOf, languageAsOf, languageFor } from '../../words/index.ts'
import type { Block, HandoverText } from './blocks.ts'
import { byHand } from './by-hand.ts'
import { faults } from './faults.ts'
import { invoice } from './invoice.ts'
import { keys, stopped, tally } from './keys.ts'
import { opening, standing } from './opening.ts'
import { makePen, type Section } from './pen.ts'
import { corrections, type ProofOf, verifying } from './proof.ts'
import { signatures } from './signatures.ts'
import { authority, cautions, price, retention, warranty } from './terms.ts'
import { supply, teaching } from './work.ts'

export * from './blocks.ts'
export { tidy } from './tidy.ts'

const sections: readonly Section[] = [
  opening,
  standing,
  keys,
  stopped,
  tally,
  faults,
  supply,
  teaching,
  authority,
  signatures,
  cautions,
  price,
  invoice,
  warranty,
  retention,
  corrections,
]

/** The edition that is written now. Earlier ones can still be derived, so that their documents stay verifiable. */
export const latestEdition = 2

/** What, beside the record, the document depends on. */
export interface HandoverBasis {
  readonly record: JobRecord
  /** BCP 47; a language without a catalogue is written in English. */
  readonly language: string
  /** Identifier of the device that seals the file. */
  readonly device: string
  /** UTC instant at which the document was made. */
  readonly madeAt: string
  /** Edition of the document; the latest when left out. */
  readonly edition?: number
}

/**
 * The whole text of the document, from the record and nothing else of the job. The same record, language, device,
 * instant and edition always give the same text: that is how verification knows what the pages must say.
 */
export function handoverText(basis: HandoverBasis): HandoverText {
  const { record } = basis
  addEveryLanguage()
  const language = languageFor(basis.language)
  const edition = basis.edition ?? latestEdition
  const pen = makePen({
    state: foldJob(record.job, record.facts),
    facts: new Collected(record.facts),
    edition,
    language: languageAsOf(language, edition),
  })
  const recordHash = sha256OfBytes(recordText(record))
  const known = record.devices.find((device) => device.device === basis.device)
  const key = known === undefined ? null : fromBase64Url(known.publicKey)
  const proof: ProofOf = {
    recordHash,
    device: { device: basis.device, name: known?.name ?? pen.say('doc.unknown') },
    keyFingerprint: key === null ? '' : sha256OfBytes(key),
    madeAt: basis.madeAt,
  }
  const blocks: readonly Block[] = [
    ...sections.flatMap((section) => section(pen)),
    ...verifying(pen, proof),
    ...(edition < 2 ? [] : byHand(pen)),
  ]
  return {
    language,
    direction: directionOf(language),
    title: pen.say('doc.running', { job: record.job }),
    running: {
      left: `${pen.say('doc.running', { job: record.job })} · ${pen.say('doc.running-record', { hash: recordHash.slice(0, 16) })}`,
      pageOf: (page, pages) => pen.say('doc.page', { page, pages }),
    },
    blocks,
  }
}
