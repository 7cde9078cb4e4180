/** @module What the handover document says, derived from the record alone. */

import { fromBase64Url, sha256OfBytes } from '../../chain/index.ts'
import { foldJob } from '../../fold/index.ts'
import { type JobRecord, recordText } from '../../record/index.ts'
import { languageFor } from '../../words/index.ts'
import type { Block, HandoverText } from './blocks.ts'
import { faults } from './faults.ts'
import { keys, stopped, tally } from './keys.ts'
import { opening, standing } from './opening.ts'
import { makePen, type Section } from './pen.ts'
import { corrections, type ProofOf, verifying } from './proof.ts'
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
  cautions,
  price,
  warranty,
  retention,
  corrections,
]

/** What, beside the record, the document depends on. */
export interface HandoverBasis {
  readonly record: JobRecord
  /** BCP 47; a language without a catalogue is written in English. */
  readonly language: string
  /** Identifier of the device that seals the file. */
  readonly device: string
  /** UTC instant at which the document was made. */
  readonly madeAt: string
}

/**
 * The whole text of the document, from the record and nothing else of the job. The same record, language, device
 * and instant always give the same text: that is how verification knows what the pages must say.
 */
export function handoverText(basis: HandoverBasis): HandoverText {
  const { record } = basis
  const language = languageFor(basis.language)
  const pen = makePen(foldJob(record.job, record.facts), language)
  const recordHash = sha256OfBytes(recordText(record))
  const known = record.devices.find((device) => device.device === basis.device)
  const key = known === undefined ? null : fromBase64Url(known.publicKey)
  const proof: ProofOf = {
    recordHash,
    device: { device: basis.device, name: known?.name ?? pen.say('doc.unknown') },
    keyFingerprint: key === null ? '' : sha256OfBytes(key),
    madeAt: basis.madeAt,
  }
  const blocks: readonly Block[] = [...sections.flatMap((section) => section(pen)), ...verifying(pen, proof)]
  return {
    language,
    title: pen.say('doc.running', { job: record.job }),
    running: {
      left: `${pen.say('doc.running', { job: record.job })} · ${pen.say('doc.running-record', { hash: recordHash.slice(0, 16) })}`,
      pageOf: (page, pages) => pen.say('doc.page', { page, pages }),
    },
    blocks,
  }
}
