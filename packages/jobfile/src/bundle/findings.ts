import type { Finding } from '@shearline/bus'
import type { HandoverFindingCode } from '../handover/index.ts'
import type { JobRecord, RecordFindingCode } from '../record/index.ts'

export type BundleFindingCode =
  | RecordFindingCode
  | HandoverFindingCode
  | 'bundle-unreadable'
  | 'bundle-bytes-changed'
  | 'list-missing'
  | 'list-signature-wrong'
  | 'file-changed'
  | 'file-missing'
  | 'file-added'
  | 'keys-unreadable'
  | 'facts-unreadable'
  | 'chain-file-wrong'
  | 'document-of-other-record'

export type BundleFinding = Finding<BundleFindingCode>

/** What verification says of a bundle. */
export interface BundleCheck {
  /** True when every byte is the one that was packed, every fact is proven and every document too. */
  readonly proven: boolean
  readonly facts: number
  /** Signatures that were right: of facts, of the list of files, of the seals of documents. */
  readonly signatures: number
  /** Hashes made again and right: of files, links between facts, parts of documents. */
  readonly hashes: number
  readonly record: JobRecord | null
  /** The device that packed it, when its signature is right. */
  readonly packedBy: string | null
  readonly findings: readonly BundleFinding[]
}

export const askAgain = 'Do not rely on this file; ask the firm for the bundle again.'

/** Says one thing that is wrong with a part of the bundle. */
export function wrongPart(
  code: BundleFindingCode,
  where: BundleFinding['where'],
  what: string,
): BundleFinding {
  return { code, severity: 'error', where, what, doNext: askAgain }
}
